import type { Farm, FarmRow } from "./farm";
import type { RandomSource } from "./randomSource";
import { settingRows } from "./settingsSheet";

/** Name of the farm as every sheet and page shows it. */
export const FARM_NAME = "Larkmoor Bend Vineyard (invented)";

/** What is planted in a block of the farm and how its winter and its harvests were. */
export interface BlockPlan {
  readonly name: string;
  readonly cultivar: string;
  readonly planted: number;
  readonly rows: number;
  readonly vinesPerRow: number;
  readonly rowSpacing: number;
  readonly vineSpacing: number;
  readonly training: "high wire" | "upright shoots";
  readonly nodeRule: string;
  readonly targetCrop: number;
  readonly clusterWeight: number;
  readonly clustersPerShoot: number;
  readonly budbreak: number;
  /** Share of primary buds that the winter killed. */
  readonly deadPrimaries: number;
  readonly missing: number;
  /** Inches of cordon to a spur position. */
  readonly positionInches: number;
  /** Pounds of prunings on a vine, and shoots on it in June, on average. */
  readonly prunings: number;
  readonly shoots: number;
  /** Tons picked per acre in the harvests before this winter, oldest first. */
  readonly harvests: readonly (readonly [year: number, tonsPerAcre: number])[];
}

const LARKMOOR_BEND: readonly BlockPlan[] = [
  {
    name: "North Bench",
    cultivar: "Marquette",
    planted: 2011,
    rows: 8,
    vinesPerRow: 30,
    rowSpacing: 9,
    vineSpacing: 6,
    training: "high wire",
    nodeRule: "20+20",
    targetCrop: 4,
    clusterWeight: 0.2,
    clustersPerShoot: 1.9,
    budbreak: 0.88,
    deadPrimaries: 0.24,
    missing: 0.03,
    positionInches: 4.5,
    prunings: 1.38,
    shoots: 28,
    harvests: [
      [2022, 3.8],
      [2023, 4.3],
      [2024, 3.6],
      [2025, 4.1],
    ],
  },
  {
    name: "Creek Side",
    cultivar: "Marquette",
    planted: 2014,
    rows: 7,
    vinesPerRow: 30,
    rowSpacing: 9,
    vineSpacing: 6,
    training: "high wire",
    nodeRule: "20+20",
    targetCrop: 3.5,
    clusterWeight: 0.19,
    clustersPerShoot: 1.8,
    budbreak: 0.84,
    deadPrimaries: 0.41,
    missing: 0.06,
    positionInches: 4.5,
    prunings: 1.3,
    shoots: 28,
    harvests: [
      [2022, 3.2],
      [2023, 3.6],
      [2024, 2.4],
      [2025, 3.3],
    ],
  },
  {
    name: "Schoolhouse",
    cultivar: "Brianna",
    planted: 2016,
    rows: 6,
    vinesPerRow: 25,
    rowSpacing: 10,
    vineSpacing: 8,
    training: "upright shoots",
    nodeRule: "by length",
    targetCrop: 4.5,
    clusterWeight: 0.24,
    clustersPerShoot: 1.9,
    budbreak: 0.9,
    deadPrimaries: 0.12,
    missing: 0.02,
    positionInches: 4.8,
    prunings: 2.15,
    shoots: 33,
    harvests: [
      [2022, 3.9],
      [2023, 4.6],
      [2024, 4.2],
      [2025, 4.8],
    ],
  },
];

/** Year in which every vine that was lost before was planted again. */
const REPLANTED = 2024;
const COUNTERS = ["AB", "MK", "JT", "RS"] as const;
const SQUARE_FEET_PER_ACRE = 43560;
const POUNDS_PER_TON = 2000;
const NODES_ON_A_CUT_CANE = 8;
const CANES_CUT = 12;
const VINES_COUNTED_IN_JUNE = 14;
/** Positions without a spur on a cordon that was still worth counting. */
const LONGEST_GAP = 3;
/** Coefficient of variation of the crop of single vines in Strickland's trial of 1932: 2.585 lb of 5.944 lb. */
const VINE_TO_VINE = 0.4349;
/** How much of a vine's own size shows in its shoots; the rest of its crop and of its prunings varies beside it. */
const SIZE_IN_SHOOTS = 0.6;

