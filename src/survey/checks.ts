import type { Check, FindingKind } from "./check";
import { BUD_COUNTS } from "./checks/budCounts";
import { CELL_KIND } from "./checks/cellKind";
import { COLUMNS_SWAPPED } from "./checks/columnsSwapped";
import { CONTRADICTIONS } from "./checks/contradictions";
import { COPIED_DOWN } from "./checks/copiedDown";
import { COUNTER_UNLIKE_OTHERS } from "./checks/counterUnlikeOthers";
import { DATE_ORDER } from "./checks/dateOrder";
import { DATES } from "./checks/dates";
import { DIGIT_PREFERENCE } from "./checks/digitPreference";
import { DIRECTIONS } from "./checks/directions";
import { FIXED_CHOICE } from "./checks/fixedChoice";
import { LAST_YEAR } from "./checks/lastYear";
import { LIMITS } from "./checks/limits";
import { MISSING_VINE_COUNTS } from "./checks/missingVineCounts";
import { MISSING_VALUE } from "./checks/missingValue";
import { NEVER_COUNTED } from "./checks/neverCounted";
import { POSITIONS_FOR_LENGTH } from "./checks/positionsForLength";
import { REGISTER } from "./checks/register";
import { SAME_TWICE } from "./checks/sameTwice";
import { SETTING_VALUES } from "./checks/settingValues";
import { SPUR_COUNTS } from "./checks/spurCounts";
import { SPURS_TOO_CLOSE } from "./checks/spursTooClose";
import { TOTALS } from "./checks/totals";
import { TRADE_RANGES } from "./checks/tradeRanges";
import { TRUNKS_OF_VINE } from "./checks/trunksOfVine";
import { UNIT_SLIP } from "./checks/unitSlip";
import { UNLIKE_ITS_BLOCK } from "./checks/unlikeItsBlock";
import { VINE_SPACE } from "./checks/vineSpace";
import { WALK_ORDER } from "./checks/walkOrder";

/** Every check, in the order in which they run. */
export const CHECKS: readonly Check[] = [
  SETTING_VALUES,
  MISSING_VALUE,
  CELL_KIND,
  LIMITS,
  SPUR_COUNTS,
  DIRECTIONS,
  SPURS_TOO_CLOSE,
  BUD_COUNTS,
  CONTRADICTIONS,
  MISSING_VINE_COUNTS,
  FIXED_CHOICE,
  TRADE_RANGES,
  DATES,
  REGISTER,
  SAME_TWICE,
  NEVER_COUNTED,
  TOTALS,
  WALK_ORDER,
  DATE_ORDER,
  VINE_SPACE,
  UNIT_SLIP,
  UNLIKE_ITS_BLOCK,
  POSITIONS_FOR_LENGTH,
  COLUMNS_SWAPPED,
  COPIED_DOWN,
  TRUNKS_OF_VINE,
  DIGIT_PREFERENCE,
  COUNTER_UNLIKE_OTHERS,
  LAST_YEAR,
];

/** Every kind of finding, by its code. */
export const FINDING_KINDS: ReadonlyMap<string, FindingKind> = new Map(
  CHECKS.flatMap((check) => check.kinds.map((kind) => [kind.code, kind] as const)),
);
