import type { FarmRow } from "../../../sample-workbooks/make/farm";
import {
  inventedFarm,
  serialDay,
  spursOn,
  type BlockPlan,
} from "../../../sample-workbooks/make/inventedFarm";
import { rounded } from "../../../sample-workbooks/make/mistakes/mistake";
import type { RandomSource } from "../../../sample-workbooks/make/randomSource";
import { seasonOf, sheetOf, type Season } from "../../../sample-workbooks/make/season";

interface Counter {
  readonly name: string;
  /** Chance to write a length to the half foot instead of the tenth; everybody does it now and then. */
  readonly rounds: number;
  /** How much more readily this person calls a spur "down"; nobody sees it quite alike. */
  readonly down: number;
}

const NAMES = ["North Bench", "Creek Side", "Schoolhouse", "Long Field", "Quarry", "Old Orchard"];
const INITIALS = ["AB", "MK", "JT", "RS", "EL"];

/**
 * A winter's count sheets without a mistake in them, as uneven as real ones: frost that lies on some rows, cordons cut
 * back or led into a missing vine's place, replanted vines, rows finished the next day or shared by two people, people
 * who see things a little differently, blanks in cells that may be blank, columns that some farms do not use.
 */
export function plausibleSeason(random: RandomSource): Season {
  const plans = plausiblePlans(random);
  const season = seasonOf(inventedFarm(random, plans), serialDay(2026, 4, 15));
  const counters = walkUnevenly(season, random);
  for (const plan of plans) growUnevenly(season, plan, counters, random);
  for (const row of season.vines.rows) writeUnevenly(row, random, { liveTrunks: 0.02, countedBy: 0.01 });
  for (const row of season.cordons.rows)
    writeUnevenly(row, random, { longestGap: 0.01, diameter: 0.03, condition: 0.02 });
  leaveOutColumns(season, random);
  return random.chance(0.5) ? { ...season, past: lastWinter(season, random) } : season;
}

function plausiblePlans(random: RandomSource): BlockPlan[] {
  return NAMES.slice(0, random.whole(2, 4)).map((name) => ({
    name,
    cultivar: random.oneOf(["Marquette", "Brianna", "Frontenac"]),
    planted: random.whole(2005, 2019),
    rows: random.whole(5, 10),
    vinesPerRow: random.whole(16, 32),
    rowSpacing: random.oneOf([8, 9, 10]),
    vineSpacing: random.oneOf([6, 6, 7, 8]),
    training: random.chance(0.7) ? "high wire" : "upright shoots",
    nodeRule: random.oneOf(["20+20", "30+10", "by length"]),
    targetCrop: random.number(3, 5, 1),
    clusterWeight: random.number(0.16, 0.26, 2),
    clustersPerShoot: random.number(1.6, 2, 1),
    budbreak: random.number(0.8, 0.92, 2),
    deadPrimaries: random.number(0.05, 0.6, 2),
    missing: random.number(0.01, 0.07, 2),
    positionInches: random.number(3.8, 5.5, 1),
    prunings: random.number(1, 2.5, 1),
    shoots: random.whole(28, 36),
    harvests: [2024, 2025].map((year) => [year, random.number(2, 6, 1)] as const),
  }));
}

const workingDay = (day: number) => (day % 7 === 0 ? day + 2 : day % 7 === 1 ? day + 1 : day);

/** Two rows a day, the one or other finished the next day or shared by two people; answers who counted. */
function walkUnevenly({ cordons, vines }: Season, random: RandomSource): Counter[] {
  const counters = INITIALS.slice(0, random.whole(2, 5)).map((name) => ({
    name,
    rounds: random.number(0, 0.12, 2),
    down: random.number(-0.04, 0.04, 2),
  }));
  const counted = new Map<string, FarmRow[]>();
  for (const own of [...vines.rows, ...cordons.rows]) {
    const row = `${own.block} ${own.row}`;
    counted.set(row, [...(counted.get(row) ?? []), own]);
  }
  let day = workingDay(serialDay(2025, 12, 8) + random.whole(0, 40));
  let turn = 0;
  for (const rows of counted.values()) {
    const last = Math.max(...rows.map(({ vine }) => Number(vine)));
    const isEven = Number(rows[0].row) % 2 === 0;
    const sharedFrom = random.chance(0.08) ? random.whole(5, last) : Infinity;
    const nextDayFrom = random.chance(0.12) ? random.whole(5, last) : Infinity;
    const [first, second] = [counters[turn++ % counters.length], counters[turn % counters.length]];
    if (turn % 2 === 0) day = workingDay(day + 1);
    for (const row of rows) {
      const place = isEven ? last - Number(row.vine) : Number(row.vine) - 1;
      row.countedBy = (place < sharedFrom ? first : second).name;
      row.countedOn = place < nextDayFrom ? day : workingDay(day + 1);
    }
    if (sharedFrom < Infinity) turn++;
    if (nextDayFrom < Infinity) day = workingDay(day + 1);
  }
  return counters;
}

