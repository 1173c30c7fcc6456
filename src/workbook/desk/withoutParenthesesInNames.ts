/** Characters of the private use area, which no formula holds. */
const STAND_INS: Readonly<Record<string, string>> = { "(": "\uE0A8", ")": "\uE0A9" };
export const STOOD_FOR: Readonly<Record<string, string>> = { "\uE0A8": "(", "\uE0A9": ")" };

/**
 * A formula of the same length in which the parentheses inside square brackets are replaced by their stand-ins; texts in
 * quotation marks and sheet names are left as they are.
 *
 * @example
 * withoutParenthesesInNames("=SUM(A1:A9)") // "=SUM(A1:A9)"
 */
export function withoutParenthesesInNames(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:[^[\]]|\[[^\]]*\])*\]/g, (part) =>
    part.startsWith("[") ? part.replace(/[()]/g, (sign) => STAND_INS[sign]) : part,
  );
}
