import { allFindings } from "../../../src/survey/checks/checkSeason";
import { vinesToDecide } from "../../../src/survey/decide/vinesToDecide";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { metres } from "../../../src/domain/units";
import { sideOfVine } from "../../../src/survey/season/sideOfVine";
import { defaultSettings, type SettingValues } from "../../../src/survey/settings/settings";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { seasonOfSheets } from "../crop/seasonOfSheets";

/** A vine of one cordon on a spacing of 8 ft, with 4 in left between neighbours: 7.67 ft of wire for its only side. */
const season = (cordons: number, length: number) =>
  readSeason([
    areaOf("Settings", [
      ["Setting", "Value", "Unit"],
      ["Cordons on a vine", cordons, ""],
      ["Space between neighbouring cordons", 4, "in"],
    ]),
    areaOf("Blocks", [
      ["Block", "Training system", "Vine spacing (ft)"],
      ["North Bench", "high wire", 8],
    ]),
    areaOf("Cordons", [
      ["Block", "Row", "Vine", "Side", "Cordon", "Length (ft)"],
      ["North Bench", 1, 1, "left", "A", length],
    ]),
  ]);

const codes = (cordons: number, length: number) =>
  allFindings(season(cordons, length), { only: ["vineSpace"] }).map(({ code }) => code);

describe("the wire of a side is the same for the checks and for the decision", () => {
  test("one cordon on 8 ft: 7.6 ft fill its wire of 7.67 ft and are not too long", () => {
    expect(codes(1, 7.6)).toEqual([]);
    // (8 ft - 4 in) x 0.3048 m
    const [{ toDecide }] = vinesToDecide(season(1, 7.6));
    expect(toDecide.sideLength).toBeCloseTo((8 - 4 / 12) * 0.3048, 10);
  });

  test("one cordon on 8 ft: 11 ft is more than 1.35 x 8 ft, 3 ft less than 0.4 x 8 ft", () => {
    expect(codes(1, 11)).toEqual(["cordonTooLong"]);
    expect(codes(1, 3)).toEqual(["cordonTooShort"]);
  });

  test("two cordons on 8 ft: 7.6 ft is more than 1.35 x 4 ft, and the wire is (8 ft - 4 in) / 2", () => {
    expect(codes(2, 7.6)).toEqual(["cordonTooLong"]);
    const [{ toDecide }] = vinesToDecide(season(2, 7.6));
    expect(toDecide.sideLength).toBeCloseTo(((8 - 4 / 12) / 2) * 0.3048, 10);
  });
});

describe("what a cordon on one side of a vine has for itself", () => {
  const figures = (rows: readonly (readonly CellValue[])[], settings: Partial<SettingValues>, block = 0) => {
    const read = seasonOfSheets({
      blocks: [["Block", "Training system", "Vine spacing (m)"], ...rows],
    });
    return sideOfVine(read.places, block, { ...defaultSettings(), ...settings });
  };
  const free = (space: number) => ({ spaceBetweenNeighbouringCordons: metres(space) });

  // On 2.4 m with 0.1 m left free: 2.3 m of wire, for each of two 1.15 m of it and 1.2 m of the spacing.
  test.each<[string, CellValue[], Partial<SettingValues>, ReturnType<typeof sideOfVine>]>([
    [
      "two cordons",
      ["high wire", 2.4],
      free(0.1),
      { training: "highWire", space: metres(1.2), wire: metres(1.15) },
    ],
    [
      "one cordon",
      ["high wire", 2.4],
      { ...free(0.1), cordonsOnAVine: 1 },
      { training: "highWire", space: metres(2.4), wire: metres(2.3) },
    ],
    [
      "a farm with more vines of one",
      ["high wire", 2.4],
      { ...free(0), cordonsOnAVine: 1.4 },
      { training: "highWire", space: metres(2.4), wire: metres(2.4) },
    ],
    [
      "a farm with as many of two",
      ["high wire", 2.4],
      { ...free(0), cordonsOnAVine: 1.5 },
      { training: "highWire", space: metres(1.2), wire: metres(1.2) },
    ],
    [
      "a divided canopy, whose cordons do not share a wire",
      ["divided canopy", 2.4],
      free(0.1),
      { training: "divided", space: metres(2.4), wire: undefined },
    ],
    [
      "a system that nobody wrote down",
      [null, 2.4],
      free(0.1),
      { training: undefined, space: metres(1.2), wire: metres(1.15) },
    ],
    [
      "a spacing that nobody wrote down",
      ["high wire", null],
      free(0.1),
      { training: "highWire", space: undefined, wire: undefined },
    ],
    [
      "a spacing that cannot be true",
      ["divided canopy", -2],
      free(0.1),
      { training: "divided", space: undefined, wire: undefined },
    ],
    [
      "no wire left between neighbours",
      ["upright shoots", 2],
      free(2),
      { training: "upright", space: metres(1), wire: undefined },
    ],
  ])("%s", (_, cells, settings, { training, space, wire }) => {
    const side = figures([["North Bench", ...cells]], settings);
    expect([side.training, side.space !== undefined, side.wire !== undefined]).toEqual([
      training,
      space !== undefined,
      wire !== undefined,
    ]);
    expect(side.space ?? 0).toBeCloseTo(space ?? 0, 12);
    expect(side.wire ?? 0).toBeCloseTo(wire ?? 0, 12);
  });

  test("a block that the Blocks sheet does not have has nothing", () => {
    expect(figures([["North Bench", "high wire", 2.4]], {}, 99)).toEqual({
      training: undefined,
      space: undefined,
      wire: undefined,
    });
  });
});
