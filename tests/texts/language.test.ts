import { languageOf, say, type Text } from "../../src/texts/language";

describe("texts in three languages", () => {
  const text = { en: "row {row}, {share}", es: "hilera {row}, {share}", fr: "rang {row}, {share}" } as Text;

  test("placeholders are filled in the language's own notation", () => {
    expect(say(text, "en", { row: 7, share: 0.5 })).toBe("row 7, 0.5");
    expect(say(text, "es", { row: 7, share: 0.5 })).toBe("hilera 7, 0,5");
    expect(say(text, "fr", { row: [7, 8], share: 0.5 })).toBe("rang 7, 8, 0,5");
  });

  test("a placeholder without a fact stays visible", () => {
    expect(say(text, "en", { row: 1 })).toBe("row 1, {share}");
  });

  test("regional tags fall back to the language, unknown ones to English", () => {
    expect(languageOf("es-MX")).toBe("es");
    expect(languageOf("FR")).toBe("fr");
    expect(languageOf("de-DE")).toBe("en");
    expect(languageOf("estonian")).toBe("en");
    expect(languageOf(undefined)).toBe("en");
  });

  test("locales as POSIX writes them for a terminal are understood", () => {
    expect(languageOf("es_MX.UTF-8")).toBe("es");
    expect(languageOf("fr_CA")).toBe("fr");
    expect(languageOf("fr.ISO8859-1")).toBe("fr");
    expect(languageOf("fr_FR@euro")).toBe("fr");
    expect(languageOf("C.UTF-8")).toBe("en");
    expect(languageOf("POSIX")).toBe("en");
  });
});
