import type { TrunkRenewal } from "../../domain/renewal/trunkRenewal";
import { say, type Language } from "../../texts/language";
import { TRUNK_RENEWAL } from "../../texts/renewal";

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
