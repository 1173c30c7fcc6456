import type { PanePage } from "./panePage";

/** Shows the page on which vines are decided, with its results; the button is there where they take long. */
export async function openDecide(pane: PanePage): Promise<void> {
  await pane.goTo("decide");
  await pane.page.locator("#decide, #decide-result").first().waitFor();
  const button = pane.page.locator("#decide");
  if ((await button.count()) > 0) await button.click().catch(() => undefined);
  await pane.page.locator("#decide-result").waitFor({ timeout: 30_000 });
}
