import { explainCell, type CellExplained } from "../../../src/workbook/actions/explainCell";
import { MemoryWorkbook, type MemoryCell } from "../memory/memoryWorkbook";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import type { ExcelHost } from "../office/excelHost";

const explained = (rows: readonly (readonly MemoryCell[])[], row: number, column: number) =>
  explainCell(new MemoryWorkbook({ Plan: rows }), { sheet: "Plan", row, column }, "en");

const formula = (text: string, value: string | number | { error: string } = 0): MemoryCell => ({
  formula: text,
  value,
});

/** The arguments of a call: as written, and the cells that it came to. */
const read = ({ calls }: CellExplained, call = 0) =>
  calls[call].args.map(({ written, cells }) => [written, cells]);

describe("a cell explained, by its addresses", () => {
  test("one value: its arguments and its answer", async () => {
    const cell = await explained([["lb"], [3], [formula('=CORDON.NODEBUDGET(A2,"30+10",,B9)', 50)]], 3, 1);
    expect(cell).toMatchObject({ shows: 50, answers: 50, anchor: { row: 3, column: 1 } });
    expect(cell.calls.map(({ called }) => called.id)).toEqual(["NODEBUDGET"]);
    expect(read(cell)).toEqual([
      ["A2", [[3]]],
      ['"30+10"', [["30+10"]]],
      ["", undefined],
      ["B9", [[null]]],
      ["", undefined],
      ["", undefined],
    ]);
    expect(cell.calls[0].args[0].from).toEqual({ sheet: "Plan", row: 2, column: 1 });
  });

  test("a refusal answers with the function's own sentence", async () => {
    const cell = await explained(
      [["many"], [formula('=CORDON.NODEBUDGET(A1,"30+10")', { error: "#VALUE!" })]],
      2,
      1,
    );
    expect(cell.answers).toMatchObject({ error: "#VALUE!", code: "isText" });
  });

  test("a column: each cell of it has its own answer, blanks are counted", async () => {
    const cell = await explained(
      [["lb"], [1], [""], ["x"], [formula('=CORDON.NODEBUDGET(A2:A4,"30+10")', 30)]],
      5,
      1,
    );
    expect(cell.answers).toBe(30);
    expect(cell.calls[0].args[0]).toMatchObject({ filled: 2, blanks: 1, errors: 0 });
    // 30 nodes for 1 lb; the blank row stays empty; a text is refused in its own row.
    expect(cell.calls[0].outcome).toMatchObject({ values: [[30], [""], [{ code: "isText" }]] });
  });

  test("nested calls, sums and calls inside other functions are each explained", async () => {
    const cell = await explained(
      [[8, 2, 0.9], [formula('=IF(A1>0,CORDON.CLUSTERS(CORDON.SHOOTS(A1,B1,C1)*2,1.5),"")', 43.2)]],
      2,
      1,
    );
    expect(cell.calls.map(({ called }) => called.id)).toEqual(["CLUSTERS", "SHOOTS"]);
    // 8 spurs x 2 nodes x 0.9 = 14.4 shoots; twice that with 1.5 clusters = 43.2.
    expect(cell.calls[1].outcome).toEqual({ values: [[14.4]] });
    expect(cell.calls[0].outcome).toEqual({ values: [[43.2]] });
    expect(cell.answers).toBeUndefined();
  });

  test("the error of an inner call reaches the outer one", async () => {
    const cell = await explained([["x"], [formula("=CORDON.CLUSTERS(CORDON.SHOOTS(A1,2,0.9),2)")]], 2, 1);
    expect(cell.calls.map(({ outcome }) => (outcome as { code: string }).code)).toEqual([
      "isError",
      "isText",
    ]);
  });

  test("what only the spreadsheet works out is said to be unknown, the rest is read", async () => {
    const cell = await explained([[3], [formula("=CORDON.CLUSTERS(SUM(A1:A1),A1)", 9)]], 2, 1);
    expect(read(cell)).toEqual([
      ["SUM(A1:A1)", undefined],
      ["A1", [[3]]],
    ]);
    expect(cell.calls[0].outcome).toBeUndefined();
  });

  test("another sheet, its name in quotes, whole columns, lists and per cent", async () => {
    const workbook = new MemoryWorkbook({
      "North's counts": [
        ["dead", "cut"],
        [4, 20],
      ],
      Plan: [
        [
          formula("=CORDON.BLOCKMEAN('North''s counts'!B:B)"),
          formula("=CORDON.BLOCKMEAN({1;2;3},,95%)"),
          formula("=CORDON.BLOCKMEAN(Nowhere!A1:A3)"),
        ],
      ],
    });
    const at = (column: number) => explainCell(workbook, { sheet: "Plan", row: 1, column }, "en");
    expect(read(await at(1))[0][1]).toEqual([["cut"], [20]]);
    expect(read(await at(2))[2][1]).toEqual([[0.95]]);
    expect(read(await at(3))[0][1]).toBeUndefined();
  });

  test("a cell without a formula, and one with another", async () => {
    expect(await explained([[7]], 1, 1)).toMatchObject({ shows: 7, calls: [] });
    expect((await explained([[7]], 1, 1)).formula).toBeUndefined();
    expect(await explained([[formula("=1+1", 2)]], 1, 1)).toMatchObject({ formula: "=1+1", calls: [] });
    expect(await explained([[7]], 9, 9)).toMatchObject({ shows: null, calls: [] });
  });
});

