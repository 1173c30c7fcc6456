import { CELL } from "../season/surveyTable";
import { grownRows } from "../sheets/blockLimits";
import { COUNT_SHEETS, type Check, type FindingKind } from "./check";
import { choiceId } from "../season/vinePlaces";

const countLeftOut: FindingKind = { code: "countLeftOut", severity: "ask", action: "fillIn" };

/** Columns that are counted or measured, where a blank may also mean that nobody meant to. */
const COUNTED = new Set([
  "longestGap",
  "spursDown",
  "spursLevel",
  "spursUp",
  "diameter",
  "prunings",
  "clusters",
  "shoots",
  "primariesAlive",
  "secondariesAlive",
]);
/** Filled cells for each blank one from which on a column counts as full. */
const FILLED_A_BLANK = 50;

/**
 * One blank in a column that is otherwise full. Dead cordons and vines that are not in bearing are left alone, and so is
 * a column with several blanks, which was not to be filled everywhere.
 */
export const COUNT_LEFT_OUT: Check = {
  id: "countLeftOut",
  kinds: [countLeftOut],
  sheets: COUNT_SHEETS,
  scope: "survey",
  prepare(table, context) {
    const grown = grownRows(table, context);
    const condition = table.column("condition");
    const spurs = table.column("liveSpurs")?.numbers;
    const isMeant = (i: number) =>
      grown[i] === 1 && !(condition && choiceId(condition, i) === "dead") && !(spurs && !(spurs[i] > 0));
    const found = table.columns.flatMap((column) => {
      if (column.column.required || !COUNTED.has(column.column.id)) return [];
      const blanks: number[] = [];
      let filled = 0;
      for (let i = 0; i < table.rowCount; i++) {
        if (!isMeant(i)) continue;
        if (column.states[i] === CELL.blank) blanks.push(i);
        else filled++;
      }
      const full = blanks.length === 1 && filled >= FILLED_A_BLANK;
      return full ? [{ column, row: blanks[0], filled }] : [];
    });
    return (from, to, report) => {
      for (const { column, row, filled } of found)
        if (row >= from && row < to) report(countLeftOut, row, column, { values: filled });
    };
  },
};
