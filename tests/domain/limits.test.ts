import { balancedFormula } from "../../src/domain/balancedFormula";
import { blockCrop } from "../../src/domain/blockCrop";
import { blockMean } from "../../src/domain/blockMean";
import { budInjury } from "../../src/domain/budInjury";
import { clusters } from "../../src/domain/clusters";
import { clustersToRemove } from "../../src/domain/clustersToRemove";
import { cropAfterFrost } from "../../src/domain/cropAfterFrost";
import { cropLoad } from "../../src/domain/cropLoad";
import { gapsByRow } from "../../src/domain/gapsByRow";
import { limitedNodes } from "../../src/domain/limitedNodes";
import { nodeBudget } from "../../src/domain/nodeBudget";
import { nodesAfterEveryRule, nodesAfterInjury } from "../../src/domain/nodesAfterInjury";
import { nodesByLength } from "../../src/domain/nodesByLength";
import { clustersWeighed, clustersWeighedTogether } from "../../src/domain/outlook/clustersWeighed";
import { fruitfulNodes } from "../../src/domain/outlook/fruitfulNodes";
import { spurLoss, yearsToFloor } from "../../src/domain/outlook/spurLoss";
import { thinning, thinningGroups } from "../../src/domain/outlook/thinning";
import { fewVines, vinesAtRandom, vinesByRow } from "../../src/domain/outlook/vinesCounted";
import { worthOfShoots } from "../../src/domain/outlook/worthOfShoots";
import { nextSteps } from "../../src/domain/outlook/nextSteps";
import { samplingPlan } from "../../src/domain/outlook/samplingPlan";
import { orderOfWork, plannedWork } from "../../src/domain/plan/orderOfWork";
import { seededRandom } from "../../src/domain/random";
import { exactly, fromYears, shareFromCount, shareFromYears } from "../../src/domain/outlook/estimate";
import { cropLoadAgainst } from "../../src/domain/outlook/cropLoadRanges";
import { cropOutlook, type OutlookBlock } from "../../src/domain/outlook/cropOutlook";
import { productRange } from "../../src/domain/outlook/productRange";
import { sampleForAShare } from "../../src/domain/outlook/handbookSampleSizes";
import { ownHarvests } from "../../src/domain/outlook/ownHarvests";
import { shrunkRatio, shrunkShare } from "../../src/domain/outlook/shrunkYears";
import { nodePlan } from "../../src/domain/plan/nodePlan";
import { youngVineIn } from "../../src/domain/plan/youngVine";
import { clopperPearsonInterval, wilsonInterval } from "../../src/domain/proportionInterval";
import { pruningHours } from "../../src/domain/pruningHours";
import { Refusal } from "../../src/domain/refusal";
import { renewalForecast } from "../../src/domain/renewal/renewalForecast";
import { trunkRenewal } from "../../src/domain/renewal/trunkRenewal";
import { shoots } from "../../src/domain/shoots";
import { shootsToThin } from "../../src/domain/shootsToThin";
import { spurFit } from "../../src/domain/spurFit";
import { kilograms, kilogramsPerHectare, metres, perMetre, vinesPerHectare } from "../../src/domain/units";
import { vineCrop } from "../../src/domain/vineCrop";
import { vineDensity } from "../../src/domain/vineDensity";
import { vinesToCount } from "../../src/domain/vinesToCount";
import { WINTER_CALENDAR } from "./plan/winterCalendar";

const formula = balancedFormula("30+10");
const cordon = { block: "A", row: 3, vine: 7, positions: 8, liveSpurs: 5, longestGap: 2 };
const group = { vines: 10, clusters: 40 };
const cane = { nodes: 10, primaries: 8, secondariesOnly: 1 };
const lossAYear = { low: 0.01, likely: 0.015, high: 0.02 };
const spurSeason = { year: 2024, block: "A", row: 1, positions: 100, liveSpurs: 90 };

const ofWork = {
  block: "A",
  vines: 10,
  vinesDone: 0,
  tender: false,
  fruitfulSecondaries: false,
  twice: false,
};
const planned = (part: Partial<typeof WINTER_CALENDAR>) =>
  plannedWork([{ block: "A", pass: "only", vines: 0, vinesDone: 0 }], { ...WINTER_CALENDAR, ...part });
