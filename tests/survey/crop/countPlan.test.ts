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

  test("five vines are a pilot", () => {
    const five = countPlan(seasonOfSheets(COUNTS.slice(0, 5)), "North Bench", "clusters", 1)!;
    expect(five).toMatchObject({ cvFrom: "pilot", pilot: 5 });
    const bare = countPlan(seasonOfSheets([62, 48, 71, 55, 0]), "North Bench", "clusters", 1)!;
    expect(bare).toMatchObject({ cvFrom: "pilot", pilot: 5 });
  });

  test("12 of 120 listed places are missing", () => {
    const plan = countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 1)!;
    expect(plan.missingShare).toBeCloseTo(0.1, 12);
    expect(countPlan(seasonOfSheets([]), "Creek Side", "clusters", 1)).toMatchObject({
      missingShare: 0,
      bearingVines: 1,
    });
  });

  test("the margin that a person gives goes before that of Settings", () => {
    const vines = (margin?: number) =>
      countPlan(seasonOfSheets(COUNTS), "North Bench", "clusters", 1, undefined, margin)!;
    expect(vines()).toMatchObject({ margin: 0.1 });
    expect(vines(0.2)).toMatchObject({ margin: 0.2 });
    expect(vines(0.2).vines).toBeLessThan(vines().vines);
  });

  const planOf = (rows: readonly (readonly CellValue[])[], more: readonly (readonly CellValue[])[] = []) =>
    countPlan(
      readSeason([areaOf("Vines", rows), ...(more.length > 0 ? [areaOf("Weighed", more)] : [])]),
      "A",
      "clusters",
      7,
    );
  const HEAD = ["Block", "Row", "Vine", "Status", "Clusters"];

  test("rows and vines may stand in any order: the same vines are drawn, and the walk is the same", () => {
    const [head, ...rows] = vinesSheet(COUNTS);
    const shuffled = [...rows].sort(
      (one, other) => Number(other[2]) - Number(one[2]) || Number(other[1]) - Number(one[1]),
    );
    const plan = (sheet: CellValue[][]) =>
      countPlan(readSeason([areaOf("Vines", sheet)]), "North Bench", "clusters", 7)!.walk;
    expect(shuffled).not.toEqual(rows);
    expect(plan([head, ...shuffled])).toEqual(plan([head, ...rows]));
  });

  test("a vine without its number or its status is none to count; one counted twice is one", () => {
    const plan = planOf([
      HEAD,
      ["A", 1, 1, "bearing", 10],
      ["A", 1, 1, "bearing", 10],
      ["A", 1, null, "bearing", 10],
      ["A", null, 2, "bearing", 10],
      ["A", 1, 3, null, 10],
      [null, 1, 4, "bearing", 10],
      ["A", 2, 1, "missing", null],
    ])!;
    // Of the four places that are told one is missing: two rows of vine 1, vine 3 and the missing one.
    expect(plan).toMatchObject({
      bearingVines: 1,
      walk: [{ row: 1, vine: 1 }],
      pilot: 2,
      missingShare: 0.25,
    });
  });

  test("without a column of statuses every vine bears", () => {
    const plan = planOf(
      [1, 2, 3].reduce((rows, vine) => [...rows, ["A", 1, vine, 10]], [
        ["Block", "Row", "Vine", "Clusters"],
      ] as CellValue[][]),
    )!;
    expect(plan).toMatchObject({ bearingVines: 3, missingShare: 0, pilot: 3 });
  });

  test("without a column of what is counted there is no pilot", () => {
    const plan = planOf([
      ["Block", "Row", "Vine", "Status"],
      ["A", 1, 1, "bearing"],
      ["A", 1, 2, "bearing"],
    ])!;
    expect(plan).toMatchObject({ bearingVines: 2, pilot: 0, cvFrom: "setting" });
  });

  test("a list of counted vines beside the register adds their counts and no places", () => {
    const register = [
      HEAD.slice(0, 4),
      ["A", 1, 1, "bearing"],
      ["A", 1, 2, "missing"],
      ["A", 1, 3, "bearing"],
      ["A", 1, 4, "young"],
    ];
    const list = [
      ["Block", "Row", "Vine", "Clusters"],
      ["A", 1, 1, 40],
      ["A", 1, 2, 0],
      ["A", 1, 4, 9],
      ["A", 1, 5, 44],
    ];
    // Vine 5 stands in no register: a list of counts has it bearing. 1 of 5 places is missing.
    expect(planOf(register, list)).toMatchObject({ bearingVines: 3, pilot: 2, missingShare: 0.2 });
  });

  test("a block that the Vines sheet does not list has no plan", () => {
    expect(countPlan(seasonOfSheets(COUNTS), "Schoolhouse", "clusters", 1)).toBeUndefined();
  });
});
