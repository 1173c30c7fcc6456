import type { Pane } from "./pane";

/** Says what a sheet that was written again has no place for any more; nothing where nothing was lost. */
export function tellLost(pane: Pane, lost: readonly string[]): void {
  if (lost.length === 0) return;
  pane.change((state) => ({ ...state, message: { intent: "warning", text: lost.join(" ") } }));
}
