import metadata from "../../functions/expected/functions.json";
import { callFunction } from "../../../src/functions/callFunction";
import { parseFormula, type Expression } from "../../../src/functions/parseFormula";
import { FUNCTIONS, functionNamed } from "../../../src/functions/registry";
import type { Language } from "../../../src/texts/language";
import { associateFunctions } from "../../../src/workbook/excel/associateFunctions";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelOn, hostWith } from "../office/excelWorkbookOn";
import { functionsRuntime, type FunctionsRuntime } from "../office/functionsRuntime";
import { CORDON_HEADS } from "../../survey/cordonHeads";

jest.mock("../../../src/functions/wholeTables", () =>
  jest.requireActual("../../../src/functions/fetchedTables"),
);

const runtimes = new Map<Language, FunctionsRuntime>();

/** The functions as Excel calls them, through Microsoft's runtime: one page a language. */
function excel(language: Language = "en"): FunctionsRuntime {
  let runtime = runtimes.get(language);
  if (!runtime) {
    runtime = functionsRuntime();
    associateFunctions(runtime.customFunctions, () => language);
    runtimes.set(language, runtime);
  }
  return runtime;
}

/** An error cell as Excel hands it to a file that allows errors. */
const errorCell = (code: string) => ({ type: "CustomFunctionError", code });

/** An argument of a formula as Excel hands it over: a block of cells. */
function cellsOf(argument: Expression): unknown[][] {
  switch (argument.is) {
    case "value":
      return [[argument.value]];
    case "array":
      return argument.rows.map((row) => row.flatMap((cell) => cellsOf(cell)[0]));
    case "call": {
      const args = argument.args.map((inner) => (inner ? cellsOf(inner) : null));
      const inner = callFunction(functionNamed(argument.name.replace("CORDON.", ""))!, args as never, "en");
      return (inner as { values: unknown[][] }).values;
    }
    case "percent":
      return cellsOf(argument.of).map((row) => row.map((cell) => (cell as number) / 100));
    default:
      throw new Error(`No example has ${argument.is} as an argument`);
  }
}

const CORDON_HEADERS = [...CORDON_HEADS, "Counted by", "Note"];
const cordon = (row: number, spurs: unknown, note: unknown) => [
  "North Bench",
  row,
  1,
  "left",
  "A",
  1,
  3.5,
  7,
  spurs,
  "AB",
  note,
];

