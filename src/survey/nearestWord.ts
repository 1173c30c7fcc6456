import { wordKey } from "./words";

/**
 * The one of `names` that differs least from `word` by letters typed wrong, left out, added or swapped; undefined when
 * even that differs by more than a third of its letters, or two names are equally near.
 *
 * @example
 * nearestWord("North Bnech", ["North Bench", "Creek Side"]) // "North Bench"
 */
export function nearestWord(word: string, names: readonly string[]): string | undefined {
  const ranked = names
    .map((name) => ({ name, slips: slipsBetween(wordKey(word), wordKey(name)) }))
    .sort((a, b) => a.slips - b.slips);
  const [best, second] = ranked;
  if (!best || best.slips > Math.max(1, best.name.length / 3)) return undefined;
  return second?.slips === best.slips ? undefined : best.name;
}

/** Damerau's distance: insertions, deletions, substitutions and swaps of neighbours (F. J. Damerau 1964). */
function slipsBetween(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    rows.push([i]);
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let slips = Math.min(rows[i - 1][j] + 1, rows[i][j - 1] + 1, rows[i - 1][j - 1] + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        slips = Math.min(slips, rows[i - 2][j - 2] + 1);
      rows[i].push(slips);
    }
  }
  return rows[a.length][b.length];
}
