/**
 * Changes the calculation, or with MUTANTS=checks, decide, season or crop that room of the survey, and runs the tests of the
 * same part over every change. Left out are properties and other tests that take long (`SLOW`), a test that reads the
 * source, and changes to what stands once at the top of a file: what is told of as unnoticed may be noticed by them. With
 * RELOAD=1 everything is loaded anew for a change that is reached while the tests are loaded, which takes seconds each.
 */
const room = process.env.MUTANTS || undefined;
const SLOW = [
  "10,000 |vines of seasons drawn|at most 12 %|is never answered otherwise|older Settings tables|twenty thousand",
  "one plan, wherever|whole in every language|trunks wanted the list|list of trunks to renew names",
  "for any one bad cell|after any one cell|middle and spread|whatever is written down|what would turn a decision",
  "against every plan",
].join("|");
const CALCULATION = [
  "tests/domain/**/!(coverage|productRange|refusalTexts).test.ts",
  "tests/published/*.test.ts",
  "tests/docs/examples.test.ts",
  "tests/functions/!(anyInput).test.ts",
  "tests/survey/{crop,decide}/**/*.test.ts",
];

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: process.env.RELOAD ? "mocha" : "kept-mocha",
  plugins: ["@stryker-mutator/*", "./.config/mutantsRunner.mjs"],
  mochaOptions: {
    spec: room
      ? [`tests/survey/{${room},decide,crop,season,checks}/**/*.test.ts`, "tests/survey/cases.test.ts"]
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
