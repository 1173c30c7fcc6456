import { type CellValue, isBlank } from "../../sheets/cell";
import { columnLetters } from "../../sheets/cellName";
import type { Column, SheetShape } from "../../sheets/column";
import { columnNamed, headWords, type HeadWords } from "../headWords";
import type { LeftOutReason, OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { isOfOtherUnit, type Segment } from "./bestShape";
import type { AddedColumn } from "./addedColumn";
import type { Section } from "./heads";

/** Names the columns that were not read, with the reason. */
export function leftColumns(
  { sheet, values, firstColumn }: SheetArea,
  { texts, index, lines, end }: Section,
  segment: Segment,
  columns: ReadonlyMap<Column, number>,
  extras: readonly AddedColumn[],
  { questions, leftOut }: OpenAccount,
): void {
  const read = new Set([
    ...columns.values(),
    ...segment.groups.flatMap(({ positions, dead }) => [...positions.keys(), ...dead]),
    ...extras.flatMap(({ sheetColumn, second = 0 }) => [sheetColumn, second].map((one) => one - firstColumn)),
  ]);
  const asked = new Set(
    questions
      .filter((question) => question.sheet === sheet)
      .flatMap(({ code, facts, proposals: [first] }) =>
        code === "head" ? Object.keys(first.heads![0].columns) : code === "unit" ? [String(facts.head)] : [],
      ),
  );
  const headless: number[] = [];
  for (let at = segment.from; at < segment.to; at++) {
    if (read.has(at)) continue;
    const text = texts[at];
    if (text === undefined) headless.push(at);
    else
      leftOut.push({
        what: "column",
        reason: asked.has(text) ? "asked" : reasonOf(segment.shape, headWords(text), columns),
        sheet,
        facts: { head: text },
      });
  }
  for (const at of filledOf(values.slice(index + lines, end), headless))
    leftOut.push({
      what: "column",
      reason: "noHead",
      sheet,
      facts: { head: columnLetters(firstColumn + at) },
    });
}

/** Those of some columns in which anything stands. */
function filledOf(rows: readonly (readonly CellValue[])[], positions: readonly number[]): number[] {
  const found = new Set<number>();
  for (const cells of positions.length > 0 ? rows : [])
    for (const at of positions) {
      if (at >= cells.length) break;
      if (!isBlank(cells[at])) found.add(at);
    }
  return positions.filter((at) => found.has(at));
}

/** Why a column is not read, as its head tells. */
function reasonOf(shape: SheetShape, head: HeadWords, columns: ReadonlyMap<Column, number>): LeftOutReason {
  if (head.qualifier === "total") return "total";
  const named = columnNamed(shape, head.words);
  if (head.qualifier !== undefined || head.year !== undefined || (named && isOfOtherUnit(named, head)))
    return "qualifier";
  return named && columns.has(named) ? "repeated" : "otherColumn";
}
