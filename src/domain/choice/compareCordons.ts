import type { CandidateCordon, Condition, Training } from "./candidateCordon";
import { type ChoiceRules, type ScorePart } from "./choiceRules";
import type { CordonScore } from "./cordonScore";
import { liveSpursOf } from "./liveSpurs";
import { isKnown } from "./partBounds";
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
): Comparison {
  const lists = { mine: [] as Argument[], theirs: [] as Argument[] };
  const weigh = (code: ArgumentCode, difference: number, facts: (winner: boolean) => Facts) => {
    if (Math.abs(difference) < 1e-12) return;
    const won = difference > 0;
    lists[won ? "mine" : "theirs"].push({ code, weight: Math.abs(difference), facts: facts(won) });
  };
  const total = inUse.reduce((sum, part) => sum + rules.weights[part], 0) || 1;

  for (const part of inUse) {
    const own = mine.score.parts[part];
    const other = theirs.score.parts[part];
    if (!isKnown(own) || !isKnown(other)) continue;
    weigh(part, (rules.weights[part] * (own.low - other.low)) / total, (won) =>
      partFacts(
        part,
        won ? mine.candidate : theirs.candidate,
        won ? theirs.candidate : mine.candidate,
        training,
      ),
    );
  }
  weigh(
    "trunkCondition",
    trunkCost(theirs.trunkCondition, rules) - trunkCost(mine.trunkCondition, rules),
    (won) => trunkFacts(won ? mine : theirs, won ? theirs : mine),
  );
  weigh("ownTrunk", gains.mine - gains.theirs, (won) => ({
    trunk: (won ? mine : theirs).candidate.trunk ?? "",
    shared: (won ? theirs : mine).candidate.trunk ?? "",
  }));
  const byWeight = (first: Argument, second: Argument) => second.weight - first.weight;
  return { mine: lists.mine.sort(byWeight), theirs: lists.theirs.sort(byWeight) };
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
  if (part === "placing")
    return {
      points: training === "upright" ? "up" : "down",
      mine: wellPlaced(better, training),
      mineOf: liveSpursOf(better) ?? "",
      theirs: wellPlaced(worse, training),
      theirsOf: liveSpursOf(worse) ?? "",
    };
  if (part === "soundness") return { mine: better.condition ?? "", theirs: worse.condition ?? "" };
  return { mine: better.diameter ?? "", theirs: worse.diameter ?? "" };
}

/** The longest gap as counted, or as live spurs and positions give it: the whole cordon when no spur lives. */
function gapOf(cordon: CandidateCordon): number | string {
  if (liveSpursOf(cordon) === 0) return cordon.positions ?? cordon.longestGap ?? "";
  if (cordon.longestGap !== undefined) return cordon.longestGap;
  return Math.max(0, (cordon.positions ?? 0) - (liveSpursOf(cordon) ?? 0));
}

/** Spurs that point up on an upright system, down or to the side on the others. */
function wellPlaced(cordon: CandidateCordon, training: Training | undefined): number {
  return training === "upright" ? (cordon.spursUp ?? 0) : (cordon.spursDown ?? 0) + (cordon.spursLevel ?? 0);
}
