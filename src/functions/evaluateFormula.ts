import { distance } from "fastest-levenshtein";
import { FORMULA_PROBLEMS } from "../texts/functions/formulaProblems";
import { say, type Language, type TextFacts } from "../texts/language";
import { callFunction, isRefused } from "./callFunction";
import type { CellValue } from "../survey/sheets/cell";
import type { CordonFunction } from "./cordonFunction";
import { FormulaProblem, parseFormula, type Expression, type Operator } from "./parseFormula";
import type { RawArgument } from "./readArgument";
import { FUNCTIONS, functionNamed, NAMESPACE } from "./registry";

/** An error that a formula comes to, or that stands in one of its cells. */
export interface FormulaError {
  readonly error: string;
  readonly code: string;
  readonly sentence: string;
}

export type FormulaCell = string | number | boolean | FormulaError;

/** What a formula comes to: cells row by row, or one error. */
export type FormulaOutcome = { readonly values: readonly (readonly FormulaCell[])[] } | FormulaError;

/**
 * Evaluates one formula without a spreadsheet, for the command line, the examples of the help and the tests: CORDON
 * calls with figures, lists in braces and other CORDON calls as arguments, joined by + - * / and parentheses.
 * A mistake in the formula comes back as an error whose sentence gives the position.
 *
 * @example
 * evaluateFormula('=CORDON.NODEBUDGET(3,"30+10")') // { "values": [[50]] }
 */
export function evaluateFormula(formula: string, language: Language = "en"): FormulaOutcome {
  try {
    return { values: cellsOf(parseFormula(formula), { language }) as readonly (readonly FormulaCell[])[] };
  } catch (problem) {
    if (problem instanceof Stopped) return problem.outcome;
    if (problem instanceof FormulaProblem) return formulaError(problem, language);
    throw problem;
  }
}

/** Carries the error of an inner call out of a formula. */
class Stopped extends Error {
  constructor(readonly outcome: FormulaError) {
    super(outcome.code);
  }
}

type Cells = readonly (readonly CellValue[])[];

/** What an expression is worked out with. */
interface Surroundings {
  readonly language: Language;
  /** The cells that a reference names; without it, and where it knows none, a reference is a mistake. */
  readonly cellsAt?: (reference: string) => Cells | undefined;
}

/**
 * The cells that an expression of a sheet comes to: references are looked up, a blank cell stays one, and a call that is
 * refused gives its error on to what stands around it, as in a spreadsheet.
 *
 * @throws FormulaProblem for what only a spreadsheet can work out
 * @example
 * cellsOfExpression(parseFormula("=A2*2"), "en", () => [[3]]) // [[6]]
 */
export function cellsOfExpression(
  expression: Expression,
  language: Language,
  cellsAt: (reference: string) => Cells | undefined,
): Cells {
  return cellsOf(expression, { language, cellsAt });
}

function cellsOf(expression: Expression, around: Surroundings): Cells {
  const { language } = around;
  switch (expression.is) {
    case "value":
      return [
        [
          typeof expression.value === "number" && !Number.isFinite(expression.value)
            ? cellError("#NUM!", "tooLarge", {}, language)
            : expression.value,
        ],
      ];
    case "reference": {
      const { name, position } = expression;
      const cells = around.cellsAt?.(name);
      if (cells === undefined) throw new FormulaProblem("noSheet", { name, position });
      return cells;
    }
    case "error": {
      const given: FormulaError = { error: expression.error, code: "given", sentence: "" };
      return [[given]];
    }
    case "array":
      return expression.rows.map((row) => row.flatMap((cell) => cellsOf(cell, around)[0]));
    case "call":
      return called(expression, around);
    case "negative":
      return joined([[0]], cellsOf(expression.of, around), "-", language);
    case "percent":
      return joined(cellsOf(expression.of, around), [[100]], "/", language);
    default:
      return joined(
        cellsOf(expression.left, around),
        cellsOf(expression.right, around),
        expression.operator,
        language,
      );
  }
}

function called(call: Expression & { is: "call" }, around: Surroundings): Cells {
  const args = call.args.map((each) => (each === null ? null : asArgument(cellsOf(each, around))));
  const outcome = callFunction(functionCalled(call.name, call.position), args, around.language);
  if (!isRefused(outcome)) return outcome.values;
  if (around.cellsAt === undefined) throw new Stopped(outcome);
  return [[outcome]];
}

/** Cells as a call takes them: one alone, or a range. */
export const asArgument = (cells: Cells): RawArgument =>
  cells.length === 1 && cells[0].length === 1 ? cells[0][0] : cells;

function functionCalled(name: string, position: number): CordonFunction {
  const own = new RegExp(`^${NAMESPACE}[._](.*)$`, "i").exec(name)?.[1];
  const found = functionNamed(own ?? name);
  if (found && own !== undefined) return found;
  const suggestion = `${NAMESPACE}.${nearestId(own ?? name)}`;
  if (own === undefined && !found && distance(nearestId(name), name.toUpperCase()) > 2)
    throw new FormulaProblem("otherFunction", { name, position });
  throw new FormulaProblem("unknownFunction", { name, position, suggestion });
}

function nearestId(name: string): string {
  const wanted = name.toUpperCase();
  const ids = FUNCTIONS.map(({ id }) => id);
  return ids.reduce((best, id) => (distance(id, wanted) < distance(best, wanted) ? id : best));
}

function joined(left: Cells, right: Cells, operator: Operator, language: Language): Cells {
  const single = (cells: Cells) => cells.length === 1 && cells[0].length === 1;
  const shape = single(left) ? right : left;
  const fits = single(right) || (shape.length === right.length && shape[0].length === right[0].length);
  if (!fits)
    throw new FormulaProblem("differentSizes", {
      left: `${left.length} x ${left[0].length}`,
      right: `${right.length} x ${right[0].length}`,
      operator,
    });
  const at = (cells: Cells, row: number, column: number) =>
    single(cells) ? cells[0][0] : cells[row][column];
  return shape.map((cells, row) =>
    cells.map((_, column) => calculated(at(left, row, column), at(right, row, column), operator, language)),
  );
}

function calculated(given: CellValue, other: CellValue, operator: Operator, language: Language): CellValue {
  const [left, right] = [given ?? 0, other ?? 0];
  if (typeof left === "object") return left;
  if (typeof right === "object") return right;
  if (typeof left !== "number")
    return cellError("#VALUE!", "notANumber", { value: left, operator }, language);
  if (typeof right !== "number")
    return cellError("#VALUE!", "notANumber", { value: right, operator }, language);
  if (operator === "/" && right === 0) return cellError("#DIV/0!", "divisionByZero", {}, language);
  const result = { "+": left + right, "-": left - right, "*": left * right, "/": left / right }[operator];
  return Number.isFinite(result) ? result : cellError("#NUM!", "tooLarge", {}, language);
}

function cellError(error: string, code: string, facts: TextFacts, language: Language): FormulaError {
  return { error, code, sentence: say(FORMULA_PROBLEMS[code], language, facts) };
}

function formulaError(problem: FormulaProblem, language: Language): FormulaError {
  const error = problem.code.endsWith("Function") ? "#NAME?" : "#VALUE!";
  const example = FUNCTIONS[0].examples[0].formula;
  return cellError(error, problem.code, { ...problem.facts, example }, language);
}
