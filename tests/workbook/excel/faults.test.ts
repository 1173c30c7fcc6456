import { WORKBOOK_PROBLEMS } from "../../../src/texts/workbook";
import { WORKING_SHEET_NAME } from "../../../src/workbook/excel/workingSheet";
import { OWN_SHEET_NAME } from "../../../src/workbook/ownSheet";
import {
  WorkbookProblem,
  type CellChange,
  type CellMark,
  type OwnSheet,
  type SurveyWorkbook,
} from "../../../src/workbook/surveyWorkbook";
import { plainArea } from "../office/hostBook";
import type { ExcelHost } from "../office/excelHost";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import type { CellValue } from "../../../src/survey/sheets/cell";

const COUNTS = {
  Cordons: [
    ["Block", "Vine", "Live spurs", "Note"],
    ["North Bench", 7, 11, "=looks like a formula"],
    ["North Bench", 8, null, { error: "#N/A" }],
  ] as CellValue[][],
};

jest.setTimeout(60_000);

async function codeOf(action: Promise<unknown>): Promise<string> {
  const error = await action.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (!(error instanceof WorkbookProblem)) throw error ?? new Error("should have been refused");
  expect(WORKBOOK_PROBLEMS).toHaveProperty(error.code);
  return error.code;
}

function gaps(rows: number, columns = 3): OwnSheet {
  return {
    sheet: "Row gaps",
    title: ["Row gaps", "made for a test"],
    headers: Array.from({ length: columns }, (_, c) => `Column ${c + 1}`),
    rows: Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_, c) => `${rows}/${r}/${c}`),
    ),
    columns: [{ width: 12, format: "0.0", wrap: true }],
  };
}

/** 300 rows of 2,000 characters: more than the 500,000 that go into one message. */
const LONG_ROWS = Array.from({ length: 300 }, (_, r) => [r, "why ".repeat(500), null]);

/** Compares sheet by sheet, so that a difference is shown and not the whole workbook. */
function mustBeAsBefore(host: ExcelHost, before: string): void {
  const now = JSON.stringify(host.book.snapshot());
  if (now !== before) expect(JSON.parse(now)).toEqual(JSON.parse(before));
}

/** Runs an action once for each of its steps with that step refused; what must hold is given in `holds`. */
async function refuseEachStep(
  prepare: () => Promise<{ host: ExcelHost; workbook: SurveyWorkbook }>,
  act: (workbook: SurveyWorkbook) => Promise<unknown>,
  holds: (host: ExcelHost, before: string, refused: boolean) => void,
): Promise<number> {
  const counted = await prepare();
  await counted.host.quiet();
  const first = counted.host.log.length;
  await act(counted.workbook);
  const steps = counted.host.log.length - first;
  counted.host.close();
  for (let step = 0; step < steps; step++) {
    const { host, workbook } = await prepare();
    await host.quiet();
    const before = JSON.stringify(host.book.snapshot());
    host.refuse({ after: step, code: "GeneralException" });
    let refused = false;
    await act(workbook).catch((error: unknown) => {
      if (!(error instanceof WorkbookProblem)) throw error;
      expect(error.code).toBe("excelRefused");
      refused = true;
    });
    holds(host, before, refused);
    host.close();
  }
  return steps;
}

