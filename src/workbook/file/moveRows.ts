import { areasOfAddress } from "../address";
import { relationsOf } from "./editWorkbook";
import { movedArea, movedFormula, movedPlace, movedRow, type RowStep } from "./movedReferences";
import type { PackageEditor } from "./packageEditor";
import { unshared } from "./sharedFormulas";
import type { OutlineSheet, WorkbookOutline } from "./workbookOutline";
import { plainText, spliced, withAttributes, xmlSpans, xmlText, type Splice, type XmlSpan } from "./xmlSpans";

/** Something that stood on deleted rows only, or is cut in a way that only the program that made it can make good. */
class NotMovable extends Error {}

interface Move {
  readonly sheet: string;
  readonly steps: readonly RowStep[];
}

/**
 * Inserts and deletes rows of a sheet in the file: cells, their looks and rules, merged cells, tables, comments,
 * pictures, charts and pivots follow, and so does every reference of the workbook.
 *
 * @returns false, with nothing changed, where a table, array, pivot, comment or rule would be cut or lose its last cell
 */
export async function moveRows(
  editor: PackageEditor,
  outline: WorkbookOutline,
  { name, part: sheetPart }: OutlineSheet,
  steps: readonly RowStep[],
): Promise<boolean> {
  const move: Move = { sheet: name, steps };
  const texts = new Map<string, string>();
  const change = async (part: string, changed: (xml: string) => string) => {
    if (!texts.has(part)) texts.set(part, changed(await editor.text(part)));
  };
  const naming = (xml: string) => withFormulas(xml, move);
  try {
    await change(outline.workbookPart, naming);
    for (const { kind, part } of await relationsOf(editor, outline.workbookPart)) {
      if (kind === "pivotCacheDefinition") await change(part, (xml) => movedSource(xml, move));
      if (kind !== "worksheet" && kind !== "chartsheet") continue;
      const isOn = part === sheetPart;
      await change(part, isOn ? (xml) => movedSheet(xml, move) : naming);
      for (const below of await relationsOf(editor, part)) {
        const moved = isOn ? MOVED_PARTS[below.kind] : undefined;
        if (moved) await change(below.part, (xml) => moved(xml, move));
        else if (below.kind === "table") await change(below.part, naming);
        if (below.kind !== "drawing") continue;
        for (const drawn of await relationsOf(editor, below.part))
          if (/^chart(?:Ex)?$/.test(drawn.kind)) await change(drawn.part, naming);
      }
    }
  } catch (problem) {
    if (problem instanceof NotMovable) return false;
    throw problem;
  }
  for (const [part, text] of texts) if (text !== (await editor.text(part))) editor.put(part, text);
  return true;
}

/** The parts that belong to a sheet and say where on it something stands, by the kind of their relation. */
const MOVED_PARTS: Readonly<Record<string, (xml: string, move: Move) => string>> = {
  table: movedTable,
  comments: movedPlaces,
  threadedComment: movedPlaces,
  pivotTable: movedPlaces,
  drawing: movedAnchors,
  vmlDrawing: movedNotes,
};

/** Elements whose text is a formula: of cells, names, rules for typing, conditional formats, table columns and charts. */
const FORMULA = /^(?:f|formula[12]?|definedName|calculatedColumnFormula|totalsRowFormula)$/;

function formulaSplice(xml: string, span: XmlSpan, move: Move, isOn: boolean): Splice[] {
  const { name, openEnd, closeStart } = span;
  if (!FORMULA.test(name) || closeStart === openEnd) return [];
  const before = plainText(xml.slice(openEnd, closeStart));
  const after = movedFormula(before, { ...move, isOn });
  return after === before ? [] : [{ start: openEnd, end: closeStart, text: xmlText(after) }];
}

/** A part that does not belong to the sheet, with formulas and links that may name it. */
function withFormulas(xml: string, move: Move): string {
  const changes = (text: string) =>
    xmlSpans(text, (path) => FORMULA.test(path[path.length - 1]) || path[path.length - 1] === "hyperlink")
      .spans.flatMap((span) => [
        ...formulaSplice(text, span, move, false),
        ...(span.attributes.location === undefined
          ? []
          : [
              withAttributes(text, span, {
                location: movedFormula(span.attributes.location, { ...move, isOn: false }),
              }),
            ]),
      ])
      .filter(({ start, end, text: now }) => text.slice(start, end) !== now);
  if (changes(xml).length === 0) return xml;
  const plain = unshared(xml);
  return spliced(plain, changes(plain));
}

