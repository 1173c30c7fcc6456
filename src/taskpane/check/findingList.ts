import { ACTION_TEXTS } from "../../texts/findings";
import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Finding } from "../../survey/checks/finding";
import { findingGroups, type FindingGroup } from "../../survey/checks/findingGroups";
import { groupHeading, mendSentence } from "../../survey/checks/groupSentence";
import type { CellMend } from "../../survey/checks/mendOf";
import type { Season } from "../../survey/season/season";
import { CHECK_TEXTS, MEND_TEXTS } from "../../texts/pane";
import { foldsOf } from "../folds";
import { jumpButton } from "../jumpButton";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { severityBadge } from "../severityBadge";
import { counterOf, findingKey, byAction, FEW_FINDINGS, showGroups, type ActionGroup } from "./checkState";
import { moreOf } from "./countTable";
import { mendFindings } from "./mendFindings";
import { actionOf, remedyOf, sentenceOf, titleOf, whyOf } from "./findingTexts";

/** What may stand beside a finding in a list: buttons. */
export type FindingButtons = (finding: Finding) => TemplateResult | typeof nothing;

/** The findings by what is to be done about them and what caused them; few of them as a plain list. */
export function findingsView(
  pane: Pane,
  findings: readonly Finding[],
  season: Season,
  buttons: FindingButtons,
): TemplateResult {
  const groups = groupsOf(findings, season);
  const actions = byAction(groups, actionOf);
  if (findings.length <= FEW_FINDINGS)
    return html`<ul class="plain" id="few-findings" @keydown=${walkList}>
      ${actions
        .flatMap((action) => action.groups)
        .flatMap((group) =>
          group.findings.map((finding) =>
            findingItem(pane, finding, withMend(pane, group, buttons), (own) => inFull(pane, group, own)),
          ),
        )}
    </ul>`;
  return html`${repeat(
    actions,
    ({ action }) => action,
    (group) => actionGroup(pane, group, buttons),
  )}`;
}

let made: { findings: readonly Finding[]; season: Season; groups: readonly FindingGroup[] } | undefined;

/** The groups of the findings that are shown, made once for them. */
function groupsOf(findings: readonly Finding[], season: Season): readonly FindingGroup[] {
  const isSame =
    made?.season === season &&
    made.findings.length === findings.length &&
    findings.every((finding, index) => finding === made!.findings[index]);
  if (!isSame) made = { findings, season, groups: findingGroups(findings, season) };
  return made!.groups;
}

function actionGroup(pane: Pane, { action, groups }: ActionGroup, buttons: FindingButtons): TemplateResult {
  return html`<section class="stack" aria-labelledby=${`do-${action}`}>
    <h2 id=${`do-${action}`}>${pane.say(ACTION_TEXTS[action])}</h2>
    <fluent-accordion @change=${followFolds(pane)}>
      ${repeat(
        groups,
        ({ key }) => key,
        (group) => causeItem(pane, group, buttons),
      )}
    </fluent-accordion>
  </section>`;
}

function causeItem(pane: Pane, group: FindingGroup, buttons: FindingButtons): TemplateResult {
  const { language } = pane.state;
  const { key, code, severity, findings, mends } = group;
  const others = otherWays(mends);
  return foldedList(pane, {
    key,
    heading: groupHeading(group, language),
    badge: severityBadge(pane, severity),
    findings,
    intro: html`<p>${whyOf(code, language)}</p>
      <p>${pane.say(CHECK_TEXTS.whatToDo, { remedy: remedyOf(code, language) })}</p>
      ${
        mends.length < 2
          ? nothing
          : html`<p>${mendSentence(mends, language)}</p>
              <div class="buttons">
                <fluent-button
                  class="mend-all"
                  size="small"
                  appearance="primary"
                  @click=${() => void currentOnly(pane, "check", () => mendFindings(pane, group, mends))}
                  >${pane.say(MEND_TEXTS.all, { cells: mends.length })}</fluent-button
                >
                ${
                  others.length < 2
                    ? nothing
                    : mendButton(pane, group, others, pane.say(MEND_TEXTS.allOther, { cells: others.length }))
                }
              </div>`
      }`,
    buttons: withMend(pane, group, buttons),
    below: (finding) => mendWords(pane, group, finding),
  });
}

function mendsOf({ mends }: FindingGroup, { sheet, row, columnNumber }: Finding): readonly CellMend[] {
  return mends.filter((mend) => mend.sheet === sheet && mend.row === row && mend.column === columnNumber);
}

/** The same cells by the other of two readings, where there is one. */
function otherWays(mends: readonly CellMend[]): (CellMend & { readonly to: number })[] {
  return mends.flatMap(({ other, ...mend }) => (other === undefined ? [] : [{ ...mend, to: other }]));
}

function mendButton(pane: Pane, group: FindingGroup, mends: readonly CellMend[], label: string) {
  return html`<fluent-button
    class="mend"
    size="small"
    @click=${() => void currentOnly(pane, "check", () => mendFindings(pane, group, mends))}
    >${label}</fluent-button
  >`;
}

/** The buttons that mend a finding's cell, before the others. */
function withMend(pane: Pane, group: FindingGroup, buttons: FindingButtons): FindingButtons {
  return (finding) => {
    const mends = mendsOf(group, finding);
    const others = otherWays(mends);
    return html`${mends.length === 0 ? nothing : mendButton(pane, group, mends, pane.say(MEND_TEXTS.one))}
    ${
      others.length === 0
        ? nothing
        : mendButton(pane, group, others, pane.say(MEND_TEXTS.other, { to: others[0].to }))
    }
    ${buttons(finding)}`;
  };
}

function mendWords(pane: Pane, group: FindingGroup, finding: Finding): TemplateResult | typeof nothing {
  const mends = mendsOf(group, finding);
  return mends.length === 0
    ? nothing
    : html`<p class="small">${mendSentence(mends, pane.state.language)}</p>`;
}

/** What a folded group says over its list, below a finding that stands alone. */
function inFull(pane: Pane, group: FindingGroup, finding: Finding): TemplateResult {
  const { language } = pane.state;
  return html`${mendWords(pane, group, finding)}
    <p class="small quiet">
      ${severityBadge(pane, group.severity)} ${titleOf(group.code, language)}.
      ${pane.say(CHECK_TEXTS.whatToDo, { remedy: remedyOf(group.code, language) })}
    </p>`;
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
    <span slot="heading" class="heading">${list.badge ?? nothing} ${list.heading}</span>
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
