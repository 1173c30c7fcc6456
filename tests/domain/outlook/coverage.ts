import { cropOutlook, type StageFigures } from "../../../src/domain/outlook/cropOutlook";
import { clustersWeighed } from "../../../src/domain/outlook/clustersWeighed";
import {
  exactly,
  fromYears,
  shareFromCount,
  shareFromYears,
  spreadOfUsual,
  type Estimate,
} from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { productRange } from "../../../src/domain/outlook/productRange";
import { vinesAtRandom, vinesByRow } from "../../../src/domain/outlook/vinesCounted";
import { seededRandom, type Random } from "../../../src/domain/random";
import { drawBeta, drawGamma, drawNormal } from "./monteCarlo";

const { exp, max, round, sqrt, log1p } = Math;

/** A way of looking at a block whose crop is known to the simulation. */
export interface Scenario {
  readonly name: string;
  readonly stage: StageFigures["stage"];
  readonly rows: number;
  readonly vinesARow: number;
  /** Vines counted. */
  readonly counted: number;
  /** "rows" draws the same number in every row and takes rows as strata. */
  readonly drawn: "block" | "rows";
  readonly canes: number;
  /** Correlation of buds on one cane. */
  readonly caneCorrelation: number;
  readonly alive: number;
  readonly clustersWeighed: number;
  /** Places looked at for missing vines; 0 when a register lists them. */
  readonly placesLookedAt: number;
  readonly missing: number;
  /** Spread between rows and between vines of a row, relative. */
  readonly rowSpread: number;
  readonly vineSpread: number;
  /** Spread between farms of clusters a shoot, where the usual figure stands for the farm's own; 0 with an own one. */
  readonly farmSpread: number;
}

const BASE: Scenario = {
  name: "",
  stage: "clusters",
  rows: 12,
  vinesARow: 20,
  counted: 24,
  drawn: "block",
  canes: 10,
  caneCorrelation: 0.1,
  alive: 0.7,
  clustersWeighed: 100,
  placesLookedAt: 0,
  missing: 0.08,
  rowSpread: 0.15,
  vineSpread: 0.28,
  farmSpread: 0,
};

/** The scenarios of the coverage table. */
export const SCENARIOS: readonly Scenario[] = [
  { ...BASE, name: "winter, 24 vines, 10 canes", stage: "winter" },
  { ...BASE, name: "winter, 8 vines, 10 canes", stage: "winter", counted: 8 },
  { ...BASE, name: "winter, hard: 35 % alive, 12 canes", stage: "winter", alive: 0.35, canes: 12 },
  { ...BASE, name: "winter, mild: 95 % alive, 8 canes", stage: "winter", alive: 0.95, canes: 8 },
  { ...BASE, name: "winter, usual clusters a shoot", stage: "winter", farmSpread: 0.25 },
  { ...BASE, name: "frost, 96 nodes, 0.6 with a primary", stage: "frost", alive: 0.6, canes: 12 },
  { ...BASE, name: "frost, 96 nodes, hard: 0.2 with a primary", stage: "frost", alive: 0.2, canes: 12 },
  { ...BASE, name: "frost, 40 nodes, 0.5 with a primary", stage: "frost", alive: 0.5, canes: 5 },
  { ...BASE, name: "frost, usual clusters a shoot", stage: "frost", alive: 0.6, canes: 12, farmSpread: 0.25 },
  { ...BASE, name: "shoots, 24 vines", stage: "shoots" },
  { ...BASE, name: "shoots, 24 vines by row", stage: "shoots", drawn: "rows" },
  { ...BASE, name: "clusters, 8 vines", counted: 8 },
  { ...BASE, name: "clusters, 24 vines" },
  { ...BASE, name: "clusters, 24 vines by row, rows differ", drawn: "rows", rowSpread: 0.3 },
  { ...BASE, name: "clusters, 12 vines by row, one a row", drawn: "rows", counted: 12, rowSpread: 0.05 },
  { ...BASE, name: "clusters, 120 of 240 vines", counted: 120 },
  { ...BASE, name: "clusters, missing vines from 60 places", placesLookedAt: 60, missing: 0.15 },
  { ...BASE, name: "lag phase, 24 vines, 100 clusters", stage: "lagPhase" },
  { ...BASE, name: "lag phase, 12 vines, 20 clusters", stage: "lagPhase", counted: 12, clustersWeighed: 20 },
  {
    ...BASE,
    name: "lag phase, 48 vines by row, 200 clusters",
    stage: "lagPhase",
    counted: 48,
    drawn: "rows",
    clustersWeighed: 200,
  },
];

