import { blockCrop } from "../../src/domain/blockCrop";
import { blockMean } from "../../src/domain/blockMean";
import { budInjury } from "../../src/domain/budInjury";
import { cropLoad } from "../../src/domain/cropLoad";
import { nodesAfterInjury } from "../../src/domain/nodesAfterInjury";
import { cropOutlook } from "../../src/domain/outlook/cropOutlook";
import { exactly, fromYears } from "../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../src/domain/outlook/fruitfulNodes";
import { pruningHours } from "../../src/domain/pruningHours";
import {
  kilogramsFromPounds,
  metresFromFeet,
  poundsFromKilograms,
  tonsPerAcreFromKilogramsPerHectare,
  vinesPerAcreFromPerHectare,
  vinesPerHectareFromPerAcre,
} from "../../src/domain/units";
import { vineCrop } from "../../src/domain/vineCrop";
import { vineDensity } from "../../src/domain/vineDensity";
import { checkRows, EXACT, half, type CheckRow } from "./checkRows";

const STATION_2014 = "Missouri State Fruit Experiment Station, Assessing winter bud injury, 6 Feb 2014";
const VINEWS_2019_1 = "Volenberg, University of Missouri, Vinews 2019 No. 1, 18 Mar 2019";
const VINEWS_2019_2 = "Volenberg, University of Missouri, Vinews 2019 No. 2, 25 Mar 2019";
const VINEWS_2020_5 = "Volenberg, University of Missouri, Vinews 2020 No. 5, 25 May 2020";
const CORNELL = "Cornell Cooperative Extension, Northern NY Grape Update, 28 Feb 2014";

type Sample = readonly [cultivar: string, deadOf100: number, nodesFor40: number];

/** Nodes by hand: 40 + 0.4 x dead from 20 of 100 on, 40 below. */
const SAMPLES: Readonly<Record<string, readonly Sample[]>> = {
  [STATION_2014]: [
    ["Cayuga White", 12, 40],
    ["Chambourcin", 50, 60],
    ["Norton", 0, 40],
    ["Seyval", 9, 40],
    ["Vidal", 5, 40],
  ],
  [VINEWS_2019_1]: [
    ["Norton", 11, 40],
    ["Vignoles", 8, 40],
    ["Chambourcin", 75, 70],
    ["Chambourcin", 66, 66.4],
    ["Chardonel", 34, 53.6],
    ["Verona", 0, 40],
    ["Vignoles", 23, 49.2],
    ["Elvira", 3, 40],
    ["Wine King", 22, 48.8],
    ["Norton", 11, 40],
    ["Chambourcin", 14, 40],
    ["Vignoles", 15, 40],
    ["Norton", 10, 40],
    ["Vignoles", 12, 40],
    ["Chambourcin", 15, 40],
    ["Crimson Cabernet", 14, 40],
    ["Chambourcin", 34, 53.6],
    ["Vignoles", 9, 40],
  ],
  [VINEWS_2019_2]: [
    ["Chambourcin", 11, 40],
    ["Chambourcin", 24, 49.6],
    ["Chambourcin", 37, 54.8],
    ["Chambourcin", 19, 40],
    ["Chambourcin", 20, 48],
    ["Chambourcin", 33, 53.2],
    ["Chambourcin", 39, 55.6],
    ["Chambourcin", 15, 40],
    ["Chambourcin", 15, 40],
    ["Chardonel", 28, 51.2],
    ["Chardonel", 29, 51.6],
    ["Chardonel", 31, 52.4],
    ["Chardonel", 12, 40],
    ["Chardonel", 46, 58.4],
    ["Norton", 15, 40],
    ["Norton", 8, 40],
    ["Vidal", 14, 40],
    ["Vidal", 8, 40],
    ["Vignoles", 16, 40],
    ["Vignoles", 14, 40],
    ["Vignoles", 37, 54.8],
    ["Vignoles", 16, 40],
    ["Vignoles", 19, 40],
    ["Vignoles", 24, 49.6],
  ],
};

checkRows(
  "40 nodes after the buds of published samples were cut, by Cornell's rule",
  Object.entries(SAMPLES).flatMap(([source, samples]) =>
    samples.map(([cultivar, dead, nodes], at): CheckRow => ({
      why: `sample ${at + 1}, ${cultivar}, ${dead} of 100 dead: ${nodes} nodes by hand`,
      source: `derived from ${source}, and ${CORNELL}`,
      ours: () => nodesAfterInjury(40, budInjury(dead, 100, 0.95).share, "Cornell 2014"),
      published: nodes,
      within: EXACT,
    })),
  ),
);

const meanOf = (source: string, cultivar: string, published: number): CheckRow => ({
  why: `${cultivar || "all samples"}: ${published} of 100 dead on average, as printed`,
  source,
  ours: () =>
    blockMean(
      SAMPLES[source].filter(([name]) => cultivar === "" || name === cultivar).map(([, dead]) => dead),
      Infinity,
      0.95,
    ).mean,
  published,
  within: half(0),
});

checkRows("printed means of bud samples", [
  meanOf(VINEWS_2019_1, "", 21),
  meanOf(VINEWS_2019_1, "Chambourcin", 41),
  meanOf(VINEWS_2019_1, "Vignoles", 13),
  meanOf(VINEWS_2019_1, "Norton", 11),
  meanOf(VINEWS_2019_2, "Chambourcin", 24),
  meanOf(VINEWS_2019_2, "Chardonel", 29),
  meanOf(VINEWS_2019_2, "Norton", 12),
  meanOf(VINEWS_2019_2, "Vidal", 11),
  meanOf(VINEWS_2019_2, "Vignoles", 21),
]);

