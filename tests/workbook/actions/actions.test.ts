import type { Finding } from "../../../src/survey/checks/finding";
import { changeCells, undoChange } from "../../../src/workbook/actions/changeCells";
import { applyRepairs, lookForRepairs } from "../../../src/workbook/actions/repairFormulas";
import { logRun, logsRuns, setLogsRuns } from "../../../src/workbook/actions/runLog";
import { dropAside, keepAside, readAside } from "../../../src/workbook/actions/setAside";
import { MemoryWorkbook } from "../memory/memoryWorkbook";
import type { SurveyWorkbook } from "../../../src/workbook/surveyWorkbook";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import type { StartSheets } from "../contract";

const written = (at: number) => `second ${at}`;

function finding(vine: number): Finding {
  return {
    code: "spursAbovePositions",
    severity: "wrong",
    sheet: "Cordons",
    row: vine + 1,
    columnNumber: 3,
    column: "Live spurs",
    facts: { block: "North Bench", row: 1, vine, side: "left", cordon: "A", value: 9 },
  };
}

const HOSTS: [string, (sheets: StartSheets) => SurveyWorkbook][] = [
  ["memory", (sheets) => new MemoryWorkbook(sheets)],
  ["Excel, through the real proxies", (sheets) => excelWorkbookOn(hostWith(sheets))],
];

describe.each(HOSTS)("in a workbook in %s", (_host, open) => {
  const start = () =>
    open({
      Cordons: [
        ["Block", "Live spurs"],
        ["North Bench", 11],
      ],
      Vines: [["Vine", "=text"]],
    });

  test("changed cells are listed before and after, and undone exactly", async () => {
    const workbook = start();
    const before = [(await workbook.readSheet("Cordons")).values, (await workbook.readSheet("Vines")).values];
    const { changed } = await changeCells(workbook, [
      { sheet: "Cordons", row: 2, column: 2, content: { value: 12 } },
      { sheet: "Vines", row: 1, column: 2, content: { formula: "=1+1" } },
      { sheet: "Vines", row: 5, column: 3, content: { value: "new" } },
    ]);
    expect(changed.map(({ before: was, after }) => [was, after])).toEqual([
      [{ value: 11 }, { value: 12 }],
      [{ value: "=text" }, { formula: "=1+1" }],
      [{ value: null }, { value: "new" }],
    ]);
    const undone = await undoChange(workbook, changed);
    expect(undone.left).toEqual([]);
    expect([
      (await workbook.readSheet("Cordons")).values,
      (await workbook.readSheet("Vines")).values,
    ]).toEqual(before);
  });

  test("undoing leaves alone what somebody has changed since, and names it", async () => {
    const workbook = start();
    const { changed } = await changeCells(workbook, [
      { sheet: "Cordons", row: 2, column: 2, content: { value: 12 } },
      { sheet: "Cordons", row: 2, column: 1, content: { value: "Creek Side" } },
    ]);
    await workbook.writeCells("Cordons", [{ row: 2, column: 2, value: 13 }]);
    const undone = await undoChange(workbook, changed);
    expect(undone.left).toEqual([{ sheet: "Cordons", row: 2, column: 2, holds: { value: 13 } }]);
    expect((await workbook.readSheet("Cordons")).values[1]).toEqual(["North Bench", 13]);
  });

  test("findings set aside stay with the workbook and are taken back", async () => {
    const workbook = start();
    const entry = { reason: " grafted ", by: "JT", on: "2026-02-01" };
    expect(await keepAside(workbook, finding(1), { ...entry, by: " " })).toBeUndefined();
    expect(await readAside(workbook)).toEqual([]);
    await keepAside(workbook, finding(1), entry);
    await keepAside(workbook, finding(2), { ...entry, on: "2026-01-31" });
    await keepAside(workbook, finding(1), { ...entry, reason: "grafted last year" });
    expect((await readAside(workbook)).map(({ reason, on }) => [reason, on])).toEqual([
      ["grafted", "2026-01-31"],
      ["grafted last year", "2026-02-01"],
    ]);
    expect(await dropAside(workbook, finding(1))).toHaveLength(1);
    expect(await readAside(workbook)).toHaveLength(1);
  });

  test("runs are logged where that is switched on, newest first, three hundred at most", async () => {
    const workbook = start();
    const line = { at: 1, who: "AB", what: "Check", result: "3 findings" };
    expect(await logRun(workbook, line, "en", written)).toBeUndefined();
    expect(await workbook.sheetNames()).toEqual(["Cordons", "Vines"]);
    await setLogsRuns(workbook, true);
    expect(await logsRuns(workbook)).toBe(true);
    expect((await logRun(workbook, line, "en", written))?.sheet).toBe("Run log");
    await logRun(workbook, { ...line, at: 2, who: "=MK" }, "es", written);
    const area = await workbook.readSheet("Run log");
    expect(area.values.slice(-2)).toEqual([
      ["second 2", "=MK", "Check", "3 findings"],
      ["second 1", "AB", "Check", "3 findings"],
    ]);
    await setLogsRuns(workbook, false);
    expect(await logRun(workbook, { ...line, at: 3 }, "en", written)).toBeUndefined();
    expect((await workbook.readFlags("run.")).size).toBe(2);
  });
});

