import type { Text } from "../../texts/language";
import type { Setting } from "./setting";

/** A setting that is a number between two limits. */
export function figure(
  id: string,
  value: number,
  unit: string,
  source: Setting["source"],
  [least, most]: readonly [least: number, most: number],
  meaning: Text,
): Setting {
  return { id, value, unit, source, least, most, meaning };
}

/** A setting that is a share of something, from 0 to 1. */
export function share(id: string, value: number, source: Setting["source"], meaning: Text): Setting {
  return figure(id, value, "share", source, [0, 1], meaning);
}

/** A setting that is one of the words given. */
export function oneOf(
  id: string,
  value: string,
  choices: readonly string[],
  source: Setting["source"],
  meaning: Text,
): Setting {
  return { id, value, unit: "", source, choices, meaning };
}

/** A setting that is any words: names, days, colours. */
export function words(id: string, value: string, source: Setting["source"], meaning: Text): Setting {
  return { id, value, unit: "", source, meaning };
}
