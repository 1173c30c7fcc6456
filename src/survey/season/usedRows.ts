import { CELL, type SurveyTable } from "./surveyTable";
import { uncountedRows } from "./uncountedRows";
import { choiceId, NO_PLACE, type VinePlaces } from "./vinePlaces";

/** Why a cell keeps its row from being used. */
export const FAULT_REASONS = {
  [CELL.blank]: "blank",
  [CELL.numberAsText]: "text",
  [CELL.unreadable]: "unreadable",
  [CELL.error]: "error",
  [CELL.unclearDate]: "unreadable",
  [CELL.outside]: "outside",
  [CELL.notWhole]: "notWhole",
  [CELL.contradicted]: "contradicted",
  [CELL.moved]: "moved",
  [CELL.unitAsked]: "unreadable",
} as const;

/**
 * "tooMany": more rows name the vine than a vine has cordons. "marked": a person wants it counted again. "toCount": the
 * row was laid out and nobody has counted its vine yet. "noColumn": the table has no such column, and without it nobody
 * knows the vine, or which of its cordons share a side.
 */
export type FaultReason =
  (typeof FAULT_REASONS)[keyof typeof FAULT_REASONS] | "noColumn" | "tooMany" | "marked" | "toCount";

/** A cell that keeps its row, and with it the whole vine, from being used. */
export interface RowFault {
  readonly sheet: string;
  readonly sheetRow: number;
  /** Id of the column, and its place in the sheet: 1 is A; the vine's where it is "noColumn". */
  readonly column: string;
  readonly sheetColumn: number;
  readonly reason: FaultReason;
}

/** How many rows a result is worked out from, and why not the others. */
export interface RowsUsed {
  readonly rows: number;
  readonly used: number;
  /** Rows left out by column and reason, most first; `first` is where the first of them stands. */
  readonly leftOut: readonly LeftOut[];
}

export interface LeftOut {
  /** Id of the column; "vine" with the reason "sameVine" for sound rows of a vine that must be counted again. */
  readonly column: string;
  readonly reason: FaultReason | "sameVine";
  readonly rows: number;
  readonly first: { readonly sheet: string; readonly sheetRow: number };
}

/** Columns without which a row says nothing, and columns whose entry, once there, must be readable. */
const NEEDED = ["block", "row", "vine", "side", "cordon", "positions", "liveSpurs"] as const;
const DECIDING = [...NEEDED, "trunk", "condition", "trunkCondition", "fixedChoice"] as const;
const COUNTS: ReadonlySet<string> = new Set(["positions", "liveSpurs"]);
/** Columns without which no row has a place. */
const OF_PLACES: ReadonlySet<string> = new Set(["block", "row", "vine"]);
const NO_SIDE = NEEDED.indexOf("side") + 1;

const USED = 0;
const TO_COUNT = 252;
const MARKED = 253;
const TOO_MANY = 254;
const SAME_VINE = 255;

/** A vine that more rows name than a vine has cordons. */
export interface OverfullVine {
  readonly rows: number;
  readonly first: { readonly table: SurveyTable; readonly index: number };
}

/**
 * Which rows of the Cordons sheets are used, decided once for every result. A row is not used when a cell that decides
 * something on its vine is missing, cannot be read or cannot be true; then its whole vine is not used, because a cordon
 * chosen without knowing the others may be the wrong one. A row that names no vine holds back the vines of the rows above
 * and below it. Counts may be blank on a dead cordon, and on one that a person has fixed to go.
 */
export class UsedRows {
  private made: ReadonlyMap<SurveyTable, Uint8Array> | undefined;
  private told: RowsUsed | undefined;
  private readonly recounts = new Map<number, RowFault[]>();
  private overfullVines: ReadonlyMap<number, OverfullVine> | undefined;

