import { html, type TemplateResult } from "lit";
import { PANE_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";
import type { Progress } from "./progress";

/**
 * How far an action has come, with a button that stops it.
 *
 * @param name what is going on, for assistive technology
 */
export function progressBar(pane: Pane, name: string, { text, done }: Progress): TemplateResult {
  return html`<div class="stack" role="group" aria-label=${name}>
    <span id="progress-step">${text}</span>
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
