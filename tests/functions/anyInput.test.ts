import fc from "fast-check";
import type * as Calling from "../../src/functions/callFunction";
import { callFunction, isRefused } from "../../src/functions/callFunction";
import { evaluateFormula } from "../../src/functions/evaluateFormula";
import type { Parameter } from "../../src/functions/parameter";
import type { RawArgument } from "../../src/functions/readArgument";
import type * as Registry from "../../src/functions/registry";
import { FUNCTIONS } from "../../src/functions/registry";
import { acceptedHeaders } from "../../src/survey/sheets/column";
import type { CellValue } from "../../src/survey/sheets/cell";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { byLanguage, LANGUAGES, type Language } from "../../src/texts/language";
import { LANGUAGE_FILES } from "../../src/texts/languages/languages";
import type * as Texts from "../../src/texts/texts";
import { textPart } from "../../src/texts/languages/textParts";

const cell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.constantFrom<CellValue>(null, "", " ", 0, 1, -1, true, false, { error: "#N/A" }, { error: "#DIV/0!" }),
  fc.integer({ min: -5, max: 400 }),
  fc.double({ min: -10, max: 1000, noNaN: true }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string({ maxLength: 8 }),
);
const column = fc.array(cell, { minLength: 1, maxLength: 5 }).map((cells) => cells.map((each) => [each]));
const block = fc.array(fc.array(cell, { minLength: 1, maxLength: 3 }), { maxLength: 4 });

const HEADERS = [
  ...new Set(Object.values(SHEETS).flatMap(({ columns }) => columns.flatMap(acceptedHeaders))),
];
const tableCell: fc.Arbitrary<CellValue> = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: 0, max: 12 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<CellValue>("North Bench", "left", "A", "sound", "stays", "2/3/2024"),
  },
  { weight: 1, arbitrary: cell },
);
const table: fc.Arbitrary<CellValue[][]> = fc
  .uniqueArray(fc.constantFrom(...HEADERS), { minLength: 2, maxLength: 14 })
  .chain((headers) =>
    fc
      .array(fc.array(tableCell, { minLength: headers.length, maxLength: headers.length }), { maxLength: 6 })
      .map((rows) => [headers, ...rows]),
  );

/** Mostly what the parameter is for, so that calls get past their first argument. */
function argument({ kind, choices, least, most }: Parameter): fc.Arbitrary<RawArgument> {
  const anything = fc.oneof<fc.Arbitrary<RawArgument>[]>(cell, column, block, table);
  const fitting: Readonly<Record<Parameter["kind"], fc.Arbitrary<RawArgument>>> = {
    number: fc.double({
      min: Math.max(least, 0),
      max: Math.min(most, Math.max(100, least + 100)),
      noNaN: true,
    }),
    whole: fc.integer({
      min: Math.ceil(Math.max(least, 0)),
      max: Math.floor(Math.min(most, Math.max(200, least + 200))) + 1,
    }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    text: fc.constantFrom("30+10", "20+20", "0+0", "1+"),
    choice: fc.constantFrom(...(choices.length > 0 ? choices : [""])),
    unitSystem: fc.constantFrom("US", "metric"),
    numbers: fc.array(fc.tuple(fc.double({ min: 0, max: 200, noNaN: true })), { minLength: 1, maxLength: 6 }),
    table,
  };
  return fc.oneof(
    { weight: 6, arbitrary: fitting[kind] },
    { weight: 2, arbitrary: column },
    { weight: 1, arbitrary: anything },
    { weight: 1, arbitrary: fc.constant(null) },
  );
}

/** Calls a function of a program that has what the add-in has when its functions are bound: one language's sentences. */
const inOneLanguage = (language: Language, id: string, given: readonly RawArgument[]) => {
  const { callFunction, functionNamed } = programs[language];
  return callFunction(functionNamed(id)!, given, language);
};

type Program = typeof Calling & typeof Registry;

const programs = byLanguage((language): Program => {
  const words = byLanguage((each) => textPart(LANGUAGE_FILES[each], "words"));
  let program: Program | undefined;
  jest.isolateModules(() => {
    jest.doMock("../../src/texts/languages/languages", () => ({ LANGUAGE_FILES: words }));
    jest
      .requireActual<typeof Texts>("../../src/texts/texts")
      .takeTexts(textPart(LANGUAGE_FILES[language], "functions"), language);
    program = {
      ...jest.requireActual<typeof Calling>("../../src/functions/callFunction"),
      ...jest.requireActual<typeof Registry>("../../src/functions/registry"),
    };
  });
  expect(program!.functionNamed("NODEBUDGET")!.texts.description).toEqual({});
  return program!;
});

describe.each(FUNCTIONS)("$id, whatever it is given", (called) => {
  const args = fc.tuple(...called.parameters.map(argument));

  test("answers with whole rows of cells or with a sentence, and never breaks", () => {
    fc.assert(
      fc.property(args, fc.constantFrom(...LANGUAGES), (given, language) => {
        const outcome = callFunction(called, given, language);
        const errors = isRefused(outcome)
          ? [outcome]
          : outcome.values.flat().flatMap((each) => (typeof each === "object" ? [each] : []));
        expect(inOneLanguage(language, called.id, given)).toEqual(outcome);
        for (const { sentence, error } of errors) {
          expect(["#VALUE!", "#N/A"]).toContain(error);
          expect(sentence.length).toBeGreaterThan(10);
          expect(sentence).not.toMatch(/\{[a-zA-Z_]+\}|undefined|\bNaN\b|\[object/);
        }
        if (isRefused(outcome)) return;
        for (const row of outcome.values) {
          expect(row).toHaveLength(called.result.columns.length);
          for (const each of row) if (typeof each === "number") expect(Number.isFinite(each)).toBe(true);
        }
      }),
      { numRuns: 150, seed: 20260214 },
    );
  });

  test("the same call gives the same answer", () => {
    fc.assert(
      fc.property(args, (given) => expect(callFunction(called, given)).toEqual(callFunction(called, given))),
      { numRuns: 20, seed: 20260214 },
    );
  });
});

describe("formulas, whatever is typed", () => {
  const part = fc.oneof(
    fc.constantFrom(
      "CORDON.",
      "CORDON.CLUSTERS(",
      "CORDON.VERSION()",
      "(",
      ")",
      "{",
      "}",
      ",",
      ";",
      "+",
      "-",
      "*",
      "/",
      "%",
    ),
    fc.constantFrom(
      '"',
      '"30+10"',
      "24",
      ".5",
      "1e5",
      "A1",
      "Plan[#All]",
      "TRUE",
      "#N/A",
      "=",
      " ",
      "é",
      "😀",
    ),
    fc.string({ maxLength: 4 }),
  );

  test("come to cells or to one sentence with its position", () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 12 }), (parts) => {
        const outcome = evaluateFormula(`=${parts.join("")}`);
        if ("error" in outcome) expect(outcome.sentence).toMatch(/\.$|\?$/);
        else expect(outcome.values.length).toBeGreaterThan(0);
      }),
      { numRuns: 1500, seed: 20260214 },
    );
  });
});
