import {
  argumentWords,
  callSentences,
  differenceSentence,
  isLeftOut,
  leftOutSentence,
} from "../../../src/taskpane/functions/cellWords";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { Language } from "../../../src/texts/language";
import { explainCell, type CellExplained } from "../../../src/workbook/actions/explainCell";
import { MemoryWorkbook, type MemoryCell } from "../../workbook/memory/memoryWorkbook";

/** The cell below these rows, with this formula and what it shows. */
async function below(
  rows: readonly (readonly MemoryCell[])[],
  formula: string,
  shows: CellValue,
  language: Language = "en",
): Promise<CellExplained> {
  const workbook = new MemoryWorkbook({ Plan: [...rows, [{ formula, value: shows }]] });
  return explainCell(workbook, { sheet: "Plan", row: rows.length + 1, column: 1 }, language);
}

const sentences = (cell: CellExplained, language: Language = "en") =>
  callSentences(cell, cell.calls[0], language);

const args = (cell: CellExplained, language: Language = "en") =>
  cell.calls[0].args
    .filter((each) => !isLeftOut(each))
    .map((each) => argumentWords(each, cell.calls[0].units, language));

describe("what is said of a cell", () => {
  test("arguments with their unit, as the call's unit system has it", async () => {
    const us = await below([[3]], '=CORDON.NODEBUDGET(A1,"30+10")', 50);
    expect(args(us)).toEqual(["3 lb", "“30+10”"]);
    expect(leftOutSentence(us.calls[0], "en")).toBe(
      "Left out: unit (counts as US), least, most, below one pound (counts as refuse).",
    );
    expect(sentences(us)).toEqual(["It gives nodes: 50."]);
    // 2.26796185 kg are 5 lb (1 lb = 0.45359237 kg): 30 + 4 x 10 = 70 nodes.
    const metric = await below([[2.26796185]], '=CORDON.NODEBUDGET(A1,"30+10","metric",,60)', 60, "es");
    expect(args(metric, "es")).toEqual(["2,26796 kg", "“30+10”", "“metric”", "60"]);
    expect(sentences(metric, "es")).toEqual(["Da yemas: 60."]);
  });

  test("a share in both ways of writing, blanks and errors of a range", async () => {
    const cell = await below(
      [[0.35], [null], [{ error: "#N/A" }]],
      '=CORDON.NODESAFTERINJURY(50,A1,"proRata")',
      77,
    );
    expect(args(cell)[1]).toBe("0.35 (35 %)");
    const range = await below([[12], [null], [{ error: "#N/A" }]], "=CORDON.BLOCKMEAN(A1:A3)", {
      error: "#N/A",
    });
    expect(args(range)[0]).toBe("3 rows: 2 filled, 1 empty; the first is 12; 1 error");
    expect(sentences(range)).toEqual([
      "It gives #N/A: counts is the error #N/A in row 3 of the range: put that cell right first.",
    ]);
    expect(differenceSentence(range, "en")).toBeUndefined();
  });

  test("a column says how many rows are answered and why the first is not", async () => {
    const cell = await below([[1], [null], ["x"], [4]], '=CORDON.NODEBUDGET(A1:A4,"30+10")', 30, "fr");
    expect(sentences(cell, "fr").slice(0, 2)).toEqual([
      "Elle répond à 2 lignes sur 4 ; 1 restent vides, 1 sont refusées.",
      expect.stringMatching(/^La première refusée, à la ligne 3 de la plage : .*« ?x ?».*/),
    ]);
  });

  test("the rows of the Cordons table that are left out", async () => {
    const rows: MemoryCell[][] = [
      ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Positions", "Live spurs", "Longest gap"],
      ["North Bench", 1, 1, "left", "A", 1, 8, 6, 2],
      ["North Bench", 1, 2, "left", "A", 1, 8, null, 1],
    ];
    const cell = await below(rows, "=CORDON.GAPSBYROW(A1:I3)", "Block");
    expect(args(cell)[0]).toBe("2 rows under 9 headings, from A1 on Plan");
    expect(sentences(cell)).toEqual([
      "It gives 1 row under 9 headings.",
      "Here it gives the heading of a column.",
      "Worked out from 1 of 2 rows of the Cordons sheets. Left out: 1 where Live spurs is blank (first in Plan, row 3).",
    ]);
  });

  test("what only the spreadsheet works out, and arguments that are missing", async () => {
    const cell = await below([[3]], "=CORDON.CLUSTERS(SUM(A1:A1))", { error: "#VALUE!" });
    expect(args(cell)).toEqual(["worked out by the spreadsheet, not read here", "not given"]);
    expect(sentences(cell)).toEqual([
      "shoots is worked out by the spreadsheet alone (SUM(A1:A1)), so the answer is not repeated here. Put that part into a cell of its own to see it.",
    ]);
  });

  test.each<[string, CellValue, RegExp]>([
    ["the function is not loaded", { error: "#NAME?" }, /^The cell shows #NAME\?: .*page Care/],
    ["no room", { error: "#SPILL!" }, /^The cell shows #SPILL!: .*Clear the cells/],
    ["still calculating", { error: "#BUSY!" }, /#BUSY!: it is still being calculated/],
    ["another value", 40, /^The cell shows 40, and the function answers 50 .*\(F9\)/],
    ["another error", { error: "#VALUE!" }, /^The cell shows #VALUE!, and the function answers 50 .*enter/],
  ])("a cell that shows something else than its function answers: %s", async (_what, shows, says) => {
    const cell = await below([[3]], '=CORDON.NODEBUDGET(A1,"30+10")', shows);
    expect(differenceSentence(cell, "en")).toMatch(says);
  });

  test("an error that the rest of the formula makes", async () => {
    const cell = await below([[24]], "=CORDON.CLUSTERS(A1,2)/0", { error: "#DIV/0!" });
    expect(differenceSentence(cell, "en")).toBe(
      "The cell shows #DIV/0!: the rest of the formula makes that of it.",
    );
  });
});
