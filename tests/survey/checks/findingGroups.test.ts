import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups, type FindingGroup } from "../../../src/survey/checks/findingGroups";
import { groupHeading, mendSentence } from "../../../src/survey/checks/groupSentence";
import type { Finding } from "../../../src/survey/checks/finding";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { FINDING_TEXTS } from "../../../src/texts/findings";
import { LANGUAGES } from "../../../src/texts/language";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

type Row = readonly CellValue[];

const HEADS = [...CORDON_HEADS];
const MORE = ["Condition", "Counted by", "Date"];
/** Serial of 12 January 2026: 16 leap days lie in 1904 to 2024 beside that of 1900: 126 x 365 + 32 + 12 - 0 = 46034. */
const TWELFTH = 46034;

/** An invented block of eight vines with two cordons each; `changed` gives a row another content. */
function cordons(changed: (row: CellValue[], index: number) => void): Row[] {
  return Array.from({ length: 16 }, (_, index) => {
    const row: CellValue[] = [
      "North Bench",
      1,
      1 + (index >> 1),
      ["left", "right"][index % 2],
      "AB"[index % 2],
      1,
      3,
      8,
      5 + (index % 3),
      "sound",
      "AB",
      TWELFTH,
    ];
    changed(row, index);
    return row;
  });
}

const BLOCKS = areaOf("Blocks", [
  ["Block", "Cultivar", "Vine spacing (ft)", "Row spacing (ft)", "Training", "Cordons a vine"],
  ["North Bench", "Invented", 6, 9, "high wire", 2],
]);

function groupsOf(rows: readonly Row[]): readonly FindingGroup[] {
  const season = readSeason([areaOf("Cordons", [[...HEADS, ...MORE], ...rows]), BLOCKS]);
  return findingGroups(allFindings(season), season);
}

const group = (groups: readonly FindingGroup[], code: string) => groups.filter((own) => own.code === code);

test("a word that is typed wrong in twelve rows is one group with the nearest known word for each cell", () => {
  const groups = group(groupsOf(cordons((row, i) => i < 12 && (row[9] = "injurd"))), "unknownWord");
  expect(groups.map(({ cause, findings }) => [cause, findings.length])).toEqual([
    [{ by: "word", value: "injurd" }, 12],
  ]);
  expect(groups[0].mends).toHaveLength(12);
  expect(groups[0].mends[0]).toEqual({
    sheet: "Cordons",
    row: 2,
    column: 10,
    from: "injurd",
    to: "injured",
    isCertain: false,
  });
});

test("two wrong words are two groups; more than three different ones are a column of other words", () => {
  const two = groupsOf(cordons((row, i) => i < 4 && (row[9] = ["injurd", "soud"][i % 2])));
  expect(group(two, "unknownWord").map(({ cause }) => cause.value)).toEqual(["injurd", "soud"]);
  const many = groupsOf(cordons((row, i) => i < 8 && (row[9] = ["qq", "ww", "zz", "kk"][i % 4])));
  expect(group(many, "unknownWord").map(({ cause, findings }) => [cause, findings.length])).toEqual([
    [{ by: "column", value: "Condition" }, 8],
  ]);
  expect(group(many, "unknownWord")[0].mends).toEqual([]);
});

test("what a spreadsheet made of counts is a group a kind, whatever the column", () => {
  const groups = group(
    groupsOf(cordons((row, i) => (i < 6 ? (row[8] = "12 + 1") : i < 10 && (row[7] = TWELFTH)))),
    "notANumber",
  );
  expect(groups.map(({ cause, findings }) => [cause.value, findings.length])).toEqual([
    ["sum", 6],
    ["date", 4],
  ]);
  // 12 + 1 = 13; of 12 January the smaller of 1 and 12.
  expect(groups.map(({ mends }) => mends[0].to)).toEqual([13, 1]);
});

test("a block's name written wrong in a stretch is mended in every row of it", () => {
  const groups = group(groupsOf(cordons((row, i) => i < 5 && (row[0] = "North Bnech"))), "unknownBlock");
  expect(groups).toHaveLength(1);
  expect(groups[0].mends.map(({ row, from, to }) => [row, from, to])).toEqual(
    [2, 3, 4, 5, 6].map((row) => [row, "North Bnech", "North Bench"]),
  );
});