/** Spreadsheet serial number of a day, counted from 30 December 1899. */
export function serialDay(year: number, month: number, day: number): number {
  return Math.round((Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86400000);
}

/**
 * The invented farm in one finished winter: cordons counted in January and February 2026 by a crew of four that walks up
 * one row and down the next, buds cut in early March, prunings weighed on a sample, clusters counted on a smaller one in
 * June, and the harvests of the years before; with its own blocks unless others are given.
 */
export function inventedFarm(random: RandomSource, blocks: readonly BlockPlan[] = LARKMOOR_BEND): Farm {
  const farm: Farm = {
    blocks: [],
    cordons: [],
    vines: [],
    budCuts: [],
    harvest: [],
    settings: settingRows(),
  };
  const rows = blocks.reduce((sum, plan) => sum + plan.rows, 0);
  const days = workingDays(serialDay(2026, 1, 12), rows);
  let rowsCounted = 0;
  for (const plan of blocks) {
    const places = plan.rows * plan.vinesPerRow;
    farm.blocks.push(blockRow(plan, places));
    const weighed = everyNth(places, 24, random);
    const counted = everyNth(places, VINES_COUNTED_IN_JUNE, random);
    let place = 0;
    let missing = 0;
    for (let row = 1; row <= plan.rows; row++) {
      const countedBy = COUNTERS[rowsCounted % COUNTERS.length];
      const countedOn = days[rowsCounted];
      const walked: FarmRow[][] = [];
      rowsCounted++;
      for (let vine = 1; vine <= plan.vinesPerRow; vine++, place++) {
        const at = { block: plan.name, row, vine };
        const by = { countedBy, countedOn };
        if (random.chance(plan.missing) && vine > 1 && vine < plan.vinesPerRow) {
          missing++;
          farm.vines.push({ ...at, status: "missing", liveTrunks: 0, note: null, ...by });
          continue;
        }
        const young = random.chance(0.012);
        const cordons = young ? youngVine(plan, random) : bearingVine(plan, random);
        walked.push(
          cordons.map((cordon) => ({ ...at, ...cordon, ...by, trunkYear: trunkYear(plan, young, cordon) })),
        );
        const liveTrunks = new Set(cordons.filter((c) => c.condition !== "dead").map((c) => c.trunk)).size;
        const size = random.normal();
        const shoots = Math.round(plan.shoots * unevenly(SIZE_IN_SHOOTS * size, SIZE_IN_SHOOTS));
        farm.vines.push({
          ...at,
          status: young ? "replanted" : "bearing",
          liveTrunks,
          prunings:
            !young && weighed.has(place) ? rounded(plan.prunings * likeItsSize(size, random), 2) : null,
          shoots: !young && counted.has(place) ? shoots : null,
          clusters:
            !young && counted.has(place)
              ? Math.round(plan.shoots * plan.clustersPerShoot * likeItsSize(size, random))
              : null,
          planted: young ? REPLANTED : null,
          note: young ? `replanted ${REPLANTED}` : liveTrunks === 1 ? "one live trunk" : null,
          ...by,
        });
      }
      farm.cordons.push(...(row % 2 === 0 ? walked.reverse() : walked).flat());
    }
    farm.budCuts.push(...budCuts(plan, random));
    farm.harvest.push(...harvests(plan, places - missing, places, random));
  }
  return farm;
}

/** Years are known in the block that was planted last: the first trunk was laid up a year later, the others two after that. */
function trunkYear(plan: BlockPlan, young: boolean, { trunk: number }: FarmRow): number | null {
  if (young) return REPLANTED + 1;
  if (plan !== LARKMOOR_BEND.at(-1)) return null;
  return number === 1 ? plan.planted + 1 : plan.planted + 3;
}

/** A factor of mean 1 whose logarithm deviates so many times as far as that of a single vine's crop in the trial. */
function unevenly(deviates: number, spread = 1): number {
  const variance = Math.log(1 + VINE_TO_VINE ** 2);
  return Math.exp(Math.sqrt(variance) * deviates - (variance * spread ** 2) / 2);
}

/** What a vine of that size bears or grows against the block's mean: as uneven from vine to vine as in the trial. */
function likeItsSize(size: number, random: RandomSource): number {
  return unevenly(SIZE_IN_SHOOTS * size + Math.sqrt(1 - SIZE_IN_SHOOTS ** 2) * random.normal());
}

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}

