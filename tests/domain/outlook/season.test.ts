import fc from "fast-check";
import { cropLoadAgainst, CROP_LOAD_RANGES } from "../../../src/domain/outlook/cropLoadRanges";
import { shrunkRatio, shrunkShare } from "../../../src/domain/outlook/shrunkYears";
import { spurLoss, yearsToFloor, type RowSeason } from "../../../src/domain/outlook/spurLoss";
import { thinning, thinningGroups } from "../../../src/domain/outlook/thinning";
import { seededRandom } from "../../../src/domain/random";
import { SOURCES } from "../../../src/domain/sources";
import { tQuantile } from "../../../src/domain/statistics/tQuantile";
import { drawNormal } from "./monteCarlo";

const { exp, log, sqrt } = Math;

describe("the farm's own years against the published value", () => {
  /** Posterior mean by brute force: likelihood of the years times the prior, over a fine grid. */
  const byGrid = (years: number[], usual: number, yearSd: number, farmSd: number) => {
    let weight = 0;
    let sum = 0;
    let squares = 0;
    for (let mean = usual - 12 * farmSd; mean <= usual + 12 * farmSd; mean += farmSd / 400) {
      const exponent =
        ((mean - usual) / farmSd) ** 2 +
        years.reduce((total, year) => total + ((year - mean) / yearSd) ** 2, 0);
      const mass = exp(-exponent / 2);
      weight += mass;
      sum += mass * mean;
      squares += mass * mean * mean;
    }
    return { mean: sum / weight, variance: squares / weight - (sum / weight) ** 2 };
  };
  const pooledSpread = (years: number[], usual: number) => {
    const mean = years.reduce((sum, year) => sum + year, 0) / years.length;
    const squares = years.reduce((sum, year) => sum + (year - mean) ** 2, 0);
    return sqrt((4 * usual * usual + squares) / (3 + years.length));
  };

  test.each([[[2.4]], [[2.4, 1.7]], [[1.2, 1.3, 1.15, 1.4]], [[2.5, 2.6, 2.2, 2.9, 2.4, 2.3, 2.8, 2.5]]])(
    "clusters a shoot %p: the mean of the posterior on a grid",
    (years) => {
      const ours = shrunkRatio(years, { value: 1.9, yearSpread: 0.25, farmSpread: 0.2 });
      const logs = years.map(log);
      const yearSd = pooledSpread(logs, 0.25);
      const grid = byGrid(logs, log(1.9), yearSd, 0.2);
      expect(log(ours.value)).toBeCloseTo(grid.mean, 8);
      expect(ours.spread).toBeCloseTo(sqrt(yearSd ** 2 + grid.variance), 6);
      expect(ours.degrees).toBe(3 + years.length);
    },
  );

  test("budbreak on the logit, against the grid", () => {
    const years = [0.75, 0.78, 0.74];
    const logit = (share: number) => log(share / (1 - share));
    const slope = 0.85 * 0.15;
    const logits = years.map(logit);
    const grid = byGrid(logits, logit(0.85), pooledSpread(logits, 0.06 / slope), 0.05 / slope);
    const ours = shrunkShare(years, { value: 0.85, yearSpread: 0.06, farmSpread: 0.05 });
    expect(logit(ours.value)).toBeCloseTo(grid.mean, 8);
  });

  test("no year leaves the published value, many years leave the farm's own", () => {
    const usual = { value: 1.9, yearSpread: 0.25, farmSpread: 0.25 };
    expect(shrunkRatio([], usual)).toMatchObject({ value: 1.9, weight: 0, years: 0 });
    const many = shrunkRatio(
      Array.from({ length: 200 }, (_, index) => (index % 2 ? 1.2 : 1.4)),
      usual,
    );
    expect(many.value).toBeCloseTo(sqrt(1.2 * 1.4), 2);
    expect(many.weight).toBeGreaterThan(0.99);
  });

  test("the value lies between the farm's mean and the published one, closer with every like year", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        (year, n) => {
          const usual = { value: 1.9, yearSpread: 0.25, farmSpread: 0.25 };
          const at = (k: number) =>
            Math.abs(log(shrunkRatio(Array<number>(k).fill(year), usual).value / year));
          expect(at(n)).toBeLessThanOrEqual(Math.abs(log(1.9 / year)) + 1e-12);
          expect(at(n + 1)).toBeLessThanOrEqual(at(n) + 1e-12);
        },
      ),
    );
  });

  test("shrinking errs less than the farm's own mean alone, and than the published value alone (2,000 farms, 3 years)", () => {
    const random = seededRandom(42);
    let shrunkError = 0;
    let ownError = 0;
    let publishedError = 0;
    for (let farm = 0; farm < 2000; farm++) {
      const truth = log(1.9) + 0.2 * drawNormal(random);
      const years = Array.from({ length: 3 }, () => exp(truth + 0.25 * drawNormal(random)));
      const own = years.reduce((sum, year) => sum + log(year), 0) / 3;
      shrunkError +=
        (log(shrunkRatio(years, { value: 1.9, yearSpread: 0.25, farmSpread: 0.2 }).value) - truth) ** 2;
      ownError += (own - truth) ** 2;
      publishedError += (log(1.9) - truth) ** 2;
    }
    expect(shrunkError).toBeLessThan(0.85 * ownError);
    expect(shrunkError).toBeLessThan(0.85 * publishedError);
  });
});

