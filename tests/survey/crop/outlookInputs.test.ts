import type { StageFigures } from "../../../src/domain/outlook/cropOutlook";
import { outlookInputs, type OutlookOptions } from "../../../src/survey/crop/outlookInputs";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets, type Rows, type Sheets } from "./seasonOfSheets";

const inputsOf = (sheets: Sheets, options?: OutlookOptions) =>
  outlookInputs(seasonOfSheets(sheets), options)[0];

function stageOf<Name extends StageFigures["stage"]>(
  { stages }: { stages: readonly StageFigures[] },
  name: Name,
) {
  const found = stages.find(({ stage }) => stage === name);
  if (!found) throw new Error(`no ${name}`);
  return found as Extract<StageFigures, { stage: Name }>;
}

/** The Blocks sheet with block A, of five vines unless told otherwise, with more columns. */
const blocks = (more: Readonly<Record<string, CellValue>> = {}): Rows => {
  const cells = { Block: "A", Vines: 5, "Cluster weight (kg)": 0.1, ...more };
  return [Object.keys(cells), Object.values(cells)];
};
/** Bearing vines of row 1 with what was counted on them. */
const vines = (column: string, ...counts: readonly CellValue[]): Rows => [
  ["Block", "Row", "Vine", "Status", column],
  ...counts.map((count, at) => ["A", 1, at + 1, "bearing", count]),
];
const FIVE = vines("Clusters", null, null, null, null, null);
const SHOOTS = vines("Shoots", 30, 31, 32, 33, 34);
const CLUSTERS = vines("Clusters", 40, 41, 42, 43, 44);

const HEADS = [...CORDON_HEADS, "Nodes a spur", "Fixed choice"];
/** Both cordons of a vine, fixed to stay. */
const staying = (vine: number, left: CellValue, right: CellValue, perSpur: CellValue = 2, row = 1): Rows => [
  ["A", row, vine, "left", "A", 1, 3, 9, left, perSpur, "stays"],
  ["A", row, vine, "right", "B", 2, 3, 9, right, perSpur, "stays"],
];
const cordons = (...rows: Rows): Rows => [HEADS, ...rows];
/** Five vines of 8 spurs with 2 nodes each. */
const PRUNED = cordons(...[1, 2, 3, 4, 5].flatMap((vine) => staying(vine, 4, 4)));

const cuts = (...rows: Rows): Rows => [
  ["Block", "Nodes cut", "Primaries alive", "Secondaries alive", "Cut by"],
  ...rows.map(([cut, primaries, secondaries, by]) => ["A", cut, primaries, secondaries, by ?? null]),
];
const OWN = { "Clusters a shoot": 2, Budbreak: 0.9 };
const settings = (...rows: Rows): Rows => [["Setting", "Value"], ...rows];

