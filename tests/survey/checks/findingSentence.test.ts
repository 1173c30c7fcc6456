import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingSentence } from "../../../src/survey/checks/findingSentence";
import type { Finding } from "../../../src/survey/checks/finding";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { HABIT_TEXTS, MADE_TEXTS, UNIT_WORDS } from "../../../src/texts/findings";
import { LANGUAGES, type Language } from "../../../src/texts/language";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADERS = [...CORDON_HEADS];

/** The sentences of the first finding of a sheet with this one row. */
function sentences(...row: CellValue[]): string[] {
  const [finding] = allFindings(readSeason([areaOf("Cordons", [HEADERS, row])]));
  return (["en", "es", "fr"] as const).map((language) => findingSentence(finding, language));
}

describe("the sentence of a finding", () => {
  test("names the vine and the cordon, then what is wrong", () => {
    expect(sentences("North Bench", 3, 14, "left", "B", 1, 3, 8, 9)).toEqual([
      "North Bench row 3 vine 14, left cordon B: 9 live spurs on 8 positions cannot be.",
      "North Bench hilera 3 planta 14, cordón B (izquierda): 9 pitones vivos en 8 posiciones no puede ser.",
      "North Bench rang 3 cep 14, cordon B (gauche) : 9 coursons vivants sur 8 emplacements, c'est impossible.",
    ]);
  });

  test("shows a measure in the sheet's unit and the header without it", () => {
    expect(sentences("North Bench", 3, 14, "left", "B", 1, 35, 8, 8)[0]).toBe(
      "North Bench row 3 vine 14, left cordon B: Length is 35\u00a0ft; it must lie between 0 and 19.7\u00a0ft.",
    );
  });

  test("names the sheet's row where there is no block", () => {
    expect(sentences(null, 3, 14, "left", "B", 1, 3, 8, 8)[0]).toBe("Sheet Cordons row 2: Block is blank.");
  });

  test("lists the words that a choice takes in the reader's language", () => {
    expect(sentences("N", 1, 1, "uphill", "B", 1, 3, 8, 8)[1]).toBe(
      "N hilera 1 planta 1, cordón B: Side dice «uphill»; debe ser una de: izquierda, derecha, norte, sur, este, oeste.",
    );
  });
});

test("a vine of 19 lb among vines of 0.3 to 2.2 lb is asked about, as a slip of units that would fit", () => {
  const pounds = [0.3, 0.8, 1.2, 19, 1.9, 0.7, 1.1, 1.4, 0.9, 2.2];
  const season = readSeason([
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Pruning weight (lb)"],
      ...pounds.map((weight, at) => ["North Bench", 1, at + 1, "bearing", weight]),
    ]),
  ]);
  // 19 oz is 19/16 = 1.1875 lb
  expect(
    allFindings(season, { today: 46_100 }).map((finding) =>
      findingSentence(finding, "en").replaceAll("\u00a0", " "),
    ),
  ).toEqual([
    "North Bench row 1 vine 4: Pruning weight is 19 lb, unlike its block; taken as 19 oz it is 1.19 lb and fits (1 row, to row 5 of the sheet).",
  ]);
});

test("a setting's unit is said in the reader's language", () => {
  const season = readSeason([
    areaOf("Settings", [
      ["Setting", "Value", "Unit"],
      ["Unlike its block: spread", 4, "times"],
      ["Unlike its block: spread", 5, "times"],
    ]),
  ]);
  const [finding] = allFindings(season, { today: 46_100 });
  const said = (["es", "fr"] as const).map((language) =>
    findingSentence(finding, language).replaceAll("\u00a0", " "),
  );
  expect(said[0]).toContain("5 ×");
  expect(said[1]).toContain("5 ×");
  expect(said.join(" ")).not.toContain("times");
});

const told = (code: string, facts: Finding["facts"], column = ""): Finding => ({
  code,
  severity: "wrong",
  sheet: "Cordons",
  row: 7,
  columnNumber: 0,
  column,
  facts,
});
/** The sentence in a language, spaces that do not break as others. */
const said = (language: Language, code: string, facts: Finding["facts"], column?: string) =>
  findingSentence(told(code, facts, column), language).replaceAll("\u00a0", " ");

test.each<[Language, number, string]>([
  ["en", 1, "says 1 live trunk."],
  ["en", 0, "says 0 live trunks."],
  ["es", 1, "dice 1 tronco vivo."],
  ["es", 2, "dice 2 troncos vivos."],
  ["fr", 1, "dit 1 tronc vivant."],
  ["fr", 2, "dit 2 troncs vivants."],
])("in %s, %i trunk or trunks of the register are said as they are counted", (language, living, end) => {
  expect(said(language, "trunksAboveRegister", { trunks: [1, 2, 3], living })).toMatch(new RegExp(`${end}$`));
});

