import type { CellExplained } from "../../workbook/actions/explainCell";
import type { FormulaHere } from "../../workbook/actions/formulaHere";
import type { Language } from "../../texts/language";

declare module "../pageStates" {
  interface PageStates {
    readonly functions: FunctionsState;
  }
}

/** The functions page as data. */
export interface FunctionsState {
  readonly search: string;
  /** Ids of the functions that are opened. */
  readonly open: ReadonlySet<string>;
  /** Formulas as a person has changed them, by function. */
  readonly formulas: ReadonlyMap<string, string>;
  /** The formulas of the opened functions as they would stand in the selected cell. */
  readonly here?: ReadonlyMap<string, FormulaHere>;
  /** The selected cell, explained, and the language in which it was. */
  readonly cell?: CellExplained;
  readonly cellLanguage?: Language;
  /** Why the selected cell could not be read. */
  readonly cellProblem?: string;
}

export const FIRST_FUNCTIONS_STATE: FunctionsState = {
  search: "",
  open: new Set(),
  formulas: new Map(),
};