describe("what the sheets lack is named, and nothing else is", () => {
  test.each<[string, Sheets, string[]]>([
    ["a block and nothing counted", { blocks: blocks() }, ["register assumed", "countedVines needed"]],
    [
      "not even how many vines",
      { blocks: blocks({ Vines: null }) },
      ["vinesOfBlock needed", "register assumed", "countedVines needed"],
    ],
    ["clusters of every vine", { blocks: blocks(), vines: CLUSTERS }, []],
    [
      "no cluster weight",
      { blocks: blocks({ "Cluster weight (kg)": null }), vines: CLUSTERS },
      ["clusterWeight needed"],
    ],
    [
      "no cluster weight for what is cut and left either",
      { blocks: blocks({ "Cluster weight (kg)": null }), vines: FIVE, cordons: PRUNED },
      ["clusterWeight needed"],
    ],
    [
      "clusters of two vines in five",
      { blocks: blocks(), vines: vines("Clusters", 40, 50, null, null, null) },
      ["fewVines assumed"],
    ],
    [
      "clusters of four vines in four",
      { blocks: blocks({ Vines: 4 }), vines: vines("Clusters", 40, 50, 60, 70) },
      [],
    ],
    [
      "shoots, but no clusters a shoot of the farm's own",
      { blocks: blocks(), vines: SHOOTS },
      ["usualFigures assumed"],
    ],
    [
      "shoots, and the farm's own clusters a shoot",
      { blocks: blocks({ "Clusters a shoot": 2 }), vines: SHOOTS },
      [],
    ],
    ["nodes without cut buds", { blocks: blocks(OWN), vines: FIVE, cordons: PRUNED }, ["budCuts assumed"]],
    [
      "nodes and cut buds",
      { blocks: blocks(OWN), vines: FIVE, cordons: PRUNED, budCuts: cuts([8, 6, 1]) },
      [],
    ],
    [
      "nodes, but no budbreak of the farm's own",
      { blocks: blocks({ "Clusters a shoot": 2 }), vines: FIVE, cordons: PRUNED, budCuts: cuts([8, 6, 1]) },
      ["usualFigures assumed"],
    ],
    [
      "nodes, but no clusters a shoot of the farm's own",
      { blocks: blocks({ Budbreak: 0.9 }), vines: FIVE, cordons: PRUNED, budCuts: cuts([8, 6, 1]) },
      ["usualFigures assumed"],
    ],
    [
      "cordons on which nothing is decided",
      { blocks: blocks(), vines: FIVE, cordons: PRUNED.map((row) => row.slice(0, -1)) },
      ["decidedVines needed"],
    ],
    [
      "vines drawn by row of which not all are listed",
      { blocks: blocks({ Vines: 50 }), vines: CLUSTERS, settings: settings(["Vines were drawn", "by row"]) },
      ["rowsOfVines assumed"],
    ],
    [
      "vines drawn by row, all listed",
      { blocks: blocks(), vines: CLUSTERS, settings: settings(["Vines were drawn", "by row"]) },
      [],
    ],
    [
      "vines drawn at random of which not all are listed",
      { blocks: blocks({ Vines: 50 }), vines: CLUSTERS },
      [],
    ],
    [
      "nodes after frost without the shootless ones",
      {
        blocks: blocks(),
        vines: CLUSTERS,
        harvest: [
          ["Block", "Year", "Frost: primaries"],
          ["A", 2026, 60],
        ],
      },
      ["frostCounts needed"],
    ],
  ])("%s", (_, sheets, expected) => {
    expect(inputsOf(sheets).lacking.map(({ code, kind }) => `${code} ${kind}`)).toEqual(expected);
  });

  test("vines of their first year lack no count: they bear nothing yet", () => {
    const planted = (year: number) =>
      inputsOf({ blocks: blocks({ "Year planted": year }), vines: FIVE }, { year: 2026 }).lacking;
    const young = (year: number) =>
      inputsOf({
        blocks: blocks({ "Year planted": year }),
        vines: FIVE.map((row, at) => [...row, at === 0 ? "Date" : 46037]),
      }).lacking;
    expect(young(2026)).toEqual([]);
    expect(young(2011).map(({ code }) => code)).toEqual(["countedVines"]);
    // Without any date nobody knows which winter it is.
    expect(planted(2026).map(({ code }) => code)).toEqual(["countedVines"]);
  });

  test("without a number of vines there is no stage, whatever was counted", () => {
    const season = seasonOfSheets({
      blocks: blocks({ Vines: null, "Node rule": "12" }),
      cordons: PRUNED,
      budCuts: cuts([8, 4, 4]),
    });
    const [inputs] = outlookInputs(season, { decided: [...decideSeason(season)] });
    expect(inputs).toMatchObject({ planted: 0, stages: [] });
    expect(inputs.asCounted).toBeUndefined();
    expect(inputs.otherSecondaries).toBeUndefined();
  });
});

