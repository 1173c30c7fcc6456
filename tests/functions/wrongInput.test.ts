import { callFunction, isRefused, type CallOutcome } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { FUNCTIONS, functionNamed } from "../../src/functions/registry";
import type { CellValue } from "../../src/survey/sheets/cell";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { gapsOfSeason } from "../../src/survey/season/gapsOfSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import { stayingCordons } from "../../src/survey/decide/stayingCordons";
import { LANGUAGES, type Language } from "../../src/texts/language";
import { CORDON_HEADS } from "../survey/cordonHeads";

const call = (name: string, args: readonly RawArgument[], language: Language = "en"): CallOutcome =>
  callFunction(functionNamed(name)!, args, language);

const DIVISION = { error: "#DIV/0!" };
const NOT_AVAILABLE = { error: "#N/A" };

interface Refused {
  readonly why: string;
  readonly name: string;
  readonly args: readonly RawArgument[];
  readonly error?: "#VALUE!" | "#N/A";
  readonly code: string;
  /** Words that the English sentence must hold: the argument, what was given, what was expected. */
  readonly says: readonly string[];
}

const REFUSED: readonly Refused[] = [
  {
    why: "number: text",
    name: "CLUSTERS",
    args: ["many", 2],
    code: "isText",
    says: ["shoots", "“many”", "a number"],
  },
  {
    why: "number: a number typed as text",
    name: "CLUSTERS",
    args: ["12", 2],
    code: "isText",
    says: ["“12”"],
  },
  { why: "number: TRUE", name: "CLUSTERS", args: [true, 2], code: "isBoolean", says: ["shoots", "TRUE"] },
  {
    why: "number: an error cell",
    name: "CLUSTERS",
    args: [DIVISION, 2],
    code: "isError",
    says: ["shoots", "#DIV/0!"],
  },
  {
    why: "number: an #N/A cell stays #N/A",
    name: "CLUSTERS",
    args: [NOT_AVAILABLE, 2],
    error: "#N/A",
    code: "isError",
    says: ["shoots", "#N/A"],
  },
  { why: "number: blank", name: "CLUSTERS", args: [null, 2], code: "missing", says: ["shoots", "missing"] },
  {
    why: "number: empty text",
    name: "CLUSTERS",
    args: ["", 2],
    code: "missing",
    says: ["shoots", "missing"],
  },
  {
    why: "number: only a space",
    name: "CLUSTERS",
    args: [" ", 2],
    code: "missing",
    says: ["shoots", "missing"],
  },
  {
    why: "number: absent",
    name: "CLUSTERS",
    args: [24],
    code: "missing",
    says: ["clusters per shoot", "from 0 to 6"],
  },
  {
    why: "number: negative",
    name: "CLUSTERS",
    args: [-1, 2],
    code: "outOfLimits",
    says: ["shoots", "-1", "from 0 to"],
  },
  {
    why: "number: above the most",
    name: "CLUSTERS",
    args: [24, 7],
    code: "outOfLimits",
    says: ["7", "from 0 to 6"],
  },
  {
    why: "a weight above the most, in pounds",
    name: "NODEBUDGET",
    args: [50, "30+10"],
    code: "outOfLimits",
    says: ["prunings", "50", "44.092 lb"],
  },
  {
    why: "a weight above the most, in kilograms",
    name: "NODEBUDGET",
    args: [50, "30+10", "metric"],
    code: "outOfLimits",
    says: ["prunings", "50", "at most 20 kg"],
  },
  {
    why: "a weight of zero was not weighed",
    name: "NODEBUDGET",
    args: [0, "30+10"],
    code: "outOfLimits",
    says: ["prunings", "above zero"],
  },
  {
    why: "whole: a fraction",
    name: "BUDINJURY",
    args: [1.5, 20],
    code: "outOfLimits",
    says: ["dead", "1.5", "whole"],
  },
  {
    why: "whole: more dead than cut",
    name: "BUDINJURY",
    args: [30, 20],
    code: "outside",
    says: ["dead", "30", "between 0 and 20"],
  },
  {
    why: "share: a percentage as 35",
    name: "SHOOTS",
    args: [12, 2, 35],
    code: "outOfLimits",
    says: ["35 % is 0.35"],
  },
  {
    why: "share: negative",
    name: "SHOOTS",
    args: [12, 2, -0.1],
    code: "outOfLimits",
    says: ["budbreak", "from 0 to 1"],
  },
  {
    why: "text: not a formula",
    name: "NODEBUDGET",
    args: [3, "30 and 10"],
    code: "formulaNotBalanced",
    says: ["formula", "30 and 10"],
  },
  { why: "text: blank", name: "NODEBUDGET", args: [3, ""], code: "missing", says: ["formula", "a text"] },
  { why: "text: an error cell", name: "NODEBUDGET", args: [3, DIVISION], code: "isError", says: ["formula"] },
  {
    why: "choice: another word",
    name: "NODESAFTERINJURY",
    args: [40, 0.3, "Davis"],
    code: "notAChoice",
    says: ["rule", "Davis", "Cornell 2014"],
  },
  {
    why: "choice: blank",
    name: "NODESAFTERINJURY",
    args: [40, 0.3, null],
    code: "missing",
    says: ["rule", "one of"],
  },
  {
    why: "unit system: another word",
    name: "VINECROP",
    args: [48, 0.25, "imperial"],
    code: "notAChoice",
    says: ["unit", "imperial", "US, metric"],
  },
  {
    why: "unit system: a column",
    name: "VINECROP",
    args: [48, 0.25, [["US"], ["metric"]]],
    code: "oneCellOnly",
    says: ["unit", "2 rows"],
  },
  {
    why: "list: text in the third row",
    name: "BLOCKMEAN",
    args: [[[40], [50], ["many"]]],
    code: "isText",
    says: ["counts", "many", "row 3"],
  },
  {
    why: "list: an error",
    name: "BLOCKMEAN",
    args: [[[40], [DIVISION]]],
    code: "isError",
    says: ["counts", "row 2"],
  },
  {
    why: "list: a negative count",
    name: "BLOCKMEAN",
    args: [[[40], [-1]]],
    code: "outOfLimits",
    says: ["-1", "row 2"],
  },
  {
    why: "list: only blanks",
    name: "BLOCKMEAN",
    args: [[[null], [""]]],
    code: "noNumbers",
    says: ["counts"],
  },
  {
    why: "list: one count only",
    name: "BLOCKMEAN",
    args: [[[40], [null]]],
    error: "#N/A",
    code: "tooFewVines",
    says: ["1 counted vines"],
  },
  {
    why: "one value for the whole call: a column",
    name: "BUDINJURY",
    args: [1, 20, [[0.9], [0.95]]],
    code: "oneCellOnly",
    says: ["confidence"],
  },
  {
    why: "columns of different length",
    name: "CLUSTERS",
    args: [
      [[24], [20]],
      [[2], [2], [2]],
    ],
    code: "differentLengths",
    says: ["clusters per shoot has 3 rows", "shoots has 2"],
  },
  {
    why: "a range of two columns",
    name: "CLUSTERS",
    args: [
      [
        [24, 20],
        [1, 2],
      ],
      2,
    ],
    code: "oneColumnOnly",
    says: ["shoots", "2 columns"],
  },
  {
    why: "rows of different length",
    name: "CLUSTERS",
    args: [[[24, 20], [1]], 2],
    code: "ragged",
    says: ["shoots", "2, 1"],
  },
  {
    why: "more arguments than the function has",
    name: "CLUSTERS",
    args: [24, 2, "US"],
    code: "tooManyArguments",
    says: ["CORDON.CLUSTERS", "at most 2", "3 are given"],
  },
  {
    why: "table: one cell",
    name: "GAPSBYROW",
    args: [3],
    code: "notATable",
    says: ["cordons", "Cordons[#All]"],
  },
  { why: "table: nothing", name: "GAPSBYROW", args: [null], code: "notATable", says: ["cordons"] },
  {
    why: "table: figures without headings",
    name: "GAPSBYROW",
    args: [
      [
        [1, 2],
        [3, 4],
      ],
    ],
    code: "notATable",
    says: ["cordons", "heading"],
  },
  {
    why: "table: a needed column is not there",
    name: "GAPSBYROW",
    args: [
      [
        ["Block", "Row", "Vine", "Positions"],
        ["North Bench", 1, 1, 8],
      ],
    ],
    code: "noSuchColumn",
    says: ["cordons", "Live spurs"],
  },
  {
    why: "table: a vine without a row number",
    name: "GAPSBYROW",
    args: [
      [
        ["Block", "Row", "Vine", "Positions", "Live spurs"],
        ["North Bench", 1, 1, 8, 6],
        ["North Bench", "x", 2, 8, 6],
      ],
    ],
    code: "wrongCell",
    says: ["cordons", "Row", "x", "row 3"],
  },
  {
    why: "table: blanks that arrive as 0",
    name: "GAPSBYROW",
    args: [
      [
        ["Block", "Row", "Vine", "Positions", "Live spurs", "Note"],
        ["North Bench", 1, 1, 8, 0, 0],
      ],
    ],
    error: "#N/A",
    code: "blanksAsZero",
    says: ["cordons", "Note", "use the pane"],
  },
  {
    why: "a rule outside the range of its source",
    name: "NODESAFTERINJURY",
    args: [40, 0.17, "MSU 2002"],
    error: "#N/A",
    code: "msuBetween15And20",
    says: ["17 %", "MSU 2002"],
  },
  {
    why: "prunings below a pound, where no source says",
    name: "NODEBUDGET",
    args: [0.5, "30+10"],
    error: "#N/A",
    code: "belowOnePound",
    says: ["0.5 lb"],
  },
  {
    why: "limits that contradict each other",
    name: "NODEBUDGET",
    args: [3, "30+10", null, 60, 20],
    code: "leastAboveMost",
    says: ["60", "20"],
  },
];

