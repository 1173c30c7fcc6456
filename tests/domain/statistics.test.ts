import betaReference from "@stdlib/stats-base-dists-beta-quantile";
import normalReference from "@stdlib/stats-base-dists-normal-quantile";
import tReference from "@stdlib/stats-base-dists-t-quantile";
import jstat from "jstat";
import { blockMean } from "../../src/domain/blockMean";
import { clopperPearsonInterval, wilsonInterval } from "../../src/domain/proportionInterval";
import { betaQuantile } from "../../src/domain/statistics/betaQuantile";
import { incompleteBeta } from "../../src/domain/statistics/incompleteBeta";
import { logGamma } from "../../src/domain/statistics/logGamma";
import { normalQuantile } from "../../src/domain/statistics/normalQuantile";
import { tQuantile } from "../../src/domain/statistics/tQuantile";
import { vinesToCount } from "../../src/domain/vinesToCount";
import { STRICKLAND_VINES } from "../published/strickland1932";

const PROBABILITIES = [
  1e-6, 0.001, 0.025, 0.05, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 0.95, 0.975, 0.995, 0.9995,
];
const DEGREES = [1, 1.5, 2, 3, 4.7, 5, 9, 12, 19, 29.3, 60, 120, 500, 5000, 1e6];

/** Relative where the reference is large, absolute near 0. */
const close = (ours: number, reference: number, within: number) => {
  const apart = Math.abs(ours - reference) / Math.max(1, Math.abs(reference));
  expect({ ours, reference, close: apart <= within }).toEqual({ ours, reference, close: true });
};

describe("quantiles against two reference libraries", () => {
  test.each(PROBABILITIES)("normal at %p", (p) => {
    close(normalQuantile(p), normalReference(p, 0, 1), 1e-11);
    close(normalQuantile(p), jstat.normal.inv(p, 0, 1), 1e-6);
  });

  test.each(DEGREES)("Student's t with %p degrees of freedom", (degrees) => {
    for (const p of PROBABILITIES) {
      close(tQuantile(p, degrees), tReference(p, degrees), 1e-8);
      if (degrees <= 5000 && p > 1e-5) close(tQuantile(p, degrees), jstat.studentt.inv(p, degrees), 1e-6);
    }
  });

  test.each([
    [0.5, 0.5],
    [1, 20],
    [15, 134],
    [16, 133],
    [0.7, 3],
    [30, 126],
    [400, 2],
    [1, 1],
    [2500, 7500],
  ])("beta with a = %p, b = %p", (a, b) => {
    for (const p of PROBABILITIES) {
      close(betaQuantile(p, a, b), betaReference(p, a, b), 1e-9);
      if (p > 1e-5) close(betaQuantile(p, a, b), jstat.beta.inv(p, a, b), 1e-6);
    }
  });

  test("the incomplete beta function against jstat", () => {
    for (const a of [0.5, 1, 3, 40])
      for (const b of [0.5, 2, 9, 80])
        for (const x of [0, 0.01, 0.2, 0.5, 0.77, 0.999, 1])
          close(incompleteBeta(x, a, b), jstat.beta.cdf(x, a, b), 1e-6);
  });

  test("log gamma against factorials and jstat", () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      factorial *= n;
      close(logGamma(n + 1), Math.log(factorial), 1e-14);
    }
    for (const x of [0.1, 0.5, 1.3, 7.7, 123.4, 1e5]) close(logGamma(x), jstat.gammaln(x), 1e-9);
  });

  test.each([
    [0.25, -0.674489750196082],
    [0.001, -3.09023230616781],
    [1e-20, -9.26234008979841],
  ])(
    "normal at %p, printed beside the method (Wichura 1988, Applied Statistics 37:477-484)",
    (p, printed) => {
      close(normalQuantile(p), printed, 5e-15);
      if (p > 1e-16) close(normalQuantile(1 - p), -printed, 1e-13);
    },
  );

  test("the last probability below 1 lies as far out as its distance from 1 does on the other side", () => {
    const distance = Number.EPSILON / 2;
    expect(normalQuantile(1 - distance)).toBe(-normalQuantile(distance));
  });

  test("without end to its degrees of freedom t is normal, on both sides and in the middle", () => {
    for (const degrees of [2e9, Infinity])
      for (const p of [0.025, 0.5, 0.975]) expect(tQuantile(p, degrees)).toBe(normalQuantile(p));
    expect(tQuantile(0.5, 3)).toBe(0);
  });

  test("nothing of a beta distribution lies below 0, all of it below 1", () => {
    for (const [a, b] of [
      [0.5, 2],
      [16, 133],
    ]) {
      expect([betaQuantile(0, a, b), betaQuantile(1, a, b)]).toEqual([0, 1]);
      expect([-0.5, 0, 1, 1.5].map((x) => incompleteBeta(x, a, b))).toEqual([0, 0, 1, 1]);
    }
  });

  test("a beta quantile far below 1 keeps its digits: with a of 0.1 and b of 1 the tenth power of the probability", () => {
    expect(betaQuantile(0.001, 0.1, 1) / 1e-30).toBeCloseTo(1, 9);
  });

  const refusal = (argument: string, value: number) =>
    expect.objectContaining({ code: "outside", facts: expect.objectContaining({ argument, value }) });

  test.each([NaN, 0, 1, -0.1, 1.1])("a probability of %p is refused", (p) => {
    expect(() => normalQuantile(p)).toThrow(refusal("probability", p));
    expect(() => tQuantile(p, 5)).toThrow(refusal("probability", p));
    if (p !== 0 && p !== 1) expect(() => betaQuantile(p, 2, 3)).toThrow(refusal("probability", p));
  });

  test.each([NaN, 0, -1])("%p degrees of freedom, or as a or b of beta, are refused", (value) => {
    expect(() => tQuantile(0.9, value)).toThrow(refusal("degrees", value));
    expect(() => betaQuantile(0.9, value, 3)).toThrow(refusal("a", value));
    expect(() => betaQuantile(0.9, 2, value)).toThrow(refusal("b", value));
  });
});