describe("reading", () => {
  const long = {
    Cordons: Array.from({ length: 30_000 }, (_, r) => [
      "North Bench",
      r,
      `counted by MK, row ${r}`,
      ...Array.from({ length: 9 }, (_, c) => r + c / 8),
    ]),
  };

  test("a long sheet comes in slices below the message limit, with progress", async () => {
    const host = hostWith(long);
    const seen: number[] = [];
    const area = await excelWorkbookOn(host).readSheet("Cordons", { onProgress: (done) => seen.push(done) });
    expect(area.values).toEqual(long.Cordons);
    expect(host.largestMessage).toBeLessThan(5 * 1024 * 1024);
    expect(seen.length).toBeGreaterThan(10);
    expect(seen.at(-1)).toBe(1);
  });

  test("a slice too large for one message is halved until it fits", async () => {
    const host = hostWith({ Notes: Array.from({ length: 400 }, (_, r) => [r, "x".repeat(2_000)]) });
    host.messageLimit = 60_000;
    const area = await excelWorkbookOn(host).readSheet("Notes");
    expect(area.values).toHaveLength(400);
    expect(area.values[399][0]).toBe(399);
  });

  test("one row that does not fit into a message is named as the reason", async () => {
    const host = hostWith({ Notes: [["x".repeat(30_000)]] });
    host.messageLimit = 20_000;
    expect(await codeOf(excelWorkbookOn(host).readSheet("Notes"))).toBe("tooMuchAtOnce");
  });

  test("a stopped run asks Excel for nothing more", async () => {
    const host = hostWith(long);
    const stop = new AbortController();
    const reading = excelWorkbookOn(host).readSheet("Cordons", {
      signal: stop.signal,
      onProgress: (done) => done > 0.2 && stop.abort(),
    });
    await expect(reading).rejects.toMatchObject({ name: "AbortError" });
    const reads = host.log.filter((entry) => entry.name === "GetRangeByIndexes").length;
    expect(host.log.length).toBeGreaterThan(0);
    expect(reads).toBeLessThan(20);
  });

  test("a sheet deleted during the run is a missing sheet", async () => {
    const host = hostWith({ ...long, Vines: [["Vine"]] });
    host.beforeBatch = (batch) => {
      if (batch === 3) host.book.deleteSheet(host.book.sheet("Cordons"));
    };
    expect(await codeOf(excelWorkbookOn(host).readSheet("Cordons"))).toBe("noSheet");
  });

  test("a sheet renamed during the run is read to its end", async () => {
    const host = hostWith(long);
    host.beforeBatch = (batch) => {
      if (batch === 3) host.book.sheet("Cordons").name = "Cordons west";
    };
    expect((await excelWorkbookOn(host).readSheet("Cordons")).values).toHaveLength(30_000);
  });

  test("rows that a colleague adds meanwhile are read too", async () => {
    const host = hostWith(long);
    host.beforeBatch = (batch) => {
      if (batch === 4) host.type("ben", "Cordons", 30_001, 1, "Creek Side");
    };
    const area = await excelWorkbookOn(host).readSheet("Cordons");
    expect(area.values).toHaveLength(30_001);
    expect(area.values[30_000][0]).toBe("Creek Side");
  });

  test("a sheet that never stops growing is given up with a sentence", async () => {
    const host = hostWith(long);
    let rows = 30_000;
    host.beforeBatch = () => host.type("ben", "Cordons", ++rows, 1, "Creek Side");
    expect(await codeOf(excelWorkbookOn(host).readSheet("Cordons"))).toBe("sheetKeepsChanging");
  });

  test("error cells and text that looks like a formula are told apart from formulas", async () => {
    const host = hostWith(COUNTS);
    host.book.calculate = () => "#NAME?";
    host.type("me", "Cordons", 3, 3, "=CORDON.VERSION()");
    const area = await excelWorkbookOn(host).readSheet("Cordons");
    expect(area.values[1][3]).toBe("=looks like a formula");
    expect(area.formulaAt(1, 3)).toBeNull();
    expect(area.values[2].slice(2)).toEqual([{ error: "#NAME?" }, { error: "#N/A" }]);
    expect(area.formulaAt(2, 2)).toBe("=CORDON.VERSION()");
  });

  test("a formula that spills is read once, in its first cell; a copied one in each of its cells", async () => {
    const host = hostWith({ Gaps: [["Row", "Gaps"]] });
    const sheet = host.book.sheet("Gaps");
    host.type("me", "Gaps", 2, 1, "=CORDON.GAPSBYROW(Cordons!A1:K9)");
    sheet.spills.push({ sheet, row: 1, column: 0, rows: 700, columns: 2 });
    for (let row = 3; row <= 701; row++) host.type("me", "Gaps", row, 1, row);
    host.type("me", "Gaps", 2, 4, "=$F$1");
    host.type("me", "Gaps", 3, 4, "=$F$1");
    const area = await excelWorkbookOn(host).readSheet("Gaps");
    const formulas = area.values.flatMap((line, r) =>
      line.flatMap((_, c) => (area.formulaAt(r, c) ? [[r + 1, c + 1]] : [])),
    );
    expect(formulas).toEqual([
      [2, 1],
      [2, 4],
      [3, 4],
    ]);
  });
});

