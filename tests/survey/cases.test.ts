import { FINDING_KINDS } from "../../src/survey/checks/checks";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { findingSentence } from "../../src/survey/checks/findingSentence";
import { FINDING_TEXTS, ACTION_TEXTS } from "../../src/texts/findings";
import { LANGUAGES, type TextFacts } from "../../src/texts/language";
import { caseNames, readCase } from "./readCase";

const NAMES = caseNames();

/** Facts that say where a finding is, and the headers that they stand under. */
const PLACE = {
  block: "Block",
  row: "Row",
  vine: "Vine",
  side: "Side",
  cordon: "Cordon",
  countedBy: "Counted by",
};
/** Facts that repeat another cell of the row. */
const FIGURES_OF_ROW = {
  spurs: "Live spurs",
  positions: "Positions",
  places: "Positions",
  length: "Length",
  trunk: "Trunk",
};

const figuresOf = (facts: TextFacts): TextFacts =>
  Object.fromEntries(Object.entries(facts).filter(([fact]) => !(fact in PLACE)));

/** Read and checked anew for each test, so that none holds what an earlier one worked out. */
function checkCase(name: string) {
  const read = readCase(name);
  return { ...read, found: allFindings(read.season, { today: read.today }) };
}

describe.each(NAMES)("the case %s", (name) => {
  test(readCase(name).why, () => {
    const { found, findings } = checkCase(name);
    expect(
      found.map(({ sheet, row, column, code, facts }) => ({
        sheet,
        row,
        column,
        code,
        facts: figuresOf(facts),
      })),
    ).toEqual(findings.map(({ because: _, ...finding }) => finding));
  });

  test("the place of every finding is that of its row, and its figures are those of the row", () => {
    const { found, cellUnder } = checkCase(name);
    const alike = (value: unknown) => (typeof value === "string" ? value.toLowerCase() : value);
    for (const { sheet, row, column, facts, code } of found) {
      for (const [fact, header] of Object.entries(PLACE))
        if (facts[fact] !== undefined)
          expect([code, alike(facts[fact])]).toEqual([code, alike(cellUnder(header, sheet, row))]);
      for (const [fact, header] of Object.entries(FIGURES_OF_ROW))
        if (facts[fact] !== undefined)
          expect([code, fact, facts[fact]]).toEqual([code, fact, cellUnder(header, sheet, row)]);
      const own = cellUnder(column.replace(/ \(.*\)$/, ""), sheet, row);
      for (const fact of ["value", "now", "total"])
        if (typeof facts[fact] === "number" && facts.setting === undefined)
          expect([code, facts[fact]]).toEqual([code, own]);
    }
  });

  test("near misses are left alone", () => {
    const { found, nearMisses } = checkCase(name);
    for (const { sheet, row } of nearMisses)
      expect(found.filter((finding) => finding.sheet === sheet && finding.row === row)).toEqual([]);
  });

  test("every sentence states the numbers of the facts that stand in findings.json, the same in every language", () => {
    const { found, findings } = checkCase(name);
    const numbersIn = (text: string) =>
      [...text.matchAll(/-?\d+(?:[.,]\d+)?/g)].map(([one]) => one.replace(",", "."));
    for (const [at, { code, facts }] of findings.entries()) {
      const [sentence, ...others] = LANGUAGES.map((language) => findingSentence(found[at], language));
      for (const [, fact] of FINDING_TEXTS[code].sentence.en.matchAll(/\{(\w+)\}/g))
        for (const number of [facts[fact]].flat())
          if (typeof number === "number")
            expect([code, fact, numbersIn(sentence)]).toEqual([
              code,
              fact,
              expect.arrayContaining([String(Number(number.toFixed(3)))]),
            ]);
      for (const other of others)
        expect([code, numbersIn(other).sort()]).toEqual([code, numbersIn(sentence).sort()]);
    }
  });

  test("every sentence is whole in every language", () => {
    for (const finding of checkCase(name).found)
      for (const language of LANGUAGES)
        expect(findingSentence(finding, language)).not.toMatch(/[{}]|undefined|null|NaN| {2}/);
  });
});

describe.each([...FINDING_KINDS.keys()])("the kind %s", (code) => {
  test("has a case of its own name with a bad row and a near miss", () => {
    expect(NAMES).toContain(code);
    const own = readCase(code);
    expect(own.findings.map((finding) => finding.code)).toContain(code);
    expect(own.nearMisses.length).toBeGreaterThan(0);
    for (const near of own.nearMisses)
      expect(own.season.allTables.some((t) => t.sheet === near.sheet && near.row >= t.headerRow)).toBe(true);
  });

  test("has a title, sentence, reason and remedy in every language, and a group", () => {
    const { title, sentence, why, remedy } = FINDING_TEXTS[code];
    for (const language of LANGUAGES)
      for (const text of [title, sentence, why, remedy]) expect(text[language]).not.toBe("");
    expect(ACTION_TEXTS).toHaveProperty(FINDING_KINDS.get(code)!.action);
  });
});

test("every text belongs to a kind of finding", () => {
  expect(Object.keys(FINDING_TEXTS).sort()).toEqual([...FINDING_KINDS.keys()].sort());
});
