/**
 * A number that no other of its kind in a workbook has: the one after the highest or, where that is not allowed any
 * more, the first that is free.
 *
 * `taken`: the numbers in use as they are written; what is no number counts for nothing. `most`: the highest allowed.
 *
 * @example
 * freeNumber(["1", "4", "x"], 65534) // 5
 * freeNumber(["1", "65534"], 65534) // 2
 */
export function freeNumber(taken: readonly (string | number | undefined)[], most: number): number {
  const used = new Set(taken.map(Number).filter((number) => Number.isInteger(number) && number >= 0));
  let free = 1;
  for (const number of used) free = Math.max(free, number + 1);
  if (free <= most) return free;
  for (free = 1; used.has(free);) free++;
  return free;
}
