import { html, nothing, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import type { Finding } from "../../survey/checks/finding";
import type { SetAside } from "../../survey/checks/setAside";
import { ASIDE_TEXTS, PANE_TEXTS } from "../../texts/pane";
import { textField } from "../fields";
import { remembered, remember } from "../ownView";
import { changePage } from "../changePage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { showOnce } from "../showOnce";
import { isoDay } from "../../survey/reading/serialDate";
import type { AsideQuestion } from "./checkState";
import { foldedList } from "./findingList";
import { sentenceOf } from "./findingTexts";
import { dropAside, keepAside } from "../../workbook/actions/setAside";

/** The button that asks why a finding may stand. */
export function asideButton(pane: Pane, finding: Finding): TemplateResult {
  return html`<fluent-button
    class="aside"
    size="small"
    appearance="subtle"
    @click=${() => ask(pane, { finding, reason: "", by: remembered("name"), lacking: false })}
    >${pane.say(ASIDE_TEXTS.setAside)}</fluent-button
  >`;
}

function ask(pane: Pane, settingAside: AsideQuestion | undefined): void {
  changePage(pane, "check", { settingAside });
}

/** The dialog in which a person says why a finding may stand, and who says so. */
export function asideDialog(pane: Pane, question: AsideQuestion): TemplateResult {
  return html`<fluent-dialog
    id="aside-dialog"
    type="modal"
    aria-label=${pane.say(ASIDE_TEXTS.title)}
    ${ref(showOnce)}
    @toggle=${({ detail }: CustomEvent<{ newState: string }>) => {
      if (detail.newState === "closed") ask(pane, undefined);
    }}
  >
    <fluent-dialog-body>
      <h2 slot="title">${pane.say(ASIDE_TEXTS.title)}</h2>
      <div class="stack">
        <p>${sentenceOf(question.finding, pane.state.language)}</p>
        ${textField({
          id: "aside-reason",
          label: pane.say(ASIDE_TEXTS.reason),
          value: question.reason,
          onInput: (reason) => ask(pane, { ...question, reason }),
        })}
        ${textField({
          id: "aside-by",
          label: pane.say(ASIDE_TEXTS.by),
          value: question.by,
          onInput: (by) => ask(pane, { ...question, by }),
        })}
        <p role="alert">${question.lacking ? pane.say(ASIDE_TEXTS.both) : nothing}</p>
      </div>
      <fluent-button
        slot="action"
        id="aside-keep"
        appearance="primary"
        @click=${() => void currentOnly(pane, "check", () => setAside(pane, question))}
        >${pane.say(ASIDE_TEXTS.setAside)}</fluent-button
      >
      <fluent-button slot="action" id="aside-cancel" @click=${() => ask(pane, undefined)}
        >${pane.say(PANE_TEXTS.cancel)}</fluent-button
      >
    </fluent-dialog-body>
  </fluent-dialog>`;
}

async function setAside(pane: Pane, question: AsideQuestion): Promise<void> {
  const { finding, reason, by } = question;
  const entries = await keepAside(pane.workbook, finding, { reason, by, on: isoDay(pane.today) });
  if (entries === undefined) {
    ask(pane, { ...question, lacking: true });
    return;
  }
  remember("name", by.trim());
  changePage(pane, "check", { entries, settingAside: undefined });
  pane.tell("success", ASIDE_TEXTS.done);
}

/** The findings that were let stand, with reason and name. */
export function asideItem(
  pane: Pane,
  aside: readonly { readonly finding: Finding; readonly entry: SetAside }[],
): TemplateResult | typeof nothing {
  if (aside.length === 0) return nothing;
  const entries = new Map(aside.map(({ finding, entry }) => [finding, entry]));
  return foldedList(pane, {
    key: "aside",
    heading: `${pane.say(ASIDE_TEXTS.list)} (${aside.length})`,
    findings: [...entries.keys()],
    buttons: (finding) =>
      html`<fluent-button
        size="small"
        appearance="subtle"
        @click=${() => void pane.attempt(() => back(pane, finding))}
        >${pane.say(ASIDE_TEXTS.takeBack)}</fluent-button
      >`,
    below: (finding) => {
      const { reason, by, on } = entries.get(finding)!;
      return html`<p class="small">${pane.say(ASIDE_TEXTS.entry, { reason, by, on })}</p>`;
    },
  });
}

async function back(pane: Pane, finding: Finding): Promise<void> {
  const entries = await dropAside(pane.workbook, finding);
  changePage(pane, "check", { entries });
  pane.tell("success", ASIDE_TEXTS.takenBack);
}
