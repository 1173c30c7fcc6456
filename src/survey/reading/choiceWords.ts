import type { Column } from "../sheets/column";
import { wordKey } from "../sheets/words";
import { LANGUAGES } from "../../texts/language";

const wordsOfChoices = new WeakMap<Column, Map<string, number>>();

/** Index of every accepted word of a choice column, without accents. */
function choiceWords(column: Column): Map<string, number> {
  let words = wordsOfChoices.get(column);
  if (!words) {
    const choices = column.choices ?? [];
    words = new Map(
      choices.flatMap((choice, index) =>
        [choice.id, ...LANGUAGES.map((language) => choice.word[language]), ...(choice.also ?? [])].map(
          (word) => [choiceKey(word), index] as const,
        ),
      ),
    );
    wordsOfChoices.set(column, words);
  }
  return words;
}

function choiceKey(word: string): string {
  return wordKey(word.normalize("NFD").replace(/[\u0300-\u036f]/g, ""))
    .replace(/\./g, "")
    .trim();
}

/** Words beside a side that say nothing: "left arm", "brazo izquierdo". */
const BESIDE_SIDE = /-?\b(arms?|sides?|hands?|cordons?|brazos?|lados?|manos?|bras|cotes?)\b/g;

/** Index of the choice that a word means; undefined for a word that is none of them. */
export function choiceOf(column: Column, word: string): number | undefined {
  const known = choiceWords(column);
  const key = choiceKey(word);
  const found = known.get(key);
  if (found !== undefined || column.id !== "side") return found;
  return known.get(key.replace(BESIDE_SIDE, " ").replace(/\s+/g, " ").trim());
}