describe("nodes left", () => {
  const nodesOf = (rows: Rows, more: Sheets = {}) =>
    stageOf(inputsOf({ blocks: blocks({ Vines: 100 }), cordons: cordons(...rows), ...more }), "winter").nodes;

  // Two vines of 8 spurs x 2 = 16 nodes beside the one in question, by hand.
  const TWO = [...staying(1, 4, 4), ...staying(2, 4, 4)];
  test.each<[string, Rows, number, number]>([
    [
      "spurs times the nodes of each: 4 x 2 + 5 x 3",
      [
        ...TWO,
        ["A", 1, 3, "left", "A", 1, 3, 9, 4, 2, "stays"],
        ["A", 1, 3, "right", "B", 2, 3, 9, 5, 3, "stays"],
      ],
      3,
      (16 + 16 + 23) / 3,
    ],
    [
      "2 nodes a spur by Settings where none are written",
      [...TWO, ...staying(3, 5, 6, null)],
      3,
      (16 + 16 + 22) / 3,
    ],
    ["none where spurs are cut to no node", [...TWO, ...staying(3, 5, 6, 0)], 3, 32 / 3],
    ["a cordon without live spurs has none", [...TWO, ...staying(3, 0, 5)], 3, (32 + 10) / 3],
    [
      "a cordon that goes has none",
      [...TWO, ...staying(3, 4, 4), ["A", 1, 3, "right", "C", 2, 3, 9, 9, 2, "goes"]],
      3,
      16,
    ],
    [
      "a vine with an open side is left out",
      [...TWO, staying(3, 9, 9)[0], ["A", 1, 3, "right", "B", 2, 3, 9, 9, 2, null]],
      2,
      16,
    ],
  ])("%s", (_, rows, n, mean) => {
    const nodes = nodesOf(rows);
    expect(nodes.sample!.n).toBe(n);
    expect(nodes.value).toBeCloseTo(mean, 12);
  });

  test("2 nodes a spur by Settings where the sheet has no such column", () => {
    const rows = staying(1, 4, 5)
      .concat(staying(2, 6, 7))
      .map((row) => row.filter((_, at) => at !== 9));
    const heads = HEADS.filter((head) => head !== "Nodes a spur");
    expect(stageOf(inputsOf({ blocks: blocks(), cordons: [heads, ...rows] }), "winter").nodes.value).toBe(22);
  });

  test("a dead cordon that is fixed to stay, without its counts, leaves its vine out", () => {
    const rows = [...TWO, ...staying(3, 4, null)].map((row, at) => [...row, at === 5 ? "dead" : null]);
    const inputs = inputsOf({ blocks: blocks(), cordons: [[...HEADS, "Condition"], ...rows] });
    expect(stageOf(inputs, "winter").nodes).toMatchObject({ value: 16, sample: { n: 2 } });
  });

  test("a vine that the register calls young or missing is left out, one that it does not list is not", () => {
    const register = (status: string): Rows => [
      ["Block", "Row", "Vine", "Status"],
      ["A", 1, 1, "bearing"],
      ["A", 1, 3, status],
    ];
    const rows = [...TWO, ...staying(3, 8, 8)];
    expect(nodesOf(rows, { vines: register("young") })).toMatchObject({ value: 16, sample: { n: 2 } });
    expect(nodesOf(rows, { vines: register("bearing") })).toMatchObject({ sample: { n: 3 } });
  });

  test("rows without a place are no vine", () => {
    const rows = [...staying(1, 4, 4), ...staying(2, 4, 4), ...staying(3, 4, 4), ...staying(4, 4, 4)];
    const nameless = ["A", 1, null, "left", "A", 1, 3, 9, 8, 2, "goes"];
    // It holds back the vine of the row above it.
    expect(nodesOf([...rows, nameless])).toMatchObject({ value: 16, sample: { n: 3 } });
  });

  // Rows of 4, 2 and 2 bearing vines; 20 nodes on each of three in row 1, 40 on both in row 2, none counted in row 3, which
  // joins row 2: (4 x 20 + 4 x 40) / 8 = 30. At random the mean of the five is 28.
  test.each([
    ["by row", 30],
    ["at random", 28],
  ])("vines drawn %s: %d nodes", (drawn, mean) => {
    const places = [1, 1, 1, 1, 2, 2, 3, 3].map((row, at) => [row, at + 1] as const);
    const register: Rows = [
      ["Block", "Row", "Vine", "Status"],
      ...places.map(([row, vine]) => ["A", row, vine, "bearing"]),
    ];
    const counted = [1, 2, 3]
      .flatMap((vine) => staying(vine, 5, 5))
      .concat([5, 6].flatMap((vine) => staying(vine, 5, 5, 4, 2)));
    const inputs = inputsOf({
      blocks: blocks({ Vines: 8 }),
      vines: register,
      cordons: cordons(...counted),
      settings: settings(["Vines were drawn", drawn]),
    });
    expect(stageOf(inputs, "winter").nodes.value).toBeCloseTo(mean, 12);
  });

  test("vines in rows that the register does not list are counted too, as drawn at random", () => {
    const inputs = inputsOf({
      blocks: blocks(),
      vines: FIVE,
      cordons: cordons(...[1, 2, 3, 4, 5].flatMap((vine) => staying(vine, 4, 4, 2, 9))),
      settings: settings(["Vines were drawn", "by row"]),
    });
    expect(stageOf(inputs, "winter").nodes).toMatchObject({ value: 16, sample: { n: 5 } });
  });
});

