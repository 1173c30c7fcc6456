import { clustersWeighed, clustersWeighedTogether } from "../../../src/domain/outlook/clustersWeighed";
import { cropLoadAgainst, CROP_LOAD_RANGES } from "../../../src/domain/outlook/cropLoadRanges";
import { cropOutlook, type StageFigures } from "../../../src/domain/outlook/cropOutlook";
import {
  centreOf,
  exactly,
  fromYears,
  relativeSpread,
  shareFromCount,
  shareFromYears,
  spreadOfUsual,
} from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { worthOfShoots } from "../../../src/domain/outlook/worthOfShoots";
import { vinesPerHectare } from "../../../src/domain/units";

// Where a calculation turns from one case to the next; arithmetic by hand, beside each.

describe("clusters weighed", () => {
  test.each([[[]], [[0.1]]])("%p say nothing about their spread", (weights) => {
    expect(() => clustersWeighed(weights)).toThrow(
      expect.objectContaining({
        kind: "notAvailable",
        code: "tooFewClusters",
        facts: { argument: "cluster_weight", value: weights.length, needed: 2 },
      }),
    );
  });

  test("two are enough: 0.1 and 0.2 are 0.15, root of 0.005 over root of 2 is 0.05", () => {
    const { value, standardError, ...rest } = clustersWeighed([0.1, 0.2]);
    expect(value).toBeCloseTo(0.15, 12);
    expect(standardError).toBeCloseTo(0.05, 12);
    expect(rest).toEqual({
      source: "clusterWeight",
      degrees: 1,
      law: "t",
      sample: { unit: "clusters", n: 2, of: Infinity },
    });
  });

  test("alike leave no doubt, one by one or together", () => {
    const alike = {
      source: "clusterWeight",
      value: 0.125,
      standardError: 0,
      degrees: Infinity,
      law: "exact",
      sample: { unit: "clusters", n: 3, of: Infinity },
    };
    expect(clustersWeighed([0.125, 0.125, 0.125])).toEqual(alike);
    expect(clustersWeighedTogether(0.125, 0, 3)).toEqual(alike);
  });

  test("together their spread is taken as known: 0.1 x 0.4 over the root of 16 is 0.01", () => {
    const { standardError, ...rest } = clustersWeighedTogether(0.1, 0.4, 16);
    expect(standardError).toBeCloseTo(0.01, 12);
    expect(rest).toEqual({
      source: "clusterWeight",
      value: 0.1,
      degrees: Infinity,
      law: "t",
      sample: { unit: "clusters", n: 16, of: Infinity },
    });
  });
});

describe("crop load", () => {
  const certain = (crop: number) => ({ low: crop, likely: crop, high: crop });
  const verdict = (crop: number, range: Parameters<typeof cropLoadAgainst>[2] = "single canopy") =>
    cropLoadAgainst(certain(crop), 1, range).verdict;

  test("on a limit lies within, and so does one that only rounding to a tenth parts from it", () => {
    expect([3.94, 3.96, 4, 10, 10.04, 10.06].map((crop) => verdict(crop))).toEqual([
      "below",
      "within",
      "within",
      "within",
      "within",
      "above",
    ]);
  });

  test("against limits of two decimals rounding moves none out: 4.03 in 4.02 to 10.07, shown as 4.0, and 10.06, shown as 10.1", () => {
    expect([4.01, 4.03, 10.06, 10.16].map((crop) => verdict(crop, { low: 4.02, high: 10.07 }))).toEqual([
      "below",
      "within",
      "within",
      "above",
    ]);
  });

  test.each([
    [{ low: 5, likely: 7, high: 9 }, true],
    [{ low: 3, likely: 7, high: 9 }, false],
    [{ low: 5, likely: 7, high: 11 }, false],
    [{ low: 11, likely: 12, high: 14 }, true],
    [{ low: 2, likely: 3, high: 3.5 }, true],
  ])("of %p is sure: %p, because both ends lie where the likely one does, or not", (perVine, sure) => {
    expect(cropLoadAgainst(perVine, 1, "single canopy").sure).toBe(sure);
  });

  test("range by name, however it is written; an unknown name comes with those that are known", () => {
    expect(verdict(4.5, " SINGLE canopy ")).toBe("within");
    expect(verdict(4.5, "Divided Canopy")).toBe("below");
    expect(() => verdict(4.5, "table grapes")).toThrow(
      expect.objectContaining({
        kind: "invalid",
        facts: { argument: "range", value: "table grapes", known: CROP_LOAD_RANGES.map(({ name }) => name) },
      }),
    );
  });
});

