import type { CandidateCordon, VineToDecide } from "./candidateCordon";
import type { ChoiceRules, ScorePart } from "./choiceRules";
import { chooseCordons } from "./chooseCordons";
import { liveSpursOf } from "./liveSpurs";

/** A count or a figure of the Settings sheet that would turn the decision of a vine, were it another. */
export type Turn =
  | {
      readonly kind: "count";
      readonly side: string;
      readonly cordon: string;
      readonly count: "liveSpurs" | "longestGap";
      readonly from: number;
      readonly to: number;
    }
  | {
      readonly kind: "figure";
      readonly figure: ScorePart | "twoTrunks" | "newCane" | "injuredTrunk" | "diseasedTrunk";
      readonly from: number;
      readonly to: number;
    };

const MOST_STEPS = 5;
const FIGURE_STEPS = 20;

/**
 * What the decision of a vine hangs on: for each count the nearest other count, up to five away, with which another
 * cordon would stay, and for each weight and worth the nearest figure between 0 and 1. A count or figure that turns
 * nothing is left out. Counts come before figures, the nearest first.
 *
 * @param vine as in chooseCordons; a changed spur count keeps its directions as they are and fits the gap
 * @example
 * whatWouldTurn(
 *   { candidates: [
 *     { side: "left", cordon: "A", trunk: 1, length: 1, liveSpurs: 8, longestGap: 1 },
 *     { side: "left", cordon: "B", trunk: 1, length: 1, liveSpurs: 6, longestGap: 1 },
 *   ] },
 *   {
 *     weights: { spurs: 0.5, stretch: 0.5, placing: 0, soundness: 0, diameter: 0 },
 *     spurSpacing: 0.1, longestStretch: 5, twoTrunks: 0.15, newCane: 0.5, injuredTrunk: 0.1, diseasedTrunk: 0.2,
 *     shortestCordon: 0.3, closeCall: 0.05, sidesWanted: 2,
 *   },
 * )[0] // {"kind": "count", "side": "left", "cordon": "A", "count": "longestGap", "from": 1, "to": 2}
 */
export function whatWouldTurn(vine: VineToDecide, rules: ChoiceRules): Turn[] {
  const now = stayingKey(vine, rules);
  const turns = (changed: VineToDecide, with_: ChoiceRules) => stayingKey(changed, with_) !== now;
  const found: Turn[] = [];
  vine.candidates.forEach((candidate, index) => {
    for (const count of ["liveSpurs", "longestGap"] as const) {
      const from = count === "liveSpurs" ? liveSpursOf(candidate) : candidate.longestGap;
      if (from === undefined) continue;
      const to = nearestCount(from, (value) => turns(withCounts(vine, index, { [count]: value }), rules));
      if (to !== undefined)
        found.push({ kind: "count", side: candidate.side, cordon: candidate.cordon, count, from, to });
    }
  });
  for (const figure of [...WEIGHTS, ...WORTHS]) {
    const from = figureOf(rules, figure);
    const to = nearestFigure(from, (value) => turns(vine, withFigure(rules, figure, value)));
    if (to !== undefined) found.push({ kind: "figure", figure, from, to });
  }
  const distance = (turn: Turn) =>
    (turn.kind === "count" ? 0 : MOST_STEPS + 1) + Math.abs(turn.to - turn.from);
  return found.sort((first, second) => distance(first) - distance(second));
}

/** What stays on each side: the proposal, whether it is a close call or not. */
export function stayingKey(vine: VineToDecide, rules: ChoiceRules): string {
  return chooseCordons(vine, rules)
    .sides.map(({ side, cordon }) => `${side}:${cordon ?? ""}`)
    .join("|");
}

/**
 * The vine with some counts of one candidate changed; the longest gap is held within the places that are then empty.
 *
 * @example
 * withCounts({ candidates: [{ positions: 10, liveSpurs: 8, longestGap: 2 }] }, 0, { liveSpurs: 9 }).candidates[0].longestGap // 1
 */
export function withCounts(
  vine: VineToDecide,
  index: number,
  counts: Partial<Pick<CandidateCordon, "liveSpurs" | "longestGap" | "spursDown" | "spursUp">>,
): VineToDecide {
  const candidates = vine.candidates.map((candidate, at) =>
    at === index ? fitting({ ...candidate, ...counts }) : candidate,
  );
  return { ...vine, candidates };
}

/** Directions never add up to more than the live spurs, the gap never to more than the empty places. */
function fitting(candidate: CandidateCordon): CandidateCordon {
  const live = liveSpursOf(candidate);
  if (live === undefined) return candidate;
  const fit: { -readonly [Key in keyof CandidateCordon]: CandidateCordon[Key] } = { ...candidate };
  let over = (fit.spursDown ?? 0) + (fit.spursLevel ?? 0) + (fit.spursUp ?? 0) - live;
  for (const way of ["spursLevel", "spursDown", "spursUp"] as const) {
    const less = Math.min(Math.max(0, over), fit[way] ?? 0);
    if (less > 0) fit[way] = fit[way]! - less;
    over -= less;
  }
  if (fit.longestGap !== undefined && fit.positions !== undefined)
    fit.longestGap = Math.min(fit.longestGap, Math.max(0, fit.positions - live));
  return fit;
}

function nearestCount(from: number, turns: (value: number) => boolean): number | undefined {
  for (let step = 1; step <= MOST_STEPS; step++)
    for (const value of [from - step, from + step]) if (value >= 0 && turns(value)) return value;
  return undefined;
}

const WEIGHTS = ["spurs", "stretch", "placing", "soundness", "diameter"] as const;
const WORTHS = ["twoTrunks", "newCane", "injuredTrunk", "diseasedTrunk"] as const;
type Figure = (typeof WEIGHTS)[number] | (typeof WORTHS)[number];

function isWeight(figure: Figure): figure is ScorePart {
  return (WEIGHTS as readonly string[]).includes(figure);
}

function figureOf(rules: ChoiceRules, figure: Figure): number {
  return isWeight(figure) ? rules.weights[figure] : rules[figure];
}

function withFigure(rules: ChoiceRules, figure: Figure, value: number): ChoiceRules {
  return isWeight(figure)
    ? { ...rules, weights: { ...rules.weights, [figure]: value } }
    : { ...rules, [figure]: value };
}

/** The nearest of the hundredths between 0 and 1 that turns the decision; steps of a twentieth find where to look. */
function nearestFigure(from: number, turns: (value: number) => boolean): number | undefined {
  for (let step = 1; step <= FIGURE_STEPS; step++)
    for (const sign of [-1, 1]) {
      const at = (hundredths: number) => clamped(from + (sign * hundredths) / 100);
      const [nearer, farther] = [5 * (step - 1), 5 * step];
      if (at(farther) === at(nearer) || !turns(at(farther))) continue;
      let fine = nearer + 1;
      while (fine < farther && !turns(at(fine))) fine++;
      return Math.round(at(fine) * 1e6) / 1e6;
    }
  return undefined;
}

function clamped(value: number): number {
  return Math.min(1, Math.max(0, value));
}
