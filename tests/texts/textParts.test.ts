import { LANGUAGES } from "../../src/texts/language";
import { LANGUAGE_FILES } from "../../src/texts/languages/languages";
import { textPart, type TextPart } from "../../src/texts/languages/textParts";

const PARTS: readonly TextPart[] = ["words", "functions", "firstPage", "pages"];

const leaves = (part: unknown, at = ""): string[] =>
  typeof part === "string"
    ? part === ""
      ? []
      : [`${at}: ${part}`]
    : Object.entries((part ?? {}) as object).flatMap(([key, below]) => leaves(below, `${at}.${key}`));

describe.each(LANGUAGES)("the parts in which a page fetches %s", (language) => {
  const parts = PARTS.map((part) => leaves(textPart(LANGUAGE_FILES[language], part)));

  test("hold every text once, but those that are never said in Excel", () => {
    const { commandLine, addinServer, desk, deskServer, ...said } = LANGUAGE_FILES[language];
    expect([commandLine, addinServer, desk, deskServer].every((area) => leaves(area).length > 0)).toBe(true);
    expect(parts.flat().sort()).toEqual(leaves(said).sort());
  });

  test("are small where somebody waits for them: a sixth of all texts for the first page, a third for functions", () => {
    const length = (texts: readonly string[]) => texts.join("").length;
    const [words, functions, firstPage] = parts.map(length);
    expect(firstPage).toBeLessThan(length(parts.flat()) / 6);
    expect(words + functions).toBeLessThan(length(parts.flat()) / 3);
  });
});

test("a text in an area that is fetched later is there as a key only", () => {
  const english = textPart(LANGUAGE_FILES.en, "functions") as typeof LANGUAGE_FILES.en;
  expect(english.functions.budget.nodebudget.description).toBe("");
  expect(english.functions.budget.nodebudget.parameters.least.label).toBe("least");
});
