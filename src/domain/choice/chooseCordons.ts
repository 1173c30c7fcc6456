import type { CandidateCordon, Condition, VineToDecide } from "./candidateCordon";
import { bestPlans, middle, trunkGain, type PlanChoice, type VinePlan } from "./bestPlans";
import type { ChoiceRules, ScorePart } from "./choiceRules";
import { compareCordons, type WeighedCordon } from "./compareCordons";
import { cordonParts } from "./cordonParts";
import { partsInUse, scoreOver } from "./cordonScore";
import { cutList } from "./cutList";
import { mustBeCandidate } from "./mustBeCandidate";
import { keepPlan, layPlans, type SidePlan } from "./sidePlans";
import { trunksOf, type Trunk } from "./trunksOf";
import type { CordonDecision, Reason, ReasonCode, SideDecision, VineDecision } from "./vineDecision";
import { vineNotes } from "./vineNotes";
import { vineSides, type VineSide } from "./vineSides";
import { weakestPoint } from "./weakestPoint";

/**
 * Decides a vine as a whole: one cordon a side, the pair that is best together over all pairs. Two cordons from two
 * trunks earn what two from one trunk do not, a hurt trunk costs, and laying a new cane is a plan among the others, so
 * that a cordon which is worth less than a new cane goes. What a person has fixed is kept and the rest is decided
 * around it. Where the best other plan lies within the close-call margin, or could come to lie there once missing
 * counts are in, the answer is "ask", with the arguments of both sides.
 *
 * Common practice behind the defaults: a stretch without spurs counts for a cordon's whole life, a spur more or less
 * decides little, and in a close choice the cordon from a trunk of its own wins.
 *
 * @param vine candidates as counted, lengths in metres
 * @param rules the figures of the Settings sheet
 * @returns per cordon stays, goes or ask with score and reason; per side what stays or where a cane comes from; cuts
 * @throws Refusal "notWhole" or "outside" when a count is impossible
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
  vine.candidates.forEach(mustBeCandidate);
  const trunks = trunksOf(vine);
  const weighed = weighCandidates(vine, trunks, rules);
  const sides = vineSides(vine.candidates, rules.sidesWanted);
  if (vine.status === "missing") return undecided("vineMissing", weighed);
  if (sides === undefined) return undecided("sidesUnclear", weighed);
  if (sides.length === 0) return { cordons: [], sides: [], cuts: [], notes: [], worth: 0 };

  const young = vine.status === "young" || vine.status === "replanted";
  const ruledOut = new Map<CandidateCordon, ReasonCode>();
  for (const cordon of weighed.all) {
    const reason = whyOut(cordon, young, rules);
    if (reason) ruledOut.set(cordon.candidate, reason);
  }
  const anyContender = ruledOut.size < vine.candidates.length;
  const lay = layPlans(trunks, vine.liveTrunks, anyContender, rules);
  const plansOf = (side: VineSide) => sidePlans(side, weighed, ruledOut, lay, young, rules);
  const first = plansOf(sides[0]);
  const second = sides[1] && plansOf(sides[1]);
  const choice = bestPlans(first, second, rules.twoTrunks);
  const namedTwice = new Set(vine.candidates.filter((candidate, at) => isNamedAgain(candidate, at, vine)));
  const around: Around = {
    namedTwice,
    vine,
    rules,
    weighed,
    choice,
    young,
    ruledOut,
    plans: [first, second ?? []],
  };

  const cordons = new Map<CandidateCordon, CordonDecision>();
  const sideDecisions = sides.map((side, index) =>
    decideSide(side, index === 0 ? "first" : "second", around, cordons),
  );
  const decided = vine.candidates.map((candidate) => cordons.get(candidate)!);
  const bareSides = new Set(
    sideDecisions.filter((side) => side.layCaneFrom !== undefined).map(({ side }) => side),
  );
  const going = vine.candidates.filter((candidate) => cordons.get(candidate)?.verdict === "goes");
  const lead = Math.min(...choice.others.map(({ behind }) => behind));
  return {
    cordons: decided,
    sides: sideDecisions,
    cuts: cutList(going, bareSides, trunks),
    notes: vineNotes(vine, trunks, weighed.inUse, sideDecisions, decided),
    worth: choice.worth,
    ...(Number.isFinite(lead) ? { lead } : {}),
  };
}

interface Weighed {
  readonly all: readonly WeighedCordon[];
  readonly of: ReadonlyMap<CandidateCordon, WeighedCordon>;
  readonly inUse: readonly ScorePart[];
}

interface Around {
  readonly namedTwice: ReadonlySet<CandidateCordon>;
  readonly vine: VineToDecide;
  readonly rules: ChoiceRules;
  readonly weighed: Weighed;
  readonly choice: PlanChoice;
  readonly young: boolean;
  readonly ruledOut: ReadonlyMap<CandidateCordon, ReasonCode>;
  readonly plans: readonly [readonly SidePlan[], readonly SidePlan[]];
}

function weighCandidates(vine: VineToDecide, trunks: readonly Trunk[], rules: ChoiceRules): Weighed {
  const young = vine.status === "young" || vine.status === "replanted";
  const parts = vine.candidates.map((candidate) =>
    cordonParts(candidate, vine.training, rules, young ? undefined : vine.sideLength),
  );
  const inUse = partsInUse(parts);
  const conditions = new Map<number, Condition | undefined>(
    trunks.map(({ number, condition }) => [number, condition]),
  );
  const all = vine.candidates.map((candidate, index) => ({
    candidate,
    score: scoreOver(parts[index], inUse, rules),
    trunkCondition:
      candidate.trunk === undefined ? candidate.trunkCondition : conditions.get(candidate.trunk),
  }));
  return { all, of: new Map(all.map((cordon) => [cordon.candidate, cordon])), inUse };
}

function whyOut(
  { candidate, trunkCondition }: WeighedCordon,
  young: boolean,
  rules: ChoiceRules,
): ReasonCode | undefined {
  if (candidate.fixedChoice === "stays") return undefined;
  if (candidate.fixedChoice === "goes") return "fixedGoes";
  if (trunkCondition === "dead") return "trunkDead";
  if (candidate.condition === "dead") return "dead";
  if (!young && candidate.length !== undefined && candidate.length < rules.shortestCordon) return "remnant";
  return undefined;
}

function sidePlans(
  side: VineSide,
  weighed: Weighed,
  ruledOut: ReadonlyMap<CandidateCordon, ReasonCode>,
  lay: readonly SidePlan[],
  young: boolean,
  rules: ChoiceRules,
): readonly SidePlan[] {
  const keep = (candidates: readonly CandidateCordon[]) =>
    candidates.map((candidate) => keepPlan(weighed.of.get(candidate)!, rules));
  const fixed = side.candidates.filter(({ fixedChoice }) => fixedChoice === "stays");
  if (fixed.length > 0) return keep(fixed);
  const contenders = keep(side.candidates.filter((candidate) => !ruledOut.has(candidate)));
  return young && contenders.length > 0 ? contenders : [...contenders, ...lay];
}

function isNamedAgain({ side, cordon }: CandidateCordon, at: number, vine: VineToDecide): boolean {
  return vine.candidates.some(
    (other, index) => index !== at && other.side === side && other.cordon === cordon,
  );
}

type Place = "first" | "second";

function decideSide(
  side: VineSide,
  place: Place,
  around: Around,
  decisions: Map<CandidateCordon, CordonDecision>,
): SideDecision {
  const { choice, rules, weighed } = around;
  const own = choice.best[place]!;
  const close = choice.others.filter(
    ({ plan, atLeast }) => plan[place]!.keeps !== own.keeps && atLeast <= rules.closeCall + 1e-9,
  );
  const fixedHere = side.candidates.some(({ fixedChoice }) => fixedChoice === "stays");
  let ask = false;

  for (const candidate of side.candidates) {
    const cordon = weighed.of.get(candidate)!;
    const decide = (verdict: CordonDecision["verdict"], reason: Reason) => {
      if (verdict === "ask") ask = true;
      decisions.set(candidate, {
        side: candidate.side,
        cordon: candidate.cordon,
        verdict,
        score: cordon.score,
        reason,
      });
    };
    const out = around.ruledOut.get(candidate);
    if (candidate.fixedChoice === "stays")
      decide("stays", plainReason(isDead(cordon) ? "fixedStaysDead" : "fixedStays"));
    else if (out)
      decide("goes", plainReason(out, { trunk: candidate.trunk ?? "", length: candidate.length ?? "" }));
    else if (around.namedTwice.has(candidate)) decide("ask", plainReason("namedTwice"));
    else if (fixedHere) decide("goes", { ...plainReason("besideFixed"), rival: nameOf(own) ?? "" });
    else if (own.keeps === cordon) {
      const rival = nearest(close);
      if (rival) decide("ask", askReason(cordon, rival, place, around));
      else decide("stays", staysReason(cordon, place, around));
    } else {
      const alternative = nearest(close.filter(({ plan }) => plan[place]!.keeps === cordon));
      if (alternative) decide("ask", rivalReason(cordon, alternative, place, around));
      else decide("goes", goesReason(cordon, place, around));
    }
  }
  const kept = own.keeps?.candidate;
  return {
    side: kept?.side ?? side.side,
    ask: ask || (close.length > 0 && !fixedHere),
    ...(kept ? { cordon: kept.cordon } : { layCaneFrom: own.layFrom! }),
  };
}

type OtherPlan = PlanChoice["others"][number];

function nearest(others: readonly OtherPlan[]): OtherPlan | undefined {
  let best: OtherPlan | undefined;
  for (const other of others) if (!best || other.behind < best.behind - 1e-12) best = other;
  return best;
}

function plainReason(code: ReasonCode, facts: Reason["facts"] = {}): Reason {
  return { code, mine: [], theirs: [], facts };
}

function nameOf(plan: SidePlan): string | undefined {
  return plan.keeps?.candidate.cordon;
}

function isDead(cordon: WeighedCordon): boolean {
  return cordon.candidate.condition === "dead" || cordon.trunkCondition === "dead";
}

function gainOf(plan: { first: SidePlan; second?: SidePlan }, rules: ChoiceRules): number {
  return plan.second ? middle(trunkGain(plan.first, plan.second, rules.twoTrunks)) : 0;
}

/** The best plan with one side exchanged. */
function exchanged(best: VinePlan, place: Place, plan: SidePlan): { first: SidePlan; second?: SidePlan } {
  return place === "first" ? { ...best, first: plan } : { ...best, second: plan };
}

