import type { DecidedVine } from "../../survey/decide/decideSeason";
import { AT_SIDE } from "../../texts/choice";
import { DECIDE_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import type { Outcome } from "./outcome";

/** What a person decides, in the words of its button. */
export function outcomeWords(pane: Pane, { decision }: DecidedVine, outcome: Outcome): string {
  const side = outcome.kind === "none" ? outcome.side : "";
  const cordon = "place" in outcome ? decision.cordons[outcome.place].cordon : "";
  const at = AT_SIDE[side]?.[pane.state.language] ?? side;
  return pane.say(DECIDE_TEXTS.outcomes[outcome.kind], { cordon, at });
}