describe("functions in Microsoft's custom functions runtime", () => {
  test("every id of functions.json is bound, and nothing else", async () => {
    const ids: string[] = [];
    const { customFunctions } = functionsRuntime();
    associateFunctions(
      { ...customFunctions, associate: (id: string) => void ids.push(id) } as never,
      () => "en",
    );
    expect(ids.sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
    expect((await excel().call("NOSUCH", [])).error).toMatch(/^error /);
  });

  test.each(FUNCTIONS.map(({ id, examples }) => [id, examples[0]] as const))(
    "%s gives its first example",
    async (id, example) => {
      const called = parseFormula(example.formula);
      if (called.is !== "call") throw new Error(`${example.formula} calls no function`);
      const args = functionNamed(id)!.parameters.map((_, i) => {
        const argument = called.args[i];
        return argument ? cellsOf(argument) : null;
      });
      const { values } = await excel().call(id, args);
      expect(values?.map((row) => row.length)).toEqual(example.gives.map((row) => row.length));
      example.gives.forEach((row, r) =>
        row.forEach((cell, c) => {
          if (typeof cell !== "number") return expect(values?.[r][c]).toBe(cell);
          expect(Math.abs((values?.[r][c] as number) - cell)).toBeLessThanOrEqual(example.within + 1e-12);
        }),
      );
    },
  );

  test("omitted optional arguments arrive as null, single cells as a block of one", async () => {
    expect(await excel().call("NODEBUDGET", [[[3]], [["30+10"]], null, null, null, null])).toEqual({
      values: [[50]],
    });
  });

  test("a column spills; a bad row is an error in its cell with our sentence, a blank one stays empty", async () => {
    const { values } = await excel().call("NODEBUDGET", [
      [[3], ["x"], [null], [""], [0]],
      [["30+10"]],
      null,
      null,
      null,
      null,
    ]);
    expect(values).toEqual([
      [50],
      [
        expect.objectContaining({
          type: "Error",
          basicValue: "#VALUE!",
          errorType: "Value",
          message: expect.stringContaining("“x”"),
        }),
      ],
      [""],
      [""],
      [""],
    ]);
  });

  test("an error cell in a block is named in its row, the others are calculated", async () => {
    const { values } = await excel().call("NODEBUDGET", [
      [[3], [errorCell("#DIV/0!")]],
      [["30+10"]],
      null,
      null,
      null,
      null,
    ]);
    expect(values).toEqual([
      [50],
      [expect.objectContaining({ type: "Error", message: expect.stringContaining("#DIV/0!") })],
    ]);
  });

  test("an error cell as the only value is our sentence behind #VALUE!", async () => {
    const answer = await excel().call("CROPLOAD", [[[errorCell("#DIV/0!")]], [[1]]]);
    expect(answer).toEqual({ error: "#VALUE!", sentence: expect.stringContaining("#DIV/0!") });
  });

  test("a data type with a number in it counts as that number", async () => {
    const formatted = { type: "FormattedNumber", basicValue: 9.8, numberFormat: "0.0" };
    expect(await excel().call("CROPLOAD", [[[formatted]], [[9.8]]])).toEqual({ values: [[1]] });
  });

  test("a rule outside its source's range is #N/A, in the person's language", async () => {
    expect(await excel("es").call("NODESAFTERINJURY", [[[40]], [[0.17]], [["MSU 2002"]]])).toEqual({
      error: "#N/A",
      sentence: expect.stringContaining("MSU 2002 cubre hasta 15 %"),
    });
  });

  test("blanks that arrive as null are blanks; as 0 in a column of remarks they are refused with a sentence", async () => {
    const call = (note: unknown) =>
      excel().call("GAPSBYROW", [[CORDON_HEADERS, cordon(1, 6, note)], null, null, null, null]);
    expect((await call(null)).values?.[1].slice(0, 7)).toEqual(["North Bench", 1, 1, 1, 7, 6, 1]);
    expect(await call(0)).toEqual({ error: "#N/A", sentence: expect.stringContaining("“Note”") });
  });

  describe("where blanks arrive as 0", () => {
    const HEADS = CORDON_HEADERS.slice(0, -1);
    const rows = (spurs: readonly unknown[]) => [
      HEADS,
      ...spurs.map((count, at) => cordon(at + 1, count, null).slice(0, -1)),
    ];
    const asZero = (cells: unknown[][]) => cells.map((row) => row.map((cell) => cell ?? 0));

    /** GAPSBYROW in an Excel with this sheet, called as an Excel calls it that hands blanks over as 0. */
    function gapsOn(sheet: string, cells: unknown[][]) {
      const host = hostWith({ [sheet]: cells } as never, EXCEL_PROFILES.perpetual2021);
      const runtime = functionsRuntime();
      associateFunctions(runtime.customFunctions, () => "en", excelOn(host).run);
      const gaps = (given: unknown[][], address: string | null) =>
        runtime.call("GAPSBYROW", [given, null, null, null, null], {
          addresses: [address, null, null, null, null],
        });
      return { host, gaps };
    }
    const plain = (given: unknown[][]) => excel().call("GAPSBYROW", [given, null, null, null, null]);

    test.each(["Cordons", "Bob's rows"])(
      "a blank count is told from a 0 by its address on %s",
      async (sheet) => {
        const cells = rows([6, null, 0]);
        const { gaps, host } = gapsOn(sheet, cells);
        const address = `${sheet === "Cordons" ? sheet : "'Bob''s rows'"}!A1:J4`;
        const told = await gaps(asZero(cells), address);
        expect(told).toEqual(await plain(cells));
        expect(told).not.toEqual(await plain(asZero(cells)));
        expect(host.batches).toBeGreaterThan(0);
        host.close();
      },
    );

    test("what cannot be read stays as it arrived: another workbook, an array, a refusal", async () => {
      const cells = rows([6, null, 0]);
      const { gaps, host } = gapsOn("Cordons", cells);
      const arrived = await plain(asZero(cells));
      expect(await gaps(asZero(cells), "[Other.xlsx]Cordons!A1:J4")).toEqual(arrived);
      expect(await gaps(asZero(cells), null)).toEqual(arrived);
      host.refuse({ code: "GeneralException" });
      expect(await gaps(asZero(cells), "Cordons!A1:J4")).toEqual(arrived);
      host.close();
    });

    test("an Excel in which a blank has arrived as null is never asked, nor one whose table holds no 0", async () => {
      const cells = rows([6, null, 0]);
      const { gaps, host } = gapsOn("Cordons", cells);
      await gaps(rows([6, 5]), "Cordons!A1:J3");
      expect(host.batches).toBe(0);
      await gaps(cells, "Cordons!A1:J4");
      await gaps(asZero(cells), "Cordons!A1:J4");
      expect(host.batches).toBe(0);
      host.close();
    });
  });

  test("addresses are asked for where a blank is not a 0, and by no other function", () => {
    const asking = metadata.functions.flatMap(({ id, ...rest }) => ("options" in rest ? [id] : []));
    const withTable = FUNCTIONS.filter(({ parameters }) =>
      parameters.some(({ kind, aboveZero }) => kind === "table" || (kind === "numbers" && !aboveZero)),
    );
    expect(asking).toEqual(withTable.map(({ id }) => id));
    expect(asking).toEqual(expect.arrayContaining(["CHECKCOUNTS", "GAPSBYROW"]));
    expect(asking).not.toContain("NODEBUDGET");
  });

  test("an error cell in a count becomes a finding, not a function that is never called", async () => {
    const { values } = await excel().call("CHECKCOUNTS", [
      [CORDON_HEADERS, cordon(1, errorCell("#REF!"), null), cordon(2, 6, null)],
    ]);
    expect(JSON.stringify(values)).toContain("#REF!");
  });

  test("20,000 rows are answered in one message below the 5 MB that the web takes", async () => {
    const weights = Array.from({ length: 20_000 }, (_, i) => [1 + (i % 300) / 100]);
    const { values } = await excel().call("NODEBUDGET", [weights, [["30+10"]], null, null, null, null]);
    expect(values).toHaveLength(20_000);
    // 30 + 10 for each pound above the first (1.00 lb: 30; 1.01 lb: 30.1).
    expect(values?.slice(0, 2).map(([nodes]) => nodes)).toEqual([30, expect.closeTo(30.1, 9)]);
    expect(excel().largestAnswer()).toBeLessThan(5 * 1024 * 1024);
  });

  test("a call that Excel takes back disturbs none of the others", async () => {
    const first = excel().call("CROPLOAD", [[[2]], [[1]]], { cancelable: true });
    excel().cancel(1_000_000);
    expect(await first).toEqual({ values: [[2]] });
    expect(await excel().call("CROPLOAD", [[[4]], [[1]]])).toEqual({ values: [[4]] });
  });
});
