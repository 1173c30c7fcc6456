import { CELL } from "../season/surveyTable";
import { grownRows } from "../sheets/blockLimits";
import { COUNT_SHEETS, type Check, type CheckContext, type FindingKind } from "./check";
import type { OtherColumn, SurveyTable } from "../season/season";
import { choiceId } from "../season/vinePlaces";

const countLeftOut: FindingKind = { code: "countLeftOut", severity: "ask", action: "fillIn" };
const vineWithoutCount: FindingKind = { code: "vineWithoutCount", severity: "ask", action: "askCounter" };

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
/** Filled cells for each row without any count from which on such a row was not meant to stay blank. */
const FILLED_A_BLANK_ROW = 10;

/** A counted column, ours or not, and which rows have nothing in it. */
interface CountedColumn {
  readonly column: Pick<OtherColumn, "header" | "sheetColumn">;
  readonly isBlank: (row: number) => boolean;
}

/**
 * One blank in a column that is otherwise full, and a vine with nothing in any of several counted columns. Dead
 * cordons and vines that are not in bearing are left alone, and so is a column with several blanks, which was not to be
 * filled everywhere.
 */
export const COUNT_LEFT_OUT: Check = {
  id: "countLeftOut",
  kinds: [countLeftOut, vineWithoutCount],
  sheets: COUNT_SHEETS,
  scope: "survey",
  prepare(table, context) {
    const meant = meantRows(table, context);
    const counted = countedColumns(table).map((column) => ({
      ...column,
      blanks: meant.filter((row) => column.isBlank(row)),
    }));
    const mostlyFull = counted.filter(
      ({ blanks }) => meant.length - blanks.length >= FILLED_A_BLANK_ROW * Math.max(2, blanks.length),
    );
    const [first, ...rest] = mostlyFull;
    const empty =
      rest.length === 0 || table.shape.id !== "vines"
        ? []
        : first.blanks.filter((row) => rest.every(({ isBlank }) => isBlank(row)));
    const isEmpty = new Set(empty);
    const single = counted.flatMap(({ column, blanks }) => {
      const own = blanks.filter((row) => !isEmpty.has(row));
      const values = meant.length - blanks.length;
      return own.length === 1 && values >= FILLED_A_BLANK ? [{ column, row: own[0], values }] : [];
    });
    return (from, to, report) => {
      for (const row of empty)
        if (row >= from && row < to)
          report(vineWithoutCount, row, undefined, {
            counts: mostlyFull.map(({ column }) => column.header),
            values: meant.length - empty.length,
          });
      for (const { column, row, values } of single)
        if (row >= from && row < to) report(countLeftOut, row, column, { values });
    };
  },
};

/** Rows of bearing vines, of cordons only the living. */
function meantRows(table: SurveyTable, context: CheckContext): number[] {
  const grown = grownRows(table, context);
  const condition = table.column("condition");
  const spurs = table.column("liveSpurs")?.numbers;
  const rows: number[] = [];
  for (let i = 0; i < table.rowCount; i++) {
    const isDead = condition && choiceId(condition, i) === "dead";
    if (grown[i] === 1 && !isDead && !(spurs && !(spurs[i] > 0))) rows.push(i);
  }
  return rows;
}

function countedColumns(table: SurveyTable): CountedColumn[] {
  const ours = table.columns
    .filter(({ column }) => !column.required && COUNTED.has(column.id))
    .map((column) => ({ column, isBlank: (row: number) => column.states[row] === CELL.blank }));
  const others = table.otherColumns.map((column) => ({
    column,
    isBlank: (row: number) => Number.isNaN(column.numbers[row]),
  }));
  return [...ours, ...others];
}
