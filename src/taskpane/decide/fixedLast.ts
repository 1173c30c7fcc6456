import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { ChangedCell } from "../../workbook/actions/changeCells";

/** The last decision that was written, so that it can be taken back exactly. */
export interface FixedLast {
  readonly changed: readonly ChangedCell[];
  /** The vine as it was before. */
  readonly vine: DecidedVine;
  readonly cordon: string;
}
