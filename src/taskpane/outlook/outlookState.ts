import type { UnitSystem } from "../../domain/units";
import type { BlockOutlook } from "../../survey/blockOutlook";
import type { FarmFigure } from "../../survey/farmFigures";
import type { Progress } from "../progress";

/** The outlook page as data. */
export interface OutlookState {
  readonly progress?: Progress;
  readonly blocks?: readonly BlockOutlook[];
  /** Figures that the farm's own harvests propose. */
  readonly figures?: readonly FarmFigure[];
  readonly unitSystem: UnitSystem;
  /** Block that is shown; "" for the first. */
  readonly block: string;
}

export const FIRST_OUTLOOK_STATE: OutlookState = { unitSystem: "US", block: "" };
