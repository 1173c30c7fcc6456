import { SOURCES } from "../../../../src/domain/sources";
import { deadShares } from "../../../../src/survey/decide/plan/deadShares";
import { vineBudgets } from "../../../../src/survey/decide/plan/vineBudgets";
import { crewCalendar, workPlan } from "../../../../src/survey/decide/plan/workPlan";
import { seasonStands } from "../../../../src/survey/decide/plan/seasonStands";
import { workSentences } from "../../../../src/survey/decide/plan/workSentences";
import { shootThinning } from "../../../../src/survey/crop/vinesOfBlocks";
import { LANGUAGES } from "../../../../src/texts/language";
import { cardsSheet } from "../../../../src/workbook/results/cardsSheet";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { defaultSettings, SETTINGS_BY_AREA } from "../../../../src/survey/settings/settings";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";

const BLOCKS = ["Block", "Cultivar", "Vine spacing (ft)", "Node rule", "Injury rule", "Vine places"];
const VINES = ["Block", "Row", "Vine", "Status", "Prunings (lb)", "Pruned on"];
const season = (
  sheets: Readonly<Record<string, readonly (readonly CellValue[])[]>>,
  settings: CellValue[][] = [],
) =>
  readSeason([
    ...Object.entries(sheets).map(([name, rows]) => areaOf(name, rows)),
    areaOf("Settings", [["Setting", "Value"], ["Most nodes a vine", 200], ...settings]),
  ]);

describe("the node budget of a vine", () => {
  const budget = (
    rule: CellValue,
    prunings: CellValue,
    cuts: readonly (readonly CellValue[])[] = [],
    injury: CellValue = "",
  ) =>
    vineBudgets(
      season({
        Blocks: [BLOCKS, ["North Bench", "", 8, rule, injury, ""]],
        Vines: [
          VINES,
          ["North Bench", 1, 1, "bearing", prunings, ""],
          ["North Bench", 1, 2, "bearing", 3, ""],
        ],
        "Bud cuts": [["Block", "Nodes cut", "Primaries alive"], ...cuts],
      }),
    )("North Bench", 1, 1);

  test.each([
    {
      why: "Growing Grapes in WV: 3 lb at 30+10 is 50 buds",
      rule: "30+10",
      prunings: 3,
      nodes: 50,
      basis: "ownPrunings",
    },
    {
      why: "not weighed: the block's mean, here its one weighed vine of 3 lb",
      rule: "30+10",
      prunings: "",
      nodes: 50,
      basis: "blockMean",
    },
    { why: "a fixed number", rule: "40", prunings: 3, nodes: 40, basis: "fixed" },
    {
      why: "Ohio State 2023: 8 ft at 5 buds a foot",
      rule: "by length",
      prunings: "",
      nodes: 40,
      basis: "length",
    },
    { why: "the same in Spanish", rule: "por longitud", prunings: "", nodes: 40, basis: "length" },
  ])("$why", ({ rule, prunings, nodes, basis }) => {
    const answer = budget(rule, prunings);
    expect(answer.nodes).toBeCloseTo(nodes, 9);
    expect(answer.basis).toBe(basis);
  });

  test("Cornell 2014: 35 % of the primaries dead, 35 % more buds: 54 for 40", () => {
    expect(budget("40", "", [["North Bench", 20, 13]], "Cornell 2014").nodes).toBeCloseTo(54, 9);
  });

  test("where a rule does not answer there is no number but its reason", () => {
    expect(budget("40", "", [["North Bench", 20, 2]], "Purdue")).toMatchObject({
      refusal: { code: "purdueAbove50" },
    });
    expect(budget("30+10", 0.5)).toMatchObject({ refusal: { code: "belowOnePound" } });
    expect(budget("as always", 3)).toMatchObject({ refusal: { code: "formulaNotBalanced" } });
  });

  test("bud cuts are pooled, and rows that do not fit are passed over", () => {
    const shares = deadShares(
      season({
        "Bud cuts": [
          ["Block", "Nodes cut", "Primaries alive"],
          ["A", 10, 9],
          ["A", 30, 21],
          ["A", 10, 12],
          ["B", 0, 0],
        ],
      }),
    );
    expect([...shares].map(([block, share]) => [block, Math.round(share * 1000) / 1000])).toEqual([
      ["A", 0.25],
    ]);
  });
});

