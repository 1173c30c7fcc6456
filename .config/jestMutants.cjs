const { projects, rootDir, testTimeout } = require("./jest.config.cjs");

/**
 * Tests for Stryker, which runs them once for every change that it makes: those of the calculation, or with MUTANTS=checks
 * or MUTANTS=decide those of that room of the survey. Left out are the two that draw for tens of
 * seconds: the table of coverage and the ranges against a Monte Carlo; and one that reads the source.
 */
const { displayName: _, ...unit } = projects[0];
const room = process.env.MUTANTS ? `survey/${process.env.MUTANTS}` : "{domain,published}";

module.exports = {
  ...unit,
  rootDir,
  testTimeout,
  testMatch: [`<rootDir>/tests/${room}/**/*.test.ts`],
  testPathIgnorePatterns: [...unit.testPathIgnorePatterns, "outlook/(coverage|productRange)|refusalTexts"],
  setupFiles: ["<rootDir>/.config/briefProperties.cjs"],
};
