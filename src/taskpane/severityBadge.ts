import { SEVERITY_TEXTS } from "../texts/findings";
import { html, type TemplateResult } from "lit";
import type { Severity } from "../survey/checks/finding";
import type { Pane } from "./pane";

const COLOURS: Readonly<Record<Severity, string>> = {
  wrong: "danger",
  ask: "warning",
  note: "informative",
};

/** How sure a finding is: a word, with a colour beside it. */
export function severityBadge(pane: Pane, severity: Severity): TemplateResult {
  return html`<fluent-badge size="medium" appearance="tint" color=${COLOURS[severity]}
    >${pane.say(SEVERITY_TEXTS[severity])}</fluent-badge
  >`;
}
