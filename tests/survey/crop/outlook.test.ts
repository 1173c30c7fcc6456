import { inventedFarm } from "../../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../../sample-workbooks/make/randomSource";
import { cropLoadAgainst } from "../../../src/domain/outlook/cropLoadRanges";
import { disagreement, ownHarvests } from "../../../src/domain/outlook/ownHarvests";
import { STAGES } from "../../../src/domain/outlook/cropOutlook";
import { blockOutlook } from "../../../src/survey/crop/blockOutlook";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetId } from "../../../src/survey/sheets/column";
import { cropLoadSentence, shootThinningSentence, winterNotes } from "../../../src/survey/crop/cropNotes";
import { disagreementSentence, ownHarvestsSentence } from "../../../src/survey/crop/harvestSentences";
import { crewCards } from "../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { farmFigures } from "../../../src/survey/crop/farmFigures";
import { outlookInputs } from "../../../src/survey/crop/outlookInputs";
import { winterOfSeason } from "../../../src/survey/season/winterOfSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import {
  blockLoss,
  readWinterCells,
  winterCells,
  winterRows,
  withWinter,
  type WinterRow,
} from "../../../src/survey/season/winterRows";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { stayingCordons } from "../../../src/survey/decide/stayingCordons";
import { LANGUAGES } from "../../../src/texts/language";
import {
  HANDBOOK_SAMPLES,
  NEXT_STEPS,
  OUTLOOK_LACKS,
  SPREAD_SOURCES,
  STAGE_NAMES,
} from "../../../src/texts/outlook";
import { handbookSampleSizes } from "../../../src/domain/outlook/handbookSampleSizes";
import { KILOGRAMS_PER_POUND } from "../../../src/domain/units";
import { outlookSheet } from "../../../src/workbook/results/outlookSheet";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets, type Rows } from "./seasonOfSheets";

const DAY_IN_WINTER_2026 = 46037;
const GROUPS = ["light", "middle", "heavy"];

const BLOCKS: Rows = [
  [
    "Block",
    "Cultivar",
    "Year planted",
    "Row spacing (ft)",
    "Vine spacing (ft)",
    "Vines",
    "Target crop (tons/acre)",
    "Cluster weight (lb)",
    "Clusters a shoot",
    "Budbreak",
  ],
  ["North Bench", "Marquette", 2011, 9, 6, 10, 4, 0.25, 1.8, 0.9],
];
const VINES: Rows = [
  ["Block", "Row", "Vine", "Status", "Prunings (lb)", "Clusters", "Shoots"],
  ["North Bench", 1, 1, "bearing", 2, 60, 30],
  ["North Bench", 1, 2, "bearing", 3, 80, null],
  ["North Bench", 1, 3, "missing", null, null, null],
  ["North Bench", 1, 4, "bearing", null, 70, 34],
  ["North Bench", 1, 5, "young", null, 5, 6],
  ["North Bench", 2, 1, "bearing", null, 50, null],
  ["North Bench", 2, 2, "bearing", null, null, null],
  ["North Bench", 2, 3, "bearing", null, null, null],
  ["North Bench", 2, 4, "bearing", null, 90, null],
  ["North Bench", 2, 5, "bearing", null, null, null],
];
const CORDONS: Rows = [
  [...CORDON_HEADS, "Nodes a spur", "Fixed choice", "Date"],
  ["North Bench", 1, 1, "left", "A", 1, 3, 8, 7, 2, "stays", DAY_IN_WINTER_2026],
  ["North Bench", 1, 1, "right", "B", 2, 3, 8, 8, 3, "stays", DAY_IN_WINTER_2026],
  ["North Bench", 1, 1, "right", "C", 1, 3, 8, 8, 3, "goes", DAY_IN_WINTER_2026],
  ["North Bench", 1, 2, "left", "A", 1, 3, 8, 5, null, "stays", DAY_IN_WINTER_2026],
  ["North Bench", 1, 2, "right", "B", 1, 3, 8, 6, null, "stays", DAY_IN_WINTER_2026],
  ["North Bench", 1, 4, "left", "A", 1, 3, 8, 5, 2, "stays", DAY_IN_WINTER_2026],
  ["North Bench", 1, 4, "right", "B", 1, 3, 8, 5, 2, null, DAY_IN_WINTER_2026],
];
const BUD_CUTS: Rows = [
  ["Block", "Cane", "Nodes cut", "Primaries alive", "Secondaries alive"],
  ["North Bench", 1, 8, 5, 7],
  ["North Bench", 2, 8, 6, 6],
  ["North Bench", 3, 8, 4, null],
  ["North Bench", 4, 8, 9, 8],
];

