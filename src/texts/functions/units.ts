import { t } from "./functionText";

const same = (word: string) => t(word, word, word);
const NONE = { US: same(""), metric: same("") };

/** How the unit of each measure is written beside a number. */
export const UNIT_NAMES = {
  plain: NONE,
  share: NONE,
  hours: { US: same("h"), metric: same("h") },
  mass: { US: same("lb"), metric: same("kg") },
  massPerLength: { US: same("lb/ft"), metric: same("kg/m") },
  length: { US: same("ft"), metric: same("m") },
  shortLength: { US: same("in"), metric: same("cm") },
  perLength: {
    US: t("a foot", "por pie", "par pied"),
    metric: t("a metre", "por metro", "par mètre"),
  },
  perMass: {
    US: t("a pound", "por libra", "par livre"),
    metric: t("a kilogram", "por kilo", "par kilo"),
  },
  vinesPerArea: {
    US: t("vines an acre", "plantas por acre", "ceps par acre"),
    metric: t("vines a hectare", "plantas por hectárea", "ceps par hectare"),
  },
  cropPerArea: {
    US: t("tons an acre", "toneladas cortas por acre", "tonnes courtes par acre"),
    metric: t("tonnes a hectare", "toneladas por hectárea", "tonnes par hectare"),
  },
} as const;
