import type { PlannedCane, PlannedCut, PlannedKeep, VinePlan } from "../../../domain/plan/vinePlan";
import type { VineNote } from "../../../domain/choice/vineDecision";
import { COUNT_WORDS, CUT_LINES, SIDE_LINES, VINE_NOTES } from "../../../texts/choice";
import { say, type Language } from "../../../texts/language";
import { caneOriginWords, sideWords } from "./reasonSentence";

const FIRST_SIDES = ["left", "north", "east"];

/** What is done on each side of a vine, left before right: what stays, and where a cane is laid from. */
export function sideSentences({ keeps, canes }: VinePlan, language: Language): string[] {
  return [
    ...keeps.map((keep) => ({ side: keep.side, words: keepSentence(keep, language) })),
    ...canes.map((cane) => ({ side: cane.side, words: laySentence(cane, language) })),
  ]
    .sort((one, other) => sideOrder(one.side) - sideOrder(other.side))
    .map(({ words }) => words);
}

function sideOrder(side: string): number {
  return FIRST_SIDES.includes(side) ? 0 : 1;
}

/**
 * What stays on a side.
 *
 * @example
 * keepSentence({ side: "left", cordon: "A", ask: false, against: [], renewal: { action: "keep", triggers: [], wanted: [] } }, "en") // "A stays on the left."
 */
export function keepSentence({ side, cordon, ask }: PlannedKeep, language: Language): string {
  return say(SIDE_LINES[ask ? "ask" : "stays"], language, { cordon, at: sideWords(side, language) });
}

/**
 * Where a cane is laid, from which trunk and of which cordon.
 *
 * @example
 * laySentence({ side: "right", ask: false, from: 2 }, "en") // "Lay a cane on the right from trunk 2."
 * laySentence({ side: "right", ask: false, from: 2, later: true, source: { side: "left", cordon: "B" } }, "en") // "No cane on the right can be laid this winter: none was counted near the head on B. Keep a renewal spur at the head of B and lay its cane next winter."
 * laySentence({ side: "right", ask: false, from: 2, source: { side: "left", cordon: "B" } }, "en") // "Lay a cane on the right from trunk 2: a good cane of B, near the head."
 */
export function laySentence({ side, from, source, later, ask }: PlannedCane, language: Language): string {
  const line = later ? "layLater" : source ? (ask ? "layOfAsk" : "layOf") : ask ? "layAsk" : "lay";
  return say(SIDE_LINES[line], language, {
    at: sideWords(side, language),
    from: caneOriginWords(from, language),
    source: source?.cordon ?? "",
  });
}

/**
 * One cut, from the outer end towards the trunk.
 *
 * @example
 * cutSentence({ side: "left", cordon: "B", trunk: 1, backTo: "head", renews: [] }, "en") // "Cut B on the left from the outer end back to the head."
 */
export function cutSentence(cut: PlannedCut, language: Language): string {
  const line = cut.backTo === "cane" ? (cut.renews.length > 0 ? "renewing" : "keepCane") : cut.backTo;
  return say(CUT_LINES[line], language, {
    cordon: cut.cordon,
    at: sideWords(cut.side, language),
    trunk: cut.trunk ?? "",
    renews: cut.renews,
  });
}

/**
 * What holds for the vine as a whole.
 *
 * @example
 * vineNoteSentence({ code: "oneTrunk", facts: {} }, "en") // "One live trunk is written down for this vine; bring up a second."
 */
export function vineNoteSentence({ code, facts }: VineNote, language: Language): string {
  const parts = facts.parts;
  return say(VINE_NOTES[code], language, {
    ...facts,
    at: sideWords(String(facts.side ?? ""), language),
    parts: Array.isArray(parts) ? parts.map((part) => COUNT_WORDS[String(part)][language]) : "",
  });
}
