/** Prefix that a workbook file puts before the name of an add-in's function. */
const ADD_IN_PREFIX = "_xldudf_CORDON_";

/**
 * A formula as a person sees it, from the form that a workbook file stores: our functions as CORDON.NAME, newer built-in
 * functions without their prefix. A link to another add-in's copy of the prefix ("[2]!_xldudf_...") is taken off too.
 *
 * @example
 * shownFormula("_xldudf_CORDON_NODEBUDGET(3,\"30+10\")") // "=CORDON.NODEBUDGET(3,\"30+10\")"
 */
export function shownFormula(stored: string): string {
  return `=${outsideQuotes(stored, (part) =>
    part
      .replace(
        /(?:\[\d+\]!)?_xldudf_CORDON_(\w+)/gi,
        (_whole, name: string) => `CORDON.${name.toUpperCase()}`,
      )
      .replace(/_xl(?:fn|ws|pm)\./gi, ""),
  )}`;
}

/**
 * A formula as a workbook file stores it.
 *
 * @example
 * storedFormula("=CORDON.NODEBUDGET(3,\"30+10\")") // "_xldudf_CORDON_NODEBUDGET(3,\"30+10\")"
 */
export function storedFormula(shown: string): string {
  return outsideQuotes(shown.replace(/^=/, ""), (part) =>
    part.replace(/\bCORDON\.(\w+)(?=\s*\()/gi, (_whole, name: string) => ADD_IN_PREFIX + name.toUpperCase()),
  );
}

/** Changes the parts of a formula that are neither text in quotes nor a sheet's name in quotes. */
export function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join("");
}
