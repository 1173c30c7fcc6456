import { isBlank } from "../../survey/sheets/cell";
import { cellName } from "../address";
import { SHADE_BANDS, shadeCondition, shadedRuns, type ShadeBand } from "../shadeBands";
import { layOutOwnSheet, type OwnSheetLayout, type OwnValue } from "../ownSheet";
import type { OwnSheet } from "../surveyWorkbook";
import type { WorkbookNamespaces } from "./editWorkbook";
import type { CellLook } from "./styleEditor";
import { wrappedLines } from "../wrappedLines";
import { xmlAttribute, xmlText } from "./xmlSpans";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MARGINS =
  '<pageMargins left="0.4" right="0.4" top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup orientation="landscape" fitToHeight="0"/>';

/** The relations of a sheet of ours: to its table, its charts and the frames of its notes. */
export interface OwnSheetRelations {
  readonly table: string;
  readonly drawing?: string;
  readonly frames?: string;
}

/** The part of a sheet of ours; text is written as text, whatever it begins with. */
export function ownSheetXml(
  content: OwnSheet,
  namespaces: WorkbookNamespaces,
  look: (look: CellLook) => number,
  conditional: (inner: string) => number,
  relations: OwnSheetRelations,
  styleOfCarried: (row: number, column: number) => number | undefined,
): string {
  const layout = layOutOwnSheet(content);
  const { headerRow, columnCount, values } = layout;
  const titleLook = look({ bold: true });
  const top = content.columns?.some(({ wrap }) => wrap);
  const columnLooks = Array.from({ length: columnCount }, (_, c) =>
    look({ format: content.columns?.[c]?.format, wrap: content.columns?.[c]?.wrap, top }),
  );
  const headerLook = look({ wrap: true });
  const styleOf = (row: number, column: number) =>
    row > headerRow ? columnLooks[column] : row === headerRow ? headerLook : row === 1 ? titleLook : 0;
  const widths = Array.from(
    { length: columnCount },
    (_, c) => content.columns?.[c]?.width ?? widthOf(content, c),
  );
  const rows = values.map((row, r) => {
    const cells = row
      .map((value, c) => {
        const [place, carried] = [cellName(r + 1, c + 1), styleOfCarried(r + 1, c + 1)];
        return isBlank(value) && carried
          ? `<c r="${place}" s="${carried}"/>`
          : cellXml(place, value, carried ?? styleOf(r + 1, c));
      })
      .join("");
    return cells === ""
      ? ""
      : `<row r="${r + 1}"${heightOf(row, r + 1, headerRow, content, widths)}>${cells}</row>`;
  });
  const columns = widths.map(
    (width, c) => `<col min="${c + 1}" max="${c + 1}" width="${width}" customWidth="1"/>`,
  );
  return (
    `${DECLARATION}<worksheet xmlns="${namespaces.main}" xmlns:r="${namespaces.relations}">` +
    `<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="${dimension(layout)}"/>` +
    `<sheetViews><sheetView workbookViewId="0"><pane ySplit="${headerRow}" topLeftCell="A${headerRow + 1}" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>` +
    `<cols>${columns.join("")}</cols><sheetData>${rows.join("")}</sheetData>${shadesXml(content, layout, conditional)}${MARGINS}` +
    (relations.drawing ? `<drawing r:id="${relations.drawing}"/>` : "") +
    (relations.frames ? `<legacyDrawing r:id="${relations.frames}"/>` : "") +
    `<tableParts count="1"><tablePart r:id="${relations.table}"/></tableParts></worksheet>`
  );
}

/** Conditional formats of the shaded columns; the worst band is hatched, so that it shows in print without colour. */
function shadesXml(
  content: OwnSheet,
  layout: OwnSheetLayout,
  conditional: (inner: string) => number,
): string {
  const firstRow = layout.headerRow + 1;
  if (layout.values.length < firstRow) return "";
  let priority = 0;
  return shadedRuns(content.columns)
    .map(({ first, last }) => {
      const firstCell = cellName(firstRow, first + 1);
      const rules = SHADE_BANDS.map(
        (band) =>
          `<cfRule type="expression" dxfId="${conditional(shadeStyle(band))}" priority="${++priority}" stopIfTrue="1">` +
          `<formula>${xmlText(shadeCondition(band, firstCell))}</formula></cfRule>`,
      );
      const area = `${firstCell}:${cellName(layout.values.length, last + 1)}`;
      return `<conditionalFormatting sqref="${area}">${rules.join("")}</conditionalFormatting>`;
    })
    .join("");
}