describe.each([EXCEL_PROFILES.perpetual2021, EXCEL_PROFILES.web])("a sheet of ours in $name", (profile) => {
  const plain = (host: ExcelHost) => JSON.stringify(host.book.snapshot());

  test("a new one is whole or not there, whichever step is refused; heads that cannot be kept in sight cost nothing", async () => {
    const wanted = hostWith(COUNTS, profile);
    await excelWorkbookOn(wanted).writeOwnSheet(gaps(5));
    const steps = await refuseEachStep(
      async () => {
        const host = hostWith(COUNTS, profile);
        return { host, workbook: excelWorkbookOn(host) };
      },
      (workbook) => workbook.writeOwnSheet(gaps(5)),
      (host, before, refused) => {
        if (refused) return mustBeAsBefore(host, before);
        mustBeAsBefore(host, plain(wanted));
        expect(host.book.sheet("Row gaps").frozenRows).toBe(0);
      },
    );
    expect(steps).toBeGreaterThan(20);
  });

  test.each([
    ["longer", gaps(9)],
    ["shorter", gaps(2)],
    ["wider", gaps(5, 4)],
    ["narrower and empty", gaps(0, 2)],
    ["below another header row", { ...gaps(6), title: ["Row gaps"] }],
    ["more than one message holds", { ...gaps(300), rows: LONG_ROWS }],
  ])("a rewrite that is %s is done or undone, whichever step is refused", async (_how, content) => {
    const wanted = hostWith(COUNTS, profile);
    const workbookWanted = excelWorkbookOn(wanted);
    await workbookWanted.writeOwnSheet(gaps(5));
    await workbookWanted.writeOwnSheet(content);
    const area = await workbookWanted.readSheet("Row gaps");
    await refuseEachStep(
      async () => {
        const host = hostWith(COUNTS, profile);
        const workbook = excelWorkbookOn(host);
        await workbook.writeOwnSheet(gaps(5));
        return { host, workbook };
      },
      (workbook) => workbook.writeOwnSheet(content),
      (host, before, refused) => {
        if (refused) mustBeAsBefore(host, before);
        else expect(host.book.sheet("Row gaps").used()).toMatchObject({ rows: area.values.length });
        expect(host.book.sheets.map((sheet) => sheet.name)).toEqual(["Cordons", "Row gaps"]);
        expect(host.book.sheet("Row gaps").tables).toHaveLength(1);
      },
    );
  });

  /** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-undo-capabilities */
  test("a rewrite does nothing that would clear the person's list of steps to undo", async () => {
    const host = hostWith(COUNTS, profile);
    const workbook = excelWorkbookOn(host);
    await workbook.writeOwnSheet(gaps(5));
    await host.quiet();
    const first = host.log.length;
    for (const content of [gaps(9), gaps(2), gaps(4, 5), gaps(0, 2)]) await workbook.writeOwnSheet(content);
    const sent = new Set(host.log.slice(first).map(({ name }) => name));
    expect(["Add", "Delete", "Name", "Visibility"].filter((name) => sent.has(name))).toEqual([]);
    const area = await workbook.readSheet("Row gaps");
    expect(area.values[area.values.length - 1]).toEqual(["Column 1", "Column 2"]);
    expect(area.values[0]).toHaveLength(2);
  });

  test("when even putting back is refused, what stood there stays and the sentence says where", async () => {
    const host = hostWith(COUNTS, profile);
    const workbook = excelWorkbookOn(host);
    await workbook.writeOwnSheet(gaps(5));
    const before = (await workbook.readSheet("Row gaps")).values;
    host.refuse({ name: "Resize", times: 2, code: "GeneralException" });
    const error = await workbook.writeOwnSheet(gaps(9)).catch((reason: unknown) => reason);
    expect(error).toMatchObject({ code: "halfWritten", facts: { sheet: "Row gaps" } });
    const kept = host.book.sheet(String((error as WorkbookProblem).facts.kept));
    expect(kept.visibility).toBe("Visible");
    const cells = [...kept.cells.values()].map((cell) => cell.value);
    for (const value of before.flat()) if (value !== null) expect(cells).toContain(value);
  });

  test("formulas, tables and charts that look at it keep their sheet, its table and its name", async () => {
    const host = hostWith(COUNTS, profile);
    const workbook = excelWorkbookOn(host);
    await workbook.writeOwnSheet(gaps(5));
    const sheet = host.book.sheet("Row gaps");
    const [id, table] = [sheet.id, sheet.tables[0].name];
    await workbook.writeOwnSheet(gaps(9));
    expect(host.book.sheet("Row gaps").id).toBe(id);
    expect(sheet.tables.map((other) => other.name)).toEqual([table]);
    expect(sheet.tables[0].area).toMatchObject({ row: 3, rows: 10, columns: 3 });
    expect(table).toBe("Cordonbook_Row_gaps");
  });

  test("what a person wrote beside or below the table stays, and is not written over", async () => {
    const host = hostWith(COUNTS, profile);
    const workbook = excelWorkbookOn(host);
    await workbook.writeOwnSheet(gaps(5));
    host.type("me", "Row gaps", 6, 6, "my remark");
    host.type("me", "Row gaps", 12, 1, "my sum");
    await workbook.writeOwnSheet(gaps(3));
    await workbook.writeOwnSheet(gaps(6));
    expect(host.book.sheet("Row gaps").cell(5, 5).value).toBe("my remark");
    expect(host.book.sheet("Row gaps").cell(11, 0).value).toBe("my sum");
    const before = plain(host);
    expect(await codeOf(workbook.writeOwnSheet(gaps(20)))).toBe("inTheWay");
    expect(await codeOf(workbook.writeOwnSheet(gaps(6, 7)))).toBe("inTheWay");
    mustBeAsBefore(host, before);
  });
});

