import { html, type TemplateResult } from "lit";
import { cellName } from "../survey/sheets/cellName";
import { CHECK_TEXTS } from "../texts/pane";
import { goToCell, type JumpPlace } from "./goToCell";
import type { Pane } from "./pane";

/** The button that goes to a cell; it shows the cell's name where no other words are given. */
export function jumpButton(pane: Pane, place: JumpPlace, words?: string): TemplateResult {
  const { sheet, row, column } = place;
  return html`<fluent-button
    class="jump"
    size="small"
    @click=${() => void pane.attempt(() => goToCell(pane, place))}
    >${words ?? pane.say(CHECK_TEXTS.cell, { sheet, cell: cellName(row, column) })}</fluent-button
  >`;
}
