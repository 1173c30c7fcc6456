import { html, type TemplateResult } from "lit";
import type { LeftOut, RowsUsed } from "../survey/season/usedRows";
import { causeWords, usedOfAll } from "../survey/season/usedSentence";
import { jumpButton } from "./jumpButton";
import type { Pane } from "./pane";

/** The rows that a result is worked out from, the same line on every page; why not the others is folded under it. */
export function usedRowsLine(pane: Pane, rowsUsed: RowsUsed): TemplateResult {
  const line = usedOfAll(rowsUsed, pane.state.language);
  return rowsUsed.leftOut.length === 0
    ? html`<p class="small quiet" data-rows-used=${rowsUsed.used}>${line}</p>`
    : html`<details class="small quiet" data-rows-used=${rowsUsed.used}>
        <summary>${line}</summary>
        <ul>
          ${rowsUsed.leftOut.map((cause) => html`<li>${causeOf(pane, cause)}</li>`)}
        </ul>
      </details>`;
}

/** Why rows are left out; it leads to the first of them, where that is known. */
function causeOf(pane: Pane, cause: LeftOut): TemplateResult | string {
  const words = causeWords(cause, pane.state.language);
  const { reason, first } = cause;
  return reason === "sameVine"
    ? words
    : jumpButton(pane, { sheet: first.sheet, row: first.sheetRow, column: 1 }, words);
}
