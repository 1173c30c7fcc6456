import { html, nothing, type TemplateResult } from "lit";
import { ageNotice } from "./ageNotice";
import { tabsView } from "./tabsView";
import { choiceField } from "./fields";
import { FOOT, missingPage, PAGE_IDS, PAGES } from "./pages";
import type { PageId, Pane } from "./pane";
import { LANGUAGES, type Language } from "../texts/language";
import { goToStep, walkCard } from "./walk";
import { PAGE_NAMES, PANE_TEXTS, WALK_TEXTS } from "../texts/pane";
import { TEXTS } from "../texts/texts";

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;

/** The whole pane: pages to choose from, the message of the last action, and the chosen page. */
export function paneView(pane: Pane): TemplateResult {
  const { page: chosen, message } = pane.state;
  return html`<div class="pane" lang=${pane.state.language}>
    <div class="top">
      <div class="corner"></div>
      ${tabsView(pane, PAGE_IDS)}
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
          aria-label=${pane.say(PAGE_NAMES[id])}
          ?hidden=${id !== chosen}
        >
          ${id === chosen ? pageView(pane, id) : nothing}
        </div>`,
    )}
    <div class="foot">
      ${choiceField({
        id: "language",
        label: pane.say(PANE_TEXTS.language),
        value: pane.state.language,
        options: LANGUAGES.map((language) => ({ value: language, label: LANGUAGE_NAMES[language] })),
        onChoose: (language) => void pane.attempt(() => pane.showLanguage(language as Language)),
      })}
      <fluent-button id="walk-again" size="small" @click=${() => goToStep(pane, 0)}
        >${pane.say(WALK_TEXTS.again)}</fluent-button
      >
    </div>
  </div>`;
}

function pageView(pane: Pane, id: PageId): TemplateResult {
  const fetched = PAGES[id];
  return fetched === undefined
    ? missingPage(pane, id)
    : html`${ageNotice(pane, id, fetched.anew)}${PAGES.season?.notice?.(pane, id)}${fetched.page(pane)}${FOOT.account?.(pane)}`;
}
