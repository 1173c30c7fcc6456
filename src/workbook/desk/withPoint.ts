/**
 * A number, or a percentage, that was typed with a decimal comma and nothing else, as the engine reads it; undefined for
 * any other text.
 *
 * @example
 * withPoint("-3,5") // "-3.5"
 * @example
 * withPoint("12,5 %") // "12.5%"
 * @example
 * withPoint("3, 5") // undefined
 */
export function withPoint(typed: string): string | undefined {
  const text = typed.trim();
  return /^[+-]?\d*,\d+\s?%?$/.test(text) ? text.replace(",", ".").replace(/\s/, "") : undefined;
}

/** Digits of which the last is no error of binary arithmetic: 0.1 + 0.2 is 0.3. */
const TRUE_DIGITS = 15;

/**
 * A number as it is written with a decimal comma; an integer stays a number.
 *
 * @example
 * withComma(-3.5) // "-3,5"
 * @example
 * withComma(0.1 + 0.2) // "0,3"
 * @example
 * withComma(1250) // 1250
 */
export function withComma(value: number): number | string {
  return Number.isInteger(value) ? value : String(Number(value.toPrecision(TRUE_DIGITS))).replace(".", ",");
}
