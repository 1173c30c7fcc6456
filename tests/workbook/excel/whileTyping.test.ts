import { watchTyping } from "../../../src/taskpane/check/watchTyping";
import { seasonOf } from "../../taskpane/heldSeasonOf";
import { ExcelWorkbook } from "../../../src/workbook/excel/excelWorkbook";
import { WorkbookProblem, type CellChange } from "../../../src/workbook/surveyWorkbook";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import { CORDON_HEADS } from "../../survey/cordonHeads";

const HEADERS = [...CORDON_HEADS, "Counted by"];
const SPURS = HEADERS.indexOf("Live spurs") + 1;

const cordons = (vines: number): CellValue[][] => [
  HEADERS,
  ...Array.from({ length: vines }, (_, i) => ["North Bench", 1, i + 1, "left", "A", 1, 3.5, 7, 6, "AB"]),
];

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 400 && !holds(); tries++) await pause(10);
}

async function watched(vines: number) {
  const host = hostWith(
    { Cordons: cordons(vines), Vines: [["Block", "Row", "Vine"]] },
    EXCEL_PROFILES.current,
  );
  const workbook = excelWorkbookOn(host, "me");
  const judged: string[] = [];
  const stop = await watchTyping(workbook, {
    today: 46_000,
    read: () => seasonOf(workbook),
    onRow: ({ row, findings }) => judged.push(`${row}: ${findings.map(({ code }) => code).join(",")}`),
    onLargeChange: () => judged.push("large"),
    onFailure: (failure) => judged.push(String(failure)),
  });
  await host.quiet();
  return { host, workbook, judged, stop };
}

/** More live spurs than positions: 9 on 7. */
const TOO_MANY = 9;

describe("checking while a person types, in Excel", () => {
  test("a row is judged after the survey was read, with one registration that is never taken back", async () => {
    const { host, judged } = await watched(3);
    host.type("me", "Cordons", 3, SPURS, TOO_MANY);
    await until(() => judged.length > 0);
    expect(judged).toEqual([expect.stringMatching(/^3: .*spursAbovePositions/)]);
    const names = host.log.map(({ name }) => name);
    expect(names.filter((name) => name === "_RegisterDataChangedEvent")).toHaveLength(1);
    expect(names).not.toContain("_UnregisterDataChangedEvent");
    expect(host.registrationsOf("me")).toBe(1);
  });

  test("two watch and one stops: the other goes on, still with one registration", async () => {
    const host = hostWith({ Cordons: cordons(2) }, EXCEL_PROFILES.current);
    const workbook = excelWorkbookOn(host, "me");
    const [first, second]: CellChange[][] = [[], []];
    const stop = await workbook.watchCells((change) => first.push(change));
    await workbook.watchCells((change) => second.push(change));
    await stop();
    host.type("me", "Cordons", 2, SPURS, 5);
    await until(() => second.length > 0);
    expect([first.length, second.length, host.registrationsOf("me")]).toEqual([0, 1, 1]);
  });

  test("a registration that Excel refuses is asked for again by the next who watches", async () => {
    const host = hostWith({ Cordons: cordons(2) }, EXCEL_PROFILES.current);
    const workbook = excelWorkbookOn(host, "me");
    const seen: CellChange[] = [];
    host.refuse({ name: "_RegisterDataChangedEvent", code: "GeneralException" });
    await expect(workbook.watchCells((change) => seen.push(change))).rejects.toBeInstanceOf(WorkbookProblem);
    await workbook.watchCells((change) => seen.push(change));
    host.type("me", "Cordons", 2, SPURS, 5);
    await until(() => seen.length > 0);
    expect(seen).toHaveLength(1);
  });

  test("no row is lost when the next cell is being edited already", async () => {
    const { host, judged } = await watched(20);
    for (let row = 2; row <= 21; row += 1) {
      host.type("me", "Cordons", row, SPURS, TOO_MANY);
      const leave = host.edit("me");
      // The last cell is edited for longer than a refused batch would be tried again.
      await pause(row === 21 ? 2000 : 15);
      leave();
    }
    await until(() => judged.length === 20);
    expect(judged.map((line) => Number(line.split(":")[0])).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 20 }, (_, i) => i + 2),
    );
    for (const line of judged) expect(line).toContain("spursAbovePositions");
  });

  test("nor when Excel refuses to name the sheet at first", async () => {
    const { host, judged } = await watched(3);
    host.refuse({ name: "GetItemOrNullObject", code: "GeneralException", times: 2 });
    host.type("me", "Cordons", 4, SPURS, TOO_MANY);
    await until(() => judged.length > 0);
    expect(judged).toEqual([expect.stringMatching(/^4: .*spursAbovePositions/)]);
  });
});

describe("writing while a person edits a cell", () => {
  const cells = [{ row: 2, column: SPURS, value: 3 }];

  test("is refused before anything is changed", async () => {
    const host = hostWith({ Cordons: cordons(2) }, EXCEL_PROFILES.current);
    const workbook = excelWorkbookOn(host, "me");
    const before = JSON.stringify(host.book.snapshot());
    host.edit("me");
    for (const act of [
      () => workbook.writeCells("Cordons", cells),
      () => workbook.markCells([{ sheet: "Cordons", row: 2, column: 1, severity: "ask" }]),
      () => workbook.writeOwnSheet({ sheet: "Findings", headers: ["A"], rows: [["1"]] }),
    ])
      await expect(act()).rejects.toMatchObject({ code: "cellBeingEdited" });
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
  });

  test("waits once it has begun, and is finished when the cell is left", async () => {
    const host = hostWith({ Cordons: cordons(2) }, EXCEL_PROFILES.current);
    const workbook = excelWorkbookOn(host, "me");
    let leave: (() => void) | undefined;
    host.beforeBatch = (batch) => {
      if (batch === 2) leave = host.edit("me");
    };
    const written = workbook.writeOwnSheet({ sheet: "Findings", headers: ["A"], rows: [["1"]] });
    await until(() => leave !== undefined);
    await pause(50);
    expect(host.book.findSheet("Findings")).toBeUndefined();
    leave!();
    await written;
    expect(host.book.sheet("Findings").cell(1, 0).value).toBe("1");
  });

  // New marks and the removal of the old ones are two syncs: two steps without mergeUndoGroup, which is ExcelApi 1.20.
  test.each(Object.values(EXCEL_PROFILES))("in $name Undo has these steps", async (profile) => {
    const host = hostWith({ Cordons: cordons(2) }, profile);
    const workbook = excelWorkbookOn(host, "me");
    await workbook.markCells([{ sheet: "Cordons", row: 2, column: 1, severity: "ask" }]);
    host.undoListOf("me").length = 0;
    await workbook.writeCells("Cordons", cells);
    await workbook.markCells([{ sheet: "Cordons", row: 3, column: 1, severity: "ask" }]);
    expect(host.undoListOf("me")).toHaveLength(profile.excelApi < 20 ? 3 : 2);
  });

  test("where a step cannot be taken back, the run is done without one step of Undo", async () => {
    const host = hostWith({ Cordons: cordons(2) }, EXCEL_PROFILES.current);
    const { excel } = host.person("me");
    const workbook = new ExcelWorkbook(
      (batch, options) =>
        options?.mergeUndoGroup
          ? Promise.reject(Object.assign(new Error("no"), { code: "UndoNotSupported" }))
          : excel.run({ ...options }, batch),
      (set, version) => host.supports(set, version),
    );
    await workbook.writeCells("Cordons", cells);
    expect(host.book.sheet("Cordons").cell(1, SPURS - 1).value).toBe(3);
  });
});
