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
 * Functions that came after the file format: it stores them with a prefix, without which Excel shows #NAME? (the list of
 * Microsoft's "Issue: An _xlfn. prefix is displayed in front of a formula", from memory; LET and LAMBDA are left out,
 * whose names of their own would need another).
 */
const LATER_FUNCTIONS = new Map<string, string>([
  ..."FILTER SORT".split(" ").map((name) => [name, "_xlfn._xlws."] as const),
  ...(
    "ACOT AGGREGATE ARABIC BASE BYCOL BYROW CEILING.MATH CHOOSECOLS CHOOSEROWS CONCAT CONFIDENCE.NORM CONFIDENCE.T COT " +
    "COVARIANCE.P COVARIANCE.S DAYS DECIMAL DROP EXPAND FLOOR.MATH FORMULATEXT HSTACK IFNA IFS ISFORMULA MAXIFS MINIFS " +
    "MODE.MULT MODE.SNGL NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PERCENTILE.EXC PERCENTILE.INC " +
    "PERCENTRANK.EXC PERCENTRANK.INC QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ SEQUENCE SHEET SHEETS SORTBY " +
    "STDEV.P STDEV.S SWITCH T.DIST T.INV TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE " +
    "UNIQUE VAR.P VAR.S VSTACK WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR"
  )
    .split(" ")
    .map((name) => [name, "_xlfn."] as const),
]);

/**
 * A formula as a workbook file stores it.
 *
 * @example
 * storedFormula("=CORDON.NODEBUDGET(3,\"30+10\")") // "_xldudf_CORDON_NODEBUDGET(3,\"30+10\")"
 */
export function storedFormula(shown: string): string {
  return outsideQuotes(shown.replace(/^=/, ""), (part) =>
    part
      .replace(/\bCORDON\.(\w+)(?=\s*\()/gi, (_whole, name: string) => ADD_IN_PREFIX + name.toUpperCase())
      .replace(/(?<![\w.])[A-Za-z][A-Za-z.]*(?=\()/g, (name) => {
        const prefix = LATER_FUNCTIONS.get(name.toUpperCase());
        return prefix === undefined ? name : prefix + name.toUpperCase();
      }),
  );
}

/** Changes the parts of a formula that are neither text in quotes nor a sheet's name in quotes. */
export function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join("");
}
