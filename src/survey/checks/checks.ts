import type { Check, FindingKind } from "./check";
import { BUD_COUNTS } from "./budCounts";
import { CELL_KIND } from "./cellKind";
import { COLUMNS_SWAPPED } from "./columnsSwapped";
import { CONTRADICTIONS } from "./contradictions";
import { COPIED_DOWN } from "./copiedDown";
import { CORDONS_OF_VINE } from "./cordonsOfVine";
import { COUNT_LEFT_OUT } from "./countLeftOut";
import { COUNTER_UNLIKE_OTHERS } from "./counterUnlikeOthers";
import { DATE_ORDER } from "./dateOrder";
import { DATES } from "./dates";
import { DIGIT_PREFERENCE } from "./digitPreference";
import { DIRECTIONS } from "./directions";
import { EXTRA_CELLS } from "./extraCells";
import { FIXED_CHOICE } from "./fixedChoice";
import { HARVEST_UNUSUAL } from "./harvestUnusual";
import { LAST_YEAR } from "./lastYear";
import { LIMITS } from "./limits";
import { MISSING_VINE_COUNTS } from "./missingVineCounts";
import { MISSING_VALUE } from "./missingValue";
import { NEVER_COUNTED } from "./neverCounted";
import { POSITIONS_FOR_LENGTH } from "./positionsForLength";
import { REGISTER } from "./register";
import { SAME_TWICE } from "./sameTwice";
import { SETTING_VALUES } from "./settingValues";
import { SIDE_WITHOUT_CORDON } from "./sideWithoutCordon";
import { SPUR_COUNTS } from "./spurCounts";
import { SPURS_TOO_CLOSE } from "./spursTooClose";
import { STRUCK_AND_SAID } from "./struckAndSaid";
import { TOTAL_OF_PARTS } from "./totalOfParts";
import { TOTALS } from "./totals";
import { TRADE_RANGES } from "./tradeRanges";
import { TRUNKS_OF_VINE } from "./trunksOfVine";
import { UNIT_SLIP } from "./unitSlip";
import { UNLIKE_ITS_BLOCK } from "./unlikeItsBlock";
import { VINE_SPACE } from "./vineSpace";
import { WALK_ORDER } from "./walkOrder";

/** Every check, in the order in which they run. */
export const CHECKS: readonly Check[] = [
  SETTING_VALUES,
  EXTRA_CELLS,
  MISSING_VALUE,
  CELL_KIND,
  LIMITS,
  STRUCK_AND_SAID,
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
  CORDONS_OF_VINE,
  SIDE_WITHOUT_CORDON,
  SAME_TWICE,
  NEVER_COUNTED,
  TOTALS,
  TOTAL_OF_PARTS,
  WALK_ORDER,
  DATE_ORDER,
  VINE_SPACE,
  UNIT_SLIP,
  UNLIKE_ITS_BLOCK,
  COUNT_LEFT_OUT,
  HARVEST_UNUSUAL,
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
