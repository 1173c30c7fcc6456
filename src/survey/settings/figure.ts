import type { Text } from "../../texts/language";
import type { TextForms } from "../sheets/nodeRules";
import type { Figure, OneOf, SettingSource, Words } from "./setting";

/** A setting that is a number between two limits. */
export function figure<const Unit extends string>(
  name: Text,
  value: number,
  unit: Unit,
  source: SettingSource,
  [least, most]: readonly [least: number, most: number],
  meaning: Text,
): Figure<Unit> {
  return { kind: "figure", name, value, unit, source, least, most, meaning };
}

/** A setting that is a share of something, from 0 to 1. */
export function share(name: Text, value: number, source: SettingSource, meaning: Text): Figure<"share"> {
  return figure(name, value, "share", source, [0, 1], meaning);
}

/** A setting that is one of the words given. */
export function oneOf<const Word extends string>(
  name: Text,
  value: NoInfer<Word>,
  choices: readonly Word[],
  source: SettingSource,
  meaning: Text,
): OneOf<Word> {
  return { kind: "oneOf", name, value, unit: "", source, choices, meaning };
}

/** A setting that is words: names, days, colours; where forms are given, it must read like one of them. */
export function words(
  name: Text,
  value: string,
  source: SettingSource,
  meaning: Text,
  forms?: TextForms,
): Words {
  return { kind: "words", name, value, unit: "", source, meaning, forms };
}