describe("inputs of the outlook from the sheets", () => {
  const inputsOf = () =>
    outlookInputs(seasonOfSheets({ blocks: BLOCKS, vines: VINES, cordons: CORDONS, budCuts: BUD_CUTS }))[0];
  const stage = (name: string) => inputsOf().stages.find((figures) => figures.stage === name);

  test("bearing vines come from the register; young and missing ones bear nothing", () => {
    const inputs = inputsOf();
    expect(inputs).toMatchObject({ block: "North Bench", planted: 10, bearingVines: 8 });
    expect(inputs.bearing).toMatchObject({ value: 0.8, law: "exact" });
  });

  test("clusters and shoots are those of bearing vines only, in the block of eight", () => {
    expect(inputsOf().clusterCounts).toEqual([60, 80, 70, 50, 90]);
    expect(stage("clusters")).toMatchObject({ clusters: { value: 70, sample: { n: 5, of: 8 } } });
    expect(stage("shoots")).toMatchObject({ shoots: { value: 32, sample: { n: 2, of: 8 } } });
  });

  test("nodes left: decided cordons only, nodes a spur of the row or of the Settings; an undecided vine is left out", () => {
    expect(stage("winter")).toMatchObject({
      nodes: { value: (7 * 2 + 8 * 3 + 11 * 2) / 2, sample: { n: 2 } },
    });
  });

  test("buds: secondaries beyond the live primaries are saved nodes; a cane with more alive than cut is left out", () => {
    const worth = (5 + 6 + 4 + 0.53 * 2) / 24;
    expect(stage("winter")).toMatchObject({
      buds: { value: expect.closeTo(worth, 12) },
      budbreak: { value: 0.9 },
      clustersPerShoot: { value: 1.8 },
    });
  });

  test("shoots are worth what the bud cuts say of those that live: 15 primaries and 2 saved secondaries", () => {
    expect(stage("shoots")).toMatchObject({ worth: { value: expect.closeTo((15 + 0.53 * 2) / 17, 12) } });
  });

  test("the season is that of the latest count, the target in kilograms a hectare, prunings a mean of the weighed vines", () => {
    const inputs = inputsOf();
    expect(inputs.year).toBe(2026);
    expect(inputs.targetCrop).toBeCloseTo(4 * 2241.702, 0);
    expect(inputs.prunings?.mean).toBeCloseTo(2.5 * KILOGRAMS_PER_POUND, 9);
    expect(inputs.prunings?.weighed).toBe(2);
    // two vines with shoots, two with nodes
    expect(inputs.lacking).toEqual([{ code: "fewVines", kind: "assumed" }]);
  });

  test("a lag-phase weight of the season adds the stage, and the harvest is set against every stage", () => {
    const harvest: Rows = [
      ["Block", "Year", "Picked (lb)", "Cluster weight at lag phase (lb)", "Clusters weighed"],
      ["North Bench", 2025, 900, 0.11, 100],
      ["North Bench", 2026, 130, 0.12, 150],
    ];
    const season = seasonOfSheets({
      blocks: BLOCKS,
      vines: VINES,
      cordons: CORDONS,
      budCuts: BUD_CUTS,
      harvest,
    });
    const [now] = outlookInputs(season);
    const lag = now.stages.find((figures) => figures.stage === "lagPhase");
    expect(lag).toMatchObject({ multiplier: { value: 2 }, clusterWeight: { sample: { n: 150 } } });
    const outlook = blockOutlook(now, season.settings, GROUPS);
    expect(outlook.stages.map(({ stage }) => stage)).toEqual(STAGES.filter((name) => name !== "frost"));
    expect(outlook.latest?.block.likely).toBeCloseTo(70 * 0.12 * KILOGRAMS_PER_POUND * 2 * 8, 9);
    const last = outlook.pickedOverLikely.at(-1)!;
    expect(last.ratio).toBeCloseTo(130 / (70 * 0.24 * 8), 9);
    expect(last.held).toBe(true);
  });

  test("rows as strata only where the sheet says the vines were drawn so and lists them all", () => {
    const settings: Rows = [
      ["Setting", "Value"],
      ["Vines were drawn", "by row"],
    ];
    const [byRow] = outlookInputs(seasonOfSheets({ blocks: BLOCKS, vines: VINES, settings }));
    const clusters = byRow.stages.find((figures) => figures.stage === "clusters");
    expect(clusters).toMatchObject({ clusters: { value: (3 * 70 + 5 * 70) / 8 } });
    const [partly] = outlookInputs(
      seasonOfSheets({
        blocks: [BLOCKS[0], BLOCKS[1].map((cell) => (cell === 10 ? 40 : cell))],
        vines: VINES,
        settings,
      }),
    );
    expect(partly.lacking).toContainEqual({ code: "rowsOfVines", kind: "assumed" });
    expect(partly.bearing).toMatchObject({ law: "beta", value: 0.8 });
    expect(partly.bearingVines).toBe(32);
  });

  test.each<[string, Partial<Record<SheetId, Rows>>, string]>([
    [
      "no cluster weight",
      { blocks: [BLOCKS[0], BLOCKS[1].map((cell) => (cell === 0.25 ? null : cell))], vines: VINES },
      "clusterWeight",
    ],
    [
      "no vines counted",
      { blocks: BLOCKS, vines: [VINES[0].slice(0, 4), VINES[1].slice(0, 4)] },
      "countedVines",
    ],
    ["no register", { blocks: BLOCKS }, "register"],
    [
      "no number of vines",
      {
        blocks: [
          ["Block", "Cultivar", "Cluster weight (lb)", "Budbreak"],
          ["North Bench", "Marquette", 0.25, 0.9],
        ],
      },
      "vinesOfBlock",
    ],
    ["no buds cut", { blocks: BLOCKS, vines: VINES, cordons: CORDONS }, "budCuts"],
    [
      "nothing decided",
      {
        blocks: BLOCKS,
        cordons: CORDONS.map((row) => row.map((cell) => (cell === "stays" || cell === "goes" ? null : cell))),
      },
      "decidedVines",
    ],
  ])("%s is named", (_why, sheets, code) => {
    const [lacking] = outlookInputs(seasonOfSheets(sheets));
    expect(lacking.lacking.map((what) => what.code)).toContain(code);
    expect(OUTLOOK_LACKS).toHaveProperty(code);
  });

  test("thinning to the target: at most so many clusters that 4 tons an acre are not passed", () => {
    const season = seasonOfSheets({ blocks: BLOCKS, vines: VINES });
    const { thinning } = blockOutlook(outlookInputs(season)[0], season.settings, GROUPS);
    const acres = (10 * 9 * 6) / 43560;
    const allowed = (4 * 2000 * acres) / 0.25;
    expect(thinning!.left).toBeLessThanOrEqual(allowed);
    expect(thinning!.groups.reduce((sum, group) => sum + group.vines, 0)).toBe(8);
  });

  test("a block in its third year is held against the setting for it", () => {
    const season = seasonOfSheets({
      blocks: [BLOCKS[0], BLOCKS[1].map((cell) => (cell === 2011 ? 2024 : cell))],
      vines: VINES,
      cordons: CORDONS,
    });
    const { young } = blockOutlook(outlookInputs(season)[0], season.settings, GROUPS);
    expect(young).toMatchObject({ leaf: 3, clusters: 10 });
  });
});

