import { blockMean } from "../../src/domain/blockMean";
import { budInjury } from "../../src/domain/budInjury";
import { clopperPearsonInterval, wilsonInterval } from "../../src/domain/proportionInterval";
import { normalQuantile } from "../../src/domain/statistics/normalQuantile";
import { tQuantile } from "../../src/domain/statistics/tQuantile";
import { vinesToCount } from "../../src/domain/vinesToCount";
import { checkRows, EXACT, half, type CheckRow } from "./checkRows";
import { STRICKLAND_VINES, STRICKLAND_YIELDS } from "./strickland1932";

const REFERENCE = "computed with @stdlib normal and beta quantiles";
const NEWCOMBE = "Newcombe 1998, Statistics in Medicine 17:857-872 (agreement from memory, unverified)";

const INTERVALS: readonly (readonly [number, number, number, number, number, number, number, string])[] = [
  [81, 263, 0.255289, 0.36621, 0.252737, 0.367622, 6, NEWCOMBE],
  [15, 148, 0.062386, 0.160487, 0.057844, 0.16165, 6, NEWCOMBE],
  [0, 20, 0, 0.161125, 0, 0.168433, 6, NEWCOMBE],
  [1, 29, 0.006113, 0.171755, 0.000873, 0.177644, 6, NEWCOMBE],
  [10, 100, 0.055229, 0.174366, 0.049005, 0.176223, 6, REFERENCE],
  [20, 100, 0.133367, 0.288829, 0.126656, 0.291843, 6, REFERENCE],
  [100, 100, 0.963007, 1, 0.963783, 1, 6, REFERENCE],
  [20, 20, 0.838875, 1, 0.831567, 1, 6, REFERENCE],
  [28, 32, 0.7193, 0.9503, 0.7101, 0.9649, 4, REFERENCE],
  [31, 32, 0.8426, 0.9945, 0.8378, 0.9992, 4, REFERENCE],
  [30, 155, 0.139074, 0.262845, 0.13456, 0.264627, 6, REFERENCE],
];

checkRows(
  "95 % intervals of a share",
  INTERVALS.flatMap(([hits, trials, wLow, wHigh, cLow, cHigh, decimals, source]): CheckRow[] => [
    {
      why: `${hits}/${trials} Wilson low`,
      source,
      ours: () => wilsonInterval(hits, trials, 0.95).low,
      published: wLow,
      within: half(decimals),
    },
    {
      why: `${hits}/${trials} Wilson high`,
      source,
      ours: () => wilsonInterval(hits, trials, 0.95).high,
      published: wHigh,
      within: half(decimals),
    },
    {
      why: `${hits}/${trials} Clopper-Pearson low`,
      source,
      ours: () => clopperPearsonInterval(hits, trials, 0.95).low,
      published: cLow,
      within: half(decimals),
    },
    {
      why: `${hits}/${trials} Clopper-Pearson high`,
      source,
      ours: () => clopperPearsonInterval(hits, trials, 0.95).high,
      published: cHigh,
      within: half(decimals),
    },
  ]),
);

checkRows("a printed example of Wilson's interval", [
  {
    why: "23/60 low",
    source: "VassarStats, the confidence interval of a proportion (inputs); limits derived",
    ours: () => wilsonInterval(23, 60, 0.95).low,
    published: 0.270883,
    within: half(6),
  },
  {
    why: "23/60 high",
    source: "VassarStats (inputs); limits derived",
    ours: () => wilsonInterval(23, 60, 0.95).high,
    published: 0.509824,
    within: half(6),
  },
  {
    why: "23/60 share",
    source: "VassarStats",
    ours: () => wilsonInterval(23, 60, 0.95).share,
    published: 0.3833,
    within: half(4),
  },
]);

checkRows(
  "bud survival in per cent, 4 canes x 8 buds, 19 Feb 2016; live counts of 32 derived",
  (
    [
      ["Brianna", 30, 94],
      ["Frontenac", 27, 84],
      ["Frontenac gris", 31, 97],
      ["Frontenac blanc", 27, 84],
      ["La Crescent", 29, 91],
      ["Marquette", 28, 88],
      ["St. Croix", 29, 91],
    ] as const
  ).map(([why, alive, published]) => ({
    why,
    source: "University of Minnesota Enology blog, February 2016",
    ours: () => 100 * (1 - budInjury(32 - alive, 32, 0.95).share),
    published,
    within: half(0),
  })),
);

const LIBRARIES = "@stdlib and jstat, agreeing to 6 digits";
checkRows("t and normal quantiles", [
  ...(
    [
      [1, 12.706205],
      [2, 4.302653],
      [3, 3.182446],
      [4, 2.776445],
      [5, 2.570582],
      [9, 2.262157],
      [10, 2.228139],
      [14, 2.144787],
      [19, 2.093024],
      [24, 2.063899],
      [29, 2.04523],
      [30, 2.042272],
      [60, 2.000298],
      [120, 1.97993],
    ] as const
  ).map(([degrees, published]) => ({
    why: `t(0.975), ${degrees} degrees of freedom`,
    source: LIBRARIES,
    ours: () => tQuantile(0.975, degrees),
    published,
    within: half(6),
  })),
  ...(
    [
      [1, 6.313752],
      [4, 2.131847],
      [9, 1.833113],
      [19, 1.729133],
      [29, 1.699127],
    ] as const
  ).map(([degrees, published]) => ({
    why: `t(0.95), ${degrees} degrees of freedom`,
    source: LIBRARIES,
    ours: () => tQuantile(0.95, degrees),
    published,
    within: half(6),
  })),
  {
    why: "z(0.975)",
    source: LIBRARIES,
    ours: () => normalQuantile(0.975),
    published: 1.959964,
    within: half(6),
  },
]);