function shadeStyle({ fill, font, worst }: ShadeBand): string {
  return (
    `<font>${worst ? "<b/>" : ""}<color rgb="FF${font}"/></font><fill>` +
    (worst
      ? `<patternFill patternType="lightUp"><fgColor rgb="FF000000"/><bgColor rgb="FF${fill}"/></patternFill>`
      : `<patternFill patternType="solid"><bgColor rgb="FF${fill}"/></patternFill>`) +
    "</fill>"
  );
}

/** The part of the table on a sheet of ours. A table has at least one row, so an empty one covers a blank line. */
export function ownTableXml(
  content: OwnSheet,
  namespaces: WorkbookNamespaces,
  table: { readonly id: number; readonly name: string },
): string {
  const layout = layOutOwnSheet(content);
  const last = Math.max(layout.headerRow + 1, layout.values.length);
  const ref = `A${layout.headerRow}:${cellName(last, layout.columnCount)}`;
  const name = xmlAttribute(table.name);
  const columns = content.headers
    .map((header, index) => `<tableColumn id="${index + 1}" name="${xmlAttribute(header)}"/>`)
    .join("");
  return (
    `${DECLARATION}<table xmlns="${namespaces.main}" id="${table.id}" name="${name}" displayName="${name}" ref="${ref}" totalsRowShown="0">` +
    `<autoFilter ref="${ref}"/><tableColumns count="${content.headers.length}">${columns}</tableColumns>` +
    '<tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>'
  );
}

/** One cell; "" for a blank. */
export function cellXml(address: string, value: OwnValue, style: number, prefix = ""): string {
  const attributes = `r="${address}"${style === 0 ? "" : ` s="${style}"`}`;
  const p = prefix;
  if (value === null || value === "") return "";
  if (typeof value === "string")
    return `<${p}c ${attributes} t="inlineStr"><${p}is><${p}t xml:space="preserve">${xmlText(inCell(value))}</${p}t></${p}is></${p}c>`;
  if (typeof value === "boolean") return `<${p}c ${attributes} t="b"><${p}v>${value ? 1 : 0}</${p}v></${p}c>`;
  if (!Number.isFinite(value)) return `<${p}c ${attributes} t="e"><${p}v>#NUM!</${p}v></${p}c>`;
  return `<${p}c ${attributes}><${p}v>${value}</${p}v></${p}c>`;
}

/** Characters that a cell of a spreadsheet holds. */
const MOST_IN_CELL = 32_767;

/** Text as long as a cell can hold it; a longer one ends with three points. */
function inCell(text: string): string {
  return text.length > MOST_IN_CELL ? `${text.slice(0, MOST_IN_CELL - 1)}…` : text;
}

function dimension(layout: OwnSheetLayout): string {
  return `A1:${cellName(Math.max(1, layout.values.length), layout.columnCount)}`;
}

/** Points of a line in the usual font of workbooks, and the highest row that a spreadsheet takes. */
const LINE_POINTS = 15;
const HIGHEST = 409;

/**
 * The height of a row in which texts wrap, as attributes; a letter is taken to be as wide as a digit, by which widths are
 * told, and most are narrower. Excel fits a row that has no height when it opens the file;
 * LibreOffice shows the first line alone. The header keeps its height; other rows are fitted anew once they are edited.
 */
function heightOf(
  row: readonly OwnValue[],
  number: number,
  headerRow: number,
  content: OwnSheet,
  widths: readonly number[],
): string {
  if (number < headerRow) return "";
  const isHeader = number === headerRow;
  const lines = wrappedLines(
    row.flatMap((text, c) => (isHeader || content.columns?.[c]?.wrap ? [{ text, letters: widths[c] }] : [])),
  );
  if (lines === 1) return "";
  return ` ht="${Math.min(HIGHEST, lines * LINE_POINTS)}"${isHeader ? ' customHeight="1"' : ""}`;
}

const NARROWEST = 8;
const WIDEST = 60;
const ROWS_MEASURED = 200;

/** Characters of the longest of the first rows, where no width is asked for. */
function widthOf(content: OwnSheet, column: number): number {
  const rows = content.rows.slice(0, ROWS_MEASURED);
  const longest = rows.reduce(
    (most, row) => Math.max(most, String(row[column] ?? "").length),
    content.headers[column].length + 2,
  );
  return Math.min(WIDEST, Math.max(NARROWEST, longest + 1));
}
