import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { rowDrawing } from "../../../../src/survey/decide/picture/rowDrawing";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";
import { cordonHeads } from "../../cordonHeads";

const CORDON_HEADS = [...cordonHeads("m"), "Longest gap"];

function row(blockSpacing: CellValue, cordons: readonly CellValue[][], vines: readonly CellValue[][]) {
  const season = readSeason([
    areaOf("Blocks", [
      ["Block", "Row spacing (m)", "Vine spacing (m)"],
      ["Bench", 2.5, blockSpacing],
    ]),
    areaOf("Cordons", [CORDON_HEADS, ...cordons]),
    areaOf("Vines", [["Block", "Row", "Vine", "Status"], ...vines]),
  ]);
  return rowDrawing(season, [...decideSeason(season)], "Bench", 2);
}

describe("a row as it stands on the wire", () => {
  const cordon = (vine: CellValue, length = 0.9) => ["Bench", 2, vine, "left", "A", 1, length, 6, 4, 2];

  test("a place for every vine number, 2 m apart, with what stands, is missing or was not counted", () => {
    const { places, spacing } = row(
      2,
      [cordon(1), cordon(4), ["Bench", 3, 9, "left", "A", 1, 0.9, 6, 4, 2]],
      [
        ["Bench", 2, 2, "missing"],
        ["Bench", 2, 5, "bearing"],
      ],
    );
    expect(spacing).toBe(2);
    expect(
      places.map(({ vine, at, missing, drawing }) => [vine, at, missing, drawing !== undefined]),
    ).toEqual([
      [1, 0, false, true],
      [2, 2, true, false],
      [3, 4, false, false],
      [4, 6, false, true],
      [5, 8, false, false],
    ]);
    // 6 positions on 0.9 m are 0.15 m each; a gap of 2 in their middle begins after (6 - 2) / 2 = 2 of them
    expect(places[0].drawing?.cordons[0].gap).toEqual({
      from: expect.closeTo(0.3, 9),
      to: expect.closeTo(0.6, 9),
    });
  });

  test("12a and 12b stand on thirds of the way from 12 to 13", () => {
    const { places } = row(3, [cordon("12a"), cordon("12b"), cordon(13)], []);
    const at = new Map(places.map(({ vine, at: metres }) => [Math.round(vine * 64) / 64, metres]));
    expect(places[11]).toMatchObject({ vine: 12, at: 33 });
    expect([...at.values()].slice(11)).toEqual([33, 34, 35, 36]);
  });

  test("after the last number stands nothing, and before 12a the places up to 12 do", () => {
    expect(row(2, [cordon("12a")], []).places.map(({ vine }) => Math.floor(vine))).toEqual([
      ...[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 12],
    ]);
    expect(row(2, [cordon(2)], []).places.map(({ vine }) => vine)).toEqual([1, 2]);
  });

  test("vines with labels are no count of places: A2 and A4 stand by themselves, 4 m apart", () => {
    const { places } = row(2, [cordon("A2"), cordon("A4")], []);
    expect(places).toHaveLength(2);
    expect(places[1].at - places[0].at).toBeCloseTo(4, 9);
  });

  test("a row of the same number in another block, and another row of this one, stand elsewhere", () => {
    const { places } = row(
      2,
      [cordon(1), ["Slope", 2, 7, "left", "A", 1, 0.9, 6, 4, 2]],
      [
        ["Bench", 2, 2, "bearing"],
        ["Slope", 2, 1, "missing"],
        ["Slope", 2, 9, "missing"],
        ["Bench", 3, 8, "missing"],
      ],
    );
    expect(places.map(({ vine, missing }) => [vine, missing])).toEqual([
      [1, false],
      [2, false],
    ]);
    expect(places[1]).not.toHaveProperty("drawing");
  });

  test("short cordons have half a metre of room on each side", () => {
    expect(row(null, [cordon(1, 0.3)], []).spacing).toBe(1);
  });

  test("without a spacing a vine has room for the longest cordon on both sides: 2 x 1.2 m", () => {
    expect(row(null, [cordon(1), cordon(2, 1.2)], []).spacing).toBeCloseTo(2.4, 9);
  });
});
