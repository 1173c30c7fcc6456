import { functionNamed, NAMESPACE } from "./registry";

/** A formula with its calls of our functions in the form that Excel binds to the add-in. */
export interface RepairedFormula {
  readonly formula: string;
  /** Our functions in it, by id. */
  readonly calls: readonly string[];
  /** Names behind our namespace that this version has no function for; left as they stand. */
  readonly unknown: readonly string[];
}

/** What may stand before the name: a reference to another add-in or file, and the marks of a stored function. */
const REFERENCE = String.raw`(?:#REF!|'(?:[^']|'')*'!|(?:\[[^\]]*\])?[\p{L}\p{N}_.]*!)?`;
const STORED_MARKS = String.raw`(?:_xl(?:udf|dudf|fn|ws|l)[._]?)*`;
const OUR_CALL = String.raw`${REFERENCE}${STORED_MARKS}${NAMESPACE}[._](?<id>[A-Z][A-Z0-9_.]*)(?=\s*\()`;
const TEXT = String.raw`"(?:[^"]|"")*"`;
const SHEET_NAME = String.raw`'(?:[^']|'')*'`;
const BRACKETS = String.raw`\[(?:[^[\]]|\[[^\]]*\])*\]`;
const OTHER_NAME = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\]*`;
const PARTS = new RegExp([TEXT, OUR_CALL, SHEET_NAME, BRACKETS, OTHER_NAME].join("|"), "giu");

/**
 * Brings the calls of our functions in a formula back to the form CORDON.NAME( that the add-in answers: without the
 * stored mark that a file keeps when the add-in was missing, and without a reference to another add-in or file in
 * front. Texts, sheet names, table columns and other functions are left as they are.
 *
 * @example
 * repairFormula('=_xldudf_CORDON_NODEBUDGET(A2,"30+10")').formula // '=CORDON.NODEBUDGET(A2,"30+10")'
 * repairFormula("=[2]!_xldudf_CORDON_CLUSTERS(A2,2)*2").formula // "=CORDON.CLUSTERS(A2,2)*2"
 * repairFormula("=SUM(A1:A9)").calls // []
 */
export function repairFormula(formula: string): RepairedFormula {
  const calls: string[] = [];
  const unknown: string[] = [];
  const repaired = formula.replace(PARTS, (part: string, ...rest: unknown[]) => {
    const { id } = rest[rest.length - 1] as { readonly id?: string };
    if (id === undefined) return part;
    const known = functionNamed(id);
    if (known === undefined) {
      unknown.push(id.toUpperCase());
      return part;
    }
    calls.push(known.id);
    return `${NAMESPACE}.${known.id}`;
  });
  return { formula: repaired, calls, unknown };
}

/** A cell whose formula may need repair. */
export interface FormulaCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  /** What the cell shows: a value, or the text of its error. */
  readonly shows: string | number | boolean | null;
}

/**
 * One repair, for a preview and for an exact undo: writing `before` brings the cell back as it was.
 * "form": the formula is written otherwise. "enterAgain": it is written well, but was typed while the add-in was
 * missing and stays #NAME? until it is entered again.
 */
export interface FormulaRepair {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly why: "form" | "enterAgain";
  readonly before: string;
  readonly after: string;
}

/** A cell that names a function of ours that this version does not have. */
export interface UnknownCall {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly name: string;
}

export interface RepairPlan {
  readonly repairs: readonly FormulaRepair[];
  readonly unknown: readonly UnknownCall[];
  /** Formulas of ours that are well written and show an error that entering them again does not mend. */
  readonly failing: readonly FailingFormula[];
}

/** A formula that shows an error, as #SPILL! or #VALUE!. */
export interface FailingFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly shows: string;
}

/** An error as a cell shows it; #N/A and #BUSY! are answers: "cannot say" and "not yet". */
const ERROR = /^#(?!N\/A|BUSY!|GETTING_DATA)[A-Z0-9_/]+[!?]?$/;

/**
 * Excel puts an @ before a name that it does not know, and with it the function would fill one cell where it should fill
 * a block (https://support.microsoft.com/office/implicit-intersection-operator-ce3be07b-0101-4450-a24e-c1c999be2b34).
 */
const withoutAddedAt = (formula: string) => formula.replace(/^=@(?=CORDON\.)/, "=");

/**
 * What to rewrite in a workbook so that our functions calculate again; nothing is changed here. Cells without our
 * functions, and cells whose formula is well written and shows a value, are not in the plan.
 *
 * @example
 * planRepairs([{ sheet: "Plan", row: 2, column: 3, formula: "=CORDON.CLUSTERS(A2,2)", shows: "#NAME?" }]).repairs[0].why // "enterAgain"
 * planRepairs([{ sheet: "Plan", row: 2, column: 3, formula: "=CORDON.CLUSTERS(A2,2)", shows: 48 }]).repairs // []
 * planRepairs([{ sheet: "Plan", row: 2, column: 3, formula: "=@CORDON.CLUSTERS(A2,2)", shows: "#NAME?" }]).repairs[0].after // "=CORDON.CLUSTERS(A2,2)"
 */
export function planRepairs(cells: Iterable<FormulaCell>): RepairPlan {
  const repairs: FormulaRepair[] = [];
  const unknown: UnknownCall[] = [];
  const failing: FailingFormula[] = [];
  for (const { sheet, row, column, formula, shows } of cells) {
    const repaired = repairFormula(formula);
    for (const name of repaired.unknown) unknown.push({ sheet, row, column, name });
    if (repaired.calls.length === 0) continue;
    const after = shows === "#NAME?" ? withoutAddedAt(repaired.formula) : repaired.formula;
    const why = after === formula ? "enterAgain" : "form";
    if (why === "form" || shows === "#NAME?")
      repairs.push({ sheet, row, column, why, before: formula, after });
    else if (typeof shows === "string" && ERROR.test(shows))
      failing.push({ sheet, row, column, formula, shows });
  }
  return { repairs, unknown, failing };
}
