import { resultsOf } from "../resultsOf";
import type { PanePage } from "./panePage";

/** Shows the page on which vines are decided, with its results. */
export async function openDecide(pane: PanePage): Promise<void> {
  await pane.goTo("decide");
  await resultsOf(pane.page, "decide");
}