function staysReason(cordon: WeighedCordon, place: Place, around: Around): Reason {
  const { choice, rules, young } = around;
  const rivals = around.plans[place === "first" ? 0 : 1].filter(
    (plan) => plan.keeps && plan.keeps !== cordon,
  );
  let rival: SidePlan | undefined;
  let most = -Infinity;
  for (const plan of rivals) {
    const worth = middle(plan) + gainOf(exchanged(choice.best, place, plan), rules);
    if (worth > most) {
      most = worth;
      rival = plan;
    }
  }
  if (!rival) return plainReason(young ? "building" : "onlyOne", strengths(cordon));
  return comparedReason(
    "better",
    cordon,
    rival.keeps!,
    gainOf(choice.best, rules),
    gainOf(exchanged(choice.best, place, rival), rules),
    around,
  );
}

function goesReason(cordon: WeighedCordon, place: Place, around: Around): Reason {
  const { choice, rules } = around;
  const own = choice.best[place]!;
  const mine = gainOf(exchanged(choice.best, place, keepPlan(cordon, rules)), rules);
  if (own.keeps) return comparedReason("worse", cordon, own.keeps, mine, gainOf(choice.best, rules), around);
  return plainReason("notWorthKeeping", {
    ...weakestPoint(cordon, around.vine, around.weighed.inUse, rules),
    from: own.layFrom!,
    gain: gainOf(choice.best, rules) - mine,
  });
}

