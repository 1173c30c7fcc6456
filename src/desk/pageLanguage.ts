import { LANGUAGES, languageOf, type Language } from "../texts/language";
import { ASKED } from "./pageAddress";

const KEY = "cordonbook.language";

/** The language of the page's address, else the one chosen at an earlier visit, else the browser's. */
export function firstLanguage(): Language {
  const named = ASKED.get("language") ?? localStorage.getItem(KEY);
  return LANGUAGES.find((candidate) => candidate === named) ?? languageOf(navigator.language);
}

/** Keeps a language for later visits. */
export function keepLanguage(language: Language): void {
  localStorage.setItem(KEY, language);
}
