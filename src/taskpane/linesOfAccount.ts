import { accountLines } from "../survey/season/accountSentences";
import { seasonAccount } from "../survey/season/seasonAccount";
import type { Pane } from "./pane";

/** The account for a sheet or a printed page, a line a sentence; none before anything was read. */
export function linesOfAccount({ held, state }: Pane): string[] {
  return held.season === undefined ? [] : accountLines(seasonAccount(held.season), state.language);
}