describe("the invented farm's outlook", () => {
  const farm = inventedFarm(randomSource(20260112));
  const US_UNITS: Partial<Record<string, string>> = { length: " (ft)", shortLength: " (in)", mass: " (lb)" };
  const season = readSeason(
    (Object.keys(farm) as SheetId[]).map((id) =>
      areaOf(SHEETS[id].name.en, [
        SHEETS[id].columns.map((column) => column.header.en + (US_UNITS[column.kind] ?? "")),
        ...farm[id].map((row) => SHEETS[id].columns.map((column) => row[column.id] ?? null)),
      ]),
    ),
  );
  const decisions = [...decideSeason(season)];
  const all = outlookInputs(season, { decided: decisions });

  test("every block has a winter, shoots and clusters, in the order of the season", () => {
    expect(all.map(({ block }) => block)).toEqual(["North Bench", "Creek Side", "Schoolhouse"]);
    for (const { stages, lacking } of all) {
      expect(stages.map(({ stage }) => stage)).toEqual(["winter", "shoots", "clusters"]);
      expect(lacking).toEqual([]);
    }
  });

  test("likely figures are the plain products of the farm's own rows", () => {
    for (const inputs of all) {
      const vines = farm.vines.filter((vine) => vine["block"] === inputs.block);
      const bearing = vines.filter((vine) => vine["status"] === "bearing");
      const counted = bearing.flatMap((vine) =>
        typeof vine["clusters"] === "number" ? [vine["clusters"]] : [],
      );
      const plan = farm.blocks.find((block) => block["block"] === inputs.block)!;
      const mean = counted.reduce((sum, n) => sum + n, 0) / counted.length;
      const outlook = blockOutlook(inputs, season.settings, GROUPS);
      const pounds = mean * Number(plan["clusterWeight"]) * bearing.length;
      expect(outlook.latest!.block.likely / KILOGRAMS_PER_POUND).toBeCloseTo(pounds, 6);
      expect(outlook.latest!.block.low).toBeLessThan(outlook.latest!.block.likely);
    }
  });

  test("two hours are not spent on what narrows the range by less than the setting; a lower one offers them", () => {
    for (const inputs of all) {
      const at = (share: number) =>
        blockOutlook(
          inputs,
          { ...season.settings, leastGainOfANextStep: share, marginOfACount: 0.001 },
          GROUPS,
        );
      const [vines] = at(0).steps;
      // 120 minutes at 3 a vine
      expect(vines).toMatchObject({ unit: "vines", more: 40, minutes: 120 });
      // the relative error of a product: 20 % for the cluster weight, cv / sqrt(n) for n vines of so many
      const n = inputs.clusterCounts.length;
      const of = inputs.bearingVines!;
      const mean = inputs.clusterCounts.reduce((sum, count) => sum + count, 0) / n;
      const variance = inputs.clusterCounts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / (n - 1);
      const error = (counted: number) =>
        Math.hypot(0.2, (Math.sqrt(variance) / mean) * Math.sqrt(1 / counted - 1 / of));
      expect(Math.abs(vines.gain - (1 - error(n + 40) / error(n)))).toBeLessThan(0.04);
      expect(at(vines.gain + 0.001).leastStep).toEqual({ minutes: 120, gain: vines.gain + 0.001 });
      expect(at(vines.gain + 0.001).steps).toEqual([]);
      expect(at(vines.gain - 0.001).steps).toEqual([vines]);
    }
  });

  test("plan and crop agree to the node: the cards' nodes of bearing vines, as counted where a card has none", () => {
    const cards = crewCards(season, decisions);
    for (const inputs of all) {
      const nodes: number[] = [];
      const counted: number[] = [];
      for (const { block, row, vines } of cards)
        for (const vine of vines) {
          if (block !== inputs.block || vine.status !== "bearing" || vine.keeps.length === 0) continue;
          const rows = farm.cordons.filter(
            (cordon) => cordon["block"] === block && cordon["row"] === row && cordon["vine"] === vine.vine,
          );
          const standing = vine.keeps
            .map(({ side, cordon }) => rows.find((one) => one["side"] === side && one["cordon"] === cordon)!)
            .reduce((sum, one) => sum + 2 * Number(one["liveSpurs"]), 0);
          counted.push(standing);
          nodes.push(vine.nodes?.nodes ?? standing);
        }
      const [winter] = inputs.stages;
      const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);
      expect(nodes.length).toBeGreaterThan(50);
      expect(nodes).not.toEqual(counted);
      const decidedOnNothing = (winter.stage === "winter" ? winter.nodes.sample!.n : 0) - nodes.length;
      expect(decidedOnNothing).toBeGreaterThanOrEqual(0);
      expect(winter).toMatchObject({ stage: "winter" });
      if (winter.stage !== "winter" || inputs.asCounted?.stage !== "winter") throw new Error("no winter");
      expect(winter.nodes.value * winter.nodes.sample!.n).toBeCloseTo(sum(nodes), 6);
      expect(inputs.asCounted.nodes.value * winter.nodes.sample!.n).toBeCloseTo(sum(counted), 6);
    }
  });

  test("the farm's own figures name their years and where they would be written", () => {
    const figures = farmFigures(season);
    const own = figures.filter(({ figure }) => figure === "clustersPerShoot");
    expect(own.map(({ cultivar }) => cultivar).sort()).toEqual(["Brianna", "Marquette"]);
    for (const { years, proposed, usual, now } of figures) {
      expect(years.length).toBe(4);
      expect(years.map(({ year }) => year)).toEqual([...years.map(({ year }) => year)].sort());
      const values = years.map(({ value }) => value);
      expect(proposed.value).toBeGreaterThanOrEqual(Math.min(usual, ...values));
      expect(proposed.value).toBeLessThanOrEqual(Math.max(usual, ...values));
      expect(now).toBeGreaterThan(0);
    }
    expect(figures.at(-1)).toMatchObject({
      figure: "lagMultiplier",
      writeTo: { setting: "lagPhaseMultiplier" },
    });
  });

  test("taking a proposed figure does not count the same years again", () => {
    const weights = (blockWeight: number) => {
      const sheets = {
        blocks: [
          ["Block", "Cultivar", "Cluster weight (lb)"],
          ["North Bench", "Marquette", blockWeight],
        ],
        harvest: [
          ["Block", "Year", "Cluster weight (lb)"],
          ["North Bench", 2024, 0.2],
          ["North Bench", 2025, 0.18],
        ],
      };
      return farmFigures(seasonOfSheets(sheets)).find(({ figure }) => figure === "clusterWeight")!;
    };
    const first = weights(0.25);
    const second = weights(first.proposed.value / KILOGRAMS_PER_POUND);
    expect(second.now).toBeCloseTo(first.proposed.value, 12);
    expect(second.proposed).toEqual(first.proposed);
    expect(second.usual).toBeCloseTo(0.25 * KILOGRAMS_PER_POUND, 12);
  });

  test("season rows add up to the staying cordons, and survive the sheet in every language", () => {
    const stays = stayingCordons(decisions);
    const rows = winterRows(season, stays);
    const live = decisions.flatMap(({ decision, toDecide }) =>
      decision.sides.map(
        ({ side, cordon }) =>
          toDecide.candidates.find((own) => own.side === side && own.cordon === cordon)?.liveSpurs ?? 0,
      ),
    );
    expect(rows.reduce((sum, row) => sum + row.liveSpurs, 0)).toBe(live.reduce((sum, n) => sum + n, 0));
    for (const language of LANGUAGES) {
      const titled = [["Made by hand"], [], ...winterCells(rows, language)];
      expect(readWinterCells(titled)).toEqual(rows);
    }
    expect(winterOfSeason(season)).toBe(2026);
  });
});

