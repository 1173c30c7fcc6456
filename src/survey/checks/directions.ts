import type { Check, FindingKind } from "./check";

const directionsDoNotAddUp: FindingKind = {
  code: "directionsDoNotAddUp",
  severity: "wrong",
  action: "lookAtVine",
};

/** Spurs down, level and up are the live spurs; where one of the three is blank, the others are not more than them. */
export const DIRECTIONS: Check = {
  id: "directions",
  kinds: [directionsDoNotAddUp],
  sheets: ["cordons"],
  scope: "row",
  prepare(table) {
    const spursColumn = table.column("liveSpurs");
    const parts = ["spursDown", "spursLevel", "spursUp"].map((id) => table.column(id)?.numbers);
    if (!spursColumn || parts.every((part) => part === undefined)) return undefined;
    const none = parts.includes(undefined) ? new Float64Array(table.rowCount).fill(NaN) : undefined;
    const [down, level, up] = parts.map((part) => part ?? none!);
    const spurs = spursColumn.numbers;
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const sum = down[i] + level[i] + up[i];
        if (sum === spurs[i]) continue;
        const known = (down[i] || 0) + (level[i] || 0) + (up[i] || 0);
        if (known > spurs[i] || (sum === sum && sum !== spurs[i] && spurs[i] === spurs[i]))
          report(directionsDoNotAddUp, i, spursColumn, { sum: known, spurs: spurs[i] });
      }
    };
  },
};
