import { SEVERITY_TEXTS } from "../texts/findings";
import { html, type TemplateResult } from "lit";
import type { Severity } from "../survey/checks/finding";
import type { Pane } from "./pane";

const COLOURS: Readonly<Record<Severity, string>> = {
  wrong: "danger",
  ask: "warning",
  note: "informative",
};

const SHAPES: Readonly<Record<Severity, string>> = { wrong: "■", ask: "▲", note: "●" };

/** How sure a finding is: a word with a shape and a colour. */
export function severityBadge(pane: Pane, severity: Severity): TemplateResult {
  return html`<fluent-badge size="medium" appearance="tint" color=${COLOURS[severity]}
    ><span aria-hidden="true">${SHAPES[severity]}&nbsp;</span
    >${pane.say(SEVERITY_TEXTS[severity])}</fluent-badge
  >`;
}
