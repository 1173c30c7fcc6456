/** Functions that answer with an array by themselves. */
const ARRAY_FUNCTIONS = new Set(
  (
    "BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER FREQUENCY GROWTH HSTACK LINEST LOGEST MAKEARRAY MAP MINVERSE " +
    "MMULT MODE.MULT MUNIT RANDARRAY SCAN SEQUENCE SORT SORTBY TAKE TEXTSPLIT TOCOL TOROW TRANSPOSE TREND UNIQUE VSTACK " +
    "WRAPCOLS WRAPROWS"
  ).split(" "),
);

/** Functions that take a range as it is and make one value of it. */
const RANGE_FUNCTIONS = new Set(
  (
    "AND AVERAGE AVERAGEA AVERAGEIF AVERAGEIFS COLUMNS CONCAT CORREL COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS GEOMEAN " +
    "HLOOKUP INDEX INTERCEPT IRR LARGE LOOKUP MATCH MAX MAXA MAXIFS MEDIAN MIN MINA MINIFS MODE MODE.SNGL NPV OR " +
    "PERCENTILE PERCENTILE.EXC PERCENTILE.INC PRODUCT QUARTILE QUARTILE.EXC QUARTILE.INC RANK RANK.AVG RANK.EQ ROWS " +
    "SLOPE SMALL STDEV STDEV.P STDEV.S STDEVP SUBTOTAL SUM SUMIF SUMIFS SUMSQ TEXTJOIN VAR VAR.P VAR.S VARP VLOOKUP " +
    "XLOOKUP XMATCH XOR"
  ).split(" "),
);

const NOT_LOOKED_AT = /"(?:[^"]|"")*"|'(?:[^']|'')*'!|[\p{L}_][\p{L}\p{N}_.]*!|\$/gu;

/** A function's name with its parenthesis, a parenthesis, or what stands for more than one cell. */
const TOKEN =
  /([\p{L}_][\p{L}\p{N}_.]*)?\(|\)|([A-Z]{1,3}\d+:[A-Z]{1,3}\d+|\b[A-Z]{1,3}:[A-Z]{1,3}\b|\b\d+:\d+\b|[A-Z]{1,3}\d+#|\{[^}]*\}|[\p{L}_][\p{L}\p{N}_.]*\[(?:[^[\]]|\[[^\]]*\])*\])/giu;

/**
 * True for a formula that a spreadsheet works out over whole ranges, so that a file has to store it as an array even
 * where it fills one cell: without that, Excel would take one cell of each range. A function that is not known to take
 * a range whole counts as one that does not.
 *
 * @example
 * isArrayFormula("=SUM(B2:B4*C2:C4)") // true
 */
export function isArrayFormula(formula: string): boolean {
  const plain = formula.replace(/^=/, "").replace(NOT_LOOKED_AT, (text) => (text.startsWith('"') ? "0" : ""));
  const open: string[] = [];
  for (const match of plain.matchAll(TOKEN)) {
    const [text, call, range] = match;
    if (text === ")") open.pop();
    else if (range === undefined) {
      const name = (call ?? "").toUpperCase();
      if (ARRAY_FUNCTIONS.has(name)) return true;
      open.push(name);
    } else if (!/#This Row|@/i.test(range) && !open.includes("SUMPRODUCT")) {
      const inside = open[open.length - 1] ?? "";
      const takesRanges = RANGE_FUNCTIONS.has(inside) || inside.startsWith("CORDON.");
      const before = plain.slice(0, match.index).trimEnd().slice(-1);
      const behind = plain
        .slice(match.index + text.length)
        .trimStart()
        .slice(0, 1);
      if (!takesRanges || !/[(,]/.test(before) || !/[),]/.test(behind)) return true;
    }
  }
  return false;
}
