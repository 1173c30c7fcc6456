import { answersOfSheet } from "../../../src/survey/reading/keptAnswers";
import type { ReadingAnswers } from "../../../src/survey/reading/readingAccount";
import { keepAnswers, keepHeads, putAnswersBack } from "../../../src/workbook/actions/keepAnswers";
import { MemoryWorkbook } from "../memory/memoryWorkbook";

const heads = (sheet: string, columns: Readonly<Record<string, string>>): ReadingAnswers => ({
  heads: [{ sheet, shape: "cordons", columns }],
});
const kept = async (workbook: MemoryWorkbook) => {
  const { heads: told = [], units, leaveOut } = answersOfSheet(await workbook.readSheet("Answers"));
  return {
    heads: told.map(({ sheet, columns }) => [sheet, ...Object.entries(columns)[0]]).sort(),
    units,
    leaveOut,
  };
};

test("heads and units are kept in place of what was kept of the same sheet, and forgotten again", async () => {
  const workbook = new MemoryWorkbook();
  const length = (sheet: string, unit: string) => ({ sheet, column: "length", unit });
  await keepAnswers(workbook, { leaveOut: ["Sprays"], units: [length("Pond", "in")] }, "en");
  await keepHeads(
    workbook,
    "Tally",
    { ...heads("Tally", { Where: "block" }), units: [length("Tally", "ft")] },
    "en",
  );
  await keepHeads(workbook, "Pond", heads("Pond", { Bit: "block" }), "fr");
  const { before } = await keepHeads(
    workbook,
    "Tally",
    { ...heads("Tally", { Field: "block" }), units: [length("Tally", "cm")] },
    "en",
  );
  const expected = {
    heads: [
      ["Pond", "Bit", "block"],
      ["Tally", "Field", "block"],
    ],
    units: [length("Tally", "cm")],
    leaveOut: ["Sprays"],
  };
  expect(await kept(workbook)).toEqual(expected);
  await putAnswersBack(workbook, before, "en");
  expect((await kept(workbook)).heads).toContainEqual(["Tally", "Where", "block"]);
  await keepHeads(workbook, "Tally", {}, "en");
  expect((await kept(workbook)).heads).toEqual([["Pond", "Bit", "block"]]);
});

test("the sheet of answers goes with the last of them, and is not made for none", async () => {
  const workbook = new MemoryWorkbook();
  await keepHeads(workbook, "Tally", {}, "en");
  expect(await workbook.sheetNames()).not.toContain("Answers");
  await keepHeads(workbook, "Tally", heads("Tally", { Where: "block" }), "en");
  expect(await workbook.sheetNames()).toContain("Answers");
  await keepHeads(workbook, "Tally", {}, "en");
  expect(await workbook.sheetNames()).not.toContain("Answers");
});
