import ExcelJS from "exceljs";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { serialOf } from "../../../src/survey/reading/serialDate";
import type { Season } from "../../../src/survey/season/season";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { areaOf } from "../area";
import { firstAnswers } from "./foreignSheets";

const HEADS = [
  ...["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs", "Date"],
];

/** A row a cell: its length, count or date is the odd one, 3 ft, 6 spurs and 10 February beside the others. */
function rowsWith(column: "Length (ft)" | "Live spurs" | "Date", cells: readonly CellValue[]): CellValue[][] {
  return cells.map((cell, i) => {
    const usual: Readonly<Record<string, CellValue>> = {
      Block: "North Bench",
      Row: 1,
      Vine: 1 + (i >> 1),
      Side: ["left", "right"][i % 2],
      Cordon: ["A", "B"][i % 2],
      Trunk: 1,
      "Length (ft)": 3,
      Positions: 16,
      "Live spurs": 6,
      Date: serialOf(2026, 2, 10)!,
    };
    return HEADS.map((head) => (head === column ? cell : usual[head]));
  });
}

const csvOf = async (rows: readonly CellValue[][]) => {
  const text = [HEADS, ...rows].map((row) =>
    row.map((cell) => `"${String(cell).replace(/"/g, '""')}"`).join(","),
  );
  const book = await openWorkbookBytes("counts.csv", new TextEncoder().encode(text.join("\n")));
  return readSeason([await book.readSheet("counts")]);
};
const xlsxOf = async (rows: readonly (readonly (CellValue | Date)[])[]) => {
  const book = new ExcelJS.Workbook();
  book.addWorksheet("Counts").addRows([HEADS, ...rows.map((row) => [...row])]);
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  return readSeason([await (await openWorkbookBytes("counts.xlsx", bytes)).readSheet("Counts")]);
};
const counted = (season: Season, id = "liveSpurs") => [...season.tables("cordons")[0].column(id)!.usable];

test.each([
  ["a csv", csvOf],
  ["a workbook", xlsxOf],
])("counts that are certain are read in %s", async (_, read) => {
  // Strokes in bundles of five: 4, 5 + 3, 5 + 2 and 5 + 1; a number with its word; wide digits.
  const cells = ["||||", "|||| |||", "IIII II", "正 |", "8 spurs", "8 pitones", "８", "１２"];
  const season = await read(rowsWith("Live spurs", cells));
  expect(counted(season)).toEqual([4, 8, 7, 6, 8, 8, 8, 12]);
  expect(season.account.questions).toEqual([]);
});

test.each([
  ["a csv", csvOf],
  ["a workbook", xlsxOf],
])("lengths that are certain are read in %s, and a share is no length", async (_, read) => {
  const cells = ["40 in", "3'6\"", "3 1/2", "3½", "1.2 m", "３", "３.５", "80 %"];
  const season = await read(rowsWith("Length (ft)", cells));
  // 40 x 0.0254; 3.5 x 0.3048 three times; 1.2; 3 and 3.5 x 0.3048.
  const metres = [1.016, 1.0668, 1.0668, 1.0668, 1.2, 0.9144, 1.0668];
  expect(counted(season, "length")).toEqual([
    ...metres.map((value) => expect.closeTo(value, 9) as number),
    NaN,
  ]);
  const [group] = findingGroups(allFindings(season), season).filter(({ code }) => code === "notANumber");
  expect([group.findings.map(({ row }) => row), group.mends]).toEqual([[9], []]);
});

/** Texts of a kind, what was most likely meant, and undefined where only a recount tells. */
const KINDS: readonly (readonly [
  kind: string,
  cells: readonly string[],
  proposals: readonly (number | undefined)[],
])[] = [
  ["sum", ["12 + 1", "4+3"], [13, 7]],
  ["star", ["11*", "9 *"], [11, 9]],
  ["range", ["8-9", "10–7"], [8, 7]],
  ["doubt", ["7?", "8??"], [7, 8]],
  ["letter", ["O", "l0", "1O"], [0, 10, 10]],
  // A spreadsheet makes dates of 8-1 and 1/8, so that the smaller number is proposed.
  ["date", ["8-Jan", "Jan 9", "2026-01-08", "12 Feb 2026"], [1, 1, 1, 2]],
  ["time", ["2:00", "14:30"], [2, undefined]],
  ["yesNo", ["TRUE", "FALSE", "VERDADERO", "vrai"], [undefined, undefined, undefined, undefined]],
  ["share", ["80 %", "75%"], [undefined, undefined]],
];