describe("the crop follows the plan", () => {
  const head = [...CORDON_HEADS, "Nodes a spur", "Fixed choice", "Date"];
  const sheets = {
    blocks: [
      ["Block", "Vines", "Cluster weight (lb)", "Node rule"],
      ["A", 2, 0.25, "24"],
    ],
    cordons: [
      head,
      ["A", 1, 1, "left", "A", 1, 3, 9, 8, 2, "stays", DAY_IN_WINTER_2026],
      ["A", 1, 1, "right", "B", 2, 3, 9, 8, 2, "stays", DAY_IN_WINTER_2026],
      ["A", 1, 2, "left", "A", 1, 3, 9, 4, 2, "stays", DAY_IN_WINTER_2026],
      ["A", 1, 2, "right", "B", 2, 3, 9, 3, 2, "stays", DAY_IN_WINTER_2026],
    ],
    harvest: [
      ["Block", "Year", "Picked (lb)"],
      ["A", 2024, 40],
      ["A", 2025, 60],
      ["A", 2026, 999],
    ],
    settings: [
      ["Setting", "Value"],
      ["Clusters a shoot, year to year", 0],
      ["Cluster weight, year to year", 0],
      ["Budbreak, year to year", 0],
      ["Basal shoots a spur", 1],
      ["Worth of a basal shoot", 0.5],
    ],
  };
  const outlookOf = () => {
    const season = seasonOfSheets(sheets);
    const [inputs] = outlookInputs(season, { decided: [...decideSeason(season)] });
    return blockOutlook(inputs, season.settings, GROUPS);
  };

  test("24 nodes on 16 spurs, 21 on 7 of at most 3; as counted 32 and 14, by hand", () => {
    const { inputs } = outlookOf();
    expect(inputs.stages[0]).toMatchObject({ nodes: { value: (24 + 21) / 2 } });
    expect(inputs.asCounted).toMatchObject({ nodes: { value: (32 + 14) / 2 } });
  });

  test("basal shoots grow on the plan's spurs: 23 spurs on 45 nodes, 23 on 46 as counted", () => {
    const outlook = outlookOf();
    const { inputs } = outlook;
    expect(inputs.stages[0]).toMatchObject({ basalWorth: (0.5 * 23) / 45 });
    expect(inputs.asCounted).toMatchObject({ basalWorth: (0.5 * 23) / 46 });
    // 22.5 nodes x (0.85 budbreak + 0.2556) x 2 clusters, and 23 x (0.85 + 0.25) x 2
    expect(outlook.latest?.clusters.likely).toBeCloseTo(22.5 * (0.85 + 11.5 / 45) * 2, 9);
    expect(outlook.asCounted?.clusters.likely).toBeCloseTo(23 * 1.1 * 2, 9);
  });

  test("the block's own harvests are those of the years before, 40 and 60 lb: 50 on average", () => {
    const { inputs } = outlookOf();
    expect(inputs.harvests?.years.map(({ year }) => year)).toEqual([2024, 2025]);
    expect(inputs.harvests!.mean).toBeCloseTo(50 * KILOGRAMS_PER_POUND, 9);
  });

  const inTonnes = (mass: number) => ({ value: mass / 1000, unit: "t" });
  test.each([
    [[40, 60], 0, 30, "allAbove"],
    [[40, 60], 70, 90, "allBelow"],
    [[40, 60], 45, 55, "leftOut"],
    [[40, 60, 90], 30, 60, "meanAbove"],
    [[10, 60, 20], 50, 70, "meanBelow"],
    [[40, 60], 45, 60, "none"],
  ] as const)("harvests of %j against %d to %d: %s", (picked, low, high, expected) => {
    const harvests = ownHarvests(picked.map((one, at) => ({ year: 2020 + at, picked: one })))!;
    expect(disagreement({ low, likely: (low + high) / 2, high }, harvests)).toBe(expected);
    for (const language of LANGUAGES) {
      const words = disagreementSentence(expected, { low, likely: 0, high }, harvests, inTonnes, language);
      if (expected === "none") expect(words).toBeUndefined();
      else expect(words).not.toMatch(/[{}]/);
    }
  });

  test("the sentence names range and harvests in the block's unit", () => {
    const harvests = ownHarvests([
      { year: 2024, picked: 4000 },
      { year: 2025, picked: 6000 },
    ])!;
    expect(ownHarvestsSentence(harvests, inTonnes, "en")).toBe(
      "Your own harvests, 2 from 2024 to 2025: 4 to 6 t, 5 on average.",
    );
    expect(
      disagreementSentence("allAbove", { low: 1000, likely: 2000, high: 3000 }, harvests, inTonnes, "en"),
    ).toBe(
      "Every harvest on record (4 to 6 t) lies above this range of 1 to 3: look at nodes left, clusters a shoot and cluster weight before you trust it.",
    );
  });

  test("the sheet has a line as counted beside the plan's, and says what disagrees", () => {
    const outlook = outlookOf();
    const { headers, rows } = outlookSheet([outlook], "en", "US", "day");
    const at = (row: number, header: string) => rows[row][headers.indexOf(header)];
    expect(rows.map((row) => row[1])).toEqual(["Winter: nodes left", "Winter: nodes as counted"]);
    expect(at(0, "Clusters a vine")).toBeCloseTo(22.5 * (0.85 + 11.5 / 45) * 2, 9);
    expect(at(1, "Clusters a vine")).toBeCloseTo(50.6, 9);
    expect(at(0, "Own harvests, mean (tons)")).toBeCloseTo(50 / 2000, 12);
    // 2 vines x 49.75 clusters x 0.25 lb = 24.9 lb, likely, from vines of 24 and 21 nodes: even the high end lies below 40 lb
    expect(outlook.latest!.block.likely / KILOGRAMS_PER_POUND).toBeCloseTo(24.875, 9);
    expect(at(0, "Against own harvests")).toContain("lies above this range");
    expect(at(1, "Against own harvests")).toBeNull();
  });
});

