import { distance } from "fastest-levenshtein";
import { wordKey } from "../sheets/words";

/**
 * The one of `names` that differs least from `word` in letters; undefined when even that differs by more than a third
 * of its letters, or two names are equally near. Initials mean the one name that they are those of.
 *
 * @example
 * nearestWord("North Bnech", ["North Bench", "Creek Side"]) // "North Bench"
 * @example
 * nearestWord("NB", ["North Bench", "Creek Side"]) // "North Bench"
 */
export function nearestWord(word: string, names: readonly string[]): string | undefined {
  const shortened = names.filter((name) => /\s/.test(name.trim()) && initials(name) === wordKey(word));
  if (shortened.length === 1) return shortened[0];
  const ranked = names
    .map((name) => ({ name, letters: distance(wordKey(word), wordKey(name)) }))
    .sort((a, b) => a.letters - b.letters);
  const [best, second] = ranked;
  if (!best || best.letters > Math.max(1, best.name.length / 3)) return undefined;
  return second?.letters === best.letters ? undefined : best.name;
}

function initials(name: string): string {
  return wordKey(name)
    .split(/[\s-]+/)
    .map((part) => part.charAt(0))
    .join("");
}
