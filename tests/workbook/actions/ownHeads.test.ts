import {
  forgetHeads,
  headsOfFlags,
  keepHeads,
  parseHeads,
  readHeads,
} from "../../../src/workbook/actions/ownHeads";
import { MemoryWorkbook } from "../memory/memoryWorkbook";

const tally = { sheet: "Tally", shape: "cordons", headers: { block: "Where" } } as const;

test("heads are kept in the workbook, one meaning a sheet, and forgotten again", async () => {
  const workbook = new MemoryWorkbook();
  await keepHeads(workbook, tally);
  await keepHeads(workbook, { ...tally, sheet: "Other" });
  await keepHeads(workbook, { ...tally, headers: { block: "Field name" } });
  expect(await readHeads(workbook)).toEqual([
    { ...tally, sheet: "Other" },
    { ...tally, headers: { block: "Field name" } },
  ]);
  expect(headsOfFlags(await workbook.readFlags(""))).toEqual(await readHeads(workbook));
  await forgetHeads(workbook, "Other");
  await forgetHeads(workbook, "Tally");
  expect(await readHeads(workbook)).toEqual([]);
  expect(await workbook.readFlag("columnHeads")).toBeUndefined();
});

test.each([
  { why: "nothing kept", kept: undefined },
  { why: "not JSON", kept: "{" },
  { why: "not a list", kept: "{}" },
  { why: "no sheet", kept: '[{"shape":"cordons","headers":{}}]' },
  { why: "a shape that does not exist", kept: '[{"sheet":"A","shape":"barn","headers":{}}]' },
  { why: "a header that is no text", kept: '[{"sheet":"A","shape":"cordons","headers":{"block":3}}]' },
])("$why counts as nothing kept", ({ kept }) => {
  expect(parseHeads(kept)).toEqual([]);
});
