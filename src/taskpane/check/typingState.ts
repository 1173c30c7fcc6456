import type { TypedRow } from "./watchTyping";

/** The check while typing as data. */
export interface TypingState {
  readonly on: boolean;
  /** Rows with findings, the one changed last first. */
  readonly rows: readonly TypedRow[];
  /** Sheets with changes too large to be judged row by row. */
  readonly large: readonly string[];
}

export const TYPING_OFF: TypingState = { on: false, rows: [], large: [] };

/** Rows that are shown at most. */
export const ROWS_SHOWN = 20;

/** Takes in a judged row: it replaces what was known of it, and a row in order disappears from the list. */
export function takeRow(state: TypingState, typed: TypedRow): TypingState {
  const others = state.rows.filter(({ sheet, row }) => sheet !== typed.sheet || row !== typed.row);
  return {
    ...state,
    rows: typed.findings.length === 0 ? others : [typed, ...others].slice(0, ROWS_SHOWN),
  };
}

/** Notes that a sheet has changed in too many rows. */
export function takeLargeChange(state: TypingState, sheet: string): TypingState {
  return state.large.includes(sheet) ? state : { ...state, large: [...state.large, sheet] };
}
