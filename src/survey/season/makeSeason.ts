import type { SheetId } from "../sheets/column";
import { judgedTable } from "./judgedTable";
import type { Season } from "./season";
import type { SurveyTable } from "./surveyTable";
import { UsedRows } from "./usedRows";
import { VinePlaces } from "./vinePlaces";

/** What a reader hands over: tables as read, and what was read beside them. */
export type ReadSheets = Omit<Season, "tables" | "pastTables" | "places" | "used">;

/**
 * The Season of tables that were read, whole or in pieces: cells judged, tables of this winter parted from those of
 * earlier ones, places and used rows made once for every result.
 */
export function makeSeason(read: ReadSheets): Season {
  const allTables = read.allTables.map(judgedTable);
  const { current, past } = partByWinter(allTables);
  const tables = (id: SheetId) => current.get(id) ?? [];
  const places = new VinePlaces(tables);
  return {
    ...read,
    allTables,
    tables,
    pastTables: (id) => past.get(id) ?? [],
    places,
    used: new UsedRows(() => tables("cordons"), places),
  };
}

type TablesById = Map<SheetId, SurveyTable[]>;

/** Tables of the latest winter of each kind of sheet, and older ones beside them. */
function partByWinter(tables: readonly SurveyTable[]): { current: TablesById; past: TablesById } {
  const current: TablesById = new Map();
  const past: TablesById = new Map();
  const latest = new Map<SheetId, number>();
  const winterOf = (table: SurveyTable) => table.winter ?? Infinity;
  for (const table of tables)
    latest.set(table.shape.id, Math.max(latest.get(table.shape.id) ?? -Infinity, winterOf(table)));
  for (const table of tables) {
    const into = winterOf(table) < latest.get(table.shape.id)! ? past : current;
    into.set(table.shape.id, [...(into.get(table.shape.id) ?? []), table]);
  }
  for (const older of past.values()) older.sort((a, b) => winterOf(b) - winterOf(a));
  return { current, past };
}
