import { crewCalendar, workPlan } from "../../../../src/survey/decide/plan/workPlan";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { defaultSettings } from "../../../../src/survey/settings/settings";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";
import { CORDON_HEADS } from "../../cordonHeads";

type Rows = readonly (readonly CellValue[])[];

const seasonOf = (sheets: Readonly<Record<string, Rows>>, settings: Rows = []) =>
  readSeason([
    ...Object.entries(sheets).map(([name, rows]) => areaOf(name, rows)),
    areaOf("Settings", [["Setting", "Value"], ...settings]),
  ]);
const VINES = ["Block", "Row", "Vine", "Status", "Pruned on"];
const DONE = 46050;

// 46055 is Monday 2 February 2026, the first workday from the default start on, 46127 Wednesday 15 April 2026 and 46162
// Wednesday 20 May 2026, the default starts of the second pass and of thinning.
describe("rows day by day", () => {
  // Row 1 has its two vines pruned, row 2 and row 10 none; one person, an hour a day, an hour a vine, half for a second pass.
  const low = (settings: Rows, remove = 0) => {
    const season = seasonOf(
      {
        Vines: [
          VINES,
          ...[10, 2, 1].flatMap((row) =>
            [1, 2].map((vine) => ["Low", row, vine, "bearing", row === 1 ? DONE : ""]),
          ),
        ],
      },
      [
        ["Minutes a vine, pruning", 60],
        ["Minutes a vine, shoot thinning", 30],
        ["Crew", 1],
        ["Hours a day", 1],
        ["Double pruning: time of the second pass", 0.5],
        ...settings,
      ],
    );
    return workPlan(season, new Map([[season.words.codeOf("Low"), { vines: 6, remove }]]));
  };
  const days = ({ weeks }: ReturnType<typeof workPlan>) =>
    weeks.flat().flatMap(({ day, parts }) => parts.map(({ pass, hours, rows }) => [day, pass, hours, rows]));
  const row = (number: number) => ({ first: number, last: number });

  test("rows are pruned in their order, a day each vine, and those that are done are passed over", () => {
    expect(days(low([]))).toEqual([
      [46055, "only", 1, row(2)],
      [46056, "only", 1, row(2)],
      [46057, "only", 1, row(10)],
      [46058, "only", 1, row(10)],
    ]);
  });

  test("a second pass goes over every row again, also over those whose first pass was done before", () => {
    expect(days(low([["Double pruning", "low"]])).slice(4)).toEqual([
      [46127, "second", 1, row(1)],
      [46128, "second", 1, row(2)],
      [46129, "second", 1, row(10)],
    ]);
  });

  test("so does the thinning of shoots", () => {
    expect(days(low([], 3)).slice(4)).toEqual([
      [46162, "thinning", 1, row(1)],
      [46163, "thinning", 1, row(2)],
      [46164, "thinning", 1, row(10)],
    ]);
  });

  test("no shoots to remove is no work", () => {
    expect(days(low([], 0))).toHaveLength(4);
  });

  test("vines that no other sheet lists are those with a row of cordons, each once", () => {
    const rows = (block: string, ...vines: number[]) =>
      vines.flatMap((vine) =>
        ["left", "right"].map((side) => [block, 1, vine, side, side === "left" ? "A" : "B"]),
      );
    const plan = workPlan(
      seasonOf({
        Cordons: [
          CORDON_HEADS,
          ...rows("Low", 1, 2, 3),
          ...rows("Gone", 1),
          ...rows("High", 1, 2),
          ...rows("Far", 1),
        ],
        // of High one vine is listed, of Far a number; the vine of Gone is missing
        Vines: [VINES, ["High", 1, 1, "bearing", ""], ["Gone", 1, 1, "missing", ""]],
        Blocks: [
          ["Block", "Vines", "Row spacing (ft)", "Vine spacing (ft)"],
          ["Far", 40, 9, 8],
        ],
      }),
      new Map(),
    );
    expect(plan.passes.map(({ block, vines }) => `${block} ${vines}`).sort()).toEqual([
      "Far 40",
      "High 1",
      "Low 3",
    ]);
  });

  test("a vine counts as done once, however often its block is pruned", () => {
    // 2 of 6 vines
    expect(low([]).doneShare).toBeCloseTo(1 / 3, 12);
    const twice = low([["Double pruning", "Low"]], 3);
    expect(twice.doneShare).toBeCloseTo(1 / 3, 12);
    // 4 vines at 1 h, then 6 at half an hour; thinning, 6 at half an hour, is work of its own
    expect([twice.pruning.hours, twice.thinning.hours]).toEqual([7, 3]);
    expect(workPlan(seasonOf({ Vines: [VINES] }), new Map()).doneShare).toBe(0);
  });

  test("a block whose vines are not listed has days without rows", () => {
    const { weeks } = workPlan(
      seasonOf({
        Blocks: [
          ["Block", "Cultivar", "Vine places"],
          ["Low", "", 20],
        ],
      }),
      new Map(),
    );
    const [part] = weeks.flat().flatMap(({ parts }) => parts);
    expect(part).toMatchObject({ block: "Low", pass: "only" });
    expect(part).not.toHaveProperty("rows");
  });
});

