import * as cards from "../../src/texts/cards";
import * as choice from "../../src/texts/choice";
import * as crew from "../../src/texts/crew";
import { OVERRULE_TEXTS } from "../../src/texts/overrule";
import * as picture from "../../src/texts/picture";
import * as renewal from "../../src/texts/renewal";
import { LANGUAGES, type Text } from "../../src/texts/language";

const texts: [string, Text][] = Object.entries({
  ...cards,
  ...choice,
  ...crew,
  OVERRULE_TEXTS,
  ...picture,
  ...renewal,
})
  .filter(([table]) => table !== "RIBBON_COLOURS")
  .flatMap(([table, content]) => textsOf(table, content));

/** Every text of a table, also of one within it. */
function textsOf(name: string, content: object): [string, Text][] {
  if ("en" in content) return [[name, content as Text]];
  return Object.entries(content as Readonly<Record<string, object>>).flatMap(([code, within]) =>
    textsOf(`${name} ${code}`, within),
  );
}

describe("texts of the cordon choice, renewal, cards and pictures", () => {
  test.each(texts)("%s has the same placeholders in every language", (_name, text) => {
    const placeholders = LANGUAGES.map((language) => [...text[language].matchAll(/\{\w+\}/g)].flat().sort());
    expect(placeholders).toEqual(LANGUAGES.map(() => placeholders[0]));
    for (const language of LANGUAGES) expect(text[language].trim()).not.toBe("");
  });
});
