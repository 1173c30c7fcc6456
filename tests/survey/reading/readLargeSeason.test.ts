import { join } from "node:path";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { gapsOfSeason } from "../../../src/survey/season/gapsOfSeason";
import {
  readLargeSeason,
  type StreamedRow,
  type StreamedSheet,
} from "../../../src/survey/reading/readLargeSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { Season } from "../../../src/survey/season/season";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

/** A sheet as a file gives it: rows with anything in them, in batches of three. */
function streamed(area: SheetArea): StreamedSheet {
  const rows = area.values.flatMap((values, r): StreamedRow[] => {
    if (values.every((value) => value === null)) return [];
    const formulas = new Map(
      values.flatMap((_, c) => {
        const formula = area.formulaAt(r, c);
        return formula === null ? [] : [[c + area.firstColumn - 1, formula] as const];
      }),
    );
    return [
      {
        number: area.firstRow + r,
        values: [...new Array<null>(area.firstColumn - 1).fill(null), ...values],
        formulas: formulas.size > 0 ? formulas : undefined,
      },
    ];
  });
  return {
    sheet: area.sheet,
    isText: area.isText,
    async *rows(onEnd) {
      for (let at = 0; at < rows.length; at += 3) yield rows.slice(at, at + 3);
      onEnd?.({
        marks: area.marks,
        merged: (area.merged ?? []).map((one) => ({
          ...one,
          row: one.row + area.firstRow,
          column: one.column + area.firstColumn,
        })),
      });
    },
  };
}

function everythingOf(season: Season) {
  return {
    tables: season.allTables.map((table) => ({
      sheet: table.sheet,
      headerRow: table.headerRow,
      rows: Array.from({ length: table.rowCount }, (_, i) => table.sheetRow(i)),
      totals: table.totals,
      winter: table.winter,
      others: table.otherColumns.map((other) => ({ ...other, numbers: [...other.numbers] })),
      repeated: table.repeatedHeaders,
      columns: table.columns.map((column) => ({
        id: column.column.id,
        numbers: [...column.numbers],
        states: [...column.states],
        words: [...column.codes].map((code) =>
          column.column.kind === "text" ? season.words.wordOf(code) : code,
        ),
        raw: Array.from({ length: column.raw.length }, (_, i) => column.raw.at(i)),
        formulas: Array.from({ length: table.rowCount }, (_, i) => table.formulaAt(i, column)),
      })),
    })),
    other: season.otherSheets,
    units: season.unitSystem,
    settings: season.settings,
    problems: season.settingProblems,
    account: season.account,
  };
}

async function areasOfFile(name: string): Promise<SheetArea[]> {
  const book = await openWorkbookFile(join(__dirname, "../../../sample-workbooks", name));
  const areas: SheetArea[] = [];
  for (const sheet of book.sheetNames) areas.push(await book.readSheet(sheet));
  await book.close();
  return areas;
}

const ODD = areaOf("Counts", [
  ["Counted in January"],
  [],
  [...CORDON_HEADS, "Note", "Date", "Mine"],
  ["North", 1, 1, "left", "A", 1, 3.1, 8, 7, "fine", "2026-01-12", "x"],
  ["north ", 1, 1, "R", "B", "2", 2.9, 8, "6", null, 46034, null],
  [],
  ["to be done tomorrow"],
  [...CORDON_HEADS, "Note", "Date", "Mine"],
  [7, 2, 1, "uphill", "A", 1, null, 8, 9, null, "soon", null],
  ["Total", null, null, null, null, null, null, 24, 22, null, null, null],
  ["North", 2, 2, "left", "A", 1, 3, 8, { error: "#N/A" }, "#N/A", 46035, null],
  ["North", 2, 3, "left", "A", 1, 3, 8, 8, { error: "#N/A" }, "03/02/2026", null],
  ["North", 2, 4, "left", "A", 1, 3, 8, 8, null, "04/02/2026", null],
  ["North", 2, 5, "left", "A", 1, 3, 8, 8, null, "25/01/2026", null],
  ["North", 2, 6, "left", "A", 1, 3, 8, 8, null, 5, 2.5],
]);
const BOTH_ORDERS = areaOf("Both", [
  [...CORDON_HEADS, "Date"],
  ["North", 3, 1, "left", "A", 1, 3.1, 8, 7, "25/01/2026"],
  ["North", 3, 2, "left", "A", 1, 3.1, 8, 7, "03/02/2026"],
  ["North", 3, 3, "left", "A", 1, 3.1, 8, 7, "01/26/2026"],
]);

