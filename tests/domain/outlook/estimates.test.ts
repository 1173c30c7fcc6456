import jstat from "jstat";
import {
  cropOutlook,
  type ClusterFigures,
  type WinterFigures,
} from "../../../src/domain/outlook/cropOutlook";
import { clustersWeighed, clustersWeighedTogether } from "../../../src/domain/outlook/clustersWeighed";
import { exactly, fromYears, relativeSpread, shareFromYears } from "../../../src/domain/outlook/estimate";
import { fruitfulNodes, type CaneCut } from "../../../src/domain/outlook/fruitfulNodes";
import { worthOfShoots } from "../../../src/domain/outlook/worthOfShoots";
import { vinesAtRandom, vinesByRow } from "../../../src/domain/outlook/vinesCounted";
import { vinesPerHectare } from "../../../src/domain/units";
import { STRICKLAND_VINES, STRICKLAND_YIELDS } from "../../published/strickland1932";

const alive = STRICKLAND_YIELDS.map((column) => column.filter((pounds) => !Number.isNaN(pounds)));

describe("vines counted", () => {
  test("at random: standard error by jstat's spread and Cochran's finite block", () => {
    const counts = STRICKLAND_VINES.slice(0, 40);
    const { value, standardError, degrees } = vinesAtRandom(counts, 125);
    expect(value).toBeCloseTo(jstat.mean(counts), 12);
    expect(standardError).toBeCloseTo(
      (jstat.stdev(counts, true) / Math.sqrt(40)) * Math.sqrt(1 - 40 / 125),
      12,
    );
    expect(degrees).toBe(39);
  });

  test("every vine counted leaves no doubt", () => {
    expect(vinesAtRandom(STRICKLAND_VINES, 125)).toMatchObject({
      value: 5.944,
      standardError: 0,
      law: "exact",
    });
    expect(vinesByRow(alive.map((counts) => ({ vines: 25, counts }))).standardError).toBe(0);
  });

  test("columns as strata: Cochran's formula term by term, mean of 125 vines from five of each column", () => {
    const strata = alive.map((column) => ({ vines: 25, counts: column.slice(0, 5) }));
    const variance = strata.reduce(
      (sum, { counts }) => sum + 0.2 ** 2 * (jstat.stdev(counts, true) ** 2 / 5) * (1 - 5 / 25),
      0,
    );
    const ours = vinesByRow(strata);
    expect(ours.value).toBeCloseTo(jstat.mean(strata.map(({ counts }) => jstat.mean(counts))), 12);
    expect(ours.standardError).toBeCloseTo(Math.sqrt(variance), 12);
    expect(ours.degrees).toBeLessThanOrEqual(20);
    expect(ours.degrees).toBeGreaterThan(4);
  });

  test("where columns differ, strata know the mean better than the same vines at random", () => {
    const counts = alive.flatMap((column) => column.slice(0, 8));
    const byRow = vinesByRow(alive.map((column) => ({ vines: 25, counts: column.slice(0, 8) })));
    expect(byRow.standardError).toBeLessThan(vinesAtRandom(counts, 125).standardError);
    expect(byRow.value).toBeCloseTo(vinesAtRandom(counts, 125).value, 12);
  });

  test("rows of unequal size weigh by their vines", () => {
    const { value } = vinesByRow([
      { vines: 90, counts: [40, 40] },
      { vines: 10, counts: [80, 80] },
    ]);
    expect(value).toBeCloseTo(44, 12);
  });

  test("rows with one count or none join their neighbours; the block's vines stay complete", () => {
    const strata = [
      { vines: 30, counts: [40] },
      { vines: 30, counts: [] },
      { vines: 30, counts: [50] },
      { vines: 10, counts: [70] },
    ];
    const joined = vinesByRow([{ vines: 100, counts: [40, 50, 70] }]);
    expect(vinesByRow(strata)).toEqual(joined);
  });

  test.each([[[]], [[40]]])("%p counts say nothing about doubt", (counts) => {
    expect(() => vinesAtRandom(counts, 100)).toThrow(expect.objectContaining({ code: "tooFewVines" }));
    expect(() => vinesByRow([{ vines: 100, counts }])).toThrow(
      expect.objectContaining({ code: "tooFewVines" }),
    );
  });
});

