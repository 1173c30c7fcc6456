import { KILOGRAMS_PER_POUND, METRES_PER_FOOT, POUNDS_PER_TON, type UnitSystem } from "../../domain/units";
import type { ColumnKind } from "./column";

export type Dimension = "length" | "mass" | "share" | "perLength";

/** A unit that may stand in a header's parentheses or in the Settings sheet. */
export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  /** Metres, kilograms, shares or counts a metre in one of it. */
  readonly perUnit: number;
  readonly also: readonly string[];
}

const UNITS: readonly Unit[] = [
  {
    id: "ft",
    dimension: "length",
    perUnit: METRES_PER_FOOT,
    also: ["feet", "foot", "fts", "'", "pies", "pie", "pieds", "pied", "pi"],
  },
  {
    id: "in",
    dimension: "length",
    perUnit: METRES_PER_FOOT / 12,
    also: ["ins", "inch", "inchs", "inches", '"', "pulg", "pulgada", "pulgadas", "po", "pouce", "pouces"],
  },
  {
    id: "m",
    dimension: "length",
    perUnit: 1,
    also: ["metre", "metres", "meter", "meters", "metro", "metros", "mts", "mtrs", "mt"],
  },
  {
    id: "cm",
    dimension: "length",
    perUnit: 0.01,
    also: ["cms", "centimetre", "centimetres", "centimeter", "centimeters", "centimetros"],
  },
  {
    id: "mm",
    dimension: "length",
    perUnit: 0.001,
    also: ["mms", "millimetres", "millimeters", "milimetros"],
  },
  {
    id: "lb",
    dimension: "mass",
    perUnit: KILOGRAMS_PER_POUND,
    also: ["lbs", "pound", "pounds", "libras", "livres"],
  },
  {
    id: "oz",
    dimension: "mass",
    perUnit: KILOGRAMS_PER_POUND / 16,
    also: ["ounce", "ounces", "onzas", "onces"],
  },
  {
    id: "kg",
    dimension: "mass",
    perUnit: 1,
    also: ["kgs", "kilo", "kilogram", "kilograms", "kilogramos", "kilogrammes", "kilos"],
  },
  {
    id: "g",
    dimension: "mass",
    perUnit: 0.001,
    also: ["gr", "grs", "gm", "gms", "gram", "grams", "gramo", "gramos", "gramme", "grammes"],
  },
  { id: "t", dimension: "mass", perUnit: 1000, also: ["tonnes", "toneladas metricas"] },
  {
    id: "ton",
    dimension: "mass",
    perUnit: POUNDS_PER_TON * KILOGRAMS_PER_POUND,
    also: ["tons", "short tons"],
  },
  { id: "%", dimension: "share", perUnit: 0.01, also: ["percent", "per cent", "por ciento", "pour cent"] },
  { id: "share", dimension: "share", perUnit: 1, also: [] },
  { id: "nodes/ft", dimension: "perLength", perUnit: 1 / METRES_PER_FOOT, also: [] },
  { id: "nodes/m", dimension: "perLength", perUnit: 1, also: [] },
  { id: "shoots/ft", dimension: "perLength", perUnit: 1 / METRES_PER_FOOT, also: [] },
  { id: "shoots/m", dimension: "perLength", perUnit: 1, also: [] },
];

const BY_NAME = new Map(
  UNITS.flatMap((unit) => [unit.id, ...unit.also].map((name) => [name, unit] as const)),
);

/**
 * The unit of that name, as people write it; undefined for anything else.
 *
 * @example
 * unitNamed("Feet").id // "ft"
 */
export function unitNamed(name: string): Unit | undefined {
  return BY_NAME.get(name.trim().toLowerCase().replace(/\.$/, ""));
}

/**
 * The unit in a header's parentheses, if one of ours stands there.
 *
 * @example
 * headerUnit("Length (ft)").id // "ft"
 */
export function headerUnit(header: string): Unit | undefined {
  for (const [, inside] of header.matchAll(/\(([^)]*)\)/g)) {
    const unit = unitNamed(inside);
    if (unit) return unit;
  }
  return undefined;
}

const USUAL: Readonly<Record<UnitSystem, Partial<Record<ColumnKind, string>>>> = {
  US: { length: "ft", shortLength: "in", mass: "lb", share: "share" },
  metric: { length: "m", shortLength: "mm", mass: "kg", share: "share" },
};

const DIMENSION: Partial<Record<ColumnKind, Dimension>> = {
  length: "length",
  shortLength: "length",
  mass: "mass",
  share: "share",
};

/** The unit in which a column's cells are written: the header's when it fits the column, else the workbook's usual one. */
export function columnUnit(kind: ColumnKind, header: string, system: UnitSystem): Unit | undefined {
  const dimension = DIMENSION[kind];
  if (!dimension) return undefined;
  const written = headerUnit(header);
  return written?.dimension === dimension ? written : unitNamed(USUAL[system][kind]!);
}

/** True where cells of that kind are written in such units; counts, words and dates have none. */
export function holdsUnit(kind: ColumnKind, { dimension }: Unit): boolean {
  return DIMENSION[kind] === dimension;
}
