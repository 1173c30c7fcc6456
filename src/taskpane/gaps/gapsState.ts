import type { Progress } from "../progress";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { SeasonGaps } from "../../survey/season/gapsOfSeason";
import type { Season } from "../../survey/season/season";

/** Which cordons the gaps are counted on. */
export type GapsOf = "staying" | "all";

declare module "../pageStates" {
  interface PageStates {
    readonly gaps: GapsState;
  }
}

/** The gaps page as data. */
export interface GapsState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly of: GapsOf;
  readonly progress?: Progress;
  readonly gaps?: SeasonGaps;
  /** What the gaps were counted on. */
  readonly counted?: { readonly season: Season; readonly vines: readonly DecidedVine[] };
  /** Block of which the map is shown; "" for the first. */
  readonly block: string;
  /** Row that is shown on the wire; the first of the block where it is left out. */
  readonly row?: number;
  /** The vine that was chosen on the map or the wire. */
  readonly vine?: number;
  /** The cell of the map that the arrow keys have reached. */
  readonly reached?: string;
  /** Rows of the table that are listed. */
  readonly listed: number;
}

/** Rows that are listed at first, and with each click more. */
export const ROWS_LISTED = 50;

export const FIRST_GAPS_STATE: GapsState = { of: "staying", block: "", listed: ROWS_LISTED };