/** Why the best cordon of a side is not simply kept. */
function askReason(cordon: WeighedCordon, other: OtherPlan, place: Place, around: Around): Reason {
  const rival = other.plan[place]!;
  const gains = [gainOf(around.choice.best, around.rules), gainOf(other.plan, around.rules)] as const;
  return openReason(cordon, rival.keeps, gains, other, around);
}

/** Why a cordon that is not in the best plan is not simply cut. */
function rivalReason(cordon: WeighedCordon, other: OtherPlan, place: Place, around: Around): Reason {
  const gains = [gainOf(other.plan, around.rules), gainOf(around.choice.best, around.rules)] as const;
  return openReason(cordon, around.choice.best[place]!.keeps, gains, other, around);
}

function openReason(
  cordon: WeighedCordon,
  rival: WeighedCordon | undefined,
  [mine, theirs]: readonly [number, number],
  other: OtherPlan,
  around: Around,
): Reason {
  const missing = missingOf(around.choice.best, other.plan);
  const facts: Reason["facts"] = missing.length > 0 ? { missing } : {};
  if (!rival)
    return plainReason(missing.length > 0 ? "missingCounts" : "closeToNewCane", {
      ...facts,
      ...weakestPoint(cordon, around.vine, around.weighed.inUse, around.rules),
    });
  const reason = comparedReason(
    missing.length > 0 ? "missingCounts" : "closeCall",
    cordon,
    rival,
    mine,
    theirs,
    around,
  );
  return { ...reason, facts };
}

/**
 * What is still to be written down about the cordons in which two plans differ, and about their trunks: part and
 * cordon, as "stretch A".
 */
function missingOf(best: VinePlan, other: VinePlan): string[] {
  const missing = new Set<string>();
  for (const place of ["first", "second"] as const) {
    const cordons = [best[place]?.keeps, other[place]?.keeps].filter((keeps) => keeps !== undefined);
    for (const { candidate, score } of cordons) {
      if (best[place] !== other[place])
        score.missing.forEach((part) => missing.add(`${part} ${candidate.cordon}`));
      if (candidate.trunk === undefined) missing.add(`trunk ${candidate.cordon}`);
    }
  }
  return [...missing];
}

function comparedReason(
  code: ReasonCode,
  cordon: WeighedCordon,
  rival: WeighedCordon,
  mine: number,
  theirs: number,
  around: Around,
): Reason {
  const { weighed, vine, rules } = around;
  const comparison = compareCordons(cordon, rival, { mine, theirs }, vine.training, weighed.inUse, rules);
  return { code, rival: rival.candidate.cordon, ...comparison, facts: {} };
}

function strengths({ candidate }: WeighedCordon): Reason["facts"] {
  return {
    ...(candidate.liveSpurs === undefined ? {} : { spurs: candidate.liveSpurs }),
    ...(candidate.longestGap === undefined ? {} : { gap: candidate.longestGap }),
  };
}

function undecided(code: "vineMissing" | "sidesUnclear", weighed: Weighed): VineDecision {
  return {
    cordons: weighed.all.map(({ candidate, score }) => ({
      side: candidate.side,
      cordon: candidate.cordon,
      verdict: "ask",
      score,
      reason: plainReason(code),
    })),
    sides: [],
    cuts: [],
    notes: [{ code, facts: {} }],
    worth: 0,
  };
}
