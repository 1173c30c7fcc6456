import { longestRunEmpty } from "../../../sample-workbooks/make/inventedFarm";
import type { RandomSource } from "../../../sample-workbooks/make/randomSource";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetId } from "../../../src/survey/sheets/column";
import { serialOf } from "../../../src/survey/reading/serialDate";

/** One row of a sheet: a cell by column id of src/survey/sheets/sheets.ts. */
export type WinterRow = Record<string, CellValue>;

/** One sheet of a season. */
export interface SeasonSheet {
  readonly name: string;
  readonly shape: SheetId;
  /** Column ids in the order of the sheet; a column may stand twice when somebody made that mistake. */
  columns: string[];
  rows: WinterRow[];
  /** Rows below the table, such as a typed total. */
  below: WinterRow[];
}

/** The count sheets of one winter on a farm that does not exist. */
export interface Season {
  readonly blocks: SeasonSheet;
  readonly cordons: SeasonSheet;
  readonly vines: SeasonSheet;
  readonly budCuts: SeasonSheet;
  readonly harvest: SeasonSheet;
  /** Last winter's cordons and vines; some farms have kept them. */
  readonly past: { readonly cordons: SeasonSheet; readonly vines: SeasonSheet } | undefined;
  /** Serial of the day on which the sheets are checked. */
  readonly today: number;
}

interface Block {
  readonly name: string;
  readonly rows: number;
  readonly vinesPerRow: number;
  readonly spacing: number;
  readonly training: "high wire" | "upright shoots";
  /** Inches between positions. */
  readonly positionInches: number;
  /** Chance that a position of a sound cordon carries a live spur. */
  readonly filled: number;
  readonly missing: number;
  readonly diameter: number;
  readonly prunings: number;
  /** Pounds a vine bears in a usual year. */
  readonly crop: number;
}

interface Counter {
  readonly name: string;
  /** Chance to write a length to the half foot instead of the tenth; everybody does it now and then. */
  readonly rounds: number;
  /** How much more readily this person calls a spur "down"; nobody sees it quite alike. */
  readonly down: number;
}

const SHEET_COLUMNS = {
  blocks: ["block", "cultivar", "planted", "rows", "vines", "rowSpacing", "vineSpacing", "training"],
  cordons: [
    "block",
    "row",
    "vine",
    "side",
    "cordon",
    "trunk",
    "length",
    "positions",
    "liveSpurs",
    "longestGap",
    "gapFrom",
    "spursDown",
    "spursLevel",
    "spursUp",
    "nodesPerSpur",
    "diameter",
    "condition",
    "trunkCondition",
    "fixedChoice",
    "note",
    "countedBy",
    "countedOn",
  ],
  vines: [
    "block",
    "row",
    "vine",
    "status",
    "liveTrunks",
    "prunings",
    "clusters",
    "shoots",
    "note",
    "countedBy",
    "countedOn",
  ],
  budCuts: [
    "block",
    "row",
    "vine",
    "cane",
    "nodesCut",
    "primariesAlive",
    "secondariesAlive",
    "countedBy",
    "countedOn",
  ],
  harvest: ["block", "year", "picked", "vinesPicked"],
} as const;

const NAMES = ["North Bench", "Creek Side", "Schoolhouse", "Long Field", "Quarry", "Old Orchard"];
const INITIALS = ["AB", "MK", "JT", "RS", "EL"];

/**
 * A winter's count sheets without a mistake in them, as uneven as real ones: frost that lies on some rows, cordons cut
 * back or led into a missing vine's place, replanted vines, rows finished the next day or shared by two people, people
 * who see things a little differently, blanks in cells that may be blank, columns that some farms do not use.
 */
