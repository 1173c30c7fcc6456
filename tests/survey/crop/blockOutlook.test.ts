import { ownHarvests } from "../../../src/domain/outlook/ownHarvests";
import { vinesPerHectare } from "../../../src/domain/units";
import { blockOutlook } from "../../../src/survey/crop/blockOutlook";
import { outlookInputs, type BlockOutlookInputs } from "../../../src/survey/crop/outlookInputs";
import type { SettingValues } from "../../../src/survey/settings/settings";
import { seasonOfSheets, type Sheets } from "./seasonOfSheets";

const GROUPS = ["light", "middle", "heavy"];

/** Three of three vines with 10, 20 and 30 clusters of 0.1 kg: 6 kg, give or take what a cluster weighs from year to year. */
const SHEETS: Sheets = {
  blocks: [
    ["Block", "Vines", "Cluster weight (kg)"],
    ["A", 3, 0.1],
  ],
  vines: [
    ["Block", "Row", "Vine", "Status", "Clusters", "Prunings (kg)"],
    ["A", 1, 1, "bearing", 10, 0.5],
    ["A", 1, 2, "bearing", 20, 0.5],
    ["A", 1, 3, "bearing", 30, 0.5],
  ],
};
const outlookOf = (
  inputs: Partial<BlockOutlookInputs> = {},
  settings: Partial<SettingValues> = {},
  sheets: Sheets = {},
) => {
  const season = seasonOfSheets({ ...SHEETS, ...sheets });
  const [read] = outlookInputs(season, { year: 2026 });
  return blockOutlook({ ...read, ...inputs }, { ...season.settings, ...settings }, GROUPS);
};
const NOTHING = { stages: [] };

test("crop of a hectare where the vines on it are known: 2 kg a vine on 1500 vines", () => {
  expect(outlookOf({ density: vinesPerHectare(1500) }).latest!.perHectare!.likely).toBeCloseTo(3000, 6);
  expect(outlookOf().latest!.perHectare).toBeUndefined();
});

describe("the harvest against each stage", () => {
  test("an edge of the range belongs to it", () => {
    const { low, high } = outlookOf().latest!.block;
    const held = (picked: number) => outlookOf({ picked }).pickedOverLikely.map((one) => one.held);
    expect([low * 0.999, low, high, high * 1.001].map(held)).toEqual([[false], [true], [true], [false]]);
  });

  test("picked over likely: 9 kg over 6", () => {
    expect(outlookOf({ picked: 9 }).pickedOverLikely).toEqual([
      { stage: "clusters", ratio: expect.closeTo(1.5, 9), held: false },
    ]);
  });

  test("nothing before it is picked, nor where no crop was to be expected", () => {
    expect(outlookOf().pickedOverLikely).toEqual([]);
    const bare = SHEETS.vines!.map((row, at) =>
      row.map((cell, column) => (at > 0 && column === 4 ? 0 : cell)),
    );
    expect(outlookOf({ picked: 9 }, {}, { vines: bare }).pickedOverLikely).toEqual([]);
  });

  test("each stage against the harvests of other years", () => {
    const harvests = ownHarvests([{ year: 2024, picked: 60 }]);
    expect(outlookOf({ harvests }).againstHarvests).toEqual([
      { stage: "clusters", disagreement: "allAbove" },
    ]);
    expect(outlookOf().againstHarvests).toEqual([]);
  });
});

describe("the first years of a block", () => {
  test.each([
    [2026, { leaf: 1, clusters: 0 }],
    [2025, { leaf: 2, clusters: 4 }],
    [2024, { leaf: 3, clusters: 10 }],
    [2023, undefined],
    [2022, undefined],
    [2027, undefined],
    [undefined, undefined],
  ])("planted in %j", (yearPlanted, expected) => {
    const settings = { clustersAVineInYear2: 4, clustersAVineInYear3: 10 };
    const { young } = outlookOf({ yearPlanted }, settings);
    expect(young).toEqual(expected && { ...expected, likely: expect.closeTo(20, 9) });
    expect(outlookOf({ ...NOTHING, yearPlanted }, settings).young?.likely).toBeUndefined();
  });
});

