import type { UnitSystem } from "../../domain/units";
import type { BlockOutlook } from "../../survey/crop/blockOutlook";
import type { FarmFigure } from "../../survey/crop/farmFigures";
import type { Counted, CountPlan } from "../../survey/crop/countPlan";
import type { WinterRow } from "../../survey/season/winterRows";
import type { Season } from "../../survey/season/season";
import type { ChangedCell } from "../../workbook/actions/changeCells";
import type { Progress } from "../progress";
import type { MovedResults } from "../settings/movedResults";
import type { ReadSettings } from "../settings/settingsState";
import type { KeptSeasons } from "./seasonSheet";

/** A proposed figure that somebody is about to take. */
export interface FigureToTake {
  readonly key: string;
  readonly figure: FarmFigure;
  /** The workbook as it was when the figure was looked at. */
  readonly read: ReadSettings;
  /** Why it cannot be taken, as a sentence. */
  readonly problem?: string;
  readonly moved?: MovedResults;
}

/** The figure that was taken last, for its undo. */
export interface TakenFigure {
  readonly figure: FarmFigure;
  readonly where: string;
  readonly by: string;
  readonly cells: readonly ChangedCell[];
}

/** A count that is being planned. */
export interface PlannedCount {
  readonly counted: Counted;
  /** Margin in per cent, as typed. */
  readonly typed: string;
  readonly seed: number;
  readonly block: string;
  /** Undefined while the margin cannot be read, or when the block lists no bearing vine. */
  readonly plan?: CountPlan;
  /** Why there is no plan, as a sentence. */
  readonly problem?: string;
}

/** This winter's rows of vines, and the winters that the workbook keeps. */
export interface SeasonsFound {
  readonly kept: KeptSeasons;
  readonly now: readonly WinterRow[];
  /** Row of the chosen block that is shown; "" for all. */
  readonly row: string;
}

declare module "../pageStates" {
  interface PageStates {
    readonly outlook: OutlookState;
  }
}

/** The outlook page as data. */
export interface OutlookState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly blocks?: readonly BlockOutlook[];
  /** Figures that the farm's own harvests propose. */
  readonly figures?: readonly FarmFigure[];
  /** What the blocks were worked out from. */
  readonly season?: Season;
  readonly count?: PlannedCount;
  readonly seasons?: SeasonsFound;
  readonly take?: FigureToTake;
  readonly taken?: TakenFigure;
  readonly unitSystem: UnitSystem;
  /** Block that is shown; "" for the first. */
  readonly block: string;
}

export const FIRST_OUTLOOK_STATE: OutlookState = { unitSystem: "US", block: "" };
