import type { YoungVine, YoungVineRule } from "../../../domain/plan/youngVine";
import { SOURCES } from "../../../domain/sources";
import { say, type Language } from "../../../texts/language";
import { TEXTS } from "../../../texts/texts";
import { YOUNG_VINE } from "../../../texts/renewal";

/** What one publication gives a figure of. */
export function youngVineRuleName({ rule }: YoungVineRule, language: Language): string {
  return YOUNG_VINE.rules[rule][language];
}

function youngVineRuleWords(one: YoungVineRule, language: Language): string {
  const { least, most } = one;
  const words = youngVineRuleName(one, language);
  if (most === undefined) return words;
  const figures = least === undefined ? "atMost" : least === most ? "just" : "between";
  return `${words}: ${say(YOUNG_VINE.figures[figures], language, { least: least ?? 0, most })}`;
}

function sourceName({ source }: YoungVineRule, language: Language): string {
  return source === undefined ? TEXTS.sheets.settings.name[language] : SOURCES[source].name;
}

/**
 * What is left on a vine in one of its first four years, a sentence a publication, and what none of them gives.
 *
 * @example
 * youngVineSentences({ year: 1, rules: [{ rule: "clusters", most: 0, source: "uw2016" }] }, "en") // ["Year 1 of this vine.", "Flower clusters to leave: 0 at most (UW-Madison 2016).", "No publication seen gives nodes to leave on a vine of this year."]
 */
export function youngVineSentences({ year, rules }: YoungVine, language: Language): string[] {
  const hasNodes = rules.some(({ rule }) => rule === "nodesASpur");
  return [
    say(YOUNG_VINE.year, language, { year }),
    ...rules.map((one) => {
      const words = youngVineRuleWords(one, language);
      return `${words.charAt(0).toLocaleUpperCase(language)}${words.slice(1)} (${sourceName(one, language)}).`;
    }),
    ...(hasNodes ? [] : [YOUNG_VINE.noNodes[language]]),
  ];
}

/**
 * The same for a crew card.
 *
 * @example
 * youngCardWords({ year: 3, rules: [{ rule: "clusters", most: 10, source: "winegrowersUk" }] }, "en") // "year 3: shoots of the cordon, on by half a cane at most, 10 clusters at most"
 */
export function youngCardWords({ year, rules }: YoungVine, language: Language): string {
  const clusters = rules.find(({ rule }) => rule === "clusters")?.most ?? 0;
  const words = rules.length === 0 ? "otherTraining" : YEARS[year];
  return say(YOUNG_VINE.cards[words], language, { clusters });
}

const YEARS = { 1: "first", 2: "second", 3: "third", 4: "fourth" } as const;
