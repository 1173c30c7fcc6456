import path from "node:path";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import type { MemoryCell } from "../../workbook/memory/memoryWorkbook";
import type { Sheets } from "./harness";

/** The sheets of a committed sample workbook, values only, from A1 on. */
export async function sampleSeason(name: "larkmoor-clean" | "larkmoor-mistakes"): Promise<Sheets> {
  const book = await openWorkbookFile(path.resolve(__dirname, `../../../sample-workbooks/${name}.xlsx`));
  const sheets: Record<string, MemoryCell[][]> = {};
  try {
    for (const sheet of book.sheetNames) {
      const { firstRow, firstColumn, values } = await book.readSheet(sheet);
      sheets[sheet] = [
        ...Array.from({ length: firstRow - 1 }, () => []),
        ...values.map((row) => [...Array.from({ length: firstColumn - 1 }, () => null), ...row]),
      ];
    }
  } finally {
    await book.close();
  }
  return sheets;
}
