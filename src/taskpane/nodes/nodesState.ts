import type { UnitSystem } from "../../domain/units";
import type { NodesOfSeason } from "../../survey/decide/plan/blockBudgets";
import type { SettingValues } from "../../survey/settings/settings";
import type { Progress } from "../progress";

declare module "../pageStates" {
  interface PageStates {
    readonly nodes: NodesState;
  }
}

/** What the page shows, and the figures and units it was worked out with. */
export interface NodesResult extends NodesOfSeason {
  readonly settings: SettingValues;
  readonly units: UnitSystem;
}

/** The page for node budgets as data. */
export interface NodesState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly result?: NodesResult;
  /** The block that is shown; "" for the first. */
  readonly block: string;
}

export const FIRST_NODES_STATE: NodesState = { block: "" };
