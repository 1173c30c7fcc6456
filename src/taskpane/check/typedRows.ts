import { html, nothing, type TemplateResult } from "lit";
import { TYPING_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { findingItem } from "./findingList";
import type { TypingState } from "./typingState";
import type { TypedRow } from "./watchTyping";

/** What the check while typing has found. */
export function typedRows(pane: Pane, { rows, large }: TypingState): TemplateResult {
  return html`<section class="stack" aria-labelledby="typed" role="status">
    <h2 id="typed">${pane.say(TYPING_TEXTS.title)}</h2>
    ${rows.length === 0 ? html`<p>${pane.say(TYPING_TEXTS.nothing)}</p>` : nothing}
    ${large.map((sheet) => html`<p>${pane.say(TYPING_TEXTS.large, { sheet })}</p>`)}
    <ul class="plain">
      ${rows.flatMap((row) => row.findings.map((finding) => findingItem(pane, finding, () => byWhom(pane, row))))}
    </ul>
  </section>`;
}

function byWhom(pane: Pane, { by }: TypedRow) {
  return by === "colleague"
    ? html`<fluent-badge appearance="outline">${pane.say(TYPING_TEXTS.colleague)}</fluent-badge>`
    : nothing;
}
