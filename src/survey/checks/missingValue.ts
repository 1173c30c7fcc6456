import { DATA_SHEETS, HEADER, type Check, type FindingKind } from "./check";
import { isYieldList } from "../season/yieldList";
import { CELL, type SurveyTable } from "../season/season";
import { uncountedRows } from "../season/uncountedRows";

const missingValue: FindingKind = { code: "missingValue", severity: "wrong", action: "fillIn" };
const missingColumn: FindingKind = { code: "missingColumn", severity: "wrong", action: "mendSheet" };
const columnTwice: FindingKind = { code: "columnTwice", severity: "ask", action: "mendSheet" };

/** Questions that are about a column which a table does not have until they are answered. */
const ASKS = new Set(["keys", "unit", "head"]);

/**
 * A required cell without an entry, or a required column that the table does not have; told once where a sheet was read
 * as several tables, and not where a question about the column is open. A vine that is laid out and not counted yet
 * lacks nothing.
 */
export const MISSING_VALUE: Check = {
  id: "missingValue",
  kinds: [missingValue, missingColumn, columnTwice],
  sheets: DATA_SHEETS,
  scope: "row",
  prepare(table, { season, places }) {
    const asked = season.account.questions.flatMap(({ code, sheet, facts }) =>
      [facts.sheets ?? sheet].flat().includes(table.sheet) && ASKS.has(code)
        ? [facts.column, facts.columns].flat()
        : [],
    );
    const before = season.tables(table.shape.id).filter(({ sheet }) => sheet === table.sheet);
    const isToldBefore = (lacks: (other: SurveyTable) => boolean) => {
      const first = before.find(lacks);
      return first !== undefined && first !== table;
    };
    const required = table.columns.filter((column) => column.column.required);
    const uncounted = uncountedRows(table, places);
    const absent = table.shape.columns.filter(
      ({ id, required }) =>
        required && !table.column(id) && !asked.includes(id) && !(id === "status" && isYieldList(table)),
    );
    return (from, to, report) => {
      if (from === 0) {
        for (const column of absent)
          if (!isToldBefore((other) => !other.column(column.id)))
            report(missingColumn, HEADER, undefined, { columnId: column.id, shape: table.shape.id });
        for (const { header } of table.repeatedHeaders)
          if (!isToldBefore((other) => other.repeatedHeaders.some((again) => again.header === header)))
            report(columnTwice, HEADER, undefined, { wanted: header });
      }
      for (const column of required) {
        const { states } = column;
        for (let i = from; i < to; i++)
          if (states[i] === CELL.blank && uncounted[i] === 0) report(missingValue, i, column);
      }
    };
  },
};
