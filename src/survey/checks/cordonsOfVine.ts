import type { Check, FindingKind } from "./check";

const cordonsAboveMost: FindingKind = { code: "cordonsAboveMost", severity: "wrong", action: "correct" };

/** A vine that far more rows name than a vine has cordons: its number was filled down. Said once, at the first of them. */
export const CORDONS_OF_VINE: Check = {
  id: "cordonsOfVine",
  kinds: [cordonsAboveMost],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, { season }) {
    const vine = table.column("vine");
    const most = season.settings.cordonsAVineMost;
    const found = [...season.used.overfull().values()].filter(({ first }) => first.table === table);
    return (from, to, report) => {
      for (const { first, rows } of found)
        if (first.index >= from && first.index < to)
          report(cordonsAboveMost, first.index, vine, { rows, most });
    };
  },
};
