import { readFileSync } from "node:fs";
import { valuesOnlyCopy } from "../../../src/workbook/actions/valuesOnlyCopy";
import { repairFormula } from "../../../src/functions/repairFormula";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";

const season = "larkmoor-clean.xlsx";

async function cells(workbook: FileWorkbook) {
  const found: { place: string; value: unknown; formula: string | null }[] = [];
  for (const sheet of await workbook.sheetNames()) {
    const area = await workbook.readSheet(sheet);
    area.values.forEach((line, r) =>
      line.forEach((value, c) =>
        found.push({ place: `${sheet} ${r} ${c}`, value, formula: area.formulaAt(r, c) }),
      ),
    );
  }
  return found;
}

test("a copy for people without the add-in shows the same and has none of our functions", async () => {
  const bytes = new Uint8Array(readFileSync(`sample-workbooks/${season}`));
  const before = await cells(await FileWorkbook.open(season, bytes));
  const copy = await valuesOnlyCopy(season, bytes);
  const after = await cells(await FileWorkbook.open(season, copy.bytes));
  const ours = before.filter(({ formula }) => formula !== null && repairFormula(formula).calls.length > 0);
  expect(ours.length).toBeGreaterThan(5);
  expect(copy.replaced).toBe(ours.length);
  expect(after.map(({ place, value }) => [place, value])).toEqual(
    before.map(({ place, value }) => [place, value]),
  );
  expect(after.filter(({ formula }) => formula !== null && repairFormula(formula).calls.length > 0)).toEqual(
    [],
  );
  const others = (list: typeof before) =>
    list.filter(({ formula }) => formula !== null && repairFormula(formula).calls.length === 0).length;
  expect(others(after)).toBe(others(before));
});

test("bytes that are no workbook are refused", async () => {
  await expect(valuesOnlyCopy("x.xlsx", new Uint8Array([1, 2, 3]))).rejects.toThrow();
});
