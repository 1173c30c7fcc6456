const { projects, rootDir, testTimeout } = require("./jest.config.cjs");

/** Tests of the calculation and the checks alone: Stryker runs them once for every change that it makes. */
const { displayName: _, ...unit } = projects[0];

module.exports = {
  ...unit,
  rootDir,
  testTimeout,
  testMatch: ["<rootDir>/tests/{domain,published,survey}/**/*.test.ts"],
};
