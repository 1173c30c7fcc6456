import { isCellError, type CellValue } from "../../../src/survey/sheets/cell";
import { cellName } from "../../../src/workbook/address";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { xmlText } from "../../../src/workbook/file/xmlSpans";
import { surveyWorkbookContract, type MergedCells, type StartSheets } from "../contract";
import { buildWorkbook } from "./buildWorkbook";

function startWorkbook(sheets: StartSheets, merged: MergedCells = {}): Promise<FileWorkbook> {
  const cell = (value: CellValue, address: string): string => {
    if (value === null) return "";
    if (isCellError(value)) return `<c r="${address}" t="e"><v>${value.error}</v></c>`;
    if (typeof value === "string")
      return `<c r="${address}" t="inlineStr"><is><t>${xmlText(value)}</t></is></c>`;
    return typeof value === "boolean"
      ? `<c r="${address}" t="b"><v>${Number(value)}</v></c>`
      : `<c r="${address}"><v>${value}</v></c>`;
  };
  const rows = (values: readonly (readonly CellValue[])[]) =>
    values
      .map(
        (row, r) =>
          `<row r="${r + 1}">${row.map((value, c) => cell(value, cellName(r + 1, c + 1))).join("")}</row>`,
      )
      .join("");
  return FileWorkbook.open(
    "farm.xlsx",
    buildWorkbook({
      sheets: Object.fromEntries(Object.entries(sheets).map(([name, values]) => [name, rows(values)])),
      merged,
    }),
  );
}

describe("a file keeps the contract of every workbook", () => {
  for (const { name, run } of surveyWorkbookContract(startWorkbook)) test(name, run);
});
