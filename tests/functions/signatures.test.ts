import { readFileSync } from "node:fs";
import { evaluateFormula } from "../../src/functions/evaluateFormula";
import { withFunctionTable } from "../../src/functions/functionTable";
import { functionsMetadata, metadataFile } from "../../src/functions/metadata";
import { FUNCTIONS } from "../../src/functions/registry";
import released from "../../src/functions/released.json";
import {
  brokenSignatures,
  presentSignatures,
  type BrokenSignature,
  type Signatures,
} from "../../src/functions/releasedSignatures";
import { PROJECT_VERSION } from "../../src/functions/version";
import { headerWithUnit, tableName } from "../../sample-workbooks/make/surveySheet";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { LANGUAGES } from "../../src/texts/language";

describe("what is committed is what the registry makes (npm run functions:write)", () => {
  test.each(LANGUAGES)("functions.json in %s", (language) => {
    const committed: unknown = JSON.parse(
      readFileSync(`tests/functions/expected/${metadataFile(language)}`, "utf8"),
    );
    expect(committed).toEqual(JSON.parse(JSON.stringify(functionsMetadata(language))));
  });

  test("the README's table of functions", () => {
    const readme = readFileSync("README.md", "utf8");
    expect(withFunctionTable(readme)).toBe(readme);
  });

  test("the version", () => {
    expect(PROJECT_VERSION).toBe(
      (JSON.parse(readFileSync("package.json", "utf8")) as { version: string }).version,
    );
  });
});

interface FreezeCase {
  readonly why: string;
  readonly released: Signatures;
  readonly broken: readonly BrokenSignature[];
}

describe("released signatures", () => {
  test("nothing released is broken, and everything present is released", () => {
    expect(brokenSignatures(released)).toEqual([]);
    expect(released).toEqual(presentSignatures());
  });

  test.each<FreezeCase>([
    { why: "a function is gone", released: { PRUNE: [] }, broken: [{ id: "PRUNE", why: "functionGone" }] },
    {
      why: "parameters changed places",
      released: { CROPLOAD: ["prunings", "crop"] },
      broken: [{ id: "CROPLOAD", why: "parameterMovedOrGone", parameter: "prunings" }],
    },
    {
      why: "a parameter is gone",
      released: { CROPLOAD: ["crop", "prunings", "rule"] },
      broken: [{ id: "CROPLOAD", why: "parameterMovedOrGone", parameter: "rule" }],
    },
    {
      why: "a new parameter is not optional",
      released: { CROPLOAD: ["crop"] },
      broken: [{ id: "CROPLOAD", why: "newParameterNotOptional", parameter: "prunings" }],
    },
    {
      why: "a new optional parameter is fine",
      released: { SHOOTS: ["spurs", "nodes_per_spur", "budbreak"] },
      broken: [],
    },
  ])("found: $why", ({ released: earlier, broken }: FreezeCase) => {
    expect(brokenSignatures(earlier)).toEqual(broken);
  });
});

