/** Languages of every text that a person sees. */
export const LANGUAGES = ["en", "es", "fr"] as const;
export type Language = (typeof LANGUAGES)[number];

/** One text in every language; a missing language does not compile. */
export type Text = Readonly<Record<Language, string>>;

/** What may stand in a text's placeholders. */
export type TextFacts = Readonly<
  Record<string, string | number | boolean | null | readonly (string | number)[]>
>;

/**
 * Fills the placeholders of a text: `{vine}` becomes facts.vine, numbers in the language's own notation with at most
 * three decimals, lists joined by commas. A placeholder without a fact stays as it is, so that a test can find it.
 *
 * @example
 * say({ en: "row {row}", es: "hilera {row}", fr: "rang {row}" }, "es", { row: 7 }) // "hilera 7"
 */
export function say(text: Text, language: Language, facts: TextFacts = {}): string {
  return text[language].replace(/\{(\w+)\}/g, (whole, name: string) =>
    name in facts ? written(facts[name], language) : whole,
  );
}

const NUMBERS: Readonly<Record<Language, Intl.NumberFormat>> = {
  en: new Intl.NumberFormat("en", { maximumFractionDigits: 3, useGrouping: false }),
  es: new Intl.NumberFormat("es", { maximumFractionDigits: 3, useGrouping: false }),
  fr: new Intl.NumberFormat("fr", { maximumFractionDigits: 3, useGrouping: false }),
};

function written(fact: TextFacts[string], language: Language): string {
  if (typeof fact === "number") return NUMBERS[language].format(fact);
  if (Array.isArray(fact)) return fact.map((part) => written(part, language)).join(", ");
  return String(fact);
}

/**
 * The nearest of our languages to a tag of the web like "es-MX" or of a terminal like "es_MX.UTF-8"; English when none
 * fits.
 *
 * @example
 * languageOf("es_MX.UTF-8") // "es"
 */
export function languageOf(tag: string | undefined): Language {
  const primary = (tag ?? "").toLowerCase().split(/[-_.@]/)[0];
  return LANGUAGES.find((language) => language === primary) ?? "en";
}

/**
 * The language of a terminal's locale, from the variables in which POSIX has it: LC_ALL before LC_MESSAGES before LANG.
 *
 * @example
 * languageOfLocale({ LC_ALL: "", LANG: "fr_CA.UTF-8" }) // "fr"
 */
export function languageOfLocale(environment: Readonly<Record<string, string | undefined>>): Language {
  return languageOf(environment.LC_ALL || environment.LC_MESSAGES || environment.LANG);
}