describe("worth of the nodes after winter", () => {
  test("Wines & Vines 2015: with primaries worth 72.5 % of the crop a node with its secondary left is worth 0.38", () => {
    const { value } = fruitfulNodes([{ nodes: 100, primaries: 0, secondariesOnly: 100 }], 0.275 / 0.725);
    expect(value).toBeCloseTo(0.379, 3);
  });

  test("nodes that share their fate widen a pooled count: by the root of 1.7, but for the half bud added", () => {
    const count = [{ nodes: 1000, primaries: 500, secondariesOnly: 0 }];
    const alone = fruitfulNodes(count, 0.38).standardError;
    expect(fruitfulNodes(count, 0.38, 1).standardError).toBe(alone);
    expect(fruitfulNodes(count, 0.38, 1.7).standardError / alone).toBeCloseTo(Math.sqrt(1.7), 3);
    expect(() => fruitfulNodes(count, 0.38, 0.9)).toThrow();
  });

  test("single buds: the spread of a score with three outcomes, half a live and half a dead bud added", () => {
    const { standardError, law } = fruitfulNodes([{ nodes: 100, primaries: 50, secondariesOnly: 30 }], 0.4);
    const mean = (50 + 0.4 * 30 + 0.5) / 101;
    const square = (50 + 0.16 * 30 + 0.5) / 101;
    expect(law).toBe("beta");
    expect(standardError).toBeCloseTo(Math.sqrt((square - mean * mean) / 102), 12);
  });

  test("canes that differ more than chance widen the range, by the ratio estimate", () => {
    const canes: CaneCut[] = [8, 0, 8, 1, 7, 0, 8, 8].map((primaries) => ({
      nodes: 8,
      primaries,
      secondariesOnly: 0,
    }));
    const { value, standardError, degrees, law } = fruitfulNodes(canes, 0.38);
    const shares = canes.map((cane) => cane.primaries / 8);
    expect(law).toBe("logitT");
    expect(degrees).toBe(7);
    expect(value).toBeCloseTo(jstat.mean(shares), 12);
    expect(standardError).toBeCloseTo(jstat.stdev(shares, true) / Math.sqrt(8), 12);
    const together = fruitfulNodes([{ nodes: 64, primaries: 40, secondariesOnly: 0 }], 0.38);
    expect(standardError).toBeGreaterThan(2 * together.standardError);
  });

  test("canes that agree by chance are never surer than single buds", () => {
    const canes: CaneCut[] = Array.from({ length: 8 }, () => ({
      nodes: 8,
      primaries: 6,
      secondariesOnly: 0,
    }));
    const together = fruitfulNodes([{ nodes: 64, primaries: 48, secondariesOnly: 0 }], 0.38);
    expect(fruitfulNodes(canes, 0.38).standardError).toBeCloseTo(together.standardError, 12);
  });

  test.each([
    ["more primaries than nodes", { nodes: 5, primaries: 6, secondariesOnly: 0 }, "outside"],
    ["more secondaries than dead primaries", { nodes: 5, primaries: 3, secondariesOnly: 3 }, "outside"],
    ["no node cut", { nodes: 0, primaries: 0, secondariesOnly: 0 }, "noBudsCut"],
  ])("%s", (_why, cane, code) => {
    expect(() => fruitfulNodes([cane], 0.38)).toThrow(expect.objectContaining({ code }));
  });
});

describe("clusters weighed", () => {
  test("one by one, against jstat", () => {
    const weights = [0.081, 0.102, 0.095, 0.13, 0.064, 0.11];
    const { value, standardError, degrees } = clustersWeighed(weights);
    expect(value).toBeCloseTo(jstat.mean(weights), 12);
    expect(standardError).toBeCloseTo(jstat.stdev(weights, true) / Math.sqrt(6), 12);
    expect(degrees).toBe(5);
  });

  test("together with a usual spread: 100 clusters at 40 % are known to 4 %", () => {
    expect(relativeSpread(clustersWeighedTogether(0.1, 0.4, 100))).toBeCloseTo(0.04, 12);
  });
});