describe("a wrong argument", () => {
  test.each(REFUSED)("$why: $name $args", ({ name, args, error, code, says }) => {
    const outcome = call(name, args);
    if (!isRefused(outcome)) throw new Error(`not refused: ${JSON.stringify(outcome.values)}`);
    expect([outcome.code, outcome.error]).toEqual([code, error ?? "#VALUE!"]);
    for (const words of says) expect(outcome.sentence).toContain(words);
  });

  test.each(REFUSED)("$why: one whole sentence in every language", ({ name, args }) => {
    const sentences = LANGUAGES.map((language) => {
      const outcome = call(name, args, language);
      if (!isRefused(outcome)) throw new Error("not refused");
      return outcome.sentence;
    });
    expect(new Set(sentences).size).toBe(LANGUAGES.length);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/\.$/);
      expect(sentence).not.toMatch(/\{\w+\}|undefined|NaN| {2}| \./);
    }
  });
});

/** A cell that no parameter of that kind can take. */
const HOPELESS: readonly (readonly [string, RawArgument])[] = [
  ["an error", DIVISION],
  ["a ragged range", [[1, 2], [3]]],
];

describe.each(FUNCTIONS.filter(({ parameters }) => parameters.length > 0))(
  "every parameter of $id",
  (called) => {
    const good = called.parameters.map(({ kind }): RawArgument => (kind === "text" ? "30+10" : null));

    test.each(called.parameters.map(({ id }, index) => ({ id, index })))(
      "$id is named when it is wrong",
      ({ id, index }) => {
        for (const [, hopeless] of HOPELESS) {
          const args = good.map((each, at) =>
            at === index ? hopeless : at < index ? plausible(called.parameters[at]) : each,
          );
          const outcome = callFunction(called, args);
          const isTable = called.parameters[index].kind === "table" && hopeless === DIVISION;
          if (!isRefused(outcome)) throw new Error(`${id} took ${JSON.stringify(hopeless)}`);
          if (!isTable) expect(outcome.sentence).toContain(called.texts.parameters[id].label.en);
        }
      },
    );
  },
);

