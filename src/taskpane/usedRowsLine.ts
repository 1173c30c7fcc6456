import { html, type TemplateResult } from "lit";
import { usedSentence } from "../survey/season/usedSentence";
import type { RowsUsed } from "../survey/season/usedRows";
import type { Pane } from "./pane";

/** The rows that a result is worked out from, the same line on every page. */
export function usedRowsLine(pane: Pane, rowsUsed: RowsUsed): TemplateResult {
  return html`<p class="small quiet" data-rows-used=${rowsUsed.used}>
    ${usedSentence(rowsUsed, pane.state.language)}
  </p>`;
}
