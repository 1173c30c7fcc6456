import { MemoryWorkbook } from "./memoryWorkbook";
import type { CellChange } from "../../../src/workbook/surveyWorkbook";
import { surveyWorkbookContract } from "../contract";

describe("the workbook in memory keeps the contract", () => {
  for (const rule of surveyWorkbookContract(async (sheets, merged) => new MemoryWorkbook(sheets, merged)))
    test(rule.name, rule.run);
});

test("a protected sheet is refused and stays as it was", async () => {
  const workbook = new MemoryWorkbook({ Vines: [["Vine"], [7]] });
  workbook.protect("Vines");
  await expect(workbook.writeCells("Vines", [{ row: 2, column: 1, value: 8 }])).rejects.toMatchObject({
    code: "protectedSheet",
    facts: { sheet: "Vines" },
  });
  expect((await workbook.readSheet("Vines")).values).toEqual([["Vine"], [7]]);
});

test("a colleague's typing is told apart from one's own", async () => {
  const workbook = new MemoryWorkbook({ Vines: [["Vine"], [7]] });
  const seen: CellChange[] = [];
  await workbook.watchCells((change) => seen.push(change));
  workbook.type("Vines", 2, 1, 8);
  workbook.type("Vines", 2, 1, 9, "colleague");
  expect(seen.map((change) => change.by)).toEqual(["own", "colleague"]);
});

test("a formula reads back with the value given for it", async () => {
  const workbook = new MemoryWorkbook({ Totals: [["Total"], [{ formula: "=2+3", value: 5 }]] });
  const area = await workbook.readSheet("Totals");
  expect(area.values[1][0]).toBe(5);
  expect(area.formulaAt(1, 0)).toBe("=2+3");
});