describe("a sheet of ours", () => {
  test("is recognised after a person renamed it, and a protected one is left alone", async () => {
    const host = hostWith(COUNTS);
    const workbook = excelWorkbookOn(host);
    await workbook.writeOwnSheet(gaps(2));
    host.book.sheet("Row gaps").name = "Gaps 2026";
    expect(await workbook.isOwnSheet("Gaps 2026")).toBe(true);
    host.book.sheet("Gaps 2026").locked = true;
    const before = JSON.stringify(host.book.snapshot());
    expect(await codeOf(workbook.writeOwnSheet({ ...gaps(3), sheet: "Gaps 2026" }))).toBe("protectedSheet");
    mustBeAsBefore(host, before);
  });

  test("is not made in a workbook whose structure is protected", async () => {
    const host = hostWith(COUNTS);
    host.book.structureLocked = true;
    expect(await codeOf(excelWorkbookOn(host).writeOwnSheet(gaps(3)))).toBe("protectedWorkbook");
    expect(host.book.sheets).toHaveLength(1);
  });

  test("of many long texts is written in messages below the limit", async () => {
    const host = hostWith(COUNTS);
    await excelWorkbookOn(host).writeOwnSheet({
      sheet: "Findings",
      headers: ["Row", "What"],
      rows: Array.from({ length: 3_000 }, (_, r) => [r, `${r} ${"why ".repeat(600)}`]),
    });
    expect(host.largestMessage).toBeLessThan(2 * 1024 * 1024);
    expect(host.book.sheet("Findings").used()).toMatchObject({ rows: 3_001, columns: 2 });
  });

  test("takes away the working sheet of a run that never ended, and leaves a colleague's running one", async () => {
    const host = hostWith(COUNTS);
    const name = { name: WORKING_SHEET_NAME, visible: false, comment: "" };
    host.book.addSheet("left over").names.push({ ...name, formula: `=${Date.now() - 3_600_000}` });
    host.book.addSheet("a colleague's").names.push({ ...name, formula: `=${Date.now()}` });
    await excelWorkbookOn(host).writeOwnSheet(gaps(1));
    expect(host.book.sheets.map((sheet) => sheet.name)).toEqual(["Cordons", "a colleague's", "Row gaps"]);
    expect(host.book.sheet("Row gaps").names.map((own) => own.name)).toEqual([OWN_SHEET_NAME]);
  });
});