describe("the log", () => {
  test("forgets its oldest lines above three hundred", async () => {
    const workbook = new MemoryWorkbook({ Cordons: [["Block"]] });
    await setLogsRuns(workbook, true);
    for (let at = 1; at <= 305; at++)
      await logRun(workbook, { at, who: "AB", what: "Check", result: "" }, "en", written);
    expect((await workbook.readFlags("run.")).size).toBe(300);
    const moments = (await workbook.readSheet("Run log")).values.slice(-300).map(([when]) => when);
    expect([moments[0], moments[299]]).toEqual(["second 305", "second 6"]);
  });

  test("does not touch a sheet of that name that is somebody's own", async () => {
    const workbook = new MemoryWorkbook({ "Run log": [["mine"]] });
    await setLogsRuns(workbook, true);
    const run = logRun(workbook, { at: 1, who: "AB", what: "Check", result: "" }, "en", written);
    await expect(run).rejects.toMatchObject({ code: "notOurs" });
    expect((await workbook.readSheet("Run log")).values).toEqual([["mine"]]);
  });
});

describe("changing cells on several sheets", () => {
  test("brings the first sheet back when the second refuses", async () => {
    const workbook = new MemoryWorkbook({ Cordons: [["Live spurs"], [11]], Vines: [["Vine"]] });
    workbook.protect("Vines");
    const change = changeCells(workbook, [
      { sheet: "Cordons", row: 2, column: 1, content: { value: 12 } },
      { sheet: "Vines", row: 2, column: 1, content: { value: 7 } },
    ]);
    await expect(change).rejects.toMatchObject({ code: "protectedSheet" });
    expect((await workbook.readSheet("Cordons")).values[1]).toEqual([11]);
  });

  test("refuses a cell whose typed error could not be put back", async () => {
    const workbook = new MemoryWorkbook({ Cordons: [[11, { error: "#N/A" }]] });
    const change = changeCells(workbook, [
      { sheet: "Cordons", row: 1, column: 1, content: { value: 12 } },
      { sheet: "Cordons", row: 1, column: 2, content: { value: 12 } },
    ]);
    await expect(change).rejects.toMatchObject({ code: "cannotPutBack", facts: { row: 1, column: 2 } });
    expect((await workbook.readSheet("Cordons")).values).toEqual([[11, { error: "#N/A" }]]);
  });
});

