import { groupHeading } from "../../survey/checks/groupSentence";
import type { FindingGroup } from "../../survey/checks/findingGroups";
import type { CellMend } from "../../survey/checks/mendOf";
import { MEND_TEXTS } from "../../texts/pane";
import { undoChange } from "../../workbook/actions/changeCells";
import { mendCells } from "../../workbook/actions/mendCells";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { writeLog } from "../writeLog";

/** Mends cells of a group, all or one of them; what a cell held is kept for taking it back. */
export async function mendFindings(
  pane: Pane,
  group: FindingGroup,
  mends: readonly CellMend[],
): Promise<void> {
  const { changed, left } = await mendCells(pane.workbook, mends);
  changePage(pane, "check", { mended: changed });
  await pane.held.look();
  const facts = { cells: changed.length, left: left.length };
  pane.tell(
    left.length > 0 ? "warning" : "success",
    left.length > 0 ? MEND_TEXTS.partly : MEND_TEXTS.done,
    facts,
  );
  await writeLog(pane, groupHeading(group, pane.state.language), pane.say(MEND_TEXTS.done, facts));
}

/** Gives the cells that were mended last what they held before; one that was changed since is left alone. */
export async function takeMendsBack(pane: Pane): Promise<void> {
  const { mended = [] } = pane.state.check;
  const { changed, left } = await undoChange(pane.workbook, mended);
  changePage(pane, "check", { mended: undefined });
  await pane.held.look();
  const facts = { cells: changed.length, left: left.length };
  pane.tell(
    left.length > 0 ? "warning" : "success",
    left.length > 0 ? MEND_TEXTS.partlyBack : MEND_TEXTS.back,
    facts,
  );
  await writeLog(pane, pane.say(MEND_TEXTS.takeBack, facts), pane.say(MEND_TEXTS.back, facts));
}
