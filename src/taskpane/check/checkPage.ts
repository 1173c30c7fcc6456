import { html, nothing, type TemplateResult } from "lit";
import { CHECK_TEXTS, TYPING_TEXTS } from "../../texts/pane";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { progressBar } from "../progressBar";
import type * as Parts from "./checkParts";
import type { CheckState } from "./checkState";

/** What the page needs once somebody does something on it; every action waits until it is here. */
let parts: typeof Parts;

/** Fetches what the page needs beyond its first look. */
export async function fetchCheckParts(): Promise<typeof parts> {
  return (parts = await import(/* webpackChunkName: "check" */ "./checkParts"));
}

/** The page that checks the counts. */
export function checkPage(pane: Pane): TemplateResult {
  const { check } = pane.state;
  if (check.heads !== undefined)
    return html`<h1>${pane.say(CHECK_TEXTS.title)}</h1>
      ${parts.headsStep(pane, check.heads, check)}`;
  return html`<h1>${pane.say(CHECK_TEXTS.title)}</h1>
    ${check.findings === undefined ? html`<p class="quiet">${pane.say(CHECK_TEXTS.intro)}</p>` : nothing}
    ${check.progress !== undefined || check.findings === undefined ? nothing : parts.checkVerdict(pane, check, check.findings)}
    ${check.progress !== undefined || check.season === undefined ? nothing : parts.questionsView(pane, check)}
    ${check.progress === undefined ? html`${startButtons(pane, check)} ${typing(pane)}` : progressOf(pane, check.progress)}
    ${
      check.progress !== undefined
        ? nothing
        : html`${
            check.tables === undefined || (check.findings !== undefined && !check.choosing)
              ? nothing
              : parts.foundSheets(pane, check, check.tables)
          }
          ${check.findings === undefined ? nothing : parts.checkResult(pane, check, check.findings)}`
    }`;
}

/** The switch for the check while typing, and what it has found. */
function typing(pane: Pane): TemplateResult {
  const { typing } = pane.state.check;
  return html`<div class="beside">
      <fluent-switch
        id="typing"
        aria-label=${pane.say(TYPING_TEXTS.switch)}
        .checked=${typing.on}
        @change=${() => void pane.attempt(() => (typing.on ? parts.stopTyping(pane) : parts.startTyping(pane)))}
      ></fluent-switch>
      <label for="typing" class="wide">${pane.say(TYPING_TEXTS.switch)}</label>
    </div>
    ${typing.on ? parts.typedRows(pane, typing) : nothing}`;
}

function startButtons(pane: Pane, { findings }: CheckState): TemplateResult {
  return html`<div class="buttons">
    <fluent-button
      id="check"
      appearance="primary"
      @click=${() => pane.start((signal) => parts.runCheck(pane, signal))}
      >${pane.say(findings === undefined ? CHECK_TEXTS.check : CHECK_TEXTS.checkAgain)}</fluent-button
    >
    <fluent-button
      id="choose-sheets"
      @click=${() => {
        changePage(pane, "check", { choosing: !pane.state.check.choosing });
        if (pane.state.check.choosing) pane.start((signal) => parts.lookForTables(pane, signal));
      }}
      >${pane.say(CHECK_TEXTS.chooseSheets)}</fluent-button
    >
  </div>`;
}

function progressOf(pane: Pane, { step, sheet, done }: NonNullable<CheckState["progress"]>): TemplateResult {
  const text = step === "reading" ? pane.say(CHECK_TEXTS.reading, { sheet }) : pane.say(CHECK_TEXTS.checking);
  return progressBar(pane, pane.say(CHECK_TEXTS.progress), { text, done });
}