const CLUSTERS = 0.321578;
const YIELD = 0.434896;
checkRows(
  "vines to count, 95 %",
  (
    [
      [CLUSTERS, 352, 0.05, 158.9, 162, 109.48],
      [CLUSTERS, 352, 0.1, 39.73, 43, 35.7],
      [CLUSTERS, 352, 0.15, 17.66, 21, 16.81],
      [CLUSTERS, 352, 0.2, 9.93, 13, 9.66],
      [YIELD, 125, 0.05, 290.62, 294, 87.41],
      [YIELD, 125, 0.1, 72.66, 76, 45.95],
      [YIELD, 125, 0.15, 32.29, 35, 25.66],
      [YIELD, 125, 0.2, 18.16, 21, 15.86],
    ] as const
  ).flatMap(([cv, block, margin, normal, iterated, finite]): CheckRow[] => {
    const at = `CV ${cv}, margin ${margin * 100} %`;
    return [
      {
        why: `${at}: by the normal quantile`,
        source: "derived: (z CV/E)^2",
        ours: () => vinesToCount(cv, margin, Infinity, 0.95).byNormal,
        published: normal,
        within: half(2),
      },
      {
        why: `${at}: smallest n with t`,
        source: "derived: n >= (t(n-1) CV/E)^2",
        ours: () => vinesToCount(cv, margin, Infinity, 0.95).vines,
        published: iterated,
        within: EXACT,
      },
      {
        why: `${at}: normal, block of ${block}`,
        source: "derived: n0/(1 + n0/N)",
        ours: () => vinesToCount(cv, margin, block, 0.95).byNormalInBlock,
        published: finite,
        within: half(2),
      },
    ];
  }),
);

checkRows("sample sizes beside the handbooks", [
  {
    why: "for WSU's own 5 % and 800 vines a mean needs 133 vines, not the 260 printed, which is the size for a share",
    source: "Washington State University, Yield Estimation, July 2006; derived",
    ours: () => Math.ceil(vinesToCount(CLUSTERS, 0.05, 800, 0.95).byNormalInBlock),
    published: 133,
    within: EXACT,
  },
  {
    why: "Iowa's 10 to 15 vines for 15 % against 21 by the mean formula: a little light",
    source: "Iowa State University Extension, Wine Grower News 178, 2011; derived",
    ours: () => vinesToCount(CLUSTERS, 0.15, Infinity, 0.95).vines,
    published: 21,
    within: EXACT,
  },
]);

const vines = STRICKLAND_VINES;
const STRICKLAND = "Strickland 1932, J. Agric. Victoria 30:584-593, via agridat";
checkRows("a block of 125 vines", [
  {
    why: "mean yield of a vine, lb",
    source: STRICKLAND,
    ours: () => blockMean(vines, Infinity, 0.95).mean,
    published: 5.944,
    within: EXACT,
  },
  {
    why: "standard deviation, lb",
    source: `recomputed from ${STRICKLAND}`,
    ours: () => blockMean(vines, Infinity, 0.95).sd,
    published: 2.585019,
    within: half(6),
  },
  {
    why: "coefficient of variation in per cent: printed 43.4, truncated from 43.49",
    source: "agridat, note on strickland.grape.uniformity",
    ours: () => 100 * blockMean(vines, Infinity, 0.95).cv!,
    published: 43.4,
    within: 0.1,
  },
  {
    why: "coefficient of variation, recomputed",
    source: `recomputed from ${STRICKLAND}`,
    ours: () => 100 * blockMean(vines, Infinity, 0.95).cv!,
    published: 43.49,
    within: half(2),
  },
  ...[98, 139, 131, 156, 219].map((published, column) => ({
    why: `sum of column ${column + 1}, lb`,
    source: STRICKLAND,
    ours: () => {
      const alive = STRICKLAND_YIELDS[column].filter((pounds) => !Number.isNaN(pounds));
      return blockMean(alive, Infinity, 0.95).mean * alive.length;
    },
    published,
    within: EXACT,
  })),
]);

/** sqrt((N - n)/(N - 1)) is the factor for a spread with divisor N; ours, sqrt(1 - n/N), for divisor n - 1. */
const factor = (n: number, block: number) => () => {
  const counts = Array.from({ length: n }, (_, index) => index % 2);
  return (
    (blockMean(counts, block, 0.95).standardError / blockMean(counts, Infinity, 0.95).standardError) *
    Math.sqrt(block / (block - 1))
  );
};
checkRows(
  "finite population correction",
  (
    [
      [38, 600, 0.9686, 4],
      [10, 10000, 0.99955, 5],
      [40, 10000, 0.99805, 5],
      [100, 5000, 0.99004, 5],
      [10, 100, 0.95346, 5],
    ] as const
  ).map(([n, block, published, decimals]) => ({
    why: n === 100 ? `${n} of ${block}: printed truncated, exact 0.9900485` : `${n} of ${block}`,
    source: "worked answers at assignmentexpert.com, arithmetic rechecked",
    ours: factor(n, block),
    published,
    within: n === 100 ? 10 ** -decimals : half(decimals),
  })),
);