describe("basal shoots", () => {
  // 1 basal shoot a spur worth 0.5; 3 nodes a spur as counted: 0.5 / 3 for a node left. Cut: 5 of 10 primaries, all others dead;
  // budbreak 1: 0.5 shoots a node worth 1, 1/3 basal worth 0.5: (0.5 + 1/6) / (0.5 + 1/3) = 0.8.
  const of = (perSpur: number, basal: number) =>
    inputsOf({
      blocks: blocks({ ...OWN, Budbreak: 1, "Basal shoots": basal, "Basal worth": 0.5 }),
      vines: SHOOTS,
      cordons: cordons(...[1, 2, 3, 4, 5].flatMap((vine) => staying(vine, vine - 1, 2, perSpur))),
      budCuts: cuts([10, 5, null]),
    });

  test("grow on every spur, so that longer spurs bring fewer for a node", () => {
    expect(stageOf(of(3, 1), "winter").basalWorth).toBeCloseTo(0.5 / 3, 12);
    expect(stageOf(of(3, 2), "winter").basalWorth).toBeCloseTo(1 / 3, 12);
    expect(stageOf(of(3, 1), "shoots").worth!.value).toBeCloseTo(0.8, 12);
  });

  test("grow on spurs of the usual length, 2 nodes, where no nodes were counted", () => {
    const inputs = inputsOf({
      blocks: blocks({ ...OWN, Budbreak: 1, "Basal shoots": 2, "Basal worth": 0.5 }),
      vines: SHOOTS,
      budCuts: cuts([10, 5, null]),
    });
    // 0.5 shoots a node worth 1, 1 basal worth 0.5: 1 / 1.5
    expect(stageOf(inputs, "shoots").worth!.value).toBeCloseTo(2 / 3, 12);
  });

  test("and the same where no spur lives", () => {
    const inputs = inputsOf({
      blocks: blocks({ ...OWN, Budbreak: 1, "Basal shoots": 2, "Basal worth": 0.5 }),
      vines: SHOOTS,
      cordons: cordons(...[1, 2].flatMap((vine) => staying(vine, 0, 0))),
      budCuts: cuts([10, 5, null]),
    });
    expect(stageOf(inputs, "shoots").worth!.value).toBeCloseTo(2 / 3, 12);
  });
});

