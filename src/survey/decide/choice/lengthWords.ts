import { METRES_PER_FOOT, type UnitSystem } from "../../../domain/units";
import { sameText, say, type Language } from "../../../texts/language";
import { TEXTS } from "../../../texts/texts";

const INCHES: Readonly<Record<Language, string>> = TEXTS.lengths.inches;

/**
 * A short length as a crew says it: inches to a tenth, below two inches to a hundredth; or whole centimetres, and
 * millimetres for a thickness.
 *
 * @param metres the length in metres
 * @example
 * lengthWords(0.254, "en", "US") // "10 in"
 * lengthWords(0.24384, "en", "US") // "9.6 in"
 * lengthWords(0.254, "fr", "metric") // "25 cm"
 */
export function lengthWords(metres: number, language: Language, unitSystem: UnitSystem): string {
  if (unitSystem === "US") {
    const inches = (metres / METRES_PER_FOOT) * 12;
    const steps = inches < 2 ? 100 : 10;
    return `${number(Math.round(inches * steps) / steps, language)} ${INCHES[language]}`;
  }
  return metres < 0.1
    ? `${number(Math.round(metres * 1000), language)} mm`
    : `${number(Math.round(metres * 100), language)} cm`;
}

function number(value: number, language: Language): string {
  return say(sameText("{value}"), language, { value });
}
