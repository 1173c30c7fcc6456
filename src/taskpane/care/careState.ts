import type { RepairPlan } from "../../functions/repairFormula";
import type { ChangedCell } from "../../workbook/actions/changeCells";
import type { ReportRow } from "../../workbook/excel/reportPages";
import type { Progress } from "../progress";
import type { SelfTestLine } from "./selfTest";

declare module "../pageStates" {
  interface PageStates {
    readonly care: CareState;
  }
}

/** The page for the care of the workbook, as data. */
export interface CareState {
  readonly progress?: Progress;
  readonly plan?: RepairPlan;
  /** Cells of the last repair, for taking it back. */
  readonly repaired?: readonly ChangedCell[];
  readonly selfTest?: readonly SelfTestLine[];
  /** The report about this Excel as far as it has come; `text` once it is made. */
  readonly report?: { readonly rows: readonly ReportRow[]; readonly text?: string };
  /** What the report asks of the person now. */
  readonly question?: { readonly what: "undo" | "undoFact"; readonly answer: (done: boolean) => void };
  /** Whether this workbook starts the add-in when it is opened; undefined until asked. */
  readonly atOpening?: boolean;
  /** Whether runs are written down; undefined until asked. */
  readonly logs?: boolean;
}

export const FIRST_CARE_STATE: CareState = {};