describe("names that every platform accepts", () => {
  const names = FUNCTIONS.map(({ id }) => id);

  test("ids are unique", () => expect(new Set(names).size).toBe(names.length));

  test.each(names)(
    "%s: capital letters, digits and underscores, 3 to 128 of them, no cell reference",
    (name) => {
      expect(name).toMatch(/^[A-Z][A-Z0-9_]{2,127}$/);
      expect(name).not.toMatch(/^[A-Z]{1,3}[0-9]+$/);
      expect(name).not.toMatch(/^R[0-9]*C[0-9]*$/);
    },
  );

  test("none is a built-in function of a spreadsheet (the open engine's list of Excel's English names)", () => {
    const engine = readFileSync(require.resolve("@univerjs/engine-formula"), "utf8");
    const known = new Set(
      [...engine.matchAll(/FUNCTION_NAMES_[A-Z]+\["([A-Z0-9._]+)"\]/g)].map(([, name]) => name),
    );
    expect(known.size).toBeGreaterThan(400);
    expect(known.has("XLOOKUP")).toBe(true);
    expect(names.filter((name) => known.has(name))).toEqual([]);
  });

  test("parameter names are unique in a function and hold no space, in every language", () => {
    for (const language of LANGUAGES)
      for (const { parameters } of functionsMetadata(language).functions) {
        const labels = parameters.map(({ name }) => name);
        expect(new Set(labels).size).toBe(labels.length);
        for (const label of labels) expect(label).toMatch(/^[\p{L}][\p{L}\p{N}_]*$/u);
      }
  });

  test("required parameters come before optional ones, and the unit system is optional", () => {
    for (const { id, parameters } of FUNCTIONS) {
      const firstOptional = parameters.findIndex(({ optional }) => optional);
      const late =
        firstOptional < 0 ? [] : parameters.slice(firstOptional).filter(({ optional }) => !optional);
      expect([id, late.map((each) => each.id)]).toEqual([id, []]);
    }
  });
});

describe("texts of every function", () => {
  test.each(FUNCTIONS)(
    "$id: a text for every parameter and result column, none left over",
    ({ texts, parameters, result }) => {
      expect(Object.keys(texts.parameters).sort()).toEqual(parameters.map(({ id }) => id).sort());
      expect(Object.keys(texts.results).sort()).toEqual(result.columns.map(({ id }) => id).sort());
    },
  );

  test.each(FUNCTIONS)("$id: at most 255 characters, as Excel's function dialog shows", ({ texts }) => {
    const shown = [
      texts.description,
      ...Object.values(texts.parameters).map(({ description }) => description),
    ];
    for (const text of shown)
      for (const language of LANGUAGES) {
        expect(text[language].length).toBeGreaterThan(0);
        expect(text[language].length).toBeLessThanOrEqual(255);
      }
  });

  test("the choices that a description names are the ones that the parameter accepts", () => {
    for (const { texts, parameters } of FUNCTIONS)
      for (const { id, choices } of parameters)
        for (const language of LANGUAGES)
          for (const choice of choices) expect(texts.parameters[id].description[language]).toContain(choice);
  });

  test("VERSION says the version of the package", () => {
    expect(evaluateFormula("=CORDON.VERSION()")).toEqual({ values: [[PROJECT_VERSION]] });
  });
});

describe("formulas over the tables of a survey workbook", () => {
  const tables = new Map(Object.values(SHEETS).map((shape) => [tableName(shape), shape]));
  const withTables = FUNCTIONS.filter(({ onSheet }) => onSheet !== undefined);

  test.each(withTables)(
    "$id: $onSheet names tables and columns that there are, with their units",
    ({ id, onSheet }) => {
      expect(onSheet).toMatch(new RegExp(`^=CORDON\\.${id}\\(.*\\)$`));
      const references = [...onSheet!.matchAll(/([A-Za-z]+)\[([^\]]*)\]/g)];
      expect(references.length).toBeGreaterThan(0);
      for (const [, table, column] of references) {
        const headers = tables.get(table)?.columns.map((column) => headerWithUnit(column)) ?? [];
        expect([...headers, "#All"]).toContain(column);
        expect(headers.length).toBeGreaterThan(0);
      }
    },
  );

  test("every function that takes a table shows how", () => {
    const takesTable = FUNCTIONS.filter(({ parameters }) => parameters.some(({ kind }) => kind === "table"));
    expect(takesTable.filter(({ onSheet }) => onSheet === undefined).map(({ id }) => id)).toEqual([]);
  });
});

/** https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json: beside `functions`, in no function. */
test.each(LANGUAGES)("error cells are let in by the file as a whole (%s)", (language) => {
  const file = functionsMetadata(language);
  expect(file.allowErrorForDataTypeAny).toBe(true);
  for (const each of file.functions) expect(each).not.toHaveProperty("allowErrorForDataTypeAny");
});
