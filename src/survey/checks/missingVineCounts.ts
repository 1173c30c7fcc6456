import type { Check, FindingKind } from "./check";
import { choiceId } from "../season/vinePlaces";

const missingAsZero: FindingKind = { code: "missingAsZero", severity: "ask", action: "correct" };
const missingVineCounted: FindingKind = { code: "missingVineCounted", severity: "wrong", action: "correct" };

const COUNTS = ["clusters", "shoots", "prunings"] as const;

/**
 * A count or a weight of prunings on a vine that the same row calls missing, or the register where the list has no
 * statuses. A 0 there is a vine without crop that the block loses twice: once in the mean and once as a missing vine
 * (Oger, Laurent, Vismara and Tisseyre, OENO One 2023). Anything more cannot be true.
 */
export const MISSING_VINE_COUNTS: Check = {
  id: "missingVineCounts",
  kinds: [missingAsZero, missingVineCounted],
  sheets: ["vines"],
  scope: "row",
  prepare(table, { places }) {
    const status = table.column("status");
    const counts = COUNTS.flatMap((id) => table.column(id) ?? []);
    const keys = places.keysOf(table);
    const statusOf = (i: number) => (status ? choiceId(status, i) : places.statusOf(keys[i]));
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        if (statusOf(i) !== "missing") continue;
        for (const column of counts) {
          if (column.numbers[i] === 0) report(missingAsZero, i, column);
          else if (column.numbers[i] > 0)
            report(missingVineCounted, i, column, { value: column.raw.at(i) as number });
        }
      }
    };
  },
};