/** The part of the sheet itself. */
function movedSheet(before: string, move: Move): string {
  const xml = unshared(before);
  const { spans } = xmlSpans(
    xml,
    (path) => path[0] !== "cols" && (path[0] !== "sheetViews" || path[path.length - 1] === "pane"),
  );
  const data = spans.find(({ name }) => name === "sheetData");
  const splices: Splice[] = [];
  let [row, gone, isDynamic] = [0, -1, false];
  for (const span of spans) {
    const { name, attributes, start, openEnd, end } = span;
    if (start < gone) continue;
    if (name === "row" && data && start > data.start && start < data.end) {
      row = attributes.r === undefined ? row + 1 : Number(attributes.r);
      const now = movedRow(row, move.steps);
      if (now === undefined) {
        splices.push({ start, end, text: "" });
        gone = end;
      } else if (attributes.r !== undefined) splices.push(withAttributes(xml, span, { r: String(now) }));
      else
        splices.push({
          start,
          end: openEnd,
          text: xml.slice(start, openEnd).replace(/^<[^\s/>]+/, `$& r="${now}"`),
        });
      continue;
    }
    if (name === "c") isDynamic = attributes.cm !== undefined;
    const places = movedAttributes(attributes, move, name === "f" && attributes.t === "array" && !isDynamic);
    if (name === "hyperlink" && attributes.location !== undefined)
      places.location = movedFormula(attributes.location, { ...move, isOn: false });
    if (name === "brk" && Number(attributes.max) > 16_000)
      places.id = String(firstLeft(Number(attributes.id), move));
    if (name === "pane" && attributes.ySplit !== undefined && /^frozen/.test(attributes.state ?? ""))
      places.ySplit = String(firstLeft(Number(attributes.ySplit) + 1, move) - 1);
    if (Object.keys(places).length > 0) splices.push(withAttributes(xml, span, places));
    splices.push(...formulaSplice(xml, span, move, true), ...placeSplice(xml, span, move));
    if (name === "row") splices.push(rowNumberSplice(xml, span, move));
  }
  return spliced(xml, splices);
}

/** Attributes with the addresses of cells, as they read afterwards. */
function movedAttributes(
  attributes: XmlSpan["attributes"],
  move: Move,
  keepsItsSize: boolean,
): Record<string, string> {
  const moved: Record<string, string> = {};
  for (const name of ["r", "ref", "sqref", "topLeftCell"]) {
    const before = attributes[name];
    if (before === undefined) continue;
    const after = movedAddresses(before, move);
    if (keepsItsSize && rowsOf(before) !== rowsOf(after)) throw new NotMovable(before);
    moved[name] = after;
  }
  return moved;
}

function rowsOf(address: string): number {
  const [area] = areasOfAddress(address);
  return area ? area.lastRow - area.firstRow : 0;
}

/** Addresses with blanks between them; what is left of them. */
function movedAddresses(text: string, { steps }: Move): string {
  const moved = text
    .split(/\s+/)
    .filter((one) => one !== "")
    .flatMap((one) => movedPlace(one, steps) ?? []);
  if (moved.length === 0) throw new NotMovable(text);
  return moved.join(" ");
}

/** Addresses that are an element's text, as newer rules have them. */
function placeSplice(xml: string, { name, openEnd, closeStart }: XmlSpan, move: Move): Splice[] {
  return name === "sqref"
    ? [{ start: openEnd, end: closeStart, text: movedAddresses(xml.slice(openEnd, closeStart), move) }]
    : [];
}

/** The row itself, or the first one behind it that is left. */
function firstLeft(row: number, { steps }: Move): number {
  return (
    movedArea({ firstRow: row, lastRow: 1_048_575, firstColumn: 1, lastColumn: 1 }, steps)?.firstRow ?? row
  );
}

