import { DATA_SHEETS, type Check, type FindingKind } from "./check";
import { CELL } from "../season/season";

const extraCells: FindingKind = { code: "extraCells", severity: "wrong", action: "mendSheet" };

/** A record of a text file with more cells than heads, or two lines that ran together: nothing in it is sure. */
export const EXTRA_CELLS: Check = {
  id: "extraCells",
  kinds: [extraCells],
  sheets: [...DATA_SHEETS, "settings"],
  scope: "row",
  prepare(table) {
    const [first] = table.columns;
    return (from, to, report) => {
      for (let i = from; i < to; i++) if (first.states[i] === CELL.moved) report(extraCells, i, first);
    };
  },
};
