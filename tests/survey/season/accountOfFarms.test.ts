import { leavesOpen, seasonAccount } from "../../../src/survey/season/seasonAccount";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets } from "../crop/seasonOfSheets";

const cordons = (day: CellValue, ...spurs: readonly CellValue[]) =>
  seasonOfSheets({
    cordons: [
      [...CORDON_HEADS, "Date"],
      ...spurs.map((count, at) => ["A", 1, at + 1, "left", "A", 1, 3, 9, count, day]),
    ],
    settings: [
      ["Setting", "Value"],
      ["Usual budbreak", 0.9],
    ],
  });
/** 15 January 2026 and a year before. */
const [NOW, BEFORE] = [46037, 45672];

describe("the account of several farms", () => {
  test("adds up rows and those used; Settings are no counts", () => {
    const account = seasonAccount([cordons(NOW, 8, 7, null), cordons(BEFORE, 6)]);
    expect(account.read).toEqual({
      files: 1,
      sheets: 1,
      tables: 2,
      columns: 20,
      rows: 4,
      winters: [2025, 2026],
    });
    expect(account.used).toMatchObject({
      rows: 4,
      used: 3,
      leftOut: [{ column: "liveSpurs", reason: "blank", rows: 1 }],
    });
    expect(account.open).toBe(0);
  });

  test("is that of the one where there is one; a winter that nothing tells is none", () => {
    const farm = cordons(null, 8, 7);
    expect(seasonAccount(farm).used).toBe(farm.used.account());
    expect(seasonAccount(farm).read.winters).toEqual([]);
  });

  test("names the files of a folder that were passed over, by reason", () => {
    const passedOver = [
      { file: "a.pdf", reason: "otherFormat" },
      { file: "b (1).csv", reason: "copy" },
      { file: "c.pdf", reason: "otherFormat" },
    ] as const;
    expect(seasonAccount(cordons(NOW, 8), { read: 2, passedOver })).toMatchObject({
      read: { files: 2 },
      notRead: [
        { reason: "otherFormat", names: ["a.pdf", "c.pdf"], rows: 0 },
        { reason: "copy", names: ["b (1).csv"], rows: 0 },
      ],
    });
  });
});

test("a season leaves something open while vines are still to be counted, not where a cell is to be counted again", () => {
  const laidOut = (...rows: readonly (readonly CellValue[])[]) =>
    seasonOfSheets({
      cordons: [[...CORDON_HEADS], ...rows.map((counts, at) => ["A", 1, at + 1, "left", "A", ...counts])],
    });
  const counted = [1, 3, 9, 8];
  expect(leavesOpen(laidOut(counted, counted))).toBe(false);
  expect(leavesOpen(laidOut(counted, [1, 3, 9, null]))).toBe(false);
  expect(leavesOpen(laidOut(counted, [null, null, null, null], [1, 3, 9, null]))).toBe(true);
});
