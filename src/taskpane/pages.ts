import { html, type nothing, type TemplateResult } from "lit";
import { bringTables } from "../functions/wholeTables";
import { PANE_TEXTS } from "../texts/pane";
import { checkPage, fetchCheckParts } from "./check/checkPage";
import type { WorkAnew } from "./pageAge";
import type { PageId, Pane } from "./pane";
import { seasonWork } from "./heldSeason";
import { seasonBeingRead } from "./season/seasonBeingRead";

/** A page, and how its results are worked out anew when the workbook has changed. */
export interface Page {
  page(pane: Pane): TemplateResult;
  readonly anew?: WorkAnew;
  /** What a page has to say at the head of another. */
  readonly notice?: (pane: Pane, on: PageId) => TemplateResult | typeof nothing;
}

/** Every page but Check is fetched when it is opened. */
const FETCH: Readonly<Record<Exclude<PageId, "check">, () => Promise<Page>>> = {
  season: async () => {
    const { pictureSeason, seasonPage, wrongNotice } = await import(
      /* webpackChunkName: "season" */ "./season/seasonPage"
    );
    return { page: seasonPage, anew: pictureSeason, notice: wrongNotice };
  },
  nodes: async () => {
    const { nodesPage, workNodesAnew } = await import(/* webpackChunkName: "nodes" */ "./nodes/nodesPage");
    return { page: nodesPage, anew: workNodesAnew };
  },
  gaps: async () => {
    const { gapsPage, countGapsAnew } = await import(/* webpackChunkName: "gaps" */ "./gaps/gapsPage");
    return { page: gapsPage, anew: countGapsAnew };
  },
  decide: async () => {
    const { decidePage, decideAnew } = await import(/* webpackChunkName: "decide" */ "./decide/decidePage");
    return { page: decidePage, anew: decideAnew };
  },
  crew: async () => {
    const { crewPage, makeCardsAnew } = await import(/* webpackChunkName: "crew" */ "./crew/crewPage");
    return { page: crewPage, anew: makeCardsAnew };
  },
  outlook: async () => {
    const { outlookPage, workOutlookAnew } = await import(
      /* webpackChunkName: "outlook" */ "./outlook/outlookPage"
    );
    return { page: outlookPage, anew: workOutlookAnew };
  },
  settings: async () => {
    const { settingsPage, readSettingsAnew } = await import(
      /* webpackChunkName: "settings" */ "./settings/settingsPage"
    );
    return { page: settingsPage, anew: readSettingsAnew };
  },
  functions: async () => {
    const { functionsPage } = await import(
      /* webpackChunkName: "functions-page" */ "./functions/functionsPage"
    );
    return { page: functionsPage };
  },
  care: async () => {
    const { carePage } = await import(/* webpackChunkName: "care" */ "./care/carePage");
    return { page: carePage };
  },
};

export const PAGE_IDS: readonly PageId[] = [
  "season",
  "check",
  "nodes",
  "decide",
  "gaps",
  "crew",
  "outlook",
  "settings",
  "functions",
  "care",
];

/** The pages that are here, by name. */
export const PAGES: Partial<Record<PageId, Page>> = { check: { page: checkPage } };

/** What stands at the foot of every page once it is fetched. */
export const FOOT: { account?: (pane: Pane) => TemplateResult | typeof nothing } = {};

/** Fetches what no first look at the pane needs, but every action. */
export async function fetchRest(): Promise<void> {
  const [{ accountView, checkAnew }] = await Promise.all([
    fetchCheckParts(),
    import(/* webpackChunkName: "fields" */ "./fluentFields"),
    seasonWork(),
    bringTables(),
  ]);
  PAGES.check = { page: checkPage, anew: checkAnew };
  FOOT.account = accountView;
}

/** Fetches a page and what every action needs before the pane stands. */
export async function fetchAhead(id: Exclude<PageId, "check">): Promise<void> {
  const [page] = await Promise.all([FETCH[id](), fetchRest()]);
  PAGES[id] = page;
}

/** Pages on their way, and those that did not arrive, until they are asked for again. */
const underway = new Map<PageId, "fetching" | "failed">();

/** Fetches a page with its texts where it is not here yet, and draws the pane again. */
export async function fetchPage(pane: Pane, id: PageId): Promise<void> {
  if (id === "check" || PAGES[id] !== undefined || underway.has(id)) return;
  underway.set(id, "fetching");
  await pane.attempt(async () => {
    PAGES[id] = await FETCH[id]();
  });
  if (PAGES[id] === undefined) underway.set(id, "failed");
  pane.change((state) => ({ ...state }));
}

/** What stands in the place of a page that is not here. */
export function missingPage(pane: Pane, id: PageId): TemplateResult {
  if (underway.get(id) !== "failed")
    return id === "season"
      ? seasonBeingRead(pane)
      : html`<p class="quiet">${pane.say(PANE_TEXTS.fetching)}</p>`;
  return html`<fluent-button
    id="fetch-again"
    size="small"
    @click=${() => {
      underway.delete(id);
      return fetchPage(pane, id);
    }}
    >${pane.say(PANE_TEXTS.fetchAgain)}</fluent-button
  >`;
}
