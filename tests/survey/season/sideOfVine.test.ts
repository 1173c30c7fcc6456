import { allFindings } from "../../../src/survey/checks/checkSeason";
import { vinesToDecide } from "../../../src/survey/decide/vinesToDecide";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";

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