describe("which block comes first", () => {
  const order = (settings: Rows, cuts: Rows = []) =>
    workPlan(
      seasonOf(
        {
          Blocks: [
            ["Block", "Cultivar", "Vine places"],
            ["Hill", "Tender One", 10],
            ["Bottom", "", 10],
            ["Gate", 1069, 10],
          ],
          Vines: [VINES, ["Yard", 1, 1, "bearing", ""]],
          "Bud cuts": [["Block", "Nodes cut", "Primaries alive"], ...cuts],
        },
        settings,
      ),
      new Map(),
    ).passes.map(({ block }) => block);

  // University of Georgia Extension, Bulletin 1505: hardy and fruitful secondaries first, tender last
  test.each<[string, Rows, string[]]>([
    ["as listed, the register's before those of the Blocks sheet", [], ["Yard", "Hill", "Bottom", "Gate"]],
    ["a tender cultivar last", [["Tender cultivars", "TENDER  one"]], ["Yard", "Bottom", "Gate", "Hill"]],
    [
      "a tender block that the Blocks sheet does not list last",
      [["Tender cultivars", "nothing; yard"]],
      ["Hill", "Bottom", "Gate", "Yard"],
    ],
    [
      "a cultivar that is a number",
      [["Tender cultivars", "1069, Tender One"]],
      ["Yard", "Bottom", "Hill", "Gate"],
    ],
    [
      "one with fruitful secondaries first",
      [["Fruitful secondaries", "tender one"]],
      ["Hill", "Yard", "Bottom", "Gate"],
    ],
  ])("%s", (_what, settings, expected) => {
    expect(order(settings)).toEqual(expected);
  });

  test("among equals the least hurt by this winter first, and those without bud cuts after them", () => {
    // 5 of 10 dead in Bottom, 1 of 10 in Gate
    expect(
      order(
        [],
        [
          ["Bottom", 10, 5],
          ["Gate", 10, 9],
        ],
      ),
    ).toEqual(["Gate", "Bottom", "Yard", "Hill"]);
  });
});

describe("the winter that the calendar stands for", () => {
  const DATES: Readonly<Record<string, (day: CellValue) => readonly CellValue[]>> = {
    Cordons: (day) => ["Low", 1, 1, "left", "A", 1, 3, 9, 9, day],
    Vines: (day) => ["Low", 1, 1, day],
    "Bud cuts": (day) => ["Low", 10, 9, day],
  };
  const HEADS: Readonly<Record<string, readonly string[]>> = {
    Cordons: [...CORDON_HEADS, "Date"],
    Vines: ["Block", "Row", "Vine", "Date"],
    "Bud cuts": ["Block", "Nodes cut", "Primaries alive", "Date"],
  };
  const firstDay = (sheet: string, ...days: CellValue[]) =>
    workPlan(
      seasonOf({
        Blocks: [
          ["Block", "Cultivar", "Vine places"],
          ["Low", "", 20],
        ],
        [sheet]: [HEADS[sheet], ...days.map(DATES[sheet])],
      }),
      new Map(),
    ).passes[0].firstDay;

  // 46400 is 13 January 2027, whose first workday of pruning is Monday 1 February 2027 (46419); 46070 is 17 February 2026
  test.each(Object.keys(DATES))(
    "the last day on the sheet %s tells it, wherever on the sheet it stands",
    (sheet) => {
      expect(firstDay(sheet, 46070)).toBe(46055);
      expect(firstDay(sheet, 46400, 46070)).toBe(46419);
      expect(firstDay(sheet, 46070, 46400, "")).toBe(46419);
      expect(firstDay(sheet, "")).toBe(46055);
    },
  );

  const startsOn = (countedOn: number, pruningStarts = 46054) =>
    crewCalendar({ ...defaultSettings(), pruningStarts }, countedOn).startsOn;

  test("a start stands for the next winter once a count is more than half a year, 183 days, after it", () => {
    expect(startsOn(46054 + 183)).toBe(46054);
    expect(startsOn(46054 + 184)).toBe(46419);
  });

  test("a start of several winters ago stands for the same day of this one", () => {
    // counted on 1 February 2029: 1096 days from 2026 on, one of them 29 February 2028
    expect(startsOn(46054 + 1096)).toBe(46054 + 1096);
  });

  test("29 February stands for 365 days later where the year has none", () => {
    // 29 February 2024 is 45351; counted on 1 January 2025, 45658
    expect(startsOn(45658, 45351)).toBe(45351 + 365);
  });
});