  /**
   * @param tables the Cordons tables of this winter
   * @param mostCordons rows from which on a vine's number was filled down by mistake
   * @param twoSides whether a vine has cordons on both sides, which a table without a column of sides does not tell apart
   */
  constructor(
    private readonly tables: () => readonly SurveyTable[],
    private readonly places: VinePlaces,
    private readonly mostCordons: number,
    private readonly twoSides: boolean,
  ) {}

  /** Vines that more rows name than a vine has cordons, by their keys. */
  overfull(): ReadonlyMap<number, OverfullVine> {
    if (this.overfullVines) return this.overfullVines;
    const vines = new Map<number, { rows: number; first: OverfullVine["first"] }>();
    for (const table of this.tables()) {
      const keys = this.places.keysOf(table);
      for (let from = 0, to = 0; from < keys.length; from = to) {
        while (to < keys.length && keys[to] === keys[from]) to++;
        if (keys[from] === NO_PLACE) continue;
        const known = vines.get(keys[from]);
        if (known) known.rows += to - from;
        else vines.set(keys[from], { rows: to - from, first: { table, index: from } });
      }
    }
    return (this.overfullVines = new Map([...vines].filter(([, { rows }]) => rows > this.mostCordons)));
  }

  /** True for a row that every result is worked out from. */
  isUsed(table: SurveyTable, index: number): boolean {
    return this.codes().get(table)?.[index] === USED;
  }

  /** Cells for which the vine must be counted again; none for a vine that can be used. */
  faultsOf(vineKey: number): readonly RowFault[] {
    this.codes();
    return this.recounts.get(vineKey) ?? [];
  }

  /** The cell that keeps this row from being used; undefined for a used row and for a sound one of a vine to recount. */
  faultAt(table: SurveyTable, index: number): RowFault | undefined {
    const code = this.codes().get(table)?.[index] ?? USED;
    return code === USED || code === SAME_VINE ? undefined : faultOf(table, index, code);
  }

  /** The account of all rows, made once: every page shows it each time that it is drawn. */
  account(): RowsUsed {
    return (this.told ??= this.tell());
  }

  private tell(): RowsUsed {
    const leftOut = new Map<string, { -readonly [Key in keyof LeftOut]: LeftOut[Key] }>();
    let rows = 0;
    let used = 0;
    for (const [table, codes] of this.codes())
      codes.forEach((code, index) => {
        rows++;
        if (code === USED) {
          used++;
          return;
        }
        const { column, reason } =
          code === SAME_VINE
            ? ({ column: "vine", reason: "sameVine" } as const)
            : faultOf(table, index, code);
        const key = `${column} ${reason}`;
        const known = leftOut.get(key);
        if (known) known.rows++;
        else
          leftOut.set(key, {
            column,
            reason,
            rows: 1,
            first: { sheet: table.sheet, sheetRow: table.sheetRow(index) },
          });
      });
    return { rows, used, leftOut: [...leftOut.values()].sort((one, other) => other.rows - one.rows) };
  }

  private codes(): ReadonlyMap<SurveyTable, Uint8Array> {
    if (this.made) return this.made;
    const made = new Map(
      this.tables().map((table) => [table, rowCodes(table, uncountedRows(table, this.places))] as const),
    );
    if (this.twoSides) this.holdBackUnsided(made);
    for (const [table, codes] of made) this.holdBackVines(table, codes);
    for (const [vine, { first }] of this.overfull()) {
      made.get(first.table)![first.index] = TOO_MANY;
      this.recounts.set(vine, [faultOf(first.table, first.index, TOO_MANY)]);
    }
    if (this.recounts.size > 0)
      for (const [table, codes] of made) {
        const keys = this.places.keysOf(table);
        for (let i = 0; i < codes.length; i++)
          if (codes[i] === USED && this.recounts.has(keys[i])) codes[i] = SAME_VINE;
      }
    this.made = made;
    return made;
  }

