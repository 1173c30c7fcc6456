import type { Cut, SideDecision, VineNote } from "../../../domain/choice/vineDecision";
import { COUNT_WORDS, CUT_LINES, SIDE_LINES, VINE_NOTES } from "../../../texts/choice";
import { say, type Language } from "../../../texts/language";
import { caneOriginWords, sideWords } from "./reasonSentence";

/**
 * What is done on one side: what stays, or where a cane comes from.
 *
 * @example
 * sideSentence({ side: "left", cordon: "A", ask: false }, "en") // "A stays on the left."
 * sideSentence({ side: "right", ask: false, layCaneFrom: 2 }, "en") // "Lay a cane on the right from trunk 2."
 */
export function sideSentence(side: SideDecision, language: Language): string {
  const at = sideWords(side.side, language);
  if (side.cordon !== undefined)
    return say(SIDE_LINES[side.ask ? "ask" : "stays"], language, { cordon: side.cordon, at });
  const from = caneOriginWords(side.layCaneFrom ?? "head", language);
  return say(SIDE_LINES[side.ask ? "layAsk" : "lay"], language, { at, from });
}

/**
 * One cut, from the outer end towards the trunk.
 *
 * @example
 * cutSentence({ side: "left", cordon: "B", trunk: 1, backTo: "head", keepCane: false }, "en") // "Cut B on the left from the outer end back to the head."
 */
export function cutSentence(cut: Cut, language: Language): string {
  const line = cut.backTo === "trunk" ? "trunk" : cut.keepCane ? "keepCane" : "head";
  return say(CUT_LINES[line], language, {
    cordon: cut.cordon,
    at: sideWords(cut.side, language),
    trunk: cut.trunk ?? "",
  });
}

/**
 * What holds for the vine as a whole.
 *
 * @example
 * vineNoteSentence({ code: "oneTrunk", facts: {} }, "en") // "This vine has one live trunk; bring up a second."
 */
export function vineNoteSentence({ code, facts }: VineNote, language: Language): string {
  const parts = facts.parts;
  return say(VINE_NOTES[code], language, {
    ...facts,
    at: sideWords(String(facts.side ?? ""), language),
    parts: Array.isArray(parts) ? parts.map((part) => COUNT_WORDS[String(part)][language]) : "",
  });
}
