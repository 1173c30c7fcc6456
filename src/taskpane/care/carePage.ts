import { html, nothing, type TemplateResult } from "lit";
import type { RepairPlan } from "../../functions/repairFormula";
import { CARE_TEXTS } from "../../texts/pane";
import { undoChange } from "../../workbook/actions/changeCells";
import { applyRepairs, lookForRepairs } from "../../workbook/actions/repairFormulas";
import { logsRuns, setLogsRuns } from "../../workbook/actions/runLog";
import { failureSentence } from "../failureSentence";
import { jumpButton } from "../jumpButton";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { progressBar } from "../progressBar";
import type { CareState } from "./careState";
import { excelPart } from "./excelPart";
import { selfTest, type SelfTestLine } from "./selfTest";

/** Repairs that are listed at most; all of them are made. */
const LISTED = 50;

/** Lines of the self-test without those of Excel. */
const LINES = 7;

/** The page for the care of the workbook: formulas that no longer calculate, a self-test, the log of runs. */
export function carePage(pane: Pane): TemplateResult {
  const page = pane.state.care;
  const busy = page.progress !== undefined;
  return html`<h1>${pane.say(CARE_TEXTS.title)}</h1>
    ${page.progress === undefined ? nothing : progressBar(pane, pane.say(CARE_TEXTS.progress), page.progress)}
    <h2>${pane.say(CARE_TEXTS.repairTitle)}</h2>
    <p class="quiet">${pane.say(CARE_TEXTS.repairIntro)}</p>
    ${
      busy
        ? nothing
        : html`<div class="buttons">
            <fluent-button id="look-repairs" @click=${() => pane.start((signal) => look(pane, signal))}
              >${pane.say(CARE_TEXTS.look)}</fluent-button
            >
            ${
              page.repaired === undefined || page.repaired.length === 0
                ? nothing
                : html`<fluent-button id="undo-repairs" @click=${() => void pane.attempt(() => undo(pane))}
                    >${pane.say(CARE_TEXTS.undo)}</fluent-button
                  >`
            }
          </div>`
    }
    ${page.plan === undefined || busy ? nothing : planView(pane, page.plan)}
    <h2>${pane.say(CARE_TEXTS.testTitle)}</h2>
    <p class="quiet">${pane.say(CARE_TEXTS.testIntro)}</p>
    ${
      busy
        ? nothing
        : html`<div class="buttons">
            <fluent-button id="self-test" @click=${() => pane.start((signal) => test(pane, signal))}
              >${pane.say(CARE_TEXTS.test)}</fluent-button
            >
          </div>`
    }
    ${
      page.selfTest === undefined
        ? nothing
        : html`<ul class="plain stack" id="self-test-result">
            ${page.selfTest.map((line) => testLine(pane, line))}
          </ul>`
    }
    <h2>${pane.say(CARE_TEXTS.logTitle)}</h2>
    ${logView(pane, page)} ${pane.excel === undefined ? nothing : excelPart(pane, pane.excel)}`;
}

async function look(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const plan = await lookForRepairs(pane.workbook, {
      signal,
      onProgress: (done) =>
        changePage(pane, "care", { progress: { text: pane.say(CARE_TEXTS.looking), done } }),
    });
    changePage(pane, "care", { plan });
  } finally {
    changePage(pane, "care", { progress: undefined });
  }
}