describe("a cell explained in Excel", () => {
  const CORDONS = [
    ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Positions", "Live spurs", "Longest gap"],
    ["North Bench", 1, 1, "left", "A", 1, 8, 6, 2],
    ["North Bench", 1, 1, "right", "B", 1, 8, 19, 1],
    ["North Bench", 1, 2, "left", "A", 1, 8, 7, 1],
  ];

  function table(host: ExcelHost, name: string, sheet: string, area: [number, number, number, number]) {
    const [row, column, rows, columns] = area;
    const found = host.book.sheet(sheet);
    found.tables.push({
      id: `{${name}}`,
      name,
      style: "",
      area: { sheet: found, row, column, rows, columns },
    });
  }

  test("a table by its name: the rows left out stand where the sheet has them", async () => {
    const host = hostWith({ Counts: [[], [], ...CORDONS], Plan: [["x"]] });
    table(host, "Cordons", "Counts", [2, 0, 4, 9]);
    host.type("me", "Plan", 2, 1, "=CORDON.GAPSBYROW(Cordons[#All])");
    const cell = await explainCell(excelWorkbookOn(host), { sheet: "Plan", row: 2, column: 1 }, "en");
    // 19 live spurs on 8 positions cannot be: sheet row 5; the other row of that vine goes with it.
    expect(cell.calls[0].rows).toMatchObject({
      rows: 3,
      used: 1,
      leftOut: [
        { reason: "sameVine", rows: 1, first: { sheet: "Counts", sheetRow: 4 } },
        { reason: "contradicted", rows: 1, first: { sheet: "Counts", sheetRow: 5 } },
      ],
    });
  });

  test("columns of a table, its own row, and a name", async () => {
    const host = hostWith({
      Vines: [
        ["Vine", "Prunings (lb)", "Nodes"],
        [1, 2, null],
        [2, 3, null],
      ],
    });
    table(host, "Vines", "Vines", [0, 0, 3, 3]);
    const sheet = host.book.sheet("Vines");
    host.book.names.set("OneWeight", { sheet, row: 1, column: 1, rows: 1, columns: 1 });
    const workbook = excelWorkbookOn(host);
    const arg = async (text: string) => {
      host.type("me", "Vines", 3, 3, `=CORDON.NODEBUDGET(${text},"30+10")`);
      const cell = await explainCell(workbook, { sheet: "Vines", row: 3, column: 3 }, "en");
      return cell.calls[0].args[0].cells;
    };
    expect(await arg("Vines[Prunings (lb)]")).toEqual([[2], [3]]);
    expect(await arg("Vines[[#All],[Prunings (lb)]]")).toEqual([["Prunings (lb)"], [2], [3]]);
    expect(await arg("[@[Prunings (lb)]]")).toEqual([[3]]);
    expect(await arg("Vines[[#This Row],[Vine]:[Prunings (lb)]]")).toEqual([[2, 3]]);
    expect(await arg("OneWeight")).toEqual([[2]]);
    expect(await arg("NoSuchName")).toBeUndefined();
    expect(await arg("Vines[Weight]")).toBeUndefined();
  });

  test("a spilled cell is explained by the cell of its formula", async () => {
    const host = hostWith({ Plan: [[1], [2.5], [4]] });
    const sheet = host.book.sheet("Plan");
    host.type("me", "Plan", 1, 3, '=CORDON.NODEBUDGET(A1:A3,"30+10")');
    sheet.put(2, 2, { value: 60, type: "Double" });
    sheet.spills.push({ sheet, row: 0, column: 2, rows: 3, columns: 1 });
    const cell = await explainCell(excelWorkbookOn(host), { sheet: "Plan", row: 3, column: 3 }, "en");
    // 4 lb at 30+10: 30 for the first pound and 10 for each of three more.
    expect(cell).toMatchObject({ shows: 60, answers: 60, anchor: { row: 1, column: 3 } });
    host.type("me", "Plan", 1, 5, "=CORDON.BLOCKMEAN(C1#)");
    const over = await explainCell(excelWorkbookOn(host), { sheet: "Plan", row: 1, column: 5 }, "en");
    expect(over.calls[0].args[0].cells).toHaveLength(3);
  });

  test("whoever follows the selection is told of it, and no longer after the end", async () => {
    const host = hostWith({ Plan: [[1]] });
    const workbook = excelWorkbookOn(host);
    let told = 0;
    const stop = await workbook.watchSelection(() => (told += 1));
    await workbook.selectCell("Plan", 2, 2);
    await host.quiet();
    expect(told).toBe(1);
    await stop();
    await workbook.selectCell("Plan", 3, 3);
    await host.quiet();
    expect(told).toBe(1);
  });
});
