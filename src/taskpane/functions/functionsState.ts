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
}

export const FIRST_FUNCTIONS_STATE: FunctionsState = {
  search: "",
  open: new Set(),
  formulas: new Map(),
};
