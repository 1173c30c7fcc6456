import type { Progress } from "../progress";
import type { SurveyGaps } from "../../survey/gapsOfSurvey";
import type { Survey, SurveyTable } from "../../survey/survey";

/** Which cordons the gaps are counted on. */
export type GapsOf = "staying" | "all";

/** The gaps page as data. */
export interface GapsState {
  readonly of: GapsOf;
  readonly progress?: Progress;
  readonly gaps?: SurveyGaps;
  /** What the gaps were counted on. */
  readonly source?: {
    readonly survey: Survey;
    readonly counts: (table: SurveyTable, index: number) => boolean;
  };
  /** Block of which the map is shown; "" for the first. */
  readonly block: string;
  /** Rows of the table that are listed. */
  readonly listed: number;
}

export const FIRST_GAPS_STATE: GapsState = { of: "staying", block: "", listed: 50 };
