import { FINDING_KINDS } from "../../src/survey/checks/checks";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { findingSentence } from "../../src/survey/checks/findingSentence";
import { FINDING_TEXTS, ACTION_TEXTS } from "../../src/texts/findings";
import { LANGUAGES } from "../../src/texts/language";
import { caseNames, readCase } from "./readCase";

const NAMES = caseNames();

describe.each(NAMES)("the case %s", (name) => {
  const { season, today, findings, nearMisses, why } = readCase(name);
  const found = allFindings(season, { today });

  test(why, () => {
    expect(found.map(({ sheet, row, column, code }) => ({ sheet, row, column, code }))).toEqual(findings);
  });

  test("near misses are left alone", () => {
    for (const { sheet, row } of nearMisses)
      expect(found.filter((finding) => finding.sheet === sheet && finding.row === row)).toEqual([]);
  });

  test("every sentence is whole in every language", () => {
    for (const finding of found)
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
