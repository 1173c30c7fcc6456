import {
  kilograms,
  kilogramsPerHectare,
  POUNDS_PER_TON,
  poundsFromKilograms,
  tonsPerAcreFromKilogramsPerHectare,
  type UnitSystem,
} from "../../domain/units";
import type { Language } from "../../texts/language";
import { CROP_UNITS } from "../../texts/crops";

/** A crop as a number and its unit, as the language writes it. */
export interface ShownCrop {
  readonly value: number;
  readonly unit: string;
}

/**
 * Crop of a block: tons or tonnes.
 *
 * @param mass kilograms
 * @example
 * blockCropIn(907.18474, "US", "en") // { value: 1, unit: "tons" }
 */
export function blockCropIn(mass: number, units: UnitSystem, language: Language): ShownCrop {
  return units === "US"
    ? { value: poundsFromKilograms(kilograms(mass)) / POUNDS_PER_TON, unit: CROP_UNITS.tons[language] }
    : { value: mass / 1000, unit: "t" };
}

/**
 * The crop of a block in one unit system and language, for what shows several.
 *
 * @example
 * blockCrop("metric", "en")(1500) // { value: 1.5, unit: "t" }
 */
export const blockCrop =
  (units: UnitSystem, language: Language) =>
  (mass: number): ShownCrop =>
    blockCropIn(mass, units, language);

/**
 * Crop of an area: tons an acre or tonnes a hectare.
 *
 * @param mass kilograms a hectare
 * @example
 * areaCropIn(10000, "metric", "en") // { value: 10, unit: "t/ha" }
 */
export function areaCropIn(mass: number, units: UnitSystem, language: Language): ShownCrop {
  return units === "US"
    ? {
        value: tonsPerAcreFromKilogramsPerHectare(kilogramsPerHectare(mass)),
        unit: CROP_UNITS.tonsAnAcre[language],
      }
    : { value: mass / 1000, unit: "t/ha" };
}

/**
 * Crop of a vine: pounds or kilograms.
 *
 * @param mass kilograms
 * @example
 * vineCropIn(0.45359237, "US") // { value: 1, unit: "lb" }
 */
export function vineCropIn(mass: number, units: UnitSystem): ShownCrop {
  return units === "US"
    ? { value: poundsFromKilograms(kilograms(mass)), unit: "lb" }
    : { value: mass, unit: "kg" };
}

/**
 * A number to three digits in the language's own notation.
 *
 * @example
 * threeDigits(12.3456, "es") // "12,3"
 */
export function threeDigits(value: number, language: Language): string {
  return new Intl.NumberFormat(language, { maximumSignificantDigits: 3 }).format(value);
}