function blockRow(plan: BlockPlan, places: number): FarmRow {
  return {
    block: plan.name,
    cultivar: plan.cultivar,
    planted: plan.planted,
    rows: plan.rows,
    vines: places,
    rowSpacing: plan.rowSpacing,
    vineSpacing: plan.vineSpacing,
    training: plan.training,
    nodeRule: plan.nodeRule,
    injuryRule: "Cornell 2014",
    targetCrop: plan.targetCrop,
    clusterWeight: plan.clusterWeight,
    clustersPerShoot: plan.clustersPerShoot,
    budbreak: plan.budbreak,
    grapeKind: "new hybrid",
  };
}

/** Monday to Friday, from the first day on. */
function workingDays(first: number, count: number): number[] {
  const days: number[] = [];
  for (let day = first; days.length < count; day++) if (day % 7 >= 2) days.push(day);
  return days;
}

/** Places of a sample spread evenly over the block, from a random start. */
function everyNth(places: number, wanted: number, random: RandomSource): Set<number> {
  const step = Math.floor(places / wanted);
  const start = random.whole(0, step - 1);
  return new Set(Array.from({ length: wanted }, (_, i) => start + i * step));
}

type Orientation = "spursDown" | "spursLevel" | "spursUp";

interface TrunkState {
  readonly condition: "sound" | "injured" | "diseased" | "dead";
  /** Chance that a position carries a live spur. */
  readonly filled: number;
}

/** Two to three trunks with a candidate a side from most of them; a trunk without any is none that is numbered. */
function bearingVine(plan: BlockPlan, random: RandomSource): FarmRow[] {
  const trunks = Array.from({ length: random.chance(0.12) ? 3 : 2 }, (_, i) => trunk(plan, i === 0, random));
  if (trunks.every((state) => state.condition === "dead")) trunks[0] = { condition: "injured", filled: 0.55 };
  const cordons: FarmRow[] = [];
  for (const side of ["left", "right"] as const)
    trunks.forEach((state, index) => {
      const reaches = index < 2 ? random.chance(0.88) : random.chance(0.35);
      const neededHere = index === trunks.length - 1 && !cordons.some((cordon) => cordon.side === side);
      if (reaches || neededHere) cordons.push(candidate(plan, side, index + 1, state, random));
    });
  const numbered = [...new Set(cordons.map((cordon) => cordon.trunk))].sort();
  return cordons.map((cordon, index) => ({
    ...cordon,
    cordon: "ABCDEF"[index],
    trunk: 1 + numbered.indexOf(cordon.trunk),
  }));
}

/** One trunk, one short cordon a side. */
function youngVine(plan: BlockPlan, random: RandomSource): FarmRow[] {
  return (["left", "right"] as const).map((side, index) => ({
    ...candidate(plan, side, 1, { condition: "sound", filled: 0.9 }, random),
    cordon: "AB"[index],
  }));
}

function trunk(plan: BlockPlan, oldest: boolean, random: RandomSource): TrunkState {
  const hurt = plan.deadPrimaries * (oldest ? 0.35 : 0.25);
  if (random.chance(hurt * 0.25)) return { condition: "dead", filled: 0 };
  if (random.chance(hurt)) return { condition: "injured", filled: 0.68 };
  if (oldest && random.chance(0.05)) return { condition: "diseased", filled: 0.66 };
  return { condition: "sound", filled: oldest ? 0.82 : 0.88 };
}

function candidate(
  plan: BlockPlan,
  side: "left" | "right",
  trunkNumber: number,
  state: TrunkState,
  random: RandomSource,
): FarmRow {
  const half = plan.vineSpacing / 2;
  const length = random.number(half - 0.4, half + 0.1, 1);
  return {
    side,
    cordon: null,
    trunk: trunkNumber,
    length,
    ...spursOn(plan, length, state.filled, random, state.condition === "dead" ? Infinity : LONGEST_GAP),
    nodesPerSpur: 2,
    diameter: random.number(trunkNumber === 1 ? 0.8 : 0.6, trunkNumber === 1 ? 1.3 : 1, 2),
    trunkCondition: state.condition,
    condition: state.condition === "sound" && random.chance(0.02) ? "injured" : state.condition,
    fixedChoice: null,
    note: null,
  };
}

