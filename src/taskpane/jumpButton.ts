import { html, type TemplateResult } from "lit";
import { cellName } from "../survey/sheets/cellName";
import { CHECK_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** A cell to go to, rows and columns counted from 1. */
export interface JumpPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The button that selects a cell of the workbook; it shows the cell's name where no other words are given. */
export function jumpButton(pane: Pane, { sheet, row, column }: JumpPlace, words?: string): TemplateResult {
  const cell = cellName(row, column);
  return html`<fluent-button
    class="jump"
    size="small"
    @click=${() =>
      void pane.attempt(async () => {
        await pane.workbook.selectCell(sheet, row, column);
        pane.announce(pane.say(CHECK_TEXTS.wentTo, { cell, sheet }));
      })}
    >${words ?? pane.say(CHECK_TEXTS.cell, { sheet, cell })}</fluent-button
  >`;
}
