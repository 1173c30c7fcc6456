/**
 * A number as a person types it, with a point or a comma; NaN for anything else.
 *
 * @example
 * typedNumber(" 2,5 ") // 2.5
 */
export function typedNumber(text: string): number {
  return text.trim() === "" ? NaN : Number(text.trim().replace(",", "."));
}
