import { html, nothing, type TemplateResult } from "lit";
import type { CallExplained } from "../../functions/explainCall";
import { NAMESPACE } from "../../functions/registry";
import { isBlank } from "../../survey/sheets/cell";
import { cellName } from "../../survey/sheets/cellName";
import { FUNCTIONS_TEXTS } from "../../texts/pane";
import type { CellExplained } from "../../workbook/actions/explainCell";
import { jumpButton } from "../jumpButton";
import type { Pane } from "../pane";
import {
  argumentWords,
  callSentences,
  differenceSentence,
  isLeftOut,
  leftOutSentence,
  shownCell,
} from "./cellWords";

const TEXTS = FUNCTIONS_TEXTS.cell;

/** What the selected cell was given and why it answers as it does. */
export function cellView(pane: Pane): TemplateResult | typeof nothing {
  const { cell, cellProblem } = pane.state.functions;
  if (cell === undefined && cellProblem === undefined) return nothing;
  return html`<section class="card stack" id="cell-explained">
    <h2>${pane.say(TEXTS.title)}</h2>
    ${cell === undefined ? html`<p>${cellProblem}</p>` : explained(pane, cell)}
  </section>`;
}

function explained(pane: Pane, cell: CellExplained): TemplateResult {
  const { sheet, row, column, shows, anchor, formula, calls } = cell;
  const { language } = pane.state;
  const facts = { cell: cellName(row, column), sheet, value: shownCell(shows, language) };
  const different = calls.length === 0 ? undefined : differenceSentence(cell, language);
  const isSpilled = anchor.row !== row || anchor.column !== column;
  return html`<p>${pane.say(isBlank(shows) ? TEXTS.empty : TEXTS.shows, facts)}</p>
    ${formula === undefined ? html`<p class="quiet">${pane.say(TEXTS.noFormula)}</p>` : nothing}
    ${isSpilled ? html`<p class="beside">${pane.say(TEXTS.filledFrom)} ${jumpButton(pane, anchor)}</p>` : nothing}
    ${formula === undefined ? nothing : html`<code>${formula}</code>`}
    ${formula !== undefined && calls.length === 0 ? html`<p class="quiet">${pane.say(TEXTS.noneOfOurs)}</p>` : nothing}
    ${different === undefined ? nothing : html`<p class="different">${different}</p>`}
    ${calls.map((call) => callView(pane, cell, call))}`;
}

function callView(pane: Pane, cell: CellExplained, call: CallExplained): TemplateResult {
  const { language } = pane.state;
  const { called, units } = call;
  const given = call.args.filter((argument) => !isLeftOut(argument));
  const leftOut = leftOutSentence(call, language);
  return html`<div class="call stack">
    <h3>${NAMESPACE}.${called.id}</h3>
    ${callSentences(cell, call, language).map((sentence) => html`<p>${sentence}</p>`)}
    ${
      given.length === 0
        ? nothing
        : html`<dl>
            ${given.map(
              (argument) =>
                html`<dt>
                    ${called.texts.parameters[argument.parameter.id].label[language]}
                    ${argument.written === "" ? nothing : html`<code>${argument.written}</code>`}
                  </dt>
                  <dd>${argumentWords(argument, units, language)}</dd>`,
            )}
          </dl>`
    }
    ${leftOut === undefined ? nothing : html`<p class="small quiet">${leftOut}</p>`}
  </div>`;
}
