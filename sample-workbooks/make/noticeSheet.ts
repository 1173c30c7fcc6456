import type { WriteSheet } from "hucre";
import { cellName } from "../../src/survey/sheets/cellName";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { PlantedMistake } from "./mistakes/plantMistakes";
import { headerWithUnit, wrappedRowHeight } from "./surveySheet";

const WIDTHS = [18, 12, 22, 64, 26];

/** The first sheet of a sample workbook: that its data are invented, what is in it, and the planted mistakes. */
export function noticeSheet(
  name: string,
  lines: readonly string[],
  mistakes: readonly PlantedMistake[] = [],
): WriteSheet {
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  const wrapped = { alignment: { wrapText: true, vertical: "top" } } as const;
  lines.forEach((line, index) =>
    cells.set(`${index},0`, {
      value: line,
      style: index === 0 ? { font: { bold: true, size: 14 } } : {},
    }),
  );
  const headers = ["Sheet", "Cell", "Column", "What is wrong", "Kind of finding"];
  const headerRow = lines.length + 1;
  const rows = mistakes.map((mistake) => {
    const shape = SHEETS[mistake.sheet];
    const { columnNumber, sheetRow } = mistake;
    const cell = columnNumber === 0 ? `row ${sheetRow}` : cellName(sheetRow, columnNumber);
    const own = shape.columns[columnNumber - 1];
    const header = own ? headerWithUnit(own) : mistake.column || "whole row";
    return [shape.name.en, cell, header, mistake.what, mistake.code];
  });
  if (rows.length > 0)
    [headers, ...rows].forEach((row, i) =>
      row.forEach((value, j) =>
        cells.set(`${headerRow + i},${j}`, { value, style: i === 0 ? { font: { bold: true } } : wrapped }),
      ),
    );
  const rowCount = rows.length > 0 ? headerRow + rows.length + 1 : lines.length;
  return {
    name,
    rows: Array.from({ length: rowCount }, () => []),
    cells,
    columns: WIDTHS.map((width) => ({ width })),
    rowDefs: new Map(
      rows.flatMap((row, i) => {
        const height = wrappedRowHeight(row.map((text, j) => ({ text, letters: WIDTHS[j] })));
        return height === undefined ? [] : [[headerRow + i + 1, { height }] as const];
      }),
    ),
    ...(rows.length > 0
      ? {
          tables: [
            {
              name: "PlantedMistakes",
              range: `A${headerRow + 1}:E${headerRow + rows.length + 1}`,
              columns: headers.map((header) => ({ name: header })),
              style: "TableStyleLight1",
            },
          ],
        }
      : {}),
    pageSetup: {
      paperSize: "letter",
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
    },
  };
}
