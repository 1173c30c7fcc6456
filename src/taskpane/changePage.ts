import type { PageId, Pane, PaneState } from "./pane";

/** Changes a part of what one page shows; the rest of the page and the other pages stay as they are. */
export function changePage<Page extends PageId>(
  pane: Pane,
  page: Page,
  part: Partial<PaneState[Page]>,
): void {
  pane.change((state) => ({ ...state, [page]: { ...state[page], ...part } }));
}