test("the January slip of a stretch is mended by a year, in all its rows", () => {
  // 12 January 2025 is 365 days before 12 January 2026.
  const groups = group(groupsOf(cordons((row, i) => i < 3 && (row[11] = TWELFTH - 365))), "dateOtherYear");
  expect(groups.map(({ cause }) => cause)).toEqual([{ by: "sheet", value: "Cordons" }]);
  expect(groups[0].mends.map(({ to }) => to)).toEqual([TWELFTH, TWELFTH, TWELFTH]);
});

test("numbers stored as text are certain, but not where a point may stand for thousands", () => {
  const groups = group(
    groupsOf(cordons((row, i) => (i === 0 ? (row[6] = "3.5") : i === 1 && (row[6] = "3.125")))),
    "numberAsText",
  );
  expect(groups[0].mends.map(({ to, isCertain }) => [to, isCertain])).toEqual([
    [3.5, true],
    [3.125, false],
  ]);
});

// Cordons of 3 ft: 1250 ft is none, so 1.25 alone is offered. Prunings of 900 to 1400 g: 1250 g is like them, 1.25 g is
// not; 1250 kg or oz (35 kg) no vine gives. A count is whole: 1250 spurs are more than any cordon has.
test.each([
  ["Length (ft)", ["1.250", 3, 3], [1.25, undefined]],
  ["Prunings (g)", ["1.250", 900, 1100, 1400], [1250, 1.25]],
  ["Prunings (kg)", ["1.250", 1.1, 1.2, 1.4], [1.25, undefined]],
  ["Prunings (oz)", ["1,250", 20, 30, 35], [1.25, undefined]],
  ["Prunings (g)", ["1.250", "1.300", "1.100"], [1250, 1.25]],
  ["Live spurs", ["1.250", 5, 6], undefined],
])("of thousands and parts under %s, %j, the likely one stands first", (head, cells, expected) => {
  const isVine = head.startsWith("Prunings");
  const keys = isVine
    ? ["Block", "Row", "Vine", "Status"]
    : ["Block", "Row", "Vine", "Side", "Cordon", "Trunk"];
  const heads = [...keys, ...(isVine ? [] : ["Positions"]), head];
  const rows = cells.map((cell, i) => [
    ...["North Bench", 1, i + 1],
    ...(isVine ? ["bearing"] : ["left", "A", 1, 8]),
    cell,
  ]);
  const season = readSeason([areaOf(isVine ? "Vines" : "Cordons", [heads, ...rows])]);
  const [own] = group(findingGroups(allFindings(season), season), "numberAsText");
  const [mend] = own.mends;
  expect(mend && [mend.to, mend.other]).toEqual(expected);
  expect(own.mends.every(({ isCertain }) => !isCertain)).toBe(true);
  if (mend?.other === 1.25) expect(mendSentence([mend], "en")).toBe("Likely: “1.250” becomes 1250 (or 1.25)");
});

test("what one person counted is that person's; a formula is never offered to be changed", () => {
  const groups = groupsOf(cordons((row, i) => i < 4 && (row[8] = 9)));
  expect(group(groups, "spursAbovePositions").map(({ cause }) => cause)).toEqual([
    { by: "counter", value: "AB" },
  ]);
  const season = readSeason([
    areaOf(
      "Cordons",
      [HEADS, ...cordons((row, i) => i === 0 && (row[8] = "12 + 1")).map((row) => row.slice(0, 9))],
      {
        formulas: { "2:9": '="12 + 1"' },
      },
    ),
  ]);
  expect(findingGroups(allFindings(season), season).flatMap(({ mends }) => mends)).toEqual([]);
});

