import { INJURY_RULE_NAMES, injuryRule } from "../../src/domain/injuryRules";
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { LANGUAGES, say } from "../../src/texts/language";
import { REFUSALS } from "../../src/texts/refusals";

const SRC = resolve(__dirname, "../../src");
function codeOfFile(name: string): string {
  return readFileSync(join(SRC, name), "utf8").replace(/\/\*\*.*?\*\//gs, "");
}

const codeOf = (folder: string) =>
  readdirSync(join(SRC, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => codeOfFile(join(folder, name)))
    .join("\n");
/** The rules of a table name their refusals in its rows. */
const OF_A_TABLE = join("domain", "nodesAfterInjury.ts");
const code = codeOf("domain").replace(codeOfFile(OF_A_TABLE), "");
const all = codeOf("");
const codes = new Set([
  ...INJURY_RULE_NAMES.flatMap((rule) => {
    const { steps, twice } = injuryRule(rule);
    return [...steps.map(({ leave }) => leave), twice].filter((said) => typeof said === "string");
  }),
  ...[...code.matchAll(/new Refusal\(\s*"(?:invalid|notAvailable)",\s*"(\w+)"/g)].map((found) => found[1]),
]);

describe("every refusal of the calculation has its sentence", () => {
  test("each refusal is written with its code as a literal, so that this test can see it", () => {
    expect([...code.matchAll(/new Refusal\(/g)].length).toBe(
      [...code.matchAll(/new Refusal\(\s*"(?:invalid|notAvailable)",\s*"\w+"/g)].length,
    );
  });

  test.each([...codes])("%s", (name) => {
    expect(REFUSALS).toHaveProperty(name);
  });

  test("no sentence is left without a refusal", () => {
    expect(Object.keys(REFUSALS).filter((name) => !all.includes(`"${name}"`))).toEqual([]);
  });

  test.each(Object.entries(REFUSALS))("%s has the same placeholders in every language", (_name, text) => {
    const placeholders = LANGUAGES.map((language) => [...text[language].matchAll(/\{\w+\}/g)].flat().sort());
    expect(placeholders).toEqual(LANGUAGES.map(() => placeholders[0]));
    for (const language of LANGUAGES) expect(say(text, language)).not.toBe("");
  });
});
