import { callFunction, isRefused } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { functionNamed } from "../../src/functions/registry";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import type { CellValue } from "../../src/survey/sheets/cell";
import type { Language } from "../../src/texts/language";

const HEADINGS = [
  "Block",
  "Row",
  "Vine",
  "Side",
  "Cordon",
  "Trunk",
  "Length (in)",
  "Live spurs",
  "Longest gap",
];
const A: CellValue[] = ["North Bench", 1, 1, "left", "A", 1, 40, 8, 0];
const B: CellValue[] = ["North Bench", 1, 1, "left", "B", 2, 40, 9, 3];
const C: CellValue[] = ["North Bench", 1, 1, "right", "C", 2, 40, 9, 1];
const BLANK: CellValue[] = HEADINGS.map(() => null);

function values(name: string, args: readonly RawArgument[], language: Language = "en") {
  const outcome = callFunction(functionNamed(name)!, args, language);
  if (isRefused(outcome)) throw new Error(outcome.sentence);
  return outcome.values;
}

describe("CHOOSECORDONS", () => {
  test("answers stand beside the rows of the range, blank rows stay blank", () => {
    const rows = values("CHOOSECORDONS", [[HEADINGS, A, BLANK, C, B, BLANK]]);
    expect(rows.map(([decision]) => decision)).toEqual(["Decision", "stays", "", "stays", "goes"]);
  });

  test("a cordon that does not say its vine carries an error, and the vine beside it is to be counted again", () => {
    const rows = values("CHOOSECORDONS", [
      [HEADINGS, A, ["North Bench", null, 1, "left", "B", 2, 40, 9, 3], C],
    ]);
    expect(rows[1][0]).toBe("ask");
    expect(rows[1][2]).toBe(
      "Count this vine again; nothing is decided on it before these cells are right: cordons B3.",
    );
    expect(rows[2][0]).toMatchObject({ error: "#VALUE!", sentence: expect.stringContaining("Row") });
    expect(rows[3][0]).toBe("ask");
  });

  test("the Settings table decides: with no advantage for two trunks the better scores win", () => {
    const settings: CellValue[][] = [
      ["Setting", "Value"],
      ["Two cordons on two trunks", 0],
      ["Weight of longest gap", 0],
      ["Weight of live spurs", 1],
      ["Close call", 0],
    ];
    const rows = values("CHOOSECORDONS", [[HEADINGS, A, B, C], settings]);
    expect(rows.slice(1).map(([decision]) => decision)).toEqual(["goes", "stays", "stays"]);
  });

  test("the Vines table counts: a missing vine is asked about", () => {
    const vines: CellValue[][] = [
      ["Block", "Row", "Vine", "Status"],
      ["North Bench", 1, 1, "missing"],
    ];
    const rows = values("CHOOSECORDONS", [[HEADINGS, A, B, C], null, null, vines]);
    expect(rows.slice(1).map(([decision]) => decision)).toEqual(["ask", "ask", "ask"]);
  });

  test("the same decisions as the survey makes from the sheets", () => {
    const many = Array.from({ length: 40 }, (_, at): CellValue[][] => [
      ["North Bench", 1, at + 1, "left", "A", 1, 40, 4 + (at % 7), at % 5],
      ["North Bench", 1, at + 1, "left", "B", 2, 40, 3 + (at % 8), (at * 3) % 6],
      ["North Bench", 1, at + 1, "right", "C", 2, 40, 9, at % 3],
    ]).flat();
    const area = {
      sheet: "Cordons",
      firstRow: 1,
      firstColumn: 1,
      values: [HEADINGS, ...many],
      formulaAt: () => null,
    };
    const decided = [...decideSeason(readSeason([area]))].flatMap(({ decision }) => decision.cordons);
    const rows = values("CHOOSECORDONS", [[HEADINGS, ...many]]).slice(1);
    expect(rows.map(([decision]) => decision)).toEqual(decided.map(({ verdict }) => verdict));
    rows.forEach(([, score], at) => expect(score as number).toBeCloseTo(decided[at].score.score, 12));
    expect(new Set(rows.map(([decision]) => decision)).size).toBeGreaterThan(1);
  });

  test("in French", () => {
    const rows = values("CHOOSECORDONS", [[HEADINGS, A, B, C]], "fr");
    expect(rows[0]).toEqual(["Décision", "Note", "Motif"]);
    expect(rows.slice(1).map(([decision]) => decision)).toEqual(["reste", "part", "reste"]);
  });

  test("a table without vine numbers is refused by its heading", () => {
    const outcome = callFunction(functionNamed("CHOOSECORDONS")!, [
      [
        ["Block", "Row", "Side"],
        ["A", 1, "left"],
      ],
    ]);
    expect(outcome).toMatchObject({ code: "noSuchColumn", sentence: expect.stringContaining("“Vine”") });
  });
});

