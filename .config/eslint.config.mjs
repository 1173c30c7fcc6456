import js from "@eslint/js";
import tseslint from "typescript-eslint";
import globals from "globals";
import officeAddins from "eslint-plugin-office-addins";

const OUTSIDE_CALCULATION =
  "window document navigator location localStorage sessionStorage fetch setTimeout setInterval queueMicrotask " +
  "performance console process require Buffer global __dirname __filename Office Excel OfficeExtension CustomFunctions";

const calculationOnly = {
  "no-restricted-globals": [
    "error",
    ...OUTSIDE_CALCULATION.split(" ").map((name) => ({
      name,
      message: "Calculation knows neither the page, nor Node, nor Office.",
    })),
  ],
};

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", ".cache/**", "coverage/**"] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    languageOptions: {
      globals: { ...globals.browser, ...globals.node, Office: "readonly", Excel: "readonly" },
    },
    rules: {
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      eqeqeq: ["error", "always"],
      "no-console": "error",
    },
  },
  {
    files: [
      "src/cli/**",
      "src/desk/server/**",
      "src/taskpane/server/**",
      "tests/benchmarks/**",
      "tests/fuzz/**",
      "tests/shipped/main.ts",
      "sample-workbooks/**",
    ],
    rules: { "no-console": "off" },
  },
  {
    files: ["**/*.cjs"],
    languageOptions: { sourceType: "commonjs" },
    rules: { "@typescript-eslint/no-require-imports": "off" },
  },
  { files: ["src/domain/**", "src/survey/**", "src/functions/**", "src/texts/**"], rules: calculationOnly },
  {
    files: ["src/workbook/excel/**", "src/taskpane/**"],
    plugins: { "office-addins": officeAddins },
    rules: Object.fromEntries(
      Object.keys(officeAddins.rules).map((rule) => [`office-addins/${rule}`, "error"]),
    ),
  },
);
