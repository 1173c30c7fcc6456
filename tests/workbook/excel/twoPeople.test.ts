import type { Finding } from "../../../src/survey/checks/finding";
import { changeCells, undoChange } from "../../../src/workbook/actions/changeCells";
import { logRun, setLogsRuns } from "../../../src/workbook/actions/runLog";
import { keepAside, readAside } from "../../../src/workbook/actions/setAside";
import type { ExcelWorkbook } from "../../../src/workbook/excel/excelWorkbook";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import { ExcelHost } from "../office/excelHost";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn } from "../office/excelWorkbookOn";

jest.setTimeout(60_000);

/** Numbers between 0 and 1 that are the same in every run (xorshift32: Marsaglia, 2003). */
function chance(seed: number): () => number {
  let state = seed * 2654435761 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

interface Office {
  readonly host: ExcelHost;
  readonly anna: ExcelWorkbook;
  readonly ben: ExcelWorkbook;
}

/** Two people in one workbook, whose batches are let through in an order that `seed` decides. */
function office(seed: number): Office {
  const host = new ExcelHost(seed % 2 === 0 ? EXCEL_PROFILES.perpetual2021 : EXCEL_PROFILES.web);
  host.addSheet("Cordons", [
    ["Block", "Vine", "Live spurs"],
    ...Array.from({ length: 40 }, (_, i) => ["North Bench", i + 1, 10]),
  ]);
  host.addSheet("Vines", [["Block", "Vine"]]);
  const next = chance(seed + 1);
  host.beforeBatch = async () => {
    for (let waits = Math.floor(next() * 4); waits > 0; waits--)
      await new Promise((resolve) => setImmediate(resolve));
  };
  return { host, anna: excelWorkbookOn(host, "anna"), ben: excelWorkbookOn(host, "ben") };
}

const SEEDS = Array.from({ length: 12 }, (_, seed) => seed);

function table(sheet: string, who: string, rows: number): OwnSheet {
  return {
    sheet,
    title: [`made by ${who}`],
    headers: ["Who", "Row"],
    rows: Array.from({ length: rows }, (_, r) => [who, r]),
  };
}

function finding(vine: number): Finding {
  return {
    code: "spursAbovePositions",
    severity: "wrong",
    sheet: "Cordons",
    row: vine + 1,
    columnNumber: 3,
    column: "Live spurs",
    facts: { block: "North Bench", vine, value: 10 },
  };
}

describe("two people at once, in twelve orders of their batches", () => {
  const offices: Office[] = [];
  const open = (seed: number) => {
    const opened = office(seed);
    offices.push(opened);
    return opened;
  };
  afterEach(() => offices.splice(0).forEach(({ host }) => host.close()));

  test.each(SEEDS)(
    "typing goes on during the other's run, and not a cell of it is lost (%i)",
    async (seed) => {
      const { host, anna, ben } = open(seed);
      const typed = async () => {
        for (let row = 2; row <= 21; row++)
          await ben.writeCells("Cordons", [{ row, column: 3, value: 100 + row }]);
      };
      await Promise.all([
        typed(),
        anna.writeOwnSheet(table("Findings", "anna", 30)),
        anna.markCells([{ sheet: "Cordons", row: 5, column: 3, severity: "ask" }]),
      ]);
      const { values } = await anna.readSheet("Cordons");
      expect(values.slice(1, 21).map((row) => row[2])).toEqual(Array.from({ length: 20 }, (_, i) => 102 + i));
      expect(values.slice(21).every((row) => row[2] === 10)).toBe(true);
      expect(host.book.sheets.map(({ name }) => name)).toEqual(["Cordons", "Vines", "Findings"]);
    },
  );

  test.each(SEEDS)("both write sheets of their own: each is whole (%i)", async (seed) => {
    const { anna, ben } = open(seed);
    await Promise.all([
      anna.writeOwnSheet(table("Findings", "anna", 25)),
      ben.writeOwnSheet(table("Row gaps", "ben", 35)),
    ]);
    for (const [sheet, who, rows] of [
      ["Findings", "anna", 25],
      ["Row gaps", "ben", 35],
    ] as const) {
      const { values } = await anna.readSheet(sheet);
      expect(values.slice(3)).toEqual(Array.from({ length: rows }, (_, r) => [who, r]));
    }
  });

  test.each(SEEDS)(
    "both rewrite the same sheet: it is one person's whole table, never a mixture (%i)",
    async (seed) => {
      const { host, anna, ben } = open(seed);
      await anna.writeOwnSheet(table("Findings", "nobody", 5));
      const outcomes = await Promise.allSettled([
        anna.writeOwnSheet(table("Findings", "anna", 25)),
        ben.writeOwnSheet(table("Findings", "ben", 35)),
      ]);
      expect(outcomes.some(({ status }) => status === "fulfilled")).toBe(true);
      const { values } = await anna.readSheet("Findings");
      const who = String(values[3][0]);
      expect(values).toEqual([
        [`made by ${who}`, null],
        [null, null],
        ["Who", "Row"],
        ...Array.from({ length: who === "anna" ? 25 : 35 }, (_, r) => [who, r]),
      ]);
      expect(host.book.sheet("Findings").tables).toHaveLength(1);
      expect(host.book.sheet("Findings").tables[0].area.rows).toBe(values.length - 2);
    },
  );

  test.each(SEEDS)(
    "both make the same new sheet: there is one, whole, and the other is told (%i)",
    async (seed) => {
      const { host, anna, ben } = open(seed);
      const outcomes = await Promise.allSettled([
        anna.writeOwnSheet(table("Findings", "anna", 25)),
        ben.writeOwnSheet(table("Findings", "ben", 35)),
      ]);
      expect(outcomes.some(({ status }) => status === "fulfilled")).toBe(true);
      expect(host.book.sheets.map(({ name }) => name)).toEqual(["Cordons", "Vines", "Findings"]);
      const { values } = await anna.readSheet("Findings");
      const who = String(values[3][0]);
      expect(values.slice(3)).toEqual(Array.from({ length: who === "anna" ? 25 : 35 }, (_, r) => [who, r]));
    },
  );

  test.each(SEEDS)("findings set aside by both all stay (%i)", async (seed) => {
    const { anna, ben } = open(seed);
    const keep = async (workbook: ExcelWorkbook, by: string, first: number) => {
      for (let vine = first; vine < first + 4; vine++)
        await keepAside(workbook, finding(vine), { reason: "looked at it", by, on: "2026-02-01" });
    };
    await Promise.all([keep(anna, "AB", 1), keep(ben, "MK", 11)]);
    expect((await readAside(anna)).map(({ by }) => by).sort()).toEqual(
      [..."AAAA"].map(() => "AB").concat([..."MMMM"].map(() => "MK")),
    );
  });

  test.each(SEEDS)("every run of both is in the log (%i)", async (seed) => {
    const { anna, ben } = open(seed);
    await setLogsRuns(anna, true);
    const written = (at: number) => String(at);
    const run = async (workbook: ExcelWorkbook, who: string) => {
      for (let at = 1; at <= 3; at++)
        await logRun(workbook, { at, who, what: "Check", result: "" }, "en", written).catch(() => undefined);
    };
    await Promise.all([run(anna, "AB"), run(ben, "MK")]);
    await logRun(anna, { at: 9, who: "AB", what: "last", result: "" }, "en", written);
    expect((await ben.readFlags("run.")).size).toBe(7);
    expect((await ben.readSheet("Run log")).values.slice(3)).toHaveLength(7);
  });

  test.each(SEEDS)("one undoes while the other types: the typing stays (%i)", async (seed) => {
    const { anna, ben } = open(seed);
    const wanted = Array.from({ length: 10 }, (_, i) => ({
      sheet: "Cordons",
      row: i + 2,
      column: 3,
      content: { value: 50 },
    }));
    const { changed } = await changeCells(anna, wanted);
    await ben.writeCells("Cordons", [{ row: 4, column: 3, value: 77 }]);
    const [undone] = await Promise.all([
      undoChange(anna, changed),
      ben.writeCells("Vines", [{ row: 2, column: 1, value: "Creek Side" }]),
    ]);
    const { values } = await ben.readSheet("Cordons");
    expect(values[3][2]).toBe(77);
    expect(values.filter((row) => row[2] === 10)).toHaveLength(39);
    expect(undone.left.map(({ row }) => row)).toEqual([4]);
    expect((await ben.readSheet("Vines")).values[1]).toEqual(["Creek Side", null]);
  });
});
