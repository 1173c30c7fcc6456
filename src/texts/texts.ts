import { byLanguage, LANGUAGES, type Text } from "./language";
import { LANGUAGE_FILES } from "./languages/languages";
import type { Texts } from "./languages/en";

/** The shape of a language's file with a text of every language where the file has its own. */
type EveryLanguage<Part> = Part extends string
  ? Text
  : { readonly [Key in keyof Part]: EveryLanguage<Part[Key]> };

/** Every text a person sees, in every language, under the keys of src/texts/languages. */
export const TEXTS = inEveryLanguage(LANGUAGE_FILES) as EveryLanguage<Texts>;

function inEveryLanguage(parts: Readonly<Record<keyof typeof LANGUAGE_FILES, unknown>>): unknown {
  const part = parts[LANGUAGES[0]];
  if (typeof part === "string") return parts;
  const below = (key: string) =>
    inEveryLanguage(byLanguage((language) => (parts[language] as Readonly<Record<string, unknown>>)[key]));
  if (Array.isArray(part)) return part.map((_, index) => below(String(index)));
  return Object.fromEntries(Object.keys(part as object).map((key) => [key, below(key)]));
}
