import type { Check, FindingKind } from "./check";

const spursAbovePositions: FindingKind = {
  code: "spursAbovePositions",
  severity: "wrong",
  action: "lookAtVine",
};
const gapTooLong: FindingKind = { code: "gapTooLong", severity: "wrong", action: "lookAtVine" };
const gapTooShort: FindingKind = { code: "gapTooShort", severity: "wrong", action: "lookAtVine" };

const gapBeyondEnd: FindingKind = { code: "gapBeyondEnd", severity: "wrong", action: "lookAtVine" };

/**
 * Live spurs, positions and the longest gap must fit together: no more spurs than positions, no gap longer than the
 * positions without a spur, and, since s spurs part the empty positions into s + 1 stretches at most, no gap shorter
 * than an even share of them. A gap cannot begin so far from the head that it ends beyond the last position.
 */
export const SPUR_COUNTS: Check = {
  id: "spurCounts",
  kinds: [spursAbovePositions, gapTooLong, gapTooShort, gapBeyondEnd],
  sheets: ["cordons"],
  scope: "row",
  prepare(table) {
    const positionsColumn = table.column("positions");
    const spursColumn = table.column("liveSpurs");
    const gapColumn = table.column("longestGap");
    if (!positionsColumn || !spursColumn) return undefined;
    const positions = positionsColumn.numbers;
    const spurs = spursColumn.numbers;
    const gaps = gapColumn?.numbers;
    const fromColumn = table.column("gapFrom");
    const begins = fromColumn?.numbers;
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const missing = positions[i] - spurs[i];
        if (missing < 0) {
          report(spursAbovePositions, i, spursColumn, { spurs: spurs[i], positions: positions[i] });
          continue;
        }
        if (!gaps) continue;
        const gap = gaps[i];
        if (gap > missing)
          report(gapTooLong, i, gapColumn, { gap, missing, spurs: spurs[i], positions: positions[i] });
        else if (gap * (spurs[i] + 1) < missing && spurs[i] >= 0)
          report(gapTooShort, i, gapColumn, {
            gap,
            missing,
            least: Math.ceil(missing / (spurs[i] + 1)),
            spurs: spurs[i],
          });
        else if (begins && begins[i] + gap > positions[i])
          report(gapBeyondEnd, i, fromColumn, { from: begins[i], gap, positions: positions[i] });
      }
    };
  },
};
