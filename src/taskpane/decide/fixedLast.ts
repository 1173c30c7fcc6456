import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { ChangedCell } from "../../workbook/actions/changeCells";
import type { Outcome } from "./outcome";

/** A decision that was written, so that it can be taken back exactly. */
export interface FixedLast {
  readonly changed: readonly ChangedCell[];
  /** The vine as it was before. */
  readonly vine: DecidedVine;
  readonly outcome: Outcome;
}
