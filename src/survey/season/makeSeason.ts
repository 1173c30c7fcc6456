import type { SheetId } from "../sheets/column";
import { judgedTable } from "./judgedTable";
import type { Season } from "./season";
import type { SurveyTable } from "./surveyTable";
import { UsedRows } from "./usedRows";
import { VinePlaces } from "./vinePlaces";

/** What a reader hands over: tables as read, and what was read beside them. */
export type ReadSheets = Omit<Season, "tables" | "pastTables" | "places" | "used">;

/**
 * The Season of tables that were read, whole or in pieces: cells judged, places and used rows made once for every result.
 *
 * @param past those of the tables that belong to earlier winters, the latest first
 */
export function makeSeason(read: ReadSheets, past: readonly SurveyTable[]): Season {
  const judged = new Map(read.allTables.map((table) => [table, judgedTable(table)]));
  const isPast = new Set(past);
  const current = byShape(
    read.allTables.filter((table) => !isPast.has(table)).map((table) => judged.get(table)!),
  );
  const earlier = byShape(past.map((table) => judged.get(table)!));
  const tables = (id: SheetId) => current.get(id) ?? [];
  const places = new VinePlaces(tables);
  return {
    ...read,
    allTables: [...judged.values()],
    tables,
    pastTables: (id) => earlier.get(id) ?? [],
    places,
    used: new UsedRows(
      () => tables("cordons"),
      places,
      read.settings.cordonsAVineMost,
      read.settings.cordonsOnAVine >= 1.5,
    ),
  };
}

function byShape(tables: readonly SurveyTable[]): ReadonlyMap<SheetId, readonly SurveyTable[]> {
  const found = new Map<SheetId, SurveyTable[]>();
  for (const table of tables) found.set(table.shape.id, [...(found.get(table.shape.id) ?? []), table]);
  return found;
}
