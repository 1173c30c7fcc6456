import type { Check, FindingKind } from "./check";
import { comparedColumns } from "./unitSlips";

const unitSlip: FindingKind = { code: "unitSlip", severity: "ask", action: "correct" };

/** Values that fit their block only in another unit: inches in a feet column, feet in metres, ounces in pounds. */
export const UNIT_SLIP: Check = {
  id: "unitSlip",
  kinds: [unitSlip],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const slips = comparedColumns(table, context).columns.flatMap((compared) =>
      compared.slips.map((slip) => ({ ...slip, column: compared.column })),
    );
    return (from, to, report) => {
      for (const { column, indexes, meant } of slips) {
        const [first] = indexes;
        if (first < from || first >= to) continue;
        const value = column.raw.at(first) as number;
        report(unitSlip, first, column, {
          value,
          unit: column.unit!.id,
          meant: meant.id,
          converted: Number(((value * meant.perUnit) / column.perUnit).toPrecision(3)),
          rows: indexes.length,
          lastRow: table.sheetRow(indexes.at(-1)!),
        });
      }
    };
  },
};