test("no word of a heading or a mend is left open in any language", () => {
  const groups = groupsOf(
    cordons((row, i) => {
      if (i < 3) row[9] = "injurd";
      if (i === 4) row[8] = "12 + 1";
      if (i === 5) row[8] = 9;
    }),
  );
  for (const language of LANGUAGES)
    for (const own of groups)
      expect(`${groupHeading(own, language)} ${mendSentence(own.mends, language)}`).not.toMatch(
        /\{|undefined/,
      );
  expect(groups.map((own) => groupHeading(own, "en"))).toEqual(
    expect.arrayContaining(["Unknown word: “injurd” (3)", "Not a number: sums (1)"]),
  );
  expect(mendSentence(group(groups, "unknownWord")[0].mends, "en")).toBe(
    "Likely: “injurd” becomes “injured”",
  );
});

test("what three counters do is a habit of each, what four or more do alike is the column's, in one group", () => {
  const of = (counters: readonly string[]) =>
    group(
      groupsOf(
        cordons((row, i) => {
          row[8] = 9;
          row[10] = counters[(i >> 1) % counters.length];
        }),
      ),
      "spursAbovePositions",
    ).map(({ cause, findings }) => [cause, findings.length]);
  // Nine spurs on eight places in both rows of eight vines: three counters in turn take 3, 3 and 2 vines.
  expect(of(["AB", "CD", "EF"])).toEqual([
    [{ by: "counter", value: "AB" }, 6],
    [{ by: "counter", value: "CD" }, 6],
    [{ by: "counter", value: "EF" }, 4],
  ]);
  expect(of(["AB", "CD", "EF", "GH"])).toEqual([[{ by: "column", value: "Live spurs" }, 16]]);
});

const SEASON = () => readSeason([areaOf("Cordons", [HEADS])]);
const told = (code: string, facts: Finding["facts"], more: Partial<Finding> = {}): Finding => ({
  code,
  severity: "wrong",
  sheet: "Cordons",
  row: 2,
  columnNumber: 9,
  column: "Live spurs",
  facts,
  ...more,
});
const causesOf = (findings: readonly Finding[], season = SEASON()) =>
  findingGroups(findings, season).map(({ cause, findings: own }) => [cause.by, cause.value, own.length]);

test("groups stand by severity, of one severity the largest first", () => {
  const findings = (["note", "wrong", "ask"] as const).flatMap((severity) =>
    [1, 3, 2].flatMap((count) =>
      Array.from({ length: count }, () =>
        told("spursAbovePositions", { countedBy: `${severity} ${count}` }, { severity }),
      ),
    ),
  );
  // Of each severity three counters, so that the column is not the cause: nine of one kind would be.
  const kinds = { note: "struckOut", wrong: "spursAbovePositions", ask: "copiedDown" };
  const own = findings.map((finding) => ({ ...finding, code: kinds[finding.severity] }));
  expect(causesOf(own).map(([, value]) => value)).toEqual(
    ["wrong", "ask", "note"].flatMap((severity) => [3, 2, 1].map((count) => `${severity} ${count}`)),
  );
});

test.each<[string, Finding["facts"], string, string]>([
  ["missingColumn", { columnId: "trunk", shape: "cordons" }, "column", "trunk"],
  ["columnTwice", { wanted: "Positions" }, "column", "Positions"],
  ["vineNeverCounted", { countedBy: "AB" }, "sheet", "Cordons"],
  ["dateOutOfSeason", { countedBy: "AB" }, "sheet", "Cordons"],
  ["outsideLimits", { countedBy: "AB" }, "column", "Live spurs"],
  ["spursAbovePositions", { countedBy: "AB" }, "counter", "AB"],
  ["counterUnlikeOthers", { counter: "RS", countedBy: "AB" }, "counter", "RS"],
  ["spursAbovePositions", {}, "sheet", "Cordons"],
  ["unknownWord", { value: "injurd", countedBy: "AB" }, "word", "injurd"],
  ["settingUnknown", { setting: "Spurs", value: undefined as never }, "word", "Spurs"],
])("the cause of %s with %j is the %s %s", (code, facts, by, value) => {
  expect(causesOf([told(code, facts)])).toEqual([[by, value, 1]]);
});

test("words are many in one column of one sheet only, and only of a kind that is about words", () => {
  const words = (count: number, more: (at: number) => Partial<Finding> = () => ({})) =>
    Array.from({ length: count }, (_, at) => told("unknownWord", { value: "abcde"[at] }, more(at)));
  expect(causesOf(words(3)).map(([by]) => by)).toEqual(["word", "word", "word"]);
  expect(causesOf(words(4))).toEqual([["column", "Live spurs", 4]]);
  expect(causesOf(words(4, (at) => ({ column: ["Side", "Condition"][at % 2] })))).toHaveLength(4);
  expect(causesOf(words(4, (at) => ({ sheet: ["Cordons", "Vines"][at % 2] })))).toHaveLength(4);
  expect(causesOf(words(4, (at) => ({ code: ["unknownWord", "unknownBlock"][at % 2] })))).toHaveLength(4);
});

test("rows that four people counted keep their counters where the finding names no column", () => {
  const findings = ["AB", "CD", "EF", "GH"].map((countedBy) =>
    told("copiedDown", { countedBy }, { column: "", columnNumber: 0 }),
  );
  expect(causesOf(findings).map(([by]) => by)).toEqual(["counter", "counter", "counter", "counter"]);
});

test("dates before the season are the column's where the sheets were walked around the season's first day", () => {
  // 20 September belongs to the winter before that of 20 November, 61 days later; other vines stand in each sheet.
  const sheet = (name: string, day: string, first: number) =>
    areaOf(name, [
      [...HEADS, "Date"],
      ...Array.from({ length: 12 }, (_, at) => [
        "North Bench",
        1,
        first + at,
        "left",
        "A",
        1,
        3,
        8,
        5 + (at % 3),
        day,
      ]),
    ]);
  const groups = (areas: Parameters<typeof readSeason>[0]) => {
    const season = readSeason(areas);
    return group(findingGroups(allFindings(season), season), "dateOutOfSeason").map(({ cause }) => cause);
  };
  expect(groups([sheet("Early", "2025-09-20", 1), sheet("Late", "2025-11-20", 30)])).toEqual([
    { by: "column", value: "Date" },
  ]);
  expect(groups([sheet("Early", "2025-09-20", 1)])).toEqual([{ by: "sheet", value: "Early" }]);
});

test.each<[string, number, CellValue, string, string]>([
  ["a day without its year", 11, "12 Feb", "kind", "noYear"],
  ["a day that can be two", 11, "3/4/2026", "kind", "bothWays"],
  ["a word under dates", 11, "soon", "word", "soon"],
  ["a sum", 8, "4 + 1", "kind", "sum"],
  ["a word under counts", 8, "many", "word", "many"],
  ["a sum under lengths", 6, "2 + 1", "word", "2 + 1"],
])("%s is an odd cell of its kind, or the word that it is", (_, column, cell, by, value) => {
  const season = readSeason([
    areaOf("Cordons", [[...HEADS, ...MORE], ...cordons((row, i) => i === 3 && (row[column] = cell))]),
  ]);
  const odd = allFindings(season).filter(({ code }) => code === "notANumber" || code === "notADate");
  expect(causesOf(odd, season)).toEqual([[by, value, 1]]);
});

test("a heading shows the cause without the unit behind it; of a column that is missing the whole sentence", () => {
  const headings = (finding: Finding) =>
    findingGroups([finding], SEASON()).map((own) => groupHeading(own, "en"));
  expect(headings(told("outsideLimits", {}, { column: "Length (ft)" }))).toEqual([
    `${FINDING_TEXTS.outsideLimits.title.en}: Length (1)`,
  ]);
  expect(headings(told("missingColumn", { columnId: "trunk", shape: "cordons" }))[0]).toContain("Trunk");
});

describe("what would be changed", () => {
  const mend = (from: CellValue, to: string | number | null, isCertain = true) => ({
    sheet: "Cordons",
    row: 2,
    column: 1,
    from,
    to,
    isCertain,
  });

  test("is shown three changes long, each once", () => {
    const three = [mend("a", 1), mend("b", 2), mend("c", 3), mend("a", 1)];
    expect(mendSentence(three, "en")).not.toContain("…");
    const four = mendSentence([...three, mend("d", 4)], "en");
    expect(four).toContain("…");
    expect(four).not.toContain("“d”");
  });

  test("is certain where every change is", () => {
    const certain = mendSentence([mend("a", 1)], "en");
    expect(mendSentence([mend("a", 1), mend("a", 1, false)], "en")).not.toBe(certain);
    expect(certain.startsWith("Likely")).toBe(false);
    expect(mendSentence([mend("a", 1, false)], "en").startsWith("Likely")).toBe(true);
  });

  test("names a blank, a day and an error as such", () => {
    const blank = mendSentence([mend(0, null)], "en");
    expect(mendSentence([mend(0, "")], "en")).toBe(blank);
    expect(blank).toContain("blank");
    expect(mendSentence([mend(null, 5)], "en")).toContain("blank");
    expect(mendSentence([mend(TWELFTH, TWELFTH + 1)], "en")).toContain("2026-01-12 becomes 2026-01-13");
    expect(mendSentence([mend({ error: "#N/A" }, 5)], "en")).toContain("#N/A");
  });
});
