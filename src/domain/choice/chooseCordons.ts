import type { Facts } from "../refusal";
import type { VineToDecide } from "./candidateCordon";
import { bestPlans, type ClosePlan, type PlanChoice } from "./bestPlans";
import type { ChoiceRules } from "./choiceRules";
import { askReason, goesReason, plainReason, staysReason, type Place } from "./cordonReasons";
import { mustBeCandidate } from "./mustBeCandidate";
import { keepPlan, layPlan, layPlans, type SidePlan } from "./sidePlans";
import type {
  CordonDecision,
  QuestionSide,
  Reason,
  ReasonCode,
  SideDecision,
  Verdict,
  VineDecision,
} from "./vineDecision";
import { vineNotes } from "./vineNotes";
import { vineSides, type VineSide } from "./vineSides";
import { weighedVine, type WeighedCandidate, type WeighedVine } from "./weighedVine";

/**
 * Decides a vine as a whole: one cordon a side, the pair that is best together over all pairs. Two cordons from two
 * trunks earn what two from one trunk do not, a hurt trunk costs, and laying a new cane is a plan among the others, so
 * that a cordon which is worth less than a new cane goes. What a person has fixed is kept and the rest is decided
 * around it. Where the best other plan lies within the close-call margin, or could come to lie there once missing
 * counts are in, the answer is "ask", with the arguments of both sides. A vine to recount is not decided at all.
 *
 * Common practice behind the defaults: a stretch without spurs counts for a cordon's whole life, a spur more or less
 * decides little, and in a close choice the cordon from a trunk of its own wins.
 *
 * @param vine candidates as counted, lengths in metres
 * @param rules the figures of the Settings sheet
 * @returns per cordon stays, goes or ask with score and reason; per side what stays or where a cane comes from
 * @throws Refusal "notWhole" or "outside" when a count is impossible
 *
 * @example
 * chooseCordons(
 *   {
 *     candidates: [
 *       { side: "left", cordon: "A", trunk: 1, length: 1, liveSpurs: 8, longestGap: 0 },
 *       { side: "left", cordon: "B", trunk: 2, length: 1, liveSpurs: 9, longestGap: 3 },
 *       { side: "right", cordon: "C", trunk: 2, length: 1, liveSpurs: 9, longestGap: 1 },
 *     ],
 *   },
 *   {
 *     weights: { spurs: 0.5, stretch: 0.5, placing: 0, soundness: 0, diameter: 0 },
 *     spurSpacing: 0.1, longestStretch: 5, twoTrunks: 0.15, newCane: 0.5, shortestCordon: 0.3, closeCall: 0.05, sidesWanted: 2,
 *   },
 * ).cordons.map(({ cordon, verdict }) => `${cordon} ${verdict}`) // ["A stays", "B goes", "C stays"]
 */
export function chooseCordons(vine: VineToDecide, rules: ChoiceRules): VineDecision {
  for (const candidate of vine.candidates) mustBeCandidate(candidate);
  const weighed = weighedVine(vine, rules);
  if (vine.recount && vine.recount.length > 0)
    return undecided("recount", weighed, { cells: vine.recount.join(", ") });
  if (vine.status === "missing") return undecided("vineMissing", weighed);
  const sides = vineSides(weighed.cordons, rules.sidesWanted);
  if (sides === undefined) return undecided("sidesUnclear", weighed);
  if (sides.length === 0) return { cordons: [], sides: [], notes: [], worth: 0 };
  if (isUncounted(sides, weighed)) return undecided("uncounted", weighed);

  const anyLivingWood = weighed.cordons.some((cordon) => !isDead(cordon));
  const lay = layPlans(weighed.trunks, vine.liveTrunks, anyLivingWood, rules);
  const plans = sides.map((side) => plansOf(side, lay, weighed));
  const choice = bestPlans(plans[0], plans[1], rules.twoTrunks, rules.closeCall);
  const answers = new Map<WeighedCandidate, CordonDecision>();
  const sideDecisions = sides.map((side, index) =>
    decideSide(side, index, { weighed, choice, plans, answers }),
  );
  const cordons = asOneQuestion(
    weighed.cordons.map((cordon) => answers.get(cordon)!),
    sideDecisions,
  );
  return {
    cordons,
    sides: sideDecisions,
    notes: vineNotes(vine, weighed.trunks, weighed.inUse, sideDecisions, cordons),
    worth: choice.worth,
    ...(Number.isFinite(choice.lead) ? { lead: choice.lead } : {}),
  };
}

/** Everything that can be done on a side: one of the fixed cordons; else any contender, or a cane. */
function plansOf(
  { members }: VineSide<WeighedCandidate>,
  lay: readonly SidePlan[],
  { rules, young }: WeighedVine,
): readonly SidePlan[] {
  const fixed = members.filter(({ candidate }) => candidate.fixedChoice === "stays");
  if (fixed.length > 0) return fixed.map((cordon) => keepPlan(cordon, rules, young));
  const cane = members.find((member) => member.candidate.fixedChoice === "cane" && !isDead(member));
  if (cane) return [layPlan(cane.candidate.trunk ?? "head", cane.trunkCondition, rules)];
  const contenders = members
    .filter(({ ruledOut }) => ruledOut === undefined)
    .map((cordon) => keepPlan(cordon, rules, young));
  return young && contenders.length > 0 ? contenders : [...contenders, ...lay];
}

interface Deciding {
  readonly weighed: WeighedVine;
  readonly choice: PlanChoice;
  readonly plans: readonly (readonly SidePlan[])[];
  readonly answers: Map<WeighedCandidate, CordonDecision>;
}