function planView(pane: Pane, plan: RepairPlan): TemplateResult {
  const { repairs, unknown, failing } = plan;
  return html`<p role="status">
      ${
        repairs.length > 0
          ? pane.say(CARE_TEXTS.found, { cells: repairs.length })
          : failing.length + unknown.length === 0
            ? pane.say(CARE_TEXTS.noRepairs)
            : pane.say(CARE_TEXTS.failing, { cells: failing.length + unknown.length })
      }
    </p>
    ${failing.slice(0, LISTED).map(
      ({ sheet, row, column, shows }) =>
        html`<div class="finding failing">
          ${jumpButton(pane, { sheet, row, column })}
          <p>${pane.say(shows === "#SPILL!" ? CARE_TEXTS.spill : CARE_TEXTS.error, { shows })}</p>
        </div>`,
    )}
    ${
      repairs.length === 0
        ? nothing
        : html`<ul class="plain" id="repairs">
              ${repairs.slice(0, LISTED).map(
                ({ sheet, row, column, before, after, why }) =>
                  html`<li class="finding">
                    ${jumpButton(pane, { sheet, row, column })}
                    ${
                      why === "enterAgain"
                        ? html`<p>${pane.say(CARE_TEXTS.enterAgain)}</p>
                            <code>${after}</code>`
                        : html`<p class="small quiet">${pane.say(CARE_TEXTS.before)}</p>
                            <code>${before}</code>
                            <p class="small quiet">${pane.say(CARE_TEXTS.after)}</p>
                            <code>${after}</code>`
                    }
                  </li>`,
              )}
            </ul>
            <div class="buttons">
              <fluent-button
                id="repair"
                appearance="primary"
                @click=${() => void pane.attempt(() => repair(pane, plan))}
                >${pane.say(CARE_TEXTS.repair, { cells: repairs.length })}</fluent-button
              >
            </div>`
    }
    ${unknown.slice(0, LISTED).map(
      ({ sheet, row, column, name }) =>
        html`<div class="finding">
          ${jumpButton(pane, { sheet, row, column })}
          <p>${pane.say(CARE_TEXTS.unknown, { name })}</p>
        </div>`,
    )}`;
}

async function repair(pane: Pane, plan: RepairPlan): Promise<void> {
  const { changed, left } = await applyRepairs(pane.workbook, plan);
  changePage(pane, "care", { plan: undefined, repaired: changed });
  pane.tell(left.length === 0 ? "success" : "warning", CARE_TEXTS.repaired, {
    cells: changed.length,
    left: left.length,
  });
}

async function undo(pane: Pane): Promise<void> {
  const { changed, left } = await undoChange(pane.workbook, pane.state.care.repaired ?? []);
  changePage(pane, "care", { repaired: undefined });
  pane.tell(left.length === 0 ? "success" : "warning", CARE_TEXTS.undone, {
    cells: changed.length,
    left: left.length,
  });
}

async function test(pane: Pane, signal: AbortSignal): Promise<void> {
  const lines: SelfTestLine[] = [];
  const all = LINES + (pane.excel?.abilities().length ?? 0);
  const wait = (milliseconds: number) => new Promise<void>((done) => setTimeout(done, milliseconds));
  changePage(pane, "care", { selfTest: [], progress: { text: pane.say(CARE_TEXTS.testing), done: 0 } });
  try {
    for await (const line of selfTest(pane.workbook, wait, pane.excel)) {
      lines.push(line);
      changePage(pane, "care", {
        selfTest: [...lines],
        progress: { text: pane.say(CARE_TEXTS.testing), done: lines.length / all },
      });
      signal.throwIfAborted();
    }
  } finally {
    changePage(pane, "care", { progress: undefined });
  }
}

function testLine(pane: Pane, { text, note, facts, outcome, failure }: SelfTestLine): TemplateResult {
  const colour = { works: "success", fails: "danger", unsure: "warning", missing: "informative" }[outcome];
  return html`<li class="beside">
    <fluent-badge appearance="tint" color=${colour}>${pane.say(CARE_TEXTS[outcome])}</fluent-badge>
    <span class="wide"
      >${pane.say(text, facts)} ${note === undefined ? nothing : pane.say(note, facts)}
      ${failure === undefined ? nothing : (failureSentence(failure, pane.state.language) ?? nothing)}</span
    >
  </li>`;
}

function logView(pane: Pane, { logs }: CareState): TemplateResult {
  if (logs === undefined)
    return html`<p class="quiet">${pane.say(CARE_TEXTS.logIntro)}</p>
      <div class="buttons">
        <fluent-button
          id="ask-log"
          size="small"
          @click=${() =>
            void pane.attempt(async () => changePage(pane, "care", { logs: await logsRuns(pane.workbook) }))}
          >${pane.say(CARE_TEXTS.logAsk)}</fluent-button
        >
      </div>`;
  return html`<div class="beside">
    <fluent-switch
      id="log"
      aria-label=${pane.say(CARE_TEXTS.logSwitch)}
      .checked=${logs}
      @change=${() =>
        void pane.attempt(async () => {
          await setLogsRuns(pane.workbook, !logs);
          changePage(pane, "care", { logs: !logs });
        })}
    ></fluent-switch>
    <label for="log" class="wide">${pane.say(CARE_TEXTS.logSwitch)}</label>
  </div>`;
}
