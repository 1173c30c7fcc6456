import type { Column, SheetId } from "../sheets/column";
import { isLettered, placeName } from "../../texts/placeName";
import { isOnTheWay } from "./vinePlaces";
import { CELL, columnsById, type Numbers, type SurveyColumn, type SurveyTable } from "./surveyTable";

/** Rounding of a limit that was given in another unit, so that the limit itself still passes. */
const ROUNDING = 1e-9;

/**
 * The table with every number judged once: by the limits of the sheets table, and by what contradicts it in its own
 * row. A judged cell keeps its number in `numbers`, so that a check can say what stands there; in `usable`, which
 * everything else reads, it is NaN. A table that was judged before comes out as it is.
 */
export function judgedTable<A extends Pick<SurveyTable, "shape" | "rowCount" | "columns" | "column">>(
  table: A,
): A {
  const judged = new Map(table.columns.map((column) => [column.column.id, new JudgedColumn(column)]));
  for (const column of judged.values()) column.judgeLimits();
  for (const rule of CONTRADICTIONS[table.shape.id] ?? [])
    judgeTogether(rule, (id) => judged.get(id), table.rowCount);
  const columns = table.columns.map(({ column }) => judged.get(column.id)!.whole());
  if (columns.every((column, at) => column === table.columns[at])) return table;
  return { ...table, ...columnsById(columns) };
}

const isWhole = ({ kind }: Column) => kind === "count" || kind === "year";

function limitState(value: number, column: Column): number {
  const { least = -Infinity, most = Infinity, id } = column;
  if ((id === "row" || id === "vine") && typeof placeName(value) === "string") return CELL.usable;
  if (value < least - ROUNDING || value > most + ROUNDING) return CELL.outside;
  if (!isWhole(column) || !Number.isFinite(value) || Number.isInteger(value)) return CELL.usable;
  // A vine may stand between two others, a row only by a letter.
  return id === "vine" && isOnTheWay(value) ? CELL.usable : CELL.notWhole;
}

/** One column with the states and numbers of its judgement; copies are made at the first cell that fails. */
class JudgedColumn {
  private states: Uint8Array;
  usable: Numbers;

  constructor(private readonly column: SurveyColumn) {
    this.states = column.states;
    this.usable = column.usable;
  }

  judgeLimits(): void {
    const { numbers, column } = this.column;
    const { least = -Infinity, most = Infinity, kind } = column;
    if (kind === "text" || kind === "choice" || kind === "date") return;
    const whole = isWhole(column);
    for (let i = 0; i < numbers.length; i++) {
      const value = numbers[i];
      if (value < least || value > most || (whole && value - Math.trunc(value) !== 0 && value === value)) {
        const state = limitState(value, column);
        if (state === CELL.usable && (value < least || value > most) && !isLettered(value))
          this.take(i, Math.min(most, Math.max(least, value)));
        else if (state === CELL.usable) continue;
        else this.fail(i, state);
      }
    }
  }

  /** The limit itself for a value that only rounding parts from it. */
  private take(index: number, limit: number): void {
    if (this.usable === this.column.usable) this.usable = this.column.usable.slice();
    this.usable[index] = limit;
  }

  word(index: number): string | undefined {
    return this.states[index] === CELL.usable
      ? this.column.column.choices?.[this.column.codes[index]]?.id
      : undefined;
  }

  fail(index: number, state: number): void {
    if (this.states[index] !== CELL.usable) return;
    if (this.states === this.column.states) this.states = this.column.states.slice();
    if (this.usable === this.column.usable) this.usable = this.column.usable.slice();
    this.states[index] = state;
    this.usable[index] = NaN;
  }

  whole(): SurveyColumn {
    return this.usable === this.column.usable
      ? this.column
      : { ...this.column, states: this.states, usable: this.usable };
  }
}

type Columns = (id: string) => JudgedColumn | undefined;

/** Cells of a row that cannot all be true, and those of them of which none is known to be the right one. */
interface Contradiction {
  readonly spoils: readonly string[];
  /** Tells of a row whether its cells contradict each other; undefined where the table lacks a column for it. */
  prepare(columns: Columns): ((index: number) => boolean) | undefined;
}

