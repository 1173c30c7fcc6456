import type { Pane } from "./pane";

/** A share in whole per cents, in the pane's language. */
export function percent({ state }: Pane, share: number): string {
  return new Intl.NumberFormat(state.language, { style: "percent", maximumFractionDigits: 0 }).format(share);
}