describe("intervals built from the reference libraries", () => {
  const SAMPLES = [
    [0, 7],
    [1, 7],
    [7, 7],
    [3, 10],
    [15, 148],
    [99, 100],
    [250, 1000],
    [4999, 10000],
  ] as const;
  const CONFIDENCES = [0.8, 0.9, 0.95, 0.99];

  test.each(SAMPLES)("%p of %p", (hits, trials) => {
    for (const confidence of CONFIDENCES) {
      const tail = (1 - confidence) / 2;
      const exact = clopperPearsonInterval(hits, trials, confidence);
      close(exact.low, hits === 0 ? 0 : betaReference(tail, hits, trials - hits + 1), 1e-9);
      close(exact.high, hits === trials ? 1 : betaReference(1 - tail, hits + 1, trials - hits), 1e-9);

      const z = normalReference(1 - tail, 0, 1);
      const score = wilsonInterval(hits, trials, confidence);
      for (const limit of [score.low, score.high]) {
        const fromLimit = (hits / trials - limit) ** 2;
        close(fromLimit, (z * z * limit * (1 - limit)) / trials, 1e-9);
      }
    }
  });

  test("the t interval of a mean against jstat's", () => {
    const [low, high] = jstat.tci(blockMean(STRICKLAND_VINES, Infinity, 0.95).mean, 0.05, [
      ...STRICKLAND_VINES,
    ]);
    close(blockMean(STRICKLAND_VINES, Infinity, 0.95).low, low, 1e-6);
    close(blockMean(STRICKLAND_VINES, Infinity, 0.95).high, high, 1e-6);
  });

  test.each([10, 20, 60, 124])("with the finite block, %p of 125 vines", (n) => {
    const counted = STRICKLAND_VINES.slice(0, n);
    const half =
      (tReference(0.95, n - 1) * jstat.stdev(counted, true) * Math.sqrt(1 - n / 125)) / Math.sqrt(n);
    const ours = blockMean(counted, 125, 0.9);
    close(ours.high - ours.mean, half, 1e-9);
    close(ours.mean - ours.low, half, 1e-9);
  });

  test("vines to count is the smallest sample that keeps the margin, by the reference quantile", () => {
    for (const cv of [0.1, 0.3216, 0.4349, 1.2])
      for (const margin of [0.05, 0.1, 0.2])
        for (const block of [30, 125, 800, Infinity])
          for (const confidence of [0.9, 0.95]) {
            const error = (n: number) =>
              tReference((1 + confidence) / 2, n - 1) * cv * Math.sqrt((1 - n / block) / n);
            const { vines } = vinesToCount(cv, margin, block, confidence);
            expect(error(vines)).toBeLessThanOrEqual(margin + 1e-12);
            if (vines > 2) expect(error(vines - 1)).toBeGreaterThan(margin - 1e-12);
          }
  });
});
