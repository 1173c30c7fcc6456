import type { CellValue } from "../../src/survey/sheets/cell";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import { rewriteOwnSheet } from "../../src/workbook/actions/rewriteOwnSheet";
import {
  WorkbookProblem,
  type CellChange,
  type OwnSheet,
  type SurveyWorkbook,
} from "../../src/workbook/surveyWorkbook";

/** Sheets a contract case starts from: values from A1 on. */
export type StartSheets = Readonly<Record<string, readonly (readonly CellValue[])[]>>;

/** Addresses of merged cells on sheets, such as "A2:A4". */
export type MergedCells = Readonly<Record<string, readonly string[]>>;

/** A fresh workbook with these sheets, none of them made by the add-in. */
export type MakeWorkbook = (sheets: StartSheets, merged?: MergedCells) => Promise<SurveyWorkbook>;

export interface ContractCase {
  readonly name: string;
  run(): Promise<void>;
}

const COUNTS: StartSheets = {
  Cordons: [
    ["Block", "Vine", "Live spurs"],
    ["North Bench", 7, 11],
    ["North Bench", 8, null],
  ],
  Vines: [["Block", "Vine"]],
};

/**
 * What every host of SurveyWorkbook does alike, as cases that need neither jest nor Node: the same list runs in jest
 * and, bundled, in a browser page.
 */
