/**
 * Changes the calculation, or with MUTANTS=checks, decide, season or crop that room of the survey, and runs the tests of the
 * same part over every change. Left out are tests that take seconds each (`SLOW`), a test that reads the source,
 * and changes to what stands once at the top of a file, for which everything would have to be loaded anew.
 */
const room = process.env.MUTANTS;
const SLOW =
  "vines of seasons drawn|at most 12 %|is never answered otherwise|older Settings tables|twenty thousand";
const CALCULATION = [
  "tests/domain/**/!(coverage|productRange|refusalTexts).test.ts",
  "tests/published/*.test.ts",
  "tests/docs/examples.test.ts",
  "tests/functions/!(anyInput).test.ts",
  "tests/survey/{crop,decide}/**/*.test.ts",
];

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "mocha",
  mochaOptions: {
    spec: room
      ? [`tests/survey/${room}/**/*.test.ts`, ...(room === "checks" ? ["tests/survey/cases.test.ts"] : [])]
      : CALCULATION,
    require: ["tsx/cjs", "./.config/mutants.cjs"],
    grep: `^(?!.*(${SLOW}))`,
  },
  mutate: [`src/${room ? `survey/${room}` : "domain"}/**/*.ts`],
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  concurrency: 1,
  incremental: true,
  incrementalFile: `.cache/mutants-${room ?? "domain"}.json`,
  reporters: ["clear-text", "progress-append-only"],
  clearTextReporter: { reportTests: false, allowColor: false },
  tempDirName: ".cache/mutants",
  ignorePatterns: ["dist", "coverage", ".cache"],
  thresholds: { high: 95, low: 85, break: null },
};
