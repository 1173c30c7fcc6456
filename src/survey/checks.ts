import type { Check, FindingKind } from "./check";
import { BUD_COUNTS } from "./checks/budCounts";
import { CELL_KIND } from "./checks/cellKind";
import { CONTRADICTIONS } from "./checks/contradictions";
import { DIRECTIONS } from "./checks/directions";
import { LIMITS } from "./checks/limits";
import { MISSING_VALUE } from "./checks/missingValue";
import { REGISTER } from "./checks/register";
import { SAME_TWICE } from "./checks/sameTwice";
import { SETTING_VALUES } from "./checks/settingValues";
import { SPUR_COUNTS } from "./checks/spurCounts";
import { SPURS_TOO_CLOSE } from "./checks/spursTooClose";
import { UNLIKE_ITS_BLOCK } from "./checks/unlikeItsBlock";
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
  REGISTER,
  SAME_TWICE,
  WALK_ORDER,
  UNLIKE_ITS_BLOCK,
];

/** Every kind of finding, by its code. */
export const FINDING_KINDS: ReadonlyMap<string, FindingKind> = new Map(
  CHECKS.flatMap((check) => check.kinds.map((kind) => [kind.code, kind] as const)),
);
