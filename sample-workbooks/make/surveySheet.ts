import type { Cell, CellStyle, DataValidation, WriteSheet } from "hucre";
import type { UnitSystem } from "../../src/domain/units";
import type { Language } from "../../src/texts/language";
import { areaCropIn } from "../../src/survey/crop/cropWords";
import { isCellError } from "../../src/survey/sheets/cell";
import { columnLetters } from "../../src/survey/sheets/cellName";
import type { Column, SheetShape } from "../../src/survey/sheets/column";
import { wrappedLines, type WrappingCell } from "../../src/workbook/wrappedLines";
import type { FarmRow } from "./farm";

/** Units that a farm writes into the headers, by column kind. */
const HEADER_UNIT: Readonly<Record<UnitSystem, Partial<Record<Column["kind"], string>>>> = {
  US: { length: "ft", shortLength: "in", mass: "lb" },
  metric: { length: "m", shortLength: "mm", mass: "kg" },
};

const NUMBER_FORMAT: Partial<Record<Column["kind"], string>> = {
  count: "0",
  length: "0.0",
  shortLength: "0.00",
  mass: "0.00",
  share: "0%",
  date: "yyyy-mm-dd",
  year: "0",
};
const NUMBER_FORMAT_OF_COLUMN: Readonly<Record<string, string>> = {
  clusterWeight: "0.000",
  lagWeight: "0.000",
  picked: "#,##0",
};

const RULE = { style: "thin", color: { rgb: "BFBFBF" } } as const;
const HEADER_STYLE: CellStyle = {
  font: { bold: true },
  alignment: { wrapText: true, vertical: "center" },
};
const HEADER_HEIGHT = 32;
const WRITING_HEIGHT = 20;
const LINE_HEIGHT = 15;
/** Columns that stay in sight while a cordon's counts are typed: block, row, vine, side, cordon. */
const PLACE_OF_A_CORDON = 5;
/** The format takes no longer title of a warning. */
const LONGEST_TITLE = 32;
const ROWS_PER_VALIDATION = 1048576;

export interface SurveySheetOptions {
  /** Blank ruled lines below the last row, for a sheet that is printed and filled in outdoors. */
  readonly blankLines?: number;
  /** Written into the page's header when printed. */
  readonly farm: string;
  /** Heads of columns of the farm's own, right of ours; the rows carry their numbers by the head. */
  readonly ownColumns?: readonly string[];
  /** US where left out. */
  readonly units?: UnitSystem;
  /** Language of the sheet's name, headers, accepted words and help; English where left out. */
  readonly language?: Language;
}

/** A header as it stands in the sheet: "Length (ft)". */
export function headerWithUnit(column: Column, units: UnitSystem = "US", language: Language = "en"): string {
  const unit =
    column.id === "targetCrop" ? areaCropIn(0, units, language).unit : HEADER_UNIT[units][column.kind];
  return unit ? `${column.header[language]} (${unit})` : column.header[language];
}

/** The name of a sheet's table: no spaces, so that a formula can use it. */
export function tableName(shape: SheetShape, language: Language = "en"): string {
  return shape.name[language].replace(/\s+/g, "");
}

/** Points that a row needs for texts that wrap in it, of fifteen a line; undefined where one line is enough. */
export function wrappedRowHeight(cells: readonly WrappingCell[]): number | undefined {
  const lines = wrappedLines(cells);
  return lines > 1 ? lines * LINE_HEIGHT : undefined;
}