describe("buds that were cut", () => {
  const inputs = (budCuts: Rows, more: Sheets = {}) =>
    inputsOf({ blocks: blocks(OWN), vines: SHOOTS, cordons: PRUNED, budCuts, ...more });
  const buds = (budCuts: Rows, more: Sheets = {}) => stageOf(inputs(budCuts, more), "winter").buds.value;

  // 0.38 for a secondary (Wines & Vines 2015), where Settings stand in
  test.each<[string, Rows, number]>([
    ["without secondaries only primaries count", cuts([8, 6, null], [8, 4, null]), 10 / 16],
    ["dead canes count as cut", cuts([8, 0, null], [8, 8, null]), 0.5],
    ["a cane without its nodes is left out", cuts([null, 6, null], [8, 4, null]), 0.5],
    ["a cane without its primaries is left out", cuts([8, null, 4], [8, 4, null]), 0.5],
    [
      "a count of no secondaries tells that the dead are meant",
      cuts([8, 5, 0], [8, 4, 4]),
      (9 + 4 * 0.38) / 16,
    ],
    [
      "who does not tell it writes as the others do",
      cuts([8, 4, 4, "Ana"], [8, 5, 3, "Ben"], [8, 5, 3, "Ben"]),
      (14 + 10 * 0.38) / 24,
    ],
    [
      "who contradicts himself is read by what he wrote most, when the others do too",
      cuts([8, 5, 3, "Ana"], [8, 5, 3, "Ana"], [8, 5, 7, "Ana"], ...[1, 2, 3].map(() => [8, 5, 7, "Ben"])),
      (30 + 15 * 0.38) / 48,
    ],
  ])("%s", (_, budCuts, worth) => expect(buds(budCuts)).toBeCloseTo(worth, 12));

  test("one cane that reads two ways asks for both crops, though the next reads one way", () => {
    const other = inputs(cuts([8, 4, 4], [8, 4, null])).otherSecondaries;
    if (other?.stage !== "winter") throw new Error("no other reading");
    expect(other.buds.value).toBeCloseTo((8 + 4 * 0.38) / 16, 12);
  });

  test.each([
    ["of all nodes", 0.5],
    ["under dead primaries", (4 + 4 * 0.38) / 8],
  ])("Settings say %s: nothing is asked", (written, worth) => {
    const set = { settings: settings(["Secondaries are written", written]) };
    expect(buds(cuts([8, 4, 4]), set)).toBeCloseTo(worth, 12);
    expect(inputs(cuts([8, 4, 4]), set).otherSecondaries).toBeUndefined();
  });

  test.each<[string, Rows]>([
    [
      "primaries",
      [
        ["Block", "Nodes cut"],
        ["A", 8],
      ],
    ],
    [
      "nodes",
      [
        ["Block", "Primaries alive"],
        ["A", 8],
      ],
    ],
    [
      "blocks",
      [
        ["Nodes cut", "Primaries alive"],
        [8, 8],
      ],
    ],
  ])("a sheet without a column of %s says nothing of buds", (_, budCuts) => {
    const { lacking, stages } = inputs(budCuts);
    expect(lacking).toContainEqual({ code: "budCuts", kind: "assumed" });
    expect(stages[0]).toMatchObject({ buds: { value: 1, standardError: 0 } });
  });

  // Shoots grow from living nodes alone: 5 primaries of 5; 3 secondaries of 3 at 0.38
  test.each<[string, Rows, number | undefined]>([
    ["one dead cane beside a living one", cuts([8, 0, null], [8, 5, null]), 1],
    ["secondaries alone", cuts([8, 0, 3]), 0.38],
    ["nothing alive", cuts([8, 0, 0], [8, 0, null]), undefined],
  ])("a shoot is worth what lives: %s", (_, budCuts, worth) => {
    const shoots = stageOf(inputs(budCuts), "shoots");
    if (worth === undefined) expect(shoots).not.toHaveProperty("worth");
    else expect(shoots.worth!.value).toBeCloseTo(worth, 12);
  });
});

describe("nodes counted after frost", () => {
  const of = (counts: readonly CellValue[]) =>
    inputsOf(
      {
        blocks: blocks(OWN),
        vines: SHOOTS,
        cordons: PRUNED,
        harvest: [
          [
            "Block",
            "Year",
            "Frost: primaries",
            "Frost: secondaries",
            "Frost: tertiaries",
            "Frost: shootless",
          ],
          ["A", 2026, ...counts],
        ],
      },
      { year: 2026 },
    );

  // (primaries + 0.38 x secondaries) / nodes, after Howell
  test.each([
    [[60, 30, 5, 5], { nodes: 100, living: 95, share: 0.714 }],
    [[60, 30, 0, 10], { nodes: 100, living: 90, share: 0.714 }],
    [[60, 30, null, 10], { nodes: 100, living: 90, share: 0.714 }],
    [[0, 30, 0, 70], { nodes: 100, living: 30, share: 0.114 }],
    [[60, 0, 0, 40], { nodes: 100, living: 60, share: 0.6 }],
    [[60, 40, 0, 0], { nodes: 100, living: 100, share: 0.752 }],
    [[0, 0, 0, 50], { nodes: 50, living: 0, share: 0 }],
  ])("%j", (counts, expected) => {
    const inputs = of(counts);
    expect(inputs.frost).toMatchObject({ ...expected, share: expect.closeTo(expected.share, 12) });
    expect(stageOf(inputs, "frost").buds.value).toBeCloseTo(expected.share, 12);
    expect(inputs.lacking.map(({ code }) => code)).not.toContain("frostCounts");
  });

  test.each([
    [[null, 30, 5, 5]],
    [[60, null, 5, 5]],
    [[60, 30, 5, null]],
    [[0, null, null, null]],
    [[0, 0, 0, 0]],
  ])("%j says nothing of the share, and that is named", (counts) => {
    const inputs = of(counts);
    expect(inputs.frost).toBeUndefined();
    expect(inputs.lacking).toContainEqual({ code: "frostCounts", kind: "needed" });
  });

  test("nobody counted: nothing is lacking", () => {
    const inputs = of([null, null, null, null]);
    expect(inputs.frost).toBeUndefined();
    expect(inputs.lacking.map(({ code }) => code)).not.toContain("frostCounts");
  });

  test("shoots that came after every node was dead count in full; after tertiaries alone they bear nothing", () => {
    expect(stageOf(of([0, 0, 0, 50]), "shoots")).not.toHaveProperty("worth");
    expect(stageOf(of([0, 0, 4, 46]), "shoots").worth!.value).toBe(0);
  });
});

