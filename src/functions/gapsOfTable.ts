import { gapsByRow, type CordonPositions } from "../domain/gapsByRow";
import type { Refusal } from "../domain/refusal";
import { countsOfCordons } from "../survey/season/gapsOfSeason";
import { decideSeason } from "../survey/decide/decideSeason";
import { stayingCordons } from "../survey/decide/stayingCordons";
import { CELL, type Season, type SurveyTable } from "../survey/season/season";
import type { ResultRow } from "./cordonFunction";
import { seasonOfTables, type GivenTables } from "./seasonOfTables";
import { cellRefusal, neededColumn, surveyTable } from "./surveyTable";
import { placeName } from "../texts/placeName";

const COUNTED = ["positions", "liveSpurs"] as const;
const PLACES = ["block", "row", "vine"] as const;

const SHEETS_OF = { cordons: "cordons", settings: "settings", blocks: "blocks", vines: "vines" } as const;

/** Which cordons count: all; those that a person has fixed to stay; those that stay by the cordon choice. */
export type CordonsCounted = "all" | "staying" | "chosen";

/**
 * Gaps of a Cordons table, a row for each row of vines in the order of the table. Where one count of a row of vines
 * cannot be used, that row's sums are errors that name the cell, and the others stand.
 *
 * @param given the tables `cordons` and, for the cordon choice, `settings`, `blocks` and `vines`
 * @example
 * gapsOfTable({ cordons: readTable(functionNamed("GAPSBYROW").parameters[0], [["Block", "Row", "Vine", "Positions", "Live spurs"], ["A", 1, 1, 8, 6]]) }, "all")[0].gaps // 2
 */
export function gapsOfTable(given: GivenTables, which: CordonsCounted): readonly ResultRow[] {
  const season = seasonOfTables(given, SHEETS_OF);
  const table = surveyTable(season, "cordons", [...PLACES, ...COUNTED]);
  const stays = countedRows(season, table, which);
  const rows = new Map<string, OpenRow>();
  for (let index = 0; index < table.rowCount; index += 1) {
    if (!stays(index)) continue;
    const place = placeOf(table, index);
    const key = `${place.blockCode} ${place.row}`;
    const open = rows.get(key) ?? { block: place.block, row: place.row, cordons: [] };
    rows.set(key, open);
    const bad = firstBadCount(table, index);
    if (bad === undefined)
      open.cordons.push({ block: open.block, row: open.row, vine: place.vine, ...countsOf(table, index) });
    else open.refusal ??= cellRefusal("cordons", table, bad, index);
  }
  return [...rows.values()].map(({ block, row, cordons, refusal }) =>
    refusal ? spoiltRow(block, row, refusal) : { ...gapsByRow(cordons)[0], row: placeName(row) },
  );
}

interface OpenRow {
  /** As it was written first. */
  readonly block: string;
  readonly row: number;
  readonly cordons: CordonPositions[];
  refusal?: Refusal;
}

/** A gap that was not written down, or that the counts beside it contradict, is left out of the longest alone. */
const GAP_MAY_BE: ReadonlySet<number> = new Set([CELL.usable, CELL.blank, CELL.contradicted]);

function countedRows(season: Season, table: SurveyTable, which: CordonsCounted): (index: number) => boolean {
  if (which === "all") return () => true;
  if (which === "chosen") {
    const stays = stayingCordons(decideSeason(season));
    return (index) => stays(table, index) === true;
  }
  const { codes, column } = neededColumn("cordons", table, "fixedChoice");
  const staysCode = column.choices!.findIndex(({ id }) => id === "stays");
  return (index) => codes[index] === staysCode;
}

function placeOf(table: SurveyTable, index: number) {
  for (const id of PLACES)
    if (table.column(id)!.states[index] !== CELL.usable) throw cellRefusal("cordons", table, id, index);
  return {
    blockCode: table.column("block")!.codes[index],
    block: String(table.column("block")!.raw.at(index)).trim(),
    row: table.column("row")!.numbers[index],
    vine: table.column("vine")!.numbers[index],
  };
}

function firstBadCount(table: SurveyTable, index: number): string | undefined {
  const stateOf = (id: string): number => table.column(id)?.states[index] ?? CELL.usable;
  if (stateOf("liveSpurs") === CELL.contradicted) return "liveSpurs";
  const bad = COUNTED.find((id) => stateOf(id) !== CELL.usable);
  return bad ?? (GAP_MAY_BE.has(stateOf("longestGap")) ? undefined : "longestGap");
}

function countsOf(table: SurveyTable, index: number) {
  return countsOfCordons(table).at(index);
}

function spoiltRow(block: string, row: number, refusal: Refusal): ResultRow {
  const sums = ["vines", "cordons", "positions", "liveSpurs", "gaps", "share", "longestGap"];
  return { block, row: placeName(row), ...Object.fromEntries(sums.map((id) => [id, refusal])) };
}
