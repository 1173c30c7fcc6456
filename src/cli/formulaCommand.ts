import { evaluateFormula, type FormulaCell, type FormulaOutcome } from "../functions/evaluateFormula";
import type { Language } from "../texts/language";

/** What a command leaves on the terminal. */
export interface FormulaAnswer {
  readonly lines: readonly string[];
  /** 0: a value. 1: an error and its sentence. */
  readonly exitCode: 0 | 1;
}

/**
 * The command `formula`: evaluates one formula and prints its cells, a line a row, cells apart by tabs. An error, of
 * the whole formula or of a cell, is printed with its sentence and gives exit code 1.
 *
 * @example
 * formulaCommand('=CORDON.NODEBUDGET(3,"30+10")') // { "lines": ["50"], "exitCode": 0 }
 */
export function formulaCommand(formula: string, language: Language = "en"): FormulaAnswer {
  const outcome: FormulaOutcome = evaluateFormula(formula, language);
  if ("error" in outcome) return { lines: [withSentence(outcome)], exitCode: 1 };
  const errors = outcome.values.flat().filter((cell) => typeof cell === "object");
  const sentences = [...new Set(errors.map(withSentence))];
  return {
    lines: [...outcome.values.map((row) => row.map(written).join("\t")), ...sentences],
    exitCode: sentences.length === 0 ? 0 : 1,
  };
}

/** Numbers with the fifteen digits that a spreadsheet keeps. */
function written(cell: FormulaCell): string {
  if (typeof cell === "object") return cell.error;
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  return String(typeof cell === "number" ? Number(cell.toPrecision(15)) : cell);
}

const withSentence = ({ error, sentence }: { readonly error: string; readonly sentence: string }) =>
  sentence === "" ? error : `${error} ${sentence}`;