export function plausibleSeason(random: RandomSource): Season {
  const chance = (share: number) => random.chance(share);
  const normal = () => {
    const u = random.number(1e-6, 1, 6);
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.number(0, 1, 6));
  };
  const blocks = plausibleBlocks(random);
  const counters = plausibleCounters(random);
  const keepsPast = chance(0.5);
  const unused = new Set<string>();
  if (chance(0.15)) unused.add("diameter");
  if (chance(0.15)) for (const id of ["spursDown", "spursLevel", "spursUp"]) unused.add(id);
  if (chance(0.3)) unused.add("trunkCondition");
  if (chance(0.3)) unused.add("nodesPerSpur");
  const sheet = (name: string, shape: keyof typeof SHEET_COLUMNS): SeasonSheet => ({
    name,
    shape,
    columns: SHEET_COLUMNS[shape].filter((id) => !unused.has(id)),
    rows: [],
    below: [],
  });
  const season: Season = {
    blocks: sheet("Blocks", "blocks"),
    cordons: sheet("Cordons", "cordons"),
    vines: sheet("Vines", "vines"),
    budCuts: sheet("Bud cuts", "budCuts"),
    harvest: sheet("Harvest", "harvest"),
    past: keepsPast
      ? { cordons: sheet("Cordons 2025", "cordons"), vines: sheet("Vines 2025", "vines") }
      : undefined,
    today: serialOf(2026, 4, 15)!,
  };

  let day = workingDay(serialOf(2025, 12, 8)! + random.whole(0, 40));
  let turn = 0;
  for (const block of blocks) {
    season.blocks.rows.push(blockRow(block, random));
    for (let row = 1; row <= block.rows; row++) {
      const frost = normal() * 0.07;
      const lowEnd = chance(0.25) ? random.number(0, 0.2, 2) : 0;
      let counter = counters[turn++ % counters.length];
      if (turn % 2 === 0) day = workingDay(day + 1);
      const sharedFrom = chance(0.08) ? random.whole(5, block.vinesPerRow) : Infinity;
      const nextDayFrom = chance(0.12) ? random.whole(5, block.vinesPerRow) : Infinity;
      const numbers = Array.from({ length: block.vinesPerRow }, (_, i) => i + 1);
      if (row % 2 === 0) numbers.reverse();
      const missing = new Set(numbers.filter(() => chance(block.missing)));
      numbers.forEach((vine, place) => {
        if (place === sharedFrom) counter = counters[turn++ % counters.length];
        if (place === nextDayFrom) day = workingDay(day + 1);
        const at = { block: block.name, row, vine };
        const by = { countedBy: chance(0.01) ? null : counter.name, countedOn: day };
        const filled = Math.min(
          0.97,
          Math.max(0.2, block.filled + frost - lowEnd * (vine / block.vinesPerRow)),
        );
        if (missing.has(vine)) {
          season.vines.rows.push({ ...at, status: "missing", liveTrunks: 0, ...by });
          season.past?.vines.rows.push({ ...at, status: chance(0.7) ? "missing" : "bearing" });
          return;
        }
        const young = chance(0.02);
        const room = missing.has(vine - 1) || missing.has(vine + 1);
        const { cordons, trunks } = young
          ? { cordons: youngVine(block, filled, counter, random, normal), trunks: 1 }
          : bearingVine(block, filled, room, counter, random, normal);
        for (const cordon of cordons) season.cordons.rows.push(Object.assign(cordon, at, by));
        season.past?.cordons.rows.push(
          ...cordons
            .filter(() => chance(0.85))
            .map((cordon) => ({ ...at, ...lastWinter(cordon, random), countedOn: day - 364 })),
        );
        const liveTrunks = trunks + (chance(0.06) ? 1 : 0);
        const weighed = !young && chance(0.12);
        const counted = !young && chance(0.06);
        const shoots = Math.max(12, Math.round(32 + 6 * normal()));
        season.vines.rows.push({
          ...at,
          status: young ? (chance(0.5) ? "young" : "replanted") : "bearing",
          liveTrunks: chance(0.02) ? null : liveTrunks,
          prunings: weighed ? rounded(block.prunings * Math.exp(0.42 * normal()), 2) : null,
          shoots: counted ? shoots : null,
          clusters: counted ? Math.round(shoots * Math.max(0.8, 1.8 + 0.25 * normal())) : null,
          note: chance(0.02)
            ? random.oneOf(["wire broken", "vole damage", "post leaning", "12 suckers"])
            : null,
          ...by,
        });
        season.past?.vines.rows.push({
          ...at,
          status: young ? random.oneOf(["missing", "replanted"]) : "bearing",
        });
      });
    }
    season.budCuts.rows.push(...budCuts(block, random, day));
    season.harvest.rows.push(
      ...[2024, 2025].map((year) => ({
        block: block.name,
        year,
        picked: Math.round(block.rows * block.vinesPerRow * block.crop * random.number(0.6, 1.4, 2)),
        vinesPicked: block.rows * block.vinesPerRow - random.whole(0, 10),
      })),
    );
  }
  return season;
}

