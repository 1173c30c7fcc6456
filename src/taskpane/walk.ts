import { html, nothing, type TemplateResult } from "lit";
import { WALK_STEPS, WALK_TEXTS } from "../texts/pane";
import type { PageId, Pane } from "./pane";

/** The page that each step of the walk shows. */
const PAGES_OF_STEPS: readonly PageId[] = [
  "season",
  "check",
  "check",
  "decide",
  "gaps",
  "outlook",
  "functions",
];

/** The card that shows somebody around, a step at a time. */
export function walkCard(pane: Pane): TemplateResult | typeof nothing {
  const { walk } = pane.state;
  if (walk === undefined) return nothing;
  const last = walk === PAGES_OF_STEPS.length - 1;
  return html`<section class="card stack" aria-labelledby="walk-step">
    <h2 id="walk-step">${pane.say(WALK_TEXTS.step, { step: walk + 1, steps: PAGES_OF_STEPS.length })}</h2>
    <p>${pane.say(WALK_STEPS[walk])}</p>
    <div class="buttons">
      <fluent-button
        id="walk-next"
        size="small"
        appearance="primary"
        @click=${() => (last ? endWalk(pane) : goToStep(pane, walk + 1))}
        >${pane.say(last ? WALK_TEXTS.end : WALK_TEXTS.next)}</fluent-button
      >
      ${
        walk === 0
          ? nothing
          : html`<fluent-button id="walk-back" size="small" @click=${() => goToStep(pane, walk - 1)}
              >${pane.say(WALK_TEXTS.back)}</fluent-button
            >`
      }
      ${
        last
          ? nothing
          : html`<fluent-button id="walk-skip" size="small" appearance="subtle" @click=${() => endWalk(pane)}
              >${pane.say(WALK_TEXTS.skip)}</fluent-button
            >`
      }
    </div>
  </section>`;
}

/** Goes to a step of the walk and to the page that it is about. */
export function goToStep(pane: Pane, walk: number): void {
  pane.change((state) => ({ ...state, walk, page: PAGES_OF_STEPS[walk] }));
}

function endWalk(pane: Pane): void {
  pane.change((state) => ({ ...state, walk: undefined, page: "season" }));
}
