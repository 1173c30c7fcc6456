import { HeldSheets } from "../../src/taskpane/heldSheets";
import { sameArea } from "../../src/taskpane/patchArea";
import { readAreas } from "../../src/taskpane/readAreas";
import { MemoryWorkbook, type MemoryCell } from "../workbook/memory/memoryWorkbook";
import { CORDON_HEADS } from "../survey/cordonHeads";

const HEAD = [...CORDON_HEADS];
const row = (vine: number): MemoryCell[] => ["North Bench", 1, vine, "left", "A", 1, 3.5, 7, 6];
const counts = () => ({ Cordons: [HEAD, row(1), row(2), row(3)], Notes: [["snow"]] });

async function held(sheets: ConstructorParameters<typeof MemoryWorkbook>[0] = counts()) {
  const workbook = new MemoryWorkbook(sheets);
  const versions: number[] = [];
  const season = new HeldSheets(workbook, () => versions.push(season.version));
  await season.read();
  const asked: unknown[] = [];
  const readSheet = workbook.readSheet.bind(workbook);
  workbook.readSheet = (name, options) => {
    asked.push([name, options?.rows]);
    return readSheet(name, options);
  };
  /** True where what is held is what a reading of the whole workbook gives. */
  const isRight = async () => {
    const areas = await readAreas(workbook, {});
    const now = await season.read();
    return now.areas.length === areas.length && now.areas.every((area, i) => sameArea(area, areas[i]));
  };
  return { workbook, season, versions, asked, isRight };
}

const settled = () => new Promise((done) => setTimeout(done, 40));

test("of an edit only its row is read, and the version is raised once without being asked", async () => {
  const { workbook, season, versions, asked, isRight } = await held();
  workbook.type("Cordons", 3, 9, 4);
  await settled();
  expect(asked).toEqual([["Cordons", { first: 3, count: 1 }]]);
  expect(versions).toEqual([1, 2]);
  expect((await season.read()).areas[0].values[2][8]).toBe(4);
  expect(await isRight()).toBe(true);
});

test("what leaves every value as it was raises no version", async () => {
  const { workbook, season } = await held();
  workbook.type("Cordons", 3, 9, 6);
  await season.look();
  await workbook.writeOwnSheet({ sheet: "Findings", headers: ["What"], rows: [["gone"]] });
  await season.look();
  expect(season.version).toBe(1);
});

test.each<[string, (workbook: MemoryWorkbook) => void | Promise<void>]>([
  [
    "a row typed below the table",
    (book) => row(4).forEach((cell, c) => book.type("Cordons", 5, c + 1, cell)),
  ],
  ["the last row emptied", (book) => row(3).forEach((_, c) => book.type("Cordons", 4, c + 1, null))],
  ["a column typed beside the table", (book) => book.type("Cordons", 2, 12, "late")],
  ["a row far below", (book) => book.type("Cordons", 40, 1, "North Bench")],
  ["rows inserted above", (book) => book.moveRows("Cordons", 1, { insert: 2 })],
  ["a deleted row", (book) => book.moveRows("Cordons", 3, { remove: 1 })],
  ["a renamed sheet", (book) => book.renameSheet("Cordons", "Cordons 2026")],
  ["a deleted sheet", (book) => book.removeSheet("Notes")],
  ["a sheet more", (book) => book.addForeignSheet("More")],
  ["a colleague's edit", (book) => book.type("Cordons", 2, 9, 1, "colleague")],
  ["a hidden sheet", (book) => (book.hidden = ["Cordons"])],
  ["a formula in a cell", (book) => book.type("Cordons", 2, 9, { formula: "=2+3", value: 5 })],
])("%s raises the version, and what is held is what stands there", async (_name, change) => {
  const { workbook, season, versions, isRight } = await held();
  await change(workbook);
  await settled();
  if (workbook.hidden.length > 0) await season.look();
  expect(versions.length).toBeGreaterThan(1);
  expect(await isRight()).toBe(true);
});

test("an edit taken back is a change like any other", async () => {
  const { workbook, season, isRight } = await held();
  workbook.type("Cordons", 3, 9, 0);
  await season.look();
  workbook.type("Cordons", 3, 9, 6);
  await season.look();
  expect(season.version).toBe(3);
  expect(await isRight()).toBe(true);
});

test("a sheet with formulas is read again after an edit elsewhere, since its values may have changed", async () => {
  const total: MemoryCell = { formula: "=SUM(Cordons!I2:I4)", value: 18 };
  const { workbook, season, asked } = await held({ ...counts(), Totals: [["Spurs", total]] });
  workbook.type("Cordons", 3, 9, 4);
  await season.look();
  expect(asked).toContainEqual(["Totals", undefined]);
});

test("when the sheets can no longer be read, what was read counts as older", async () => {
  const { workbook, versions } = await held();
  workbook.readSheet = () => Promise.reject(new Error("gone"));
  workbook.type("Cordons", 3, 9, 4);
  await settled();
  expect(versions).toEqual([1, 2]);
});
