import { WorkbookProblem, type OwnChart, type OwnSheet } from "./surveyWorkbook";

/** Hidden, sheet-scoped defined name that marks a sheet as made by the add-in, in Excel and in a file alike. */
export const OWN_SHEET_NAME = "_Cordonbook_own";

/** How the names of our charts begin, in Excel and in a file alike: a chart of another name is a person's own. */
export const OWN_CHART_NAME = "Cordonbook chart";

/** Longest sheet name that a spreadsheet takes. */
const LONGEST_SHEET_NAME = 31;

export type OwnValue = string | number | boolean | null;

/** Where the parts of an own sheet stand; rows count from 1. */
export interface OwnSheetLayout {
  /** Every cell from A1 on, rows of equal length: title lines, an empty line below them, headers, rows. */
  readonly values: OwnValue[][];
  readonly headerRow: number;
  readonly columnCount: number;
}

/**
 * Lays an own sheet out in the same way on every host: the title lines from A1 down, an empty line, the headers, the
 * rows. Without a title the headers stand in row 1. A row shorter than the headers is filled with blanks.
 *
 * @throws WorkbookProblem "badSheetName" for a name that no spreadsheet takes, "badTable" for no headers, two equal
 * headers, a row longer than the headers or a chart over a column that is not there.
 *
 * @example
 * layOutOwnSheet({ sheet: "Findings", title: ["Made today"], headers: ["Row"], rows: [[7]] }).headerRow // 3
 */
export function layOutOwnSheet(content: OwnSheet): OwnSheetLayout {
  checkSheetName(content.sheet);
  const { headers, title = [] } = content;
  const columnCount = headers.length;
  const known = new Set(headers.map((header) => header.toLowerCase()));
  if (columnCount === 0 || known.size !== columnCount || known.has(""))
    throw new WorkbookProblem("badTable", { sheet: content.sheet, row: 0 });
  const tooLong = content.rows.findIndex((row) => row.length > columnCount);
  if (tooLong >= 0) throw new WorkbookProblem("badTable", { sheet: content.sheet, row: tooLong + 1 });
  if (content.charts?.some(({ labels, parts }) => [labels, ...parts].some((name) => !headers.includes(name))))
    throw new WorkbookProblem("badTable", { sheet: content.sheet, row: 0 });
  const filled = (row: readonly OwnValue[]) => [
    ...row,
    ...new Array<OwnValue>(columnCount - row.length).fill(null),
  ];
  const head = title.length > 0 ? [...title.map((line) => filled([line])), filled([])] : [];
  return {
    values: [...head, [...headers], ...content.rows.map(filled)],
    headerRow: head.length + 1,
    columnCount,
  };
}

/** A chart with the places of its columns, and the part of the sheet below the table that it covers. */
export interface ChartLayout {
  readonly name: string;
  readonly chart: OwnChart;
  /** Columns, from 0. */
  readonly labels: number;
  readonly parts: readonly number[];
  /** First row of the figures, and the last, from 1. */
  readonly firstRow: number;
  readonly lastRow: number;
  /** Rows that it covers, from 1. */
  readonly top: number;
  readonly bottom: number;
}

const ROWS_OF_FRAME = 9;
const ROWS_A_BAR = 1.4;

/** Where the charts of an own sheet stand: one below the other, below the table. Without rows there are none. */
export function layOutCharts(content: OwnSheet): ChartLayout[] {
  const { headerRow, values } = layOutOwnSheet(content);
  if (content.rows.length === 0) return [];
  const rows = ROWS_OF_FRAME + Math.ceil(ROWS_A_BAR * content.rows.length);
  return (content.charts ?? []).map((chart, index) => {
    const top = values.length + 2 + index * (rows + 1);
    return {
      name: `${OWN_CHART_NAME} ${index + 1}`,
      chart,
      labels: content.headers.indexOf(chart.labels),
      parts: chart.parts.map((header) => content.headers.indexOf(header)),
      firstRow: headerRow + 1,
      lastRow: values.length,
      top,
      bottom: top + rows - 1,
    };
  });
}

/** Columns that a chart is wide, from the first. */
export const CHART_COLUMNS = 8;

/** The parts of a bar: dark up to what is sure, lighter beyond; told apart in print by their outline too. */
export const CHART_PART_FILLS = ["404040", "8C8C8C", "E6E6E6"] as const;
export const CHART_LINE = "262626";
/** Space between bars as a share of a bar, in percent. */
export const CHART_GAP = 60;

/** Refuses a sheet name that a spreadsheet would not take. */
function checkSheetName(sheet: string): void {
  const bad =
    sheet.trim() === "" ||
    sheet.length > LONGEST_SHEET_NAME ||
    /[:\\/?*[\]]/.test(sheet) ||
    sheet.startsWith("'") ||
    sheet.endsWith("'");
  if (bad) throw new WorkbookProblem("badSheetName", { sheet });
}