  /** Rows of tables without sides whose vine has another cordon. */
  private holdBackUnsided(made: ReadonlyMap<SurveyTable, Uint8Array>): void {
    const unsided = [...made].filter(([table]) => !table.column("side"));
    if (unsided.length === 0) return;
    const cordons = new Map<number, number>();
    for (const table of made.keys())
      for (const key of this.places.keysOf(table)) cordons.set(key, (cordons.get(key) ?? 0) + 1);
    for (const [table, codes] of unsided) {
      const keys = this.places.keysOf(table);
      for (let i = 0; i < codes.length; i++)
        if (codes[i] === USED && cordons.get(keys[i])! > 1) codes[i] = NO_SIDE;
    }
  }

  private holdBackVines(table: SurveyTable, codes: Uint8Array): void {
    const keys = this.places.keysOf(table);
    for (let i = 0; i < codes.length; i++) {
      if (codes[i] === USED) continue;
      const fault = faultOf(table, i, codes[i]);
      const vines = new Set(keys[i] === NO_PLACE ? [keys[i - 1], keys[i + 1]] : [keys[i]]);
      for (const vine of vines) {
        if (vine === undefined || vine === NO_PLACE) continue;
        const known = this.recounts.get(vine);
        if (known) known.push(fault);
        else this.recounts.set(vine, [fault]);
      }
    }
  }
}

/**
 * For each row USED, a code of COLUMNS_OF, or one more than the place in DECIDING of the first column whose cell keeps it
 * from being used.
 */
function rowCodes(table: SurveyTable, uncounted: Uint8Array): Uint8Array {
  const codes = new Uint8Array(table.rowCount);
  const condition = table.column("condition");
  const fixed = table.column("fixedChoice");
  const needsCounts = (index: number) =>
    !(condition && choiceId(condition, index) === "dead") && !(fixed && choiceId(fixed, index) === "goes");
  DECIDING.forEach((id, at) => {
    const column = table.column(id);
    if (!column) {
      if (OF_PLACES.has(id)) for (let i = 0; i < codes.length; i++) codes[i] ||= at + 1;
      return;
    }
    const { states } = column;
    const isNeeded = at < NEEDED.length;
    const isCount = COUNTS.has(id);
    for (let i = 0; i < codes.length; i++) {
      if (states[i] === CELL.usable || codes[i] !== USED) continue;
      if (states[i] === CELL.blank && (!isNeeded || (isCount && !needsCounts(i)))) continue;
      codes[i] = at + 1;
    }
  });
  if (fixed)
    for (let i = 0; i < codes.length; i++)
      if (codes[i] === USED && choiceId(fixed, i) === "recount") codes[i] = MARKED;
  for (let i = 0; i < codes.length; i++) if (uncounted[i] === 1) codes[i] = TO_COUNT;
  return codes;
}

/** Columns of which the first that a table has is named for a row of this code. */
const COLUMNS_OF: Readonly<Record<number, readonly string[]>> = {
  [TO_COUNT]: ["positions", "liveSpurs", "vine"],
  [TOO_MANY]: ["vine"],
  [MARKED]: ["fixedChoice"],
};
const REASON_OF: Readonly<Record<number, FaultReason>> = {
  [TO_COUNT]: "toCount",
  [TOO_MANY]: "tooMany",
  [MARKED]: "marked",
};

function faultOf(table: SurveyTable, index: number, code: number): RowFault {
  const ids = COLUMNS_OF[code] ?? [DECIDING[code - 1]];
  const [column] = ids.flatMap((id) => table.column(id) ?? []);
  const place = { sheet: table.sheet, sheetRow: table.sheetRow(index) };
  if (!column) {
    const near = table.column("vine") ?? table.columns[0];
    return { ...place, column: ids[0], sheetColumn: near.sheetColumn, reason: "noColumn" };
  }
  return {
    ...place,
    column: column.column.id,
    sheetColumn: column.sheetColumn,
    reason: REASON_OF[code] ?? FAULT_REASONS[column.states[index] as keyof typeof FAULT_REASONS],
  };
}