export function surveyWorkbookContract(makeWorkbook: MakeWorkbook): ContractCase[] {
  const cases: ContractCase[] = [];
  const rule = (name: string, run: () => Promise<void>) => cases.push({ name, run });

  rule("names the sheets in their order", async () => {
    const workbook = await makeWorkbook(COUNTS);
    same(await workbook.sheetNames(), ["Cordons", "Vines"]);
  });

  rule("reads the filled part of a sheet, blanks as null, rows of equal length", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const area = await workbook.readSheet("Cordons");
    same([area.sheet, area.firstRow, area.firstColumn], ["Cordons", 1, 1]);
    same(area.values, COUNTS.Cordons);
    same(area.formulaAt(1, 1), null);
  });

  rule("says where the filled part begins when it is not in A1", async () => {
    const workbook = await makeWorkbook({ Notes: [[], [null, null, "here"], [null, null, 3]] });
    const area = await workbook.readSheet("Notes");
    same(cellAt(area, 2, 3), "here");
    same(cellAt(area, 3, 3), 3);
    same(cellAt(area, 1, 1), null);
  });

  rule("reads some rows of a sheet alone", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const area = await workbook.readSheet("Cordons", { rows: { first: 3, count: 5 } });
    same(cellAt(area, 3, 2), 8);
    same(area.values.length, 1);
    same((await workbook.readSheet("Cordons", { rows: { first: 9, count: 1 } })).values, []);
  });

  rule("carries what a person wrote on an own sheet to the row about the same thing", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const findings = (rows: OwnSheet["rows"], more: Partial<OwnSheet> = {}): OwnSheet => ({
      sheet: "Findings",
      title: ["Made today"],
      headers: ["Cell", "Vine", "Code", "Done"],
      rows,
      about: { thing: ["Vine"], kind: ["Code"], cell: ["Cell"], entries: ["Done"] },
      ...more,
    });
    const first = await rewriteOwnSheet(
      workbook,
      findings([
        ["B5", 5, "LOW", null],
        ["B7", 7, "LOW", null],
        ["B8", 8, "HIGH", null],
        ["B9", 9, "HIGH", null],
      ]),
    );
    same(first.lost, []);
    // The heads stand in row 3; the person adds a column, sums it up beside a row, and ticks one off.
    await workbook.writeCells("Findings", [
      { row: 3, column: 5, value: "Seen by" },
      { row: 4, column: 5, value: "Ana" },
      { row: 5, column: 5, value: "Ben" },
      { row: 5, column: 4, value: "yes" },
      { row: 6, column: 5, formula: "=B6*2" },
      { row: 7, column: 5, value: "Cleo" },
    ]);
    // Vine 5 is right now and vine 3 is new; a row was put into the sheet above vine 8.
    const again = await rewriteOwnSheet(
      workbook,
      findings(
        [
          ["B3", 3, "LOW", null],
          ["B7", 7, "LOW", null],
          ["B9", 8, "HIGH", null],
          ["B10", 9, "HIGH", null],
        ],
        { title: ["Made today", "Of two sheets"] },
      ),
    );
    same(again.lost, ["E4 Seen by: Ana"]);
    const area = await workbook.readSheet("Findings");
    const rows = [4, 5, 6, 7, 8].map((row) => [2, 4, 5].map((column) => cellAt(area, row, column)));
    same(
      rows.map(([vine, done]) => [vine, done]),
      [
        ["Vine", "Done"],
        [3, null],
        [7, "yes"],
        [8, null],
        [9, null],
      ],
    );
    same(
      [0, 1, 2, 4].map((index) => rows[index][2]),
      ["Seen by", null, "Ben", "Cleo"],
    );
    same(area.formulaAt(7 - area.firstRow, 5 - area.firstColumn), "=B7*2");
  });

  rule("says which cells are merged, with the value in their first", async () => {
    const workbook = await makeWorkbook(
      {
        "O'Neil, west": [
          [],
          [null, "Vine", "Cordon", "Live spurs"],
          [null, 7, "L", 11],
          [null, null, "R", 9],
          [null, null, "R", 4],
          [null, 8, "L", 10],
          [null, null, "R", 12],
        ],
        Plain: [["Vine"], [7]],
      },
      { "O'Neil, west": ["B3:B5", "B6:B7"] },
    );
    const area = await workbook.readSheet("O'Neil, west");
    same([area.firstRow, area.firstColumn], [2, 2]);
    same(
      area.values.map(([vine]) => vine),
      ["Vine", 7, null, null, 8, null],
    );
    same(area.merged, [
      { row: 1, column: 0, rows: 3, columns: 1 },
      { row: 4, column: 0, rows: 2, columns: 1 },
    ]);
    same((await workbook.readSheet("Plain")).merged ?? [], []);
  });

  rule("reads an empty sheet as no rows", async () => {
    const workbook = await makeWorkbook({ Empty: [] });
    same((await workbook.readSheet("Empty")).values, []);
  });

  rule("keeps numbers, text that looks like a number, and truth values apart", async () => {
    const row: CellValue[] = ["007", 7, true, false, 0, "0", "-3", "3 ft"];
    const workbook = await makeWorkbook({ Kinds: [["a", "b", "c", "d", "e", "f", "g", "h"], row] });
    same((await workbook.readSheet("Kinds")).values[1], row);
  });

  rule("gives a snapshot that later writes do not change", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const area = await workbook.readSheet("Cordons");
    await workbook.writeCells("Cordons", [{ row: 2, column: 3, value: 99 }]);
    same(cellAt(area, 2, 3), 11);
  });

  rule("refuses to read a sheet that is not there", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await refuses("noSheet", () => workbook.readSheet("Nowhere"));
    await refuses("noSheet", () => workbook.writeCells("Nowhere", [{ row: 1, column: 1, value: 1 }]));
    await refuses("noSheet", () => workbook.selectCell("Nowhere", 1, 1));
    await refuses("noSheet", () => workbook.deleteOwnSheet("Nowhere"));
    await refuses("noSheet", () =>
      workbook.markCells([{ sheet: "Nowhere", row: 1, column: 1, severity: "ask" }]),
    );
    same(await workbook.isOwnSheet("Nowhere"), false);
  });

  rule("tells progress up to 1 and stops when asked to", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const seen: number[] = [];
    await workbook.readSheet("Cordons", { onProgress: (done) => seen.push(done) });
    same(seen.at(-1), 1);
    same(
      seen.every((done, i) => done >= 0 && done <= 1 && (i === 0 || done >= seen[i - 1])),
      true,
    );
    const stopped = new AbortController();
    stopped.abort();
    let stoppedWith: unknown;
    await workbook
      .readSheet("Cordons", { signal: stopped.signal })
      .catch((error: unknown) => (stoppedWith = error));
    same((stoppedWith as Error | undefined)?.name, "AbortError");
  });

  rule("writes single cells and leaves all others alone", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await workbook.writeCells("Cordons", [
      { row: 3, column: 3, value: 9 },
      { row: 2, column: 1, value: "Creek Side" },
      { row: 2, column: 2, value: null },
    ]);
    same((await workbook.readSheet("Cordons")).values, [
      ["Block", "Vine", "Live spurs"],
      ["Creek Side", null, 11],
      ["North Bench", 8, 9],
    ]);
  });

  rule("writes text as text, whatever it begins with", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const texts = ["=1+1", "+1", "-1", "@name", "'quoted", "007", "1/2", "TRUE", "#N/A", "50%", "1e3"];
    await workbook.writeCells(
      "Vines",
      texts.map((value, i) => ({ row: 2 + i, column: 1, value })),
    );
    const area = await workbook.readSheet("Vines");
    same(
      texts.map((_, i) => cellAt(area, 2 + i, 1)),
      texts,
    );
    same(
      texts.map((_, i) => area.formulaAt(2 + i - area.firstRow, 1 - area.firstColumn)),
      texts.map(() => null),
    );
  });

  rule("writes a formula as a formula", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await workbook.writeCells("Cordons", [{ row: 4, column: 3, formula: "=SUM(C2:C3)" }]);
    const area = await workbook.readSheet("Cordons");
    same(area.formulaAt(4 - area.firstRow, 3 - area.firstColumn), "=SUM(C2:C3)");
  });

  rule("makes a sheet of its own with title, headers and rows", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await workbook.writeOwnSheet({
      sheet: "Findings",
      title: ["Findings", "=not a formula"],
      headers: ["Sheet", "Row", "What"],
      rows: [
        ["Cordons", 2, "=HYPERLINK()"],
        ["Cordons", 3, null],
        ["Vines", 4, true],
      ],
    });
    const area = await workbook.readSheet("Findings");
    same(cellAt(area, 2, 1), "=not a formula");
    same(
      [4, 5, 6, 7].map((row) => [1, 2, 3].map((column) => cellAt(area, row, column))),
      [
        ["Sheet", "Row", "What"],
        ["Cordons", 2, "=HYPERLINK()"],
        ["Cordons", 3, null],
        ["Vines", 4, true],
      ],
    );
    same(area.formulaAt(5 - area.firstRow, 3 - area.firstColumn), null);
    same(await workbook.isOwnSheet("Findings"), true);
    same(await workbook.isOwnSheet("Cordons"), false);
  });

  rule("rewrites its own sheet as a whole, shorter or longer, under the same name", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const write = (count: number, headers: string[]) =>
      workbook.writeOwnSheet({
        sheet: "Row gaps",
        headers,
        rows: Array.from({ length: count }, (_, i) => headers.map(() => i)),
      });
    for (const [count, headers] of [
      [3, ["Row", "Gaps"]],
      [1, ["Row", "Gaps"]],
      [6, ["Row", "Gaps", "Share"]],
      [0, ["Row", "Gaps"]],
      [2, ["Other", "Gaps"]],
    ] as const) {
      await write(count, [...headers]);
      const area = await workbook.readSheet("Row gaps");
      same(area.values[0], headers);
      const filled = area.values.slice(1).filter((row) => row.some((value) => value !== null));
      same(
        filled,
        Array.from({ length: count }, (_, i) => headers.map(() => i)),
      );
    }
    same(await workbook.sheetNames(), ["Cordons", "Vines", "Row gaps"]);
  });

  rule("a chart changes no cell of its sheet, and is drawn where the host has charts", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const chart = {
      kind: "range",
      title: "Crop",
      axis: "Crop (t)",
      labels: "Block",
      parts: ["Low", "To likely", "To high"],
    } as const;
    const headers = [chart.labels, ...chart.parts];
    const write = (rows: (string | number)[][], charts = [chart]) =>
      workbook.writeOwnSheet({ sheet: "Crop outlook", headers, rows, charts });
    const drawn = workbook.host === "desk" ? 0 : 1;
    for (const rows of [
      [["North Bench", 3, 1, 2]],
      [
        ["North Bench", 3, 1, 2],
        ["Creek Side", 5, 0, 0],
      ],
    ]) {
      same(await write(rows), { charts: drawn });
      same((await workbook.readSheet("Crop outlook")).values, [headers, ...rows]);
    }
    same(await write([]), { charts: 0 });
    same(await write([["North Bench", 3, 1, 2]], []), { charts: 0 });
    const lost = { ...chart, labels: "Row" as "Block" };
    await refuses("badTable", () => write([["Creek Side", 1, 1, 1]], [lost]));
    same((await workbook.readSheet("Crop outlook")).values[1][0], "North Bench");
  });

  rule("leaves a sheet that is not its own as it is", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await refuses("notOurs", () => workbook.writeOwnSheet({ sheet: "Vines", headers: ["a"], rows: [] }));
    await refuses("notOurs", () => workbook.writeOwnSheet({ sheet: "VINES", headers: ["a"], rows: [] }));
    await refuses("notOurs", () => workbook.deleteOwnSheet("Vines"));
    same((await workbook.readSheet("Vines")).values, COUNTS.Vines);
    same(await workbook.sheetNames(), ["Cordons", "Vines"]);
  });

  rule("refuses a table that does not hold together and writes nothing", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await refuses("badTable", () => workbook.writeOwnSheet({ sheet: "New", headers: [], rows: [] }));
    await refuses("badTable", () => workbook.writeOwnSheet({ sheet: "New", headers: ["a", "A"], rows: [] }));
    await refuses("badTable", () => workbook.writeOwnSheet({ sheet: "New", headers: ["a"], rows: [[1, 2]] }));
    for (const sheet of ["", "a/b", "a".repeat(32), "'a"])
      await refuses("badSheetName", () => workbook.writeOwnSheet({ sheet, headers: ["a"], rows: [] }));
    same(await workbook.sheetNames(), ["Cordons", "Vines"]);
  });

  rule("deletes its own sheet, which is then nobody's", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await workbook.writeOwnSheet({ sheet: "Findings", headers: ["Row"], rows: [[1]] });
    await workbook.deleteOwnSheet("Findings");
    same(await workbook.sheetNames(), ["Cordons", "Vines"]);
    same(await workbook.isOwnSheet("Findings"), false);
  });

  rule("goes to a cell and knows which one is selected", async () => {
    const workbook = await makeWorkbook(COUNTS);
    await workbook.selectCell("Vines", 3, 2);
    same(await workbook.selectedCell(), { sheet: "Vines", row: 3, column: 2 });
  });

  rule(
    "marks cells without changing what stands in them, again and again, and takes the marks off",
    async () => {
      const workbook = await makeWorkbook(COUNTS);
      await workbook.markCells([
        { sheet: "Cordons", row: 3, column: 3, severity: "wrong" },
        { sheet: "Vines", row: 1, column: 1, severity: "ask" },
      ]);
      await workbook.markCells([{ sheet: "Cordons", row: 2, column: 2, severity: "note" }]);
      await workbook.markCells([]);
      same((await workbook.readSheet("Cordons")).values, COUNTS.Cordons);
      same((await workbook.readSheet("Vines")).values, COUNTS.Vines);
    },
  );

  rule("keeps small facts in the workbook", async () => {
    const workbook = await makeWorkbook(COUNTS);
    same(await workbook.readFlag("checkWhileTyping"), undefined);
    await workbook.writeFlag("checkWhileTyping", "yes");
    await workbook.writeFlag("columns", '{"Reihe":"row"}');
    same(await workbook.readFlag("checkWhileTyping"), "yes");
    same(await workbook.readFlag("columns"), '{"Reihe":"row"}');
    await workbook.writeFlag("checkWhileTyping", undefined);
    await workbook.writeFlag("neverWritten", undefined);
    same(await workbook.readFlag("checkWhileTyping"), undefined);
  });

  rule("gives all small facts whose key begins alike", async () => {
    const workbook = await makeWorkbook(COUNTS);
    same([...(await workbook.readFlags("aside."))], []);
    for (const key of ["aside.1", "aside.2", "other"]) await workbook.writeFlag(key, `kept ${key}`);
    await workbook.writeFlag("aside.1", undefined);
    await workbook.writeFlag("aside.3", "x");
    same([...(await workbook.readFlags("aside."))].sort(), [
      ["aside.2", "kept aside.2"],
      ["aside.3", "x"],
    ]);
  });

  rule("tells of changed cells until it is told to stop", async () => {
    const workbook = await makeWorkbook(COUNTS);
    const seen: CellChange[] = [];
    const stop = await workbook.watchCells((change) => seen.push(change));
    await workbook.writeCells("Cordons", [{ row: 3, column: 3, value: 9 }]);
    await until(() => seen.length > 0);
    same(seen[0], {
      sheet: "Cordons",
      firstRow: 3,
      firstColumn: 3,
      rowCount: 1,
      columnCount: 1,
      by: "own",
    });
    await stop();
    const before = seen.length;
    await workbook.writeCells("Cordons", [{ row: 3, column: 3, value: 8 }]);
    await pause(30);
    same(seen.length, before);
  });

  return cases;
}

function cellAt(area: SheetArea, row: number, column: number): CellValue {
  return area.values[row - area.firstRow]?.[column - area.firstColumn] ?? null;
}

function same(actual: unknown, expected: unknown): void {
  const [is, should] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (is !== should) throw new Error(`is ${is}\nbut should be ${should}`);
}

async function refuses(code: string, action: () => Promise<unknown>): Promise<void> {
  try {
    await action();
  } catch (error) {
    if (error instanceof WorkbookProblem) return same(error.code, code);
    throw error;
  }
  throw new Error(`should be refused with "${code}"`);
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; tries < 100 && !isSo(); tries++) await pause(10);
}
