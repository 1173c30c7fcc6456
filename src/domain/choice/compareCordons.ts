import type { CandidateCordon, Condition } from "./candidateCordon";
import { type ChoiceRules, type ScorePart } from "./choiceRules";
import type { CordonScore } from "./cordonScore";
import { liveSpursOf } from "./liveSpurs";
import { isKnown } from "./partBounds";
import { spursPointing, trainingSystem, type Training } from "./trainingSystems";
import { trunkCost } from "./trunkWorth";
import type { Argument, ArgumentCode } from "./vineDecision";
import type { Facts } from "../refusal";

/** A candidate with what the vine knows of it. */
export interface WeighedCordon {
  readonly candidate: CandidateCordon;
  readonly score: CordonScore;
  readonly trunkCondition: Condition | undefined;
}

/** What speaks for one cordon over another, each list with the strongest argument first. */
export interface Comparison {
  readonly mine: readonly Argument[];
  readonly theirs: readonly Argument[];
}

/**
 * Takes the difference between two cordons of one side apart: parts of the score, the trunk's condition, and whether
 * the trunk is another one than that of the cordon across the vine. The signed weights add up to the difference of the
 * two plans.
 *
 * @param gains what each of the two plans earns from hanging on two trunks
 * @param around.sideLength wire of the side, in metres; a cordon that reaches a spur beyond it is named for that
 * @param around.besideCane no cordon stands across: what is there is a new cane
 * @example
 * compareCordons(
 *   { candidate: { cordon: "A", longestGap: 0 }, score: { parts: { stretch: { low: 1, high: 1 } } } },
 *   { candidate: { cordon: "B", longestGap: 3 }, score: { parts: { stretch: { low: 0.4, high: 0.4 } } } },
 *   { mine: 0, theirs: 0 }, "highWire", ["stretch"], { weights: { stretch: 0.3 } },
 * ).mine.map((argument) => argument.facts) // [{"mine": 0, "theirs": 3}]
 */
export function compareCordons(
  mine: WeighedCordon,
  theirs: WeighedCordon,
  gains: { readonly mine: number; readonly theirs: number },
  training: Training | undefined,
  inUse: readonly ScorePart[],
  rules: ChoiceRules,
  around: { readonly sideLength?: number; readonly besideCane?: boolean } = {},
): Comparison {
  const { sideLength, besideCane } = around;
  const comparison = { mine: [] as Argument[], theirs: [] as Argument[] };
  let total = 0;
  for (const part of inUse) total += rules.weights[part];
  for (const part of inUse) {
    const own = mine.score.parts[part];
    const other = theirs.score.parts[part];
    if (!isKnown(own) || !isKnown(other)) continue;
    const difference = (rules.weights[part] * (own.low - other.low)) / (total || 1);
    if (isNothing(difference)) continue;
    const [better, worse] = difference > 0 ? [mine, theirs] : [theirs, mine];
    add(comparison, part, difference, {
      ...partFacts(part, better.candidate, worse.candidate, training),
      ...(part === "spurs" && isBeyond(worse.candidate, sideLength, rules) ? { wire: sideLength! } : {}),
    });
  }
  const cost = trunkCost(theirs.trunkCondition, rules) - trunkCost(mine.trunkCondition, rules);
  if (!isNothing(cost))
    add(comparison, "trunkCondition", cost, cost > 0 ? trunkFacts(mine, theirs) : trunkFacts(theirs, mine));
  const gain = gains.mine - gains.theirs;
  if (!isNothing(gain)) {
    const [better, worse] = gain > 0 ? [mine, theirs] : [theirs, mine];
    const facts = {
      trunk: better.candidate.trunk ?? "",
      shared: worse.candidate.trunk ?? "",
      ...(besideCane ? { besideCane: "cane" } : {}),
    };
    add(comparison, "ownTrunk", gain, facts);
  }
  return comparison;
}

/** Longer than the wire of its side by a spur or more. */
function isBeyond({ length }: CandidateCordon, sideLength: number | undefined, { spurSpacing }: ChoiceRules) {
  return length !== undefined && sideLength !== undefined && length - sideLength >= spurSpacing - 1e-9;
}

function isNothing(difference: number): boolean {
  return Math.abs(difference) < 1e-12;
}

/** Puts an argument into its list, in front of those that weigh less. */
function add(
  comparison: { mine: Argument[]; theirs: Argument[] },
  code: ArgumentCode,
  difference: number,
  facts: Facts,
): void {
  const list = difference > 0 ? comparison.mine : comparison.theirs;
  const weight = Math.abs(difference);
  let at = list.length;
  while (at > 0 && list[at - 1].weight < weight) at--;
  list.splice(at, 0, { code, weight, facts });
}

function trunkFacts(better: WeighedCordon, worse: WeighedCordon): Facts {
  return {
    trunk: better.candidate.trunk ?? "",
    mine: better.trunkCondition ?? "",
    otherTrunk: worse.candidate.trunk ?? "",
    theirs: worse.trunkCondition ?? "",
  };
}

function partFacts(
  part: ScorePart,
  better: CandidateCordon,
  worse: CandidateCordon,
  training: Training | undefined,
): Facts {
  if (part === "spurs")
    return {
      mine: liveSpursOf(better) ?? "",
      theirs: liveSpursOf(worse) ?? "",
      mineLength: better.length ?? "",
      theirsLength: worse.length ?? "",
    };
  if (part === "stretch") return { mine: gapOf(better), theirs: gapOf(worse) };
  if (part === "placing") {
    const { wellPlaced } = trainingSystem(training!);
    return {
      points: wellPlaced[0],
      mine: spursPointing(better, wellPlaced),
      mineOf: liveSpursOf(better) ?? "",
      theirs: spursPointing(worse, wellPlaced),
      theirsOf: liveSpursOf(worse) ?? "",
    };
  }
  if (part === "soundness") return { mine: better.condition ?? "", theirs: worse.condition ?? "" };
  return { mine: better.diameter ?? "", theirs: worse.diameter ?? "" };
}

/** The longest gap as counted, or as live spurs and positions give it: the whole cordon when no spur lives. */
function gapOf(cordon: CandidateCordon): number | string {
  if (liveSpursOf(cordon) === 0) return cordon.positions ?? cordon.longestGap ?? "";
  if (cordon.longestGap !== undefined) return cordon.longestGap;
  return Math.max(0, (cordon.positions ?? 0) - (liveSpursOf(cordon) ?? 0));
}
