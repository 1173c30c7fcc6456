/**
 * Positions of the numbers that do not belong to the longest part that only rises, or only falls.
 *
 * @param strictly whether equal numbers break the order
 *
 * @example
 * positionsOutOfOrder([1, 2, 9, 3, 4], true) // [2]
 */
export function positionsOutOfOrder(numbers: readonly number[], strictly: boolean): number[] {
  if (numbers.length < 3 || isInOrder(numbers, strictly)) return [];
  const rising = longestRise(numbers, strictly);
  const falling = longestRise(
    numbers.map((number) => -number),
    strictly,
  );
  const kept = new Set(rising.length >= falling.length ? rising : falling);
  return numbers.map((_, at) => at).filter((at) => !kept.has(at));
}

/** Whether the numbers only rise, or only fall. */
function isInOrder(numbers: readonly number[], strictly: boolean): boolean {
  let rises = true;
  let falls = true;
  for (let at = 1; at < numbers.length && (rises || falls); at++) {
    const step = numbers[at] - numbers[at - 1];
    rises &&= strictly ? step > 0 : step >= 0;
    falls &&= strictly ? step < 0 : step <= 0;
  }
  return rises || falls;
}

/** Positions of the longest rising subsequence, by patience sorting (C. Schensted 1961). */
function longestRise(numbers: readonly number[], strictly: boolean): number[] {
  const tops: number[] = [];
  const before = new Int32Array(numbers.length).fill(-1);
  numbers.forEach((number, at) => {
    let low = 0;
    let high = tops.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      const top = numbers[tops[middle]];
      if (strictly ? top < number : top <= number) low = middle + 1;
      else high = middle;
    }
    if (low > 0) before[at] = tops[low - 1];
    tops[low] = at;
  });
  const kept: number[] = [];
  for (let at = tops.at(-1) ?? -1; at >= 0; at = before[at]) kept.push(at);
  return kept.reverse();
}
