import { isYoung, type CandidateCordon, type VineToDecide } from "./candidateCordon";
import type { ChoiceRules, ScorePart } from "./choiceRules";
import { cordonParts } from "./cordonParts";
import { partsInUse, scoreOver } from "./cordonScore";
import type { WeighedCordon } from "./compareCordons";
import { trunksOf, type Trunk } from "./trunksOf";
import type { ReasonCode } from "./vineDecision";

/** A vine with every candidate scored alike. */
export interface WeighedVine {
  readonly vine: VineToDecide;
  readonly rules: ChoiceRules;
  /** Its cordons are still being built. */
  readonly young: boolean;
  readonly trunks: readonly Trunk[];
  /** One a candidate, in the order of the vine. */
  readonly cordons: readonly WeighedCandidate[];
  /** Parts that at least one candidate says something about. */
  readonly inUse: readonly ScorePart[];
}

/** A scored candidate, and why it cannot be kept where that is so. */
export interface WeighedCandidate extends WeighedCordon {
  readonly ruledOut: ReasonCode | undefined;
  /** Another candidate of its side has the same name. */
  readonly namedTwice: boolean;
}

/**
 * Scores the candidates of a vine over the same parts, and rules out what cannot stay: fixed to go, dead, on a dead
 * trunk, or only a remnant. A cordon of a young vine is measured by its own length and is never a remnant.
 *
 * @example
 * weighedVine(
 *   { candidates: [{ side: "left", cordon: "A", condition: "dead" }] },
 *   { weights: { soundness: 1 }, injuredSoundness: 0.5, diseasedSoundness: 0.2 },
 * ).cordons[0].ruledOut // "dead"
 */
export function weighedVine(vine: VineToDecide, rules: ChoiceRules): WeighedVine {
  const young = isYoung(vine);
  const { candidates } = vine;
  const trunks = trunksOf(vine);
  const parts = candidates.map((candidate) =>
    cordonParts(candidate, vine.training, rules, young ? undefined : vine.sideLength),
  );
  const inUse = partsInUse(parts);
  const nameOf = ({ side, cordon }: CandidateCordon) => `${side}\n${cordon}`;
  const named = new Map<string, number>();
  for (const candidate of candidates) named.set(nameOf(candidate), (named.get(nameOf(candidate)) ?? 0) + 1);
  const cordons = candidates.map((candidate, index): WeighedCandidate => {
    const trunkCondition =
      trunks.find(({ number }) => number === candidate.trunk)?.condition ?? candidate.trunkCondition;
    const score = scoreOver(parts[index], inUse, rules);
    return {
      candidate,
      score,
      trunkCondition,
      ruledOut: whyOut(candidate, trunkCondition, young, rules),
      namedTwice: named.get(nameOf(candidate))! > 1,
    };
  });
  return { vine, rules, young, trunks, cordons, inUse };
}

function whyOut(
  candidate: CandidateCordon,
  trunkCondition: WeighedCordon["trunkCondition"],
  young: boolean,
  rules: ChoiceRules,
): ReasonCode | undefined {
  if (candidate.fixedChoice === "stays") return undefined;
  if (candidate.fixedChoice === "goes") return "fixedGoes";
  if (candidate.fixedChoice === "cane") return "fixedCane";
  if (trunkCondition === "dead") return "trunkDead";
  if (candidate.condition === "dead") return "dead";
  if (!young && candidate.length !== undefined && candidate.length < rules.shortestCordon) return "remnant";
  return undefined;
}