describe("shoots to thin to", () => {
  // 6 ft at 6 shoots a foot (Atucha and Wimmer 2015) carry 36; 44 counted on average: 8 go, 8 vines x 2 min = 0.267 h
  const outlookOf = (shoots: readonly [number, number]) => {
    const vines = VINES.map((row, at) =>
      at === 1 || at === 4 ? [...row.slice(0, 6), shoots[at === 1 ? 0 : 1]] : row,
    );
    const season = seasonOfSheets({ blocks: BLOCKS, vines });
    return blockOutlook(outlookInputs(season)[0], season.settings, GROUPS);
  };

  test("by the length of wire to a vine, with the hours of one person", () => {
    expect(outlookOf([40, 48]).inputs.shootThinning).toEqual({
      keep: 36,
      remove: 8,
      counted: 44,
      vines: 8,
      hours: expect.closeTo(16 / 60, 12),
    });
    expect(shootThinningSentence(outlookOf([40, 48]), "en")).toBe(
      "Thin shoots to 36 a vine: 44 were counted on average, so 8 go; about 0.267 h of one person for the block.",
    );
  });

  test("none where the wire carries those counted, and nothing is said where none were counted", () => {
    expect(outlookOf([30, 34]).inputs.shootThinning).toMatchObject({ keep: 32, remove: 0, hours: 0 });
    for (const language of LANGUAGES)
      expect(shootThinningSentence(outlookOf([30, 34]), language)).toContain("32");
    expect(shootThinningSentence({ inputs: { shootThinning: undefined } }, "en")).toBeUndefined();
  });
});

