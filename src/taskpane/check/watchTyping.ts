import { rowChecker, type ChangedRow } from "../../survey/checks/checkRow";
import type { Finding } from "../../survey/checks/finding";
import type { Season } from "../../survey/season/season";
import type { CellChange, SurveyWorkbook } from "../../workbook/surveyWorkbook";

/** Rows of one change that are judged at once; a larger one (a paste, a fill) is left to the full check. */
const ROWS_JUDGED = 50;

/** What was found in a row that somebody changed. */
export interface TypedRow {
  readonly sheet: string;
  readonly row: number;
  readonly by: CellChange["by"];
  readonly findings: readonly Finding[];
}

export interface TypingOptions {
  readonly today: number;
  /** Reads the survey as it is now. */
  readonly read: () => Promise<Season>;
  /** A changed row of a survey table was judged; no findings means that it is in order. */
  readonly onRow: (row: TypedRow) => void;
  /** A change was too large to be judged row by row. */
  readonly onLargeChange: (sheet: string) => void;
  /** Judging failed; the watch goes on. */
  readonly onFailure: (failure: unknown) => void;
}

/**
 * Judges rows of survey tables while they are typed: reads the survey once, then only the changed rows; what is typed
 * during that first reading is judged after it. The survey is read anew when heads, the register of blocks and vines or
 * the settings change.
 *
 * @returns a function that ends the watch
 */
export async function watchTyping(
  workbook: SurveyWorkbook,
  options: TypingOptions,
): Promise<() => Promise<void>> {
  const read = async () => {
    const season = await options.read();
    return { season, judge: rowChecker(season, { today: options.today }) };
  };
  const early: CellChange[] = [];
  let take = (change: CellChange): void => void early.push(change);
  const endWatch = await workbook.watchCells((change) => take(change));
  let known = await read().catch(async (failure: unknown) => {
    await endWatch();
    throw failure;
  });
  let stale = early.length > 0;
  let working = false;
  const waiting = new Map<string, Omit<TypedRow, "findings">>();

  const judge = async (place: Omit<TypedRow, "findings">) => {
    if (stale) {
      stale = false;
      known = await read();
    }
    if (!isTableRow(known.season, place.sheet, place.row)) return;
    const changed = await readRow(workbook, place.sheet, place.row);
    options.onRow({ ...place, findings: changed === undefined ? [] : known.judge(changed) });
  };

  const work = async () => {
    if (working) return;
    working = true;
    for (const [key, place] of waiting) {
      waiting.delete(key);
      await judge(place).catch(options.onFailure);
    }
    working = false;
  };

  take = (change) => {
    stale ||= changesWhatRowsAreHeldAgainst(known.season, change);
    if (change.rowCount > ROWS_JUDGED) {
      if (known.season.allTables.some(({ sheet }) => sheet === change.sheet))
        options.onLargeChange(change.sheet);
      return;
    }
    for (let row = change.firstRow; row < change.firstRow + change.rowCount; row += 1)
      waiting.set(`${row} ${change.sheet}`, { sheet: change.sheet, row, by: change.by });
    void work();
  };
  early.forEach((change) => take(change));
  return endWatch;
}

function isTableRow(season: Season, sheet: string, row: number): boolean {
  return season.allTables.some(
    (table) => table.sheet === sheet && table.shape.id !== "settings" && row > table.headerRow,
  );
}

/** Heads, the register of blocks and vines, the settings: what a row is judged by. */
function changesWhatRowsAreHeldAgainst(season: Season, change: CellChange): boolean {
  const table = season.allTables.find(({ sheet }) => sheet === change.sheet);
  if (table === undefined) return season.otherSheets.includes(change.sheet);
  return change.firstRow <= table.headerRow || ["blocks", "vines", "settings"].includes(table.shape.id);
}

async function readRow(
  workbook: SurveyWorkbook,
  sheet: string,
  row: number,
): Promise<ChangedRow | undefined> {
  const area = await workbook.readSheet(sheet, { rows: { first: row, count: 1 } });
  return area.values.length === 0
    ? undefined
    : { sheet, row, firstColumn: area.firstColumn, values: area.values[0] };
}
