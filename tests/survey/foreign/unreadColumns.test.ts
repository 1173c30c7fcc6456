import { questionSentence } from "../../../src/survey/reading/readingSentence";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { accountDetails, readSentence } from "../../../src/survey/season/accountSentences";
import { seasonAccount } from "../../../src/survey/season/seasonAccount";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { againstTruth, firstAnswers, rowsRead, TRUTH, type CountedRow } from "./foreignSheets";

type Cells = CellValue[];

/** Vines with a single cordon on each side, as a line a vine holds them: left before right. */
const PAIRS = TRUTH.flatMap((row, i): [CountedRow, CountedRow][] => {
  const alike = TRUTH.filter(
    ({ block, vine_row, vine }) => block === row.block && vine_row === row.vine_row && vine === row.vine,
  );
  return alike.length === 2 && TRUTH[i] === alike[0] && alike[0].side === "left" && alike[1].side === "right"
    ? [[alike[0], alike[1]]]
    : [];
}).slice(0, 40);
const truth = PAIRS.flat().map(
  ({ cordon: _, condition: __, counted_by: ___, counted_on: ____, trunk: _____, ...row }) => row,
);
const KEYS = ["Block", "Row", "Vine"];
const keys = ([{ block, vine_row, vine }]: readonly CountedRow[]): Cells => [block, vine_row, vine] as Cells;
const values = ({ live_spurs, positions, length, longest_gap }: CountedRow): Cells =>
  [live_spurs, positions, Number(length) / 0.3048, longest_gap] as Cells;
/** Keys, side, letter and length of one cordon of a vine, on a line of its own. */
const lineOf = (pair: readonly CountedRow[], i: number, metres: number): Cells => [
  ...keys(pair),
  pair[i].side as string,
  ["A", "B"][i],
  Number(pair[i].length) / metres,
];
const wide = (...names: readonly [spurs: string, positions: string, length: string, gap: string]) => [
  areaOf("Counts", [
    [...KEYS, ...["L1", "R1"].flatMap((side) => names.map((name) => name.replace("#", side)))],
    ...PAIRS.map((pair): Cells => [...keys(pair), ...pair.flatMap(values)]),
  ]),
];

describe("a word in the heads of candidates side by side that is none of ours", () => {
  test.each([
    ["# spurs wobbly", "# positions", "liveSpurs"],
    ["# spurs (wobbly)", "# positions", "liveSpurs"],
    ["wobbly spurs #", "positions #", "liveSpurs"],
    ["# spurs", "# old positions", "positions"],
  ])(
    "%s and %s: the column stays unread, is asked once for all candidates, and exact after it",
    (spurs, positions, id) => {
      const areas = wide(spurs, positions, "# length (ft)", "# gap");
      const season = readSeason(areas);
      const heads = [spurs, positions].filter((head) => /wobbly|old/.test(head));
      const asked = ["L1", "R1"].map((side) => heads[0].replace("#", side));
      expect(
        season.account.questions.map(({ code, facts, proposals }) => [code, facts.column, proposals]),
      ).toEqual([
        [
          "head",
          id,
          [
            {
              heads: [
                {
                  sheet: "Counts",
                  shape: "cordons",
                  columns: Object.fromEntries(asked.map((head) => [head, id])),
                },
              ],
            },
          ],
        ],
      ]);
      const before = againstTruth(rowsRead(season), truth, 1e-9);
      expect(before).toEqual({ wrong: [], missing: [] });
      const unread = id === "liveSpurs" ? "live_spurs" : "positions";
      expect(rowsRead(season).filter((row) => unread in row)).toEqual([]);
      expect(season.account.leftOut.map(({ reason, facts }) => [reason, facts.head])).toEqual(
        asked.map((head) => ["asked", head]),
      );
      const groups = findingGroups(allFindings(season), season).map(({ code }) => code);
      expect(groups.length).toBeLessThanOrEqual(3);
      const after = readSeason(areas, { answers: firstAnswers(season) });
      expect(after.account.questions).toEqual([]);
      expect(after.account.leftOut).toEqual([]);
      expect(rowsRead(after).filter((row) => !(unread in row))).toEqual([]);
      expect(againstTruth(rowsRead(after), truth, 1e-9)).toEqual({ wrong: [], missing: [] });
    },
  );

  test("is said in one sentence, and a column beside counts that are read is named without a question", () => {
    const season = readSeason(wide("# spurs wobbly", "# positions", "# length (ft)", "# gap"));
    expect(questionSentence(season.account.questions[0], "en")).toBe(
      "Counts: are L1 spurs wobbly, R1 spurs wobbly the column Live spurs of this season?",
    );
    expect(readSentence(seasonAccount(season), "en")).toContain(
      "Not read: the columns L1 spurs wobbly, R1 spurs wobbly (asked). 1 question is open.",
    );
    const beside = readSeason(wide("# spurs", "# positions", "# length (ft)", "# spurs wobbly"));
    expect(beside.account.questions).toEqual([]);
    expect(beside.account.leftOut.map(({ reason, facts }) => [reason, facts.head])).toEqual([
      ["otherColumn", "L1 spurs wobbly"],
      ["otherColumn", "R1 spurs wobbly"],
    ]);
    expect(againstTruth(rowsRead(beside), truth, 1e-9)).toEqual({ wrong: [], missing: [] });
  });
});

