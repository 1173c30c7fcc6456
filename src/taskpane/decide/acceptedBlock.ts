import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { ChangedCell } from "../../workbook/actions/changeCells";

/** A block whose decided vines were accepted in one step, so that it can be taken back exactly. */
export interface AcceptedBlock {
  readonly block: string;
  readonly changed: readonly ChangedCell[];
  /** The vines as they were before. */
  readonly vines: readonly DecidedVine[];
}