const BUDBREAK = { middle: 0.85, spread: 0.06 };
const CLUSTERS_A_SHOOT = { middle: 1.9, spread: 0.25 };
const CLUSTER_WEIGHT = { middle: 0.095, spread: 0.2, between: 0.4 };
const MULTIPLIER = { middle: 2, spread: 0.1 };
/** By what is counted at a stage; clusters from then on. */
const COUNTED: Readonly<Partial<Record<StageFigures["stage"], "nodes" | "shoots">>> = {
  winter: "nodes",
  frost: "nodes",
  shoots: "shoots",
};
const NODES = 42;
const NODES_A_CANE = 8;
/** As Settings have it: 1 + 7 x 0.1, nodes of one cane alike by 0.1. */
const NODES_AS_ONE = 1.7;
const SECONDARY_WORTH = 0.38;

/** What one look at one simulated block gave. */
export interface Look {
  readonly true: number;
  readonly low: number;
  readonly high: number;
  readonly halfWidth: number;
}

/** Simulates blocks whose year is drawn as the settings say it varies, and looks at each as a crew would. */
function look(scenario: Scenario, random: Random, confidence: number): Look {
  const normal = () => drawNormal(random);
  const lognormal = ({ middle, spread }: { middle: number; spread: number }) =>
    middle * exp(spread * normal());
  const logit = Math.log(BUDBREAK.middle / (1 - BUDBREAK.middle));
  const budbreak =
    1 / (1 + exp(-(logit + (BUDBREAK.spread / (BUDBREAK.middle * (1 - BUDBREAK.middle))) * normal())));
  const clustersAShoot = lognormal(CLUSTERS_A_SHOOT) * exp(scenario.farmSpread * normal());
  const multiplier = lognormal(MULTIPLIER);
  const clusterWeight = scenario.stage === "lagPhase" ? 0.05 * multiplier : lognormal(CLUSTER_WEIGHT);
  const secondary = 0.4 * (1 - scenario.alive);
  const worth = scenario.alive + SECONDARY_WORTH * secondary;
  const grown = worth * (scenario.stage === "frost" ? 1 : budbreak);

  const vines = Array.from({ length: scenario.rows }, () => {
    const rowEffect = exp(scenario.rowSpread * normal());
    return Array.from({ length: scenario.vinesARow }, () => {
      const shape = 1 / scenario.vineSpread ** 2;
      const nodes = max(2, round((NODES * rowEffect * drawGamma(shape, random)) / shape));
      const shoots = max(0, nodes * grown + sqrt(nodes * grown * 0.3) * normal());
      const clusters = max(0, shoots * clustersAShoot + sqrt(shoots * 0.8) * normal());
      return { nodes, shoots, clusters };
    });
  });
  const bearing = scenario.rows * scenario.vinesARow;
  const planted = scenario.placesLookedAt === 0 ? bearing : round(bearing / (1 - scenario.missing));
  const crop = vines.flat().reduce((sum, vine) => sum + vine.clusters, 0) * clusterWeight;

  const what = COUNTED[scenario.stage] ?? "clusters";
  const counts = vines.map((row) => row.map((vine) => vine[what]));
  const figures: StageFigures = figuresOf(
    scenario,
    counted(scenario, counts, random),
    random,
    clusterWeight,
    multiplier,
  );
  const outlook = cropOutlook(
    figures,
    { planted, bearing: bearingShare(scenario, bearing, planted, random) },
    confidence,
  );
  return { true: crop, low: outlook.block.low, high: outlook.block.high, halfWidth: outlook.halfWidth };
}

function counted(scenario: Scenario, counts: number[][], random: Random): Estimate {
  if (scenario.drawn === "block")
    return vinesAtRandom(draws(counts.flat(), scenario.counted, random), counts.flat().length);
  return vinesByRow(
    counts.map((row) => ({
      vines: row.length,
      counts: draws(row, scenario.counted / scenario.rows, random),
    })),
  );
}

function draws(values: readonly number[], n: number, random: Random): number[] {
  const pool = [...values];
  return Array.from({ length: n }, () => pool.splice(Math.floor(random() * pool.length), 1)[0]);
}

function bearingShare(scenario: Scenario, bearing: number, planted: number, random: Random): Estimate {
  if (scenario.placesLookedAt === 0) return exactly("missing", bearing / planted);
  const places = Array.from({ length: planted }, (_, index) => (index < bearing ? 1 : 0));
  const seen = draws(places, scenario.placesLookedAt, random);
  return shareFromCount(
    "missing",
    seen.reduce((sum, one) => sum + one, 0),
    seen.length,
  );
}