function decideSide(
  { side, members }: VineSide<WeighedCandidate>,
  index: number,
  { weighed, choice, plans, answers }: Deciding,
): SideDecision {
  const place: Place = index === 0 ? "first" : "second";
  const own = choice.best[place]!;
  const close = choice.close.filter(({ plan }) => plan[place]!.keeps !== own.keeps);
  const fixedHere = members.some(({ candidate }) => candidate.fixedChoice === "stays");
  const at = { place, choice, weighed, plans: plans[index] };

  for (const cordon of members) {
    const { candidate, score } = cordon;
    const answer = (verdict: Verdict, reason: Reason) =>
      answers.set(cordon, { side: candidate.side, cordon: candidate.cordon, verdict, score, reason });
    const staysHere = own.keeps === cordon;
    const rival = staysHere
      ? nearest(close)
      : nearest(close.filter(({ plan }) => plan[place]!.keeps === cordon));
    const fixed = fixedAnswer(cordon);
    if (fixed) answer(fixed.verdict, fixed.reason);
    else if (cordon.ruledOut) answer("goes", ruledOutReason(cordon, cordon.ruledOut));
    else if (cordon.namedTwice) answer("ask", plainReason("namedTwice"));
    else if (fixedHere) answer("goes", { ...plainReason("besideFixed"), rival: own.keeps!.candidate.cordon });
    else if (staysHere && rival) answer("ask", askReason(cordon, choice.best, rival.plan, at));
    else if (staysHere) answer("stays", staysReason(cordon, at));
    else if (rival) answer("ask", askReason(cordon, rival.plan, choice.best, at));
    else answer("goes", goesReason(cordon, at));
  }
  const kept = own.keeps?.candidate;
  const cane = nearest(close.filter(({ plan }) => plan[place]!.keeps === undefined));
  return {
    side: kept?.side ?? side,
    ask: members.some((cordon) => answers.get(cordon)!.verdict === "ask"),
    ...(kept ? { cordon: kept.cordon } : { layCaneFrom: own.layFrom! }),
    ...(cane ? { orLayFrom: cane.plan[place]!.layFrom! } : {}),
  };
}

/**
 * Of no cordon on the vine live spurs or gaps are known, so that only trunks would decide: between several cordons of a
 * side or, where nothing at all is known, between the one that is there and a new cane. A young vine is laid no cane.
 */
function isUncounted(sides: readonly VineSide<WeighedCandidate>[], { inUse, young }: WeighedVine): boolean {
  if (inUse.includes("spurs") || inUse.includes("stretch")) return false;
  const fewest = inUse.length === 0 && !young ? 1 : 2;
  return sides.some(
    ({ members }) =>
      members.every(({ candidate }) => candidate.fixedChoice !== "stays") &&
      members.filter(({ ruledOut }) => ruledOut === undefined).length >= fewest,
  );
}

/** Where both sides are asked about, every asked cordon of the vine carries the same question with both sides in it. */
function asOneQuestion(
  cordons: readonly CordonDecision[],
  sides: readonly SideDecision[],
): readonly CordonDecision[] {
  const isClose = ({ reason: { code } }: CordonDecision) => code === "closeCall" || code === "closeToNewCane";
  const question = sides.flatMap(({ side, cordon }): QuestionSide[] => {
    const close = cordons.filter((one) => one.side === side && isClose(one));
    const asked = close.find((one) => one.cordon === cordon) ?? close[0];
    if (!asked) return [];
    const { rival, mine, theirs, facts } = asked.reason;
    return [{ side, cordon: asked.cordon, ...(rival === undefined ? {} : { rival }), mine, theirs, facts }];
  });
  if (question.length < 2) return cordons;
  return cordons.map((one) => (isClose(one) ? { ...one, reason: { ...one.reason, question } } : one));
}

function nearest(plans: readonly ClosePlan[]): ClosePlan | undefined {
  let best: ClosePlan | undefined;
  for (const plan of plans) if (!best || plan.behind < best.behind - 1e-12) best = plan;
  return best;
}

function isDead({ candidate, trunkCondition }: WeighedCandidate): boolean {
  return candidate.condition === "dead" || trunkCondition === "dead";
}

/** The answer that a person gave; undefined where nobody has. */
function fixedAnswer(cordon: WeighedCandidate): Pick<CordonDecision, "verdict" | "reason"> | undefined {
  const { fixedChoice } = cordon.candidate;
  if (fixedChoice === undefined) return undefined;
  return fixedChoice === "stays"
    ? { verdict: "stays", reason: plainReason(isDead(cordon) ? "fixedStaysDead" : "fixedStays") }
    : { verdict: "goes", reason: ruledOutReason(cordon, cordon.ruledOut!) };
}

function ruledOutReason({ candidate: { trunk, length } }: WeighedCandidate, code: ReasonCode): Reason {
  return plainReason(code, { trunk: trunk ?? "", length: length ?? "" });
}

function undecided(
  code: "recount" | "uncounted" | "vineMissing" | "sidesUnclear",
  weighed: WeighedVine,
  facts: Facts = {},
): VineDecision {
  return {
    cordons: weighed.cordons.map((one) => ({
      side: one.candidate.side,
      cordon: one.candidate.cordon,
      verdict: "ask",
      score: one.score,
      reason: plainReason(code, facts),
      ...(code === "uncounted" ? fixedAnswer(one) : undefined),
    })),
    sides: [],
    notes: [{ code, facts }],
    worth: 0,
  };
}