const steps = (minutes: number, aVine = 3) =>
  nextSteps(
    {
      stage: "clusters",
      clusters: vinesAtRandom([60, 75, 50], 200),
      clusterWeight: clustersWeighedTogether(0.1, 0.4, 50),
    },
    { planted: 200, bearing: exactly("missing", 1) },
    0.9,
    { vines: aVine, canes: 4, clusters: 0.5 },
    { minutes, leastGain: 0, margin: 0.05 },
  );

const outlook = (part: Partial<OutlookBlock>, confidence?: number) =>
  cropOutlook(
    { stage: "clusters", clusters: exactly("vines", 60), clusterWeight: exactly("clusterWeight", 0.1) },
    { planted: 200, bearing: exactly("missing", 1), ...part },
    confidence,
  );
const usual = { value: 0.5, yearSpread: 0.05, farmSpread: 0.05 };

/** What the refusal calls it, the limits, the unit, whether it must be whole, and the calculation for one value of it. */
type Limit = readonly [
  argument: string,
  least: number,
  most: number,
  unit: string,
  call: (value: number) => unknown,
  whole?: "whole",
];

/**
 * The limits are this program's own, wide enough for every figure of tests/published, as the doc block of each calculation
 * says them: they catch a slip of unit, not an odd vine.
 */
