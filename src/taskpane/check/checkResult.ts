import { leavesOpen } from "../../survey/season/seasonAccount";
import { html, nothing, type TemplateResult } from "lit";
import { countsByCounter, countsByRow } from "../../survey/checks/counts";
import type { Finding, Severity } from "../../survey/checks/finding";
import { sortFindings } from "../../survey/checks/setAside";
import { SHEETS } from "../../survey/sheets/sheets";
import { SEVERITY_TEXTS } from "../../texts/findings";
import { CHECK_TEXTS, HEADS_TEXTS, MEND_TEXTS } from "../../texts/pane";
import { choiceField, textField, tickField } from "../fields";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { asideButton, asideDialog, asideItem } from "./asideView";
import {
  FEW_FINDINGS,
  SEVERITIES,
  compareRuns,
  countSeverities,
  counterOf,
  filterFindings,
  toggleSheet,
  type CheckState,
  type FoundTable,
} from "./checkState";
import type { FindingFilter } from "./findingFilter";
import { countTable } from "./countTable";
import { findingsView, foldedList, followFolds } from "./findingList";
import { sentenceOf } from "./findingTexts";
import { openHeads } from "./headsStep";
import { lookForTables } from "./lookForTables";
import { takeMendsBack } from "./mendFindings";
import { markFindings, takeMarksOff } from "./markFindings";
import { printFindings } from "./printFindings";
import { writeFindings } from "./writeFindings";

/** The sheets in which tables were found, to choose from. */
export function foundSheets(pane: Pane, check: CheckState, tables: readonly FoundTable[]): TemplateResult {
  const ownHeads = html`<div class="buttons">
    <fluent-button id="own-heads" size="small" @click=${() => void pane.attempt(() => chooseHeads(pane))}
      >${pane.say(HEADS_TEXTS.open)}</fluent-button
    >
  </div>`;
  if (tables.length === 0)
    return html`<fluent-message-bar intent="info" layout="singleline"
        >${pane.say(CHECK_TEXTS.nothingFound)}</fluent-message-bar
      >
      ${ownHeads}`;
  return html`<section class="stack" aria-labelledby="sheets-found">
    <h2 id="sheets-found">${pane.say(CHECK_TEXTS.sheetsFound)}</h2>
    ${tables.map(({ sheet, shape, rows }, index) =>
      tickField({
        id: `sheet-${index}`,
        label: pane.say(CHECK_TEXTS.sheetRows, { sheet, shape: pane.say(SHEETS[shape].name), rows }),
        ticked: !check.leftOut.has(sheet),
        onTick: () => pane.change((state) => ({ ...state, check: toggleSheet(state.check, sheet) })),
      }),
    )}
    ${ownHeads}
  </section>`;
}

/** Opens the step for own heads at the sheet that most needs it: one in which no table was found. */
async function chooseHeads(pane: Pane): Promise<void> {
  await lookForTables(pane, new AbortController().signal);
  const { headsOf = [], tables = [] } = pane.state.check;
  const unknown = headsOf.find(({ sheet }) => !tables.some((table) => table.sheet === sheet));
  const first = unknown ?? headsOf[0];
  if (first === undefined)
    pane.change((state) => ({ ...state, message: { intent: "info", text: pane.say(HEADS_TEXTS.noHeads) } }));
  else openHeads(pane, first.sheet);
}

/** What the check came to, before anything that can be done about it. */
export function checkVerdict(pane: Pane, check: CheckState, findings: readonly Finding[]): TemplateResult {
  const { open, aside } = sortFindings(findings, check.entries);
  const rowsOf = (tables: readonly FoundTable[]) => tables.reduce((sum, table) => sum + table.rows, 0);
  const tables = check.tables ?? [];
  if (open.length === 0 && rowsOf(tables) === 0)
    return html`<fluent-message-bar id="check-result" intent="info" layout="multiline"
      >${pane.say(CHECK_TEXTS.nothingCounted)}</fluent-message-bar
    >`;
  const rows = rowsOf(tables.filter(({ sheet }) => !check.leftOut.has(sheet)));
  return summary(pane, check, open, aside.length, rows);
}

/** What the check found, and what can be done about it. */
export function checkResult(pane: Pane, check: CheckState, findings: readonly Finding[]): TemplateResult {
  const { language } = pane.state;
  const { season, mended = [] } = check;
  const { open, aside } = sortFindings(findings, check.entries);
  const shown = filterFindings(open, check.filter, (finding) => sentenceOf(finding, language));
  const filter = filterItem(pane, check, open);
  return html`${
    mended.length === 0
      ? nothing
      : html`<div class="buttons">
          <fluent-button
            id="take-mends-back"
            size="small"
            @click=${() => void pane.attempt(() => takeMendsBack(pane))}
            >${pane.say(MEND_TEXTS.takeBack, { cells: mended.length })}</fluent-button
          >
        </div>`
  }
  ${
    findings.length === 0 || season === undefined
      ? nothing
      : html`<fluent-accordion @change=${followFolds(pane)}
            >${open.length > FEW_FINDINGS ? filter : nothing}</fluent-accordion
          >
          ${findingsView(pane, shown, season, (finding) => asideButton(pane, finding))}
          ${actions(pane, shown)}
          <p class="small" role="status">
            ${
              shown.length === open.length
                ? nothing
                : pane.say(CHECK_TEXTS.shown, { shown: shown.length, all: open.length })
            }
          </p>
          <fluent-accordion @change=${followFolds(pane)}
            >${open.length > FEW_FINDINGS ? nothing : filter} ${asideItem(pane, aside)}
            ${countTable(pane, "perRow", CHECK_TEXTS.rowHead, rowCounts(shown))}
            ${countTable(pane, "perCounter", CHECK_TEXTS.counter, counterCounts(shown, check))}
          </fluent-accordion>`
  }
  ${check.settingAside === undefined ? nothing : asideDialog(pane, check.settingAside)}`;
}

