import { cellName } from "../survey/sheets/cellName";
import { CHECK_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** A cell to go to, rows and columns counted from 1. */
export interface JumpPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Selects a cell of the workbook and puts the keyboard into it, so that the next key types there. */
export async function goToCell(pane: Pane, { sheet, row, column }: JumpPlace): Promise<void> {
  await pane.workbook.selectCell(sheet, row, column);
  pane.enterSheet?.();
  pane.announce(pane.say(CHECK_TEXTS.wentTo, { cell: cellName(row, column), sheet }));
}
