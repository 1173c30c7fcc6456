/**
 * Steps of an axis that begins at 0: 1, 2 or 5 of a power of ten, three to seven of them.
 *
 * @example
 * axisSteps(4.4) // [0, 1, 2, 3, 4]
 * @example
 * axisSteps(26) // [0, 5, 10, 15, 20, 25]
 */
export function axisSteps(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [0.2, 0.5, 1, 2].map((part) => part * power).find((one) => most / one < 7)!;
  const count = Math.floor(most / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