function rowCounts(findings: readonly Finding[]) {
  return countsByRow(findings).map(({ block, row, ...counts }) => ({ name: `${block}, ${row}`, ...counts }));
}

function counterCounts(findings: readonly Finding[], { season }: CheckState) {
  if (season === undefined) return [];
  return countsByCounter(findings, season).map(({ counter, ...counts }) => ({ name: counter, ...counts }));
}

function summary(
  pane: Pane,
  check: CheckState,
  findings: readonly Finding[],
  aside: number,
  rows: number,
): TemplateResult {
  const counts = countSeverities(findings);
  const isClean = findings.length === 0 && rows > 0 && !(check.season && leavesOpen(check.season));
  const change = check.before === undefined ? undefined : compareRuns(check.before, check.findings ?? []);
  return html`<fluent-message-bar
      id="check-result"
      intent=${isClean ? "success" : counts.wrong > 0 ? "error" : "warning"}
      layout="singleline"
      >${isClean ? pane.say(CHECK_TEXTS.clean, { rows }) : pane.say(CHECK_TEXTS.result, { ...counts, rows })}
      ${aside === 0 ? nothing : pane.say(CHECK_TEXTS.asideCount, { aside })}</fluent-message-bar
    >
    ${
      change === undefined
        ? nothing
        : html`<p id="since">
              ${pane.say(CHECK_TEXTS.since, {
                gone: change.gone.length,
                come: change.come.length,
                stayed: change.stayed,
              })}
            </p>
            ${
              change.gone.length + change.come.length === 0
                ? nothing
                : html`<fluent-accordion @change=${followFolds(pane)}>
                    ${changeItem(pane, "gone", CHECK_TEXTS.gone, change.gone)}
                    ${changeItem(pane, "come", CHECK_TEXTS.come, change.come)}
                  </fluent-accordion>`
            }`
    }`;
}

function changeItem(
  pane: Pane,
  key: "gone" | "come",
  heading: (typeof CHECK_TEXTS)["gone" | "come"],
  findings: readonly Finding[],
) {
  return findings.length === 0
    ? nothing
    : foldedList(pane, {
        key,
        heading: `${pane.say(heading)} (${findings.length})`,
        findings,
        buttons: () => nothing,
      });
}

function actions(pane: Pane, shown: readonly Finding[]): TemplateResult {
  const button = (id: string, text: string, action: () => Promise<void>) =>
    html`<fluent-button id=${id} size="small" @click=${() => void action()}>${text}</fluent-button>`;
  return html`<div class="buttons">
    ${button("write-findings", pane.say(CHECK_TEXTS.writeSheet), () => currentOnly(pane, "check", () => writeFindings(pane, shown)))}
    ${button("mark-cells", pane.say(CHECK_TEXTS.mark), () => currentOnly(pane, "check", () => markFindings(pane, shown)))}
    ${button("unmark-cells", pane.say(CHECK_TEXTS.unmark), () => pane.attempt(() => takeMarksOff(pane)))}
    ${button("print-findings", pane.say(CHECK_TEXTS.print), () => currentOnly(pane, "check", () => printFindings(pane, shown)))}
  </div>`;
}

function filterItem(pane: Pane, check: CheckState, findings: readonly Finding[]): TemplateResult {
  const { filter } = check;
  const set = (part: Partial<FindingFilter>) =>
    pane.change((state) => ({
      ...state,
      check: { ...state.check, filter: { ...state.check.filter, ...part } },
    }));
  const all = { value: "", label: pane.say(CHECK_TEXTS.all) };
  const names = (values: Iterable<string>) =>
    [...new Set(values)].filter((value) => value !== "").map((value) => ({ value, label: value }));
  return html`<fluent-accordion-item block marker-position="end" headinglevel="2" data-key="filter">
    <span slot="heading" class="heading">${pane.say(CHECK_TEXTS.filter)}</span>
    <div class="stack">
      ${textField({
        id: "filter-words",
        label: pane.say(CHECK_TEXTS.words),
        value: filter.words,
        onInput: (words) => set({ words }),
      })}
      ${choiceField({
        id: "filter-severity",
        label: pane.say(CHECK_TEXTS.severity),
        value: filter.severity,
        options: [all, ...SEVERITIES.map((value) => ({ value, label: pane.say(SEVERITY_TEXTS[value]) }))],
        onChoose: (severity) => set({ severity: severity as Severity | "" }),
      })}
      ${choiceField({
        id: "filter-sheet",
        label: pane.say(CHECK_TEXTS.sheet),
        value: filter.sheet,
        options: [all, ...names(findings.map(({ sheet }) => sheet))],
        onChoose: (sheet) => set({ sheet }),
      })}
      ${choiceField({
        id: "filter-counter",
        label: pane.say(CHECK_TEXTS.counter),
        value: filter.counter,
        options: [all, ...names(findings.map(counterOf))],
        onChoose: (counter) => set({ counter }),
      })}
    </div>
  </fluent-accordion-item>`;
}