describe("writing single cells", () => {
  const three = [
    { row: 2, column: 3, value: 1 },
    { row: 3, column: 3, value: 2 },
  ];

  test.each(["a table", "the sheet"])("is refused where a filter of %s hides rows", async (whose) => {
    const host = hostWith(COUNTS);
    const sheet = host.book.sheet("Cordons");
    const area = { sheet, row: 0, column: 0, rows: 3, columns: 4 };
    const hiddenRows = new Set([2]);
    if (whose === "a table") sheet.tables.push({ id: "{t}", name: "Counts", area, style: "", hiddenRows });
    else sheet.filter = { area, hiddenRows };
    const before = JSON.stringify(host.book.snapshot());
    expect(await codeOf(excelWorkbookOn(host).writeCells("Cordons", three))).toBe("filteredTable");
    mustBeAsBefore(host, before);
  });

  test("is done beside a filtered table, and in a table whose filter hides nothing", async () => {
    const host = hostWith(COUNTS);
    const sheet = host.book.sheet("Cordons");
    const area = { sheet, row: 0, column: 0, rows: 3, columns: 4 };
    sheet.tables.push({ id: "{t}", name: "Counts", area, style: "", hiddenRows: new Set([2]) });
    const workbook = excelWorkbookOn(host);
    await workbook.writeCells("Cordons", [{ row: 9, column: 3, value: 7 }]);
    sheet.tables[0].hiddenRows = new Set();
    await workbook.writeCells("Cordons", three);
    expect([1, 2, 8].map((row) => sheet.cell(row, 2).value)).toEqual([1, 2, 7]);
  });

  test("is done or undone, whichever step is refused", async () => {
    await refuseEachStep(
      async () => {
        const host = hostWith(COUNTS);
        host.type("me", "Cordons", 3, 2, "=1+7");
        return { host, workbook: excelWorkbookOn(host) };
      },
      (workbook) =>
        workbook.writeCells("Cordons", [
          { row: 2, column: 4, value: "other" },
          { row: 3, column: 2, value: 5 },
          { row: 3, column: 4, value: null },
          { row: 4, column: 1, formula: "=SUM(B2:B3)" },
        ]),
      (host, before, refused) => {
        expect(refused).toBe(true);
        mustBeAsBefore(host, before);
      },
    );
  });

  test("writes unlocked cells of a protected sheet, and refuses locked ones before anything is changed", async () => {
    const host = hostWith(COUNTS);
    const sheet = host.book.sheet("Cordons");
    sheet.locked = true;
    sheet.setFormat(2, 2, { unlocked: true });
    const workbook = excelWorkbookOn(host);
    await workbook.writeCells("Cordons", [{ row: 3, column: 3, value: 9 }]);
    expect(sheet.cell(2, 2).value).toBe(9);
    const both = [
      { row: 3, column: 3, value: 1 },
      { row: 3, column: 2, value: 1 },
    ];
    expect(await codeOf(workbook.writeCells("Cordons", both))).toBe("protectedSheet");
    expect(sheet.cell(2, 2).value).toBe(9);
  });

  test("refuses a formula without its equals sign", async () => {
    const host = hostWith(COUNTS);
    const write = excelWorkbookOn(host).writeCells("Cordons", [{ row: 2, column: 3, formula: "SUM(A1)" }]);
    expect(await codeOf(write)).toBe("notAFormula");
  });

  test("tens of thousands of cells go in messages below the limit", async () => {
    const host = hostWith({ Cordons: [["Note"]] });
    const cells = Array.from({ length: 20_000 }, (_, r) => ({
      row: r + 2,
      column: 1,
      value: `note ${"x".repeat(200)} ${r}`,
    }));
    await excelWorkbookOn(host).writeCells("Cordons", cells);
    expect(host.largestMessage).toBeLessThan(2 * 1024 * 1024);
    expect(host.book.sheet("Cordons").cell(20_000, 0).value).toMatch(/ 19999$/);
  });
});