/** A value that the parameter takes, so that the next one is the first wrong one. */
function plausible({
  kind,
  choices,
  least,
  most,
}: (typeof FUNCTIONS)[number]["parameters"][number]): RawArgument {
  if (kind === "text") return "30+10";
  if (kind === "choice" || kind === "unitSystem") return choices[0];
  if (kind === "numbers") return [[1], [2]];
  if (kind === "table") return [[...CORDON_HEADS], ["North Bench", 1, 1, "left", "A", 1, 3, 8, 6]];
  return Math.min(most, Math.max(least, 1));
}

describe("blanks, zeros and columns", () => {
  test("an omitted optional argument, null or absent, is its default", () => {
    expect(call("PRUNINGHOURS", [807, 1, null, null])).toEqual(call("PRUNINGHOURS", [807, 1]));
    expect(call("PRUNINGHOURS", [807, 1, "", undefined])).toEqual(call("PRUNINGHOURS", [807, 1, 1, 8]));
  });

  test("an explicit 0 is not a blank: no missing vines, and an optional 0 is kept", () => {
    expect(call("CLUSTERS", [0, 2])).toEqual({ values: [[0]] });
    expect(call("BUDINJURY", [0, 20, 0.95])).toMatchObject({ values: [[0, 0, expect.closeTo(0.161125, 6)]] });
    const limit = call("NODEBUDGET", [3, "30+10", null, null, 0]);
    expect(limit).toEqual({ values: [[0]] });
  });

  test("a column gives a result a row; rows without a figure stay empty, wherever they are", () => {
    const prunings = [[3], [null], [1], [""], [undefined as never]];
    expect(call("NODEBUDGET", [prunings, "30+10"])).toEqual({ values: [[50], [""], [30], [""], [""]] });
  });

  test("a zero weight in a column is a vine that was not weighed: some hosts hand blanks over as 0", () => {
    expect(call("NODEBUDGET", [[[3], [0], [1]], "30+10"])).toEqual({ values: [[50], [""], [30]] });
  });

  test("only the bad row of a column carries an error, across all its result columns", () => {
    const outcome = call("BUDINJURY", [[[15], ["x"], [2]], [[148], [20], [20]], 0.95]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values[0]).toEqual([
      expect.closeTo(0.1014, 4),
      expect.closeTo(0.0624, 4),
      expect.closeTo(0.1605, 4),
    ]);
    expect(outcome.values[1]).toHaveLength(3);
    for (const cell of outcome.values[1]) expect(cell).toMatchObject({ error: "#VALUE!", code: "isText" });
    expect(outcome.values[2][0]).toBe(0.1);
  });

  test("a row with one figure of two is an error, not an empty cell", () => {
    const outcome = call("CLUSTERS", [
      [[24], [null], [null]],
      [[2], [2], [null]],
    ]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values).toEqual([[48], [expect.objectContaining({ code: "missing" })], [""]]);
  });

  test("a rule a block: text columns go along with number columns", () => {
    const outcome = call("NODESAFTERINJURY", [
      [[40], [40]],
      [[0.35], [0.2]],
      [["Cornell 2014"], ["Purdue"]],
    ]);
    expect(outcome).toEqual({ values: [[54], [54]] });
  });

  test("a range of one cell is a single value", () => {
    expect(call("CLUSTERS", [[[24]], [[2]]])).toEqual({ values: [[48]] });
  });

  test("a number where a text is expected is read as it is written", () => {
    expect(call("NODEBUDGET", [3, 30])).toMatchObject({ error: "#VALUE!", code: "formulaNotBalanced" });
  });

  test("choices do not depend on upper or lower case", () => {
    expect(call("NODESAFTERINJURY", [40, 0.35, " cornell 2014 "])).toEqual({ values: [[54]] });
    expect(call("VINECROP", [10, 1, "METRIC"])).toEqual({ values: [[10]] });
  });

  test("blanks among counts are vines not counted; zeros are counts unless told otherwise", () => {
    const outcome = (args: RawArgument[]) => {
      const result = call("BLOCKMEAN", args);
      if (isRefused(result)) throw new Error(result.sentence);
      return [result.values[0][0], result.values[0][3]];
    };
    expect(outcome([[[40], [null], [60], [""]]])).toEqual([50, 2]);
    expect(outcome([[[40], [0], [80]]])).toEqual([40, 3]);
    expect(outcome([[[40], [0], [80]], null, null, "skip"])).toEqual([60, 2]);
  });

  test("100,000 rows in one call give 100,000 results", () => {
    const prunings = Array.from({ length: 100_000 }, (_, index) => [1 + (index % 30) / 10]);
    const outcome = call("NODEBUDGET", [prunings, "30+10"]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values).toHaveLength(100_000);
    expect(outcome.values[10][0]).toBe(40);
  });

  test("an unexpected exception is a defect and comes out as it is", () => {
    const broken = {
      ...functionNamed("CLUSTERS")!,
      run: () => {
        throw new TypeError("a defect");
      },
    };
    expect(() => callFunction(broken, [24, 2])).toThrow(TypeError);
    expect(() => callFunction(broken, [[[24], [20]], 2])).toThrow(TypeError);
  });

  test("a result that is no number is a defect, never a cell", () => {
    expect(() => callFunction({ ...functionNamed("CLUSTERS")!, run: () => NaN }, [24, 2])).toThrow(
      "CLUSTERS",
    );
  });
});

