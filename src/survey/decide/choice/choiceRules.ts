import type { ChoiceRules } from "../../../domain/choice/choiceRules";
import { TRAININGS, type SpurWorth, type Training } from "../../../domain/choice/trainingSystems";
import { worthOfASpur } from "../../settings/choice";
import type { SettingValues } from "../../settings/settings";

/**
 * The figures of the cordon choice as the Settings sheet has them.
 *
 * @param settings the values in force
 * @example
 * choiceRules(defaultSettings()).closeCall // 0.02
 */
export function choiceRules(settings: SettingValues): ChoiceRules {
  const worth = (training: Training): SpurWorth => ({
    down: settings[worthOfASpur("down", training)],
    level: settings[worthOfASpur("level", training)],
    up: settings[worthOfASpur("up", training)],
  });
  return {
    weights: {
      spurs: settings.weightOfLiveSpurs,
      stretch: settings.weightOfLongestGap,
      placing: settings.weightOfSpurPlacing,
      soundness: settings.weightOfSoundness,
      diameter: settings.weightOfDiameter,
    },
    spurSpacing: settings.spurSpacing,
    longestStretch: settings.gapThatScoresNothing,
    spurWorth: Object.fromEntries(
      TRAININGS.map((training) => [training, worth(training)]),
    ) as ChoiceRules["spurWorth"],
    injuredSoundness: settings.soundnessOfAnInjuredCordon,
    diseasedSoundness: settings.soundnessOfADiseasedCordon,
    weakDiameter: settings.weakCordonDiameter,
    fullDiameter: settings.fullCordonDiameter,
    twoTrunks: settings.twoCordonsOnTwoTrunks,
    injuredTrunk: settings.costOfAnInjuredTrunk,
    diseasedTrunk: settings.costOfADiseasedTrunk,
    newCane: settings.worthOfANewCane,
    renewingShare: settings.emptyShareThatRenewsACordon,
    shortestCordon: settings.shortestCordon,
    closeCall: settings.closeCall,
    sidesWanted: settings.cordonsOnAVine >= 1.5 ? 2 : 1,
  };
}