describe("after a spring frost", () => {
  const HEADS = [
    "Block",
    "Year",
    "Frost: primaries",
    "Frost: secondaries",
    "Frost: tertiaries",
    "Frost: shootless",
  ];
  const outlookOf = (counts: readonly CellValue[], cultivar = "Concord", vines = VINES) => {
    const season = seasonOfSheets({
      blocks: [BLOCKS[0], [BLOCKS[1][0], cultivar, ...BLOCKS[1].slice(2)]],
      vines,
      cordons: CORDONS,
      budCuts: BUD_CUTS,
      harvest: [HEADS, ["North Bench", 2026, ...counts]],
    });
    return blockOutlook(outlookInputs(season)[0], season.settings, GROUPS);
  };
  const stageOf = (outlook: ReturnType<typeof outlookOf>, name: string) =>
    outlook.stages.find(({ stage }) => stage === name)!;

  // Howell, Michigan State: 1, 0.35 and 0 of a crop on Concord; (60 + 30 x 0.35) / 100 = 0.705
  test("nodes counted by what lives on each are a stage of their own: 0.705 of a crop of 1.8 clusters a node", () => {
    const outlook = outlookOf([60, 30, 5, 5]);
    const nodes = outlook.inputs.stages.flatMap((figures) =>
      figures.stage === "frost" ? figures.nodes.value : [],
    );
    expect(outlook.inputs.frost).toMatchObject({ nodes: 100, share: 0.705 });
    expect(stageOf(outlook, "frost").clusters.likely).toBeCloseTo(nodes[0] * 0.705 * 1.8, 9);
    expect(winterNotes(outlook, "en").join("\n")).toContain(
      "After frost 60 of 100 nodes have a living primary shoot and 30 only a secondary, worth 0.35: 71% of a crop is left (Howell, Michigan State).",
    );
  });

  // Vinews 2023 No. 1: on Norton a secondary is worth about 0
  test("the block's own worth of a secondary counts: 60 of 100 on Norton", () => {
    expect(outlookOf([60, 30, 5, 5], "Norton").inputs.frost!.share).toBe(0.6);
  });

  // 32 shoots counted afterwards: of 95 living nodes (60 + 30 x 0.35) / 95 is what one of them is worth
  test("shoots counted afterwards are worth what the frost left of those that live", () => {
    const shoots = outlookOf([60, 30, 5, 5]).inputs.stages.find(({ stage }) => stage === "shoots");
    expect(shoots).toMatchObject({ worth: { value: expect.closeTo(70.5 / 95, 12) } });
  });

  test("without shootless nodes no share is worked out, and it is said", () => {
    const outlook = outlookOf([60, 30, 5, null]);
    expect(outlook.stages.map(({ stage }) => stage)).not.toContain("frost");
    expect(outlook.inputs.lacking).toContainEqual({ code: "frostCounts", kind: "needed" });
    expect(outlookOf([60, 30, null, 10]).inputs.frost!.share).toBe(0.705);
  });
});

