import { html, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { PAGE_NAMES, PANE_TEXTS } from "../texts/pane";
import type { PageId, Pane } from "./pane";
import { openPage } from "./openPage";
import { tabsThatFit } from "./tabsThatFit";

/** Pages that are not part of the work from week to week; they stand under More. */
const BEHIND: readonly PageId[] = ["settings", "functions", "care"];

/** The pages in one row that stays in sight: what fits beside one another, and More for the others. */
export function tabsView(pane: Pane, pages: readonly PageId[]): TemplateResult {
  const { page: chosen, width } = pane.state;
  const work = pages.filter((page) => !BEHIND.includes(page));
  const name = (page: PageId) => pane.say(PAGE_NAMES[page]);
  const fit = tabsThatFit(work, chosen, name, pane.say(PANE_TEXTS.more), {
    width,
    fontFamily: getComputedStyle(pane.root.host).fontFamily,
  });
  const behind = [...work, ...BEHIND].filter((page) => !fit.includes(page));
  return html`<fluent-tablist
      aria-label=${pane.say(PANE_TEXTS.pages)}
      size="small"
      activeid=${`tab-${chosen}`}
      @change=${(event: Event) =>
        openPage(
          pane,
          (event.currentTarget as HTMLElement & { activeid: string }).activeid.slice(4) as PageId,
        )}
    >
      ${repeat(
        fit,
        (page) => `${page} ${pane.state.language}`,
        (page) =>
          html`<fluent-tab id=${`tab-${page}`} aria-controls=${`page-${page}`}>${name(page)}</fluent-tab>`,
      )}
    </fluent-tablist>
    <details
      id="more"
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === "Escape") close(event.currentTarget as HTMLDetailsElement);
      }}
    >
      <summary id="tab-more">${pane.say(PANE_TEXTS.more)}</summary>
      <div class="behind">
        ${behind.map(
          (page) =>
            html`<fluent-button
              id=${`more-${page}`}
              size="small"
              appearance="subtle"
              @click=${(event: Event) => {
                close((event.currentTarget as HTMLElement).closest("details")!);
                openPage(pane, page);
              }}
              >${name(page)}</fluent-button
            >`,
        )}
      </div>
    </details>`;
}

function close(details: HTMLDetailsElement): void {
  details.open = false;
  details.querySelector<HTMLElement>("summary")?.focus();
}