describe("crop load against named ranges", () => {
  const certain = (crop: number) => ({ low: crop, likely: crop, high: crop });
  const AJEV = "AJEV tables 4 and 5, Cabernet Sauvignon, Oakville 1992";
  test.each([
    [`${AJEV}: spur, single canopy, printed 7.5`, 9.8, 1.3, "single canopy", "within"],
    [`${AJEV}: hedge, single canopy, printed 13.2`, 20.2, 1.53, "single canopy", "above"],
    [`${AJEV}: minimal, single canopy, printed 54.8`, 15.9, 0.29, "single canopy", "above"],
    [`${AJEV}: spur, divided canopy, printed 8.4`, 11.8, 1.41, "divided canopy", "within"],
    [
      "young Marquette 2018, high-wire cane, printed 3.41, could carry more",
      3.41,
      1,
      "single canopy",
      "below",
    ],
    ["young Marquette 2018, 4-arm Kniffin, printed 5.39", 5.39, 1, "single canopy", "within"],
  ])("%s", (_why, crop, prunings, range, verdict) => {
    expect(cropLoadAgainst(certain(crop), prunings, range)).toMatchObject({ verdict, sure: true });
  });

  test("a range of the crop that passes a limit leaves the verdict unsure", () => {
    expect(cropLoadAgainst({ low: 3, likely: 9.8, high: 14 }, 1.3, "single canopy")).toMatchObject({
      verdict: "within",
      sure: false,
    });
  });

  test("the farm's own limits can stand in for a name", () => {
    expect(cropLoadAgainst(certain(12), 1, { low: 8, high: 12 }).verdict).toBe("within");
    expect(() => cropLoadAgainst(certain(12), 1, "table grapes")).toThrow(
      expect.objectContaining({ code: "unknownCropLoadRange" }),
    );
    expect(() => cropLoadAgainst(certain(12), 0, "hybrids")).toThrow(
      expect.objectContaining({ code: "noPrunings" }),
    );
  });

  test("every range names its source or says that it has none", () => {
    for (const { source } of CROP_LOAD_RANGES)
      expect(source === "from memory, unverified" || source in SOURCES).toBe(true);
  });
});

describe("thinning by group", () => {
  const group = fc.record({
    name: fc.string(),
    vines: fc.integer({ min: 1, max: 300 }),
    clusters: fc.double({ min: 0, max: 150, noNaN: true }),
  });

  test("stays at or under what is allowed, one cluster more a vine would pass it", () => {
    fc.assert(
      fc.property(
        fc.array(group, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0.1, max: 1.2, noNaN: true }),
        (groups, part) => {
          const all = groups.reduce((sum, { vines, clusters }) => sum + vines * clusters, 0);
          const allowed = part * all;
          const done = thinning(groups, allowed, 2);
          expect(done.left).toBeLessThanOrEqual(allowed * (1 + 1e-9) + 1e-9 * 2000);
          for (const { remove, left, clusters, hours, vines } of done.groups) {
            expect(remove + left).toBeCloseTo(clusters, 6);
            expect(left).toBeGreaterThanOrEqual(0);
            if (left > 0) expect(Math.abs(remove - Math.round(remove))).toBeLessThan(1e-6);
            expect(hours).toBeCloseTo(remove > 0 ? (vines * 2) / 60 : 0, 9);
          }
          if (done.keep !== Infinity) {
            const oneMore = groups.reduce((sum, { vines, clusters }) => {
              const keep = done.keep + 1;
              return (
                sum + vines * (clusters <= keep ? clusters : clusters - Math.ceil(clusters - keep - 1e-9))
              );
            }, 0);
            expect(oneMore).toBeGreaterThan(allowed);
          }
        },
      ),
    );
  });

  test("one group is the plain clusters to remove: 52 of 70 stay (derived: 8000/605/0.25 = 52.89)", () => {
    const [only] = thinning([{ name: "all", vines: 605, clusters: 70 }], 8000 / 0.25, 2).groups;
    expect(only).toMatchObject({ left: 52, remove: 18 });
  });

  test("groups of counted vines stand for the whole block", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 150 }), { minLength: 3, maxLength: 60 }),
        fc.integer({ min: 0, max: 500 }),
        (counts, more) => {
          const groups = thinningGroups(counts, counts.length + more, ["light", "middle", "heavy"]);
          expect(groups.reduce((sum, { vines }) => sum + vines, 0)).toBe(counts.length + more);
          const means = groups.map(({ clusters }) => clusters);
          expect(means).toEqual([...means].sort((a, b) => a - b));
        },
      ),
    );
  });
});

