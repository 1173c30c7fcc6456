import { sameText as same } from "../language";
import { TEXTS } from "../texts";

const NONE = { US: same(""), metric: same("") };

/** How the unit of each measure is written beside a number. */
export const UNIT_NAMES = {
  plain: NONE,
  share: NONE,
  hours: { US: same("h"), metric: same("h") },
  mass: { US: same("lb"), metric: same("kg") },
  massPerLength: { US: same("lb/ft"), metric: same("kg/m") },
  length: { US: same("ft"), metric: same("m") },
  spurSpacing: { US: same("in"), metric: same("cm") },
  ...TEXTS.functions.units.unitNames,
} as const;
