import { columnLetters } from "../address";
import { outsideQuotes } from "../storedFormula";

const REFERENCE =
  /(?<![A-Za-z0-9_.$])(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})(?![A-Za-z0-9_.(!])|(?<![A-Za-z0-9_.$])(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})(?![A-Za-z0-9_.(!])|(?<![A-Za-z0-9_.$])(\$?)([1-9]\d{0,6}):(\$?)([1-9]\d{0,6})(?![A-Za-z0-9_.(!])/g;

const COLUMNS = 16384;
const ROWS = 1048576;

/**
 * A formula as it reads when its cell is copied so many rows down and columns to the right: references without $ move
 * along, and go round the sheet's edges as in a spreadsheet. Workbooks store one formula for many cells in this way, so
 * it is looked through once.
 *
 * @example
 * movableFormula("A1+$B$2*SUM(C1:C9)")(1, 2) // "C2+$B$2*SUM(E2:E10)"
 */
export function movableFormula(formula: string): (rows: number, columns: number) => string {
  const references: RegExpMatchArray[] = [];
  const fixed = outsideQuotes(formula, (part) =>
    outsideBrackets(part, (plain) =>
      plain.replace(REFERENCE, (...match) => {
        references.push(match as unknown as RegExpMatchArray);
        return PLACE;
      }),
    ),
  ).split(PLACE);
  const pieces = fixed.flatMap((text, at) => (at === 0 ? text : [...piecesOf(references[at - 1]), text]));
  const rowNumbers = pieces.flatMap((piece) =>
    typeof piece === "object" && "row" in piece ? piece.row : [],
  );
  let movedRight = NaN;
  let parts: (string | number)[] = [];
  return (rows, columns) => {
    if (rows === 0 && columns === 0) return formula;
    if (columns !== movedRight) parts = textsBetweenRows(pieces, columns).flatMap((text) => [text, 0]);
    movedRight = columns;
    rowNumbers.forEach((number, at) => (parts[2 * at + 1] = wrapped(number + rows, ROWS)));
    return parts.slice(0, -1).join("");
  };
}

/** Stands for a reference; no formula of a workbook holds it. */
const PLACE = "\0";

/** A text that stays, or the number of a column or row that moves. */
type Piece = string | { readonly column: number } | { readonly row: number };

function piecesOf(match: RegExpMatchArray): Piece[] {
  const [whole, c1, l1, r1, n1, fromFixed, from, toFixed, to, topFixed, top, bottomFixed, bottom] = match;
  const column = (fixed: string, letters: string) =>
    fixed ? fixed + letters : { column: numberOf(letters) };
  const row = (fixed: string, number: string) => (fixed ? fixed + number : { row: Number(number) });
  if (l1 !== undefined)
    return numberOf(l1) > COLUMNS || Number(n1) > ROWS ? [whole] : [column(c1, l1), row(r1, n1)];
  if (from !== undefined)
    return numberOf(from) > COLUMNS || numberOf(to) > COLUMNS
      ? [whole]
      : [column(fromFixed, from), ":", column(toFixed, to)];
  return [row(topFixed, top), ":", row(bottomFixed, bottom)];
}

/** What stands before, between and after the rows that move, with the columns moved already. */
function textsBetweenRows(pieces: readonly Piece[], columns: number): string[] {
  const texts = [""];
  for (const piece of pieces)
    if (typeof piece === "string") texts[texts.length - 1] += piece;
    else if ("row" in piece) texts.push("");
    else texts[texts.length - 1] += columnLetters(wrapped(piece.column + columns, COLUMNS));
  return texts;
}

/** References to a table's columns stand in brackets and do not move. */
function outsideBrackets(formula: string, change: (plain: string) => string): string {
  if (!formula.includes("[")) return change(formula);
  let depth = 0;
  let plain = "";
  let result = "";
  for (const character of formula) {
    if (character === "[" && depth++ === 0) {
      result += change(plain);
      plain = "";
    }
    if (depth > 0) result += character;
    else plain += character;
    if (character === "]") depth = Math.max(0, depth - 1);
  }
  return result + change(plain);
}

function wrapped(number: number, count: number): number {
  return ((((number - 1) % count) + count) % count) + 1;
}

/** The number of a column: A is 1. */
export function numberOf(letters: string): number {
  let number = 0;
  for (let i = 0; i < letters.length; i++) number = number * 26 + (letters.charCodeAt(i) & 31);
  return number;
}
