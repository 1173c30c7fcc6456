import { html, nothing, type TemplateResult } from "lit";
import { toggleSheet, type CheckProgress, type FoundTable } from "./checkState";
import { lookForTables } from "./lookForTables";
import { tickField } from "../fields";
import type { Pane } from "../pane";
import { SHEETS } from "../../survey/sheets";
import { CHECK_TEXTS, PANE_TEXTS } from "../../texts/pane";

/** The page that checks the counts. */
export function checkPage(pane: Pane): TemplateResult {
  const { progress, tables } = pane.state.check;
  return html`<h1>${pane.say(CHECK_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(CHECK_TEXTS.intro)}</p>
    ${progress === undefined ? startButtons(pane) : progressOf(pane, progress)}
    ${tables === undefined ? nothing : foundSheets(pane, tables)}`;
}

function startButtons(pane: Pane): TemplateResult {
  return html`<div class="buttons">
    <fluent-button id="choose-sheets" @click=${() => run(pane, lookForTables)}
      >${pane.say(CHECK_TEXTS.chooseSheets)}</fluent-button
    >
  </div>`;
}

let running: AbortController | undefined;

/** Starts a run that the Cancel button can stop. */
function run(pane: Pane, action: (pane: Pane, signal: AbortSignal) => Promise<void>): void {
  running?.abort();
  running = new AbortController();
  const { signal } = running;
  void pane.attempt(() => action(pane, signal));
}

function progressOf(pane: Pane, { step, sheet, done }: CheckProgress): TemplateResult {
  return html`<div class="stack" role="group" aria-label=${pane.say(CHECK_TEXTS.progress)}>
    <span id="check-step" aria-live="polite"
      >${step === "reading" ? pane.say(CHECK_TEXTS.reading, { sheet }) : pane.say(CHECK_TEXTS.checking)}</span
    >
    <fluent-progress-bar
      aria-labelledby="check-step"
      min="0"
      max="100"
      .value=${Math.round(done * 100)}
    ></fluent-progress-bar>
    <div class="buttons">
      <fluent-button id="cancel-check" @click=${() => running?.abort()}
        >${pane.say(PANE_TEXTS.cancel)}</fluent-button
      >
    </div>
  </div>`;
}

function foundSheets(pane: Pane, tables: readonly FoundTable[]): TemplateResult {
  if (tables.length === 0)
    return html`<fluent-message-bar intent="info" layout="multiline"
      >${pane.say(CHECK_TEXTS.nothingFound)}</fluent-message-bar
    >`;
  return html`<section class="stack" aria-labelledby="sheets-found">
    <h2 id="sheets-found">${pane.say(CHECK_TEXTS.sheetsFound)}</h2>
    ${tables.map(({ sheet, shape, rows }, index) =>
      tickField({
        id: `sheet-${index}`,
        label: pane.say(CHECK_TEXTS.sheetRows, { sheet, shape: pane.say(SHEETS[shape].name), rows }),
        ticked: !pane.state.check.leftOut.has(sheet),
        onTick: () => pane.change((state) => ({ ...state, check: toggleSheet(state.check, sheet) })),
      }),
    )}
  </section>`;
}