describe("one figure with its doubt", () => {
  test.each([
    ["no spread between years", () => fromYears("budbreak", 2, 0), 2],
    ["no spread of a share", () => shareFromYears("budbreak", 0.9, 0), 0.9],
    ["no share", () => shareFromYears("budbreak", 0, 0.1), 0],
    ["all of it", () => shareFromYears("budbreak", 1, 0.1), 1],
  ])("%s is certain", (_why, estimate, value) => {
    expect(estimate()).toEqual({
      source: "budbreak",
      value,
      standardError: 0,
      degrees: Infinity,
      law: "exact",
    });
  });

  test("years keep their degrees and their law", () => {
    expect(fromYears("clustersPerShoot", 2, 0.25, 5)).toEqual({
      source: "clustersPerShoot",
      value: 2,
      standardError: 0.5,
      degrees: 5,
      law: "logT",
    });
    expect(shareFromYears("budbreak", 0.85, 0.05, 6)).toEqual({
      source: "budbreak",
      value: 0.85,
      standardError: 0.05,
      degrees: 6,
      law: "logitT",
    });
  });

  test("a usual figure's spread is that of years and farms, by Pythagoras, up to its most", () => {
    expect(spreadOfUsual(0.3, 0.4, 1)).toBeCloseTo(0.5, 12);
    expect(spreadOfUsual(0.3, 0.4, 0.45)).toBe(0.45);
  });

  test("1 of 1 is beta with 1.5 and 0.5: variance 0.75 / (4 x 3), middle 0.75", () => {
    const one = shareFromCount("budbreak", 1, 1);
    expect(one).toMatchObject({ value: 1, degrees: Infinity, law: "beta", shape: { a: 1.5, b: 0.5 } });
    expect(one.standardError).toBeCloseTo(0.25, 12);
    expect(centreOf(one)).toBeCloseTo(0.75, 12);
    expect(relativeSpread(one)).toBeCloseTo(1 / 3, 12);
  });

  test("nothing has no relative spread", () => {
    expect(relativeSpread(exactly("vines", 0))).toBe(0);
    expect(relativeSpread({ ...exactly("vines", 0), standardError: 1, law: "t" })).toBe(0);
  });
});

