import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { LANGUAGES } from "../../src/texts/language";
import { LANGUAGE_FILES } from "../../src/texts/languages/languages";

const SOURCES = path.join(__dirname, "../../src");
const files = readdirSync(SOURCES, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.split(path.sep).join("/"));

/** Where an object literal has the languages themselves as its keys, and a text or a list as the first's value. */
function textsOutsideLanguages(file: string, content: string): string[] {
  const source = ts.createSourceFile(file, content, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node)) {
      const keys = node.properties.map((property) => property.name?.getText().replace(/"/g, ""));
      const texts = node.properties.filter(
        (property) =>
          ts.isShorthandPropertyAssignment(property) ||
          (ts.isPropertyAssignment(property) &&
            (ts.isStringLiteralLike(property.initializer) || ts.isTemplateExpression(property.initializer))),
      );
      if (LANGUAGES.every((language) => keys.includes(language)) && texts.length === keys.length)
        found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Every string of a language's file with its path of keys. */
function leaves(part: unknown, at = ""): [string, string][] {
  return typeof part === "string"
    ? [[at, part]]
    : Object.entries(part as object).flatMap(([key, below]) => leaves(below, `${at}.${key}`));
}

/** English texts that stand for one thing and yet are said in two ways in a language. */
function saidInTwoWays(english: unknown, own: unknown): string[] {
  const texts = new Map(leaves(own));
  const said = new Map<string, Set<string | undefined>>();
  for (const [at, text] of leaves(english)) said.set(text, (said.get(text) ?? new Set()).add(texts.get(at)));
  return [...said].filter(([, ways]) => ways.size > 1).map(([text]) => text);
}

const placeholders = (text: string) => [...text.matchAll(/\{\w+\}/g)].flat().sort();

describe("one file a language", () => {
  test("no other file of src holds a text in every language", () => {
    const held = files
      .filter((file) => file !== "texts/languages/languages.ts")
      .flatMap((file) => textsOutsideLanguages(file, readFileSync(path.join(SOURCES, file), "utf8")));
    expect(held).toEqual([]);
  });

  test("a text beside the files of languages would be found", () => {
    expect(textsOutsideLanguages("a.ts", 'const a = {\n  b: { en: "x", es: `y`, fr: "z" },\n};')).toEqual([
      "a.ts:2",
    ]);
    expect(textsOutsideLanguages("a.ts", "const t = (en, es, fr) => ({ en, es, fr });")).toEqual(["a.ts:1"]);
    expect(textsOutsideLanguages("a.ts", "const a = { en: 1, es: 2, fr: 3 };")).toEqual([]);
  });

  test.each(LANGUAGES)(
    "%s has every key of English, with the same placeholders and no blank text",
    (language) => {
      const english = leaves(LANGUAGE_FILES.en);
      const own = leaves(LANGUAGE_FILES[language]);
      expect(own.map(([at]) => at).sort()).toEqual(english.map(([at]) => at).sort());
      const texts = new Map(own);
      for (const [at, text] of english) {
        expect([at, placeholders(texts.get(at) ?? "")]).toEqual([at, placeholders(text)]);
        expect([at, texts.get(at)?.trim()]).not.toEqual([at, ""]);
      }
    },
  );

  test.each(LANGUAGES)("%s says what English says in one way in one way", (language) => {
    expect(saidInTwoWays(LANGUAGE_FILES.en, LANGUAGE_FILES[language])).toEqual([]);
    expect(saidInTwoWays({ a: "Row", b: { c: "Row" } }, { a: "Hilera", b: { c: "Fila" } })).toEqual(["Row"]);
  });
});
