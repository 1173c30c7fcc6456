import { readSeason } from "../../../src/survey/reading/readSeason";
import { accountDetails, accountLines, readSentence } from "../../../src/survey/season/accountSentences";
import { seasonAccount } from "../../../src/survey/season/seasonAccount";
import { LANGUAGES } from "../../../src/texts/language";
import { areaOf } from "../area";
import { HIDDEN, READ_LINE, UNREAD_PARTS, USED_LINE } from "./unreadParts";

const areas = Object.entries(UNREAD_PARTS).map(([sheet, cells]) => ({
  ...areaOf(sheet, cells),
  isHidden: sheet === HIDDEN,
}));

describe("the account of a workbook of which a part is read", () => {
  const season = readSeason(areas);

  test("says how much was read, and what was not with the reason", () => {
    expect(accountLines(seasonAccount(season), "en")).toEqual([READ_LINE, USED_LINE]);
  });

  test.each(LANGUAGES)("fills every placeholder in %s", (language) => {
    const lines = [...accountLines(seasonAccount(season), language), ...accountDetails(season, language)];
    expect(lines.length).toBeGreaterThan(6);
    for (const line of lines) expect(line).not.toMatch(/\{|undefined|NaN/);
  });

  test("names each part in full below", () => {
    const details = accountDetails(season, "en").join("\n");
    for (const sheet of ["Cordons 2025", "Spare", "Pond", "Tanks"]) expect(details).toContain(sheet);
  });
});

test("heads that come again and remarks between the rows are counted and named", () => {
  const heads = ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs"];
  const row = (vine: number, side: string) => ["North", 1, vine, side, "A", 1, 3, 8, 6];
  const sheets = (wide = false) =>
    areaOf("Counts", [
      heads,
      row(1, "left"),
      row(1, "right"),
      heads,
      row(2, "left"),
      [],
      ["snow from here on"],
      row(2, "right"),
      ...(wide ? [heads, row(3, "left")] : []),
    ]);
  expect(readSentence(seasonAccount(readSeason([sheets()])), "en")).toBe(
    "Read: 1 file, 1 sheet, 1 table, 9 columns, 4 rows. Not read: 1 line of repeated heads; 1 line of remarks.",
  );
  const two = accountDetails(readSeason([sheets(true)]), "en");
  expect(two).toContain("2 lines of heads that come again were not read as counts: Counts.");
  expect(two).toContain("1 line with a remark in one cell was not read as counts: Counts.");
});

describe("a hidden sheet", () => {
  test("of counts stands in no result, and is asked about", () => {
    const season = readSeason(areas);
    expect(season.allTables.map(({ sheet }) => sheet)).not.toContain(HIDDEN);
    expect(season.account.questions.map(({ code, sheet }) => [code, sheet])).toContainEqual([
      "hidden",
      HIDDEN,
    ]);
  });

  test("is no question once it is left out", () => {
    const season = readSeason(areas, { answers: { leaveOut: [HIDDEN] } });
    expect(season.account.questions.map(({ sheet }) => sheet)).toEqual(["Pond"]);
    expect(season.account.leftOut).toContainEqual(
      expect.objectContaining({ sheet: HIDDEN, reason: "byAnswer" }),
    );
  });

  test("with Blocks or Settings is read as if it were shown", () => {
    const blocks = areaOf("Blocks", [
      ["Block", "Vines", "Vine spacing (ft)", "Training system"],
      ["North Bench", 8, 6, "high wire"],
    ]);
    const shown = readSeason([areas[0], blocks]);
    const hidden = readSeason([areas[0], { ...blocks, isHidden: true }]);
    expect(hidden.tables("blocks")).toHaveLength(1);
    expect(hidden.account).toEqual(shown.account);
  });
});

test("of many names the first three stand, and how many more", () => {
  const many = Array.from({ length: 5 }, (_, at) => ({
    ...areaOf(`Old ${String.fromCharCode(65 + at)}`, UNREAD_PARTS[HIDDEN]),
    isHidden: true,
  }));
  const [line] = accountLines(seasonAccount(readSeason([areas[0], ...many])), "en");
  expect(line).toContain("Old A, Old B, Old C and 2 more (hidden)");
});

describe("what was read, in short", () => {
  const read = { files: 1, sheets: 2, tables: 3, columns: 4, rows: 5 };
  const READ = "Read: 1 file, 2 sheets, 3 tables, 4 columns, 5 rows.";
  const used = { rows: 5, used: 5, leftOut: [] };
  const hidden = (...names: string[]) => [{ reason: "hidden", names, rows: 0 } as const];

  test.each<[string, Parameters<typeof readSentence>[0], string]>([
    ["all of it", { read, notRead: [], open: 0, used }, READ],
    [
      "counts taken as those of two winters",
      { read: { ...read, winters: [2025, 2026] }, notRead: [], open: 0, used },
      `${READ} Taken as counts of the winters 2025, 2026.`,
    ],
    ["questions", { read, notRead: [], open: 2, used }, `${READ} 2 questions are open.`],
    [
      "three names",
      { read, notRead: hidden("A", "B", "C"), open: 0, used },
      `${READ} Not read: A, B, C (hidden).`,
    ],
    [
      "a fourth",
      { read, notRead: hidden("A", "B", "C", "D"), open: 0, used },
      `${READ} Not read: A, B, C and 1 more (hidden).`,
    ],
  ])("%s", (_, account, sentence) => expect(readSentence(account, "en")).toBe(sentence));
});