const spursAbovePositions: Contradiction = {
  spoils: ["positions", "liveSpurs"],
  prepare(columns) {
    const [positions, spurs] = [columns("positions"), columns("liveSpurs")];
    return positions && spurs && ((i) => spurs.usable[i] > positions.usable[i]);
  },
};

const DIRECTIONS = ["spursDown", "spursLevel", "spursUp"] as const;

const directionsAboveSpurs: Contradiction = {
  spoils: ["liveSpurs", ...DIRECTIONS],
  prepare(columns) {
    const spurs = columns("liveSpurs");
    const ways = DIRECTIONS.flatMap((id) => columns(id) ?? []);
    if (!spurs || ways.length === 0) return undefined;
    return (i) => {
      let pointing = 0;
      for (const way of ways) pointing += way.usable[i] || 0;
      return pointing > spurs.usable[i];
    };
  },
};

/** A cordon, or the trunk that it comes from, is called dead and bears live spurs. */
const deadWithSpurs = (id: "condition" | "trunkCondition"): Contradiction => ({
  spoils: ["liveSpurs", id],
  prepare(columns) {
    const [spurs, condition] = [columns("liveSpurs"), columns(id)];
    return spurs && condition && ((i) => spurs.usable[i] > 0 && condition.word(i) === "dead");
  },
});

/** s spurs part the empty positions into s + 1 stretches at most, so that the longest is no shorter than an even share. */
const gapAgainstCounts: Contradiction = {
  spoils: ["longestGap"],
  prepare(columns) {
    const [positions, spurs, gap] = [columns("positions"), columns("liveSpurs"), columns("longestGap")];
    if (!positions || !spurs || !gap) return undefined;
    return (i) => {
      const empty = positions.usable[i] - spurs.usable[i];
      return gap.usable[i] > empty || gap.usable[i] * (spurs.usable[i] + 1) < empty;
    };
  },
};

/** A gap that begins so far from the head would reach beyond the last position; how long it is, the other counts tell. */
const gapBeyondEnd: Contradiction = {
  spoils: ["gapFrom"],
  prepare(columns) {
    const [positions, gap, from] = [columns("positions"), columns("longestGap"), columns("gapFrom")];
    return positions && gap && from && ((i) => from.usable[i] + gap.usable[i] > positions.usable[i]);
  },
};

const ALIVE = ["primariesAlive", "secondariesAlive"] as const;

const aliveAboveCut: Contradiction = {
  spoils: ["nodesCut", ...ALIVE],
  prepare(columns) {
    const cut = columns("nodesCut");
    const buds = ALIVE.flatMap((id) => columns(id) ?? []);
    return cut && ((i) => buds.some((alive) => alive.usable[i] > cut.usable[i]));
  },
};

const countOnMissingVine = (id: string): Contradiction => ({
  spoils: [id],
  prepare(columns) {
    const [status, count] = [columns("status"), columns(id)];
    return status && count && ((i) => count.usable[i] > 0 && status.word(i) === "missing");
  },
});

const CONTRADICTIONS: Readonly<Partial<Record<SheetId, readonly Contradiction[]>>> = {
  cordons: [
    spursAbovePositions,
    directionsAboveSpurs,
    deadWithSpurs("condition"),
    deadWithSpurs("trunkCondition"),
    gapAgainstCounts,
    gapBeyondEnd,
  ],
  budCuts: [aliveAboveCut],
  vines: [countOnMissingVine("clusters"), countOnMissingVine("shoots")],
};

function judgeTogether({ spoils, prepare }: Contradiction, columns: Columns, rows: number): void {
  const contradicts = prepare(columns);
  if (!contradicts) return;
  const spoilt = spoils.flatMap((id) => columns(id) ?? []);
  for (let index = 0; index < rows; index++)
    if (contradicts(index)) for (const column of spoilt) column.fail(index, CELL.contradicted);
}