test.each([
  ["a csv", csvOf],
  ["a workbook", xlsxOf],
])(
  "every other kind of count in %s is one question and one group, with what was likely meant",
  async (_, read) => {
    const season = await read(
      rowsWith(
        "Live spurs",
        KINDS.flatMap(([, cells]) => cells),
      ),
    );
    expect(season.account.questions.map(({ facts }) => [facts.kind, facts.cells]).sort()).toEqual(
      KINDS.map(([kind, cells]) => [kind, cells.length]).sort(),
    );
    expect(counted(season).filter((count) => !Number.isNaN(count))).toEqual([]);
    const groups = findingGroups(allFindings(season), season).filter(({ code }) => code === "notANumber");
    expect(
      groups
        .map(({ cause, findings, mends }) => [cause.value, findings.length, mends.map(({ to }) => to)])
        .sort(),
    ).toEqual(
      KINDS.map(([kind, cells, proposals]) => [
        kind,
        cells.length,
        proposals.filter((to) => to !== undefined),
      ]).sort(),
    );
    const taken = KINDS.filter(([, , proposals]) => proposals.every((to) => to !== undefined));
    const area = areaOf("Counts", [
      HEADS,
      ...rowsWith(
        "Live spurs",
        taken.flatMap(([, cells]) => cells),
      ),
    ]);
    const oddCounts = taken.map(([kind]) => kind) as "sum"[];
    expect(counted(readSeason([area], { answers: { oddCounts } }))).toEqual(
      taken.flatMap(([, , proposals]) => proposals),
    );
  },
);

test("dates, times, shares and TRUE that a spreadsheet made of counts are asked by their kinds", async () => {
  const day = (month: number, date: number) => new Date(Date.UTC(2026, month - 1, date));
  const cells = [day(8, 9), day(1, 8), 2 / 24, 14.5 / 24, 0.8, 0.75, true, false];
  const rows = rowsWith(
    "Live spurs",
    cells.map(() => 0),
  ).map((row, i) => row.map((cell, at) => (HEADS[at] === "Live spurs" ? cells[i] : cell)));
  const season = await xlsxOf(rows);
  expect(season.account.questions.map(({ facts }) => [facts.kind, facts.cells])).toEqual([
    ["date", 2],
    ["time", 2],
    ["share", 2],
    ["yesNo", 2],
  ]);
  expect(counted(season)).toEqual(cells.map(() => NaN));
});

describe("dates without a year", () => {
  const known = [serialOf(2026, 2, 10)!, serialOf(2026, 2, 11)!, serialOf(2026, 2, 12)!];
  const texts = ["12 Feb", "12-Feb", "Feb 12", "2/12", "12/2", "13/2", "12.2.", "11 février"];
  /** The walk was in February, so that 2/12 is its twelfth day and not one of December. */
  const days = [12, 12, 12, 12, 12, 13, 12, 11].map((day) => serialOf(2026, 2, day)!);
  const area = areaOf("Counts", [HEADS, ...rowsWith("Date", [...known, ...texts])]);

  test("are one question and one group with the winter of the other dates, and that winter's days after it", () => {
    const season = readSeason([area]);
    expect(
      season.account.questions.map(({ code, facts, proposals }) => [code, facts.cells, proposals]),
    ).toEqual([["noYear", 8, [{ winters: [{ sheet: "Counts", winter: 2026 }] }]]]);
    expect(counted(season, "countedOn").slice(3)).toEqual(texts.map(() => NaN));
    const groups = findingGroups(allFindings(season), season).filter(({ code }) => code === "notADate");
    expect(groups.map(({ cause, findings }) => [cause, findings.length])).toEqual([
      [{ by: "kind", value: "noYear" }, 8],
    ]);
    expect(groups[0].mends.map(({ from, to }) => [from, to])).toContainEqual(["12 Feb", "2026-02-12"]);
    const after = readSeason([area], { answers: firstAnswers(season) });
    expect(counted(after, "countedOn")).toEqual([...known, ...days]);
    expect(after.account.questions).toEqual([]);
  });

  test("take the winter from another sheet where all of theirs lack it, over the new year too", () => {
    const other = areaOf("Counts 2", [HEADS, ...rowsWith("Date", known)]);
    const bare = areaOf("Counts", [HEADS, ...rowsWith("Date", ["28 Dec", "29 déc.", "3 Jan"])]);
    const season = readSeason([bare, other]);
    expect(season.account.questions.map(({ code, proposals }) => [code, proposals])).toEqual([
      ["noYear", [{ winters: [{ sheet: "Counts", winter: 2026 }] }]],
    ]);
    const after = readSeason([bare, other], { answers: firstAnswers(season) });
    expect(counted(after, "countedOn")).toEqual([
      serialOf(2025, 12, 28),
      serialOf(2025, 12, 29),
      serialOf(2026, 1, 3),
    ]);
  });

  test("are the same question and the same days in a sheet that is read in pieces", async () => {
    const rows = area.values.map((values, i) => ({ number: i + 1, values, formulas: undefined }));
    const sheets = [
      {
        sheet: "Counts",
        async *rows() {
          yield await Promise.resolve(rows);
        },
      },
    ];
    const season = await readLargeSeason(sheets, { wholeRows: 3, pieceRows: 2 });
    expect(season.account.questions.map(({ code, facts }) => [code, facts.cells])).toEqual([["noYear", 8]]);
    const answers = firstAnswers(season);
    const after = await readLargeSeason(sheets, { wholeRows: 3, pieceRows: 2, answers });
    expect(counted(after, "countedOn")).toEqual([...known, ...days]);
  });
});