describe("repairing formulas", () => {
  function broken() {
    const host = hostWith({ Plan: [["Nodes"]], Other: [["Text"]] });
    host.book.calculate = (formula) => (/_xldudf|CORDON\.CLUSTERS/.test(formula) ? "#NAME?" : 50);
    host.type("me", "Plan", 2, 1, '=_xldudf_CORDON_NODEBUDGET(3,"30+10")');
    host.type("me", "Plan", 3, 1, '=[2]!_xldudf_CORDON_NODEBUDGET(B3,"30+10")*2');
    host.type("me", "Plan", 4, 1, "=CORDON.CLUSTERS(A2,2)");
    host.type("me", "Plan", 5, 1, '=CORDON.NODEBUDGET(3,"20+20")');
    host.type("me", "Plan", 6, 1, "=SUM(A2:A5)");
    host.type("me", "Other", 2, 1, '="_xldudf_CORDON_NODEBUDGET(3)"');
    return { host, workbook: excelWorkbookOn(host) };
  }
  const formulas = async (workbook: SurveyWorkbook) => {
    const area = await workbook.readSheet("Plan");
    return area.values.map((_, r) => area.formulaAt(r, 0));
  };

  test("shows what would change, changes it, and takes it back exactly", async () => {
    const { host, workbook } = broken();
    const before = JSON.stringify(host.book.snapshot());
    const plan = await lookForRepairs(workbook);
    expect(plan.repairs.map(({ row, why, after }) => [row, why, after])).toEqual([
      [2, "form", '=CORDON.NODEBUDGET(3,"30+10")'],
      [3, "form", '=CORDON.NODEBUDGET(B3,"30+10")*2'],
      [4, "enterAgain", "=CORDON.CLUSTERS(A2,2)"],
    ]);
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    const { changed } = await applyRepairs(workbook, plan);
    expect(changed).toHaveLength(3);
    expect((await formulas(workbook)).slice(1, 4)).toEqual(plan.repairs.map(({ after }) => after));
    await undoChange(workbook, changed);
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
  });

  test("leaves alone a cell that a colleague has changed since the preview", async () => {
    const { host, workbook } = broken();
    const plan = await lookForRepairs(workbook);
    host.type("ben", "Plan", 3, 1, 44);
    const { changed, left } = await applyRepairs(workbook, plan);
    expect(changed.map(({ row }) => row)).toEqual([2, 4]);
    expect(left).toEqual([{ sheet: "Plan", row: 3, column: 1, holds: { value: 44 } }]);
    expect(host.book.sheet("Plan").cell(2, 0).value).toBe(44);
  });

  test("is done or undone, whichever step is refused", async () => {
    const { host, workbook } = broken();
    const plan = await lookForRepairs(workbook);
    await host.quiet();
    const before = JSON.stringify(host.book.snapshot());
    const first = host.log.length;
    await undoChange(workbook, (await applyRepairs(workbook, plan)).changed);
    await host.quiet();
    const steps = host.log.length - first;
    for (let step = 0; step < steps; step++) {
      host.refuse({ after: step, code: "GeneralException" });
      const done = await applyRepairs(workbook, plan).catch(() => undefined);
      host.clearFaults();
      if (done) await undoChange(workbook, done.changed);
      await host.quiet();
      expect(JSON.stringify(host.book.snapshot())).toBe(before);
    }
    expect(steps).toBeGreaterThan(40);
  });
});

test("a change of 200,000 cells at once is written and taken back", async () => {
  const rows = 200_000;
  const workbook = new MemoryWorkbook({ Cordons: [["Stays"], ...Array.from({ length: rows }, () => [1])] });
  const wanted = Array.from({ length: rows }, (_, i) => ({
    sheet: "Cordons",
    row: i + 2,
    column: 1,
    content: { value: 2 },
  }));
  const { changed } = await changeCells(workbook, wanted);
  expect(changed).toHaveLength(rows);
  expect((await workbook.readSheet("Cordons")).values[rows]).toEqual([2]);
  await undoChange(workbook, changed);
  expect((await workbook.readSheet("Cordons")).values[rows]).toEqual([1]);
});