describe("clusters weighed at lag phase", () => {
  const of = (weight: CellValue, weighed: CellValue, more: Sheets = {}) =>
    inputsOf(
      {
        blocks: blocks(),
        vines: CLUSTERS,
        harvest: [
          ["Block", "Year", "Cluster weight at lag phase (kg)", "Clusters weighed"],
          ["A", 2026, weight, weighed],
        ],
        ...more,
      },
      { year: 2026 },
    );

  test.each([
    ["as many as were weighed", 150, 150],
    ["100 by Settings where nobody wrote how many", null, 100],
    ["two, where one was written down", 1, 2],
  ])("%s", (_, weighed, n) => {
    expect(stageOf(of(0.05, weighed), "lagPhase").clusterWeight).toMatchObject({
      value: 0.05,
      sample: { n },
    });
  });

  test("weighed in another year, weighing nothing or without counted clusters they are no stage", () => {
    const stages = (inputs: ReturnType<typeof of>) => inputs.stages.map(({ stage }) => stage);
    expect(stages(of(0.05, 100))).toEqual(["clusters", "lagPhase"]);
    expect(stages(of(0, 100))).toEqual(["clusters"]);
    expect(stages(of(null, 100))).toEqual(["clusters"]);
    expect(stages(of(0.05, 100, { vines: SHOOTS }))).toEqual(["shoots"]);
  });

  // 0.15 between years (de la Fuente 2015), and 0.1 between farms where the published 2 stands
  test("the published multiplier brings the spread between farms too: 2 x sqrt(0.15^2 + 0.1^2); an own 1.9 does not", () => {
    const published = stageOf(of(0.05, 100), "lagPhase").multiplier;
    expect(published).toMatchObject({ value: 2, source: "lagMultiplier" });
    expect(published.standardError).toBeCloseTo(2 * Math.hypot(0.15, 0.1), 12);
    const set = settings(["Lag phase multiplier", 1.9]);
    const own = stageOf(of(0.05, 100, { settings: set }), "lagPhase").multiplier;
    expect(own.value).toBe(1.9);
    expect(own.standardError).toBeCloseTo(1.9 * 0.15, 12);
  });
});

describe("harvests", () => {
  const HARVEST: Rows = [
    ["Block", "Year", "Picked (kg)", "Vines picked"],
    ["A", 2025, 100, 2],
    ["A", 2025, 60, 3],
    ["B", 2025, 999, 9],
    [null, 2025, 999, 9],
    ["A", null, 999, 9],
    ["A", 2024, 70, null],
    ["A", 2023, 0, 5],
    ["A", 2027, 999, 9],
    ["A", 2026, 40, null],
    ["A", 2026, 50, null],
  ];
  const of = (year: number, harvest = HARVEST) => inputsOf({ blocks: blocks(), harvest }, { year });

  test("rows of a block and year add up; a year that bore nothing is no harvest, nor is a later one", () => {
    expect(of(2026).harvests!.years).toEqual([
      { year: 2024, picked: 70 },
      { year: 2025, picked: 160 },
    ]);
    expect(of(2026).pickedBefore).toEqual({ picked: 160, vines: 5 });
    expect(of(2026).picked).toBe(90);
  });

  test("vines that nobody wrote down are those that bear", () => {
    expect(of(2025).pickedBefore).toEqual({ picked: 70, vines: 5 });
    expect(of(2025).harvests!.years).toEqual([{ year: 2024, picked: 70 }]);
  });

  test("a crop that was lost is 0 picked; no row is none known", () => {
    expect(of(2023).picked).toBe(0);
    expect(of(2024).pickedBefore).toBeUndefined();
    expect(of(2022).picked).toBeUndefined();
    expect(of(2022).harvests).toBeUndefined();
  });

  test.each([["Block"], ["Year"], ["Picked (kg)"]])("a sheet without %s says nothing of crops", (head) => {
    const at = HARVEST[0].indexOf(head);
    const inputs = of(
      2026,
      HARVEST.map((row) => row.filter((_, column) => column !== at)),
    );
    expect(inputs.harvests).toBeUndefined();
    expect(inputs.pickedBefore).toBeUndefined();
    expect(inputs.picked).toBeUndefined();
  });
});