function figuresOf(
  scenario: Scenario,
  sample: Estimate,
  random: Random,
  clusterWeight: number,
  multiplier: number,
): StageFigures {
  const clustersPerShoot = fromYears(
    "clustersPerShoot",
    CLUSTERS_A_SHOOT.middle,
    spreadOfUsual(CLUSTERS_A_SHOOT.spread, scenario.farmSpread, 1),
  );
  const usualWeight = fromYears("clusterWeight", CLUSTER_WEIGHT.middle, CLUSTER_WEIGHT.spread);
  switch (scenario.stage) {
    case "winter":
      return {
        stage: "winter",
        nodes: sample,
        buds: fruitfulNodes(canes(scenario, random), SECONDARY_WORTH),
        budbreak: shareFromYears("budbreak", BUDBREAK.middle, BUDBREAK.spread),
        clustersPerShoot,
        clusterWeight: usualWeight,
      };
    case "frost": {
      const counts = canes(scenario, random);
      const sum = (of: keyof (typeof counts)[number]) => counts.reduce((total, cane) => total + cane[of], 0);
      const count = {
        nodes: sum("nodes"),
        primaries: sum("primaries"),
        secondariesOnly: sum("secondariesOnly"),
      };
      return {
        stage: "frost",
        nodes: sample,
        buds: { ...fruitfulNodes([count], SECONDARY_WORTH, NODES_AS_ONE), sample: undefined },
        clustersPerShoot,
        clusterWeight: usualWeight,
      };
    }
    case "shoots":
      return { stage: "shoots", shoots: sample, clustersPerShoot, clusterWeight: usualWeight };
    case "clusters":
      return { stage: "clusters", clusters: sample, clusterWeight: usualWeight };
    case "lagPhase": {
      const spread = sqrt(log1p(CLUSTER_WEIGHT.between ** 2));
      const middle = clusterWeight / multiplier / exp((spread * spread) / 2);
      const weights = Array.from(
        { length: scenario.clustersWeighed },
        () => middle * exp(spread * drawNormal(random)),
      );
      return {
        stage: "lagPhase",
        clusters: sample,
        clusterWeight: clustersWeighed(weights),
        multiplier: fromYears("lagMultiplier", MULTIPLIER.middle, MULTIPLIER.spread),
      };
    }
  }
}

function canes(
  { canes, alive, caneCorrelation }: Pick<Scenario, "canes" | "alive" | "caneCorrelation">,
  random: Random,
  secondary = 0.4,
) {
  const size = 1 / caneCorrelation - 1;
  return Array.from({ length: canes }, () => {
    const own = drawBeta(alive * size, (1 - alive) * size, random);
    let primaries = 0;
    let secondariesOnly = 0;
    for (let node = 0; node < NODES_A_CANE; node++)
      if (random() < own) primaries++;
      else if (random() < secondary) secondariesOnly++;
    return { nodes: NODES_A_CANE, primaries, secondariesOnly };
  });
}

/** How often the range held the true crop, with the standard error of that share. */
export function coverage(scenario: Scenario, blocks: number, seed: number, confidence = 0.9) {
  const random = seededRandom(seed);
  let held = 0;
  let width = 0;
  for (let block = 0; block < blocks; block++) {
    const seen = look(scenario, random, confidence);
    if (seen.true >= seen.low && seen.true <= seen.high) held++;
    width += seen.halfWidth;
  }
  const share = held / blocks;
  return { share, error: sqrt((share * (1 - share)) / blocks), halfWidth: width / blocks };
}

/** Ways of cutting buds: canes, share of primaries alive, correlation on one cane, share of dead ones with a live secondary. */
export const BUD_SCENARIOS: readonly (readonly [
  canes: number,
  alive: number,
  correlation: number,
  secondary: number,
])[] = [
  [3, 0.6, 0.1, 0.3],
  [4, 0.7, 0.1, 0],
  [6, 0.7, 0.1, 0.4],
  [8, 0.9, 0.15, 0.3],
  [10, 0.7, 0.3, 0.4],
  [10, 0.95, 0.1, 0.4],
  [10, 0.05, 0.1, 0.2],
  [12, 0.35, 0.1, 0.4],
  [20, 0.95, 0.2, 0.4],
];

/** How often the range of the buds' worth alone holds the true one. */
export function budCoverage(
  [count, alive, caneCorrelation, secondary]: (typeof BUD_SCENARIOS)[number],
  blocks: number,
  seed: number,
  confidence: number,
) {
  const random = seededRandom(seed);
  const truth = alive + SECONDARY_WORTH * secondary * (1 - alive);
  let held = 0;
  let width = 0;
  for (let block = 0; block < blocks; block++) {
    const cut = canes({ canes: count, alive, caneCorrelation }, random, secondary);
    const { low, high } = productRange([fruitfulNodes(cut, SECONDARY_WORTH)], 0, [], confidence);
    if (truth >= low && truth <= high) held++;
    width += (high - low) / 2 / truth;
  }
  const share = held / blocks;
  return { share, error: sqrt((share * (1 - share)) / blocks), halfWidth: width / blocks };
}