describe("crop load", () => {
  // Picked before: 12 kg on 3 vines, 4 kg over 0.5 kg of prunings; this year 2 kg likely over the same.
  const before = { pickedBefore: { picked: 12, vines: 3 } };

  test("one of last year's crop, one of this year's", () => {
    expect(outlookOf(before).cropLoads).toMatchObject([
      { pair: "following", year: 2025, load: { low: 8, likely: 8, high: 8 }, range: "single canopy" },
      { pair: "before", year: 2026, load: { likely: expect.closeTo(4, 9) }, limits: { low: 4, high: 10 } },
    ]);
  });

  test("none of last year's where no vine bore it, none of this year's without an outlook", () => {
    const pairs = (inputs: Partial<BlockOutlookInputs>) =>
      outlookOf(inputs).cropLoads.map(({ pair }) => pair);
    expect(pairs({})).toEqual(["before"]);
    expect(pairs({ pickedBefore: { picked: 12, vines: 0 } })).toEqual(["before"]);
    expect(pairs({ ...before, ...NOTHING })).toEqual(["following"]);
    expect(pairs({ ...before, prunings: undefined })).toEqual([]);
  });

  test("none against limits that are the wrong way round; a range of one figure is one", () => {
    const against = (low: number, high: number) =>
      outlookOf(before, { "least crop load, single canopy": low, "most crop load, single canopy": high })
        .cropLoads;
    expect(against(10.5, 10)).toEqual([]);
    expect(against(8, 8)[0]).toMatchObject({ verdict: "within", limits: { low: 8, high: 8 } });
  });
});

describe("thinning to the target", () => {
  // 1000 kg/ha on 3 vines of 1000 a hectare are 3 kg, 30 clusters of 0.1 kg: each vine keeps 10.
  const target = { targetCrop: 1000 as BlockOutlookInputs["targetCrop"], density: vinesPerHectare(1000) };

  test("10, 20 and 30 clusters to 30 in all: 10 on each", () => {
    expect(outlookOf(target).thinning).toMatchObject({
      keep: 10,
      left: 30,
      groups: [
        { name: "light", vines: 1, remove: 0 },
        { name: "middle", vines: 1, remove: 10 },
        { name: "heavy", vines: 1, remove: 20 },
      ],
    });
  });

  // Weighed 0.075 kg at lag phase, twice as much at harvest: 3 / 0.15 = 20 clusters, 6 on each but the rest of a whole one
  test("by the weight at lag phase times its multiplier, once that is known", () => {
    const harvest = [
      ["Block", "Year", "Cluster weight at lag phase (kg)"],
      ["A", 2026, 0.075],
    ];
    expect(outlookOf(target, {}, { harvest }).thinning).toMatchObject({ keep: 6, left: 18 });
  });

  test.each<[string, Partial<BlockOutlookInputs>]>([
    ["a target", { targetCrop: undefined }],
    ["the vines on a hectare", { density: undefined }],
    ["a cluster weight", { clusterWeight: undefined }],
    ["a vine for each group", { clusterCounts: [10, 20] }],
  ])("nothing without %s", (_, inputs) => {
    expect(outlookOf({ ...target, ...inputs }).thinning).toBeUndefined();
  });
});

describe("what narrows the range", () => {
  const partly = {
    blocks: [
      ["Block", "Vines", "Cluster weight (kg)"],
      ["A", 300, 0.1],
    ],
  };

  test("nothing where every vine is counted, or where nothing is known", () => {
    expect(outlookOf()).not.toHaveProperty("leastStep");
    expect(outlookOf().steps).toEqual([]);
    expect(outlookOf(NOTHING)).not.toHaveProperty("leastStep");
    expect(outlookOf(NOTHING).steps).toEqual([]);
  });

  test("more vines where only some are: 40 in two hours at 3 minutes each", () => {
    const { leastStep, steps } = outlookOf({}, {}, partly);
    expect(leastStep).toEqual({ minutes: 120, gain: 0.05 });
    expect(steps).toMatchObject([{ unit: "vines", more: 40, minutes: 120 }]);
  });
});

test("the same crop as counted beside the plan's only where there is a plan", () => {
  const [clusters] = outlookOf().inputs.stages;
  expect(outlookOf().asCounted).toBeUndefined();
  expect(outlookOf({ asCounted: clusters }).asCounted!.block.likely).toBeCloseTo(6, 9);
});