describe("the Blocks sheet", () => {
  test.each([
    // 4 tons of 907.18474 kg on 0.40468564224 ha
    ["Target crop (tons/acre)", "lb", (4 * 907.18474) / 0.40468564224],
    ["Target crop (t/ha)", "lb", 4000],
    ["Target crop (t / ha)", "kg", 4000],
    ["Target crop", "lb", (4 * 907.18474) / 0.40468564224],
    ["Target crop", "kg", 4000],
  ])("%s beside a cluster weight in %s: kilograms a hectare", (head, unit, expected) => {
    const sheet = [
      ["Block", "Vines", `Cluster weight (${unit})`, head],
      ["A", 5, 0.1, 4],
    ];
    expect(inputsOf({ blocks: sheet }).targetCrop).toBeCloseTo(expected, 6);
  });

  test("no target where none is written, or 0", () => {
    for (const target of [null, 0, "much"])
      expect(inputsOf({ blocks: blocks({ "Target crop (t/ha)": target }) }).targetCrop).toBeUndefined();
    expect(inputsOf({ blocks: blocks() }).targetCrop).toBeUndefined();
  });

  test.each([
    [3, 2, 10000 / 6],
    [0.5, 0.3, 10000 / 0.15],
    [10, 10, 100],
    [null, 2, undefined],
    [3, null, undefined],
    [0.4, 2, undefined],
    [3, 11, undefined],
  ])("rows %j m apart and vines %j m: %j vines a hectare", (row, vine, expected) => {
    const { density } = inputsOf({ blocks: blocks({ "Row spacing (m)": row, "Vine spacing (m)": vine }) });
    if (expected === undefined) expect(density).toBeUndefined();
    else expect(density).toBeCloseTo(expected, 6);
  });

  test("cultivar and training as they are written, none where they are not", () => {
    const of = (cultivar: CellValue, training: CellValue) =>
      inputsOf({ blocks: blocks({ Cultivar: cultivar, "Training system": training, "Year planted": 2011 }) });
    expect(of("  Marquette ", "high wire")).toMatchObject({
      cultivar: "Marquette",
      training: "highWire",
      yearPlanted: 2011,
    });
    expect(of(" ", null)).toMatchObject({ cultivar: undefined, training: undefined });
    expect(inputsOf({ blocks: blocks() })).toMatchObject({ cultivar: undefined, training: undefined });
  });

  test("a block that only the register names has no figures of its own", () => {
    const inputs = inputsOf({ vines: CLUSTERS });
    expect(inputs).toMatchObject({ block: "A", planted: 5, cultivar: undefined, training: undefined });
    expect(inputs.lacking).toContainEqual({ code: "clusterWeight", kind: "needed" });
    expect(inputs.targetCrop).toBeUndefined();
  });
});

describe("usual figures bring the spread between farms beside that between years", () => {
  const winter = (own: Readonly<Record<string, CellValue>>) =>
    stageOf(inputsOf({ blocks: blocks(own), vines: FIVE, cordons: PRUNED }), "winter");

  test("budbreak 0.85 by Settings: sqrt(0.06^2 + 0.06^2); an own 0.9: 0.06", () => {
    expect(winter({}).budbreak).toMatchObject({ value: 0.85, source: "budbreak" });
    expect(winter({}).budbreak.standardError).toBeCloseTo(Math.hypot(0.06, 0.06), 12);
    expect(winter({ Budbreak: 0.9 }).budbreak.standardError).toBeCloseTo(0.06, 12);
  });

  test("each figure says what its spread is of", () => {
    const { nodes, buds, clustersPerShoot, clusterWeight } = winter({});
    expect([nodes, buds, clustersPerShoot, clusterWeight].map(({ source }) => source)).toEqual([
      "vines",
      "buds",
      "clustersPerShoot",
      "clusterWeight",
    ]);
  });
});
