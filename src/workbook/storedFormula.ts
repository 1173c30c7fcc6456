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
      .replace(/_xlfn\.ANCHORARRAY\((\$?[A-Z]{1,3}\$?\d+)\)/gi, "$1#")
      .replace(/_xl(?:fn|ws|pm)\./gi, ""),
  )}`;
}

/**
 * Functions that came after the file format, which stores them with a prefix: without it Excel shows #NAME? ([MS-XLSX]
 * 2.2.2, future-function-list, as the documentation of XlsxWriter lists them: "Formulas added in Excel 2010 and later").
 */
const LATER_FUNCTIONS = new Map<string, string>([
  ..."FILTER SORT".split(" ").map((name) => [name, "_xlfn._xlws."] as const),
  ...(
    "ACOT ACOTH AGGREGATE ANCHORARRAY ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE " +
    "BINOM.INV BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST " +
    "CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM " +
    "CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND " +
    "EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS " +
    "FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST " +
    "GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH " +
    "IMTAN ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS " +
    "MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION " +
    "PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC " +
    "QUARTILE.INC QUERYSTRING RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SINGLE " +
    "SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER " +
    "TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEBSERVICE " +
    "WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST"
  )
    .split(" ")
    .map((name) => [name, "_xlfn."] as const),
]);

/** Prefix of the names that LET and LAMBDA give to values. */
const PARAMETER_PREFIX = "_xlpm.";

/** A name at a place where LET or LAMBDA may define one, but no cell's address. */
const DEFINES_NAME = /^\s*([\p{L}_][\p{L}\p{N}_.]*)\s*$/u;

/**
 * A formula as a workbook file stores it.
 *
 * @example
 * storedFormula("=CORDON.NODEBUDGET(3,\"30+10\")") // "_xldudf_CORDON_NODEBUDGET(3,\"30+10\")"
 */
export function storedFormula(shown: string): string {
  const own = ownNames(shown);
  return outsideQuotes(shown.replace(/^=/, ""), (part) =>
    part
      .replace(/(?<![\w.])(\$?[A-Z]{1,3}\$?\d+)#/gi, "_xlfn.ANCHORARRAY($1)")
      .replace(/([\p{L}\p{N}_.]\[)@\[?([^[\]]+)\]?\]/gu, "$1[#This Row],[$2]]")
      .replace(/\bCORDON\.(\w+)(?=\s*\()/gi, (_whole, name: string) => ADD_IN_PREFIX + name.toUpperCase())
      .replace(/(?<![\p{L}\p{N}_.![])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.!\]])/gu, (name, at: number) => {
        if (own.has(name.toLowerCase())) return PARAMETER_PREFIX + name;
        const prefix = part[at + name.length] === "(" ? LATER_FUNCTIONS.get(name.toUpperCase()) : undefined;
        return prefix === undefined ? name : prefix + name.toUpperCase();
      }),
  );
}

/** The names, in lower case, that the LET and LAMBDA of a formula give to values. */
function ownNames(formula: string): Set<string> {
  const names = new Set<string>();
  if (!/\b(?:LET|LAMBDA)\s*\(/i.test(formula)) return names;
  const open: { readonly of: string; readonly pieces: string[] }[] = [];
  const close = ({ of, pieces }: (typeof open)[number]) => {
    const places = pieces
      .slice(0, -1)
      .filter((_, index) => of === "LAMBDA" || (of === "LET" && index % 2 === 0));
    for (const place of places) {
      const name = DEFINES_NAME.exec(place)?.[1];
      if (name) names.add(name.toLowerCase());
    }
  };
  let word = "";
  outsideQuotes(formula, (part) => {
    for (const character of part) {
      const inside = open[open.length - 1];
      if (character === "(") open.push({ of: word.toUpperCase(), pieces: [""] });
      else if (character === ")") {
        const closed = open.pop();
        if (closed) close(closed);
      } else if (character === "," && inside) inside.pieces.push("");
      else if (inside) inside.pieces[inside.pieces.length - 1] += character;
      word = /[\p{L}\p{N}_.]/u.test(character) ? word + character : "";
    }
    return part;
  });
  return names;
}

/** Changes the parts of a formula that are neither text in quotes nor a sheet's name in quotes. */
export function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join("");
}
