import type { DeskWorkbook } from "../../../src/workbook/desk/deskWorkbook";
import { EarlyWorkbook } from "../../../src/workbook/desk/earlyWorkbook";
import type { FileRows } from "../../../src/workbook/desk/readContent";
import { NOTHING_BEHIND } from "../../../src/survey/reading/sheetArea";
import { areaOf } from "../../survey/area";

const row = (number: number, values: (string | number)[], formulas?: ReadonlyMap<number, string>) => ({
  number,
  values,
  formulas,
});
const ROWS: FileRows = {
  file: "counts.xlsx",
  names: [],
  flags: new Map(),
  sheets: [
    { name: "Typed", hidden: false, end: NOTHING_BEHIND, rows: [row(1, ["Vine"]), row(2, [7])] },
    { name: "Worked out", hidden: false, end: NOTHING_BEHIND, rows: [row(1, [7], new Map([[0, "=3+4"]]))] },
  ],
};

/** Whether a promise has come to its end once everything that waits for nothing else is done. */
async function isOver(promise: Promise<unknown>): Promise<boolean> {
  let over = false;
  void promise.then(() => (over = true));
  await new Promise((resolve) => setTimeout(resolve));
  return over;
}

/** A grid of which only this is asked. */
const grid = (parts: Partial<DeskWorkbook>) => parts as DeskWorkbook;

test("a sheet of typed cells is there before the grid, one with formulas comes from the grid", async () => {
  const early = new EarlyWorkbook(Promise.resolve(ROWS));
  expect((await early.readSheet("typed")).values).toEqual([["Vine"], [7]]);
  const reading = early.readSheet("Worked out");
  expect(await isOver(reading)).toBe(false);
  const area = areaOf("Worked out", [[8]]);
  early.arrive(grid({ readSheet: async () => area }));
  expect(await reading).toBe(area);
});

test("once the grid is there, every sheet is its own", async () => {
  const early = new EarlyWorkbook(Promise.resolve(ROWS));
  const area = areaOf("Typed", [["Vine"], [9]]);
  early.arrive(grid({ readSheet: async () => area, sheetNames: async () => ["Typed", "New"] }));
  expect(await early.readSheet("Typed")).toBe(area);
  expect(await early.sheetNames()).toEqual(["Typed", "New"]);
});

test("what is written waits for the grid and stands in it", async () => {
  const early = new EarlyWorkbook(Promise.resolve(ROWS));
  const written: unknown[] = [];
  const writing = early.writeCells("Typed", [{ row: 2, column: 1, value: 8 }]);
  expect(await isOver(writing)).toBe(false);
  early.arrive(grid({ writeCells: async (...all) => void written.push(all) }));
  await writing;
  expect(written).toEqual([["Typed", [{ row: 2, column: 1, value: 8 }]]]);
});

test("who watches is told of the grid's changes, unless it stopped before", async () => {
  const early = new EarlyWorkbook(Promise.resolve(ROWS));
  const watched: string[] = [];
  const stop = await early.watchCells(() => watched.push("stopped"));
  await early.watchCells(() => watched.push("told"));
  await stop();
  const change = {
    sheet: "Typed",
    firstRow: 2,
    firstColumn: 1,
    rowCount: 1,
    columnCount: 1,
    by: "own" as const,
  };
  early.arrive(
    grid({
      watchCells: async (tell) => {
        tell(change);
        return async () => {};
      },
    }),
  );
  await new Promise((resolve) => setTimeout(resolve));
  expect(watched).toEqual(["told"]);
});

test("a sheet that the file does not have is refused by its name", async () => {
  const early = new EarlyWorkbook(Promise.resolve(ROWS));
  await expect(early.readSheet("Vines")).rejects.toMatchObject({
    code: "noSheet",
    facts: { sheet: "Vines" },
  });
});
