import type { CaneToLay } from "../../../domain/renewal/caneToLay";
import { renewalWork, type CordonRenewal } from "../../../domain/renewal/cordonRenewal";
import type { VinePlan } from "../../../domain/plan/vinePlan";
import type { DueTrunk } from "../../../domain/renewal/dueTrunks";
import type { TrunkRenewal } from "../../../domain/renewal/trunkRenewal";
import type { Metres, UnitSystem } from "../../../domain/units";
import { say, type Language } from "../../../texts/language";
import {
  CANE_WANTED,
  CORDON_RENEWAL,
  RENEWAL_COUNTS,
  RENEWAL_TRIGGERS,
  TRUNK_RENEWAL,
} from "../../../texts/renewal";
import { lengthWords } from "../choice/lengthWords";
import { youngVineSentences } from "./youngVineSentence";

/**
 * What is to be done about a vine's trunks.
 *
 * @example
 * trunkRenewalSentence({ bringUp: 1, takeOut: [], replace: [], urgency: "oneTrunk" }, 1, 2, "en") // "One live trunk: bring up 1 more from a sucker."
 */
export function trunkRenewalSentence(
  renewal: TrunkRenewal,
  liveTrunks: number,
  wanted: number,
  language: Language,
): string {
  const { due = [], ...trunks } = renewal;
  const facts = { ...trunks, live: liveTrunks, wanted };
  const urgency =
    renewal.urgency === "trunkDue" ? [] : [say(TRUNK_RENEWAL[renewal.urgency], language, facts)];
  const sentences = [...urgency, ...dueSentences(due, language)];
  if (renewal.takeOut.length > 0) sentences.push(say(TRUNK_RENEWAL.takeOut, language, facts));
  return sentences.join(" ");
}

/**
 * What is kept for each trunk that is due by its age.
 *
 * @example
 * dueSentences([{ trunk: 2, age: 11 }], "en") // ["Trunk 2 has stood 11 years: keep a shoot low on it or a sucker in its place, and take it out when that is 2 to 3 years old."]
 */
export function dueSentences(due: readonly DueTrunk[], language: Language): string[] {
  return due.map(({ trunk, age, renewalStands }) =>
    say(TRUNK_RENEWAL[renewalStands ? "dueStands" : "due"], language, { trunk, age }),
  );
}

/**
 * What a cordon that stays needs, a sentence each: nothing where it needs nothing.
 *
 * @example
 * cordonRenewalSentences({ action: "replace", triggers: ["deadArea"], wanted: [] }, "B", "en", "US") // ["Renew B (a dead area): lay a cane that starts nearer the head than the dead stretch."]
 * cordonRenewalSentences({ action: "keep", triggers: [], wanted: [], gap: { from: 3, places: 2 } }, "B", "en", "US") // ["B: leave the spur on either side of its gap of 2 places (3 places from the head) a node longer, within the nodes of the vine."]
 */
export function cordonRenewalSentences(
  renewal: CordonRenewal,
  cordon: string,
  language: Language,
  unitSystem: UnitSystem,
): string[] {
  const { triggers, toExtend, gap, spurHeight, wanted } = renewal;
  const words = (length: Metres | undefined) =>
    length === undefined ? "" : lengthWords(length, language, unitSystem);
  const facts = {
    cordon,
    length: words(toExtend),
    height: words(spurHeight),
    triggers: triggers.map((trigger) => RENEWAL_TRIGGERS[trigger][language]),
    counts: wanted.map((count) => RENEWAL_COUNTS[count][language]),
    ...gap,
  };
  const lines: readonly string[] = [...renewalWork(renewal), ...(wanted.length > 0 ? ["wanted"] : [])];
  return lines.map((line) => say(CORDON_RENEWAL[line], language, facts));
}

/**
 * What each cordon that stays needs, for one that a person is asked about the count that would tell, what is kept for a
 * trunk that is due by its age, and before them what is left on a vine that is still being built up.
 */
export function renewalSentences(plan: VinePlan, language: Language, unitSystem: UnitSystem): string[] {
  const cordons = plan.keeps.flatMap(({ ask, cordon, renewal }) => {
    if (!ask) return cordonRenewalSentences(renewal, cordon, language, unitSystem);
    return renewal.wanted.includes("gapFrom")
      ? [say(CORDON_RENEWAL.wantedToKeep, language, { cordon, count: RENEWAL_COUNTS.gapFrom[language] })]
      : [];
  });
  return [
    ...(plan.young ? youngVineSentences(plan.young, language) : []),
    ...cordons,
    ...dueSentences(plan.dueTrunks ?? [], language),
  ];
}

/**
 * The cane to look for where one is laid; "" where the wire to fill is not known.
 *
 * @example
 * caneSentence({ leastDiameter: 0.0103, mostDiameter: 0.0127, length: 1.016 }, "en", "US") // "Cane wanted: 0.41 in to 0.5 in thick, thick enough over 40 in; the outer half of a cane is thin and weak, so fill the wire in stages."
 */
export function caneSentence(cane: CaneToLay, language: Language, unitSystem: UnitSystem): string {
  if (cane.length === undefined) return "";
  return say(CANE_WANTED, language, {
    least: lengthWords(cane.leastDiameter, language, unitSystem),
    most: lengthWords(cane.mostDiameter, language, unitSystem),
    length: lengthWords(cane.length, language, unitSystem),
  });
}
