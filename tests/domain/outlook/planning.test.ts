import fc from "fast-check";
import { blockMean } from "../../../src/domain/blockMean";
import { cropOutlook, type ClusterFigures } from "../../../src/domain/outlook/cropOutlook";
import { clustersWeighedTogether } from "../../../src/domain/outlook/clustersWeighed";
import { exactly, fromYears } from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { nextSteps } from "../../../src/domain/outlook/nextSteps";
import { samplingPlan, type RowOfVines } from "../../../src/domain/outlook/samplingPlan";
import { vinesAtRandom } from "../../../src/domain/outlook/vinesCounted";
import { vinesToCount } from "../../../src/domain/vinesToCount";
import { seededRandom } from "../../../src/domain/random";

const counts = [60, 75, 50, 81, 66, 70, 58, 62];
const figures = (): ClusterFigures => ({
  stage: "clusters",
  clusters: vinesAtRandom(counts, 200),
  clusterWeight: clustersWeighedTogether(0.1, 0.4, 50),
});
const block = { planted: 200, bearing: exactly("missing", 1) };
const costs = { vines: 3, canes: 4, clusters: 0.5 };
/** An hour, whatever it brings; a margin that no sample of these vines reaches. */
const LIMITS = { minutes: 60, leastGain: 0, margin: 0.001 };

describe("what narrows the range", () => {
  test("steps are within the time, best first, and each narrows", () => {
    const steps = nextSteps(figures(), block, 0.9, costs, { ...LIMITS, minutes: 120 });
    expect(steps.map((step) => step.unit).sort()).toEqual(["clusters", "vines"]);
    for (const step of steps) {
      expect(step.minutes).toBeLessThanOrEqual(120);
      expect(step.minutes).toBeGreaterThan(120 - costs[step.unit]);
      expect(step.gain).toBeGreaterThan(0);
    }
    expect(steps[0].halfWidth).toBeLessThanOrEqual(steps[1].halfWidth);
  });

  test("counting all vines that are left leaves the doubt of the weight alone", () => {
    const [step] = nextSteps(figures(), block, 0.9, costs, { ...LIMITS, minutes: 10000 }).filter(
      ({ unit }) => unit === "vines",
    );
    expect(step.more).toBe(192);
    const known = cropOutlook(
      { ...figures(), clusters: exactly("vines", figures().clusters.value) },
      block,
      0.9,
    );
    expect(step.halfWidth).toBeCloseTo(known.halfWidth, 9);
  });

  test("twice the vines with the same spread have the standard error that counting them would give", () => {
    const twice = [...counts, ...counts];
    const ratio = Math.sqrt(14 / 15);
    const [step] = nextSteps(
      figures(),
      block,
      0.9,
      { ...costs, clusters: 1e4 },
      { ...LIMITS, minutes: 24 },
    ).filter(({ unit }) => unit === "vines");
    expect(step.more).toBe(8);
    const counted = cropOutlook(
      {
        ...figures(),
        clusters: {
          ...vinesAtRandom(twice, 200),
          standardError: vinesAtRandom(twice, 200).standardError / ratio,
          degrees: 14,
        },
      },
      block,
      0.9,
    );
    expect(step.halfWidth).toBeCloseTo(counted.halfWidth, 6);
  });

  test("no more vines are advised than the plan of the count has, and none once it is done", () => {
    // counts: mean 65.25, sd 9.924717 (squares of the differences 689.5 over 7), cv 0.152103
    const plan = vinesToCount(0.152103, 0.05, 200, 0.9).vines;
    const vines = (margin: number) =>
      nextSteps(figures(), block, 0.9, costs, { ...LIMITS, minutes: 10000, margin }).find(
        ({ unit }) => unit === "vines",
      );
    expect(vines(0.05)?.more).toBe(plan - 8);
    expect(vines(0.15)).toBeUndefined();
  });

  test("a step that narrows less than its time is worth is not advised", () => {
    const all = nextSteps(figures(), block, 0.9, costs, LIMITS);
    const [best, other] = all.map(({ gain }) => gain);
    expect(other).toBeLessThan(best);
    const between = { ...LIMITS, leastGain: (best + other) / 2 };
    expect(nextSteps(figures(), block, 0.9, costs, between)).toEqual([all[0]]);
    expect(nextSteps(figures(), block, 0.9, costs, { ...LIMITS, leastGain: 1 })).toEqual([]);
  });

  test("in winter canes are offered and the season's clusters a shoot are not", () => {
    const steps = nextSteps(
      {
        stage: "winter",
        nodes: exactly("vines", 40),
        buds: fruitfulNodes([{ nodes: 40, primaries: 22, secondariesOnly: 6 }], 0.38),
        budbreak: exactly("budbreak", 0.9),
        clustersPerShoot: fromYears("clustersPerShoot", 1.9, 0.05),
        clusterWeight: exactly("clusterWeight", 0.1),
      },
      block,
      0.9,
      costs,
      LIMITS,
    );
    expect(steps.map((step) => [step.unit, step.more])).toEqual([["canes", 15]]);
  });
});

