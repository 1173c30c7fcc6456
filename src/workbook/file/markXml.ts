import { cellName } from "../address";
import type { CellMark } from "../surveyWorkbook";
import { freeNumber } from "./freeNumber";
import { spliced, xmlSpans, type Splice, type XmlSpan } from "./xmlSpans";

/** Fill and letters of each severity, the same as in Excel. */
const COLOURS: Readonly<Record<CellMark["severity"], { fill: string; font: string }>> = {
  wrong: { fill: "FFF4B8A8", font: "FF5A1000" },
  ask: { fill: "FFFFE699", font: "FF3F3000" },
  note: { fill: "FFD6E4F0", font: "FF10304A" },
};
const SEVERITIES = ["wrong", "ask", "note"] as const;
const OURS = /^N\("Cordonbook (?:wrong|ask|note)"\)=0$/;

/** What comes before the conditional formats of a sheet, and they themselves (ECMA-376 part 1, 18.3.1.99). */
const UP_TO_FORMATS = [
  "sheetPr",
  "dimension",
  "sheetViews",
  "sheetFormatPr",
  "cols",
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "protectedRanges",
  "scenarios",
  "autoFilter",
  "sortState",
  "dataConsolidate",
  "customSheetViews",
  "mergeCells",
  "phoneticPr",
  "conditionalFormatting",
];

/** Inner XML of the conditional style of a severity. */
export function markStyle(severity: CellMark["severity"]): string {
  const { fill, font } = COLOURS[severity];
  return `<font><color rgb="${font}"/></font><fill><patternFill patternType="solid"><bgColor rgb="${fill}"/></patternFill></fill>`;
}

/** True for a sheet that is protected. */
export function isProtectedSheet(xml: string): boolean {
  const { spans } = xmlSpans(xml, (path) => path.length === 1 && path[0] === "sheetProtection");
  return spans.some(({ attributes }) => /^(1|true)$/.test(attributes.sheet ?? ""));
}

/** True for a sheet that has marks of ours. */
export function hasMarks(xml: string): boolean {
  return xml.includes("Cordonbook ") && ourFormats(xml).length > 0;
}

/**
 * The sheet with these marks and no others of ours. A mark is a conditional format that is always true: the cell's own
 * look, and the person's conditional formats, stay what they are.
 */
export function withMarks(
  xml: string,
  marks: readonly CellMark[],
  styleOf: (severity: CellMark["severity"]) => number,
): string {
  const { prefix: p, root, spans } = xmlSpans(xml, isPlaceOrRule);
  const rules = spans.filter(({ name }) => name === "cfRule");
  const splices: Splice[] = ourFormats(xml).map(({ start, end }) => ({ start, end, text: "" }));
  const priorities: (string | number)[] = rules.map(({ attributes }) => attributes.priority);
  const nextPriority = () => {
    priorities.push(freeNumber(priorities, MOST_PRIORITY));
    return priorities.at(-1);
  };
  const added = SEVERITIES.flatMap((severity) => {
    const cells = marks.filter((mark) => mark.severity === severity);
    if (cells.length === 0) return [];
    const sqref = runsOf(cells).join(" ");
    return `<${p}conditionalFormatting sqref="${sqref}"><${p}cfRule type="expression" dxfId="${styleOf(severity)}" priority="${nextPriority()}"><${p}formula>N("Cordonbook ${severity}")=0</${p}formula></${p}cfRule></${p}conditionalFormatting>`;
  });
  if (added.length > 0) {
    const at = spans.filter(({ name }) => UP_TO_FORMATS.includes(name)).at(-1)?.end ?? root.closeStart;
    splices.push({ start: at, end: at, text: added.join("") });
  }
  return spliced(xml, splices);
}

/** The lowest priority of a conditional format: the largest signed number of 32 bits. */
const MOST_PRIORITY = 2 ** 31 - 1;

/** Children of the sheet itself, which are its places in order, and rules wherever they stand: extensions have some too. */
function isPlaceOrRule(path: readonly string[]): boolean {
  return path.length === 1 || path[path.length - 1] === "cfRule";
}

/** Conditional formats that carry nothing but a mark of ours. */
function ourFormats(xml: string): XmlSpan[] {
  const { spans } = xmlSpans(xml, (path) => path[0] === "conditionalFormatting" && path.length <= 3);
  const ours: XmlSpan[] = [];
  let at = 0;
  while (at < spans.length) {
    const format = spans[at++];
    const inside: XmlSpan[] = [];
    while (at < spans.length && spans[at].start < format.closeStart) inside.push(spans[at++]);
    const formulas = inside.filter(({ name }) => name === "formula");
    const rules = inside.filter(({ name }) => name === "cfRule");
    const isOurs = ({ openEnd, closeStart }: XmlSpan) =>
      OURS.test(xml.slice(openEnd, closeStart).replaceAll("&quot;", '"').trim());
    if (rules.length > 0 && rules.length === formulas.length && formulas.every(isOurs)) ours.push(format);
  }
  return ours;
}

/** Cells as ranges, those below one another joined. */
function runsOf(cells: readonly CellMark[]): string[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: { column: number; first: number; last: number }[] = [];
  for (const { row, column } of sorted) {
    const run = runs[runs.length - 1];
    if (run?.column === column && row <= run.last + 1) run.last = row;
    else runs.push({ column, first: row, last: row });
  }
  return runs.map(
    ({ column, first, last }) => cellName(first, column) + (last > first ? `:${cellName(last, column)}` : ""),
  );
}
