import type { Locator } from "playwright-core";

/** The button that is there while a page has no results, and what stands there once it has them. */
const PAGES = {
  check: ["#check", "#check-result"],
  nodes: ["#work-nodes", "#leave, #page-nodes fluent-message-bar"],
  settings: ["#read-settings", "#page-settings fluent-accordion-item"],
  crew: ["#make-cards", "#cards-result"],
  decide: ["#decide", "#decide-result"],
  gaps: ["#count-gaps", "#gaps-result"],
  outlook: ["#work-outlook", "#outlook-block"],
} as const;

/** True for a page with results that this knows how to wait for. */
export function isResultPage(page: string): page is keyof typeof PAGES {
  return page in PAGES;
}

/** Waits for the results of a page that is shown; its button is pressed where they do not come by themselves. */
export async function resultsOf(
  within: { locator(selector: string): Locator },
  page: keyof typeof PAGES,
): Promise<void> {
  const [button, result] = PAGES[page];
  await within.locator(`${button}, ${result}`).first().waitFor();
  if ((await within.locator(button).count()) > 0)
    await within
      .locator(button)
      .click({ timeout: 5000 })
      .catch(() => undefined);
  await within.locator(result).first().waitFor();
}