describe("which vines to count", () => {
  const rows: RowOfVines[] = [
    { row: 1, vines: Array.from({ length: 25 }, (_, index) => index + 1) },
    { row: 2, vines: Array.from({ length: 10 }, (_, index) => 2 * index + 1) },
    { row: 3, vines: [] },
    { row: 4, vines: Array.from({ length: 40 }, (_, index) => index + 3) },
  ];
  const rowOf = fc.record({
    row: fc.integer({ min: 1, max: 500 }),
    vines: fc.uniqueArray(fc.integer({ min: 1, max: 300 }), { maxLength: 40 }),
  });

  test("the same seed draws the same vines, another seed others", () => {
    expect(samplingPlan(rows, 12, seededRandom(3))).toEqual(samplingPlan(rows, 12, seededRandom(3)));
    expect(samplingPlan(rows, 12, seededRandom(3))).not.toEqual(samplingPlan(rows, 12, seededRandom(4)));
  });

  test("so many different bearing vines, rows within one of their share, in the order of the walk", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(rowOf, { selector: (row) => row.row, minLength: 1, maxLength: 12 }),
        fc.nat(),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (field, seed, part) => {
          const all = field.flatMap(({ row, vines }) => vines.map((vine) => `${row}/${vine}`));
          fc.pre(all.length > 0);
          const n = Math.max(1, Math.round(part * all.length));
          const plan = samplingPlan(field, n, seededRandom(seed));
          expect(plan).toHaveLength(n);
          const keys = plan.map(({ row, vine }) => `${row}/${vine}`);
          expect(new Set(keys).size).toBe(n);
          expect(keys.filter((key) => !all.includes(key))).toEqual([]);
          const walked = field.filter(({ row }) => plan.some((planned) => planned.row === row));
          expect(plan.map(({ row }) => row).filter((row, at, list) => row !== list[at - 1])).toEqual(
            walked.map(({ row }) => row),
          );
          walked.forEach(({ row, vines }, at) => {
            const drawn = plan.filter((planned) => planned.row === row).map(({ vine }) => vine);
            expect(Math.abs(drawn.length - (n * vines.length) / all.length)).toBeLessThan(1 + 1e-9);
            expect(drawn).toEqual([...drawn].sort((one, other) => (at % 2 ? other - one : one - other)));
          });
        },
      ),
    );
  });

  test("every bearing vine has the same chance (chi-square against 12 of 75, 99.9 %)", () => {
    const draws = 4000;
    const random = seededRandom(11);
    const seen = new Map<string, number>();
    for (let draw = 0; draw < draws; draw++)
      for (const { row, vine } of samplingPlan(rows, 12, random))
        seen.set(`${row}/${vine}`, (seen.get(`${row}/${vine}`) ?? 0) + 1);
    const chance = 12 / 75;
    expect(seen.size).toBe(75);
    const chiSquare = [...seen.values()].reduce(
      (sum, times) => sum + (times - draws * chance) ** 2 / (draws * chance * (1 - chance)),
      0,
    );
    expect(chiSquare).toBeLessThan(119);
  });

  test.each([0, 76, 2.5])("%p of 75 vines cannot be drawn", (n) => {
    expect(() => samplingPlan(rows, n, seededRandom(1))).toThrow(
      expect.objectContaining({ kind: "invalid" }),
    );
  });

  test("numbers of the seeded source are spread evenly (chi-square over 100 bins, 99.9 %)", () => {
    const random = seededRandom(20260301);
    const bins = new Array<number>(100).fill(0);
    for (let draw = 0; draw < 100000; draw++) bins[Math.floor(random() * 100)]++;
    expect(bins.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(149);
  });
});

// Oger, Laurent, Vismara and Tisseyre, OENO One 2023: one sample for both the mean and the missing share.
test("missing vines counted as zero and corrected again are lost twice", () => {
  const bearing = [50, 60, 40, 70];
  const withZeros = [...bearing, 0];
  const right = blockMean(bearing, Infinity, 0.95).mean * (1 - 1 / 5);
  const wrong = blockMean(withZeros, Infinity, 0.95).mean * (1 - 1 / 5);
  expect(1 - wrong / right).toBeCloseTo(0.2, 12);
  expect(blockMean(withZeros, Infinity, 0.95).mean).toBeCloseTo(right, 12);
});