/**
 * The positions on a cordon of that length in feet, the live spurs on them where each position carries one with the
 * chance given, and what follows from where they stand.
 */
export function spursOn(
  plan: BlockPlan,
  length: number,
  filled: number,
  random: RandomSource,
  longestGap = Infinity,
) {
  const positions = Math.max(1, Math.round((length * 12) / plan.positionInches));
  const live = Array.from({ length: positions }, () => random.chance(filled));
  limitGaps(live, longestGap);
  const directions: Record<Orientation, number> = { spursDown: 0, spursLevel: 0, spursUp: 0 };
  for (const filled of live) if (filled) directions[direction(plan, random)]++;
  return { positions, liveSpurs: live.filter(Boolean).length, ...longestRunEmpty(live), ...directions };
}

/** Puts a spur wherever more positions in a row than that have none. */
function limitGaps(live: boolean[], longestGap: number): void {
  let run = 0;
  for (let i = 0; i < live.length; i++) {
    run = live[i] ? 0 : run + 1;
    if (run > longestGap) {
      live[i] = true;
      run = 0;
    }
  }
}

function direction(plan: BlockPlan, random: RandomSource): Orientation {
  const [often, sometimes, seldom]: Orientation[] =
    plan.training === "high wire"
      ? ["spursDown", "spursLevel", "spursUp"]
      : ["spursUp", "spursLevel", "spursDown"];
  if (random.chance(0.6)) return often;
  return random.chance(0.75) ? sometimes : seldom;
}

/** The longest stretch of places without a live spur, and how many places lie before it. */
function longestRunEmpty(live: readonly boolean[]): { longestGap: number; gapFrom: number | null } {
  let longestGap = 0;
  let gapFrom: number | null = null;
  let run = 0;
  for (const [place, filled] of live.entries()) {
    run = filled ? 0 : run + 1;
    if (run > longestGap) [longestGap, gapFrom] = [run, place + 1 - run];
  }
  return { longestGap, gapFrom };
}

function budCuts(plan: BlockPlan, random: RandomSource): FarmRow[] {
  return Array.from({ length: CANES_CUT }, (_, index) => {
    const nodes = Array.from({ length: NODES_ON_A_CUT_CANE }, () => !random.chance(plan.deadPrimaries));
    const primariesAlive = nodes.filter(Boolean).length;
    const secondariesAlive = nodes.filter((alive) => alive || random.chance(0.7)).length;
    return {
      block: plan.name,
      row: 1 + (index % plan.rows),
      vine: 2 + ((index * 7) % (plan.vinesPerRow - 3)),
      cane: String(index + 1),
      nodesCut: NODES_ON_A_CUT_CANE,
      primariesAlive,
      secondariesAlive,
      countedBy: COUNTERS[index % 2],
      countedOn: serialDay(2026, 3, 3),
    };
  });
}

function harvests(plan: BlockPlan, bearing: number, places: number, random: RandomSource): FarmRow[] {
  const acres = (places * plan.rowSpacing * plan.vineSpacing) / SQUARE_FEET_PER_ACRE;
  return plan.harvests.map(([year, tonsPerAcre]) => {
    const clusterWeight = random.number(plan.clusterWeight - 0.02, plan.clusterWeight + 0.02, 3);
    return {
      block: plan.name,
      year,
      picked: Math.round((tonsPerAcre * POUNDS_PER_TON * acres) / 10) * 10,
      vinesPicked: bearing,
      clusterWeight,
      lagWeight: Math.round(clusterWeight * random.number(0.47, 0.54, 2) * 1000) / 1000,
      clustersPerShoot: random.number(plan.clustersPerShoot - 0.15, plan.clustersPerShoot + 0.15, 2),
      budbreak: random.number(plan.budbreak - 0.04, plan.budbreak + 0.04, 2),
    };
  });
}
