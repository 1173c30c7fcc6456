import { html, nothing, type TemplateResult } from "lit";
import { AGE_TEXTS } from "../texts/pane";
import { isOlder, isResultPage, isShort, type WorkAnew } from "./pageAge";
import type { PageId, Pane } from "./pane";

/** The sentence at the head of results that are older than the workbook, with the button where they take long. */
export function ageNotice(
  pane: Pane,
  page: PageId,
  workAnew: WorkAnew | undefined,
): TemplateResult | typeof nothing {
  if (!isResultPage(page) || workAnew === undefined || !isOlder(pane.state, page)) return nothing;
  if (pane.state[page].progress !== undefined) return nothing;
  const { anew: tried, version } = pane.state;
  const short = isShort(pane, page) && !(tried?.version === version && tried.failed);
  return html`<fluent-message-bar id="older" intent="warning" layout="multiline"
      >${pane.say(short ? AGE_TEXTS.working : AGE_TEXTS.older)}</fluent-message-bar
    >
    ${
      short
        ? nothing
        : html`<div class="buttons">
            <fluent-button
              id="work-anew"
              size="small"
              appearance="primary"
              @click=${() => pane.start((signal) => workAnew(pane, signal))}
              >${pane.say(AGE_TEXTS.anew)}</fluent-button
            >
          </div>`
    }`;
}
