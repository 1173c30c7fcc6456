import type { CellValue } from "../../../src/survey/sheets/cell";
import type { FarmRow } from "../farm";
import type { RandomSource } from "../randomSource";
import type { Season, SeasonSheet } from "../season";

/** Where a planted mistake ended up. */
export interface Planted {
  readonly sheet: SeasonSheet;
  /** Rows of the sheet, one of which the finding must name; none for a finding at the headers. */
  readonly rows: readonly FarmRow[];
}

/** The mistake as it stands in the sample season that is meant to be checked. */
export interface InSample {
  /** What is wrong, as the first sheet of the workbook says it. */
  readonly what: string;
  /** Column id, or a head of the farm's own, where the finding must point; "" when it is about the whole row. */
  readonly column: string;
  /** What the row that carries it holds; of the vines of a row the first from that number on. */
  readonly at?: Readonly<Partial<Record<string, CellValue>>>;
}

/** A mistake of one kind, as people make it. */
export interface Mistake {
  /** Code of the finding that must name it. */
  readonly code: string;
  /** Another kind that says the same as rightly: a weight ten times too large may as well be ounces. */
  readonly also?: string;
  /** Mistakes of different groups are planted in different copies of a season: cells, stretches, whole sheets. */
  readonly group: "cell" | "vine" | "stretch" | "sheet";
  readonly inSample?: readonly InSample[];
  /** Makes the mistake on rows that carry none yet; undefined where this season offers no place for it. */
  plant(season: Season, field: Field): Planted | undefined;
}

/** Picks rows at random, or where it is told to, each only once, so that two mistakes do not hide each other. */
export class Field {
  private readonly taken = new Set<string>();
  private readonly changed = new WeakSet<FarmRow>();
  private sample?: InSample;

  constructor(
    readonly season: Season,
    readonly random: RandomSource,
  ) {}

  /** From here on the rows and columns of the sample. */
  pinTo(sample: InSample): void {
    this.sample = sample;
  }

  /** A row of the sheet whose vine carries no mistake yet. */
  row(sheet: SeasonSheet, fits: (row: FarmRow) => boolean = () => true): FarmRow | undefined {
    const row = this.sample
      ? sheet.rows.find((own) => this.isHere(own) && this.isFree(sheet, own) && fits(own))
      : (this.quickly(sheet, fits) ?? this.thoroughly(sheet, fits));
    if (row) this.take(sheet, row);
    return row;
  }

  /** One of the columns. */
  column<Id extends string>(...ids: readonly Id[]): Id {
    return ids.find((id) => id === this.sample?.column) ?? this.random.oneOf(ids);
  }

  private isHere(row: FarmRow): boolean {
    return Object.entries(this.sample?.at ?? {}).every(([id, value]) =>
      id === "vine" ? Number(row.vine) >= Number(value) : row[id] === value,
    );
  }

  private quickly(sheet: SeasonSheet, fits: (row: FarmRow) => boolean): FarmRow | undefined {
    for (let attempt = 0; attempt < 30 && sheet.rows.length > 0; attempt++) {
      const row = this.random.oneOf(sheet.rows);
      if (this.isFree(sheet, row) && fits(row)) return row;
    }
    return undefined;
  }

  private thoroughly(sheet: SeasonSheet, fits: (row: FarmRow) => boolean): FarmRow | undefined {
    const free = sheet.rows.filter((row) => this.isFree(sheet, row) && fits(row));
    return free.length === 0 ? undefined : this.random.oneOf(free);
  }

  take(sheet: SeasonSheet, row: FarmRow): void {
    this.taken.add(this.keyOf(sheet, row));
    this.changed.add(row);
  }

  isFree(sheet: SeasonSheet, row: FarmRow): boolean {
    return !this.changed.has(row) && !this.taken.has(this.keyOf(sheet, row));
  }

  /** A run of cordon rows of one row of the vineyard, none of which carries a mistake. */
  stretch(least: number, most: number): FarmRow[] | undefined {
    const { rows } = this.season.cordons;
    const wanted = this.random.whole(least, most);
    for (let attempt = 0; attempt < 40; attempt++) {
      const first = this.sample
        ? rows.findIndex((row) => this.isHere(row))
        : this.random.whole(0, Math.max(0, rows.length - wanted));
      const run = rows.slice(first, first + wanted);
      const [head] = run;
      const together = run.every((row) => row.block === head.block && row.row === head.row);
      if (run.length < wanted || !together) continue;
      if (run.some((row) => !this.isFree(this.season.cordons, row))) continue;
      for (const row of run) this.take(this.season.cordons, row);
      return run;
    }
    return undefined;
  }

  private keyOf(sheet: SeasonSheet, row: FarmRow): string {
    const place = sheet.shape === "cordons" || sheet.shape === "vines" ? "vine" : sheet.name;
    return row.vine
      ? `${place} ${row.block} ${row.row} ${row.vine}`
      : `${sheet.name} ${sheet.rows.indexOf(row)}`;
  }
}

export type Change = (row: FarmRow, field: Field, season: Season) => void;

export const num = (row: FarmRow, id: string) => Number(row[id]);
export const grown = (row: FarmRow) => num(row, "liveSpurs") >= 3 && num(row, "positions") >= 5;
export const has = (sheet: SeasonSheet, ...ids: string[]) => ids.every((id) => sheet.columns.includes(id));

const vineKey = (row: FarmRow, step = 0) => `${row.block} ${row.row} ${num(row, "vine") + step}`;

/** The rows of each vine as the season stood before any mistake. */
const indexes = new WeakMap<Season, { vines: Map<string, FarmRow>; cordons: Map<string, FarmRow[]> }>();

function indexOf(season: Season) {
  const known = indexes.get(season);
  if (known) return known;
  const cordons = new Map<string, FarmRow[]>();
  for (const row of season.cordons.rows)
    cordons.set(vineKey(row), [...(cordons.get(vineKey(row)) ?? []), row]);
  const index = { vines: new Map(season.vines.rows.map((row) => [vineKey(row), row])), cordons };
  indexes.set(season, index);
  return index;
}

/** A row's vine as the register has it, or the one that stands so many places further on. */
export const vineOf = (season: Season, row: FarmRow, step = 0) =>
  indexOf(season).vines.get(vineKey(row, step));

export const statusOf = (season: Season, row: FarmRow, step = 0) => vineOf(season, row, step)?.status;

export const rowsOfVine = (season: Season, vine: FarmRow) => indexOf(season).cordons.get(vineKey(vine)) ?? [];

export const bearing = (season: Season) => (row: FarmRow) =>
  grown(row) && statusOf(season, row) === "bearing";

export const withoutGap = (season: Season) => (row: FarmRow) =>
  bearing(season)(row) && statusOf(season, row, 1) !== "missing" && statusOf(season, row, -1) !== "missing";

export function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}

/** A second copy of a row of the sheet, so many rows below it. */
export function repeated(sheet: SeasonSheet, row: FarmRow, changes: FarmRow = {}, below = 1): Planted {
  const copy = { ...row, ...changes };
  sheet.rows.splice(sheet.rows.indexOf(row) + below, 0, copy);
  return { sheet, rows: [copy] };
}