describe("marks", () => {
  const marks: CellMark[] = [
    { sheet: "Cordons", row: 2, column: 3, severity: "wrong" },
    { sheet: "cordons", row: 3, column: 3, severity: "wrong" },
    { sheet: "Cordons", row: 2, column: 3, severity: "note" },
    { sheet: "Cordons", row: 2, column: 1, severity: "ask" },
  ];

  function coloured(): ExcelHost {
    const host = hostWith(COUNTS);
    const sheet = host.book.sheet("Cordons");
    sheet.setFormat(1, 2, { fill: "#00FF00", bold: true });
    const note = { id: "theirs", kind: "note" as const, author: "Cleo", content: "look at the wire" };
    sheet.remarks.push({ ...note, row: 1, column: 2, resolved: false, replies: [] });
    sheet.conditionalFormats.push({
      id: "theirs",
      type: "Custom",
      formula: "=$C2>10",
      fill: "#FF00FF",
      font: "",
      border: "",
      bold: false,
      stopIfTrue: true,
      areas: [{ sheet, row: 1, column: 2, rows: 2, columns: 1 }],
    });
    return host;
  }

  test("are conditional formats of ours and nothing else", async () => {
    const host = coloured();
    await excelWorkbookOn(host).markCells(marks);
    const sheet = host.book.sheet("Cordons");
    const ours = sheet.conditionalFormats.filter((format) => format.id !== "theirs");
    expect(ours.map(({ formula }) => formula).sort()).toEqual([
      '=N("Cordonbook ask")=0',
      '=N("Cordonbook wrong")=0',
    ]);
    expect(sheet.format(1, 2)).toEqual({ fill: "#00FF00", bold: true });
    expect(ours.flatMap(({ areas }) => areas.map(({ row, column, rows }) => [row, column, rows]))).toEqual(
      expect.arrayContaining([
        [1, 2, 2],
        [1, 0, 1],
      ]),
    );
  });

  test("come off in another session and leave everything exactly as it was", async () => {
    const host = coloured();
    const before = JSON.stringify(host.book.snapshot());
    await excelWorkbookOn(host).markCells(marks);
    expect(JSON.stringify(host.book.snapshot())).not.toBe(before);
    await excelWorkbookOn(host, "the next day").markCells([]);
    mustBeAsBefore(host, before);
  });

  test("are all set or all as before, whichever step is refused", async () => {
    const marksOf = (host: ExcelHost) =>
      host.book.sheets.map((sheet) =>
        sheet.conditionalFormats
          .map(({ formula, fill, areas }) => JSON.stringify([formula, fill, areas.map(plainArea)]))
          .sort(),
      );
    const wanted = coloured();
    await excelWorkbookOn(wanted).markCells(marks.slice(0, 2));
    await refuseEachStep(
      async () => {
        const host = coloured();
        const workbook = excelWorkbookOn(host);
        await workbook.markCells(marks.slice(0, 2));
        return { host, workbook };
      },
      (workbook) => workbook.markCells(marks.slice(2)),
      (host, before, refused) => {
        expect(refused).toBe(true);
        expect(marksOf(host)).toEqual(marksOf(wanted));
        expect(before).toContain("Cordonbook wrong");
      },
    );
  });

  test("a protected sheet is refused before any mark is changed", async () => {
    const host = coloured();
    host.addSheet("Vines", [["Vine"]]);
    const workbook = excelWorkbookOn(host);
    await workbook.markCells(marks);
    host.book.sheet("Vines").locked = true;
    const before = JSON.stringify(host.book.snapshot());
    const more = [...marks, { sheet: "Vines", row: 1, column: 1, severity: "ask" } as const];
    expect(await codeOf(workbook.markCells(more))).toBe("protectedSheet");
    mustBeAsBefore(host, before);
  });

  test("thousands of scattered cells need few formats and short addresses", async () => {
    const host = hostWith({ Cordons: [["Vine"]] });
    const many = Array.from({ length: 4_000 }, (_, i) => ({
      sheet: "Cordons",
      row: 2 + 2 * i,
      column: 1 + (i % 7),
      severity: "ask" as const,
    }));
    await excelWorkbookOn(host).markCells(many);
    const formats = host.book.sheet("Cordons").conditionalFormats;
    expect(formats.length).toBeLessThan(30);
    expect(formats.reduce((sum, { areas }) => sum + areas.length, 0)).toBe(4_000);
  });
});

