import { html, nothing, type TemplateResult } from "lit";
import { SETTINGS_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { nothingMoves, type MovedResults } from "./movedResults";
import { placeName } from "../../texts/placeName";

/** Vines that are listed of those whose answer would turn. */
const VINES_LISTED = 10;

/** What a change of figures would move: vines decided otherwise, findings that go and come. */
export function movedSummary(pane: Pane, results: MovedResults): TemplateResult {
  if (nothingMoves(results)) return html`<p>${pane.say(SETTINGS_TEXTS.nothingMoves)}</p>`;
  const { vines, findingsGone, findingsCome } = results;
  const listed = results.moved.slice(0, VINES_LISTED);
  return html`<p>${pane.say(SETTINGS_TEXTS.vinesMove, { moved: results.moved.length, vines })}</p>
    ${
      listed.length === 0
        ? nothing
        : html`<table id="moved" class="small">
            <thead>
              <tr>
                <th scope="col">${pane.say(SETTINGS_TEXTS.vineHead)}</th>
                <th scope="col">${pane.say(SETTINGS_TEXTS.now)}</th>
                <th scope="col">${pane.say(SETTINGS_TEXTS.then)}</th>
              </tr>
            </thead>
            <tbody>
              ${listed.map(
                ({ block, row, vine, before, after }) =>
                  html`<tr>
                    <th scope="row">${block}, ${placeName(row)}, ${placeName(vine)}</th>
                    <td>${before}</td>
                    <td>${after}</td>
                  </tr>`,
              )}
            </tbody>
          </table>`
    }
    ${
      results.moved.length > listed.length
        ? html`<p class="small">${pane.say(SETTINGS_TEXTS.firstOnes, { shown: listed.length })}</p>`
        : nothing
    }
    <p>
      ${pane.say(SETTINGS_TEXTS.findingsMove, { gone: findingsGone.length, come: findingsCome.length })}
    </p>`;
}
