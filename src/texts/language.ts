import { LANGUAGE_FILES, type Language } from "./languages/languages";
import { placeName } from "./placeName";

export type { Language };

/** Languages of every text that a person sees, English first. */
export const LANGUAGES = Object.keys(LANGUAGE_FILES) as readonly Language[];

/** One text in every language; a missing language does not compile. */
export type Text = Readonly<Record<Language, string>>;

/** What may stand in a text's placeholders. */
export type TextFacts = Readonly<
  Record<string, string | number | boolean | null | readonly (string | number)[]>
>;

/**
 * Fills the placeholders of a text: `{vine}` becomes facts.vine, numbers in the language's own notation with at most
 * three decimals, lists joined by commas. A placeholder without a fact stays as it is, so that a test can find it.
 * `{cards:card|cards}` becomes the word for one or for more, as the language counts.
 *
 * @example
 * say({ en: "row {row}", es: "hilera {row}", fr: "rang {row}" }, "es", { row: 7 }) // "hilera 7"
 * @example
 * say({ en: "{n} {n:card|cards}", es: "{n} {n:tarjeta|tarjetas}", fr: "{n} {n:fiche|fiches}" }, "fr", { n: 1 }) // "1 fiche"
 */
export function say(text: Text, language: Language, facts: TextFacts = {}): string {
  return text[language].replace(PLACEHOLDER, (whole, name: string, one?: string, more?: string) => {
    if (!(name in facts)) return whole;
    if (one === undefined || more === undefined)
      return written(PLACES.has(name) ? named(facts[name]) : facts[name], language);
    return PLURALS[language].select(Number(facts[name])) === "one" ? one : more;
  });
}

const PLACEHOLDER = /\{(\w+)(?::([^{}|]*)\|([^{}|]*))?\}/g;
/** Facts that are rows or vines, which may have labels with letters. */
const PLACES = new Set(["row", "vine", "vines"]);

function named(fact: TextFacts[string]): TextFacts[string] {
  if (typeof fact === "number") return placeName(fact);
  return Array.isArray(fact)
    ? fact.map((place) => (typeof place === "number" ? placeName(place) : place))
    : fact;
}

const PLURALS = byLanguage((language) => new Intl.PluralRules(language));

const NUMBERS = byLanguage(
  (language) => new Intl.NumberFormat(language, { maximumFractionDigits: 3, useGrouping: false }),
);

function written(fact: TextFacts[string], language: Language): string {
  if (typeof fact === "number") return NUMBERS[language].format(fact);
  if (Array.isArray(fact)) return fact.map((part) => written(part, language)).join(", ");
  const text = String(fact);
  return text.length > MOST_OF_A_FACT ? `${text.slice(0, MOST_OF_A_FACT - 1)}…` : text;
}

/** A sentence shows no more characters of a cell's text. */
const MOST_OF_A_FACT = 1000;

/** One thing for every language, each made when it is asked for first: a page has only the texts that it fetched. */
export function byLanguage<T>(make: (language: Language) => T): Readonly<Record<Language, T>> {
  const made = {} as Record<Language, T>;
  const keep = (language: Language, value: T) => {
    Object.defineProperty(made, language, { value, enumerable: true });
    return value;
  };
  for (const language of LANGUAGES)
    Object.defineProperty(made, language, {
      get: () => keep(language, make(language)),
      enumerable: true,
      configurable: true,
    });
  return made;
}

/**
 * A text that reads the same in every language, such as the unit "kg".
 *
 * @example
 * say(sameText("kg"), "fr") // "kg"
 */
export function sameText(word: string): Text {
  return byLanguage(() => word);
}

/** A text with other texts in its placeholders, each in its own language. */
export function withTexts(text: Text, parts: Readonly<Record<string, Text>>): Text {
  return byLanguage((language) =>
    text[language].replace(/\{(\w+)\}/g, (whole, name: string) => parts[name]?.[language] ?? whole),
  );
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
 * What stands before decimals where a person writes: as the first of their regional tags in this language has it (Mexico
 * writes points where Spain writes commas), else as the language has it.
 *
 * @example
 * decimalSign("es", ["en-US", "es-MX"]) // "."
 * @example
 * decimalSign("es", ["en-US"]) // ","
 * @example
 * decimalSign("en", ["en-US@posix"]) // "."
 */
export function decimalSign(language: Language, tags: readonly string[]): string {
  const parts = new Intl.NumberFormat([
    ...tags.filter((tag) => languageOf(tag) === language && isTag(tag)),
    language,
  ]).formatToParts(0.5);
  return parts.find(({ type }) => type === "decimal")!.value;
}

/** False for what browsers make of a system's odd locale: "en-US@posix". */
function isTag(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length > 0;
  } catch {
    return false;
  }
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
