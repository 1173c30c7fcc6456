import { defaultSettings } from "../survey/settings/settings";
import { number, once, optional } from "./parameter";

/**
 * How often a range shall hold the true figure: one for the whole call, by itself as Settings has it.
 *
 * @example
 * confidence().byColumn // false
 */
export function confidence() {
  return optional(
    once(number("confidence", { least: 0.5, most: 0.9999 })),
    defaultSettings().confidenceOfRanges,
  );
}
