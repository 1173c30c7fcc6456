import { middle, trunkGain, type PlanChoice, type VinePlan } from "./bestPlans";
import { compareCordons, type WeighedCordon } from "./compareCordons";
import { liveSpursOf } from "./liveSpurs";
import { keepPlan, type SidePlan } from "./sidePlans";
import type { Reason, ReasonCode } from "./vineDecision";
import { weakestPoint } from "./weakestPoint";
import type { WeighedVine } from "./weighedVine";

/** The two sides of a plan. */
export type Place = "first" | "second";

/** A side of a vine whose plan is chosen. */
export interface ChosenSide {
  readonly place: Place;
  readonly choice: PlanChoice;
  readonly weighed: WeighedVine;
  /** Every plan of the side. */
  readonly plans: readonly SidePlan[];
}

/**
 * A reason that needs no rival.
 *
 * @example
 * plainReason("dead") // {"code": "dead", "mine": [], "theirs": [], "facts": {}}
 */
export function plainReason(code: ReasonCode, facts: Reason["facts"] = {}): Reason {
  return { code, mine: [], theirs: [], facts };
}

/** Why the cordon of the best plan stays: weighed against the next best of its side, the other side as chosen. */
export function staysReason(cordon: WeighedCordon, at: ChosenSide): Reason {
  const { choice, weighed, place } = at;
  const { twoTrunks } = weighed.rules;
  let rival: SidePlan | undefined;
  let most = -Infinity;
  for (const plan of at.plans) {
    if (plan.keeps === undefined || plan.keeps === cordon) continue;
    const worth = middle(plan) + trunkGain(exchanged(choice.best, place, plan), twoTrunks);
    if (worth > most) {
      most = worth;
      rival = plan;
    }
  }
  if (!rival?.keeps) return plainReason(weighed.young ? "building" : "onlyOne", strengths(cordon));
  const gains = {
    mine: trunkGain(choice.best, twoTrunks),
    theirs: trunkGain(exchanged(choice.best, place, rival), twoTrunks),
  };
  return comparedReason("better", cordon, rival.keeps, gains, weighed, acrossOf(choice.best, place));
}

/** Why another cordon goes: weighed against the one that stays, or against a new cane. */
export function goesReason(cordon: WeighedCordon, at: ChosenSide): Reason {
  const { choice, weighed, place } = at;
  const { rules } = weighed;
  const own = choice.best[place]!;
  const mine = trunkGain(
    exchanged(choice.best, place, keepPlan(cordon, rules, weighed.young)),
    rules.twoTrunks,
  );
  const theirs = trunkGain(choice.best, rules.twoTrunks);
  if (own.keeps)
    return comparedReason(
      "worse",
      cordon,
      own.keeps,
      { mine, theirs },
      weighed,
      acrossOf(choice.best, place),
    );
  return plainReason("notWorthKeeping", {
    ...weakestPoint(cordon, weighed.vine, weighed.inUse, rules),
    from: own.layFrom!,
    gain: theirs - mine,
  });
}

/** The argument between two plans that lie close, told for the cordon that the first of them keeps. */
export function askReason(
  cordon: WeighedCordon,
  own: VinePlan,
  against: VinePlan,
  { weighed, place }: ChosenSide,
): Reason {
  const { rules, vine, inUse } = weighed;
  const missing = missingOf(own, against);
  const facts: Reason["facts"] = missing.length > 0 ? { missing } : partners(own, against, place);
  const rival = against[place]!.keeps;
  if (!rival)
    return plainReason(missing.length > 0 ? "missingCounts" : "closeToNewCane", {
      ...facts,
      ...weakestPoint(cordon, vine, inUse, rules),
    });
  const code = missing.length > 0 ? "missingCounts" : "closeCall";
  const gains = { mine: trunkGain(own, rules.twoTrunks), theirs: trunkGain(against, rules.twoTrunks) };
  return { ...comparedReason(code, cordon, rival, gains, weighed, acrossOf(own, place)), facts };
}

/** The best plan with one side exchanged. */
function exchanged(best: VinePlan, place: Place, plan: SidePlan): VinePlan {
  return { ...best, [place]: plan };
}

function acrossOf(plan: VinePlan, place: Place): SidePlan | undefined {
  return place === "first" ? plan.second : plan.first;
}

/** The cordons across the vine that the two plans go with, where those differ. */
function partners(own: VinePlan, against: VinePlan, place: Place): Reason["facts"] {
  const mine = acrossOf(own, place)?.keeps;
  const theirs = acrossOf(against, place)?.keeps;
  return mine === undefined || theirs === undefined || mine === theirs
    ? {}
    : { mineWith: mine.candidate.cordon, theirsWith: theirs.candidate.cordon };
}

/**
 * What is still to be written down about the cordons in which two plans differ, and about their trunks: part and
 * cordon, as "stretch A".
 */
function missingOf(own: VinePlan, against: VinePlan): string[] {
  const missing = new Set<string>();
  for (const place of ["first", "second"] as const)
    for (const keeps of [own[place]?.keeps, against[place]?.keeps]) {
      if (keeps === undefined) continue;
      const { candidate, score } = keeps;
      if (own[place] !== against[place])
        score.missing.forEach((part) => missing.add(`${part} ${candidate.cordon}`));
      if (candidate.trunk === undefined) missing.add(`trunk ${candidate.cordon}`);
    }
  return [...missing];
}

function comparedReason(
  code: ReasonCode,
  cordon: WeighedCordon,
  rival: WeighedCordon,
  gains: { readonly mine: number; readonly theirs: number },
  { vine, inUse, rules }: WeighedVine,
  across: SidePlan | undefined,
): Reason {
  const { mine, theirs } = compareCordons(cordon, rival, gains, vine.training, inUse, rules, {
    ...(vine.sideLength === undefined ? {} : { sideLength: vine.sideLength }),
    besideCane: across !== undefined && across.keeps === undefined,
  });
  return { code, rival: rival.candidate.cordon, mine, theirs, facts: {} };
}

function strengths({ candidate }: WeighedCordon): Reason["facts"] {
  const spurs = liveSpursOf(candidate);
  return {
    ...(spurs === undefined ? {} : { spurs }),
    ...(candidate.longestGap === undefined ? {} : { gap: candidate.longestGap }),
  };
}
