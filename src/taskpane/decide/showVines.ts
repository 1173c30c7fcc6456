import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Pane } from "../pane";
import { vineKey, type DecideState } from "./decideState";

/** Puts vines in place of those with their names, and changes the rest of the page with them. */
export function showVines(pane: Pane, shown: readonly DecidedVine[], rest: Partial<DecideState>): void {
  const byKey = new Map(shown.map((vine) => [vineKey(vine), vine]));
  pane.change((state) => {
    const { result } = state.decide;
    if (result === undefined) return state;
    const vines = result.vines.map((vine) => byKey.get(vineKey(vine)) ?? vine);
    const turns = new Map([...state.decide.turns].filter(([key]) => !byKey.has(key)));
    return { ...state, decide: { ...state.decide, ...rest, turns, result: { ...result, vines } } };
  });
}
