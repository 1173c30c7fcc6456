import { html, type TemplateResult } from "lit";
import { UPKEEP_TEXTS as TEXTS } from "../../texts/upkeep";
import type { ExcelExtras } from "../../workbook/excel/excelExtras";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { reportPart } from "./reportPart";

/** What the care of a workbook has in Excel only: a copy of values, starting at opening, a report about this Excel. */
export function excelPart(pane: Pane, excel: ExcelExtras): TemplateResult {
  return html`<h2>${pane.say(TEXTS.copyTitle)}</h2>
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
    ${opening(pane, excel, pane.state.care.atOpening)} ${reportPart(pane, excel)}`;
}

function opening(pane: Pane, excel: ExcelExtras, on: boolean | undefined): TemplateResult {
  if (on === undefined)
    return html`<div class="buttons">
      <fluent-button
        id="ask-opening"
        size="small"
        @click=${() =>
          void pane.attempt(async () =>
            changePage(pane, "care", { atOpening: await excel.startsAtOpening() }),
          )}
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
          changePage(pane, "care", { atOpening: !on });
        })}
    ></fluent-switch>
    <label for="at-opening" class="wide">${pane.say(TEXTS.openingSwitch)}</label>
  </div>`;
}
