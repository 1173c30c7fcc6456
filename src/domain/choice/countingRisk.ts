import type { VineToDecide } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { chooseCordons } from "./chooseCordons";
import { liveSpursOf } from "./liveSpurs";
import type { Random } from "../random";
import { mustBeWhole } from "../refusal";
import { stayingKey, withCounts } from "./whatWouldTurn";

/** How much the decisions of a block hang on its counting. */
export interface CountingRisk {
  readonly vines: number;
  /** Share of vines and draws in which another cordon would stay. */
  readonly flips: number;
  /** The same among the vines that are decided without a question. */
  readonly flipsDecided: number;
  /** Vines that are decided without a question. */
  readonly decided: number;
}

/**
 * The share of vines whose decision would be another if every count were off by one: live spurs, longest gap and the
 * direction of one spur are each drawn one up or one down, with equal chance, for every candidate, as often as asked.
 *
 * @param random seeded, so that the answer can be made again
 * @param draws how often each vine is counted anew, 1 to 1000
 * @throws Refusal "notWhole" or "outside"
 * @example
 * countingRisk([], {}, seededRandom(1), 10) // {"vines": 0, "flips": 0, "flipsDecided": 0, "decided": 0}
 */
export function countingRisk(
  vines: readonly VineToDecide[],
  rules: ChoiceRules,
  random: Random,
  draws: number,
): CountingRisk {
  mustBeWhole("draws", draws, 1, 1000);
  let flips = 0;
  let flipsDecided = 0;
  let decided = 0;
  for (const vine of vines) {
    const { sides } = chooseCordons(vine, rules);
    const now = sides.map(({ side, cordon }) => `${side}:${cordon ?? ""}`).join("|");
    const asks = sides.length === 0 || sides.some(({ ask }) => ask);
    if (!asks) decided++;
    for (let draw = 0; draw < draws; draw++) {
      if (stayingKey(miscounted(vine, random), rules) === now) continue;
      flips++;
      if (!asks) flipsDecided++;
    }
  }
  return {
    vines: vines.length,
    flips: vines.length === 0 ? 0 : flips / (vines.length * draws),
    flipsDecided: decided === 0 ? 0 : flipsDecided / (decided * draws),
    decided,
  };
}

function miscounted(vine: VineToDecide, random: Random): VineToDecide {
  let changed = vine;
  vine.candidates.forEach((candidate, index) => {
    const off = (count: number) => Math.max(0, count + (random() < 0.5 ? -1 : 1));
    const live = liveSpursOf(candidate);
    const { spursDown, spursUp, longestGap } = candidate;
    if (spursDown !== undefined && spursUp !== undefined) {
      const turned = random() < 0.5 ? Math.min(1, spursUp) : -Math.min(1, spursDown);
      changed = withCounts(changed, index, { spursDown: spursDown + turned, spursUp: spursUp - turned });
    }
    if (longestGap !== undefined) changed = withCounts(changed, index, { longestGap: off(longestGap) });
    if (live !== undefined) changed = withCounts(changed, index, { liveSpurs: off(live) });
  });
  return changed;
}