const LIMITS: Readonly<Record<string, readonly Limit[]>> = {
  blockCrop: [
    ["vine_crop", 0, 200, "kg", (x) => blockCrop(kilograms(x), vinesPerHectare(2000))],
    ["density", 0, 20000, "vines/ha", (x) => blockCrop(kilograms(5), vinesPerHectare(x))],
    ["missing_share", 0, 1, "", (x) => blockCrop(kilograms(5), vinesPerHectare(2000), x)],
  ],
  blockMean: [
    ["confidence", 0.5, 0.9999, "", (x) => blockMean([1, 2, 3], Infinity, x)],
    ["vines", 3, 1e7, "", (x) => blockMean([1, 2, 3], x, 0.95), "whole"],
    ["counts", -1e9, 1e9, "", (x) => blockMean([1, x, 3], Infinity, 0.95)],
  ],
  budInjury: [
    ["cut", 0, 1e6, "", (x) => budInjury(0, x, 0.95), "whole"],
    ["dead", 0, 10, "", (x) => budInjury(x, 10, 0.95), "whole"],
    ["confidence", 0.5, 0.9999, "", (x) => budInjury(1, 10, x)],
  ],
  clusters: [
    ["shoots", 0, 5000, "", (x) => clusters(x, 2)],
    ["clusters_per_shoot", 0, 6, "", (x) => clusters(20, x)],
  ],
  clustersToRemove: [
    [
      "target",
      0,
      100000,
      "kg/ha",
      (x) => clustersToRemove(kilogramsPerHectare(x), vinesPerHectare(2000), kilograms(0.1), 50),
    ],
    [
      "density",
      1,
      20000,
      "vines/ha",
      (x) => clustersToRemove(kilogramsPerHectare(9000), vinesPerHectare(x), kilograms(0.1), 50),
    ],
    [
      "cluster_weight",
      0.001,
      3,
      "kg",
      (x) => clustersToRemove(kilogramsPerHectare(9000), vinesPerHectare(2000), kilograms(x), 50),
    ],
    [
      "counted",
      0,
      30000,
      "",
      (x) => clustersToRemove(kilogramsPerHectare(9000), vinesPerHectare(2000), kilograms(0.1), x),
    ],
  ],
  cropAfterFrost: [
    ["primaries", 0, 1e6, "", (x) => cropAfterFrost(x, 1, 1, 1, 0.5), "whole"],
    ["secondaries", 0, 1e6, "", (x) => cropAfterFrost(1, x, 1, 1, 0.5), "whole"],
    ["tertiaries", 0, 1e6, "", (x) => cropAfterFrost(1, 1, x, 1, 0.5), "whole"],
    ["shootless", 0, 1e6, "", (x) => cropAfterFrost(1, 1, 1, x, 0.5), "whole"],
    ["secondary_worth", 0, 1, "", (x) => cropAfterFrost(1, 1, 1, 1, x)],
  ],
  cropLoad: [
    ["crop", 0, 1e8, "kg", (x) => cropLoad(kilograms(x), kilograms(1))],
    ["prunings", 0, 1e7, "kg", (x) => cropLoad(kilograms(5), kilograms(x))],
  ],
  gapsByRow: [
    ["positions", 0, 1000, "", (x) => gapsByRow([{ ...cordon, liveSpurs: 0, positions: x }]), "whole"],
    ["live_spurs", 0, 1000, "", (x) => gapsByRow([{ ...cordon, positions: 1000, liveSpurs: x }]), "whole"],
    ["longest_gap", 0, 1000, "", (x) => gapsByRow([{ ...cordon, longestGap: x }]), "whole"],
  ],
  limitedNodes: [
    ["nodes", 0, Infinity, "", (x) => limitedNodes(x)],
    ["least", 0, Infinity, "", (x) => limitedNodes(40, x)],
    ["most", 0, Infinity, "", (x) => limitedNodes(40, 0, x)],
  ],
  nodeBudget: [["prunings", 0, 20, "kg", (x) => nodeBudget(kilograms(x), formula)]],
  nodesAfterInjury: [
    ["nodes", 0, 1000, "", (x) => nodesAfterInjury(x, 0.1, "in ratio")],
    ["dead_share", 0, 1, "", (x) => nodesAfterInjury(40, x, "in ratio")],
  ],
  nodesAfterEveryRule: [
    ["nodes", 0, 1000, "", (x) => nodesAfterEveryRule(x, 0.1)],
    ["dead_share", 0, 1, "", (x) => nodesAfterEveryRule(40, x)],
  ],
  nodesByLength: [
    ["length", 0, 100, "m", (x) => nodesByLength(metres(x), perMetre(15))],
    ["density", 0, 60, "1/m", (x) => nodesByLength(metres(1), perMetre(x))],
  ],
  wilsonInterval: [
    ["trials", 1, 1e8, "", (x) => wilsonInterval(0, x, 0.95), "whole"],
    ["hits", 0, 10, "", (x) => wilsonInterval(x, 10, 0.95), "whole"],
    ["confidence", 0.5, 0.9999, "", (x) => wilsonInterval(1, 10, x)],
  ],
  clopperPearsonInterval: [
    ["trials", 1, 1e8, "", (x) => clopperPearsonInterval(0, x, 0.95), "whole"],
    ["hits", 0, 10, "", (x) => clopperPearsonInterval(x, 10, 0.95), "whole"],
    ["confidence", 0.5, 0.9999, "", (x) => clopperPearsonInterval(1, 10, x)],
  ],
  pruningHours: [
    ["vines", 0, 1e7, "", (x) => pruningHours(x, 2)],
    ["minutes", 0, 240, "min", (x) => pruningHours(100, x)],
    ["crew", 1, 500, "", (x) => pruningHours(100, 2, x)],
    ["hours_a_day", 0.5, 16, "h", (x) => pruningHours(100, 2, 4, x)],
  ],
  shoots: [
    ["spurs", 0, 500, "", (x) => shoots(x, 2, 0.9)],
    ["nodes_per_spur", 0, 15, "", (x) => shoots(20, x, 0.9)],
    ["budbreak", 0, 1, "", (x) => shoots(20, 2, x)],
    ["basal_shoots", 0, 5, "", (x) => shoots(20, 2, 0.9, x)],
  ],
  shootsToThin: [
    ["shoots", 0, 1000, "", (x) => shootsToThin(x, metres(2), perMetre(15))],
    ["length", 0.3, 10, "m", (x) => shootsToThin(50, metres(x), perMetre(15))],
    ["density", 1, 60, "1/m", (x) => shootsToThin(50, metres(2), perMetre(x))],
  ],
  spurFit: [
    ["nodes", 0, 1000, "", (x) => spurFit(x, 2, metres(1), metres(0.1))],
    ["nodes_per_spur", 0.5, 15, "", (x) => spurFit(40, x, metres(1), metres(0.1))],
    ["length", 0, 100, "m", (x) => spurFit(40, 2, metres(x), metres(0.1))],
    ["spacing", 0.01, 2, "m", (x) => spurFit(40, 2, metres(1), metres(x))],
    ["cordons", 1, 20, "", (x) => spurFit(40, 2, metres(1), metres(0.1), x), "whole"],
  ],
  vineCrop: [
    ["clusters", 0, 30000, "", (x) => vineCrop(x, kilograms(0.1))],
    ["cluster_weight", 0, 3, "kg", (x) => vineCrop(50, kilograms(x))],
  ],
  vineDensity: [
    ["row_spacing", 0.3, 20, "m", (x) => vineDensity(metres(x), metres(2))],
    ["vine_spacing", 0.3, 20, "m", (x) => vineDensity(metres(3), metres(x))],
  ],
  vinesToCount: [
    ["cv", 0, 5, "", (x) => vinesToCount(x, 0.1, 500, 0.95)],
    ["margin", 0.001, 1, "", (x) => vinesToCount(0.3, x, 500, 0.95)],
    ["vines", 1, 1e7, "", (x) => vinesToCount(0.3, 0.1, x, 0.95), "whole"],
    ["confidence", 0.5, 0.9999, "", (x) => vinesToCount(0.3, 0.1, 500, x)],
  ],
  nodePlan: [
    ["nodes", 0, 1000, "", (x) => nodePlan(x, 10, 1, 4)],
    ["spurs", 0, 1000, "", (x) => nodePlan(40, x, 1, 4), "whole"],
    ["least", 1, 15, "", (x) => nodePlan(40, 10, x, 15), "whole"],
    ["most", 1, 15, "", (x) => nodePlan(40, 10, 1, x), "whole"],
  ],
  orderOfWork: [
    ["vines", 0, 1e7, "", (x) => orderOfWork([{ ...ofWork, vines: x }]), "whole"],
    ["vines_to_thin", 0, 1e7, "", (x) => orderOfWork([{ ...ofWork, vinesToThin: x }]), "whole"],
    ["vines_done", 0, 10, "", (x) => orderOfWork([{ ...ofWork, vinesDone: x }]), "whole"],
  ],
  plannedWork: [
    ["crew", 1, 500, "", (x) => planned({ crew: x })],
    ["hours_a_day", 0.5, 16, "h", (x) => planned({ hoursADay: x })],
    ["days_a_week", 1, 7, "", (x) => planned({ daysAWeek: x }), "whole"],
    ["minutes", 0, 240, "min", (x) => planned({ minutesAVine: x })],
    ["minutes", 0, 240, "min", (x) => planned({ minutesAVineThinning: x })],
    ["second_pass_share", 0, 1, "", (x) => planned({ secondPassShare: x })],
  ],
  nextSteps: [
    ["minutes", 1, 10000, "min", (x) => steps(x)],
    ["minutes_each", Number.MIN_VALUE, 10000, "min", (x) => steps(60, x)],
  ],
  samplingPlan: [
    ["vines", 1, 3, "", (x) => samplingPlan([{ row: 1, vines: [1, 2, 3] }], x, seededRandom(5)), "whole"],
  ],
  youngVineIn: [
    ["planted", 1850, 2100, "", (x) => youngVineIn(x, 2026, "highWire"), "whole"],
    ["season", 1850, 2100, "", (x) => youngVineIn(2024, x, "highWire"), "whole"],
  ],
  fruitfulNodes: [
    ["secondary_worth", 0, 1, "", (x) => fruitfulNodes([cane, cane], x)],
    ["nodes_as_one", 1, 10, "", (x) => fruitfulNodes([cane, cane], 0.5, x)],
    [
      "cut",
      0,
      1e6,
      "",
      (x) => fruitfulNodes([cane, { nodes: x, primaries: 0, secondariesOnly: 0 }], 0.5),
      "whole",
    ],
    [
      "primaries_alive",
      0,
      10,
      "",
      (x) => fruitfulNodes([cane, { ...cane, secondariesOnly: 0, primaries: x }], 0.5),
      "whole",
    ],
    [
      "secondaries_alive",
      0,
      2,
      "",
      (x) => fruitfulNodes([cane, { ...cane, secondariesOnly: x }], 0.5),
      "whole",
    ],
  ],
  worthOfShoots: [
    ["budbreak", 0, 1, "", (x) => worthOfShoots([cane, cane], 0.5, x)],
    ["basal_shoots", 0, 5, "", (x) => worthOfShoots([cane, cane], 0.5, 0.9, { perNode: x, worth: 0.1 })],
    ["basal_worth", 0, 1, "", (x) => worthOfShoots([cane, cane], 0.5, 0.9, { perNode: 1, worth: x })],
  ],
  thinning: [
    ["clusters_allowed", 0, 1e10, "", (x) => thinning([{ ...group, name: "weak" }], x, 2)],
    ["minutes", 0, 240, "min", (x) => thinning([{ ...group, name: "weak" }], 100, x)],
    ["vines", 0, 1e7, "", (x) => thinning([{ ...group, name: "weak", vines: x }], 100, 2), "whole"],
    ["clusters", 0, 30000, "", (x) => thinning([{ ...group, name: "weak", clusters: x }], 100, 2)],
  ],
  thinningGroups: [
    ["vines", 3, 1e7, "", (x) => thinningGroups([10, 20, 30], x, ["weak", "middle", "strong"]), "whole"],
    ["clusters", 0, 30000, "", (x) => thinningGroups([10, 20, x], 30, ["weak", "middle", "strong"])],
  ],
  exactly: [["missing", 0, Infinity, "", (x) => exactly("missing", x)]],
  fromYears: [
    ["clusterWeight", Number.MIN_VALUE, 1e6, "", (x) => fromYears("clusterWeight", x, 0.2)],
    ["spread", 0, 1, "", (x) => fromYears("clusterWeight", 0.1, x)],
    ["degrees", 1, Infinity, "", (x) => fromYears("clusterWeight", 0.1, 0.2, x)],
  ],
  shareFromYears: [
    ["budbreak", 0, 1, "", (x) => shareFromYears("budbreak", x, 0.05)],
    ["spread", 0, 0.5, "", (x) => shareFromYears("budbreak", 0.9, x)],
    ["degrees", 1, Infinity, "", (x) => shareFromYears("budbreak", 0.9, 0.05, x)],
  ],
  shareFromCount: [
    ["trials", 1, 1e8, "", (x) => shareFromCount("budbreak", 0, x)],
    ["hits", 0, 10, "", (x) => shareFromCount("budbreak", x, 10)],
  ],
  cropOutlook: [
    ["vines", 0, 1e7, "", (x) => outlook({ planted: x })],
    ["confidence", 0.5, 0.9999, "", (x) => outlook({}, x)],
  ],
  productRange: [["confidence", 0.5, 0.9999, "", (x) => productRange([exactly("vines", 40)], 0, [], x)]],
  cropLoadAgainst: [["low", 0, 10, "", (x) => cropLoadAgainst(lossAYear, 1, { low: x, high: 10 })]],
  ownHarvests: [["harvest", Number.MIN_VALUE, 1e9, "kg", (x) => ownHarvests([{ year: 2025, picked: x }])]],
  shrunkRatio: [
    ["usual", Number.MIN_VALUE, 1e6, "", (x) => shrunkRatio([], { ...usual, value: x })],
    ["years", Number.MIN_VALUE, 1e6, "", (x) => shrunkRatio([0.5, x], usual)],
    ["year_spread", 0.001, 10, "", (x) => shrunkRatio([], { ...usual, yearSpread: x })],
    ["farm_spread", 0.001, 10, "", (x) => shrunkRatio([], { ...usual, farmSpread: x })],
  ],
  shrunkShare: [
    [
      "usual",
      0.005,
      0.995,
      "",
      (x) => shrunkShare([], { ...usual, value: x, yearSpread: 0.005, farmSpread: 0.005 }),
    ],
    ["years", 0, 1, "", (x) => shrunkShare([0.5, x], usual)],
  ],
  vinesAtRandom: [
    ["vines", 2, 1e7, "", (x) => vinesAtRandom([10, 20], x), "whole"],
    ["counts", 0, 1e6, "", (x) => vinesAtRandom([10, x], 100)],
  ],
  vinesByRow: [
    ["vines", 2, 1e7, "", (x) => vinesByRow([{ vines: x, counts: [10, 20] }]), "whole"],
    ["counts", 0, 1e6, "", (x) => vinesByRow([{ vines: 100, counts: [10, x] }])],
  ],
  sampleForAShare: [["vines", 1, 1e7, "", (x) => sampleForAShare(x), "whole"]],
  fewVines: [["cv", 0, 3, "", (x) => fewVines([10, 20], 100, x)]],
  clustersWeighed: [["cluster_weight", 0, 3, "kg", (x) => clustersWeighed([0.1, x])]],
  clustersWeighedTogether: [
    ["cluster_weight", Number.MIN_VALUE, 3, "kg", (x) => clustersWeighedTogether(x, 0.3, 10)],
    ["cv", 0, 2, "", (x) => clustersWeighedTogether(0.1, x, 10)],
    ["clusters_weighed", 2, 1e6, "", (x) => clustersWeighedTogether(0.1, 0.3, x), "whole"],
  ],
  spurLoss: [
    [
      "confidence",
      0.5,
      0.9999,
      "",
      (x) => spurLoss([spurSeason, { ...spurSeason, year: 2025, liveSpurs: 80 }], x),
    ],
    ["positions", 0, 1e6, "", (x) => spurLoss([{ ...spurSeason, positions: x, liveSpurs: 0 }], 0.9), "whole"],
    [
      "live_spurs",
      0,
      1e6,
      "",
      (x) => spurLoss([{ ...spurSeason, positions: 1e6, liveSpurs: x }], 0.9),
      "whole",
    ],
  ],
  yearsToFloor: [
    ["live_share", 0, 1, "", (x) => yearsToFloor(lossAYear, x, 0.5)],
    ["floor", 0, 1, "", (x) => yearsToFloor(lossAYear, 0.9, x)],
  ],
  renewalForecast: [
    ["wanted", 1, 12, "", (x) => renewalForecast([1, 2, 3], x, 0.05, 0.1, 5), "whole"],
    ["years", 1, 50, "", (x) => renewalForecast([1, 2, 3], 2, 0.05, 0.1, x), "whole"],
    ["yearly_loss", 0, 1, "", (x) => renewalForecast([1, 2, 3], 2, x, 0.1, 5)],
    ["brought_up", 0, 1, "", (x) => renewalForecast([1, 2, 3], 2, 0.05, x, 5)],
    ["vines", 0, 1e9, "", (x) => renewalForecast([1, x, 3], 2, 0.05, 0.1, 5)],
  ],
  trunkRenewal: [
    ["live_trunks", 0, 99, "", (x) => trunkRenewal({ liveTrunks: x, noted: [] }, 2), "whole"],
    ["wanted", 1, 99, "", (x) => trunkRenewal({ liveTrunks: 2, noted: [] }, x), "whole"],
  ],
};