describe("other people and other states", () => {
  test("a colleague's change is told from one's own, and a deleted sheet is no change", async () => {
    const host = hostWith({ ...COUNTS, Vines: [["Vine"]] });
    const workbook = excelWorkbookOn(host, "me");
    const seen: CellChange[] = [];
    await workbook.watchCells((change) => seen.push(change));
    host.type("me", "Cordons", 2, 3, 12);
    host.type("ben", "Cordons", 3, 3, 9);
    host.type("ben", "Vines", 2, 1, 7);
    host.book.deleteSheet(host.book.sheet("Vines"));
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(seen.map(({ sheet, firstRow, by }) => [sheet, firstRow, by])).toEqual([
      ["Cordons", 2, "own"],
      ["Cordons", 3, "colleague"],
    ]);
  });

  test("a hidden sheet is named when it should be shown", async () => {
    const host = hostWith({ ...COUNTS, Vines: [["Vine"]] });
    host.book.sheet("Vines").visibility = "Hidden";
    expect(await codeOf(excelWorkbookOn(host).selectCell("Vines", 1, 1))).toBe("hiddenSheet");
  });

  test.each([
    ["InvalidOperationInCellEditMode", "cellBeingEdited"],
    ["AccessDenied", "protectedSheet"],
    ["ItemNotFound", "noSheet"],
    ["ApiNotFound", "notInThisExcel"],
    ["FilteredRangeConflict", "filteredTable"],
    ["InactiveWorkbook", "otherWorkbook"],
    ["RequestAborted", "excelRefused"],
  ])("Excel's %s comes out as %s", async (code, problem) => {
    const host = hostWith(COUNTS);
    host.refuse({ code });
    expect(await codeOf(excelWorkbookOn(host).readSheet("Cordons"))).toBe(problem);
  });

  test("an error that is not Excel's is not dressed up as one", async () => {
    const workbook = excelWorkbookOn(hostWith(COUNTS));
    const broken = workbook.readSheet("Cordons", {
      onProgress: () => {
        throw new TypeError("a bug");
      },
    });
    await expect(broken).rejects.toThrow(TypeError);
  });
});