describe("spurs lost from winter to winter", () => {
  const season = (row: number, year: number, liveSpurs: number, positions = 200): RowSeason => ({
    row,
    year,
    positions,
    liveSpurs,
  });

  test("one pair of winters: the ratio estimate of the textbooks (Cochran 1977, section 6.4)", () => {
    const before = [150, 180, 120, 160];
    const after = [141, 171, 117, 147];
    const ours = spurLoss(
      [...before.map((n, row) => season(row, 2025, n)), ...after.map((n, row) => season(row, 2026, n))],
      0.9,
    );
    const ratio = 576 / 610;
    const squares = before.reduce((sum, n, row) => sum + (after[row] - ratio * n) ** 2, 0);
    const error = sqrt(squares / 3 / 4) / (610 / 4);
    expect(ours.lossAYear.likely).toBeCloseTo(1 - ratio, 9);
    expect(ours.lossAYear.high - ours.lossAYear.likely).toBeCloseTo(tQuantile(0.95, 3) * error, 9);
    expect(ours).toMatchObject({ rows: 4, pairs: 4, latestYear: 2026, liveShare: 576 / 800 });
  });

  test("winters without a count are bridged: 10 % a year over two years leave 81 %", () => {
    const ours = spurLoss(
      [season(1, 2024, 100), season(1, 2026, 81), season(2, 2024, 200), season(2, 2026, 162)],
      0.9,
    );
    expect(ours.lossAYear.likely).toBeCloseTo(0.1, 9);
    expect(ours.lossAYear.high).toBeCloseTo(0.1, 6);
  });

  test("spurs won back are a negative loss", () => {
    expect(
      spurLoss([season(1, 2025, 100), season(1, 2026, 110), season(2, 2025, 100), season(2, 2026, 106)], 0.9)
        .lossAYear.likely,
    ).toBeCloseTo(-0.08, 9);
  });

  test("a 90 % range holds the true loss of 88 to 92 % of simulated blocks", () => {
    const random = seededRandom(9);
    let held = 0;
    const blocks = 3000;
    for (let block = 0; block < blocks; block++) {
      const seasons: RowSeason[] = [];
      for (let row = 0; row < 14; row++) {
        let live = Math.min(200, Math.round(150 + 20 * drawNormal(random)));
        seasons.push(season(row, 2023, live));
        for (const year of [2024, 2025, 2026]) {
          const kept = Math.min(1, 0.94 + 0.02 * drawNormal(random));
          live = Math.max(0, Math.min(200, Math.round(live * kept + sqrt(live * 0.06) * drawNormal(random))));
          seasons.push(season(row, year, live));
        }
      }
      const { low, high } = spurLoss(seasons, 0.9).lossAYear;
      if (low <= 0.06 && high >= 0.06) held++;
    }
    expect(held / blocks).toBeGreaterThan(0.88);
    expect(held / blocks).toBeLessThan(0.92);
  });

  test("years to a floor: 5 % a year from 90 % to 70 % is 4.9 years; there already is 0; never is Infinity", () => {
    expect(yearsToFloor({ low: -0.01, likely: 0.05, high: 0.2 }, 0.9, 0.7)).toEqual({
      low: log(0.7 / 0.9) / log(0.8),
      likely: log(0.7 / 0.9) / log(0.95),
      high: Infinity,
    });
    expect(yearsToFloor({ low: 0.01, likely: 0.05, high: 0.2 }, 0.6, 0.7)).toEqual({
      low: 0,
      likely: 0,
      high: 0,
    });
  });

  test.each([
    ["one row only", [season(1, 2025, 100), season(1, 2026, 90)], "tooFewRows"],
    ["one winter only", [season(1, 2025, 100), season(2, 2025, 90)], "tooFewRows"],
    ["more spurs than positions", [season(1, 2025, 201), season(1, 2026, 90)], "rowSpursAbovePositions"],
    [
      "a row twice in a winter",
      [season(1, 2025, 100), season(1, 2025, 90), season(2, 2025, 1), season(2, 2026, 1)],
      "outside",
    ],
  ])("%s", (_why, seasons, code) => {
    expect(() => spurLoss(seasons, 0.9)).toThrow(expect.objectContaining({ code }));
  });
});
