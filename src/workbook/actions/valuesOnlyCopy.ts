import { isCellError } from "../../survey/sheets/cell";
import { repairFormula } from "../../functions/repairFormula";
import { FileWorkbook } from "../file/fileWorkbook";
import type { CellWrite } from "../surveyWorkbook";

export interface ValuesOnlyCopy {
  readonly bytes: Uint8Array;
  /** Cells with our functions that now hold what they showed. */
  readonly replaced: number;
  /** Those of them that showed an error; it stands there as text. */
  readonly errors: readonly {
    readonly sheet: string;
    readonly row: number;
    readonly column: number;
    readonly shows: string;
  }[];
}

/**
 * A copy of a workbook for people without Cordonbook: every cell with a function of ours holds the value that it
 * showed. All other formulas, and everything else in the file, stay as they are.
 *
 * @param file name of the file, for messages
 * @throws FileProblem when the bytes are no workbook; WorkbookProblem "protectedSheet"
 */
export async function valuesOnlyCopy(file: string, bytes: Uint8Array): Promise<ValuesOnlyCopy> {
  const workbook = await FileWorkbook.open(file, bytes);
  const errors: ValuesOnlyCopy["errors"][number][] = [];
  let replaced = 0;
  for (const sheet of await workbook.sheetNames()) {
    const area = await workbook.readSheet(sheet);
    const writes: CellWrite[] = [];
    area.values.forEach((line, r) =>
      line.forEach((value, c) => {
        const formula = area.formulaAt(r, c);
        if (formula === null || !isOurs(formula)) return;
        const [row, column] = [area.firstRow + r, area.firstColumn + c];
        if (isCellError(value)) errors.push({ sheet, row, column, shows: value.error });
        writes.push({ row, column, value: isCellError(value) ? value.error : value });
      }),
    );
    replaced += writes.length;
    if (writes.length > 0) await workbook.writeCells(sheet, writes);
  }
  return { bytes: workbook.bytes(), replaced, errors };
}

function isOurs(formula: string): boolean {
  const { calls, unknown } = repairFormula(formula);
  return calls.length > 0 || unknown.length > 0;
}
