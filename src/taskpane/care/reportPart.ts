import { html, nothing, type TemplateResult } from "lit";
import { EXCEL_REPORT_TEXTS as TEXTS } from "../../texts/excelReport";
import type { ExcelExtras } from "../../workbook/excel/excelExtras";
import { reportCounts, reportLine } from "../../workbook/results/excelReportSheet";
import type { Pane } from "../pane";
import type { CareState } from "./careState";
import { makeReport } from "./makeReport";

const COLOURS = { same: "success", different: "danger", notTried: "informative" } as const;

/** The report about this Excel on the page Care: what it does, its questions, its lines, and its text to copy. */
export function reportPart(pane: Pane, excel: ExcelExtras): TemplateResult {
  const { progress, report, question } = pane.state.care;
  return html`<h2>${pane.say(TEXTS.title)}</h2>
    <p class="quiet">${pane.say(TEXTS.intro)}</p>
    <p class="quiet">${pane.say(TEXTS.before)}</p>
    ${
      progress
        ? nothing
        : html`<div class="buttons">
            <fluent-button
              id="make-report"
              @click=${() => pane.start((signal) => makeReport(pane, excel, signal))}
              >${pane.say(TEXTS.start)}</fluent-button
            >
          </div>`
    }
    ${question ? questionView(pane, question) : nothing} ${report ? reportView(pane, report) : nothing}`;
}

function questionView(pane: Pane, { what, answer }: NonNullable<CareState["question"]>): TemplateResult {
  return html`<div class="stack" id="report-question">
    <p role="status">${pane.say(TEXTS[what])}</p>
    <div class="buttons">
      <fluent-button id="pressed" appearance="primary" @click=${() => answer(true)}
        >${pane.say(TEXTS.pressed)}</fluent-button
      >
      <fluent-button id="left-out" @click=${() => answer(false)}>${pane.say(TEXTS.skip)}</fluent-button>
    </div>
  </div>`;
}

function reportView(pane: Pane, { rows, text }: NonNullable<CareState["report"]>): TemplateResult {
  const { language } = pane.state;
  return html`<ul class="plain stack" id="report">
      ${rows.map((row) => {
        const [tried, expected, seen, outcome] = reportLine(row, language);
        const { expected: wanted, seen: saw } = TEXTS.heads;
        return html`<li class="beside">
          <fluent-badge appearance="tint" color=${COLOURS[row.outcome]}>${outcome}</fluent-badge>
          <span class="wide">${tried}. ${pane.say(wanted)}: ${expected}. ${pane.say(saw)}: ${seen}.</span>
        </li>`;
      })}
    </ul>
    ${
      text === undefined
        ? nothing
        : html`<p role="status">${reportCounts(rows, language)}</p>
            <label for="report-text">${pane.say(TEXTS.text)}</label>
            <textarea id="report-text" rows="6" readonly .value=${text}></textarea>
            <div class="buttons">
              <fluent-button id="copy-report" @click=${() => void pane.attempt(() => copy(pane, text))}
                >${pane.say(TEXTS.copy)}</fluent-button
              >
            </div>`
    }`;
}

/** Some copies of Excel do not let a pane write to the clipboard: then the text is selected for the person. */
async function copy(pane: Pane, text: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    pane.tell("success", TEXTS.copied);
  } catch {
    pane.root.querySelector<HTMLTextAreaElement>("#report-text")?.select();
    pane.tell("info", TEXTS.copyYourself);
  }
}
