import type { Check, FindingKind } from "./check";

const aliveAboveCut: FindingKind = { code: "aliveAboveCut", severity: "wrong", action: "askCounter" };

/** Live primaries or secondaries cannot be more than the nodes that were cut. */
export const BUD_COUNTS: Check = {
  id: "budCounts",
  kinds: [aliveAboveCut],
  sheets: ["budCuts"],
  scope: "row",
  prepare(table) {
    const cut = table.column("nodesCut")?.numbers;
    const counted = ["primariesAlive", "secondariesAlive"].flatMap((id) => table.column(id) ?? []);
    if (!cut) return undefined;
    return (from, to, report) => {
      for (const column of counted)
        for (let i = from; i < to; i++)
          if (column.numbers[i] > cut[i])
            report(aliveAboveCut, i, column, { alive: column.numbers[i], cut: cut[i] });
    };
  },
};
