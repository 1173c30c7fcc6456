import { gapsByRow, type CordonPositions, type RowGaps } from "../../domain/gapsByRow";
import type { Stays } from "./fixedCordons";
import type { Season, SurveyTable } from "./season";
import type { RowsUsed } from "./usedRows";
import type { VinePlaces } from "./vinePlaces";
import { NO_PLACE, placeOf, rowKey } from "./vinePlaces";

/** Gaps of one vine; a vine of which no cordon counts has no positions. */
export interface VineGaps {
  readonly vine: number;
  readonly positions: number;
  readonly gaps: number;
}

/** Gaps of one row of vines, this winter and over the cordons that were counted last winter too. */
export interface SurveyRowGaps extends RowGaps {
  /** Sheet and row in which the first counted cordon of the row stands. */
  readonly firstCell: { readonly sheet: string; readonly row: number };
  readonly byVine: readonly VineGaps[];
  /** Vines with candidates of which none counts: nothing on them is worth keeping. */
  readonly vinesWithout: number;
  /** Undefined where no cordon of the row was counted last winter. */
  readonly since?: GapsSince;
}

/** The same cordons in two winters. */
export interface GapsSince {
  readonly cordons: number;
  /** Shares of positions without a live spur. */
  readonly shareBefore: number;
  readonly shareNow: number;
}

/** Gaps of a survey, row by row in the order of the sheets. */
export interface SeasonGaps {
  readonly rows: readonly SurveyRowGaps[];
  /** Rows of the Cordons sheets that the sums are worked out from, and why not the others. */
  readonly rowsUsed: RowsUsed;
  /** Winter that the last winter's figures are from, where there are any. */
  readonly seasonBefore?: number;
}

/**
 * Gaps of every row of vines: positions without a live spur, vine by vine, and how they compare with last winter's
 * sheet over the cordons counted in both.
 *
 * @param counts tells which cordons count; give the ones that stay, since candidates that are cut would count twice
 */
export function gapsOfSeason(season: Season, counts: Stays = () => true): SeasonGaps {
  const { places, used } = season;
  const before = lastWinter(season, places);
  const rows = new Map<number, OpenRow>();
  for (const table of season.tables("cordons")) {
    const vineKeys = places.keysOf(table);
    const cordonKey = places.cordonKeys(table);
    const counted = countsOfCordons(table);
    let open: OpenRow | undefined;
    let indexes: number[] = [];
    for (let index = 0; index < table.rowCount; index += 1) {
      if (vineKeys[index] === NO_PLACE || !used.isUsed(table, index) || !counted.areUsable(index)) continue;
      if (open?.key !== rowKey(vineKeys[index])) {
        open = openRow(rows, season, vineKeys[index], table, index);
        indexes = open.cordons.get(table) ?? [];
        open.cordons.set(table, indexes);
      }
      indexes.push(index);
      if (before.counts.size === 0 || !counts(table, index)) continue;
      const key = cordonKey(index);
      const then = key === undefined ? undefined : before.counts.get(key);
      if (then !== undefined) open.both.push({ now: counted.at(index), then });
    }
  }
  return {
    rows: [...rows.values()].map((row) => closeRow(row, counts)),
    rowsUsed: used.account(),
    ...(before.season === undefined ? {} : { seasonBefore: before.season }),
  };
}

/** More numbers in a row that no vine has are left out of a map: the number beyond them is a slip or another count. */
const EMPTY_ACROSS = 20;

/**
 * The vines across a map of these rows: every number up to the last, and those that stand between others.
 *
 * @example
 * vinesAcross([{ byVine: [{ vine: 1 }, { vine: 3 }, { vine: 3.5 }, { vine: 203 }] }]) // [1, 2, 3, 3.5, 203]
 */
export function vinesAcross(
  rows: readonly { readonly byVine: readonly { readonly vine: number }[] }[],
): number[] {
  const standing = new Set(rows.flatMap(({ byVine }) => byVine.map(({ vine }) => vine)));
  const across: number[] = [];
  let last = 0;
  for (const vine of [...standing].sort((one, other) => one - other)) {
    const between = Math.ceil(vine) - Math.floor(last) - 1;
    if (between <= EMPTY_ACROSS)
      across.push(...Array.from({ length: between }, (_, at) => Math.floor(last) + 1 + at));
    across.push(vine);
    last = vine;
  }
  return across;
}

/** Counts of one cordon. */
export interface Counted {
  readonly positions: number;
  readonly liveSpurs: number;
  readonly longestGap?: number | undefined;
}

