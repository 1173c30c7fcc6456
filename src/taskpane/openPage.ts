import type { PageId, Pane } from "./pane";

/** Shows a page; the season's picture is made anew whenever it is opened, since more than cells goes into it. */
export function openPage(pane: Pane, page: PageId): void {
  if (page === pane.state.page) return;
  pane.change(({ message: _message, ...state }) => ({
    ...state,
    page,
    season: page === "season" ? { ...state.season, version: undefined } : state.season,
  }));
  void pane.attempt(() => pane.held.look());
}
