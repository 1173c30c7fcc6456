import { decidedVine, decideSeason } from "../../../src/survey/decide/decideSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { cordonHeads } from "../cordonHeads";

/** Two vines, each with one cordon a side; the last two cells of the first are its diameter and its longest gap. */
function season(first: readonly CellValue[], settings: readonly (readonly CellValue[])[] = []) {
  return readSeason([
    areaOf("Cordons", [
      [...cordonHeads("in"), "Diameter (in)", "Longest gap", "Note"],
      ["North Bench", 1, 1, "left", "A", 1, 40, 10, ...first],
      ["North Bench", 1, 1, "right", "B", 2, 40, 10, 9, 1, 1],
      ["North Bench", 1, 2, "left", "A", 1, 40, 10, 9, 1, 1],
      ["North Bench", 1, 2, "right", "B", 2, 40, 10, 9, 1, 1],
    ]),
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Live trunks"],
      ["North Bench", 1, 1, 1],
      ["North Bench", 1, 2, 2],
    ]),
    areaOf("Settings", [["Setting", "Value"], ...settings]),
  ]);
}

/** Decided after an earlier reading in which the first cordon was written so. */
function decidedAfter(earlier: Parameters<typeof season>, now: Parameters<typeof season>) {
  const before = season(...earlier);
  const known = [...decideSeason(before)];
  const read = season(...now);
  const vines = [...decideSeason(read, { settings: before.settings, vines: known })];
  expect(vines).toEqual([...decideSeason(read)]);
  return { known, vines, kept: vines.map(({ decision }, at) => decision === known[at].decision) };
}

describe("a season decided again after one cell", () => {
  test.each<[string, CellValue[], CellValue[], boolean]>([
    ["nothing changed", [9, 1, 1], [9, 1, 1], true],
    ["only a remark was written", [9, 1, 1], [9, 1, 1, "split"], true],
    ["a count is another", [9, 1, 1], [8, 1, 1], false],
    ["a cell was filled in", [9, "", 1], [9, 1, 1], false],
    ["a cell was emptied", [9, 1, 1], [9, 1, ""], false],
    ["a figure moved to another column", [9, 1, ""], [9, "", 1], false],
  ])("%s: the vine keeps its answer only where what decides it is the same", (_what, earlier, now, same) => {
    expect(decidedAfter([earlier], [now]).kept).toEqual([same, true]);
  });

  test("another figure of Settings decides every vine anew", () => {
    const counts = [9, 1, 1];
    expect(decidedAfter([counts], [counts, [["Close call", 0.1]]]).kept).toEqual([false, false]);
    expect(decidedAfter([counts, [["Close call", 0.1]]], [counts, [["Close call", 0.1]]]).kept).toEqual([
      true,
      true,
    ]);
  });

  test("a vine that keeps its answer stands where it is read now, with its plan and its trunks", () => {
    const { known, vines } = decidedAfter([[9, 1, 1]], [[9, 1, 1]]);
    expect(vines[0].plan).toBe(known[0].plan);
    expect(vines[0].rows[0].table).not.toBe(known[0].rows[0].table);
    // vine 1 has one live trunk of the two that are wanted, vine 2 both
    expect(vines.map(({ renewsTrunk }) => renewsTrunk)).toEqual([true, false]);
  });

  test("a vine more than before is decided, and without an earlier reading every vine", () => {
    const read = season([9, 1, 1]);
    const [first] = decideSeason(read);
    const vines = [...decideSeason(read, { settings: read.settings, vines: [first] })];
    expect(vines.map(({ vine }) => vine)).toEqual([1, 2]);
    expect(vines[0].decision).toBe(first.decision);
    expect(vines[1].decision.cordons.map(({ verdict }) => verdict)).toEqual(["stays", "stays"]);
  });
});

test("one vine by itself is answered as in its season", () => {
  const read = season([9, 1, 1]);
  const vines = [...decideSeason(read)];
  expect(vines.map((vine) => decidedVine(vine, read.settings))).toEqual(vines);
  expect(vines[0].plan.keeps.map(({ cordon }) => cordon)).toEqual(["A", "B"]);
});