describe("where a finding is", () => {
  const place = (facts: Finding["facts"]) => said("en", "missingValue", facts, "Length (ft)").split(": ")[0];

  test.each<[Finding["facts"], string]>([
    [{}, "Sheet Cordons row 7"],
    [{ row: 3, vine: 4 }, "Sheet Cordons row 7"],
    [{ block: "N" }, "N"],
    [{ block: "N", vine: 4 }, "N"],
    [{ block: "N", row: 3 }, "N row 3"],
    [{ block: "N", row: 3, vine: 4 }, "N row 3 vine 4"],
    [{ block: "N", row: 3, vine: 4, side: "left" }, "N row 3 vine 4, left side"],
    [{ block: "N", row: 3, vine: 4, cordon: "B" }, "N row 3 vine 4, cordon B"],
    [{ block: "N", row: 3, vine: 4, side: "left", cordon: "B" }, "N row 3 vine 4, left cordon B"],
  ])("is said as far as it is known: %j", (facts, expected) => {
    expect(place(facts)).toBe(expected);
  });
});

describe("what a finding says", () => {
  test("names another sheet, and none where it is the same", () => {
    const twice = (otherSheet: string) => said("en", "sameCordonTwice", { otherSheet, otherRow: 5 });
    expect(twice("Creek")).toContain("row 5 of the sheet Creek.");
    expect(twice("")).toContain("row 5 of the sheet.");
  });

  test("names a missing column by its head in the reader's language", () => {
    for (const language of LANGUAGES) {
      const column = SHEETS.cordons.columns.find(({ id }) => id === "trunk")!;
      const sentence = said(language, "missingColumn", { columnId: "trunk", shape: "cordons" });
      expect(sentence).toContain(column.header[language]);
    }
    expect(said("en", "missingColumn", { columnId: "some", shape: "none" })).toContain("some");
  });

  test.each(Object.keys(HABIT_TEXTS) as (keyof typeof HABIT_TEXTS)[])("names the habit %s", (habit) => {
    for (const language of LANGUAGES)
      expect(
        said(language, "counterUnlikeOthers", { counter: "AB", habit, percent: 20, vineyardRows: 3 }),
      ).toContain(HABIT_TEXTS[habit][language]);
  });

  test.each(["typed", "formula"] as const)("says how a total came about: %s", (made) => {
    for (const language of LANGUAGES)
      expect(said(language, "totalDiffers", { total: 5, sum: 4, difference: 1, made }, "Clusters")).toContain(
        MADE_TEXTS[made][language],
      );
  });

  test("names columns without the unit in their head, whatever its spaces", () => {
    for (const head of ["Length (ft)", "Length(ft)", "Length  (ft) "])
      expect(said("en", "missingValue", { block: "N" }, head)).toBe("N: Length is blank.");
  });

  test("shows a share and a bare number without a unit, a measure with a space before it", () => {
    const limits = (unit: string) =>
      findingSentence(
        told("outsideLimits", { block: "N", value: 7, least: 0, most: 1, unit }, "Budbreak"),
        "en",
      );
    for (const unit of ["", "share"])
      expect(limits(unit)).toBe("N: Budbreak is 7; it must lie between 0 and 1.");
    expect(limits("ft")).toBe("N: Budbreak is 7\u00a0ft; it must lie between 0 and 1\u00a0ft.");
  });

  test("says what a setting takes in the reader's language, numbers as they are", () => {
    const expected = (language: Language, takes: string | number) =>
      said(language, "settingNotUsable", { setting: "S", value: "x", expected: takes, reason: "kind" });
    expect(expected("fr", "nodes")).toContain(UNIT_WORDS.nodes.fr);
    expect(expected("fr", "nodes")).not.toContain("nodes");
    expect(expected("en", "cm")).toContain("cm");
    expect(
      said("en", "positionsUnlikeLength", { value: 14, length: 3, unit: "ft", expected: 8, values: 13 }),
    ).toContain("8");
  });

  test("leaves a word that is no choice as it was written", () => {
    expect(
      said("es", "unknownWord", { block: "N", value: "x", words: ["left", "uphill"] }, "Side"),
    ).toContain("izquierda, uphill");
    expect(said("es", "sideWithoutCordon", { block: "N", rows: 2, choice: "uphill" })).toContain("uphill");
  });
});
