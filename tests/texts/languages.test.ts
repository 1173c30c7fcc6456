import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { SEVERITY_WIDTH } from "../../src/cli/checkCommand";
import { foreignUnits } from "../survey/unitWords";
import { LANGUAGES, type Language } from "../../src/texts/language";
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

describe("one vocabulary", () => {
  const told = (language: Language) => leaves(LANGUAGE_FILES[language]);
  const plain = (text: string) =>
    text.replace(/\{[^}]*\}/g, "").replace(/https?:\S+|\S+\.(ts|js|json|md|xlsx)\S*/g, "");

  test.each(LANGUAGES)("no identifier of the program stands in a text in %s", (language) => {
    // highWire is a word that a person types; onChanged is Office's own name, in the report for its makers
    const named = told(language).flatMap(([at, text]) =>
      (plain(text).match(/\b[a-z]+[A-Z]\w*/g) ?? []).map((word) => `${at}: ${word}`),
    );
    const typed = /: highWire$|^\.excelReport\.rows\.watch\.expected: onChanged$/;
    expect(named.filter((one) => !typed.test(one))).toEqual([]);
  });

  test.each(LANGUAGES)(
    "what a figure of Settings means is said in both systems of units in %s, or in none",
    (language) => {
      const meanings = told(language).filter(
        ([at]) => /^\.settings\.(?!settings)/.test(at) && !at.endsWith(".unitSystem"),
      );
      const inOne = (["US", "metric"] as const).flatMap((system) =>
        meanings
          .filter(([, text]) => foreignUnits(text, system).length > 0)
          .map(([at, text]) => `${at}: ${text}`),
      );
      expect(inOne).toEqual([]);
      expect(
        foreignUnits("Raise it by 5 in.\n3 ft (0.9 m) stand apart.\nPruned 4 t cortas/acre", "metric"),
      ).toHaveLength(2);
      expect(foreignUnits("Up to 13 cm long\n5 rows in all", "US")).toEqual(["Up to 13 cm long"]);
    },
  );

  test.each(["es", "fr"] as const)("no English is left over in %s", (language) => {
    const english =
      /(?<![-\p{L}])(the|and|with|vines?|rows|times|from|was|click|cells?|your|trunks?|spurs?|nodes|undo|this|that|canes?|buds?|because|which)(?![-\p{L}])/iu;
    const quoted = /“[^”]*”|"[^"]*"|«[^»]*»|\{[^}]*\}/g;
    const left = told(language).filter(([, text]) => english.test(text.replace(quoted, "")));
    expect(left.map(([at, text]) => `${at}: ${text}`)).toEqual([]);
  });

  test("settled, proposed and reverted are said in one way: decided, accepted, taken back", () => {
    const others = /\b(settled?|revert(ed)?|roll(ed)? back|put(s)? back to|restores?)\b/i;
    expect(
      told("en")
        .filter(([, text]) => others.test(text))
        .map(([at]) => at),
    ).toEqual([]);
  });

  test("a number that can be one has the word for one beside it", () => {
    // facts that count things; a limit ("at most {most}") and a mean are never one
    const counted =
      /\{(cards|vines|rows|cells|count|wrong|gone|without|pairs|blocks|sheets|files|findings|asks|asked|days)\} (\p{L}+)/gu;
    const verbs =
      /^(in|of|have|has|is|are|with|at|were|was|by|per|and|on|rows|columns|to|hilera|de|en|sur|dans|h)$/;
    const lacking = told("en").flatMap(([at, text]) =>
      [...text.matchAll(counted)]
        .filter(([, , word]) => word.endsWith("s") && !verbs.test(word))
        .map(([all]) => `${at}: ${all}`),
    );
    expect(lacking).toEqual([]);
  });

  test.each(["es", "fr"] as const)("a number with a word for one in English has one in %s", (language) => {
    const formed = (text: string) => new Set([...text.matchAll(/\{(\w+):[^}]*\|/g)].map(([, fact]) => fact));
    const own = new Map(told(language));
    const lacking = told("en").flatMap(([at, text]) =>
      [...formed(text)].filter((fact) => !formed(own.get(at)!).has(fact)).map((fact) => `${at}: ${fact}`),
    );
    expect(lacking).toEqual([]);
  });

  test("a spur, a cordon's place and taking back have one word each in Spanish and French", () => {
    const others = {
      es: /\b(pulgar(es)?|brocad[ao]s?|restaurar|revertir)\b/i,
      fr: /\b(éperons?|restaurer|rétablir)\b/i,
    };
    for (const language of ["es", "fr"] as const)
      expect(told(language).filter(([, text]) => others[language].test(text))).toEqual([]);
  });

  test.each(LANGUAGES)(
    "no severity touches the sentence that follows it on the command line in %s",
    (language) => {
      for (const word of Object.values(LANGUAGE_FILES[language].findings.severity))
        expect(word.length).toBeLessThan(SEVERITY_WIDTH);
    },
  );
});
