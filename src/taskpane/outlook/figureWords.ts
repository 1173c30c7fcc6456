import { threeDigits, vineCropIn } from "../../survey/crop/cropWords";
import type { FarmFigure } from "../../survey/crop/farmFigures";
import { FARM_FIGURES } from "../../texts/outlook";
import type { Pane } from "../pane";

/** "Lag phase multiplier", "Budbreak (Marquette)". */
export function figureWords(pane: Pane, { figure, cultivar }: FarmFigure): string {
  return `${pane.say(FARM_FIGURES[figure])}${cultivar === "" ? "" : ` (${cultivar})`}`;
}

/** A value of that figure as it is shown: three digits, a weight in the workbook's units. */
export function figureDigits(pane: Pane, { figure }: FarmFigure, value: number): string {
  const { language, outlook } = pane.state;
  if (figure !== "clusterWeight") return threeDigits(value, language);
  const shown = vineCropIn(value, outlook.unitSystem);
  return `${threeDigits(shown.value, language)} ${shown.unit}`;
}
