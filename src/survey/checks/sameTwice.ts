import type { Check, CheckContext, FindingKind } from "../check";
import type { SheetId } from "../column";
import type { SurveyColumn, SurveyTable } from "../survey";
import { NO_PLACE } from "../vinePlaces";

const sameCordonTwice: FindingKind = { code: "sameCordonTwice", severity: "wrong", action: "correct" };
const sameVineTwice: FindingKind = { code: "sameVineTwice", severity: "wrong", action: "mendRegister" };
const sameBlockTwice: FindingKind = { code: "sameBlockTwice", severity: "wrong", action: "mendRegister" };
const sameHarvestTwice: FindingKind = { code: "sameHarvestTwice", severity: "wrong", action: "correct" };

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
    keyOf: (table, context) => context.places.cordonKeys(table),
  },
  vines: {
    kind: sameVineTwice,
    at: "vine",
    keyOf: (table, context) => {
      const keys = context.places.keysOf(table);
      return (i) => (keys[i] === NO_PLACE ? undefined : keys[i]);
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
    const seen = new Map<number, FirstRow>();
    for (const other of context.survey.tables(table.shape.id)) {
      if (other === table) break;
      const keyOf = rule.keyOf(other, context);
      for (let index = 0; index < other.rowCount; index++) {
        const key = keyOf(index);
        if (key === undefined || seen.has(key) || isSameRow(other, index, table)) continue;
        seen.set(key, { table: other, index });
      }
    }
    const keyOf = rule.keyOf(table, context);
    const firsts = firstRows(table, keyOf, seen);
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

/** For each repeated row the row that came first, in another table or in this one. */
function firstRows(
  table: SurveyTable,
  keyOf: (index: number) => number | undefined,
  elsewhere: ReadonlyMap<number, FirstRow>,
): Map<number, FirstRow> {
  const firsts = new Map<number, FirstRow>();
  const here = new Map<number, number>();
  for (let index = 0; index < table.rowCount; index++) {
    const key = keyOf(index);
    if (key === undefined) continue;
    const first = elsewhere.get(key);
    const before = here.get(key);
    if (first) firsts.set(index, first);
    else if (before !== undefined) firsts.set(index, { table, index: before });
    else here.set(key, index);
  }
  return firsts;
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
    return column.column.kind === "text" || !other || Object.is(column.raw[i], other.raw[j]);
  });
}
