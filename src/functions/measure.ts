import { HECTARES_PER_ACRE, type UnitSystem } from "../domain/units";
import { unitNamed } from "../survey/sheets/unit";
import type { Text } from "../texts/language";
import { UNIT_NAMES } from "../texts/functions/units";

/** What a number of a call measures. */
export type Measure =
  | "plain"
  | "share"
  | "mass"
  | "massPerLength"
  | "length"
  | "spurSpacing"
  | "perLength"
  | "vinesPerArea"
  | "cropPerArea"
  | "perMass"
  | "hours";

const per = (unit: string) => unitNamed(unit)!.perUnit;
const LENGTH = { US: per("ft"), metric: per("m") };
const MASS = { US: per("lb"), metric: per("kg") };
const ONE = { US: 1, metric: 1 };

/** How many of the metric unit that the calculation uses one unit of a call is. */
const METRIC_PER_UNIT: Readonly<Record<Measure, Readonly<Record<UnitSystem, number>>>> = {
  plain: ONE,
  share: ONE,
  hours: ONE,
  mass: MASS,
  massPerLength: { US: MASS.US / LENGTH.US, metric: 1 },
  length: LENGTH,
  spurSpacing: { US: per("in"), metric: per("cm") },
  perLength: { US: 1 / LENGTH.US, metric: 1 },
  perMass: { US: 1 / MASS.US, metric: 1 },
  vinesPerArea: { US: 1 / HECTARES_PER_ACRE, metric: 1 },
  cropPerArea: { US: per("ton") / HECTARES_PER_ACRE, metric: per("t") },
};

/** A figure of the sheet in the metric unit of the calculation. */
export const toMetric = (value: number, measure: Measure, units: UnitSystem) =>
  value * METRIC_PER_UNIT[measure][units];

/** A metric figure of the calculation in the unit of the sheet. */
export const fromMetric = (value: number, measure: Measure, units: UnitSystem) =>
  value / METRIC_PER_UNIT[measure][units];

/** How the unit of a measure is written; "" for a plain number. */
export const unitName = (measure: Measure, units: UnitSystem): Text => UNIT_NAMES[measure][units];
