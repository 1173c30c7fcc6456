const shared = {
  rootDir: require("node:path").resolve(__dirname, ".."),
  transform: {
    "^.+\\.(m?[jt]sx?)$": [
      "@swc/jest",
      {
        jsc: { target: "es2022", parser: { syntax: "typescript" } },
        module: { type: "commonjs" },
        sourceMaps: "inline",
      },
    ],
  },
  // Looked up in jest's sandbox, each of them is several times slower; what a test may replace (Date, timers) stays out.
  sandboxInjectedGlobals: [
    ...["Array", "BigInt", "Boolean", "Error", "Float64Array", "Infinity", "JSON", "Map", "Math", "Number"],
    ...["Object", "Reflect", "RegExp", "Set", "String", "Symbol", "Uint8Array", "WeakMap"],
  ],
  transformIgnorePatterns: ["/node_modules/(?!(hucre|@sparticuz)/)"],
};

module.exports = {
  rootDir: require("node:path").resolve(__dirname, ".."),
  projects: [
    {
      ...shared,
      displayName: "unit",
      testMatch: ["<rootDir>/tests/**/*.test.ts"],
      testPathIgnorePatterns: ["/node_modules/", "<rootDir>/tests/browser/"],
    },
    {
      ...shared,
      displayName: "browser",
      globalSetup: "<rootDir>/tests/browser/startShared.ts",
      globalTeardown: "<rootDir>/tests/browser/stopShared.ts",
      setupFilesAfterEnv: ["<rootDir>/.config/browserTimeout.cjs"],
      testMatch: ["<rootDir>/tests/browser/**/*.test.ts"],
    },
  ],
  // Jest by itself leaves one of two cores idle.
  maxWorkers: 2,
  // A machine that does other work besides must not fail a test that only waits longer.
  testTimeout: 20_000,
  reporters: ["default", "<rootDir>/.config/closing-line.cjs"],
};
