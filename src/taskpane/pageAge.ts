import { AGE_TEXTS } from "../texts/pane";
import type { Measured } from "./heldSeason";
import type { PageId, Pane, PaneState } from "./pane";

/** A page with results that the workbook can outlive. */
export type ResultPage = Exclude<PageId, "functions" | "care">;

/** Works a page's results out anew and keeps what a person has chosen to see of them. */
export type WorkAnew = (pane: Pane, signal: AbortSignal) => Promise<void>;

/** What is worked out for each page. */
const WORK: Readonly<Record<ResultPage, readonly Measured[]>> = {
  season: ["season", "findings", "decisions", "crew", "stands"],
  check: ["season", "findings"],
  nodes: ["season", "decisions", "nodes"],
  gaps: ["season", "decisions", "gaps"],
  decide: ["season", "decisions"],
  crew: ["season", "decisions", "crew"],
  outlook: ["season", "decisions", "outlook"],
  settings: ["season"],
};

/** Milliseconds below which results are worked out anew without being asked for. */
const SHORT = 1000;

/** True for a page with results that the workbook can outlive. */
export function isResultPage(page: PageId): page is ResultPage {
  return page in WORK;
}

/** True where what a page shows is older than the workbook. */
export function isOlder(state: PaneState, page: ResultPage): boolean {
  const { version } = state[page];
  return version !== undefined && version !== state.version;
}

/** True where a page's results take no longer than a person waits without asking. */
export function isShort(pane: Pane, page: ResultPage): boolean {
  return pane.held.took(WORK[page]) < SHORT;
}

/**
 * Runs an action over a page's results, for printing, writing or accepting them; refused with one sentence where they
 * are older than the workbook is at this moment.
 */
export function currentOnly(pane: Pane, page: ResultPage, action: () => Promise<void> | void): Promise<void> {
  return pane.attempt(async () => {
    if (await isCurrent(pane, page)) await action();
    else pane.tell("warning", AGE_TEXTS.refused);
  });
}

/** Looks into the workbook whether a page's results are of this moment. */
export async function isCurrent(pane: Pane, page: ResultPage): Promise<boolean> {
  const { version } = pane.state[page];
  await pane.held.look();
  return version === pane.held.version;
}

/** After the pane wrote something whose effect a page already shows: those results are of this moment. */
export async function keepCurrent(pane: Pane, page: ResultPage): Promise<void> {
  await pane.held.look();
  if (isShort(pane, page)) return;
  const { version } = pane.held;
  pane.change((state) => ({ ...state, version, [page]: { ...state[page], version } }));
}

/**
 * Works out the page in sight where it has no results or older ones than the workbook, and that is short; then the
 * season's picture, from which every page tells what is still wrong.
 */
export function followWorkbook(
  pane: Pane,
  pages: Partial<Readonly<Record<PageId, { readonly anew?: WorkAnew }>>>,
): void {
  const { version, anew: tried } = pane.state;
  const page = waiting(pane);
  const anew = page && pages[page]?.anew;
  if (page === undefined || anew === undefined) return;
  if (tried !== undefined && (!tried.failed || tried.version === version)) return;
  pane.change((state) => ({ ...state, anew: { version, failed: false } }));
  void anew(pane, new AbortController().signal).then(
    () => pane.change((state) => ({ ...state, anew: undefined })),
    (failure: unknown) => {
      pane.change((state) => ({ ...state, anew: { version, failed: true } }));
      return pane.attempt(() => {
        throw failure;
      });
    },
  );
}

function waiting(pane: Pane): ResultPage | undefined {
  const { page: shown, season } = pane.state;
  const { hasRead } = pane.held;
  const waits = (page: ResultPage) => {
    const { version, progress } = pane.state[page];
    if (progress !== undefined || (version !== undefined && !isOlder(pane.state, page))) return false;
    return hasRead ? isShort(pane, page) : page === "season";
  };
  if (isResultPage(shown) && waits(shown)) return shown;
  return season.picture !== undefined && waits("season") ? "season" : undefined;
}
