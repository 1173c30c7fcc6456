import { html, type TemplateResult } from "lit";
import { PANE_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** How far an action has come, with a button that stops it. */
export function progressBar(
  pane: Pane,
  { step, name, done }: { readonly step: string; readonly name: string; readonly done: number },
): TemplateResult {
  return html`<div class="stack" role="group" aria-label=${name}>
    <span id="progress-step">${step}</span>
    <fluent-progress-bar
      aria-labelledby="progress-step"
      min="0"
      max="100"
      .value=${Math.round(done * 100)}
    ></fluent-progress-bar>
    <div class="buttons">
      <fluent-button id="stop" @click=${() => pane.stop()}>${pane.say(PANE_TEXTS.cancel)}</fluent-button>
    </div>
  </div>`;
}
