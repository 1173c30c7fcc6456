import type { CaneToLay } from "../../../domain/renewal/caneToLay";
import type { CordonRenewal } from "../../../domain/renewal/cordonRenewal";
import type { TrunkRenewal } from "../../../domain/renewal/trunkRenewal";
import type { UnitSystem } from "../../../domain/units";
import { say, type Language } from "../../../texts/language";
import { CANE_WANTED, CORDON_RENEWAL, RENEWAL_TRIGGERS, TRUNK_RENEWAL } from "../../../texts/renewal";
import { lengthWords } from "../choice/lengthWords";

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
  const facts = { ...renewal, live: liveTrunks, wanted };
  const sentences = [say(TRUNK_RENEWAL[renewal.urgency], language, facts)];
  if (renewal.takeOut.length > 0) sentences.push(say(TRUNK_RENEWAL.takeOut, language, facts));
  return sentences.join(" ");
}

/**
 * What a cordon that stays needs: nothing, to be extended, or to be renewed and why.
 *
 * @example
 * cordonRenewalSentence({ action: "replace", triggers: ["deadArea"] }, "B", "en", "US") // "Renew B (a dead area): lay a cane that starts nearer the head than the dead stretch."
 */
export function cordonRenewalSentence(
  renewal: CordonRenewal,
  cordon: string,
  language: Language,
  unitSystem: UnitSystem,
): string {
  return say(CORDON_RENEWAL[renewal.action], language, {
    cordon,
    length: renewal.toExtend === undefined ? "" : lengthWords(renewal.toExtend, language, unitSystem),
    triggers: renewal.triggers.map((trigger) => RENEWAL_TRIGGERS[trigger][language]),
  });
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
