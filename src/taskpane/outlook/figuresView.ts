import { html, nothing, type TemplateResult } from "lit";
import type { FarmFigure } from "../../survey/crop/farmFigures";
import { FARM_FIGURE_TEXTS } from "../../texts/farmFigures";
import { FARM_FIGURE_WEIGHT, FARM_FIGURES } from "../../texts/outlook";
import { OUTLOOK_TEXTS, PANE_TEXTS, SETTINGS_TEXTS } from "../../texts/pane";
import { textField } from "../fields";
import { remembered } from "../ownView";
import { changePage } from "../changePage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { movedSummary } from "../settings/movedSummary";
import { figureDigits, figureWords } from "./figureWords";
import type { FigureToTake, OutlookState } from "./outlookState";
import { planFigure } from "./planFigure";
import { figureKey, showFigureMoves, takeFigure, undoFigure } from "./takeFigure";

/** What the farm's own harvests say of each figure, with a way to take it after a look at what it moves. */
export function figuresView(pane: Pane, page: OutlookState): TemplateResult | typeof nothing {
  const { figures = [], taken } = page;
  if (figures.length === 0) return nothing;
  return html`<h2>${pane.say(OUTLOOK_TEXTS.figures)}</h2>
    ${
      taken === undefined
        ? nothing
        : html`<div class="buttons">
            <fluent-button
              id="undo-figure"
              size="small"
              @click=${() => pane.start((signal) => undoFigure(pane, taken, signal))}
              >${pane.say(FARM_FIGURE_TEXTS.undo)}: ${figureWords(pane, taken.figure)}</fluent-button
            >
          </div>`
    }
    <ul class="plain" id="farm-figures">
      ${figures.map((figure) => figureView(pane, page, figure))}
    </ul>`;
}

function figureView(pane: Pane, page: OutlookState, figure: FarmFigure): TemplateResult {
  const digits = (value: number) => figureDigits(pane, figure, value);
  const { now, usual, years, proposed } = figure;
  const key = figureKey(figure);
  const value = digits(proposed.value);
  return html`<li class="finding">
    <p>
      ${pane.say(OUTLOOK_TEXTS.figure, {
        figure: pane.say(FARM_FIGURES[figure.figure]),
        cultivar: figure.cultivar === "" ? "" : ` (${figure.cultivar})`,
        now: digits(now),
        value,
      })}
    </p>
    <p class="small quiet">
      ${pane.say(FARM_FIGURE_WEIGHT, {
        years: years.length,
        percent: Math.round(proposed.weight * 100),
        usual: digits(usual),
      })}
    </p>
    ${
      page.take?.key === key
        ? takeView(pane, page.take, value)
        : digits(now) === value
          ? nothing
          : html`<div class="buttons">
              <fluent-button
                class="take-figure"
                size="small"
                aria-label=${pane.say(FARM_FIGURE_TEXTS.takeName, { value, figure: figureWords(pane, figure) })}
                @click=${() => {
                  changePage(pane, "settings", { by: pane.state.settings.by || remembered("name") });
                  pane.start((signal) => showFigureMoves(pane, key, signal));
                }}
                >${pane.say(FARM_FIGURE_TEXTS.take, { value })}</fluent-button
              >
            </div>`
    }
  </li>`;
}

function takeView(pane: Pane, take: FigureToTake, value: string): TemplateResult {
  const plan = planFigure(take.read, take.figure, "", pane.today, pane.state.language);
  const leave = html`<fluent-button
    id="leave-figure"
    size="small"
    @click=${() => changePage(pane, "outlook", { take: undefined })}
    >${pane.say(PANE_TEXTS.cancel)}</fluent-button
  >`;
  if (typeof plan === "string")
    return html`<div class="stack editor">
      <p role="alert">${plan}</p>
      <div class="buttons">${leave}</div>
    </div>`;
  return html`<div class="stack editor" id="figure-moves">
    <p><strong>${pane.say(FARM_FIGURE_TEXTS.wouldWrite, { value, where: plan.where })}</strong></p>
    ${take.moved === undefined ? nothing : movedSummary(pane, take.moved)}
    ${textField({
      id: "figure-by",
      label: pane.say(SETTINGS_TEXTS.by),
      value: pane.state.settings.by,
      onInput: (by) => changePage(pane, "settings", { by }),
    })}
    <p role="alert">${take.problem ?? nothing}</p>
    <div class="buttons">
      <fluent-button
        id="take-figure"
        size="small"
        appearance="primary"
        @click=${() => void currentOnly(pane, "outlook", () => pane.start((signal) => takeFigure(pane, signal)))}
        >${pane.say(FARM_FIGURE_TEXTS.yes)}</fluent-button
      >
      ${leave}
    </div>
  </div>`;
}
