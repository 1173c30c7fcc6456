import type { Range } from "../../domain/outlook/productRange";
import type { Disagreement, OwnHarvests } from "../../domain/outlook/ownHarvests";
import { say, type Language } from "../../texts/language";
import { OWN_HARVESTS } from "../../texts/outlook";
import { threeDigits, type ShownCrop } from "./cropWords";

/** How a block's crop in kilograms is shown: that of the block, or that of its area. */
export type ShowCrop = (mass: number) => ShownCrop;

/**
 * The block's own harvests as a second figure, in one sentence.
 *
 * @example
 * ownHarvestsSentence({ years: [{ year: 2024, picked: 800 }, { year: 2025, picked: 1200 }], least: 800, mean: 1000, most: 1200 }, (mass) => blockCropIn(mass, "metric", "en"), "en") // "Your own harvests, 2 from 2024 to 2025: 0.8 to 1.2 t, 1 on average."
 */
export function ownHarvestsSentence(harvests: OwnHarvests, shown: ShowCrop, language: Language): string {
  return say(OWN_HARVESTS.figure, language, facts(harvests, shown, language));
}

/**
 * What to say where a range and the harvests on record disagree; undefined where they do not.
 *
 * @example
 * disagreementSentence("none", { low: 1, likely: 2, high: 3 }, { years: [], least: 2, mean: 2, most: 2 }, (mass) => blockCropIn(mass, "metric", "en"), "en") // undefined
 */
export function disagreementSentence(
  how: Disagreement,
  range: Range,
  harvests: OwnHarvests,
  shown: ShowCrop,
  language: Language,
): string | undefined {
  if (how === "none") return undefined;
  return say(OWN_HARVESTS[how], language, {
    ...facts(harvests, shown, language),
    low: threeDigits(shown(range.low).value, language),
    high: threeDigits(shown(range.high).value, language),
  });
}

function facts({ years, least, mean, most }: OwnHarvests, shown: ShowCrop, language: Language) {
  const words = (mass: number) => threeDigits(shown(mass).value, language);
  return {
    years: years.length,
    first: years[0].year,
    last: years.at(-1)!.year,
    least: words(least),
    mean: words(mean),
    most: words(most),
    unit: shown(mean).unit,
  };
}
