import type { SettingRow } from "./setting";
import { figure } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.work;

/** Settings for hours, crew days and the order of work. */
export const WORK_SETTINGS = {
  minutesAVinePruning: figure(
    NAMES.minutesAVinePruning,
    3,
    "min",
    "growerLog2008",
    [0, 240],
    MEANINGS.minutesAVinePruning,
  ),
  minutesAVineThinning: figure(
    NAMES.minutesAVineThinning,
    2,
    "min",
    "from memory, unverified",
    [0, 240],
    MEANINGS.minutesAVineThinning,
  ),
  shootsByLength: figure(NAMES.shootsByLength, 6, "shoots/ft", "uw2015", [1, 18], MEANINGS.shootsByLength),
  minutesAVineShootThinning: figure(
    NAMES.minutesAVineShootThinning,
    2,
    "min",
    "from memory, unverified",
    [0, 240],
    MEANINGS.minutesAVineShootThinning,
  ),
  crew: figure(NAMES.crew, 4, "people", "ours", [1, 500], MEANINGS.crew),
  hoursADay: figure(NAMES.hoursADay, 6, "h", "ours", [0.5, 16], MEANINGS.hoursADay),
} satisfies Readonly<Record<string, SettingRow>>;
