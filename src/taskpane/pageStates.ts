/**
 * What each page of the pane remembers, by the page's name. Each page adds its own line in its xState.ts, so that the
 * pane knows no page; a page without its first state in mountPane.ts does not compile.
 */
// eslint-disable-next-line @typescript-eslint/no-empty-object-type -- the pages fill it
export interface PageStates {}