describe("buds", () => {
  const cuts = (...rows: readonly (readonly [number, number, number, string?])[]): Rows => [
    ["Block", "Nodes cut", "Primaries alive", "Secondaries alive", "Cut by"],
    ...rows.map(([cut, primaries, secondaries, by]) => [
      "North Bench",
      cut,
      primaries,
      secondaries,
      by ?? null,
    ]),
  ];
  const outlookOf = (budCuts: Rows, more: Partial<Record<SheetId, Rows>> = {}) => {
    const season = seasonOfSheets({ blocks: BLOCKS, vines: VINES, cordons: CORDONS, budCuts, ...more });
    return blockOutlook(outlookInputs(season)[0], season.settings, GROUPS);
  };
  const buds = (outlook: ReturnType<typeof outlookOf>) =>
    outlook.inputs.stages[0].stage === "winter" ? outlook.inputs.stages[0].buds.value : NaN;

  test("the same buds written under dead primaries or of all nodes: Marquette, (5 + 3 x 0.53) / 8 = 0.82375 either way", () => {
    expect(buds(outlookOf(cuts([8, 5, 3])))).toBeCloseTo(0.82375, 12);
    expect(buds(outlookOf(cuts([8, 5, 8])))).toBeCloseTo(0.82375, 12);
  });

  test("each counter's own way is told: 8/5/3 of one and 8/5/8 of the other are (10 + 6 x 0.53) / 16", () => {
    const outlook = outlookOf(cuts([8, 5, 3, "Ana"], [8, 5, 8, "Ben"]));
    expect(buds(outlook)).toBeCloseTo(0.82375, 12);
    expect(outlook.otherSecondaries).toBeUndefined();
  });

  test("8/4/4 fits both ways and is asked: 4 of 8 nodes, or (4 + 4 x 0.53) / 8 = 0.765, with both crops", () => {
    const outlook = outlookOf(cuts([8, 4, 4]));
    expect(buds(outlook)).toBe(0.5);
    expect(outlook.inputs.lacking.map(({ code }) => code)).toContain("secondaries");
    const { likely } = outlook.stages[0].clusters;
    expect(outlook.otherSecondaries!.clusters.likely / likely).toBeCloseTo(0.765 / 0.5, 2);
    expect(winterNotes(outlook, "en").at(-1)).toMatch(/^Read the other way, the secondaries would give /);
    const answered = outlookOf(cuts([8, 4, 4]), {
      settings: [
        ["Setting", "Value"],
        ["Secondaries are written", "under dead primaries"],
      ],
    });
    expect(buds(answered)).toBeCloseTo(0.765, 12);
    expect(answered.otherSecondaries).toBeUndefined();
  });

  test("10 of 50 dead straddles Cornell's 20 %: both budgets of 20+20 at 2.5 lb, 50 and 50 x (1 + 0.3073)", () => {
    // Wilson at 90 %, z = 1.644854: centre (0.2 + 2.705543 / 100) / (1 + 2.705543 / 50) = 0.215398,
    // half 1.644854 sqrt(0.16 / 50 + 2.705543 / 10000) / 1.054111 = 0.091928; 0.1235 to 0.3073
    const notes = winterNotes(outlookOf(cuts([50, 40, 45])), "en");
    expect(notes).toEqual([
      "The range of dead buds reaches over 20%, where Cornell 2014 changes: 50 nodes at its low end, 65.4 nodes at its high end. More bud cuts would tell.",
    ]);
  });

  test("more than half dead: canes and trunks before a budget, in every language", () => {
    const outlook = outlookOf(cuts([50, 20, 30]));
    for (const language of LANGUAGES) expect(winterNotes(outlook, language)[0]).toContain("North Bench");
    expect(winterNotes(outlook, "en")[0]).toContain("Look at canes and trunks first");
    expect(winterNotes(outlookOf(cuts([50, 25, 30])), "en").join()).not.toContain("canes and trunks");
  });

  test("crop load says which pair it is; last year's crop is set over the prunings that followed it", () => {
    // 2025: 100 lb on 8 vines is 12.5 lb over 2.5 lb; 2026: likely crop of a vine over the same 2.5 lb
    const outlook = outlookOf(cuts([8, 5, 8]), {
      harvest: [
        ["Block", "Year", "Picked (lb)", "Vines picked"],
        ["North Bench", 2025, 100, 8],
      ],
    });
    const [following, before] = outlook.cropLoads;
    expect(following).toMatchObject({ pair: "following", year: 2025, verdict: "within", sure: true });
    expect(following.load.likely).toBeCloseTo(5, 9);
    expect(before).toMatchObject({ pair: "before", year: 2026 });
    expect(before.load.likely).toBeCloseTo(outlook.latest!.perVine.likely / (2.5 * KILOGRAMS_PER_POUND), 9);
    expect(cropLoadSentence(following, "en")).toBe(
      "Crop of 2025 over the prunings of the winter after it, the pair that published ranges are of. Crop load 5 lies within 4 to 10 (single canopy).",
    );
    expect(cropLoadSentence(following, "es")).toContain("4 a 10 (follaje simple)");
    expect(cropLoadSentence(before, "en")).toMatch(
      /^Likely crop of 2026 over the prunings of the winter before it, which is not the pair/,
    );
  });

  test("a load that only rounding parts from its limit lies in the range that is said to hold it", () => {
    const verdict = (load: number) =>
      cropLoadAgainst({ low: load, likely: load, high: load }, 1, "single canopy").verdict;
    expect([3.94, 3.96, 10.04, 10.06].map(verdict)).toEqual(["below", "within", "within", "above"]);
  });
});