interface OpenRow {
  readonly key: number;
  readonly block: string;
  readonly row: number;
  readonly firstCell: SurveyRowGaps["firstCell"];
  /** Indexes of every cordon of the row with a usable count; their figures are read when the row is added up. */
  readonly cordons: Map<SurveyTable, number[]>;
  readonly both: { readonly now: Counted; readonly then: Counted }[];
}

function openRow(
  rows: Map<number, OpenRow>,
  season: Season,
  vineKey: number,
  table: SurveyTable,
  index: number,
): OpenRow {
  const key = rowKey(vineKey);
  let open = rows.get(key);
  if (open === undefined) {
    const { block, row } = placeOf(vineKey);
    open = {
      key,
      block: season.words.wordOf(block),
      row,
      firstCell: { sheet: table.sheet, row: table.sheetRow(index) },
      cordons: new Map(),
      both: [],
    };
    rows.set(key, open);
  }
  return open;
}

function closeRow({ block, row, firstCell, cordons: indexes, both }: OpenRow, counts: Stays): SurveyRowGaps {
  const vines = new Set<number>();
  const cordons: CordonPositions[] = [];
  for (const [table, rows] of indexes) {
    const vineNumbers = table.column("vine")!.usable;
    const counted = countsOfCordons(table);
    for (const index of rows) {
      const vine = vineNumbers[index];
      vines.add(vine);
      if (!counts(table, index)) continue;
      const { positions, liveSpurs, longestGap } = counted.at(index);
      cordons.push({ block, row, vine, positions, liveSpurs, longestGap });
    }
  }
  const [sums = noCordons(block, row)] = gapsByRow(cordons);
  const byVine = vinesOf(vines, cordons);
  return { ...sums, firstCell, byVine, vinesWithout: vines.size - sums.vines, ...sinceOf(both) };
}

function noCordons(block: string, row: number): RowGaps {
  const nothing = { vines: 0, cordons: 0, positions: 0, liveSpurs: 0, gaps: 0 };
  return { block, row, ...nothing, share: undefined, longestGap: undefined };
}

/** Positions, live spurs and longest gap of a table's rows. */
export interface CordonCounts {
  /** False where positions or live spurs are blank or cannot be used. */
  areUsable(index: number): boolean;
  /** Counts of a row that can be used. */
  at(index: number): Counted;
}

/** The counts of a table of cordons; without the columns none of them can be used. */
export function countsOfCordons(table: SurveyTable): CordonCounts {
  const nothing = new Float64Array(0);
  const [positions, liveSpurs, longestGap] = ["positions", "liveSpurs", "longestGap"].map(
    (id) => table.column(id)?.usable ?? nothing,
  );
  return {
    areUsable: (index) => positions[index] >= 0 && liveSpurs[index] >= 0,
    at: (index) => ({
      positions: positions[index],
      liveSpurs: liveSpurs[index],
      longestGap: longestGap[index] >= 0 ? longestGap[index] : undefined,
    }),
  };
}

function lastWinter(
  season: Season,
  places: VinePlaces,
): { season: number | undefined; counts: ReadonlyMap<number, Counted> } {
  const [latest] = season.pastTables("cordons");
  const counts = new Map<number, Counted>();
  for (const table of season.pastTables("cordons")) {
    if (table.winter !== latest.winter) continue;
    const keyOf = places.cordonKeys(table);
    const counted = countsOfCordons(table);
    for (let index = 0; index < table.rowCount; index += 1) {
      const key = keyOf(index);
      if (key !== undefined && counted.areUsable(index) && !counts.has(key))
        counts.set(key, counted.at(index));
    }
  }
  return { season: latest?.winter, counts };
}

function vinesOf(all: ReadonlySet<number>, cordons: readonly CordonPositions[]): VineGaps[] {
  const vines = new Map<number, { vine: number; positions: number; gaps: number }>();
  for (const vine of all) vines.set(vine, { vine, positions: 0, gaps: 0 });
  for (const { vine, positions, liveSpurs } of cordons) {
    const sum = vines.get(vine)!;
    sum.positions += positions;
    sum.gaps += positions - liveSpurs;
  }
  return [...vines.values()].sort((one, other) => one.vine - other.vine);
}

function sinceOf(both: OpenRow["both"]): { since?: GapsSince } {
  const sum = (of: (pair: OpenRow["both"][number]) => number) =>
    both.reduce((total, pair) => total + of(pair), 0);
  const positionsNow = sum(({ now }) => now.positions);
  const positionsThen = sum(({ then }) => then.positions);
  if (positionsNow === 0 || positionsThen === 0) return {};
  return {
    since: {
      cordons: both.length,
      shareBefore: 1 - sum(({ then }) => then.liveSpurs) / positionsThen,
      shareNow: 1 - sum(({ now }) => now.liveSpurs) / positionsNow,
    },
  };
}