/** One sheet of the survey as a real table with its headers, formats, accepted words and print set-up. */
export function surveySheet(
  shape: SheetShape,
  rows: readonly FarmRow[],
  options: SurveySheetOptions,
): WriteSheet {
  const blank = options.blankLines ?? 0;
  const language = options.language ?? "en";
  const columns = [
    ...shape.columns.map((column) => ({
      id: column.id,
      width: column.width + 2,
      header: headerWithUnit(column, options.units, language),
      style: bodyStyle(column, blank > 0, shape.columns.some(wraps)),
    })),
    ...(options.ownColumns ?? []).map((header) => ({
      id: header,
      width: header.length + 2,
      header,
      style: {},
    })),
  ];
  const rowCount = Math.max(1, rows.length + blank);
  const last = columnLetters(columns.length);
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  columns.forEach(({ id, header, style }, index) => {
    cells.set(`0,${index}`, { value: header, style: HEADER_STYLE });
    for (let i = 0; i < rowCount; i++) {
      const value = rows[i]?.[id] ?? null;
      if (value === null && blank === 0) continue;
      cells.set(`${i + 1},${index}`, isCellError(value) ? errorCell(value.error, style) : { value, style });
    }
  });
  return {
    name: shape.name[language],
    rows: Array.from({ length: rowCount + 1 }, () => []),
    cells,
    columns: columns.map(({ width }) => ({ width })),
    rowDefs: new Map([
      [0, { height: HEADER_HEIGHT }],
      ...rows.flatMap((row, i) => {
        const height = wrappedRowHeight(
          shape.columns.filter(wraps).map(({ id, width }) => ({ text: row[id], letters: width + 2 })),
        );
        return height === undefined ? [] : [[i + 1, { height }] as const];
      }),
      ...Array.from({ length: blank }, (_, i) => [i + 1, { height: WRITING_HEIGHT }] as const),
    ]),
    freezePane: { rows: 1, columns: shape.id === "cordons" ? PLACE_OF_A_CORDON : 0 },
    dataValidations: shape.columns.flatMap((column, index) => validation(column, index, language)),
    tables: [
      {
        name: tableName(shape, language),
        range: `A1:${last}${rowCount + 1}`,
        columns: columns.map(({ header }) => ({ name: header })),
        style: "TableStyleLight1",
        showRowStripes: blank === 0,
      },
    ],
    pageSetup: {
      paperSize: "letter",
      orientation: shape.columns.length > 8 ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: "$1:$1",
      margins: { top: 0.7, bottom: 0.6, left: 0.4, right: 0.4, header: 0.3, footer: 0.3 },
    },
    headerFooter: { oddHeader: `&L${options.farm}&R&A`, oddFooter: "&CPage &P of &N" },
  };
}

const FAILING_FORMULAS: Readonly<Record<string, string>> = {
  "#DIV/0!": "1/0",
  "#N/A": "NA()",
  "#VALUE!": '1+"a"',
};

/** A formula that fails, with the error it shows. */
function errorCell(error: string, style: CellStyle): Partial<Cell> {
  return { formula: FAILING_FORMULAS[error], formulaResult: error, type: "error", style };
}

const WIDEST_LINE = 40;

/** True for a column of sentences, which wrap. */
function wraps({ width }: Column): boolean {
  return width > WIDEST_LINE;
}

function bodyStyle(column: Column, ruled: boolean, top: boolean): CellStyle {
  const numFmt = NUMBER_FORMAT_OF_COLUMN[column.id] ?? NUMBER_FORMAT[column.kind];
  return {
    ...(numFmt ? { numFmt } : {}),
    ...(ruled ? { border: { top: RULE, bottom: RULE, left: RULE, right: RULE } } : {}),
    ...(top ? { alignment: { vertical: "top" as const, ...(wraps(column) ? { wrapText: true } : {}) } } : {}),
  };
}

/** The list or limits that the sheet itself holds a cell against; it warns and never blocks, so counts are not lost. */
function validation(column: Column, index: number, language: Language): DataValidation[] {
  const letters = columnLetters(index + 1);
  const shared = {
    range: `${letters}2:${letters}${ROWS_PER_VALIDATION}`,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "warning" as const,
    errorTitle: column.header[language].slice(0, LONGEST_TITLE),
    errorMessage: column.help[language],
  };
  if (column.choices)
    return [{ ...shared, type: "list", values: column.choices.map((choice) => choice.word[language]) }];
  if (column.kind === "count" || column.kind === "year")
    return [
      {
        ...shared,
        type: "whole",
        operator: "between",
        formula1: String(column.least ?? 0),
        formula2: String(column.most ?? 1000000),
      },
    ];
  if (column.kind === "date")
    return [{ ...shared, type: "date", operator: "between", formula1: "29221", formula2: "73415" }];
  if (column.kind === "share")
    return [{ ...shared, type: "decimal", operator: "between", formula1: "0", formula2: "1" }];
  if (column.kind === "length" || column.kind === "shortLength" || column.kind === "mass")
    return [{ ...shared, type: "decimal", operator: "greaterThanOrEqual", formula1: "0" }];
  return [];
}
