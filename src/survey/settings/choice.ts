import { withTexts, type Text } from "../../texts/language";
import type { Setting } from "./setting";
import { figure, oneOf, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const MEANINGS = TEXTS.settings.choice;

const weight = (id: string, value: number, meaning: Text): Setting =>
  share(`Weight of ${id}`, value, "ours", meaning);

const WORTHS: readonly [system: Text, down: number, level: number, up: number][] = [
  [TEXTS.sheets.trainings.highWire, 1, 0.9, 0.4],
  [TEXTS.sheets.trainings.upright, 0.2, 0.6, 1],
  [TEXTS.sheets.trainings.divided, 1, 0.9, 0.4],
];

const DIRECTIONS: readonly Text[] = MEANINGS.directions;

const WORTH_MEANING = MEANINGS.worthMeaning;

/** Settings for the cordon score, the choice and renewal. */
export const CHOICE_SETTINGS: readonly Setting[] = [
  weight("live spurs", 0.3, MEANINGS.liveSpurs),
  weight("longest gap", 0.3, MEANINGS.longestGap),
  weight("spur placing", 0.15, MEANINGS.spurPlacing),
  weight("soundness", 0.2, MEANINGS.soundness),
  weight("diameter", 0.05, MEANINGS.diameter),
  figure(
    "Space between neighbouring cordons",
    4,
    "in",
    "westover2016",
    [0, 40],
    MEANINGS.spaceBetweenNeighbouringCordons,
  ),
  figure("Gap that scores nothing", 5, "positions", "ours", [1, 60], MEANINGS.gapThatScoresNothing),
  ...WORTHS.flatMap(([system, ...worths]) =>
    DIRECTIONS.map((direction, index) =>
      share(
        `Worth of a spur ${direction.en}, ${system.en}`,
        worths[index],
        "common practice",
        withTexts(WORTH_MEANING, { direction, system }),
      ),
    ),
  ),
  share("Soundness of an injured cordon", 0.5, "ours", MEANINGS.soundnessOfAHurtCordon),
  share("Soundness of a diseased cordon", 0.2, "ours", MEANINGS.soundnessOfAHurtCordon),
  figure("Weak cordon diameter", 0.3125, "in", "westover2016", [0, 4], MEANINGS.weakCordonDiameter),
  figure("Full cordon diameter", 0.5, "in", "westover2016", [0, 4], MEANINGS.fullCordonDiameter),
  share("Two cordons on two trunks", 0.15, "common practice", MEANINGS.twoCordonsOnTwoTrunks),
  share("Cost of an injured trunk", 0.1, "ours", MEANINGS.costOfAnInjuredTrunk),
  share("Cost of a diseased trunk", 0.2, "ours", MEANINGS.costOfADiseasedTrunk),
  share("Worth of a new cane", 0.5, "ours", MEANINGS.worthOfANewCane),
  figure("Shortest cordon", 12, "in", "ours", [0, 120], MEANINGS.shortestCordon),
  share("Close call", 0.05, "ours", MEANINGS.closeCall),
  figure("Cordons on a vine", 2, "", "common practice", [1, 2], MEANINGS.cordonsOnAVine),
  oneOf("Blank condition", "not recorded", ["not recorded", "sound"], "ours", MEANINGS.blankCondition),
];
