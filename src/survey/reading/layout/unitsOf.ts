import type { Column } from "../../sheets/column";
import { type Unit, unitNamed } from "../../sheets/unit";
import type { HeadWords } from "../headWords";
import { isAsked, type OpenAccount } from "../readingAccount";
import type { LayoutOptions } from "./layoutOptions";

/** Units that heads or answers name; a unit word that is none of ours leaves its column unread and asks. */
export function unitsOf(
  columns: Map<Column, number>,
  heads: ReadonlyMap<number, HeadWords>,
  sheet: string,
  { answers }: LayoutOptions,
  account: OpenAccount,
): Map<Column, Unit> {
  const units = new Map<Column, Unit>();
  for (const [column, at] of columns) {
    const head = heads.get(at);
    const answered = answers.units?.find(
      (own) => own.sheet === sheet && own.column === column.id && own.counter === undefined,
    );
    const isMeasure = column.kind === "length" || column.kind === "shortLength" || column.kind === "mass";
    const unit = answered
      ? unitNamed(answered.unit)
      : (head?.unit ?? (isMeasure ? head?.lastWord : undefined));
    if (unit) units.set(column, unit);
    if (!unit && isMeasure && head?.unknown !== undefined) {
      columns.delete(column);
      if (isAsked(account, "unit", sheet, column)) continue;
      const likely = column.kind === "mass" ? ["kg", "lb", "g", "oz"] : ["ft", "in", "cm", "m", "mm"];
      const first = likely.filter((id) => id[0] === head.unknown![0]?.toLowerCase());
      account.questions.push({
        code: "unit",
        sheet,
        facts: { head: head.text, word: head.unknown, column: column.id },
        proposals: [...new Set([...first, ...likely])].map((id) => ({
          units: [{ sheet, column: column.id, unit: id }],
        })),
      });
    }
  }
  return units;
}