test("columns that are not read are all named with the reason, in short and in full", () => {
  const heads = [...KEYS, "Side", "Cordon", "Length (ft)", "Positions", "Live spurs"];
  const others = [
    "Ties",
    "Wire",
    "Shade",
    "Moss",
    "Last year spurs",
    "Total",
    "Live spurs",
    null,
    "Longest gap (wood)",
  ];
  const season = readSeason([
    areaOf("Counts", [
      [...heads, ...others],
      ...PAIRS.flatMap((pair) =>
        pair.map((row, i): Cells => [
          ...lineOf(pair, i, 0.3048),
          row.positions as number,
          row.live_spurs as number,
          ...[1, 2, 3, 4, 5, 6, 7, 8, 1],
        ]),
      ),
    ]),
  ]);
  const reasons = season.account.leftOut.map(({ what, reason, facts }) => [what, reason, facts.head]);
  expect(reasons).toEqual([
    ["column", "otherColumn", "Ties"],
    ["column", "otherColumn", "Wire"],
    ["column", "otherColumn", "Shade"],
    ["column", "otherColumn", "Moss"],
    ["column", "qualifier", "Last year spurs"],
    ["column", "total", "Total"],
    ["column", "repeated", "Live spurs"],
    ["column", "asked", "Longest gap (wood)"],
    ["column", "noHead", "P"],
  ]);
  expect(readSentence(seasonAccount(season), "en")).toBe(
    "Read: 1 file, 1 sheet, 1 table, 8 columns, 80 rows. Not read: the columns Ties, Wire, Shade, Moss (no known head); the column Last year spurs (not of this winter's counts); the column Total (totals); the column Live spurs (named twice); the column Longest gap (wood) (asked); the column P (without a head). 1 question is open.",
  );
  const details = accountDetails(season, "en");
  expect(details).toContain("Counts: the column Ties was not read: its head is none that is known.");
  expect(details).toContain("Counts: the column Live spurs was not read: another column of that name was.");
  expect(details).toContain(
    "Counts: the column Longest gap (wood) was not read: a question about it is open.",
  );
  expect(details).toContain("Counts: the column P was not read: no head stands above it.");
});

test("a column whose unit is asked is named as not read till it is answered", () => {
  const heads = [...KEYS, "Side", "Cordon", "Length (ft)", "Positions", "Live spurs"];
  const season = readSeason([
    areaOf("Counts", [
      heads,
      ...PAIRS.flatMap((pair) =>
        pair.map((row, i): Cells => [
          ...lineOf(pair, i, 0.0254),
          row.positions as number,
          row.live_spurs as number,
        ]),
      ),
    ]),
  ]);
  expect(readSentence(seasonAccount(season), "en")).toBe(
    "Read: 1 file, 1 sheet, 1 table, 7 columns, 80 rows. Not read: the column Length (ft) (asked). 1 question is open.",
  );
});

describe("a sheet for the left arms and one for the right", () => {
  const heads = [...KEYS, "Cordon", "Length (ft)", "Positions", "Live spurs"];
  const sheets = (names: readonly [string, string]) =>
    names.map((name, i) =>
      areaOf(name, [
        heads,
        ...PAIRS.map((pair): Cells => [
          ...keys(pair),
          ["A", "B"][i],
          Number(pair[i].length) / 0.3048,
          pair[i].positions as number,
          pair[i].live_spurs as number,
        ]),
      ]),
    );
  test.each([
    ["Left arms", "Right arms"],
    ["Left", "Right"],
    ["Lado izquierdo", "Lado derecho"],
    ["bras gauche", "bras droit"],
  ])("%s and %s tell the sides, as is said", (left, right) => {
    const season = readSeason(sheets([left, right]));
    expect(season.account.questions).toEqual([]);
    expect(season.account.notes.map(({ code, facts }) => [code, facts.sheets])).toEqual([
      ["keysOfName", [left, right]],
    ]);
    expect(againstTruth(rowsRead(season), truth, 1e-9)).toEqual({ wrong: [], missing: [] });
    expect(season.used.account()).toMatchObject({ rows: 80, used: 80 });
  });
});

test("a head with the words of two columns is asked about once", () => {
  const season = readSeason([
    areaOf("Counts", [
      [...KEYS, "Side", "Cordon", "Length (ft)", "Live/positions"],
      ...PAIRS.flatMap((pair) =>
        pair.map((row, i): Cells => [...lineOf(pair, i, 0.3048), `${row.live_spurs}/${row.positions}`]),
      ),
    ]),
  ]);
  expect(season.account.questions.map(({ code, facts }) => [code, facts.head])).toEqual([
    ["head", "Live/positions"],
  ]);
});