/** The row of a corner of something drawn, counted from 0. */
function rowNumberSplice(xml: string, { openEnd, closeStart }: XmlSpan, move: Move): Splice {
  const row = Number(xml.slice(openEnd, closeStart));
  return { start: openEnd, end: closeStart, text: String(firstLeft(row + 1, move) - 1) };
}

/** A part whose elements have addresses; a pivot keeps its size. */
function movedPlaces(xml: string, move: Move): string {
  const { root, spans } = xmlSpans(xml, (path) => path[path.length - 1] !== "pivotArea");
  return spliced(
    xml,
    spans.flatMap((span) => {
      const isPivot = root.name === "pivotTableDefinition";
      if (isPivot && span.name !== "location") return [];
      const places = movedAttributes(span.attributes, move, isPivot);
      return Object.keys(places).length === 0 ? [] : [withAttributes(xml, span, places)];
    }),
  );
}

/** The part of a table, which keeps its heads, its totals and a row of data. */
function movedTable(xml: string, move: Move): string {
  const { root, spans } = xmlSpans(xml, () => true);
  const [before] = areasOfAddress(root.attributes.ref ?? "");
  const after = before && movedArea(before, move.steps);
  const ends = before && [before.firstRow, before.lastRow].map((row) => movedRow(row, move.steps));
  const hasHeads = root.attributes.headerRowCount !== "0";
  const hasTotals = Number(root.attributes.totalsRowCount ?? 0) > 0;
  if (!after || (hasHeads && ends[0] === undefined) || (hasTotals && ends[1] === undefined))
    throw new NotMovable(root.attributes.ref);
  if (after.lastRow - after.firstRow < Number(hasHeads) + Number(hasTotals))
    throw new NotMovable(root.attributes.ref);
  return spliced(
    xml,
    [root, ...spans].flatMap((span) => {
      const places = movedAttributes(span.attributes, move, false);
      return [
        ...(Object.keys(places).length === 0 ? [] : [withAttributes(xml, span, places)]),
        ...formulaSplice(xml, span, move, true),
      ];
    }),
  );
}

/** Pictures and charts: their corners go with the cells, or the second one with the first, or neither. */
function movedAnchors(xml: string, move: Move): string {
  const { spans } = xmlSpans(xml, (path) => path.length === 1 || (path.length === 3 && path[2] === "row"));
  let anchored = "";
  let shift: number | undefined;
  return spliced(
    xml,
    spans.flatMap((span): Splice[] => {
      if (span.name !== "row") {
        anchored = span.attributes.editAs ?? (span.name === "oneCellAnchor" ? "oneCell" : "twoCell");
        shift = undefined;
        return [];
      }
      if (anchored === "absolute") return [];
      const row = Number(xml.slice(span.openEnd, span.closeStart));
      shift = anchored === "oneCell" && shift !== undefined ? shift : firstLeft(row + 1, move) - 1 - row;
      return [{ start: span.openEnd, end: span.closeStart, text: String(row + shift) }];
    }),
  );
}

/** The frames of comments. */
function movedNotes(xml: string, move: Move): string {
  const { spans } = xmlSpans(xml, (path) => /^(?:Row|Anchor)$/.test(path[path.length - 1]));
  return spliced(
    xml,
    spans.map((span) => {
      if (span.name === "Row") return rowNumberSplice(xml, span, move);
      const numbers = xml.slice(span.openEnd, span.closeStart).split(",").map(Number);
      for (const at of [2, 6]) numbers[at] = firstLeft(numbers[at] + 1, move) - 1;
      return { start: span.openEnd, end: span.closeStart, text: numbers.join(", ") };
    }),
  );
}

/** Where a pivot's figures come from. */
function movedSource(xml: string, move: Move): string {
  const { spans } = xmlSpans(xml, (path) => path[path.length - 1] === "worksheetSource");
  return spliced(
    xml,
    spans
      .filter(({ attributes }) => attributes.sheet?.toLowerCase() === move.sheet.toLowerCase())
      .map((span) => withAttributes(xml, span, movedAttributes(span.attributes, move, false))),
  );
}