describe("tables", () => {
  const HEADINGS = ["Block", "Row", "Vine", "Positions", "Live spurs", "Longest gap"];

  test("columns are found by heading in any language and any order, other columns are left alone", () => {
    const english = call("GAPSBYROW", [[HEADINGS, ["North Bench", 1, 1, 8, 6, 2]]]);
    const spanish = call("GAPSBYROW", [
      [
        ["Pitones vivos", "Color", "Posiciones", "Planta", "Hilera", "Cuartel", "Hueco más largo"],
        [6, "red", 8, 1, 1, "North Bench", 2],
      ],
    ]);
    const french = call("GAPSBYROW", [
      [
        ["Parcelle", "Rang", "Cep", "Emplacements", "Coursons vivants", "Plus long vide"],
        ["North Bench", 1, 1, 8, 6, 2],
      ],
    ]);
    expect(spanish).toEqual(english);
    expect(french).toEqual(english);
    expect(english).toEqual({
      values: [
        [
          "Block",
          "Row",
          "Vines",
          "Cordons",
          "Positions",
          "Live spurs",
          "Gaps",
          "Share of gaps",
          "Longest gap",
        ],
        ["North Bench", 1, 1, 1, 8, 6, 2, 0.25, 2],
      ],
    });
  });

  test("a row of vines with a bad count carries the error in its sums, the others stand", () => {
    const outcome = call("GAPSBYROW", [
      [HEADINGS, ["A", 1, 1, 8, 6, 2], ["A", 2, 1, 8, "six", 2], ["A", 2, 2, 8, 7, 1], ["a", 1, 2, 8, 8, 0]],
    ]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values[1]).toEqual(["A", 1, 2, 2, 16, 14, 2, 0.125, 2]);
    expect(outcome.values[2].slice(0, 2)).toEqual(["A", 2]);
    expect(outcome.values[2][5]).toMatchObject({
      error: "#VALUE!",
      sentence: expect.stringContaining("“six”"),
    });
    expect(outcome.values[2][5]).toMatchObject({ sentence: expect.stringContaining("row 3") });
    expect(outcome.values).toHaveLength(3);
  });

  test("more live spurs than positions spoil a row of vines", () => {
    const outcome = call("GAPSBYROW", [[HEADINGS, ["A", 1, 1, 8, 9, 0]]]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values[1][6]).toMatchObject({ code: "wrongCell" });
  });

  test("only cordons that stay, where a person has decided", () => {
    const outcome = call("GAPSBYROW", [
      [
        [...HEADINGS, "Fixed choice"],
        ["A", 1, 1, 8, 6, 2, "stays"],
        ["A", 1, 1, 8, 2, 5, "goes"],
        ["A", 1, 1, 8, 3, 5, ""],
      ],
      "staying",
    ]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values[1]).toEqual(["A", 1, 1, 1, 8, 6, 2, 0.25, 2]);
  });

  test("cordons that stay by the choice: the same gaps as the pane shows", () => {
    const rows = Array.from({ length: 30 }, (_, at): CellValue[][] => [
      ["A", 1 + (at % 3), at + 1, 9, 9 - (at % 4), at % 4, "left", "A", 1, 40],
      ["A", 1 + (at % 3), at + 1, 9, 4 + (at % 5), 3, "left", "B", 2, 40],
      ["A", 1 + (at % 3), at + 1, 9, 8, 1, "right", "C", 2, 40],
    ]).flat();
    const values = [[...HEADINGS, "Side", "Cordon", "Trunk", "Length (in)"], ...rows];
    const season = readSeason([
      { sheet: "Cordons", firstRow: 1, firstColumn: 1, values, formulaAt: () => null },
    ]);
    const shown = gapsOfSeason(season, stayingCordons(decideSeason(season)));
    const outcome = call("GAPSBYROW", [values, "chosen"]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values.slice(1).map((row) => row.slice(0, 8))).toEqual(
      shown.rows.map((row) => [
        row.block,
        row.row,
        row.vines,
        row.cordons,
        row.positions,
        row.liveSpurs,
        row.gaps,
        Number(row.share!.toPrecision(15)),
      ]),
    );
    const all = call("GAPSBYROW", [values]);
    expect(all).not.toEqual(outcome);
  });

  test("headings of the result follow the language", () => {
    const outcome = call("GAPSBYROW", [[HEADINGS, ["A", 1, 1, 8, 6, 2]]], "fr");
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values[0].slice(0, 2)).toEqual(["Parcelle", "Rang"]);
  });

  test("blank rows below the table are left out", () => {
    const blank = HEADINGS.map(() => null);
    const outcome = call("GAPSBYROW", [[HEADINGS, ["A", 1, 1, 8, 6, 2], blank, blank]]);
    if (isRefused(outcome)) throw new Error(outcome.sentence);
    expect(outcome.values).toHaveLength(2);
  });
});
