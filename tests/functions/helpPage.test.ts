import { helpAddress, helpFile, helpPage } from "../../src/functions/helpPage";
import { functionsMetadata } from "../../src/functions/metadata";
import { FUNCTIONS } from "../../src/functions/registry";
import { LANGUAGES } from "../../src/texts/language";

const read = (html: string) =>
  html
    .replace(/<[^>]+>/g, " ")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&")
    .replace(/\s+/g, " ");

describe.each(LANGUAGES)("the page behind “help on this function” in %s", (language) => {
  const page = helpPage(language);

  test.each(FUNCTIONS)("explains $id with every argument, a worked row and its source", (called) => {
    const begins = page.indexOf(`<section id="${called.id}"`);
    expect(begins).toBeGreaterThan(0);
    const text = read(page.slice(begins, page.indexOf("</section>", begins)));
    const told = [
      called.texts.description[language],
      ...Object.values(called.texts.parameters).flatMap(({ label, description }) => [
        label[language],
        description[language],
      ]),
      ...called.examples.flatMap(({ formula, source }) => [formula, source.work]),
    ];
    for (const part of told) expect(text).toContain(part.replace(/\s+/g, " "));
    for (const choice of called.parameters.flatMap(({ choices }) => choices)) expect(text).toContain(choice);
  });

  test("loads nothing from anywhere and runs no script", () => {
    expect(page).not.toMatch(/<script|https?:|src=|@import|url\(/);
    expect(page).toContain(`lang="${language}"`);
  });

  test("is where functions.json leads, function by function", () => {
    for (const { id, helpUrl } of functionsMetadata(language).functions) {
      expect(helpUrl).toBe(helpAddress(id, language));
      expect(helpUrl).toBe(`https://localhost:3000/${helpFile(language)}#${id}`);
    }
  });
});

test("Excel is given every accepted word under the argument that takes it, and no other", () => {
  const { enums, functions } = functionsMetadata("en");
  const words = new Map(enums.map(({ id, values }) => [id, values.map(({ stringValue }) => stringValue)]));
  for (const [index, { id, parameters }] of functions.entries())
    for (const [place, { customEnumId }] of parameters.entries()) {
      const { choices } = FUNCTIONS[index].parameters[place];
      expect([id, customEnumId === undefined ? [] : words.get(customEnumId)]).toEqual([id, choices]);
    }
  expect(words.get("UNIT")).toEqual(["US", "metric"]);
  expect(words.get("GAPSBYROW_WHICH")).toEqual(["all", "staying", "chosen"]);
});

test.each([
  ["NODEBUDGET", "prunings_lb_kg"],
  ["SPURFIT", "length_ft_m"],
  ["SPURFIT", "spacing_in_cm"],
  ["NODESAFTERINJURY", "dead_share_0_to_1"],
  ["BLOCKCROP", "density_per_acre_ha"],
])("an argument of %s says its unit in its name: %s", (id, name) => {
  const called = functionsMetadata("en").functions.find((each) => each.id === id)!;
  expect(called.parameters.map((each) => each.name)).toContain(name);
});
