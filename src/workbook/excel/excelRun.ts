import { excelProblem, officeCode } from "./excelProblem";

/** https://learn.microsoft.com/javascript/api/excel/excel.runoptions */
export interface ExcelRunOptions {
  /** Waits until the person leaves the cell that they edit; without it Excel refuses the batch. */
  readonly delayForCellEdit: true;
  /** Undo takes back the whole run at once: ExcelApi 1.20. */
  readonly mergeUndoGroup?: boolean;
}

/** Excel.run, or a stand-in that hands a request context to a batch in the same way. */
export type ExcelRun = <T>(
  batch: (context: Excel.RequestContext) => Promise<T>,
  options?: ExcelRunOptions,
) => Promise<T>;

/**
 * Runs a batch that only reads, or that is one small step: it waits while a cell is being edited. An error of Excel's
 * comes out as a WorkbookProblem about `sheet`.
 */
export async function inExcel<T>(
  run: ExcelRun,
  sheet: string,
  batch: (context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  try {
    return await run(batch, { delayForCellEdit: true });
  } catch (error) {
    throw excelProblem(error, sheet);
  }
}

/**
 * Runs a batch that changes the workbook in several steps. While a cell is being edited it is refused before its first
 * step, so that the person hears at once what is waited for; once begun it waits instead of breaking off half-way.
 *
 * @param oneUndoStep whether this Excel can take the run back with one Undo
 */
export async function changeInExcel<T>(
  run: ExcelRun,
  sheet: string,
  oneUndoStep: boolean,
  batch: (context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  try {
    await run(async (context) => {
      context.workbook.load("name");
      await context.sync();
    });
    return await run(batch, { delayForCellEdit: true, mergeUndoGroup: oneUndoStep }).catch(
      (error: unknown) => {
        if (!oneUndoStep || officeCode(error) !== "UndoNotSupported") throw error;
        return run(batch, { delayForCellEdit: true });
      },
    );
  } catch (error) {
    throw excelProblem(error, sheet);
  }
}
