import {
  DIRECTIONS,
  TRAININGS,
  TRAINING_SYSTEMS,
  type Direction,
  type Training,
} from "../../domain/choice/trainingSystems";
import { withTexts, type Text } from "../../texts/language";
import type { Figure, SettingRow } from "./setting";
import { figure, oneOf, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.choice;

const weight = (name: Text, value: number, meaning: Text) => share(name, value, "ours", meaning);

const DIRECTION_WORDS: Readonly<Record<Direction, Text>> = {
  down: MEANINGS.directions[0],
  level: MEANINGS.directions[1],
  up: MEANINGS.directions[2],
};

type WorthId = `worthOfASpur${Capitalize<Direction>}On${Capitalize<Training>}`;

const capital = <Word extends string>(word: Word) =>
  `${word[0].toUpperCase()}${word.slice(1)}` as Capitalize<Word>;

/**
 * The setting of what a spur that points a way is worth on a training system.
 *
 * @example
 * worthOfASpur("down", "highWire") // "worthOfASpurDownOnHighWire"
 */
export const worthOfASpur = (direction: Direction, training: Training): WorthId =>
  `worthOfASpur${capital(direction)}On${capital(training)}`;

const SPUR_WORTHS = Object.fromEntries(
  TRAININGS.flatMap((training) =>
    DIRECTIONS.map((way) => {
      const system = TEXTS.sheets.trainings[training];
      const direction = DIRECTION_WORDS[way];
      return [
        worthOfASpur(way, training),
        share(
          withTexts(NAMES.worthOfASpur, { direction, system }),
          TRAINING_SYSTEMS[training].spurWorth[way],
          "common practice",
          withTexts(MEANINGS.worthMeaning, { direction, system }),
        ),
      ];
    }),
  ),
) as Readonly<Record<WorthId, Figure<"share">>>;

/** Settings for the cordon score, the choice and renewal. */
export const CHOICE_SETTINGS = {
  weightOfLiveSpurs: weight(NAMES.weightOfLiveSpurs, 0.2, MEANINGS.liveSpurs),
  weightOfLongestGap: weight(NAMES.weightOfLongestGap, 0.3, MEANINGS.longestGap),
  weightOfSpurPlacing: weight(NAMES.weightOfSpurPlacing, 0.15, MEANINGS.spurPlacing),
  weightOfSoundness: weight(NAMES.weightOfSoundness, 0.2, MEANINGS.soundness),
  weightOfDiameter: weight(NAMES.weightOfDiameter, 0.15, MEANINGS.diameter),
  spaceBetweenNeighbouringCordons: figure(
    NAMES.spaceBetweenNeighbouringCordons,
    4,
    "in",
    "westover2016",
    [0, 40],
    MEANINGS.spaceBetweenNeighbouringCordons,
  ),
  gapThatScoresNothing: figure(
    NAMES.gapThatScoresNothing,
    5,
    "positions",
    "ours",
    [1, 60],
    MEANINGS.gapThatScoresNothing,
  ),
  ...SPUR_WORTHS,
  soundnessOfAnInjuredCordon: share(
    NAMES.soundnessOfAnInjuredCordon,
    0.5,
    "ours",
    MEANINGS.soundnessOfAHurtCordon,
  ),
  soundnessOfADiseasedCordon: share(
    NAMES.soundnessOfADiseasedCordon,
    0.2,
    "ours",
    MEANINGS.soundnessOfAHurtCordon,
  ),
  weakCordonDiameter: figure(
    NAMES.weakCordonDiameter,
    0.5,
    "in",
    "westover2016",
    [0, 4],
    MEANINGS.weakCordonDiameter,
  ),
  fullCordonDiameter: figure(NAMES.fullCordonDiameter, 1, "in", "ours", [0, 4], MEANINGS.fullCordonDiameter),
  twoCordonsOnTwoTrunks: share(
    NAMES.twoCordonsOnTwoTrunks,
    0.15,
    "common practice",
    MEANINGS.twoCordonsOnTwoTrunks,
  ),
  costOfAnInjuredTrunk: share(NAMES.costOfAnInjuredTrunk, 0.1, "ours", MEANINGS.costOfAnInjuredTrunk),
  costOfADiseasedTrunk: share(NAMES.costOfADiseasedTrunk, 0.2, "ours", MEANINGS.costOfADiseasedTrunk),
  worthOfANewCane: share(NAMES.worthOfANewCane, 0.5, "ours", MEANINGS.worthOfANewCane),
  shortestCordon: figure(NAMES.shortestCordon, 12, "in", "ours", [0, 120], MEANINGS.shortestCordon),
  closeCall: share(NAMES.closeCall, 0.02, "ours", MEANINGS.closeCall),
  cordonsOnAVine: figure(NAMES.cordonsOnAVine, 2, "", "common practice", [1, 2], MEANINGS.cordonsOnAVine),
  blankCondition: oneOf(
    NAMES.blankCondition,
    "not recorded",
    ["not recorded", "sound"],
    "ours",
    MEANINGS.blankCondition,
  ),
} satisfies Readonly<Record<string, SettingRow>>;
