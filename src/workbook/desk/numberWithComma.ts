/**
 * The number that was typed with a decimal comma, and nothing else in it; undefined for any other text.
 *
 * @example
 * numberWithComma("-3,5") // -3.5
 * @example
 * numberWithComma("3, 5") // undefined
 */
export function numberWithComma(typed: string): number | undefined {
  return /^[+-]?\d*,\d+$/.test(typed) ? Number(typed.replace(",", ".")) : undefined;
}
