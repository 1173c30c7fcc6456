import {
  HECTARES_PER_ACRE,
  KILOGRAMS_PER_POUND,
  METRES_PER_FOOT,
  POUNDS_PER_TON,
  type UnitSystem,
} from "../domain/units";
import type { Text } from "../texts/language";
import { UNIT_NAMES } from "../texts/functions/units";

/** What a number of a call measures. */
export type Measure =
  | "plain"
  | "share"
  | "mass"
  | "massPerLength"
  | "length"
  | "shortLength"
  | "perLength"
  | "vinesPerArea"
  | "cropPerArea"
  | "perMass"
  | "hours";

/** How many of the metric unit that the calculation uses one unit of the sheet is. */
const METRIC_PER_UNIT: Readonly<Record<Measure, Readonly<Record<UnitSystem, number>>>> = {
  plain: { US: 1, metric: 1 },
  share: { US: 1, metric: 1 },
  hours: { US: 1, metric: 1 },
  mass: { US: KILOGRAMS_PER_POUND, metric: 1 },
  massPerLength: { US: KILOGRAMS_PER_POUND / METRES_PER_FOOT, metric: 1 },
  length: { US: METRES_PER_FOOT, metric: 1 },
  shortLength: { US: METRES_PER_FOOT / 12, metric: 0.01 },
  perLength: { US: 1 / METRES_PER_FOOT, metric: 1 },
  perMass: { US: 1 / KILOGRAMS_PER_POUND, metric: 1 },
  vinesPerArea: { US: 1 / HECTARES_PER_ACRE, metric: 1 },
  cropPerArea: { US: (POUNDS_PER_TON * KILOGRAMS_PER_POUND) / HECTARES_PER_ACRE, metric: 1000 },
};

/** A figure of the sheet in the metric unit of the calculation. */
export const toMetric = (value: number, measure: Measure, units: UnitSystem) =>
  value * METRIC_PER_UNIT[measure][units];

/** A metric figure of the calculation in the unit of the sheet. */
export const fromMetric = (value: number, measure: Measure, units: UnitSystem) =>
  value / METRIC_PER_UNIT[measure][units];

/** How the unit of a measure is written; "" for a plain number. */
export const unitName = (measure: Measure, units: UnitSystem): Text => UNIT_NAMES[measure][units];