function plausibleBlocks(random: RandomSource): Block[] {
  const names = NAMES.slice(0, random.whole(2, 4));
  return names.map((name) => ({
    name,
    rows: random.whole(5, 10),
    vinesPerRow: random.whole(16, 32),
    spacing: random.oneOf([6, 6, 7, 8]),
    training: random.chance(0.7) ? "high wire" : "upright shoots",
    positionInches: random.number(3.8, 5.5, 1),
    filled: random.number(0.7, 0.92, 2),
    missing: random.number(0.01, 0.07, 2),
    diameter: random.number(0.7, 1.2, 2),
    prunings: random.number(1, 2.5, 1),
    crop: random.number(8, 20, 1),
  }));
}

function plausibleCounters(random: RandomSource): Counter[] {
  return INITIALS.slice(0, random.whole(2, 5)).map((name) => ({
    name,
    rounds: random.number(0, 0.12, 2),
    down: random.number(-0.04, 0.04, 2),
  }));
}

function blockRow(block: Block, random: RandomSource): WinterRow {
  return {
    block: block.name,
    cultivar: random.oneOf(["Marquette", "Brianna", "Frontenac"]),
    planted: random.whole(2005, 2019),
    rows: block.rows,
    vines: block.rows * block.vinesPerRow,
    rowSpacing: random.oneOf([8, 9, 10]),
    vineSpacing: block.spacing,
    training: block.training,
  };
}

function workingDay(day: number): number {
  return day % 7 === 0 ? day + 2 : day % 7 === 1 ? day + 1 : day;
}

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}

interface Trunk {
  readonly condition: "sound" | "injured" | "diseased" | "dead";
  readonly filled: number;
}

function bearingVine(
  block: Block,
  filled: number,
  room: boolean,
  counter: Counter,
  random: RandomSource,
  normal: () => number,
): { cordons: WinterRow[]; trunks: number } {
  const count = random.chance(0.08) ? 1 : random.chance(0.12) ? 3 : 2;
  const trunks = Array.from({ length: count }, (_, index): Trunk => {
    if (index > 0 && random.chance(0.05)) return { condition: "dead", filled: 0 };
    if (random.chance(0.1)) return { condition: "injured", filled: filled * 0.75 };
    if (random.chance(0.04)) return { condition: "diseased", filled: filled * 0.75 };
    return { condition: "sound", filled };
  });
  const cordons: WinterRow[] = [];
  for (const side of ["left", "right"])
    trunks.forEach((trunk, index) => {
      const first = !cordons.some((cordon) => cordon.side === side);
      if (!random.chance(0.85) && !(index === trunks.length - 1 && first)) return;
      cordons.push(candidate(block, side, index + 1, trunk, room, counter, random, normal));
    });
  return {
    cordons: cordons.map((cordon, index) => ({ ...cordon, cordon: "ABCDEFGH"[index] })),
    trunks: trunks.filter(({ condition }) => condition !== "dead").length,
  };
}

function youngVine(
  block: Block,
  filled: number,
  counter: Counter,
  random: RandomSource,
  normal: () => number,
): WinterRow[] {
  if (random.chance(0.3)) return [];
  return ["left", "right"].map((side, index) => {
    const cordon = candidate(block, side, 1, { condition: "sound", filled }, false, counter, random, normal);
    const length = random.number(0.6, 2, 1);
    return { ...cordon, ...spurs(block, length, filled, counter, random), length, cordon: "AB"[index] };
  });
}

