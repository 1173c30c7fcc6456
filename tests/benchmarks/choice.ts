import { randomSource } from "../../sample-workbooks/make/randomSource";
import type { CandidateCordon, VineToDecide } from "../../src/domain/choice/candidateCordon";
import { chooseCordons } from "../../src/domain/choice/chooseCordons";
import { metres } from "../../src/domain/units";
import { choiceRules } from "../../src/survey/decide/choice/choiceRules";
import { reasonSentence } from "../../src/survey/decide/choice/reasonSentence";
import { defaultSettings } from "../../src/survey/settings/settings";
import { median, timed } from "./timed";

const VINES = 100_000;
const RUNS = 5;
const rules = choiceRules(defaultSettings());

/** Decides 100,000 vines of two to five candidates and compares it with a bare loop over the same pairs. */
export function run(): void {
  const vines = makeVines();
  const pairs = vines.reduce((sum, { candidates }) => {
    const left = candidates.filter(({ side }) => side === "left").length;
    return sum + (left + 2) * (candidates.length - left + 2);
  }, 0);
  const bare: number[] = [];
  const choice: number[] = [];
  const sentences: number[] = [];
  let check = 0;
  for (let round = 0; round < RUNS; round++) {
    bare.push(timed(() => (check += bareLoop(vines))));
    choice.push(timed(() => vines.forEach((vine) => (check += chooseCordons(vine, rules).worth))));
  }
  sentences.push(
    timed(() =>
      vines.forEach((vine) =>
        chooseCordons(vine, rules).cordons.forEach(
          (cordon) => (check += reasonSentence(cordon, "en", "US").length),
        ),
      ),
    ),
  );
  const [loop, decided, told] = [bare, choice, sentences].map(median);
  console.log(`${VINES} vines, ${pairs} pairs of plans (check ${check.toFixed(0)})`);
  console.log(`bare loop over the pairs:           ${loop.toFixed(0)} ms`);
  console.log(
    `chooseCordons:                      ${decided.toFixed(0)} ms, ${(decided / loop).toFixed(1)} x`,
  );
  console.log(`chooseCordons with every sentence:  ${told.toFixed(0)} ms, ${(told / loop).toFixed(1)} x`);
}

function makeVines(): VineToDecide[] {
  const random = randomSource(7);
  const { whole } = random;
  const candidate = (side: string, index: number): CandidateCordon => {
    const spurs = whole(2, 10);
    const down = whole(0, spurs);
    return {
      side,
      cordon: String.fromCharCode(65 + index),
      trunk: whole(1, 2),
      length: metres(1),
      positions: 10,
      liveSpurs: spurs,
      longestGap: whole(0, 10 - spurs),
      spursDown: down,
      spursLevel: 0,
      spursUp: spurs - down,
      diameter: metres(0.02),
      condition: random.chance(0.9) ? "sound" : "injured",
    };
  };
  return Array.from({ length: VINES }, () => {
    const left = whole(1, 3);
    const right = whole(1, 2);
    return {
      training: "highWire" as const,
      sideLength: metres(1),
      candidates: Array.from({ length: left + right }, (_, index) =>
        candidate(index < left ? "left" : "right", index),
      ),
    };
  });
}

/** The arithmetic alone: scores, every pair of plans, the best; no bounds, no reasons, no cut list. */
function bareLoop(vines: readonly VineToDecide[]): number {
  const { weights, spurWorth, longestStretch, newCane, twoTrunks, spurSpacing } = rules;
  const worth = spurWorth.highWire;
  let sum = 0;
  for (const { candidates, sideLength } of vines) {
    const left: [number, number][] = [];
    const right: [number, number][] = [];
    const trunks = new Set<number>();
    for (const one of candidates) {
      const carry = Math.max(one.length!, sideLength!) / spurSpacing;
      const score =
        weights.spurs * Math.min(1, one.liveSpurs! / carry) +
        weights.stretch * Math.max(0, 1 - one.longestGap! / longestStretch) +
        (weights.placing * (worth.down * one.spursDown! + worth.up * one.spursUp!)) / one.liveSpurs! +
        weights.soundness * (one.condition === "sound" ? 1 : rules.injuredSoundness) +
        weights.diameter;
      trunks.add(one.trunk!);
      (one.side === "left" ? left : right).push([score, one.trunk!]);
    }
    for (const trunk of trunks) {
      left.push([newCane, trunk]);
      right.push([newCane, trunk]);
    }
    let best = -Infinity;
    for (const [one, oneTrunk] of left)
      for (const [two, twoTrunk] of right)
        best = Math.max(best, one + two + (oneTrunk === twoTrunk ? 0 : twoTrunks));
    sum += best;
  }
  return sum;
}
