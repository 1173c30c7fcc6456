import { READ_LIMITS } from "../../../src/workbook/file/readLimits";
import { sheetRows, type CellContext, type SheetRow } from "../../../src/workbook/file/sheetRows";
import type { WorkbookPackage } from "../../../src/workbook/file/workbookPackage";
import { WorkbookProblem } from "../../../src/workbook/surveyWorkbook";

const CONTEXT: CellContext = { sharedStrings: ["Block", "Row"], styles: undefined, startsIn1904: false };

/** A package whose every part has that text, a chunk each. */
export function partOf(chunks: Iterable<string>): WorkbookPackage {
  const encoder = new TextEncoder();
  return {
    file: "a.xlsx",
    parts: new Map(),
    chunks: async function* () {
      for (const chunk of chunks) yield encoder.encode(chunk);
    },
    close: async () => undefined,
  };
}

/** The rows of a sheet's XML, or why it is refused. */
export async function rowsTold(chunks: Iterable<string>): Promise<{
  readonly rows?: readonly SheetRow[];
  readonly problem?: { readonly code: string; readonly facts: WorkbookProblem["facts"] };
}> {
  const rows: SheetRow[] = [];
  try {
    for await (const batch of sheetRows(partOf(chunks), "sheet", "A", CONTEXT, READ_LIMITS))
      rows.push(...batch);
    return { rows };
  } catch (error) {
    if (!(error instanceof WorkbookProblem)) throw error;
    return { problem: { code: error.code, facts: error.facts } };
  }
}

/** The same XML in chunks none of which holds the whole end of a row, so that the XML parser gets everything. */
export function withoutPlainRows(xml: string): string[] {
  return xml.split(/(?<=<\/ro)(?=w>)/);
}
