import { wordKey } from "../sheets/words";

const TOTAL_WORD =
  /^((sub|grand)[ -]?)?(totals?|sous-total)\b:?|^(sum|suma|somme|average|mean|promedio|media|moyenne)(?=$|:| (of|de|del|des|du|par|por|per|row|block|hilera|rang|\d))|\b(sub)?totals?:?$/;

/** True for the label of a line that adds up others: "Total", "Row 3 total". */
export function isTotalWord(text: string): boolean {
  return TOTAL_WORD.test(wordKey(text));
}

/** True where the label is a word for a sum and nothing else. */
export function startsAsTotal(text: string): boolean {
  const label = wordKey(text);
  return TOTAL_WORD.exec(label)?.[0] === label;
}

const WHOLE_WORD = /^(all|every|both|total|totals|sum|todos?|todas?|ambos|suma|tous|toutes?|les deux|somme)$/;

/** True for a word that stands where one of many is named, and means them all. */
export function meansAll(text: string): boolean {
  return WHOLE_WORD.test(wordKey(text));
}
