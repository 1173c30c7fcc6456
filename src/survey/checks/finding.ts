import type { TextFacts } from "../../texts/language";

/** wrong: cannot be true. ask: someone must look at the vine or the sheet. note: worth knowing, nothing to do. */
export type Severity = "wrong" | "ask" | "note";

/**
 * One thing found in a sheet: data, never a sentence. The sentence is made where it is shown, from
 * src/texts/findings.ts by `code` and `facts`.
 */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly sheet: string;
  /** Row as the sheet shows it; the first row of a sheet is 1. */
  readonly row: number;
  /** Column as the sheet shows it, 1 is A; 0 when the finding is about the whole row. */
  readonly columnNumber: number;
  /** Header text of the column as it stands in the sheet; "" when the finding is about the whole row. */
  readonly column: string;
  readonly facts: TextFacts;
}
