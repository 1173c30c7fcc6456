import { html, nothing, type TemplateResult } from "lit";
import { PROJECT_VERSION } from "../../functions/version";
import { ABILITY_TEXTS, SELF_TEST } from "../../texts/selfTest";
import { UPKEEP_TEXTS as TEXTS } from "../../texts/upkeep";
import type { ExcelExtras } from "../../workbook/excel/excelExtras";
import type { Pane } from "../pane";
import type { CareState } from "./careState";

/** What the care of a workbook has in Excel only: what this copy supports, a copy of values, starting at opening. */
export function excelPart(pane: Pane, excel: ExcelExtras): TemplateResult {
  const { atOpening, excel: asked } = pane.state.care;
  return html`<h2>${pane.say(TEXTS.testTitle)}</h2>
    <div class="buttons">
      <fluent-button
        id="abilities"
        @click=${() => void pane.attempt(async () => change(pane, { excel: await excel.selfTest() }))}
        >${pane.say(TEXTS.test)}</fluent-button
      >
    </div>
    ${asked === undefined ? nothing : abilities(pane, asked)}
    <h2>${pane.say(TEXTS.copyTitle)}</h2>
    <p class="quiet">${pane.say(TEXTS.copyIntro)}</p>
    <div class="buttons">
      <fluent-button
        id="values-only"
        @click=${() =>
          void pane.attempt(async () => {
            const { replaced, errors } = await excel.openValuesOnlyCopy();
            pane.tell("success", TEXTS.copied, { count: replaced, errors: errors.length });
          })}
        >${pane.say(TEXTS.copy)}</fluent-button
      >
    </div>
    <h2>${pane.say(TEXTS.openingTitle)}</h2>
    <p class="quiet">${pane.say(TEXTS.openingIntro)}</p>
    ${opening(pane, excel, atOpening)}`;
}

function change(pane: Pane, part: Partial<CareState>): void {
  pane.change((state) => ({ ...state, care: { ...state.care, ...part } }));
}

function abilities(pane: Pane, { lines, functions }: NonNullable<CareState["excel"]>): TemplateResult {
  return html`<ul id="abilities-result" class="plain stack" role="status">
    ${lines.map(
      ({ id, outcome, set }) =>
        html`<li>${pane.say(SELF_TEST[outcome], { what: pane.say(ABILITY_TEXTS[id]), set })}</li>`,
    )}
    <li>${pane.say(SELF_TEST[functions.state], { shows: functions.shows, version: PROJECT_VERSION })}</li>
  </ul>`;
}

function opening(pane: Pane, excel: ExcelExtras, on: boolean | undefined): TemplateResult {
  if (on === undefined)
    return html`<div class="buttons">
      <fluent-button
        id="ask-opening"
        size="small"
        @click=${() =>
          void pane.attempt(async () => change(pane, { atOpening: await excel.startsAtOpening() }))}
        >${pane.say(TEXTS.openingAsk)}</fluent-button
      >
    </div>`;
  return html`<div class="beside">
    <fluent-switch
      id="at-opening"
      aria-label=${pane.say(TEXTS.openingSwitch)}
      .checked=${on}
      @change=${() =>
        void pane.attempt(async () => {
          await excel.setStartsAtOpening(!on);
          change(pane, { atOpening: !on });
        })}
    ></fluent-switch>
    <label for="at-opening" class="wide">${pane.say(TEXTS.openingSwitch)}</label>
  </div>`;
}
