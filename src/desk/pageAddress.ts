/** What the page's address asks for. */
export const ASKED = new URLSearchParams(location.search);