function refusalOf(call: () => unknown): Refusal | undefined {
  try {
    call();
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  return undefined;
}

describe.each(Object.entries(LIMITS))("%s", (_name, limits) => {
  const named = limits.map(([argument, least, most, unit, call, whole]) => {
    return { argument, least, most, unit, call, isWhole: whole !== undefined };
  });

  test.each(named)("$argument lies between $least and $most $unit", (limit) => {
    const { argument, least, most, unit, call, isWhole } = limit;
    const refused = (value: number) => {
      const refusal = refusalOf(() => call(value));
      return refusal?.facts.argument === argument && ["outside", "notWhole"].includes(refusal.code)
        ? refusal
        : undefined;
    };
    for (const value of [least, most].filter(Number.isFinite)) expect(refused(value)).toBeUndefined();
    const step = (value: number) => (isWhole ? 1 : Math.max(1e-6, Math.abs(value) * 1e-6));
    for (const value of [least - step(least), most + step(most)].filter(Number.isFinite))
      expect(refused(value)).toMatchObject({
        kind: "invalid",
        code: "outside",
        facts: { argument, value, least, most, unit },
      });
    expect(refused(NaN)).toMatchObject({ kind: "invalid", code: isWhole ? "notWhole" : "outside" });
    if (isWhole)
      expect(refused(least + 0.5)).toMatchObject({ code: "notWhole", facts: { value: least + 0.5 } });
  });
});
