import { shootThinning } from "../../survey/crop/vinesOfBlocks";
import { crewCards } from "../../survey/decide/cards/crewCards";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { workPlan } from "../../survey/decide/plan/workPlan";
import { trunksToRenew } from "../../survey/decide/renewal/trunksToRenew";
import type { SeasonReading } from "../heldSeason";
import type { Pane } from "../pane";

/** Cards, order of work and trunks to renew of a decided season, worked out once for what the workbook holds. */
export function crewOf(pane: Pane, decided: SeasonReading & { readonly vines: readonly DecidedVine[] }) {
  const { season, vines } = decided;
  return pane.held.once("crew", decided, "", () => {
    const renewal = trunksToRenew(season, vines);
    const work = workPlan(season, shootThinning(season), pane.today, renewal.byAge);
    return { season, cards: crewCards(season, vines, renewal), work, renewal };
  });
}
