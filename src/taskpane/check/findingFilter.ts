import type { Severity } from "../../survey/checks/finding";

/** What a person wants to see of the findings; an empty word means all. */
export interface FindingFilter {
  readonly severity: Severity | "";
  readonly sheet: string;
  readonly counter: string;
  readonly words: string;
}

export const EVERYTHING: FindingFilter = { severity: "", sheet: "", counter: "", words: "" };