describe("CORDONSCORE", () => {
  const FULL = ["Length (in)", "Live spurs", "Longest gap", "Spurs down", "Spurs level", "Spurs up"];
  const PLACED: CellValue[] = [40, 10, 0, 10, 0, 0];
  const UP: CellValue[] = [40, 10, 0, 0, 0, 10];

  test("placing counts once the training system is known: down on a high wire, up between catch wires", () => {
    const score = (training: RawArgument) =>
      values("CORDONSCORE", [[FULL, PLACED, UP], null, null, training]).slice(1);
    const placing = (rows: ReturnType<typeof score>) => rows.map((row) => row[5]);
    expect(placing(score(null))).toEqual(["", ""]);
    const [down, up] = placing(score("highWire")) as number[];
    expect(down).toBeGreaterThan(up);
    const [downUpright, upUpright] = placing(score("upright")) as number[];
    expect(upUpright).toBeGreaterThan(downUpright);
    expect(placing(score("High Wire"))).toEqual([down, up]);
  });

  test("the Blocks table gives the training system where the rows name their block", () => {
    const headings = ["Block", "Row", "Vine", ...FULL];
    const blocks: CellValue[][] = [
      ["Block", "Training system", "Vine spacing (ft)"],
      ["North Bench", "high wire", 7],
    ];
    const rows = values("CORDONSCORE", [[headings, ["North Bench", 1, 1, ...PLACED]], null, blocks]);
    expect(rows[1][5]).toBe(1);
  });

  test("10 live spurs on 9 positions are refused, the row below stands", () => {
    const outcome = values("CORDONSCORE", [
      [
        ["Length (in)", "Positions", "Live spurs", "Longest gap"],
        [40, 9, 10, 0],
        [40, 10, 10, 0],
      ],
    ]);
    expect(outcome[1][0]).toMatchObject({ code: "wrongCell" });
    expect(outcome[2][0]).toBe(1);
  });

  test("a missing count leaves the score open between low and high", () => {
    const rows = values("CORDONSCORE", [
      [FULL, [40, 10, null, null, null, null], [40, 10, 5, null, null, null]],
    ]).slice(1);
    const [score, low, high] = rows[0] as number[];
    expect(low).toBeLessThanOrEqual(score);
    expect(high).toBeGreaterThanOrEqual(score);
  });

  test("a row about which nothing is known is #N/A with a sentence, the next stands", () => {
    const rows = values("CORDONSCORE", [
      [
        ["Length (in)", "Live spurs", "Note"],
        [null, null, "dead end"],
        [40, 10, ""],
      ],
    ]);
    expect(rows[1][0]).toMatchObject({ error: "#N/A", code: "nothingToScore" });
    expect(rows[2][0]).toBe(1);
  });

  test("centimetres in the heading are the same cordon: 40 in are 101.6 cm", () => {
    const inches = values("CORDONSCORE", [
      [
        ["Length (in)", "Live spurs"],
        [40, 7],
      ],
    ]);
    const centimetres = values("CORDONSCORE", [
      [
        ["Length (cm)", "Live spurs"],
        [101.6, 7],
      ],
    ]);
    expect(centimetres).toEqual(inches);
    expect(inches[1][0]).toBeCloseTo(0.7, 12);
  });
});
