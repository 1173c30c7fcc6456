import type { Range } from "../../domain/outlook/productRange";
import type { Disagreement, OwnHarvests } from "../../domain/outlook/ownHarvests";
import type { UnitSystem } from "../../domain/units";
import { say, type Language } from "../../texts/language";
import { OWN_HARVESTS } from "../../texts/outlook";
import { blockCropIn, threeDigits } from "./cropWords";

/**
 * The block's own harvests as a second figure, in one sentence.
 *
 * @example
 * ownHarvestsSentence({ years: [{ year: 2024, picked: 800 }, { year: 2025, picked: 1200 }], least: 800, mean: 1000, most: 1200 }, "metric", "en") // "Your own harvests, 2 from 2024 to 2025: 0.8 to 1.2 t, 1 on average."
 */
export function ownHarvestsSentence(harvests: OwnHarvests, units: UnitSystem, language: Language): string {
  return say(OWN_HARVESTS.figure, language, facts(harvests, units, language));
}

/**
 * What to say where a range and the harvests on record disagree; undefined where they do not.
 *
 * @example
 * disagreementSentence("none", { low: 1, likely: 2, high: 3 }, { years: [], least: 2, mean: 2, most: 2 }, "metric", "en") // undefined
 */
export function disagreementSentence(
  how: Disagreement,
  range: Range,
  harvests: OwnHarvests,
  units: UnitSystem,
  language: Language,
): string | undefined {
  if (how === "none") return undefined;
  return say(OWN_HARVESTS[how], language, {
    ...facts(harvests, units, language),
    low: threeDigits(blockCropIn(range.low, units).value, language),
    high: threeDigits(blockCropIn(range.high, units).value, language),
  });
}

function facts({ years, least, mean, most }: OwnHarvests, units: UnitSystem, language: Language) {
  const words = (mass: number) => threeDigits(blockCropIn(mass, units).value, language);
  return {
    years: years.length,
    first: years[0]?.year ?? "",
    last: years.at(-1)?.year ?? "",
    least: words(least),
    mean: words(mean),
    most: words(most),
    unit: blockCropIn(mean, units).unit,
  };
}
