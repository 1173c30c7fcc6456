import { allFindings } from "../../../src/survey/checks/checkSeason";
import { countsByCounter, countsByRow } from "../../../src/survey/checks/counts";
import { readSeason } from "../../../src/survey/reading/readSeason";
import {
  putAside,
  readSetAside,
  sortFindings,
  takeBack,
  writeSetAside,
} from "../../../src/survey/checks/setAside";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADERS = [...CORDON_HEADS, "Counted by"];
const row = (vine: number, spurs: CellValue, by = "AB"): CellValue[] => [
  "North Bench",
  3,
  vine,
  "left",
  "B",
  1,
  3,
  8,
  spurs,
  by,
];
const seasonOfSheets = (...rows: CellValue[][]) => readSeason([areaOf("Cordons", [HEADERS, ...rows])]);
const check = (...rows: CellValue[][]) => allFindings(seasonOfSheets(...rows));
const entry = { reason: "double position, seen", by: "MK", on: "2026-02-03" };

describe("findings that a person sets aside", () => {
  const findings = check(row(1, 7), row(2, 9));
  const entries = putAside([], findings[0], entry)!;

  test("stay aside when the sheet is sorted or rows are added", () => {
    const later = check(row(5, 7), row(2, 9), row(1, 7));
    const { open, aside, gone } = sortFindings(later, entries);
    expect([open.length, gone.length]).toEqual([0, 0]);
    expect(aside[0].entry).toMatchObject(entry);
    expect(aside[0].finding.row).toBe(3);
  });

  test("come back when the cell changes, and the old entry is told as gone", () => {
    const { open, aside, gone } = sortFindings(check(row(1, 7), row(2, 11)), entries);
    expect([open.length, aside.length, gone.length]).toEqual([1, 0, 1]);
  });

  test("another vine's finding of the same kind stays open", () => {
    expect(sortFindings(check(row(2, 9), row(4, 9)), entries).open.map((f) => f.facts["vine"])).toEqual([4]);
  });

  test.each([
    ["", "MK"],
    ["seen", "  "],
  ])("need a reason and a name (%j, %j)", (reason, by) => {
    expect(putAside([], findings[0], { reason, by, on: "2026-02-03" })).toBeUndefined();
  });

  test("are kept as a text, and nothing else is read from it", () => {
    expect(readSetAside(writeSetAside(entries))).toEqual(entries);
    for (const text of [undefined, "", "{", "[1]", '[["a","b"]]', "null"])
      expect(readSetAside(text)).toEqual([]);
  });

  test("can be taken back", () => {
    expect(takeBack(entries, findings[0])).toEqual([]);
  });
});

test("findings are counted by row and by counter, people without one too", () => {
  const season = seasonOfSheets(row(1, 9), row(2, 9), row(3, 7, "MK"), row(4, 7, "ab"));
  const findings = allFindings(season);
  expect(countsByRow(findings)).toEqual([{ block: "North Bench", row: 3, wrong: 2, ask: 0, note: 0 }]);
  expect(countsByCounter(findings, season)).toEqual([
    {
      counter: "AB",
      counted: 3,
      wrong: 2,
      ask: 0,
      note: 0,
      perHundred: 200 / 3,
    },
    { counter: "MK", counted: 1, wrong: 0, ask: 0, note: 0, perHundred: 0 },
  ]);
});
