import { rewriteOwnSheet } from "../../../src/workbook/actions/rewriteOwnSheet";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import { MemoryWorkbook } from "../memory/memoryWorkbook";

const map = (
  vines: readonly number[],
  rows: OwnSheet["rows"],
  words = ["Block", "Row", "Vine"],
): OwnSheet => ({
  sheet: "Gap map",
  title: ["Made today"],
  headers: [words[0], words[1], ...vines.map((vine) => `${words[2]} ${vine}`)],
  about: { thing: [words[0], words[1]] },
  rows,
});

async function withRemarks(first: OwnSheet, column: number): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook({ Cordons: [["Block"]] });
  await rewriteOwnSheet(workbook, first);
  await workbook.writeCells("Gap map", [
    { row: 3, column, value: "To do" },
    { row: 4, column, value: "replant" },
    { row: 5, column, value: "lay a cane" },
  ]);
  return workbook;
}

const valuesOf = async (workbook: MemoryWorkbook) => (await workbook.readSheet("Gap map")).values.slice(2);

test("a map with fewer vines than before carries the remark, and no column of its own", async () => {
  const workbook = await withRemarks(
    map(
      [1, 2, 3],
      [
        ["North", 1, 0.1, 0.2, 0.3],
        ["North", 2, 0.4, 0.5, 0.6],
      ],
    ),
    6,
  );
  const { lost } = await rewriteOwnSheet(
    workbook,
    map(
      [1, 2],
      [
        ["North", 2, 0.4, 0.5],
        ["South", 1, 0, 0],
      ],
    ),
  );
  expect(lost).toEqual(["F4 To do: replant"]);
  expect(await valuesOf(workbook)).toEqual([
    ["Block", "Row", "Vine 1", "Vine 2", "To do"],
    ["North", 2, 0.4, 0.5, "lay a cane"],
    ["South", 1, 0, 0, null],
  ]);
});

test("a sheet that is written again in another language carries the remarks of the rows", async () => {
  const rows: OwnSheet["rows"] = [
    ["North", 1, 0.1],
    ["North", 2, 0.4],
  ];
  const workbook = await withRemarks(map([1], rows), 4);
  const { lost } = await rewriteOwnSheet(workbook, map([1], [...rows].reverse(), ["Bloc", "Rang", "Cep"]));
  expect(lost).toEqual([]);
  expect(await valuesOf(workbook)).toEqual([
    ["Bloc", "Rang", "Cep 1", "To do"],
    ["North", 2, 0.4, "lay a cane"],
    ["North", 1, 0.1, "replant"],
  ]);
});
