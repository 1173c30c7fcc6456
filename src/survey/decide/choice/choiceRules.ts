import type { ChoiceRules, SpurWorth } from "../../../domain/choice/choiceRules";
import { metresFromInches } from "../../../domain/units";
import type { SettingValues } from "../../settings/setting";

/**
 * The figures of the cordon choice as the Settings sheet has them.
 *
 * @param settings the values in force, inches as inches
 * @example
 * choiceRules(defaultSettings()).closeCall // 0.05
 */
export function choiceRules(settings: SettingValues): ChoiceRules {
  const number = (id: string) => Number(settings.get(id));
  const inches = (id: string) => metresFromInches(number(id));
  const worth = (system: string): SpurWorth => ({
    down: number(`Worth of a spur down, ${system}`),
    level: number(`Worth of a spur level, ${system}`),
    up: number(`Worth of a spur up, ${system}`),
  });
  return {
    weights: {
      spurs: number("Weight of live spurs"),
      stretch: number("Weight of longest gap"),
      placing: number("Weight of spur placing"),
      soundness: number("Weight of soundness"),
      diameter: number("Weight of diameter"),
    },
    spurSpacing: inches("Spur spacing"),
    longestStretch: number("Gap that scores nothing"),
    spurWorth: {
      highWire: worth("high wire"),
      upright: worth("upright shoots"),
      divided: worth("divided canopy"),
    },
    injuredSoundness: number("Soundness of an injured cordon"),
    diseasedSoundness: number("Soundness of a diseased cordon"),
    weakDiameter: inches("Weak cordon diameter"),
    fullDiameter: inches("Full cordon diameter"),
    twoTrunks: number("Two cordons on two trunks"),
    injuredTrunk: number("Cost of an injured trunk"),
    diseasedTrunk: number("Cost of a diseased trunk"),
    newCane: number("Worth of a new cane"),
    shortestCordon: inches("Shortest cordon"),
    closeCall: number("Close call"),
    sidesWanted: number("Cordons on a vine") >= 1.5 ? 2 : 1,
  };
}
