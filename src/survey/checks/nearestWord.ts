import { distance } from "fastest-levenshtein";
import { wordKey } from "../sheets/words";

/**
 * The one of `names` that differs least from `word` in letters; undefined when even that differs by more than a third
 * of its letters, or two names are equally near.
 *
 * @example
 * nearestWord("North Bnech", ["North Bench", "Creek Side"]) // "North Bench"
 */
export function nearestWord(word: string, names: readonly string[]): string | undefined {
  const ranked = names
    .map((name) => ({ name, letters: distance(wordKey(word), wordKey(name)) }))
    .sort((a, b) => a.letters - b.letters);
  const [best, second] = ranked;
  if (!best || best.letters > Math.max(1, best.name.length / 3)) return undefined;
  return second?.letters === best.letters ? undefined : best.name;
}
