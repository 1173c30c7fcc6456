import { html, nothing, type TemplateResult } from "lit";
import type { Range } from "../../domain/outlook/productRange";
import { blockCropIn, threeDigits } from "../../survey/crop/cropWords";
import { FARM_FIGURE_TEXTS } from "../../texts/farmFigures";
import { STAGE_NAMES } from "../../texts/outlook";
import { NODES_TEXTS, SETTINGS_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { nothingMoves, type MovedResults } from "./movedResults";
import { placeName } from "../../texts/placeName";

/** Vines that are listed of those whose answer would turn. */
const VINES_LISTED = 10;

/** What a change of figures would move: node budgets, crops, vines decided otherwise, findings that go and come. */
export function movedSummary(pane: Pane, results: MovedResults): TemplateResult {
  return html`${budgetsView(pane, results)} ${cropsView(pane, results)} ${decisionsView(pane, results)}`;
}

function decisionsView(pane: Pane, results: MovedResults): TemplateResult {
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

function budgetsView(pane: Pane, { budgets }: MovedResults): TemplateResult {
  if (budgets.length === 0) return html`<p>${pane.say(SETTINGS_TEXTS.budgetsStay)}</p>`;
  const nodes = (value: number | undefined) =>
    value === undefined
      ? pane.say(NODES_TEXTS.noAnswer)
      : pane.say(NODES_TEXTS.someNodes, { nodes: threeDigits(value, pane.state.language) });
  return html`<ul class="plain" id="budgets-move">
    ${budgets.map(
      ({ block, before, after }) =>
        html`<li>
          ${pane.say(SETTINGS_TEXTS.budgetMoves, { block, before: nodes(before), after: nodes(after) })}
        </li>`,
    )}
  </ul>`;
}

function cropsView(pane: Pane, { crops, units }: MovedResults): TemplateResult {
  if (crops.length === 0) return html`<p>${pane.say(FARM_FIGURE_TEXTS.cropStays)}</p>`;
  const { language } = pane.state;
  const words = (mass: number) => threeDigits(blockCropIn(mass, units, language).value, language);
  const facts = (name: string, range: Range | undefined) =>
    range === undefined
      ? {}
      : {
          [name]: words(range.likely),
          [`${name}Low`]: words(range.low),
          [`${name}High`]: words(range.high),
        };
  return html`<ul class="plain" id="crops-move">
    ${crops.map(({ block, stage, before, after }) => {
      const text = before === undefined ? "cropComes" : after === undefined ? "cropGoes" : "cropMoves";
      return html`<li>
        ${pane.say(FARM_FIGURE_TEXTS[text], {
          block,
          stage: pane.say(STAGE_NAMES[stage]),
          unit: blockCropIn(0, units, language).unit,
          ...facts("before", before),
          ...facts("after", after),
        })}
      </li>`;
    })}
  </ul>`;
}
