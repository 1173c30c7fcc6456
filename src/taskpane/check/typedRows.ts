import { html, nothing, type TemplateResult } from "lit";
import { TYPING_TEXTS } from "../../texts/pane";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { findingItem } from "./findingList";
import { TYPING_OFF, takeLargeChange, takeRow, type TypingState } from "./typingState";
import { watchTyping, type TypedRow } from "./watchTyping";

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

export async function startTyping(pane: Pane): Promise<void> {
  const take = (next: (typing: TypingState) => TypingState) =>
    pane.change((state) => ({ ...state, check: { ...state.check, typing: next(state.check.typing) } }));
  take(() => ({ ...TYPING_OFF, on: true }));
  try {
    const stop = await watchTyping(pane.workbook, {
      today: pane.today,
      read: async () => (await pane.held.read()).season,
      onRow: (row) => take((typing) => takeRow(typing, row)),
      onLargeChange: (sheet) => take((typing) => takeLargeChange(typing, sheet)),
      onFailure: (failure) =>
        void pane.attempt(() => {
          throw failure;
        }),
    });
    if (pane.state.check.typing.on) pane.keepWatch("typing", stop);
    else await stop();
  } catch (failure) {
    take(() => TYPING_OFF);
    throw failure;
  }
}

export async function stopTyping(pane: Pane): Promise<void> {
  changePage(pane, "check", { typing: TYPING_OFF });
  await pane.endWatch("typing");
}