describe("the outlook of a stage", () => {
  const block = { planted: 1000, bearing: exactly("missing", 0.9), density: vinesPerHectare(2000) };
  const weight = exactly("clusterWeight", 0.1);
  const perShoot = exactly("clustersPerShoot", 2);
  const CASES: readonly (readonly [why: string, figures: StageFigures, clusters: number, perVine: number])[] =
    [
      [
        "winter: 40 nodes x (0.8 x 0.9 + 0.28) x 2",
        {
          stage: "winter",
          nodes: exactly("vines", 40),
          buds: exactly("buds", 0.8),
          budbreak: exactly("budbreak", 0.9),
          basalWorth: 0.28,
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        80,
        8,
      ],
      [
        "winter without basal shoots: 40 nodes x 0.8 x 0.75 x 2",
        {
          stage: "winter",
          nodes: exactly("vines", 40),
          buds: exactly("buds", 0.8),
          budbreak: exactly("budbreak", 0.75),
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        48,
        4.8,
      ],
      [
        "frost: 40 nodes x 0.7 x 2, budbreak is past",
        {
          stage: "frost",
          nodes: exactly("vines", 40),
          buds: exactly("buds", 0.7),
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        56,
        5.6,
      ],
      [
        "shoots, each in full: 30 x 2",
        { stage: "shoots", shoots: exactly("vines", 30), clustersPerShoot: perShoot, clusterWeight: weight },
        60,
        6,
      ],
      [
        "shoots worth half: 30 x 0.5 x 2",
        {
          stage: "shoots",
          shoots: exactly("vines", 30),
          worth: exactly("buds", 0.5),
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        30,
        3,
      ],
      ["clusters: 50", { stage: "clusters", clusters: exactly("vines", 50), clusterWeight: weight }, 50, 5],
      [
        "lag phase: 50 clusters of 0.1 kg that double",
        {
          stage: "lagPhase",
          clusters: exactly("vines", 50),
          clusterWeight: weight,
          multiplier: exactly("lagMultiplier", 2),
        },
        50,
        10,
      ],
    ];
  const certain = (value: number) => ({
    low: expect.closeTo(value, 9),
    likely: expect.closeTo(value, 9),
    high: expect.closeTo(value, 9),
  });

  test.each(CASES)("%s; 0.9 of 1,000 vines and of 2,000 a hectare", (_why, figures, clusters, perVine) => {
    const outlook = cropOutlook(figures, block);
    expect(outlook).toMatchObject({
      stage: figures.stage,
      confidence: 0.9,
      clusters: certain(clusters),
      perVine: certain(perVine),
      perHectare: certain(perVine * 1800),
      block: certain(perVine * 900),
      halfWidth: 0,
    });
    expect(outlook.spread.map(({ relative, share }) => [relative, share])).toEqual(
      outlook.spread.map(() => [0, 0]),
    );
  });

  test("without the vines of a hectare has no crop of a hectare", () => {
    expect(
      cropOutlook(CASES[5][1], { planted: 10, bearing: exactly("missing", 1) }).perHectare,
    ).toBeUndefined();
  });

  test("without any crop has no width, though its weight is in doubt", () => {
    const { block: crop, halfWidth } = cropOutlook(
      {
        stage: "clusters",
        clusters: exactly("vines", 0),
        clusterWeight: fromYears("clusterWeight", 0.1, 0.2),
      },
      block,
    );
    expect(crop).toEqual({ low: 0, likely: 0, high: 0 });
    expect(halfWidth).toBe(0);
  });

  test("half the width is that of the block over its likely crop", () => {
    const {
      perVine,
      block: crop,
      perHectare,
      halfWidth,
    } = cropOutlook(
      {
        stage: "clusters",
        clusters: exactly("vines", 50),
        clusterWeight: fromYears("clusterWeight", 0.1, 0.2),
      },
      block,
    );
    expect(halfWidth).toBeCloseTo((crop.high - crop.low) / 2 / 4500, 12);
    expect(crop.low).toBeCloseTo(perVine.low * 900, 9);
    expect(perHectare?.high).toBeCloseTo(perVine.high * 1800, 9);
  });

  test("basal shoots lessen what budbreak adds to the doubt: 8 % on three quarters is 6 %, squared 36 of 36 + 64", () => {
    const winter = {
      stage: "winter",
      nodes: exactly("vines", 40),
      buds: exactly("buds", 1),
      budbreak: shareFromYears("budbreak", 0.75, 0.06),
      clustersPerShoot: perShoot,
      clusterWeight: fromYears("clusterWeight", 0.1, 0.08),
    } as const;
    const shares = (basalWorth: number) =>
      cropOutlook({ ...winter, basalWorth }, block)
        .spread.slice(0, 2)
        .map(({ source, value, relative, share }) => [source, value, relative, share]);
    expect(shares(0.25)).toEqual([
      ["clusterWeight", 0.1, expect.closeTo(0.08, 12), expect.closeTo(0.64, 12)],
      ["budbreak", 0.75, expect.closeTo(0.08, 12), expect.closeTo(0.36, 12)],
    ]);
    expect(shares(0).map(([, , , share]) => share)).toEqual([
      expect.closeTo(0.5, 12),
      expect.closeTo(0.5, 12),
    ]);
  });

  test("of nodes that are worth nothing the doubt lies elsewhere", () => {
    const { spread } = cropOutlook(
      {
        stage: "frost",
        nodes: exactly("vines", 40),
        buds: shareFromCount("buds", 0, 20),
        clustersPerShoot: fromYears("clustersPerShoot", 2, 0.25),
        clusterWeight: weight,
      },
      block,
    );
    expect(spread[0]).toMatchObject({ source: "clustersPerShoot", share: 1 });
  });
});

describe("what a node is worth", () => {
  const cane = { nodes: 10, primaries: 6, secondariesOnly: 2 };

  test("two canes are single buds, three are canes with two degrees of freedom, empty ones are none", () => {
    expect(fruitfulNodes([cane, cane], 0.5)).toMatchObject({ law: "beta", sample: { unit: "canes", n: 2 } });
    expect(fruitfulNodes([cane, cane, cane], 0.5)).toMatchObject({
      source: "buds",
      law: "logitT",
      degrees: 2,
      sample: { unit: "canes", n: 3, of: Infinity },
    });
    const empty = { nodes: 0, primaries: 0, secondariesOnly: 0 };
    expect(fruitfulNodes([cane, empty, cane], 0.5)).toMatchObject({ law: "beta", sample: { n: 2 } });
  });

  test.each([
    ["all alive", { nodes: 8, primaries: 8, secondariesOnly: 0 }, 1],
    ["all dead", { nodes: 8, primaries: 0, secondariesOnly: 0 }, 0],
  ])("canes that are %s leave the doubt of single buds", (_why, alike, value) => {
    expect(fruitfulNodes([alike, alike, alike], 0.5)).toMatchObject({ value, law: "beta" });
  });

  test("canes between which all the difference lies: 4, 0, 4 of 4 with 2/3 is root of 3/2 x 32/3 / 144", () => {
    // Residuals 4 - 8/3, 0 - 8/3, 4 - 8/3 squared are 16/9 + 64/9 + 16/9 = 96/9 = 32/3.
    const canes = [4, 0, 4].map((primaries) => ({ nodes: 4, primaries, secondariesOnly: 0 }));
    const { value, standardError } = fruitfulNodes(canes, 0.5);
    expect(value).toBeCloseTo(2 / 3, 12);
    expect(standardError).toBeCloseTo(Math.sqrt((1.5 * 32) / 3 / 144), 12);
  });

  test("a secondary counts in the difference between canes by its worth: 2 primaries or 4 secondaries at a half are alike", () => {
    const canes = [
      { nodes: 4, primaries: 2, secondariesOnly: 0 },
      { nodes: 4, primaries: 0, secondariesOnly: 4 },
      { nodes: 4, primaries: 2, secondariesOnly: 0 },
    ];
    const single = (4.5 + 0.25 * 4) / 13 - (6.5 / 13) ** 2;
    expect(fruitfulNodes(canes, 0.5).standardError).toBeCloseTo(Math.sqrt(single / 14), 12);
  });

  test("one bud that stands for ten still weighs one bud: beta with a + b of 1", () => {
    const { shape } = fruitfulNodes([{ nodes: 2, primaries: 1, secondariesOnly: 0 }], 0.5, 10);
    expect(shape).toEqual({ a: expect.closeTo(0.5, 12), b: expect.closeTo(0.5, 12) });
  });
});

describe("what a shoot is worth", () => {
  const cut = [{ nodes: 100, primaries: 40, secondariesOnly: 30 }];

  test("without basal shoots as the nodes that live, whatever grew of them", () => {
    const counted = fruitfulNodes([{ nodes: 70, primaries: 40, secondariesOnly: 30 }], 0.38);
    expect(worthOfShoots(cut, 0.38, 0.9)).toEqual(counted);
    expect(worthOfShoots(cut, 0.38, 0)).toEqual(counted);
    expect(worthOfShoots(cut, 0.38, 0.9, { perNode: 0, worth: 1 })).toEqual(counted);
  });

  test("with nothing but basal shoots as those, without doubt", () => {
    expect(worthOfShoots(cut, 0.38, 0, { perNode: 0.3, worth: 1 })).toEqual(exactly("buds", 1));
    expect(worthOfShoots(cut, 0, 0, { perNode: 0.3, worth: 0 })).toEqual(exactly("buds", 0));
  });

  test("mixed keep law and sample of the cut canes: (0.7 x 0.734 + 0.3 x 0.5) / 1", () => {
    const mixed = worthOfShoots(cut, 0.38, 1, { perNode: 0.3, worth: 0.5 });
    expect(mixed.value).toBeCloseTo(0.7 * ((40 + 0.38 * 30) / 70) + 0.15, 12);
    expect(mixed).toMatchObject({
      source: "buds",
      degrees: Infinity,
      law: "logitT",
      sample: { unit: "canes", n: 1 },
    });
  });

  test("mixed are as much surer as the counted shoots are fewer of all: 0.63 of 0.93", () => {
    const counted = fruitfulNodes([{ nodes: 70, primaries: 40, secondariesOnly: 30 }], 0.38);
    const { standardError } = worthOfShoots(cut, 0.38, 0.9, { perNode: 0.3, worth: 0.5 });
    expect(standardError).toBeCloseTo((counted.standardError * 0.63) / 0.93, 12);
  });

  test("no living node says nothing of shoots", () => {
    expect(() => worthOfShoots([{ nodes: 9, primaries: 0, secondariesOnly: 0 }], 0.38, 0.9)).toThrow(
      expect.objectContaining({ kind: "notAvailable", code: "noBudsCut", facts: { argument: "cut" } }),
    );
  });
});
