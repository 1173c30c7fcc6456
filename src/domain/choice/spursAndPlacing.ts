import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { liveSpursOf } from "./liveSpurs";
import type { SpurWorth, Training } from "./trainingSystems";
import { knownPart, UNKNOWN_PART, type PartBounds } from "./partBounds";

/** The two parts that the live spurs earn together. */
export interface SpursAndPlacing {
  readonly spurs: PartBounds;
  readonly placing: PartBounds;
}

/**
 * Live spurs against what the length should carry, and how well they point for the training system.
 *
 * Common practice: on a high wire a spur that points down or to the side is better placed than one that points up;
 * under catch wires one that points up is. A spur that costs more by pointing the wrong way than it earns as a spur is
 * cut off at pruning, so it never counts against its cordon: the best placed spurs are taken one after the other as
 * long as the two parts together gain, and both parts are those of the spurs taken. A spur of unknown direction counts
 * as a level one; where no direction at all was counted, the placing is unknown.
 *
 * @param carry spurs that the length should carry, see spursToCarry
 * @example
 * spursAndPlacing(
 *   { liveSpurs: 10, spursDown: 5, spursUp: 5 }, 10, "highWire",
 *   { weights: { spurs: 0.3, placing: 0.15 }, spurWorth: { highWire: { down: 1, level: 0.9, up: 0.4 } } },
 * ).placing // {"low": 0.7, "high": 0.7}
 */
export function spursAndPlacing(
  cordon: CandidateCordon,
  carry: number | undefined,
  training: Training | undefined,
  rules: ChoiceRules,
): SpursAndPlacing {
  const live = liveSpursOf(cordon);
  if (live === undefined) return { spurs: UNKNOWN_PART, placing: UNKNOWN_PART };
  const spurs = live === 0 ? knownPart(0) : carry === undefined ? UNKNOWN_PART : knownPart(live / carry);
  const { spursDown, spursLevel, spursUp } = cordon;
  const counted = spursDown !== undefined || spursLevel !== undefined || spursUp !== undefined;
  if (training === undefined || !counted) return { spurs, placing: UNKNOWN_PART };

  const order = byWorth(rules.spurWorth[training]);
  const known = (spursDown ?? 0) + (spursLevel ?? 0) + (spursUp ?? 0);
  const counts: SpurCounts = {
    down: spursDown ?? 0,
    level: (spursLevel ?? 0) + Math.max(0, live - known),
    up: spursUp ?? 0,
  };
  if (live === 0 || carry === undefined) return { spurs, placing: knownPart(meanWorth(counts, order)) };
  return bestTaken(counts, order, carry, rules);
}

type SpurCounts = Readonly<Record<keyof SpurWorth, number>>;
/** The directions with their worth, best placed first. */
type WorthOrder = readonly (readonly [direction: keyof SpurWorth, worth: number])[];

const ORDERS = new WeakMap<SpurWorth, WorthOrder>();

function byWorth(worth: SpurWorth): WorthOrder {
  const known = ORDERS.get(worth);
  if (known) return known;
  const directions = ["down", "level", "up"] as const;
  const order = directions
    .map((direction) => [direction, worth[direction]] as const)
    .sort(([, first], [, second]) => second - first);
  ORDERS.set(worth, order);
  return order;
}

function meanWorth(counts: SpurCounts, order: WorthOrder): number {
  let sum = 0;
  let total = 0;
  for (const [direction, worth] of order) {
    sum += worth * counts[direction];
    total += counts[direction];
  }
  return total === 0 ? 0 : sum / total;
}

function bestTaken(
  counts: SpurCounts,
  order: WorthOrder,
  carry: number,
  { weights }: ChoiceRules,
): SpursAndPlacing {
  let taken = 0;
  let sum = 0;
  let best = -1;
  let spurs = 0;
  let placing = 0;
  for (const [direction, worth] of order)
    for (let spur = 0; spur < counts[direction]; spur++) {
      taken++;
      sum += worth;
      const spursNow = Math.min(1, taken / carry);
      const earned = weights.spurs * spursNow + (weights.placing * sum) / taken;
      if (earned >= best) {
        best = earned;
        spurs = spursNow;
        placing = sum / taken;
      }
    }
  return { spurs: knownPart(spurs), placing: knownPart(placing) };
}
