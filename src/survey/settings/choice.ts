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

const MEANINGS = TEXTS.settings.choice;

const weight = (of: string, value: number, meaning: Text) => share(`Weight of ${of}`, value, "ours", meaning);

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
          `Worth of a spur ${direction.en}, ${system.en}`,
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
  weightOfLiveSpurs: weight("live spurs", 0.2, MEANINGS.liveSpurs),
  weightOfLongestGap: weight("longest gap", 0.3, MEANINGS.longestGap),
  weightOfSpurPlacing: weight("spur placing", 0.15, MEANINGS.spurPlacing),
  weightOfSoundness: weight("soundness", 0.2, MEANINGS.soundness),
  weightOfDiameter: weight("diameter", 0.15, MEANINGS.diameter),
  spaceBetweenNeighbouringCordons: figure(
    "Space between neighbouring cordons",
    4,
    "in",
    "westover2016",
    [0, 40],
    MEANINGS.spaceBetweenNeighbouringCordons,
  ),
  gapThatScoresNothing: figure(
    "Gap that scores nothing",
    5,
    "positions",
    "ours",
    [1, 60],
    MEANINGS.gapThatScoresNothing,
  ),
  ...SPUR_WORTHS,
  soundnessOfAnInjuredCordon: share(
    "Soundness of an injured cordon",
    0.5,
    "ours",
    MEANINGS.soundnessOfAHurtCordon,
  ),
  soundnessOfADiseasedCordon: share(
    "Soundness of a diseased cordon",
    0.2,
    "ours",
    MEANINGS.soundnessOfAHurtCordon,
  ),
  weakCordonDiameter: figure(
    "Weak cordon diameter",
    0.5,
    "in",
    "westover2016",
    [0, 4],
    MEANINGS.weakCordonDiameter,
  ),
  fullCordonDiameter: figure("Full cordon diameter", 1, "in", "ours", [0, 4], MEANINGS.fullCordonDiameter),
  twoCordonsOnTwoTrunks: share(
    "Two cordons on two trunks",
    0.15,
    "common practice",
    MEANINGS.twoCordonsOnTwoTrunks,
  ),
  costOfAnInjuredTrunk: share("Cost of an injured trunk", 0.1, "ours", MEANINGS.costOfAnInjuredTrunk),
  costOfADiseasedTrunk: share("Cost of a diseased trunk", 0.2, "ours", MEANINGS.costOfADiseasedTrunk),
  worthOfANewCane: share("Worth of a new cane", 0.5, "ours", MEANINGS.worthOfANewCane),
  shortestCordon: figure("Shortest cordon", 12, "in", "ours", [0, 120], MEANINGS.shortestCordon),
  closeCall: share("Close call", 0.02, "ours", MEANINGS.closeCall),
  cordonsOnAVine: figure("Cordons on a vine", 2, "", "common practice", [1, 2], MEANINGS.cordonsOnAVine),
  blankCondition: oneOf(
    "Blank condition",
    "not recorded",
    ["not recorded", "sound"],
    "ours",
    MEANINGS.blankCondition,
  ),
} satisfies Readonly<Record<string, SettingRow>>;