describe("a survey read in pieces is the survey", () => {
  test.each([1, 2, 3, 5, 8192])("with odd rows, in pieces of %d", async (pieceRows) => {
    const areas = [
      ODD,
      BOTH_ORDERS,
      areaOf("Blocks", [
        ["Block", "Cultivar", "Vine spacing"],
        ["North", "Marquette", 6],
      ]),
    ];
    const large = await readLargeSeason(areas.map(streamed), { pieceRows, wholeRows: 2 });
    const plain = readSeason(areas);
    expect(everythingOf(large)).toEqual(everythingOf(plain));
    expect(allFindings(large)).toEqual(allFindings(plain));
  });

  test.each([1, 2, 7, 1024])(
    "with lines of a csv file that have too many cells, in pieces of %d",
    async (pieceRows) => {
      const head = [
        "Block",
        "Row",
        "Vine",
        "Side",
        "Cordon",
        "Length (ft)",
        "Positions",
        "Live spurs",
        "Date",
      ];
      const rows = Array.from({ length: 90 }, (_, i) => {
        const cells = ["North", 1, i + 1, "left", "A", 3, 8, 7, "2026-01-12"];
        if (i % 9 === 4) cells.splice(5, 1, 3, 1);
        if (i === 70) cells[4] = "A\rNorth";
        return cells;
      });
      const area = areaOf("counts", [head, ...rows], { isText: true });
      const large = await readLargeSeason([streamed(area)], { pieceRows, wholeRows: 64 });
      const plain = readSeason([area]);
      expect(everythingOf(large)).toEqual(everythingOf(plain));
      const moved = allFindings(large).filter(({ code }) => code === "extraCells");
      expect(moved.map(({ row }) => row)).toEqual([6, 15, 24, 33, 42, 51, 60, 69, 72, 78, 87]);
    },
  );

  const HEAD = ["Block", "Row", "Vine", "Side", "Cordon", "Length (ft)", "Positions", "Live spurs"];
  const counts = (row: number, from = 1, to = 80) =>
    Array.from({ length: to - from + 1 }, (_, i): CellValue[] => [
      "North",
      row,
      from + i,
      "left",
      "A",
      3,
      8,
      1 + ((row + i) % 7),
    ]);
  const LATE: Readonly<Record<string, SheetArea>> = {
    "a caption far below the heads": areaOf("Counts", [HEAD, ...counts(1), ["South - Row 2"], ...counts(2)]),
    "a block's name alone in a line": areaOf("Counts", [
      HEAD,
      ...counts(1),
      ["North"],
      ...counts(2).map((row) => [null, ...row.slice(1)]),
    ]),
    "other heads far below": areaOf("Counts", [
      HEAD,
      ...counts(1),
      [],
      [...HEAD].reverse(),
      ...counts(2).map((row) => [...row].reverse()),
    ]),
    "merged keys": {
      ...areaOf("Counts", [
        HEAD,
        ...counts(1),
        ...counts(2).map((row, i) => (i % 8 === 0 ? row : [null, ...row.slice(1)])),
      ]),
      merged: Array.from({ length: 10 }, (_, i) => ({ row: 81 + 8 * i, column: 0, rows: 8, columns: 1 })),
    },
    "lines of a vine": areaOf("Counts", [
      ["Block", "Row", "Vine", "L1 spurs", "L1 length", "R1 spurs", "R1 length"],
      ...counts(1).map(([block, row, vine], i) => [block, row, vine, 1 + (i % 7), 2.9, 8, 3]),
    ]),
    "keys above the heads": areaOf("Counts", [
      ["Block:", "North", "Row:", 1],
      HEAD.slice(2),
      ...counts(1).map((row) => row.slice(2)),
    ]),
  };

  test.each(Object.keys(LATE))("%s: the same as of a smaller sheet", async (name) => {
    const area = LATE[name];
    const large = await readLargeSeason([streamed(area)], { wholeRows: 64, pieceRows: 16 });
    expect(everythingOf(large)).toEqual(everythingOf(readSeason([area])));
  });

  test("the same heads again and a remark do not end a plain table", async () => {
    const area = areaOf("Counts", [HEAD, ...counts(1), [], ["snow in the afternoon"], HEAD, ...counts(2)]);
    let begun = 0;
    const sheet = streamed(area);
    const watched: StreamedSheet = { ...sheet, rows: (onEnd) => (begun++, sheet.rows(onEnd)) };
    const large = await readLargeSeason([watched], { wholeRows: 64, pieceRows: 16 });
    expect(everythingOf(large)).toEqual(everythingOf(readSeason([area])));
    expect(begun).toBe(1);
  });

  test("dates that can be read two ways are settled or asked over all pieces", async () => {
    const dated = (days: (i: number) => string) =>
      areaOf("Counts", [[...HEAD, "Date"], ...counts(1).map((row, i) => [...row, days(i)])]);
    const settled = dated((i) => `0${2 + Math.floor(i / 20)}/02/2026`);
    const asked = dated(() => "03/04/2026");
    for (const area of [settled, asked]) {
      const large = await readLargeSeason([streamed(area)], { wholeRows: 64, pieceRows: 16 });
      expect(everythingOf(large)).toEqual(everythingOf(readSeason([area])));
    }
    const { account } = readSeason([settled]);
    expect(account.notes.map(({ code, facts }) => [code, facts.cells, facts.order])).toEqual([
      // 20 cells of 2 February read the same both ways.
      ["datesSettled", 60, "dayFirst"],
    ]);
    const answered = await readLargeSeason([streamed(asked)], {
      wholeRows: 64,
      pieceRows: 16,
      answers: { dateOrder: "monthFirst" },
    });
    expect(answered.account.questions).toEqual([]);
    // 4 March 2026 is day 46,085 of a spreadsheet: 46,034 is 12 January, and 19 + 28 + 4 = 51 days follow.
    expect(answered.tables("cordons")[0].column("countedOn")!.usable[79]).toBe(46085);
  });

  test("more different names than any farm has are refused before they are all held", async () => {
    const named = (names: number) =>
      areaOf("counts", [
        ["Block", "Row", "Vine", "Status"],
        ...Array.from({ length: names }, (_, i) => [`block ${i}`, 1, 1, "bearing"]),
      ]);
    expect(readSeason([named(20_000)]).tables("vines")[0].rowCount).toBe(20_000);
    const refusal = { code: "tooManyWords", facts: { sheet: "counts", most: 20_000 } };
    expect(() => readSeason([named(20_001)])).toThrow(expect.objectContaining(refusal));
    let given = 0;
    const sheet = streamed(named(40_000));
    const counted: StreamedSheet = {
      ...sheet,
      async *rows() {
        for await (const rows of sheet.rows()) yield ((given += rows.length), rows);
      },
    };
    await expect(readLargeSeason([counted], { wholeRows: 100 })).rejects.toMatchObject(refusal);
    expect(given).toBeLessThan(25_000);
  });

  test.each([
    ["larkmoor-mistakes.xlsx", 100],
    ["larkmoor-mistakes.xlsx", 8192],
    ["larkmoor-clean.xlsx", 777],
    ["empty-season.xlsx", 10],
  ])(
    "of %s, in pieces of %d",
    async (name, pieceRows) => {
      const areas = await areasOfFile(name);
      const large = await readLargeSeason(areas.map(streamed), { pieceRows, wholeRows: 100 });
      const plain = readSeason(areas);
      expect(everythingOf(large)).toEqual(everythingOf(plain));
      expect(allFindings(large)).toEqual(allFindings(plain));
      expect(gapsOfSeason(large)).toEqual(gapsOfSeason(plain));
      const decisions = (season: Season) => [...decideSeason(season)].map(({ decision }) => decision);
      expect(decisions(large)).toEqual(decisions(plain));
    },
    60000,
  );
});
