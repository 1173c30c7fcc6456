import tReference from "@stdlib/stats-base-dists-t-quantile";
import jstat from "jstat";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { countPlan } from "../../../src/survey/crop/countPlan";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";

const COUNTS = [62, 48, 71, 55, 90, 66, 39, 58];

/** Four rows of thirty vines: each tenth is missing, each seventh young, the first eight bearing ones counted. */
function vinesSheet(counted: readonly number[]): CellValue[][] {
  const rows: CellValue[][] = [["Block", "Row", "Vine", "Status", "Clusters"]];
  let given = 0;
  for (let row = 1; row <= 4; row++)
    for (let vine = 1; vine <= 30; vine++) {
      const status = vine % 10 === 0 ? "missing" : vine % 7 === 0 ? "young" : "bearing";
      rows.push([
        "North Bench",
        row,
        vine,
        status,
        status === "bearing" && given < counted.length ? counted[given++] : null,
      ]);
    }
  return [...rows, ["Creek Side", 1, 1, "bearing", null]];
}
const seasonOfSheets = (counted: readonly number[]) => readSeason([areaOf("Vines", vinesSheet(counted))]);

describe("a plan for counting", () => {
  test("bearing vines only, once each, in the order of the walk; the same seed draws the same", () => {
    const plan = countPlan(seasonOfSheets(COUNTS), "north bench", "clusters", 7)!;
    expect(plan.bearingVines).toBe(4 * 23);
    expect(plan.walk).toHaveLength(plan.vines);
    expect(plan.walk.filter(({ vine }) => vine % 10 === 0 || vine % 7 === 0)).toEqual([]);
    expect(plan.walk.map(({ row }) => row)).toEqual([...plan.walk.map(({ row }) => row)].sort());
    expect(countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 7)!.walk).toEqual(plan.walk);
    expect(countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 8)!.walk).not.toEqual(plan.walk);
  });

  test("the pilot's spread replaces the setting's from five vines on", () => {
    const pilot = countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 1)!;
    expect(pilot.cvFrom).toBe("pilot");
    expect(pilot.cv).toBeCloseTo(jstat.stdev(COUNTS, true) / jstat.mean(COUNTS), 12);
    const few = countPlan(seasonOfSheets(COUNTS.slice(0, 4)), "North Bench", "clusters", 1)!;
    expect(few).toMatchObject({ cvFrom: "setting", cv: 0.43, pilot: 4 });
  });

  test("so many vines, and not one fewer, keep the margin by the reference quantile", () => {
    const { vines, cv, margin, confidence } = countPlan(
      seasonOfSheets(COUNTS),
      "North Bench",
      "clusters",
      1,
    )!;
    const error = (n: number) => tReference((1 + confidence) / 2, n - 1) * cv * Math.sqrt((1 - n / 92) / n);
    expect(error(vines)).toBeLessThanOrEqual(margin);
    expect(error(vines - 1)).toBeGreaterThan(margin);
  });

  test("a person may want another number; the handbooks stand beside it", () => {
    const plan = countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 1, 12)!;
    expect(plan.walk).toHaveLength(12);
    expect(plan.handbooks.map(({ source }) => source)).toEqual(["wsu2006", "iowa2011", "iowa2013"]);
  });

  test("a block that the Vines sheet does not list has no plan", () => {
    expect(countPlan(seasonOfSheets(COUNTS), "Schoolhouse", "clusters", 1)).toBeUndefined();
  });
});
