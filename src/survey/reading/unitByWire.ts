import type { UnitSystem } from "../../domain/units";
import type { Column } from "../sheets/column";
import { columnUnit, holdsUnit, unitNamed, type Unit } from "../sheets/unit";
import type { FoundTable } from "./findTable";
import { isAsked, type OpenAccount } from "./readingAccount";
import type { SheetArea } from "./sheetArea";

/** Metres from a spur to the next: no cordon has its spurs closer or farther apart on average; common practice. */
const LEAST_STEP = 0.05;
const MOST_STEP = 0.35;
/** Metres that the middle one of a sheet's cordons can be long; common practice. */
const LEAST_LENGTH = 0.25;
const MOST_LENGTH = 4.5;
/** Units in which counts are written, those of a kind in the order in which they are offered. */
const WRITTEN = ["ft", "in", "m", "cm", "mm", "lb", "kg", "g", "oz", "t", "ton", "share", "%"];
/** Fewer values tell nothing of a column. */
const LEAST_VALUES = 8;

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
 * ones that cordons have, the workbook's own before those whose spurs stand nearest to the middle distance; else the
 * unit of the workbook's other columns first. Undefined for a column without unit.
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
  const wire = wireOf(area, place, column);
  if (!wire) return { units: all };
  const off = (id: string) => (id === usual.id ? 0 : wire.off(unitNamed(id)!));
  const fitting = all.filter((id) => wire.fits(unitNamed(id)!)).sort((a, b) => off(a) - off(b));
  if (fitting.length === 0) return { units: all };
  return { units: [...fitting, ...all.filter((id) => !fitting.includes(id))], middle: wire.middle };
}

/**
 * Lengths of cordons under a head without a unit, held against the wire: where the workbook's unit would make cordons
 * that no vine has, the column is left unread and its unit asked, the one that fits first.
 */
export function unitsDeniedByWire(
  area: SheetArea,
  place: FoundTable,
  system: UnitSystem,
  account: OpenAccount,
): FoundTable {
  const column = [...place.columns.keys()].find(({ id }) => id === "length");
  if (!column || place.units?.has(column)) return place;
  const head = String(area.values[place.headerIndex][place.columns.get(column)!] ?? "").trim();
  const unit = columnUnit(column.kind, head, system)!;
  if (wireOf(area, place, column)?.fits(unit) !== false) return place;
  const { units, middle } = likelyUnits(area, place, column, system)!;
  if (middle === undefined) return place;
  if (!isAsked(account, "unit", area.sheet, column))
    account.questions.push({
      code: "unit",
      sheet: area.sheet,
      facts: { head, word: "", column: column.id, middle, unit: unit.id, likely: units[0] },
      proposals: units.map((id) => ({ units: [{ sheet: area.sheet, column: column.id, unit: id }] })),
    });
  return { ...place, columns: new Map([...place.columns].filter(([other]) => other !== column)) };
}

/** The middle one of a sheet's cordons and the units in which it fits a wire; undefined where too few tell. */
function wireOf(
  { values }: SheetArea,
  { shape, headerIndex, columns }: HeadedColumns,
  column: Column,
): { middle: number; fits: (unit: Unit) => boolean; off: (unit: Unit) => number } | undefined {
  if (shape.id !== "cordons" || column.id !== "length") return undefined;
  const at = columns.get(column)!;
  const positions = [...columns].find(([{ id }]) => id === "positions")?.[1];
  const lengths: number[] = [];
  const steps: number[] = [];
  const step = Math.max(1, Math.floor(values.length / 2000));
  for (let row = headerIndex + 1; row < values.length; row += step) {
    const length = values[row][at];
    const places = positions === undefined ? undefined : values[row][positions];
    if (typeof length !== "number" || length <= 0) continue;
    lengths.push(length);
    if (typeof places === "number" && places > 1) steps.push(length / places);
  }
  if (lengths.length < LEAST_VALUES) return undefined;
  const long = middle(lengths);
  const apart = steps.length < LEAST_VALUES ? undefined : middle(steps);
  const lies = (value: number, least: number, most: number) => value >= least && value <= most;
  return {
    middle: long,
    fits: ({ perUnit }) =>
      lies(long * perUnit, LEAST_LENGTH, MOST_LENGTH) &&
      (apart === undefined || lies(apart * perUnit, LEAST_STEP, MOST_STEP)),
    off: ({ perUnit }) =>
      apart === undefined ? 1 : Math.abs(Math.log((apart * perUnit) ** 2 / (LEAST_STEP * MOST_STEP))),
  };
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
