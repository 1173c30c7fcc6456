import type { UnitSystem } from "../../domain/units";
import type { Column } from "../sheets/column";
import { columnUnit, holdsUnit, unitNamed, type Unit } from "../sheets/unit";
import type { FoundTable } from "./findTable";
import { isAsked, type OpenAccount, type ReadingAnswers } from "./readingAccount";
import type { SheetArea } from "./sheetArea";

type Range = readonly [least: number, most: number];

/** Metres from a spur to the next: no cordon has its spurs closer or farther apart on average; common practice. */
export const STEPS: Range = [0.05, 0.35];
/** Metres or kilograms between which the middle one of a sheet's values lies; common practice. */
export const MIDDLES: ReadonlyMap<string, Range> = new Map<string, Range>([
  ["cordons length", [0.25, 4.5]],
  ["cordons diameter", [0.005, 0.05]],
  ["cordons spurHeight", [0.02, 0.3]],
  ["vines prunings", [0.05, 5]],
]);
/** Units in which counts are written, those of a kind in the order in which they are offered. */
export const WRITTEN = ["ft", "in", "m", "cm", "mm", "lb", "kg", "g", "oz", "t", "ton", "share", "%"];
/** Fewer values tell nothing of a column or of a counter. */
export const LEAST_VALUES = 8;

/** Where a column stands, as far as its unit is told from it. */
type HeadedColumns = Pick<FoundTable, "shape" | "headerIndex" | "columns">;

/** Units in which a column could be written, the likely ones first. */
export interface LikelyUnits {
  readonly units: readonly string[];
  /** The middle value, where the wire tells which units fit; the workbook's own unit stands first where it does not. */
  readonly middle?: number;
}

/**
 * Units in which a measured column under a head without one could be written: by the wire those in which lengths are
 * ones that cordons have, the workbook's own before those whose spurs stand nearest to the middle distance; of other
 * columns those in which the middle value is usual; else the unit of the workbook's other columns first. Undefined for a
 * column without unit.
 */
export function likelyUnits(
  area: SheetArea,
  place: HeadedColumns,
  column: Column,
  system: UnitSystem,
): LikelyUnits | undefined {
  const usual = columnUnit(column.kind, "", system);
  if (!usual) return undefined;
  const of = WRITTEN.filter((id) => holdsUnit(column.kind, unitNamed(id)!));
  const all = [usual.id, ...of.filter((id) => id !== usual.id)];
  const values = valuesOf(area, place, column);
  if (!values) return { units: all };
  const off = (id: string) => (id === usual.id ? 0 : values.off(unitNamed(id)!));
  const fitting = all.filter((id) => values.fits(unitNamed(id)!)).sort((a, b) => off(a) - off(b));
  if (fitting.length === 0) return { units: all };
  return { units: [...fitting, ...all.filter((id) => !fitting.includes(id))], middle: values.middle };
}

/**
 * Measured columns held against what vines have: where the head's unit, or the workbook's under a head without one, would
 * make cordons that no vine has, the column is left unread and its unit asked, the one that fits first.
 */
export function withoutDenied(
  area: SheetArea,
  place: FoundTable,
  system: UnitSystem,
  answers: ReadingAnswers,
  account: OpenAccount,
): FoundTable {
  const denied = [...place.columns.keys()].filter((column) => isDenied(area, place, column, system, answers));
  if (denied.length === 0) return place;
  for (const column of denied) {
    const head = headOf(area, place, column);
    account.leftOut.push({ what: "column", reason: "asked", sheet: area.sheet, facts: { head } });
    if (isAsked(account, "unit", area.sheet, column)) continue;
    const unit = place.units?.get(column) ?? columnUnit(column.kind, head, system)!;
    const { units, middle } = likelyUnits(area, place, column, system)!;
    account.questions.push({
      code: "unit",
      sheet: area.sheet,
      facts: { head, word: "", column: column.id, middle: middle!, unit: unit.id, likely: units[0] },
      proposals: units.map((id) => ({ units: [{ sheet: area.sheet, column: column.id, unit: id }] })),
    });
  }
  return { ...place, columns: new Map([...place.columns].filter(([column]) => !denied.includes(column))) };
}

/** True where the unit of a column cannot be its values' and another can be. */
function isDenied(
  area: SheetArea,
  place: FoundTable,
  column: Column,
  system: UnitSystem,
  { units: answered }: ReadingAnswers,
): boolean {
  if (answered?.some((own) => own.sheet === area.sheet && own.column === column.id && !own.counter))
    return false;
  const unit = place.units?.get(column) ?? columnUnit(column.kind, headOf(area, place, column), system)!;
  const values = valuesOf(area, place, column);
  if (!values || values.fits(unit) || likelyUnits(area, place, column, system)!.middle === undefined)
    return false;
  const hasCounters = [...place.columns.keys()].some(({ id }) => id === "countedBy");
  return !hasCounters || values.shareOf(unit) < SHARE_OF_ONE;
}

/** Share of values from which those who wrote in the head's unit are told from the others; ours. */
const SHARE_OF_ONE = 0.2;

function headOf({ values }: SheetArea, { headerIndex, columns }: HeadedColumns, column: Column): string {
  return String(values[headerIndex][columns.get(column)!] ?? "").trim();
}

/** What a column's values tell of its unit. */
interface Values {
  readonly middle: number;
  fits(unit: Unit): boolean;
  /** Share of the values that the unit fits one by one. */
  shareOf(unit: Unit): number;
  /** How far from what is most usual, to put units in order. */
  off(unit: Unit): number;
}

/** The middle one of a sheet's values and the units in which it is one that vines have; undefined where too few tell. */
function valuesOf(
  { values }: SheetArea,
  { shape, headerIndex, columns }: HeadedColumns,
  column: Column,
): Values | undefined {
  const range = MIDDLES.get(`${shape.id} ${column.id}`);
  if (!range) return undefined;
  const at = columns.get(column)!;
  const isLength = column.id === "length";
  const positions = isLength ? [...columns].find(([{ id }]) => id === "positions")?.[1] : undefined;
  const written: number[] = [];
  const steps: number[] = [];
  const step = Math.max(1, Math.floor(values.length / 2000));
  for (let row = headerIndex + 1; row < values.length; row += step) {
    const value = values[row][at];
    const places = positions === undefined ? undefined : values[row][positions];
    if (typeof value !== "number" || value <= 0) continue;
    written.push(value);
    if (typeof places === "number" && places > 1) steps.push(value / places);
  }
  if (written.length < LEAST_VALUES) return undefined;
  const hasSteps = steps.length >= LEAST_VALUES;
  const [told, usual] = hasSteps ? [steps, STEPS] : [written, range];
  const long = middleOf(written);
  const tells = middleOf(told);
  return {
    middle: long,
    fits: ({ perUnit }) => lies(long * perUnit, range) && lies(tells * perUnit, usual),
    shareOf: ({ perUnit }) => told.filter((value) => lies(value * perUnit, usual)).length / told.length,
    off: ({ perUnit }) =>
      isLength && !hasSteps ? 1 : Math.abs(Math.log((tells * perUnit) ** 2 / (usual[0] * usual[1]))),
  };
}

export const lies = (value: number, [least, most]: Range) => value >= least && value <= most;

export function middleOf(values: readonly number[]): number {
  return Float64Array.from(values).sort()[values.length >> 1];
}
