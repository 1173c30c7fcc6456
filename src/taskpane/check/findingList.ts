import { ACTION_TEXTS } from "../../texts/findings";
import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Finding } from "../../survey/checks/finding";
import { CHECK_TEXTS } from "../../texts/pane";
import { foldsOf } from "../folds";
import { jumpButton } from "../jumpButton";
import type { Pane } from "../pane";
import { severityBadge } from "../severityBadge";
import {
  counterOf,
  findingKey,
  groupFindings,
  showGroups,
  type ActionGroup,
  type FindingGroup,
} from "./checkState";
import { moreOf } from "./countTable";
import { actionOf, remedyOf, sentenceOf, titleOf, whyOf } from "./findingTexts";

/** What may stand beside a finding in a list: buttons. */
export type FindingButtons = (finding: Finding) => TemplateResult | typeof nothing;

/** The findings, grouped by what is to be done about them. */
export function findingGroups(
  pane: Pane,
  findings: readonly Finding[],
  buttons: FindingButtons,
): TemplateResult {
  return html`${repeat(
    groupFindings(findings, actionOf),
    ({ action }) => action,
    (group) => actionGroup(pane, group, buttons),
  )}`;
}

function actionGroup(pane: Pane, { action, groups }: ActionGroup, buttons: FindingButtons): TemplateResult {
  return html`<section class="stack" aria-labelledby=${`do-${action}`}>
    <h2 id=${`do-${action}`}>${pane.say(ACTION_TEXTS[action])}</h2>
    <fluent-accordion @change=${followFolds(pane)}>
      ${repeat(
        groups,
        ({ code }) => code,
        (group) => kindItem(pane, group, buttons),
      )}
    </fluent-accordion>
  </section>`;
}

function kindItem(
  pane: Pane,
  { code, severity, findings }: FindingGroup,
  buttons: FindingButtons,
): TemplateResult {
  const { language } = pane.state;
  return foldedList(pane, {
    key: code,
    heading: titleOf(code, language),
    badge: severityBadge(pane, severity),
    findings,
    intro: html`<p>${whyOf(code, language)}</p>
      <p>${pane.say(CHECK_TEXTS.whatToDo, { remedy: remedyOf(code, language) })}</p>`,
    buttons,
  });
}

export interface FoldedList {
  readonly key: string;
  readonly heading: string;
  readonly badge?: TemplateResult;
  readonly findings: readonly Finding[];
  readonly intro?: TemplateResult;
  readonly buttons: FindingButtons;
  /** What stands below a finding's sentence. */
  readonly below?: FindingButtons;
}

/** Takes over which items of an accordion are open, after the accordion has changed them. */
export function followFolds(pane: Pane): (event: Event) => void {
  return (event) => {
    const folds = foldsOf(event);
    pane.change((state) => ({ ...state, check: showGroups(state.check, folds) }));
  };
}

/** A list of findings that opens and closes, a stretch of it at a time, so that ten thousand stay light. */
export function foldedList(pane: Pane, list: FoldedList): TemplateResult {
  const listed = pane.state.check.open.get(list.key);
  return html`<fluent-accordion-item
    block
    marker-position="end"
    headinglevel="3"
    data-key=${list.key}
    .expanded=${listed !== undefined}
  >
    <span slot="heading" class="heading"
      >${list.badge ?? nothing} ${list.heading} (${list.findings.length})</span
    >
    ${listed === undefined ? nothing : html`${list.intro ?? nothing} ${findingItems(pane, list, listed)}`}
  </fluent-accordion-item>`;
}

function findingItems(
  pane: Pane,
  { key, findings, buttons, below }: FoldedList,
  listed: number,
): TemplateResult {
  return html`<ul class="plain" @keydown=${walkList}>
      ${repeat(findings.slice(0, listed), findingKey, (finding) => findingItem(pane, finding, buttons, below))}
    </ul>
    ${moreOf(pane, key, findings.length, listed)}`;
}

/** One finding with the button that goes to its cell. */
export function findingItem(
  pane: Pane,
  finding: Finding,
  buttons: FindingButtons,
  below?: FindingButtons,
): TemplateResult {
  const { sheet, row, columnNumber } = finding;
  return html`<li class="finding">
    <div class="beside">
      ${jumpButton(pane, { sheet, row, column: columnNumber || 1 })} ${buttons(finding)}
    </div>
    <p>${sentenceOf(finding, pane.state.language)}</p>
    ${
      counterOf(finding) === ""
        ? nothing
        : html`<p class="small quiet">${pane.say(CHECK_TEXTS.countedBy, { counter: counterOf(finding) })}</p>`
    }
    ${below?.(finding) ?? nothing}
  </li>`;
}

/** Arrow keys, Home and End go from finding to finding within a list. */
function walkList(event: KeyboardEvent): void {
  const step = { ArrowDown: 1, ArrowUp: -1, Home: -Infinity, End: Infinity }[event.key];
  if (step === undefined) return;
  const jumps = [...(event.currentTarget as HTMLElement).querySelectorAll<HTMLElement>(".jump")];
  const here = jumps.findIndex((jump) => jump.closest("li")?.contains(event.target as Node));
  if (here < 0) return;
  event.preventDefault();
  jumps[Math.min(Math.max(here + step, 0), jumps.length - 1)].focus();
}