/** Frost on some rows and low ends, wood led into gaps or cut back, vines with short cordons or none yet. */
function growUnevenly(
  season: Season,
  plan: BlockPlan,
  counters: readonly Counter[],
  random: RandomSource,
): void {
  const filled = random.number(0.7, 0.92, 2);
  const half = plan.vineSpacing / 2;
  const thickness = random.number(0.7, 1.2, 2);
  const isHere = ({ block }: FarmRow) => block === plan.name;
  const place = ({ row, vine }: FarmRow, step = 0) => `${row} ${Number(vine) + step}`;
  const status = new Map(season.vines.rows.filter(isHere).map((row) => [place(row), row.status]));
  const rows = Array.from({ length: plan.rows + 1 }, () => ({
    frost: random.normal() * 0.07,
    lowEnd: random.chance(0.25) ? random.number(0, 0.2, 2) : 0,
  }));
  for (const row of season.cordons.rows.filter(isHere)) {
    const { frost, lowEnd } = rows[Number(row.row)];
    const counter = counters.find(({ name }) => name === row.countedBy)!;
    const isYoung = status.get(place(row)) !== "bearing";
    const room = !isYoung && [1, -1].some((step) => status.get(place(row, step)) === "missing");
    const isHurt = row.trunkCondition !== "sound";
    let length = half - 0.15 + 0.22 * random.normal();
    if (isYoung) length = random.number(0.6, 2, 1);
    else if (room && random.chance(0.3)) length *= random.number(1.4, 1.9, 2);
    else if (random.chance(0.04)) length *= random.number(0.6, 0.9, 2);
    else if (isHurt && random.chance(0.15)) length *= random.number(0.25, 0.8, 2);
    length = rounded(Math.min(Math.max(0.4, length), half * (room ? 2.2 : 1.25)), 1);
    if (random.chance(counter.rounds)) length = Math.max(0.5, Math.round(length * 2) / 2);
    const share = filled + frost - lowEnd * (Number(row.vine) / plan.vinesPerRow);
    const chance = Math.min(0.97, Math.max(0.2, share)) * (isHurt ? 0.75 : 1);
    const positionInches = plan.positionInches + random.number(-0.5, 0.5, 2);
    Object.assign(row, {
      length,
      ...spursOn({ ...plan, positionInches }, length, row.condition === "dead" ? 0 : chance, random),
      diameter: rounded(Math.max(0.3, thickness * Math.exp(0.22 * random.normal())), 2),
      nodesPerSpur: random.chance(0.08) ? 3 : random.chance(0.03) ? 1 : 2,
    });
    seeUnevenly(row, counter, random);
  }
}

/** A person who calls spurs "down" more readily than others sees some of the level ones so. */
function seeUnevenly(row: FarmRow, { down }: Counter, random: RandomSource): void {
  const [from, to] = down > 0 ? ["spursLevel", "spursDown"] : ["spursDown", "spursLevel"];
  const seen = Array.from({ length: Number(row[from]) }, () => random.chance(Math.abs(down)));
  const moved = seen.filter(Boolean).length;
  row[from] = Number(row[from]) - moved;
  row[to] = Number(row[to]) + moved;
}

/** Cells left blank where they may be, and a word beside the row now and then. */
function writeUnevenly(row: FarmRow, random: RandomSource, blank: Readonly<Record<string, number>>): void {
  for (const [id, share] of Object.entries(blank)) if (random.chance(share)) row[id] = null;
  if (random.chance(0.02))
    row.note = random.oneOf([
      "wire broken",
      "vole damage",
      "post leaning",
      "12 suckers",
      "tie",
      "crown gall?",
    ]);
}

/** Columns that some farms do not use. */
function leaveOutColumns({ cordons }: Season, random: RandomSource): void {
  const unused = new Set<string>();
  if (random.chance(0.15)) unused.add("diameter");
  if (random.chance(0.15)) for (const id of ["spursDown", "spursLevel", "spursUp"]) unused.add(id);
  if (random.chance(0.3)) unused.add("trunkCondition");
  if (random.chance(0.3)) unused.add("nodesPerSpur");
  cordons.columns = cordons.columns.filter((id) => !unused.has(id));
}

/** Most cordons a winter ago: a position miscounted now and then, the length a little less; most vines with their status. */
function lastWinter({ cordons, vines }: Season, random: RandomSource): Season["past"] {
  const before = cordons.rows.filter(() => random.chance(0.85)).map((row) => winterBefore(row, random));
  const status = (row: FarmRow) => {
    if (row.status === "missing") return random.chance(0.7) ? "missing" : "bearing";
    return row.status === "bearing" ? "bearing" : random.oneOf(["missing", "replanted"]);
  };
  return {
    cordons: { ...sheetOf("cordons", before, "Cordons 2025"), columns: cordons.columns },
    vines: sheetOf(
      "vines",
      vines.rows.map((row) => ({ block: row.block, row: row.row, vine: row.vine, status: status(row) })),
      "Vines 2025",
    ),
  };
}

function winterBefore(row: FarmRow, random: RandomSource): FarmRow {
  const positions = Math.max(1, Number(row.positions) + (random.chance(0.2) ? random.whole(-1, 1) : 0));
  const share = random.chance(0.05) ? random.number(0.5, 0.9, 2) : 1;
  const grown = Math.max(1, Math.round(positions * share));
  return {
    ...row,
    length: rounded(Math.max(0.3, Number(row.length) * share), 1),
    positions: grown,
    liveSpurs: Math.min(grown, Number(row.liveSpurs)),
    condition: "sound",
    countedOn: Number(row.countedOn) - 364,
  };
}
