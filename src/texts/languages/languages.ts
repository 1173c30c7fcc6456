import { en } from "./en";
import { es } from "./es";
import { fr } from "./fr";
import type { TextPart } from "./textParts";

/** Every language of the program, English first. A language is its file and its line here. */
export const LANGUAGE_FILES = { en, es, fr };

export type Language = keyof typeof LANGUAGE_FILES;

export type FetchedPart = Exclude<TextPart, "words">;

/**
 * Texts that are fetched when they are needed. Every text is at hand here; a build of the add-in puts its own module in
 * place of this file (.config/languageParts.cjs), which begins with the words and fetches the rest language by language.
 */
export async function fetchTexts(_part: FetchedPart, language: Language): Promise<object> {
  return LANGUAGE_FILES[language];
}
