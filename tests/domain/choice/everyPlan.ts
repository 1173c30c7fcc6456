import type { CandidateCordon, Condition, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { ChoiceRules } from "../../../src/domain/choice/choiceRules";
import { cordonParts } from "../../../src/domain/choice/cordonParts";

/** One way to decide a vine with two sides. */
export interface Plan {
  /** Cordon that stays on the left and on the right; undefined where a cane is laid. */
  readonly stays: readonly (string | undefined)[];
  readonly worth: number;
}

const GRAVITY: readonly Condition[] = ["sound", "injured", "diseased", "dead"];
const PARTS = ["spurs", "stretch", "placing", "soundness", "diameter"] as const;

/**
 * Every plan of a vine with left and right, written out from the rules in words and shared with no code of the choice
 * but the parts of a single cordon. Missing parts and trunks take what `fill` draws, between 0 and 1.
 */
export function everyPlan(vine: VineToDecide, rules: ChoiceRules, fill: () => number = () => NaN): Plan[] {
  const young = vine.status === "young" || vine.status === "replanted";
  const all = vine.candidates;
  const parts = all.map((one) => cordonParts(one, vine.training, rules, young ? undefined : vine.sideLength));
  const used = PARTS.filter((part) => parts.some((of) => !(of[part].low === 0 && of[part].high === 1)));
  const total = used.reduce((sum, part) => sum + rules.weights[part], 0);
  const scores = parts.map((of) => {
    if (total === 0) return fill();
    let sum = 0;
    for (const part of used) {
      const { low, high } = of[part];
      sum += rules.weights[part] * (low === high ? low : low + fill() * (high - low));
    }
    return sum / total;
  });

  const trunkNumbers = [...new Set(all.flatMap(({ trunk }) => (trunk === undefined ? [] : [trunk])))];
  const conditionOf = (trunk: number) => {
    const noted = all.filter((one) => one.trunk === trunk).flatMap((one) => one.trunkCondition ?? []);
    return noted.length ? GRAVITY[Math.max(...noted.map((one) => GRAVITY.indexOf(one)))] : undefined;
  };
  const isLive = (trunk: number) => {
    const condition = conditionOf(trunk);
    if (condition) return condition !== "dead";
    return all.some((one) => one.trunk === trunk && one.condition !== "dead");
  };
  const costOf = (condition: Condition | undefined) =>
    condition === "injured" ? rules.injuredTrunk : condition === "diseased" ? rules.diseasedTrunk : 0;
  const own = (one: CandidateCordon) =>
    one.trunk === undefined ? one.trunkCondition : conditionOf(one.trunk);
  const out = (one: CandidateCordon) =>
    one.fixedChoice !== "stays" &&
    (one.fixedChoice === "goes" ||
      one.condition === "dead" ||
      own(one) === "dead" ||
      (!young && one.length !== undefined && one.length < rules.shortestCordon));

  const limitOf = (one: CandidateCordon) => {
    const places =
      one.positions ?? (one.length === undefined ? 0 : Math.round(one.length / rules.spurSpacing));
    if (young || places === 0) return Infinity;
    const ways = [one.spursDown, one.spursLevel, one.spursUp];
    const sum = ways.includes(undefined) ? undefined : ways.reduce((all: number, way) => all + way!, 0);
    const spurs = one.liveSpurs ?? sum;
    const empty = spurs === undefined ? undefined : Math.max(0, places - spurs);
    const gap = one.longestGap ?? gapDrawn(one, empty, spurs);
    if (gap / places < rules.renewingShare) return Infinity;
    return rules.newCane - Math.max(0, (empty ?? gap) - gap) / places;
  };
  const drawn = new Map<CandidateCordon, number>();
  const gapDrawn = (one: CandidateCordon, empty: number | undefined, spurs: number | undefined) => {
    if (empty === undefined) return 0;
    if (!drawn.has(one)) {
      const least = Math.ceil(empty / (spurs! + 1));
      drawn.set(one, least + Math.floor(fill() * (empty - least + 0.999)));
    }
    return drawn.get(one)!;
  };
  interface Option {
    readonly cordon?: string;
    readonly trunk: number | string | undefined;
    readonly worth: number;
  }
  const live = trunkNumbers.filter(isLive);
  const bare = (vine.liveTrunks ?? 0) > live.length;
  const leastCost = bare ? 0 : Math.min(...live.map((trunk) => costOf(conditionOf(trunk))));
  const soundest = live.filter((trunk) => costOf(conditionOf(trunk)) === leastCost);
  const canes: Option[] = soundest.map((trunk) => ({
    trunk,
    worth: rules.newCane - costOf(conditionOf(trunk)),
  }));
  if (bare) canes.push({ trunk: "other", worth: rules.newCane });
  if (canes.length === 0) canes.push({ trunk: "none", worth: rules.newCane });

  const optionsOf = (side: string): Option[] => {
    const here = all.map((one, index) => ({ one, index })).filter(({ one }) => one.side === side);
    const keep = ({ one, index }: (typeof here)[number]): Option => ({
      cordon: one.cordon,
      trunk: one.trunk,
      worth: Math.min(scores[index], limitOf(one)) - costOf(own(one)),
    });
    const fixed = here.filter(({ one }) => one.fixedChoice === "stays");
    if (fixed.length) return fixed.map(keep);
    const free = here.filter(({ one }) => !out(one)).map(keep);
    return young && free.length ? free : [...free, ...canes];
  };
  const gains = new Map<string, number>();
  const gain = (one: Option, two: Option) => {
    if (one.trunk === "none" || two.trunk === "none") return 0;
    if (one.trunk !== undefined && two.trunk !== undefined)
      return one.trunk === two.trunk ? 0 : rules.twoTrunks;
    const unknown = `${one.cordon ?? one.trunk}/${two.cordon ?? two.trunk}`;
    if (!gains.has(unknown)) gains.set(unknown, fill() < 0.5 ? 0 : rules.twoTrunks);
    return gains.get(unknown)!;
  };
  return optionsOf("left").flatMap((left) =>
    optionsOf("right").map((right) => ({
      stays: [left.cordon, right.cordon],
      worth: left.worth + right.worth + gain(left, right),
    })),
  );
}
