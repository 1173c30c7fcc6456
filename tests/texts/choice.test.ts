import * as choice from "../../src/texts/choice";
import { LANGUAGES, type Text } from "../../src/texts/language";

const texts: [string, Text][] = Object.entries(choice).flatMap(([table, content]) =>
  "en" in content
    ? [[table, content as Text] as [string, Text]]
    : Object.entries(content as Readonly<Record<string, Text>>).map(([code, text]): [string, Text] => [
        `${table} ${code}`,
        text,
      ]),
);

describe("texts of the cordon choice", () => {
  test.each(texts)("%s has the same placeholders in every language", (_name, text) => {
    const placeholders = LANGUAGES.map((language) => [...text[language].matchAll(/\{\w+\}/g)].flat().sort());
    expect(placeholders).toEqual(LANGUAGES.map(() => placeholders[0]));
    for (const language of LANGUAGES) expect(text[language].trim()).not.toBe("");
  });
});
