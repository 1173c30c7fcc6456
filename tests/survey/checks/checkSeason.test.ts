import { allFindings, checkSeason, inSheetOrder } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { caseNames, readCase } from "../readCase";
import { CORDON, findingAt, found, sheetOf, upTo, VINE } from "./found";

/** Cordons of so many vines, of which the named ones have nine spurs on eight positions. */
const cordons = (vines: number, wrong: readonly number[] = []) =>
  readSeason([
    sheetOf(
      "Cordons",
      CORDON,
      upTo(vines).map((Vine) => ({
        Vine,
        "Live spurs": wrong.includes(Vine) ? 9 : 7,
      })),
    ),
  ]);

/** Findings as sheet rows and ticks as shares, in the order in which a check hands them out. */
const steps = (...args: Parameters<typeof checkSeason>) =>
  [...checkSeason(...args)].map(({ done, finding }) => (finding ? `row ${finding.row}` : done));

describe("a check in slices", () => {
  test.each(caseNames())("finds in single rows what it finds at once: %s", (name) => {
    const { season, today } = readCase(name);
    const whole = allFindings(season, { today });
    expect(allFindings(readCase(name).season, { today, slice: 1 })).toEqual(whole);
  });

  // Each check of a table is its rows and one more for its preparation: of 3 rows 4 parts.
  test("tells after each slice how far it has come, its findings first", () => {
    expect(steps(cordons(3, [1, 3]), { slice: 2, only: ["spurCounts"] })).toEqual([
      "row 2",
      2 / 4,
      "row 4",
      3 / 4,
      1,
    ]);
    expect(steps(cordons(2), { slice: 2, only: ["spurCounts"] })).toEqual([2 / 3, 1]);
  });

  // Spurs by direction stand in none of these rows; the other check begins behind that one's 4 parts of 8.
  test("passes over a check whose columns the table lacks", () => {
    expect(steps(cordons(3), { only: ["directions", "spursTooClose"] })).toEqual([7 / 8, 1]);
  });

  test("takes five thousand rows at a time where nothing else is said", () => {
    expect(steps(cordons(5001), { only: ["spurCounts"] })).toEqual([5000 / 5002, 5001 / 5002, 1]);
  });

  test("runs the named checks only, all where none is named", () => {
    const season = cordons(2, [2]);
    expect(allFindings(season, { only: ["spursTooClose"] })).toEqual([]);
    expect(allFindings(season, { only: [] })).toEqual([]);
    expect(allFindings(season).map(({ code }) => code)).toContain("spursAbovePositions");
  });
});

test("findings are worked off sheet by sheet, row by row and from left to right", () => {
  const season = readSeason([
    sheetOf("Vines", VINE, [{}]),
    sheetOf("Cordons", CORDON, [{ Vine: 1 }, { Vine: 2 }]),
  ]);
  const [one, other] = season.allTables.map(({ sheet }) => sheet);
  const ordered = [
    findingAt(one, 2, 3),
    findingAt(one, 2, 5),
    findingAt(one, 3, 1),
    findingAt(other, 2, 1),
    findingAt(other, 2, 4),
  ];
  for (const turned of [
    [4, 2, 1, 3, 0],
    [3, 0, 4, 1, 2],
    [0, 1, 2, 3, 4],
  ])
    expect(
      inSheetOrder(
        turned.map((index) => ordered[index]),
        season,
      ),
    ).toEqual(ordered);
});

describe("the place of a finding", () => {
  test("is all that its row says of block, row, vine, side, cordon and who counted", () => {
    const sheet = sheetOf("Cordons", { ...CORDON, "Counted by": "AB" }, [
      { Vine: 4, Side: "right", Cordon: "C", "Live spurs": 9 },
      { Vine: 5, "Counted by": null, "Live spurs": 9 },
      { Row: "12a", Vine: 6, "Live spurs": 9 },
    ]);
    expect(found("spursAbovePositions", [sheet], ({ facts }) => facts)).toEqual([
      {
        block: "North Bench",
        row: 1,
        vine: 4,
        side: "right",
        cordon: "C",
        countedBy: "AB",
        spurs: 9,
        positions: 8,
      },
      {
        block: "North Bench",
        row: 1,
        vine: 5,
        side: "left",
        cordon: "A",
        spurs: 9,
        positions: 8,
      },
      expect.objectContaining({ row: "12a", vine: 6 }),
    ]);
  });

  test("is the header's row for a column that the sheet lacks, without a vine", () => {
    const { Trunk: _, ...rest } = CORDON;
    const sheet = sheetOf("Cordons", rest, [{}], { firstRow: 4 });
    expect(
      found("missingColumn", [sheet], ({ row, columnNumber, column, facts }) => ({
        row,
        columnNumber,
        column,
        facts,
      })),
    ).toEqual([
      {
        row: 4,
        columnNumber: 0,
        column: "",
        facts: { columnId: "trunk", shape: "cordons" },
      },
    ]);
  });
});
