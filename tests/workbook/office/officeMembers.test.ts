import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { EXCEL_FLOOR } from "../../../src/workbook/excel/excelFloor";
import { officeMembersUsed, type OfficeMember } from "./officeMembers";

interface Row {
  readonly member: string;
  readonly sets: string;
  readonly page: string;
  readonly tests: readonly string[];
}

const NO_SET = "none named";
const rows: readonly Row[] = readFileSync(path.join(__dirname, "officeMembers.md"), "utf8")
  .split("\n")
  .filter((line) => /^\| [A-Z]\w*\.\w+ \|/.test(line))
  .map((line) => {
    const [member, sets, page, tests] = line
      .slice(1, -1)
      .split("|")
      .map((cell) => cell.trim());
    return { member, sets, page, tests: tests.split(", ") };
  });

let used: readonly OfficeMember[];
beforeAll(() => {
  used = officeMembersUsed();
}, 120_000);

test("the table has a row for every member that src uses, and no other, in their order", () => {
  expect(rows.map(({ member }) => member)).toEqual(used.map(({ name }) => name));
});

test("each row names the requirement set that Microsoft's types name", () => {
  const named = Object.fromEntries(used.map(({ name, sets }) => [name, sets || NO_SET]));
  expect(Object.fromEntries(rows.map(({ member, sets }) => [member, sets]))).toEqual(named);
});

/**
 * Above what Excel must offer, and only used where isSetSupported says so: the stand-in for Excel 2021 refuses them, and
 * workbook/excel/personsRemarks runs there too.
 */
const ASKED_FOR = /^(Note|NoteCollection)\.|^Worksheet\.notes$/;

test("every member is within what Excel must offer", () => {
  const floor = EXCEL_FLOOR.find(({ set }) => set === "ExcelApi")!.version;
  const minor = (version: string) => Number(version.split(".")[1]);
  for (const { name, sets } of used.filter((member) => !ASKED_FOR.test(member.name)))
    for (const [, versions] of sets.matchAll(/ExcelApi ([\d., ]+)/g))
      for (const version of versions.split(", "))
        expect([name, minor(version) <= minor(floor)]).toEqual([name, true]);
});

test("each row points to the page of its class, and to tests that are there", () => {
  for (const { member, page, tests } of rows) {
    const [owner, name] = member.toLowerCase().split(".");
    expect(page).toMatch(/^javascript\/api\/(excel|office|office-runtime)\/|^https:/);
    expect([member, page.includes(`.${owner}`)]).toEqual([member, true]);
    const [, part] = page.split("#");
    if (part !== undefined) expect(part).toBe(`excel-excel-${owner}-${name}-member`);
    for (const test of tests)
      expect([member, existsSync(path.join("tests", `${test}.test.ts`))]).toEqual([member, true]);
  }
});
