import { html, nothing, type TemplateResult } from "lit";
import { ageNotice } from "./ageNotice";
import type { WorkAnew } from "./pageAge";
import { checkAnew } from "./check/runCheck";
import { countGapsAnew } from "./gaps/countGaps";
import { decideAnew } from "./decide/decide";
import { makeCardsAnew } from "./crew/makeCards";
import { workOutlookAnew } from "./outlook/workOutlook";
import { readSettingsAnew } from "./settings/settingsActions";
import { checkPage } from "./check/checkPage";
import { choiceField } from "./fields";
import { nodesPage } from "./nodes/nodesPage";
import { workNodesAnew } from "./nodes/workNodes";
import { gapsPage } from "./gaps/gapsPage";
import { crewPage } from "./crew/crewPage";
import { decidePage } from "./decide/decidePage";
import { outlookPage } from "./outlook/outlookPage";
import { carePage } from "./care/carePage";
import { settingsPage } from "./settings/settingsPage";
import { functionsPage } from "./functions/functionsPage";
import type { PageId, Pane } from "./pane";
import { LANGUAGES, type Language } from "../texts/language";
import { goToStep, walkCard } from "./walk";
import { PAGE_NAMES, PANE_TEXTS, WALK_TEXTS } from "../texts/pane";
import { TEXTS } from "../texts/texts";

/** Every page, and how its results are worked out anew when the workbook has changed. */
export const PAGES: Readonly<Record<PageId, { page(pane: Pane): TemplateResult; anew?: WorkAnew }>> = {
  check: { page: checkPage, anew: checkAnew },
  nodes: { page: nodesPage, anew: workNodesAnew },
  gaps: { page: gapsPage, anew: countGapsAnew },
  decide: { page: decidePage, anew: decideAnew },
  crew: { page: crewPage, anew: makeCardsAnew },
  outlook: { page: outlookPage, anew: workOutlookAnew },
  settings: { page: settingsPage, anew: readSettingsAnew },
  functions: { page: functionsPage },
  care: { page: carePage },
};

const PAGE_IDS = Object.keys(PAGES) as PageId[];

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;

/** The whole pane: pages to choose from, the message of the last action, and the chosen page. */
export function paneView(pane: Pane): TemplateResult {
  const { page: chosen, message } = pane.state;
  return html`<div class="pane" lang=${pane.state.language}>
    <div class="top">
      <div class="corner"></div>
      <fluent-tablist
        aria-label=${pane.say(PANE_TEXTS.pages)}
        size="small"
        activeid=${`tab-${chosen}`}
        @change=${(event: Event) => {
          const page = (event.currentTarget as HTMLElement & { activeid: string }).activeid.slice(
            4,
          ) as PageId;
          if (page === pane.state.page) return;
          pane.change((state) => ({ ...state, page }));
          void pane.attempt(() => pane.held.look());
        }}
      >
        ${PAGE_IDS.map(
          (id) =>
            html`<fluent-tab id=${`tab-${id}`} aria-controls=${`page-${id}`}
              >${pane.say(PAGE_NAMES[id])}</fluent-tab
            >`,
        )}
      </fluent-tablist>
    </div>
    <div role="status" aria-live="polite">
      ${
        message === undefined
          ? nothing
          : html`<fluent-message-bar intent=${message.intent} layout="singleline">
              ${message.text}
              <fluent-button
                slot="dismiss"
                size="small"
                appearance="transparent"
                icon-only
                aria-label=${pane.say(PANE_TEXTS.close)}
                @click=${() => pane.change(({ message: _message, ...rest }) => rest)}
                >✕</fluent-button
              >
            </fluent-message-bar>`
      }
    </div>
    ${walkCard(pane)}
    <div class="unseen" role="status" aria-live="polite">${pane.state.announced}</div>
    ${PAGE_IDS.map(
      (id) =>
        html`<div
          class="page"
          id=${`page-${id}`}
          role="tabpanel"
          aria-labelledby=${`tab-${id}`}
          ?hidden=${id !== chosen}
        >
          ${id === chosen ? html`${ageNotice(pane, id, PAGES[id].anew)}${PAGES[id].page(pane)}` : nothing}
        </div>`,
    )}
    <div class="foot">
      ${choiceField({
        id: "language",
        label: pane.say(PANE_TEXTS.language),
        value: pane.state.language,
        options: LANGUAGES.map((language) => ({ value: language, label: LANGUAGE_NAMES[language] })),
        onChoose: (language) => pane.change((state) => ({ ...state, language: language as Language })),
      })}
      <fluent-button id="walk-again" size="small" @click=${() => goToStep(pane, 0)}
        >${pane.say(WALK_TEXTS.again)}</fluent-button
      >
    </div>
  </div>`;
}
