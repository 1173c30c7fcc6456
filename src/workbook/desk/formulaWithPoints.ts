/** Texts, names of sheets, lists in braces and names of columns, in which commas are no decimals; names; all else by sign. */
const PARTS = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{[^}]*\}|\[[^\]]*\]|[\p{L}_$][\p{L}\d_.$]*|\d*,\d+|\d+|./gsu;
const DECIMAL = /^\d*,\d+$/;

/**
 * A formula typed where decimals have commas, as the engine reads it: semicolons separate arguments, and a comma between
 * digits is a decimal. Where no semicolon tells so, that holds only outside the brackets of a function.
 *
 * @example
 * formulaWithPoints('=CORDON.NODEBUDGET(3,5;"30+10")') // '=CORDON.NODEBUDGET(3.5, "30+10")'
 * @example
 * formulaWithPoints("=(H4+0,5)*1,5") // "=(H4+0.5)*1.5"
 * @example
 * formulaWithPoints("=MAX(H4,3)") // "=MAX(H4,3)"
 */
export function formulaWithPoints(formula: string): string {
  const hasSemicolons = partsOf(formula).some(({ part }) => part === ";");
  return partsOf(formula)
    .map(({ part, isArgument }) => {
      if (part === ";") return ", ";
      return DECIMAL.test(part) && (hasSemicolons || !isArgument) ? part.replace(",", ".") : part;
    })
    .join("")
    .replace(/, +/g, (separator) => (hasSemicolons ? ", " : separator));
}

/**
 * What in a formula is two values, and may have been meant as one with a decimal comma; undefined where nothing is.
 *
 * @example
 * doubtfulComma("=SQRT(3,5)") // "3,5"
 * @example
 * doubtfulComma("=ROUND(H4, 5)") // undefined
 */
export function doubtfulComma(formula: string): string | undefined {
  return partsOf(formula).find(({ part, isArgument }) => isArgument && /^\d+,\d+$/.test(part))?.part;
}

function partsOf(formula: string): { part: string; isArgument: boolean }[] {
  const brackets: boolean[] = [];
  let before = "";
  return (formula.match(PARTS) ?? []).map((part) => {
    if (part === "(") brackets.push(/^[\p{L}_$]/u.test(before));
    if (part === ")") brackets.pop();
    before = part;
    return { part, isArgument: brackets.at(-1) === true };
  });
}
