import type { Check, CheckContext, FindingKind } from "./check";
import { isYieldList } from "../season/yieldList";
import type { SheetId } from "../sheets/column";
import type { SurveyColumn, SurveyTable } from "../season/season";
import { NO_PLACE } from "../season/vinePlaces";

const sameCordonTwice: FindingKind = { code: "sameCordonTwice", severity: "wrong", action: "correct" };
const sameVineTwice: FindingKind = { code: "sameVineTwice", severity: "wrong", action: "mendRegister" };
const sameBlockTwice: FindingKind = { code: "sameBlockTwice", severity: "wrong", action: "mendRegister" };
const sameHarvestTwice: FindingKind = { code: "sameHarvestTwice", severity: "ask", action: "correct" };

interface Rule {
  readonly kind: FindingKind;
  /** Column that the finding points to. */
  readonly at: string;
  /** Identity of a row, undefined where it has none. */
  readonly keyOf: (table: SurveyTable, context: CheckContext) => (index: number) => number | undefined;
}

const RULES: Partial<Record<SheetId, Rule>> = {
  cordons: {
    kind: sameCordonTwice,
    at: "cordon",
    keyOf: (table, { places, season }) => {
      const vines = places.keysOf(table);
      const cordons = places.cordonKeys(table);
      const overfull = season.used.overfull();
      return (i) => (overfull.has(vines[i]) ? undefined : cordons(i));
    },
  },
  vines: {
    kind: sameVineTwice,
    at: "vine",
    keyOf: (table, context) => {
      const keys = context.places.keysOf(table);
      const isList = isYieldList(table);
      return (i) => (keys[i] === NO_PLACE || isList ? undefined : keys[i]);
    },
  },
  blocks: {
    kind: sameBlockTwice,
    at: "block",
    keyOf: (table) => {
      const codes = table.column("block")?.codes;
      return (i) => (codes && codes[i] >= 0 ? codes[i] : undefined);
    },
  },
  harvest: {
    kind: sameHarvestTwice,
    at: "year",
    keyOf: (table) => {
      const codes = table.column("block")?.codes;
      const years = table.column("year")?.numbers;
      return (i) =>
        codes && years && codes[i] >= 0 && years[i] > 0 ? codes[i] * 10000 + years[i] : undefined;
    },
  },
};

/** The same cordon, vine, block or harvest in two rows, also of two sheets. */
export const SAME_TWICE: Check = {
  id: "sameTwice",
  kinds: [sameCordonTwice, sameVineTwice, sameBlockTwice, sameHarvestTwice],
  sheets: ["cordons", "vines", "blocks", "harvest"],
  scope: "row",
  prepare(table, context) {
    const rule = RULES[table.shape.id];
    const column = rule && table.column(rule.at);
    if (!rule || !column) return undefined;
    const all = context.season.tables(table.shape.id);
    const tables = all.includes(table) ? all.slice(0, all.indexOf(table) + 1) : [...all, table];
    const firsts = firstRows(table, tables, (other) => rule.keyOf(other, context));
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const first = firsts.get(i);
        if (first) tell(rule.kind, i, column, table, first, report);
      }
    };
  },
};

/** True for the row that a table of one row was made from, so that it is not compared with itself. */
function isSameRow(other: SurveyTable, index: number, table: SurveyTable): boolean {
  return other.sheet === table.sheet && table.rowCount === 1 && other.sheetRow(index) === table.sheetRow(0);
}

interface FirstRow {
  readonly table: SurveyTable;
  readonly index: number;
}

type KeyOf = (index: number) => number | undefined;

/**
 * For each row of the table that repeats an earlier one the row that came first, in a table before it or in this one.
 *
 * @param tables those that come before the table, and the table itself as the last
 */
function firstRows(
  table: SurveyTable,
  tables: readonly SurveyTable[],
  keysOf: (table: SurveyTable) => KeyOf,
): Map<number, FirstRow> {
  const repeated = table.rowCount === 1 ? new Set([keysOf(table)(0)]) : repeatedKeys(tables, keysOf);
  const seen = new Map<number, FirstRow>();
  const firsts = new Map<number, FirstRow>();
  if (repeated.size === 0) return firsts;
  for (const other of tables) {
    const keyOf = keysOf(other);
    for (let index = 0; index < other.rowCount; index++) {
      const key = keyOf(index);
      if (key === undefined || !repeated.has(key)) continue;
      const first = seen.get(key);
      if (first && other === table) firsts.set(index, first);
      else if (!first && !isSameRow(other, index, table)) seen.set(key, { table: other, index });
    }
  }
  return firsts;
}

/** Keys that more than one row carries. */
function repeatedKeys(
  tables: readonly SurveyTable[],
  keysOf: (table: SurveyTable) => KeyOf,
): Set<number | undefined> {
  const keys = new Float64Array(tables.reduce((rows, { rowCount }) => rows + rowCount, 0)).fill(NaN);
  let at = 0;
  for (const table of tables) {
    const keyOf = keysOf(table);
    for (let index = 0; index < table.rowCount; index++) keys[at++] = keyOf(index) ?? NaN;
  }
  keys.sort();
  const repeated = new Set<number | undefined>();
  for (let i = 1; i < keys.length; i++) if (keys[i] === keys[i - 1]) repeated.add(keys[i]);
  return repeated;
}

function tell(
  kind: FindingKind,
  index: number,
  column: SurveyColumn,
  table: SurveyTable,
  first: FirstRow,
  report: Parameters<NonNullable<ReturnType<Check["prepare"]>>>[2],
): void {
  report(kind, index, column, {
    otherSheet: first.table === table ? "" : first.table.sheet,
    otherRow: first.table.sheetRow(first.index),
    sameNumbers: sameNumbers(table, index, first.table, first.index),
  });
}

/** True when the counts of both rows agree, so that one of them is only a copy. */
function sameNumbers(a: SurveyTable, i: number, b: SurveyTable, j: number): boolean {
  return a.columns.every((column) => {
    const other = b.column(column.column.id);
    return column.column.kind === "text" || !other || Object.is(column.raw.at(i), other.raw.at(j));
  });
}