describe("the work of the winter", () => {
  const farm = {
    Blocks: [
      BLOCKS,
      ["Low", "Tender one", 8, "40", "", 50],
      ["High", "Hardy one", 8, "40", "", 500],
      ["Far", "", 8, "40", "", 100],
    ],
    Vines: [
      VINES,
      ["Low", 1, 1, "bearing", "", ""],
      ["Low", 1, 2, "missing", "", ""],
      ["High", 1, 1, "bearing", "", 46060],
      ["High", 1, 2, "young", "", ""],
    ],
  };

  test("vines come from the register, from the Blocks sheet where there is none, and pruned ones count as done", () => {
    const plan = workPlan(
      season(farm, [
        ["Minutes a vine, pruning", 6],
        ["Tender cultivars", "tender one"],
      ]),
      new Map(),
    );
    expect(plan.passes.map(({ block, vines, vinesDone, hours }) => [block, vines, vinesDone, hours])).toEqual(
      [
        ["High", 2, 1, 0.1],
        ["Far", 100, 0, 10],
        ["Low", 1, 0, 0.1],
      ],
    );
    expect(plan.doneShare).toBeCloseTo(1 / 103, 9);
  });

  test("blocks or cultivars that are pruned twice come again at the end", () => {
    const plan = workPlan(season(farm, [["Double pruning", "Far, Hardy one"]]), new Map());
    expect(plan.passes.map(({ block, pass }) => `${block} ${pass}`)).toEqual([
      "Low only",
      "High first",
      "Far first",
      "High second",
      "Far second",
    ]);
  });

  test("thinning of shoots stands after pruning, where shoots were counted and more than the wire carries", () => {
    const counted = (...shoots: CellValue[]) =>
      shoots.map((count, at) => ["High", 1, at + 1, "bearing", "", "", count]);
    const spring = season(
      {
        Blocks: farm.Blocks.slice(0, 3),
        Vines: [
          [...VINES, "Shoots"],
          ["Low", 1, 1, "bearing", "", "", 30],
          ["Low", 1, 2, "bearing", "", "", 34],
          ...counted(50, 60),
        ],
      },
      [
        ["Minutes a vine, pruning", 6],
        ["Minutes a vine, shoot thinning", 3],
        ["Hours a day", 5],
        ["Crew", 2],
      ],
    );
    // 8 ft at 6 shoots a foot carry 48; High has 55 on average over 500 places, Low 32 over 50.
    const thinned = shootThinning(spring);
    expect([...thinned.values()].map(({ keep, remove, counted: mean }) => [keep, remove, mean])).toEqual([
      [32, 0, 32],
      [48, 7, 55],
    ]);
    const plan = workPlan(spring, thinned);
    // pruning: 2 + 2 vines of the register at 6 min are 0.4 h; thinning: 500 vines x 3 min = 25 h, 2.5 days of 10 h
    expect(plan.passes.map(({ block, pass }) => `${block} ${pass}`)).toEqual([
      "Low only",
      "High only",
      "High thinning",
    ]);
    expect(plan.pruning.hours).toBeCloseTo(0.4, 9);
    expect(plan.thinning.hours).toBeCloseTo(25, 9);
    expect(plan.thinning.crewDays).toBeCloseTo(2.5, 9);
    expect(workSentences(plan, "en")).toEqual([
      "Pruning: 0.4 hours left, 0 days of the whole crew.",
      "In this order: Low, High.",
      "After pruning, shoots are thinned from May 20, 2026 on: 25 hours, 2.5 days of the whole crew (High 25 h).",
    ]);
    for (const language of LANGUAGES) expect(workSentences(plan, language)[2]).toContain("High 25 h");
    const sheet = cardsSheet([], { language: "en", date: "day", unitSystem: "US", work: plan });
    expect(sheet.title!.at(-1)).toContain("High 25 h");
    const stands = seasonStands(spring, [], [], { cards: [], work: plan }, () => false);
    expect(stands.blocks.map(({ block, hours }) => [block, hours])).toEqual([
      ["Low", 0.2],
      ["High", 0.2],
    ]);
  });

  test("what is done and what has no shoots to thin is not told, and trunks are only where their years are known", () => {
    const done = (prunedOn: CellValue) =>
      workPlan(
        season(
          { Vines: [VINES, ["Low", 1, 1, "bearing", "", prunedOn], ["High", 1, 1, "bearing", "", 46060]] },
          [
            ["Minutes a vine, pruning", 60],
            ["Crew", 1],
            ["Hours a day", 8],
          ],
        ),
        new Map(),
      );
    expect(workSentences(done(""), "en")).toEqual([
      "Pruning: 1 hour left, 0.1 days of the whole crew.",
      "In this order: Low.",
    ]);
    expect(workSentences(done(46060), "en")).toEqual(["Pruning: 0 hours left, 0 days of the whole crew."]);
  });

  test("the calendar begins today, keeps free days, and says which rows are pruned on which day", () => {
    const vines = [1, 2].flatMap((row) =>
      [1, 2, 3].map((vine) => ["Low", row, vine, "bearing", "", row === 1 && vine === 1 ? 46050 : ""]),
    );
    const found = season(
      {
        Blocks: [BLOCKS, ["Low", "", 8, "40", "", ""], ["Far", "", 8, "40", "", 4]],
        Vines: [VINES, ...vines],
      },
      [
        ["Minutes a vine, pruning", 60],
        ["Crew", 1],
        ["Hours a day", 4],
        ["Days a week", 5],
        ["Days off", "2026-02-09"],
      ],
    );
    // 46058 is Thursday 5 February 2026. Low has 5 vines left, 2 in row 1 and 3 in row 2, an hour each, 4 hours a day:
    // 4 h on Thursday, 1 h on Friday; Far has 4 vines, 3 h on Friday, and 1 h on Tuesday: Monday 9 February is off.
    const { weeks } = workPlan(found, new Map(), 46058);
    expect(weeks.map((week) => week.map(({ day, isWorkday }) => [day, isWorkday]))).toEqual([
      [46055, 46056, 46057, 46058, 46059, 46060, 46061].map((day) => [day, day < 46060]),
      [46062, 46063, 46064, 46065, 46066, 46067, 46068].map((day) => [day, day > 46062 && day < 46067]),
    ]);
    const work = weeks.flat().flatMap(({ day, parts }) => parts.map((part) => ({ day, ...part })));
    expect(work).toEqual([
      { day: 46058, block: "Low", pass: "only", hours: 4, rows: { first: 1, last: 2 } },
      { day: 46059, block: "Low", pass: "only", hours: 1, rows: { first: 2, last: 2 } },
      { day: 46059, block: "Far", pass: "only", hours: 3 },
      { day: 46063, block: "Far", pass: "only", hours: 1 },
    ]);
  });

  test("a start of another winter stands for the same day of this one, with its year", () => {
    // 46054 is 1 February 2026, 46127 is 15 April 2026; 46419 is 1 February 2027, 46492 is 15 April 2027
    const winter = (countedOn: number) => {
      const { startsOn, secondPassOn } = crewCalendar(defaultSettings(), countedOn);
      return [startsOn, secondPassOn];
    };
    expect(winter(46084)).toEqual([46054, 46127]); // counted until 3 March 2026
    expect(winter(46371)).toEqual([46419, 46492]); // counted until 15 December 2026
    expect(winter(-Infinity)).toEqual([46054, 46127]);
  });

  test.each(SETTINGS_BY_AREA.plan.map((setting) => [setting.id, setting] as const))(
    "%s names its source",
    (_id, setting) => {
      expect(["ours", "common practice", ...Object.keys(SOURCES)]).toContain(setting.source);
    },
  );
});