checkRows(
  "buds after the freeze of May 2020",
  (
    [
      ["Norton primaries", 20, 20, 1],
      ["Norton secondaries", 19, 20, 0.95],
      ["Norton tertiaries", 17, 20, 0.85],
      ["Vivant primaries", 25, 25, 1],
      ["Vivant secondaries", 24, 25, 0.96],
      ["Vivant tertiaries", 24, 25, 0.96],
    ] as const
  ).map(([what, dead, cut, share]) => ({
    why: `${what}: ${dead} of ${cut} dead`,
    source: `derived from ${VINEWS_2020_5}`,
    ours: () => budInjury(dead, cut, 0.95).share,
    published: share,
    within: EXACT,
  })),
);

const HOWELL = "Howell, Michigan State, Estimating grapevine potential productivity after spring frost";
const worth = (primaries: number, secondariesOnly: number, ofSecondary: number) =>
  fruitfulNodes([{ nodes: 100, primaries, secondariesOnly }], ofSecondary).value;

checkRows("what lives on after primaries died", [
  {
    why: "Concord and Niagara: every primary dead, every secondary alive, 35 % of the crop",
    source: HOWELL,
    ours: () => worth(0, 100, 0.35),
    published: 0.35,
    within: EXACT,
  },
  {
    why: "Norton: half the primaries dead is half the yield",
    source: "University of Missouri, Vinews 2023 No. 1",
    ours: () => worth(50, 50, 0),
    published: 0.5,
    within: EXACT,
  },
  {
    why: "Marquette: 80 % of primaries killed and 61 % more the year after, 1 / 1.61 = 0.62 with secondaries at 0.53",
    source: "derived from Frioni et al. 2017, Scientia Horticulturae 219:302-309",
    ours: () => worth(20, 80, 0.53),
    published: 0.62,
    within: half(2),
  },
]);

const perAcre = (row: number, vine: number) =>
  vinesPerAcreFromPerHectare(vineDensity(metresFromFeet(row), metresFromFeet(vine)));
const MILLOT = "grower's account of Leon Millot at 8 x 8 ft";
const tonsAnAcre = (pounds: number, vinesAnAcre: number) =>
  tonsPerAcreFromKilogramsPerHectare(
    blockCrop(kilogramsFromPounds(pounds), vinesPerHectareFromPerAcre(vinesAnAcre)),
  );

checkRows("density, crop, crop load and hours", [
  {
    why: "9 x 8 ft: 605 vines an acre",
    source: "Bates, Growing Produce: Concord",
    ours: () => perAcre(9, 8),
    published: 605,
    within: EXACT,
  },
  {
    why: "8 x 8 ft: 680.6 vines an acre",
    source: `derived from ${MILLOT}`,
    ours: () => perAcre(8, 8),
    published: 680.6,
    within: half(1),
  },
  {
    why: "279 clusters of 0.148 lb: 41.4 lb, to 279 times half the last digit",
    source: MILLOT,
    ours: () => poundsFromKilograms(vineCrop(279, kilogramsFromPounds(0.148))),
    published: 41.4,
    within: 279 * half(3),
  },
  {
    why: "35.2 lb a vine: 12 tons an acre",
    source: MILLOT,
    ours: () => tonsAnAcre(35.2, perAcre(8, 8)),
    published: 12,
    within: half(1),
  },
  {
    why: "25.4 lb a vine: 8.6 tons an acre",
    source: MILLOT,
    ours: () => tonsAnAcre(25.4, perAcre(8, 8)),
    published: 8.6,
    within: half(1),
  },
  {
    why: "Brianna, 26 lb on 615 vines: 8 tons an acre",
    source: "derived from a grower's account of Brianna",
    ours: () => tonsAnAcre(26, 615),
    published: 8,
    within: half(1),
  },
  {
    why: "Marquette, 10 lb over 3 lb of prunings: 3.33",
    source: "derived from a grower's account of Marquette",
    ours: () => cropLoad(kilogramsFromPounds(10), kilogramsFromPounds(3)),
    published: 3.33,
    within: half(2),
  },
  {
    why: "Marquette, 25 lb over 3 lb: 8.33, printed as a bit over 8",
    source: "derived from a grower's account of Marquette",
    ours: () => cropLoad(kilogramsFromPounds(25), kilogramsFromPounds(3)),
    published: 8.33,
    within: half(2),
  },
  {
    why: "80 vines at 3 minutes: about 4 h",
    source: "grower's log of 2008",
    ours: () => pruningHours(80, 3).hours,
    published: 4,
    within: EXACT,
  },
]);

const AWRI = "AWRI, Technical Review 259, 2022: 60 % bunch number, 30 % berries a bunch, 10 % berry weight";
const shareOf = (source: string) =>
  cropOutlook(
    {
      stage: "winter",
      nodes: exactly("vines", 40),
      buds: exactly("buds", 1),
      budbreak: exactly("budbreak", 1),
      clustersPerShoot: fromYears("clustersPerShoot", 2, 0.25),
      clusterWeight: fromYears("clusterWeight", 0.1, 0.204),
    },
    { planted: 100, bearing: exactly("missing", 1) },
  ).spread.find((one) => one.source === source)!.share;

checkRows("share of the variation between years", [
  {
    why: "bunch number at 25 %: 60 % where bunch weight varies 0.25 x sqrt(40 / 60) = 0.204",
    source: AWRI,
    ours: () => shareOf("clustersPerShoot"),
    published: 0.6,
    within: half(2),
  },
  {
    why: "bunch weight, berries and their weight together: 40 %",
    source: AWRI,
    ours: () => shareOf("clusterWeight"),
    published: 0.4,
    within: half(2),
  },
]);
