import { allFindings } from "../../../src/survey/checks/checkSeason";
import { countsByCounter, countsByRow } from "../../../src/survey/checks/counts";
import { readSeason } from "../../../src/survey/reading/readSeason";
import {
  findingIdentity,
  putAside,
  readSetAside,
  sortFindings,
  takeBack,
  writeSetAside,
} from "../../../src/survey/checks/setAside";
import type { Finding, Severity } from "../../../src/survey/checks/finding";
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

/** The finding of vine 2 and its entry. */
const setVine2Aside = () => {
  const findings = check(row(1, 7), row(2, 9));
  return { findings, entries: putAside([], findings[0], entry)! };
};

describe("findings that a person sets aside", () => {
  test("stay aside when the sheet is sorted or rows are added", () => {
    const later = check(row(5, 7), row(2, 9), row(1, 7));
    const { open, aside, gone } = sortFindings(later, setVine2Aside().entries);
    expect([open.length, gone.length]).toEqual([0, 0]);
    expect(aside[0].entry).toMatchObject(entry);
    expect(aside[0].finding.row).toBe(3);
  });

  test("come back when the cell changes, and the old entry is told as gone", () => {
    const { open, aside, gone } = sortFindings(check(row(1, 7), row(2, 11)), setVine2Aside().entries);
    expect([open.length, aside.length, gone.length]).toEqual([1, 0, 1]);
  });

  test("another vine's finding of the same kind stays open", () => {
    const { open } = sortFindings(check(row(2, 9), row(4, 9)), setVine2Aside().entries);
    expect(open.map((f) => f.facts["vine"])).toEqual([4]);
  });

  test("without a vine are known by their row of the sheet, with one by the vine alone", () => {
    const { findings } = setVine2Aside();
    const total = { ...findings[0], facts: { total: 5 } };
    expect(findingIdentity({ ...total, row: 9 })).not.toBe(findingIdentity(total));
    for (const place of [
      { block: "North Bench" },
      { row: 1 },
      { vine: 1 },
      { cordon: "B" },
      { side: "left" },
    ] as Finding["facts"][])
      expect(findingIdentity({ ...total, row: 9, facts: place })).toBe(
        findingIdentity({ ...total, facts: place }),
      );
    expect(findingIdentity({ ...total, facts: { vine: 2 } })).not.toBe(
      findingIdentity({ ...total, facts: { row: 2 } }),
    );
  });

  test.each([
    ["", "MK"],
    [" ", "MK"],
    ["seen", "  "],
    ["seen", ""],
  ])("need a reason and a name (%j, %j)", (reason, by) => {
    expect(putAside([], setVine2Aside().findings[0], { reason, by, on: "2026-02-03" })).toBeUndefined();
  });

  test("have one entry each, the latest, with reason and name as they were meant", () => {
    const { entries } = setVine2Aside();
    const [other, first] = check(row(1, 9), row(2, 9));
    const both = putAside(entries, other, { reason: " seen ", by: " AB ", on: "2026-02-04" })!;
    expect(both.map(({ reason, by, on }) => [reason, by, on])).toEqual([
      ["double position, seen", "MK", "2026-02-03"],
      ["seen", "AB", "2026-02-04"],
    ]);
    const again = putAside(both, first, { reason: "counted again", by: "MK", on: "2026-02-05" })!;
    expect(again.map(({ reason }) => reason)).toEqual(["seen", "counted again"]);
  });

  test("are kept as a text, and nothing else is read from it", () => {
    const { entries } = setVine2Aside();
    expect(readSetAside(writeSetAside(entries))).toEqual(entries);
    for (const text of [undefined, "", "{", "[1]", '[["a","b"]]', "null"])
      expect(readSetAside(text)).toEqual([]);
  });

  test("can be taken back, one at a time", () => {
    const { findings, entries } = setVine2Aside();
    expect(takeBack(entries, findings[0])).toEqual([]);
    const [other] = check(row(1, 9));
    const both = putAside(entries, other, entry)!;
    expect(takeBack(both, findings[0])).toEqual([both[1]]);
  });
});

test("findings are counted by row and by counter, people without one too", () => {
  const season = seasonOfSheets(row(1, 9), row(2, 9), row(3, 7, "MK"), row(4, 7, "ab"));
  const findings = allFindings(season);
  expect(countsByRow(findings)).toEqual([{ block: "North Bench", row: 3, wrong: 2, ask: 0, note: 0 }]);
  expect(countsByCounter(findings, season)).toEqual([
    { counter: "AB", counted: 3, wrong: 2, ask: 0, note: 0, perHundred: 200 / 3 },
    { counter: "MK", counted: 1, wrong: 0, ask: 0, note: 0, perHundred: 0 },
  ]);
});

const told = (severity: Severity, facts: Finding["facts"]): Finding => ({
  code: "spursAbovePositions",
  severity,
  sheet: "Cordons",
  row: 2,
  columnNumber: 1,
  column: "Live spurs",
  facts,
});

test("findings by row stand in the order of blocks and of places in them, however the block is written", () => {
  const findings = [
    told("ask", { block: "Creek", row: 12 }),
    told("wrong", { block: "Creek", row: "12a" }),
    told("note", { block: "Creek", row: 13 }),
    told("wrong", { block: "Creek", row: 2 }),
    told("ask", { block: "Bench", row: 20 }),
    told("wrong", { block: "creek", row: 12 }),
    told("wrong", { block: "Creek" }),
    told("wrong", { row: 12 }),
  ];
  for (const order of [findings, [...findings.slice(0, 5).reverse(), ...findings.slice(5)]])
    expect(
      countsByRow(order).map(({ block, row, wrong, ask, note }) => [block, row, wrong, ask, note]),
    ).toEqual([
      ["Bench", 20, 0, 1, 0],
      ["Creek", 2, 1, 0, 0],
      ["Creek", 12, 1, 1, 0],
      ["Creek", "12a", 1, 0, 0],
      ["Creek", 13, 0, 0, 1],
    ]);
});

test("findings by counter stand by how many there are on a hundred rows, then by name; rows without a name are nobody's", () => {
  const season = seasonOfSheets(row(1, 7, "MK"), row(2, 7, "AB"), row(3, 7, "RS"), row(4, 7, "RS"), [
    ...row(5, 7).slice(0, 9),
    null,
  ]);
  const findings = [
    told("ask", { countedBy: "RS" }),
    told("wrong", { countedBy: "RS" }),
    told("note", { countedBy: "RS" }),
    told("wrong", { countedBy: "rs" }),
    told("wrong", { countedBy: "MK" }),
    told("note", { countedBy: "AB" }),
    told("wrong", { countedBy: "Somebody" }),
    told("wrong", {}),
  ];
  // RS: 3 findings on 2 rows, notes left out; MK one on one; Somebody counted no row.
  expect(
    countsByCounter(findings, season).map(({ counter, counted, perHundred }) => [
      counter,
      counted,
      perHundred,
    ]),
  ).toEqual([
    ["RS", 2, 150],
    ["MK", 1, 100],
    ["AB", 1, 0],
    ["Somebody", 0, 0],
  ]);
});