function candidate(
  block: Block,
  side: string,
  trunkNumber: number,
  trunk: Trunk,
  room: boolean,
  counter: Counter,
  random: RandomSource,
  normal: () => number,
): WinterRow {
  const half = block.spacing / 2;
  let length = half - 0.15 + 0.22 * normal();
  if (room && random.chance(0.3)) length *= random.number(1.4, 1.9, 2);
  else if (random.chance(0.04)) length *= random.number(0.6, 0.9, 2);
  else if (trunk.condition !== "sound" && random.chance(0.15)) length *= random.number(0.25, 0.8, 2);
  length = rounded(Math.min(Math.max(0.4, length), half * (room ? 2.2 : 1.25)), 1);
  if (random.chance(counter.rounds)) length = Math.max(0.5, Math.round(length * 2) / 2);
  const condition = trunk.condition === "sound" && random.chance(0.05) ? "injured" : trunk.condition;
  const own = spurs(block, length, trunk.filled, counter, random);
  return {
    side,
    cordon: null,
    trunk: trunkNumber,
    length,
    ...own,
    longestGap: random.chance(0.01) ? null : own.longestGap,
    nodesPerSpur: random.chance(0.08) ? 3 : random.chance(0.03) ? 1 : 2,
    diameter: random.chance(0.03)
      ? null
      : rounded(Math.max(0.3, block.diameter * Math.exp(0.22 * normal())), 2),
    condition: random.chance(0.02) ? null : condition,
    trunkCondition: trunk.condition,
    fixedChoice: null,
    note: random.chance(0.02) ? random.oneOf(["tie", "crown gall?", "lay cane", "wound painted"]) : null,
  };
}

/** Positions, live spurs and what follows from where they stand. */
function spurs(block: Block, length: number, filled: number, counter: Counter, random: RandomSource) {
  const positions = Math.max(
    1,
    Math.round((length * 12) / (block.positionInches + random.number(-0.5, 0.5, 2))),
  );
  const live = Array.from({ length: positions }, () => random.chance(filled));
  const usual = block.training === "high wire" ? "spursDown" : "spursUp";
  const seldom = block.training === "high wire" ? "spursUp" : "spursDown";
  const directions = { spursDown: 0, spursLevel: 0, spursUp: 0 };
  for (const alive of live)
    if (alive) {
      const usualShare = 0.6 + (usual === "spursDown" ? counter.down : -counter.down);
      if (random.chance(usualShare)) directions[usual]++;
      else if (random.chance(0.7)) directions.spursLevel++;
      else directions[seldom]++;
    }
  return { positions, liveSpurs: live.filter(Boolean).length, ...longestRunEmpty(live), ...directions };
}

/** The same cordon a winter ago: a spur or two more, the length a little less, a position miscounted now and then. */
function lastWinter(cordon: WinterRow, random: RandomSource): WinterRow {
  const positions = Math.max(1, Number(cordon.positions) + (random.chance(0.2) ? random.whole(-1, 1) : 0));
  const length = random.chance(0.05)
    ? Number(cordon.length) * random.number(0.5, 0.9, 2)
    : Number(cordon.length);
  const grown = Math.round(positions * (length / Number(cordon.length)));
  return {
    ...cordon,
    length: rounded(Math.max(0.3, length), 1),
    positions: Math.max(1, grown),
    liveSpurs: Math.min(grown, Number(cordon.liveSpurs)),
    condition: "sound",
  };
}

function budCuts(block: Block, random: RandomSource, day: number): WinterRow[] {
  const dead = random.number(0.05, 0.6, 2);
  return Array.from({ length: random.whole(8, 12) }, (_, index) => {
    const nodes = random.whole(6, 10);
    const alive = Array.from({ length: nodes }, () => !random.chance(dead)).filter(Boolean).length;
    return {
      block: block.name,
      row: random.whole(1, block.rows),
      vine: null,
      cane: String(index + 1),
      nodesCut: nodes,
      primariesAlive: alive,
      secondariesAlive: random.whole(alive, nodes),
      countedBy: INITIALS[0],
      countedOn: workingDay(day),
    };
  });
}
