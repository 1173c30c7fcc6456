import { ROWS_SHOWN, TYPING_OFF, takeLargeChange, takeRow } from "../../../src/taskpane/check/typingState";
import { watchTyping, type TypedRow } from "../../../src/taskpane/check/watchTyping";
import { seasonOf } from "../heldSeasonOf";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";
import { CORDON_HEADS } from "../../survey/cordonHeads";

const HEAD = [...CORDON_HEADS];
const row = (vine: number, spurs: number) => ["North Bench", 1, vine, "left", "A", 1, 3.5, 7, spurs];

async function watched(sheets: ConstructorParameters<typeof MemoryWorkbook>[0]) {
  const workbook = new MemoryWorkbook(sheets);
  const rows: TypedRow[] = [];
  const large: string[] = [];
  const failures: unknown[] = [];
  const stop = await watchTyping(workbook, {
    today: 45350,
    read: () => seasonOf(workbook),
    onRow: (typed) => rows.push(typed),
    onLargeChange: (sheet) => large.push(sheet),
    onFailure: (failure) => failures.push(failure),
  });
  const settled = () => new Promise((done) => setTimeout(done, 50));
  const judged = async (count: number) => {
    for (let tries = 0; tries < 400 && rows.length + failures.length < count; tries += 1)
      await new Promise((done) => setTimeout(done, 5));
  };
  return { workbook, rows, large, failures, stop, settled, judged };
}

const COUNTS = { Cordons: [HEAD, row(1, 6), row(2, 6)], Notes: [["snow"]] };

test("a changed row is judged, its findings name the cell, and who changed it is told", async () => {
  const { workbook, rows, settled } = await watched(COUNTS);
  workbook.type("Cordons", 3, 9, 9, "colleague");
  await settled();
  expect(rows).toHaveLength(1);
  expect(rows[0]).toMatchObject({ sheet: "Cordons", row: 3, by: "colleague" });
  expect(rows[0].findings.map(({ row: at, columnNumber }) => [at, columnNumber])).toContainEqual([3, 9]);
});

test("what is typed while the sheets are first read is judged after it", async () => {
  const workbook = new MemoryWorkbook(COUNTS);
  const rows: TypedRow[] = [];
  const large: string[] = [];
  const watching = watchTyping(workbook, {
    today: 45350,
    read: () => seasonOf(workbook),
    onRow: (typed) => rows.push(typed),
    onLargeChange: (sheet) => large.push(sheet),
    onFailure: (failure) => {
      throw failure;
    },
  });
  workbook.type("Cordons", 3, 9, 9, "colleague");
  await watching;
  for (let tries = 0; tries < 2000 && rows.length === 0; tries++)
    await new Promise((done) => setTimeout(done, 5));
  expect(rows).toMatchObject([{ sheet: "Cordons", row: 3, by: "colleague" }]);
  expect(rows[0].findings.map(({ columnNumber }) => columnNumber)).toContain(9);
  expect(large).toEqual([]);
});

test("only the changed row is read", async () => {
  const { workbook, settled } = await watched(COUNTS);
  const asked: unknown[] = [];
  const readSheet = workbook.readSheet.bind(workbook);
  workbook.readSheet = (name, options) => {
    asked.push([name, options?.rows]);
    return readSheet(name, options);
  };
  workbook.type("Cordons", 3, 9, 9);
  await settled();
  expect(asked).toEqual([["Cordons", { first: 3, count: 1 }]]);
});

test("a mended row is reported in order", async () => {
  const { workbook, rows, settled } = await watched(COUNTS);
  workbook.type("Cordons", 3, 9, 9);
  await settled();
  workbook.type("Cordons", 3, 9, 5);
  await settled();
  expect(rows[1].findings).toEqual([]);
});

test("a sheet that is no survey table is left alone", async () => {
  const { workbook, rows, settled } = await watched(COUNTS);
  workbook.type("Notes", 1, 1, "thaw");
  await settled();
  expect(rows).toEqual([]);
});

test("the register is read anew when it changes", async () => {
  const { workbook, rows, judged } = await watched({
    ...COUNTS,
    Vines: [
      ["Block", "Row", "Vine", "Status"],
      ["North Bench", 1, 1, "bearing"],
      ["North Bench", 1, 2, "bearing"],
    ],
  });
  workbook.type("Cordons", 3, 3, 3);
  await judged(1);
  const unknown = rows[0].findings.length;
  expect(unknown).toBeGreaterThan(0);
  workbook.type("Vines", 4, 1, "North Bench");
  workbook.type("Vines", 4, 2, 1);
  workbook.type("Vines", 4, 3, 3);
  workbook.type("Vines", 4, 4, "bearing");
  await judged(2);
  workbook.type("Cordons", 3, 9, 6);
  for (let tries = 2; rows.filter(({ sheet }) => sheet === "Cordons").length < 2 && tries < 20; tries += 1)
    await judged(tries + 1);
  const last = rows.filter(({ sheet }) => sheet === "Cordons").at(-1)!;
  expect(last.findings.length).toBeLessThan(unknown);
});

test("a large change is left to the full check", async () => {
  const { workbook, rows, large, settled } = await watched(COUNTS);
  const changed = { sheet: "Cordons", firstRow: 2, firstColumn: 1, rowCount: 500, columnCount: 9 };
  (workbook as unknown as { tell(change: unknown): void }).tell({ ...changed, by: "own" });
  await settled();
  expect(large).toEqual(["Cordons"]);
  expect(rows).toEqual([]);
});

test("a sheet deleted meanwhile is a failure that is told, and the watch goes on", async () => {
  const { workbook, rows, failures, settled } = await watched({ ...COUNTS, More: [HEAD, row(5, 6)] });
  const readSheet = workbook.readSheet.bind(workbook);
  workbook.readSheet = async (name, options) => {
    await new Promise((done) => setTimeout(done, 1));
    return readSheet(name, options);
  };
  workbook.type("More", 2, 9, 9);
  workbook.removeSheet("More");
  await settled();
  expect(failures).toHaveLength(1);
  workbook.type("Cordons", 2, 9, 9);
  await settled();
  expect(rows.at(-1)).toMatchObject({ sheet: "Cordons", row: 2 });
});

test("nothing is judged after the watch has ended", async () => {
  const { workbook, rows, stop, settled } = await watched(COUNTS);
  await stop();
  workbook.type("Cordons", 3, 9, 9);
  await settled();
  expect(rows).toEqual([]);
});

describe("what the pane keeps of it", () => {
  const typed = (at: number, findings = 1): TypedRow => ({
    sheet: "Cordons",
    row: at,
    by: "own",
    findings: Array(findings).fill({}) as TypedRow["findings"],
  });

  test("the row changed last comes first, once, and leaves when it is in order", () => {
    let state = takeRow(takeRow(takeRow(TYPING_OFF, typed(2)), typed(3)), typed(2));
    expect(state.rows.map((one) => one.row)).toEqual([2, 3]);
    state = takeRow(state, typed(2, 0));
    expect(state.rows.map((one) => one.row)).toEqual([3]);
  });

  test("the list does not grow without end", () => {
    let state = TYPING_OFF;
    for (let at = 2; at < 100; at += 1) state = takeRow(state, typed(at));
    expect(state.rows).toHaveLength(ROWS_SHOWN);
  });

  test("a sheet with a large change is named once", () => {
    expect(takeLargeChange(takeLargeChange(TYPING_OFF, "Vines"), "Vines").large).toEqual(["Vines"]);
  });
});
