import { WorkbookProblem, type CellChange, type SurveyWorkbook } from "../surveyWorkbook";

const TRIES = 3;

/** What a run came to, and which of a colleague's edits made it read again. */
export interface UndisturbedRun<T> {
  readonly result: T;
  readonly metOnTheWay: readonly CellChange[];
}

/**
 * Runs something that reads sheets; when a colleague edits one of these sheets meanwhile, it runs again on what the
 * sheets hold then, and the answer says so.
 *
 * @param sheets the sheets that the run depends on; a function where the run itself finds out
 * @throws WorkbookProblem "sheetKeepsChanging" when colleagues edited during every run
 */
export async function runUndisturbed<T>(
  workbook: SurveyWorkbook,
  sheets: readonly string[] | (() => readonly string[]),
  run: () => Promise<T>,
): Promise<UndisturbedRun<T>> {
  const met: CellChange[] = [];
  let seen: CellChange[] = [];
  const stop = await workbook.watchCells((change) => {
    if (change.by === "colleague") seen.push(change);
  });
  try {
    for (let attempt = 1; attempt <= TRIES; attempt++) {
      seen = [];
      const result = await run();
      const names = typeof sheets === "function" ? sheets() : sheets;
      const depends = new Set(names.map((name) => name.toLowerCase()));
      const disturbing = seen.filter(({ sheet }) => depends.has(sheet.toLowerCase()));
      if (disturbing.length === 0) return { result, metOnTheWay: met };
      met.push(...disturbing);
    }
    throw new WorkbookProblem("sheetKeepsChanging", { sheet: met[met.length - 1].sheet });
  } finally {
    await stop();
  }
}
