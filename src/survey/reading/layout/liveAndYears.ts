import type { Column, SheetShape } from "../../sheets/column";
import { columnNamed, type HeadWords } from "../headWords";
import type { OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import type { Segment } from "./bestShape";
import type { AddedColumn } from "./addedColumn";
import { headQuestion } from "./headQuestions";
import type { Section } from "./heads";
import type { LayoutOptions } from "./layoutOptions";

/** Of heads that name years this season's, and live spurs from dead or missing ones. */
export function yearsAndDead(
  area: SheetArea,
  section: Section,
  { shape }: Segment,
  columns: Map<Column, number>,
  heads: ReadonlyMap<number, HeadWords>,
  extras: AddedColumn[],
  { winter }: LayoutOptions,
  account: OpenAccount,
): void {
  const years = new Map<Column, { at: number; year: number }[]>();
  const dead: number[] = [];
  for (const [at, head] of heads) {
    const column = columnNamed(shape, head.words);
    if (!column) continue;
    if (head.year !== undefined && head.qualifier === undefined)
      years.set(column, [...(years.get(column) ?? []), { at, year: head.year }]);
    if (
      shape.id === "cordons" &&
      column.id === "liveSpurs" &&
      (head.qualifier === "dead" || head.qualifier === "missing")
    )
      dead.push(at);
  }
  for (const [column, found] of years) {
    if (columns.has(column)) continue;
    const newest = found.reduce((best, one) => (one.year > best.year ? one : best));
    const taken =
      found.find(({ year }) => year === winter) ??
      (winter === undefined || newest.year === winter ? newest : undefined);
    if (taken) {
      columns.set(column, taken.at);
      account.notes.push({
        code: "yearTaken",
        sheet: area.sheet,
        facts: { head: heads.get(taken.at)!.text, year: taken.year },
      });
    } else account.questions.push(headQuestion(area.sheet, shape, [heads.get(newest.at)!.text], column));
  }
  extras.push(...liveOfDead(area, section, shape, columns, dead, account));
}

/** Live spurs as positions less those that are dead or missing; none where they are counted or positions are not. */
export function liveOfDead(
  area: SheetArea,
  { texts }: Section,
  shape: SheetShape,
  columns: ReadonlyMap<Column, number>,
  dead: readonly number[],
  account: OpenAccount,
): AddedColumn[] {
  const live = shape.columns.find(({ id }) => id === "liveSpurs");
  const positions = [...columns].find(([{ id }]) => id === "positions")?.[1];
  if (!live || dead.length === 0 || columns.has(live) || positions === undefined) return [];
  account.notes.push({
    code: "liveDerived",
    sheet: area.sheet,
    facts: { heads: dead.map((at) => texts[at]!), positions: texts[positions]! },
  });
  return [
    {
      column: live,
      header: texts[dead[0]]!,
      sheetColumn: area.firstColumn + dead[0],
      valueOf: (index) => {
        const all = area.values[index][positions];
        const less = dead.map((at) => area.values[index][at]);
        if (typeof all !== "number" || less.some((cell) => typeof cell !== "number")) return null;
        return less.reduce<number>((rest, cell) => rest - (cell as number), all);
      },
    },
  ];
}