describe("the chain of a season", () => {
  const block = { planted: 800, bearing: exactly("missing", 0.95), density: vinesPerHectare(1993) };
  const winter: WinterFigures = {
    stage: "winter",
    nodes: exactly("vines", 48),
    buds: exactly("buds", 1),
    budbreak: exactly("budbreak", 0.75),
    clustersPerShoot: exactly("clustersPerShoot", 69 / 36),
    clusterWeight: exactly("clusterWeight", 9.8 / 69),
  };

  test("AJEV table 4, spur-pruned vine: 48 nodes, 36 shoots, 69 clusters, 9.8 kg (Cabernet Sauvignon, Oakville 1992)", () => {
    const outlook = cropOutlook(winter, block);
    expect(outlook.clusters.likely).toBeCloseTo(69, 9);
    expect(outlook.perVine.likely).toBeCloseTo(9.8, 9);
    expect(outlook.perHectare?.likely).toBeCloseTo(9.8 * 1993 * 0.95, 6);
    expect(outlook.block.likely).toBeCloseTo(9.8 * 760, 6);
    expect(outlook.halfWidth).toBe(0);
  });

  test("shoots counted after a hard winter are worth less: 10 primary and 30 secondary shoots bear like 21.4", () => {
    const worth = worthOfShoots([{ nodes: 60, primaries: 10, secondariesOnly: 30 }], 0.38, 0.9);
    expect(worth.value).toBeCloseTo((10 + 0.38 * 30) / 40, 12);
    const figures = {
      stage: "shoots",
      shoots: exactly("vines", 36),
      worth,
      clustersPerShoot: exactly("clustersPerShoot", 2),
      clusterWeight: exactly("clusterWeight", 0.1),
    } as const;
    const outlook = cropOutlook(figures, block);
    expect(outlook.clusters.likely).toBeCloseTo(36 * 0.535 * 2, 9);
    expect(outlook.spread.find(({ source }) => source === "buds")?.share).toBeCloseTo(1, 12);
  });

  test("basal shoots thin the worth of a shoot by their share of all shoots", () => {
    const cut = [{ nodes: 100, primaries: 60, secondariesOnly: 20 }];
    const plain = worthOfShoots(cut, 0.38, 0.9);
    const mixed = worthOfShoots(cut, 0.38, 0.9, { perNode: 0.28, worth: 0.5 });
    expect(mixed.value).toBeCloseTo((0.72 * plain.value + 0.28 * 0.5) / 1, 12);
    expect(mixed.standardError).toBeCloseTo(0.72 * plain.standardError, 12);
  });

  test("basal shoots add to what the nodes bear, at their own worth", () => {
    const { clusters } = cropOutlook({ ...winter, basalWorth: 0.25 }, block);
    expect(clusters.likely).toBeCloseTo(48 * (0.75 + 0.25) * (69 / 36), 9);
  });

  test("dead primaries with live secondaries bear at the secondary's worth", () => {
    const buds = fruitfulNodes([{ nodes: 100, primaries: 40, secondariesOnly: 30 }], 0.38);
    expect(cropOutlook({ ...winter, buds }, block).clusters.likely).toBeCloseTo(69 * (0.4 + 0.38 * 0.3), 9);
  });

  test("each stage leaves out what it replaced, and the sources add up", () => {
    const clusters = vinesAtRandom([60, 75, 50, 81, 66, 70, 58, 62], 760);
    const weight = fromYears("clusterWeight", 0.142, 0.2);
    const perShoot = fromYears("clustersPerShoot", 1.9, 0.25);
    const stages = [
      cropOutlook(
        {
          ...winter,
          buds: fruitfulNodes([{ nodes: 100, primaries: 80, secondariesOnly: 10 }], 0.38),
          budbreak: shareFromYears("budbreak", 0.85, 0.06),
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        block,
      ),
      cropOutlook(
        {
          stage: "shoots",
          shoots: vinesAtRandom([36, 30, 40, 35, 38, 33, 41, 37], 760),
          clustersPerShoot: perShoot,
          clusterWeight: weight,
        },
        block,
      ),
      cropOutlook({ stage: "clusters", clusters, clusterWeight: weight }, block),
      cropOutlook(
        {
          stage: "lagPhase",
          clusters,
          clusterWeight: clustersWeighedTogether(0.07, 0.4, 150),
          multiplier: fromYears("lagMultiplier", 2, 0.1),
        },
        block,
      ),
    ];
    expect(stages.map((stage) => stage.spread.map((part) => part.source).sort())).toEqual([
      ["budbreak", "buds", "clusterWeight", "clustersPerShoot", "missing", "vines"],
      ["clusterWeight", "clustersPerShoot", "missing", "vines"],
      ["clusterWeight", "missing", "vines"],
      ["clusterWeight", "lagMultiplier", "missing", "vines"],
    ]);
    for (const { spread } of stages) {
      expect(spread.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 12);
      expect(spread.map((part) => part.share)).toEqual(
        [...spread.map((part) => part.share)].sort((a, b) => b - a),
      );
    }
    const widths = stages.map((stage) => stage.halfWidth);
    expect([...widths].sort((a, b) => b - a)).toEqual(widths);
  });

  test("the larger source is named first: clusters a shoot at 25 % against weight at 20 %", () => {
    const { spread } = cropOutlook(
      {
        ...winter,
        clustersPerShoot: fromYears("clustersPerShoot", 1.9, 0.25),
        clusterWeight: fromYears("clusterWeight", 0.142, 0.2),
      },
      block,
    );
    expect(spread[0].source).toBe("clustersPerShoot");
    expect(spread[0].share).toBeCloseTo(0.0625 / (0.0625 + 0.04), 12);
  });

  test("Iowa State 2011: all clusters on 10 to 15 vines and 100 weighed come within 15 % at two in three; ours says as much", () => {
    const counts = Array.from(
      { length: 12 },
      (_, index) =>
        60 * (1 + 0.3216 * [1.6, -1.2, 0.4, -0.3, 0.9, -0.8, 0.1, -1.5, 1.2, 0.6, -0.5, -0.5][index]),
    );
    const figures: ClusterFigures = {
      stage: "clusters",
      clusters: vinesAtRandom(counts, 800),
      clusterWeight: clustersWeighedTogether(0.1, 0.4, 100),
    };
    const { halfWidth } = cropOutlook(figures, block, 0.9);
    expect(halfWidth).toBeGreaterThan(0.13);
    expect(halfWidth).toBeLessThan(0.22);
  });
});