describe("what a range holds", () => {
  const block = (head: readonly CellValue[], figures: readonly CellValue[]) => [
    ["Block", "Vines", "Cluster weight (lb)", ...head],
    ["A", 100, 0.25, ...figures],
  ];
  const shootsOf = (...counts: readonly number[]) => [
    ["Block", "Row", "Vine", "Status", "Shoots"],
    ...counts.map((count, at) => ["A", 1, at + 1, "bearing", count]),
  ];
  const shootStage = (blocks: Rows, vines: Rows) => {
    const [{ stages, lacking }] = outlookInputs(seasonOfSheets({ blocks, vines }));
    const [shoots] = stages;
    if (shoots.stage !== "shoots") throw new Error("no shoots");
    return { ...shoots, lacks: lacking.map(({ code }) => code) };
  };

  test("a usual figure brings the spread between farms: sqrt(0.25^2 + 0.25^2) x 2 = 0.7071; an own one 0.25 x 2", () => {
    const usual = shootStage(block([], []), shootsOf(30, 32, 34, 36, 38));
    expect(usual.clustersPerShoot.standardError).toBeCloseTo(0.70711, 5);
    expect(usual.lacks).toContain("usualFigures");
    const own = shootStage(block(["Clusters a shoot"], [2]), shootsOf(30, 32, 34, 36, 38));
    expect(own.clustersPerShoot.standardError).toBeCloseTo(0.5, 12);
    expect(own.lacks).not.toContain("usualFigures");
  });

  test("two vines alike borrow the spread of Settings: 0.43 x 40 x sqrt((1 - 2/100) / 2) = 12.04; five show their own", () => {
    const two = shootStage(block([], []), shootsOf(40, 40));
    expect(two.shoots).toMatchObject({ value: 40, law: "t" });
    expect(two.shoots.standardError).toBeCloseTo(12.04, 9);
    expect(two.lacks).toContain("fewVines");
    // five: sd sqrt(10), over sqrt(5), times sqrt(0.95)
    const five = shootStage(block([], []), shootsOf(36, 38, 40, 42, 44));
    expect(five.shoots.standardError).toBeCloseTo(Math.sqrt((10 * 0.95) / 5), 9);
    expect(five.lacks).not.toContain("fewVines");
  });

  test("with every vine counted nothing is borrowed", () => {
    const blocks = [
      ["Block", "Vines", "Cluster weight (lb)"],
      ["A", 2, 0.25],
    ];
    expect(shootStage(blocks, shootsOf(40, 44)).shoots).toMatchObject({ value: 42, law: "exact" });
  });
});

describe("winter against winter", () => {
  const row = (block: string, number: number, year: number, liveSpurs: number): WinterRow => ({
    block,
    row: number,
    year,
    vines: 10,
    cordons: 20,
    positions: 200,
    liveSpurs,
    gaps: 200 - liveSpurs,
    longestGap: 2,
    liveTrunks: 18,
  });

  test("this winter's rows take the place of those already kept for it, and of no others", () => {
    const kept = [row("A", 1, 2025, 150), row("A", 1, 2026, 149), row("B", 1, 2026, 120)];
    const joined = withWinter(kept, [row("a", 1, 2026, 140)]);
    expect(joined.map(({ year, liveSpurs }) => [year, liveSpurs])).toEqual([
      [2025, 150],
      [2026, 140],
      [2026, 120],
    ]);
  });

  test("10 % lost a year from 85 % live falls below 70 % in 1.84 years, worked by hand", () => {
    const rows = [
      row("A", 1, 2025, 200),
      row("A", 1, 2026, 180),
      row("A", 2, 2025, 180),
      row("A", 2, 2026, 162),
    ];
    const loss = blockLoss(rows, "A", 0.9, 0.7);
    expect(loss.lossAYear.likely).toBeCloseTo(0.1, 9);
    expect(loss.liveShare).toBeCloseTo(342 / 400, 12);
    expect(loss.yearsToFloor.likely).toBeCloseTo(Math.log(0.7 / 0.855) / Math.log(0.9), 9);
    expect(() => blockLoss(rows, "B", 0.9, 0.7)).toThrow(expect.objectContaining({ code: "tooFewRows" }));
  });

  test("a sheet without our headers is no Winters sheet", () => {
    expect(
      readWinterCells([
        ["Block", "Row"],
        ["A", 1],
      ]),
    ).toEqual([]);
    expect(readWinterCells([])).toEqual([]);
  });
});

test("every stage, source, step and handbook has its words", () => {
  for (const name of [...STAGES, "harvest"]) expect(STAGE_NAMES).toHaveProperty(name);
  for (const name of [
    "vines",
    "buds",
    "budbreak",
    "clustersPerShoot",
    "clusterWeight",
    "lagMultiplier",
    "missing",
  ])
    expect(SPREAD_SOURCES).toHaveProperty(name);
  for (const name of ["vines", "canes", "clusters"]) expect(NEXT_STEPS).toHaveProperty(name);
  for (const { source } of handbookSampleSizes(500)) expect(HANDBOOK_SAMPLES).toHaveProperty(source);
});
