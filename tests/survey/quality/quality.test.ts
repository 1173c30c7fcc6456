import { measureQuality } from "./measureQuality";

/** A small slice of npm run check:quality with a fixed seed; the full table is made by that command. */
const quality = measureQuality(2, 41);
const shareOf = (severity: string) => {
  const own = quality.kinds.filter((kind) => kind.severity === severity);
  const sum = (of: (kind: (typeof own)[number]) => number) =>
    own.reduce((total, kind) => total + of(kind), 0);
  return sum((kind) => kind.found) / sum((kind) => kind.planted);
};

describe("plausible seasons", () => {
  test("every planted wrong cell is found by its own kind", () => {
    const wrong = new Set(quality.kinds.filter((kind) => kind.severity === "wrong").map((kind) => kind.code));
    expect(quality.missed.filter(({ code }) => wrong.has(code))).toEqual([]);
  });

  test("at least nine in ten of the planted mistakes to ask about are found", () => {
    expect(shareOf("ask")).toBeGreaterThanOrEqual(0.9);
  });

  test("less than one false alarm in five hundred clean rows", () => {
    expect(quality.cleanRows).toBeGreaterThan(2000);
    expect(quality.falseAlarms).toBeLessThan(quality.cleanRows / 500);
  });

  test("nearly every kind has been planted", () => {
    const never = quality.kinds.filter((kind) => kind.planted === 0).map((kind) => kind.code);
    expect(never.filter((code) => !code.startsWith("setting")).length).toBeLessThanOrEqual(8);
  });
});
