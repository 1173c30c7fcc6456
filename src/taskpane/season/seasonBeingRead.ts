import { html, type TemplateResult } from "lit";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import type { Pane } from "../pane";

/** The first look at the pane: how far the reading of the sheets has come. It stands before its page is fetched. */
export function seasonBeingRead(pane: Pane): TemplateResult {
  const { progress } = pane.state.season;
  return html`<h1>${pane.say(SEASON_TEXTS.title)}</h1>
    <div role="group" aria-label=${pane.say(SEASON_TEXTS.reading)}>
      <span id="season-reading">${progress?.text ?? pane.say(SEASON_TEXTS.reading)}</span>
      <fluent-progress-bar
        aria-labelledby="season-reading"
        min="0"
        max="100"
        .value=${Math.round((progress?.done ?? 0) * 100)}
      ></fluent-progress-bar>
    </div>`;
}
