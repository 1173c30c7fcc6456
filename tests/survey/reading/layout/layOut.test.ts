import { LANGUAGES } from "../../../../src/texts/language";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { withAnswers, type ReadingAnswers } from "../../../../src/survey/reading/readingAccount";
import {
  leftOutSentence,
  noteSentence,
  questionSentence,
} from "../../../../src/survey/reading/readingSentence";
import type { SheetArea } from "../../../../src/survey/reading/sheetArea";
import { allFindings } from "../../../../src/survey/checks/checkSeason";
import type { Season } from "../../../../src/survey/season/season";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";
import { CORDON_HEADS } from "../../cordonHeads";

type Row = readonly CellValue[];

const HEADS = [...CORDON_HEADS];

/** An invented season: two rows of six vines with a cordon left and right; vine v of row r has 8 places and 1 + (r + v) mod 8 live. */
const ROWS: Row[] = [1, 2].flatMap((row) =>
  [1, 2, 3, 4, 5, 6].flatMap((vine) =>
    ["left", "right"].map((side, at): Row => [
      "North Bench",
      row,
      vine,
      side,
      "AB"[at],
      1,
      3,
      8,
      1 + ((row + vine) % 8),
    ]),
  ),
);
const PLAIN = counts(readSeason([areaOf("Cordons", [HEADS, ...ROWS])]));

/** Row, vine, side and live spurs of every cordon of this winter, in the order of the walk. */
function counts(season: Season): string[] {
  return season
    .tables("cordons")
    .flatMap((table) =>
      Array.from({ length: table.rowCount }, (_, i) => {
        const number = (id: string) => table.column(id)?.usable[i];
        const block = table.column("block");
        const side = table.column("side")!;
        return [
          block ? season.words.wordOf(block.codes[i]).toLowerCase() : "",
          number("row"),
          number("vine"),
          side.column.choices![side.codes[i]]?.id,
          number("liveSpurs"),
        ].join(" ");
      }),
    )
    .sort();
}

const codes = ({ account }: Season) => account.notes.map(({ code }) => code);
const questions = ({ account }: Season) => account.questions.map(({ code }) => code);

function afterFirstAnswers(areas: readonly SheetArea[]): Season {
  const answers = readSeason(areas).account.questions.reduce<ReadingAnswers>(
    (all, { proposals }) => withAnswers(all, proposals[0] ?? {}),
    {},
  );
  return readSeason(areas, { answers });
}

test("the invented season itself: 24 cordons, vine 1 of row 1 with 1 + 2 mod 8 = 3 live spurs", () => {
  expect(PLAIN).toHaveLength(24);
  expect(PLAIN[0]).toBe("north bench 1 1 left 3");
});

const without = (rows: readonly Row[], ...at: number[]) =>
  rows.map((row) => row.filter((_, i) => !at.includes(i)));

const EXACT: Readonly<Record<string, { areas: readonly SheetArea[]; note?: string }>> = {
  "heads over two lines": {
    areas: [
      areaOf("C", [
        ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length", "Positions", "Live"],
        [null, null, null, null, null, null, "(ft)", null, "spurs"],
        ...ROWS,
      ]),
    ],
  },
  "heads with noise": {
    areas: [
      areaOf("C", [
        [
          " block",
          "ROW#",
          "Vine No.",
          "Side:",
          "Cordon\n",
          "TRUNK",
          "Length\u00a0(ft)",
          "Positions*",
          "live  Spurs",
        ],
        ...ROWS,
      ]),
    ],
  },
  "Spanish heads of farms": {
    areas: [
      areaOf("Conteo", [
        [
          "CUARTEL",
          "Nº Hilera",
          "Nº Planta",
          "LADO",
          "BRAZO",
          "TRONCO",
          "LARGO (cm)",
          "Pulgares posibles",
          "Pulgares vivos",
        ],
        ...ROWS.map((row) => [...row.slice(0, 3), row[3] === "left" ? "I" : "D", row[4], 1, 91, 8, row[8]]),
      ]),
    ],
  },
  "keys written once a group": {
    areas: [
      areaOf("C", [
        HEADS,
        ...ROWS.map((row, i) => [
          i === 0 ? row[0] : null,
          i % 12 === 0 ? row[1] : null,
          i % 2 === 0 ? row[2] : null,
          ...row.slice(3),
        ]),
      ]),
    ],
    note: "filledDown",
  },
  "merged keys": {
    areas: [
      {
        ...areaOf("C", [
          HEADS,
          ...ROWS.map((row, i) => (i % 2 === 0 ? row : [null, null, null, ...row.slice(3)])),
        ]),
        merged: [0, 1, 2].flatMap((column) =>
          Array.from({ length: 12 }, (_, i) => ({ row: 1 + 2 * i, column, rows: 2, columns: 1 })),
        ),
      },
    ],
    note: "mergedFilled",
  },
  "keys in a line above": {
    areas: [1, 2].map((row) =>
      areaOf(`Sheet${row}`, [
        ["Block:", "North Bench", "Row:", row],
        [],
        HEADS.slice(2),
        ...without(
          ROWS.filter((one) => one[1] === row),
          0,
          1,
        ),
      ]),
    ),
    note: "keysAbove",
  },
  "keys in the sheet's name": {
    areas: [1, 2].map((row) =>
      areaOf(`North Bench R${row}`, [
        HEADS.slice(2),
        ...without(
          ROWS.filter((one) => one[1] === row),
          0,
          1,
        ),
      ]),
    ),
    note: "keysOfName",
  },
  captions: {
    areas: [
      areaOf("C", [
        HEADS.slice(2),
        ...[1, 2].flatMap((row): Row[] => [
          [],
          [`North Bench - Row ${row}`],
          ...without(
            ROWS.filter((one) => one[1] === row),
            0,
            1,
          ),
        ]),
      ]),
    ],
    note: "captions",
  },
  "tables side by side": {
    areas: [
      areaOf("C", [
        [...HEADS, null, ...HEADS],
        ...ROWS.slice(0, 12).map((row, i) => [...row, null, ...ROWS[12 + i]]),
      ]),
    ],
    note: "sideBySide",
  },
  "a second header in another order": {
    areas: [
      areaOf("C", [
        HEADS,
        ...ROWS.slice(0, 12),
        [],
        [...HEADS].reverse(),
        ...ROWS.slice(12).map((row) => [...row].reverse()),
      ]),
    ],
    note: "secondHeads",
  },
  "dead spurs beside positions": {
    areas: [
      areaOf("C", [
        [...HEADS.slice(0, 8), "Spurs (dead)"],
        ...ROWS.map((row) => [...row.slice(0, 8), 8 - Number(row[8])]),
      ]),
    ],
    note: "liveDerived",
  },
  "live spurs of two years": {
    areas: [
      areaOf("C", [
        [...HEADS.slice(0, 8), "Live spurs (2025)", "Live spurs (2026)", "Date"],
        ...ROWS.map((row) => [...row.slice(0, 8), 2, row[8], 46034]),
      ]),
    ],
    note: "yearTaken",
  },
  strokes: {
    areas: [areaOf("C", [HEADS, ...ROWS.map((row) => [...row.slice(0, 8), "|".repeat(Number(row[8]))])])],
    note: "strokes",
  },
  "row and vine in one label": {
    areas: [
      areaOf("C", [
        HEADS.filter((head) => head !== "Row"),
        ...ROWS.map((row) => [row[0], `${row[1]}-${row[2]}`, ...row.slice(3)]),
      ]),
    ],
  },
  "subtotals with the number of vines": {
    areas: [
      areaOf("C", [
        HEADS,
        ...ROWS.slice(0, 12),
        ["North Bench", 1, 6, "all", null, null, null, 96, 60],
        ...ROWS.slice(12),
        ["North Bench", 2, 6, "all", null, null, null, 96, 60],
      ]),
    ],
    note: "totalLines",
  },
  "dates settled by the order of the walk": {
    areas: [
      areaOf("C", [
        [...HEADS, "Date"],
        ...ROWS.map((row, i) => [...row, ["02/03/2026", "03/03/2026", "04/03/2026"][Math.floor(i / 8)]]),
      ]),
    ],
    note: "datesSettled",
  },
  "dates settled by the other days of the column": {
    areas: [
      areaOf("C", [[...HEADS, "Date"], ...ROWS.map((row, i) => [...row, i < 4 ? "03/04/2026" : 46085])]),
    ],
    note: "datesSettled",
  },
  "a planting year in the sheet's name": {
    areas: [
      areaOf("North 2011", [HEADS, ...ROWS.slice(0, 12)]),
      areaOf("North 2016", [HEADS, ...ROWS.slice(12)]),
    ],
    note: "plantingYear",
  },
  "other sheets beside": {
    areas: [
      areaOf("Cordons", [HEADS, ...ROWS]),
      areaOf("Spray log", [
        ["Block", "Rows", "Variety", "Date", "Product", "Rate"],
        ["North Bench", "1-4", "Marquette", 46122, "oil", 2],
      ]),
      areaOf("Replants", [
        ["Block", "Row", "Vine", "Date", "Note"],
        ["North Bench", 1, 5, 46144, "ordered"],
      ]),
      areaOf("Summary", [
        ["Block", "Row", "Vines", "Live spurs", "Positions"],
        ["North Bench", 1, 25, 400, 500],
      ]),
    ],
  },
};

test.each(Object.keys(EXACT))("%s is read exactly, without a question", (name) => {
  const { areas, note } = EXACT[name];
  const season = readSeason(areas);
  expect(counts(season)).toEqual(PLAIN);
  expect(questions(season)).toEqual([]);
  if (note !== undefined) expect(codes(season)).toContain(note);
});

test("candidates side by side in a line become cordons", () => {
  const season = readSeason([
    areaOf("C", [
      ["Block", "Row", "Vine", "L1 spurs", "L1 length", "R1 spurs", "R1 length"],
      ["North Bench", 1, 1, 3, 2.9, 4, 3.1],
      ["North Bench", 1, 2, 5, 2.8, null, null],
    ]),
  ]);
  expect(counts(season)).toEqual([
    "north bench 1 1 left 3",
    "north bench 1 1 right 4",
    "north bench 1 2 left 5",
  ]);
  expect(codes(season)).toEqual(["turned"]);
});

const ASKED: Readonly<Record<string, { areas: readonly SheetArea[]; question: string }>> = {
  "other heads": {
    areas: [
      areaOf("C", [HEADS, ...ROWS.slice(0, 12)]),
      areaOf("P", [["Blk", "Rw", "Vn", "Sd", "Cor", "Tr", "Len", "Pos", "Live"], ...ROWS.slice(12)]),
    ],
    question: "heads",
  },
  "a length without a unit that no vine has": {
    areas: [
      areaOf("C", [
        HEADS.map((head) => (head === "Length (ft)" ? "Length" : head)),
        ...ROWS.map((row) => [...row.slice(0, 6), 36, ...row.slice(7)]),
      ]),
    ],
    question: "unit",
  },
  "one sheet dated a year back": {
    areas: [46034, 45669].map((day, i) =>
      areaOf(`R${i}`, [[...HEADS, "Date"], ...ROWS.slice(12 * i, 12 * i + 12).map((row) => [...row, day])]),
    ),
    question: "winter",
  },
};

test.each(Object.keys(ASKED))("%s: one question, nothing taken before, exact after the answer", (name) => {
  const { areas, question } = ASKED[name];
  const before = readSeason(areas);
  expect(questions(before)).toEqual([question]);
  const after = afterFirstAnswers(areas);
  expect(counts(after)).toEqual(PLAIN);
  expect(questions(after)).toEqual([]);
});

/** 46,085 is 4 March 2026: 12 January is 46,034, and 19 + 28 + 4 = 51 days follow. */
const MARCH_4 = 46085;

test.each<[string, (i: number) => CellValue, number[]]>([
  // 3 April is 30 days after 4 March, when the others were counted.
  ["the days of the others", (i) => (i === 5 ? "03/04/2026" : MARCH_4), [MARCH_4, MARCH_4]],
  // 2, 3 and 4 March, or the second of February, the third and the fourth of the same month.
  ["the walk", (i) => `0${2 + Math.floor(i / 8)}/03/2026`, [MARCH_4 - 2, MARCH_4]],
  ["the walk, months first", (i) => `03/0${2 + Math.floor(i / 8)}/2026`, [MARCH_4 - 2, MARCH_4]],
  ["a date that leaves no choice", (i) => (i === 23 ? "25/03/2026" : "04/03/2026"), [MARCH_4, MARCH_4 + 21]],
])("dates are settled by %s, all of a column alike, and said once", (_, dayOf, [first, last]) => {
  const season = readSeason([areaOf("C", [[...HEADS, "Date"], ...ROWS.map((row, i) => [...row, dayOf(i)])])]);
  const { usable } = season.tables("cordons")[0].column("countedOn")!;
  expect([usable[0], usable[23]]).toEqual([first, last]);
  expect(codes(season)).toEqual(["datesSettled"]);
  expect(questions(season)).toEqual([]);
});

test.each<[string, (i: number) => CellValue]>([
  ["one day only", () => "03/04/2026"],
  ["the same two days either way", (i) => (i < 12 ? "02/03/2026" : "03/02/2026")],
  ["both orders in one column", (i) => ["25/01/2026", "01/26/2026", "03/04/2026"][Math.min(i, 2)]],
  // A month each, 45 days apart at the least either way.
  ["counts over months", (i) => ["05/01/2026", "10/02/2026", "08/03/2026"][Math.floor(i / 8)]],
])("%s: dates are asked once, and the answer holds for the whole column", (_, dayOf) => {
  const area = areaOf("C", [[...HEADS, "Date"], ...ROWS.map((row, i) => [...row, dayOf(i)])]);
  const before = readSeason([area]);
  expect(questions(before)).toEqual(["dateOrder"]);
  const after = readSeason([area], { answers: { dateOrder: "dayFirst" } });
  expect(questions(after)).toEqual([]);
  expect([...after.tables("cordons")[0].column("countedOn")!.usable]).not.toContain(NaN);
});

test("of unknown heads a trunk in inches is not proposed as the trunk's number", () => {
  const heads = ["Blk", "Rw", "Vn", "Sd", "Cor", "Trunk (in)", "Len", "Pos", "Live"];
  const { account } = readSeason([
    areaOf("P", [heads, ...ROWS.map((row, i) => [...row.slice(0, 5), 2 + (i % 3), ...row.slice(6)])]),
  ]);
  expect(Object.keys(account.questions[0].proposals[0].heads![0].columns)).not.toContain("Trunk (in)");
});

test("odd counts are asked by kind and stay out until somebody answers", () => {
  const odd = ROWS.map((row, i) => (i === 0 ? [...row.slice(0, 8), "2 + 1"] : row));
  const area = areaOf("C", [HEADS, ...odd]);
  const before = readSeason([area]);
  expect(questions(before)).toEqual(["oddCounts"]);
  expect(before.tables("cordons")[0].column("liveSpurs")!.usable[0]).toBeNaN();
  expect(counts(afterFirstAnswers([area]))).toEqual(PLAIN);
});

test("formulas without values are named and nothing is read from them", () => {
  const area: SheetArea = {
    ...areaOf("Cordons", [HEADS, ...ROWS.map((row) => row.map(() => null))]),
    formulaAt: (row) => (row === 0 ? null : "=Raw!A1"),
  };
  const season = readSeason([area]);
  expect(season.allTables).toEqual([]);
  expect(season.account.leftOut).toEqual([
    { what: "sheet", reason: "notCalculated", sheet: "Cordons", facts: { rows: 24, cells: 216 } },
  ]);
});

test("every note, question and part left out is a whole sentence in every language", () => {
  const seasons = [...Object.values(EXACT), ...Object.values(ASKED)].map(({ areas }) => readSeason(areas));
  for (const { account } of seasons)
    for (const language of LANGUAGES)
      for (const sentence of [
        ...account.notes.map((note) => noteSentence(note, language)),
        ...account.questions.map((question) => questionSentence(question, language)),
        ...account.leftOut.map((part) => leftOutSentence(part, language)),
      ])
        expect(sentence).toMatch(/^[^{}]+[.?]$/);
});

test.each([
  ["Span cm", 0.9],
  ["Span, in", 2.286],
  ["Span [mm]", 0.09],
])("a head of one's own that ends in a unit, %s, is read in it", (head, metres) => {
  const area = areaOf("Tally", [
    ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", head, "Positions", "Live spurs"],
    ["North Bench", 1, 1, "left", "A", 1, 90, 6, 5],
  ]);
  const heads = [{ sheet: "Tally", shape: "cordons" as const, columns: { [head]: "length" } }];
  const [table] = readSeason([area], { answers: { heads } }).tables("cordons");
  // 90 cm are 0.9 m, 90 in of 2.54 cm 2.286 m, 90 mm 0.09 m.
  expect(table.column("length")!.numbers[0]).toBeCloseTo(metres, 12);
});

describe("heads with more words than ours", () => {
  const live = (head: string) => [[...HEADS.slice(0, 8), head], ...ROWS];

  test.each(["# of live spurs", "Number of live spurs", "Live spurs counted", "Spurs (alive)"])(
    "%s are live spurs",
    (head) => {
      const season = readSeason([areaOf("Cordons", live(head))]);
      expect(counts(season)).toEqual(PLAIN);
      expect(questions(season)).toEqual([]);
    },
  );

  test.each(["Live spurs (est.)", "Good spurs", "Live spurs before frost", "Total live spurs"])(
    "%s stay unread, are one question, and are right after its answer",
    (head) => {
      const areas = [areaOf("Cordons", live(head))];
      const season = readSeason(areas);
      expect(season.tables("cordons")[0].column("liveSpurs")).toBeUndefined();
      expect(season.account.questions.map((question) => questionSentence(question, "en"))).toEqual([
        `Cordons: is ${head} the column Live spurs of this season?`,
      ]);
      expect(allFindings(season).map(({ code }) => code)).not.toContain("missingColumn");
      expect(counts(afterFirstAnswers(areas))).toEqual(PLAIN);
    },
  );

  test("spurs planned or of last year are no answer to where the live ones stand", () => {
    for (const head of ["Spurs planned", "Live spurs last year"]) {
      const season = readSeason([areaOf("Cordons", live(head))]);
      expect(questions(season)).toEqual([]);
      expect(allFindings(season).map(({ code }) => code)).toContain("missingColumn");
    }
  });

  test("units and hints in a line below, words broken at its end, and heads over groups", () => {
    const rows = ROWS.map((row) => row.map((cell, at) => (at === 6 ? 36 : cell)));
    const season = readSeason([
      areaOf("Cordons", [
        ["Place", null, null, "Arm", null, null, "Length", "Posi-", "Spurs"],
        ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "(in.)", "tions", "alive"],
        [null, null, null, "L/R", null, "no.", null, null, null],
        ...rows,
      ]),
    ]);
    expect(counts(season)).toEqual(PLAIN);
    expect(questions(season)).toEqual([]);
    // 36 in are 0.9144 m.
    expect(season.tables("cordons")[0].column("length")!.usable[0]).toBeCloseTo(0.9144, 9);
  });

  test("heads below a page of remarks are found at any row", () => {
    const remarks = Array.from({ length: 60 }, (_, i): Row => (i % 4 === 0 ? [`Remark ${i}`] : []));
    expect(counts(readSeason([areaOf("Cordons", [...remarks, HEADS, ...ROWS])]))).toEqual(PLAIN);
  });
});

test("a line with the name of a block above those of its rows belongs to the captions", () => {
  const lines = (block: string, at: number): Row[] => [
    [block],
    ...[1, 2].flatMap((row): Row[] => [
      [`Row ${row}`],
      ...ROWS.filter((cells) => cells[1] === row).map((cells) => [
        ...cells.slice(2, 7),
        9,
        Number(cells[8]) + at,
      ]),
    ]),
  ];
  const season = readSeason([
    areaOf("Cordons", [HEADS.slice(2), ...lines("North Bench", 0), ...lines("Creek Side", 1)]),
  ]);
  expect(questions(season)).toEqual([]);
  const creek = PLAIN.map((line) =>
    line.replace("north bench", "creek side").replace(/\d+$/, (live) => String(Number(live) + 1)),
  );
  expect(counts(season)).toEqual([...PLAIN, ...creek].sort());
});

test("names of sheets such as North Bench - 1 are asked with block and row apart", () => {
  const areas = [1, 2].map((row) =>
    areaOf(`North Bench - ${row}`, [
      HEADS.slice(2),
      ...ROWS.filter((cells) => cells[1] === row).map((cells) => cells.slice(2)),
    ]),
  );
  expect(questions(readSeason(areas))).toEqual(["keys"]);
  expect(counts(afterFirstAnswers(areas))).toEqual(PLAIN);
});

test("counts under no known head, or under none, are asked and not called other sheets", () => {
  for (const rows of [[["q", "w", "e", "r", "t", "y", "u", "i", "o"], ...ROWS], ROWS]) {
    const season = readSeason([areaOf("Cordons", [HEADS, ...ROWS]), areaOf("More", rows)]);
    expect(counts(season)).toEqual(PLAIN);
    expect(season.account.questions.map((question) => questionSentence(question, "en"))).toEqual([
      `More: ${ROWS.length} rows look like counts, but stand under no head that is known, and were not read. Write heads such as Block, Row, Vine and Side above, or leave the sheet out.`,
    ]);
    const left = readSeason([areaOf("Cordons", [HEADS, ...ROWS]), areaOf("More", rows)], {
      answers: { leaveOut: ["More"] },
    });
    expect(questions(left)).toEqual([]);
  }
});

test("of heads such as Pos and Len ft positions and lengths are proposed", () => {
  const areas = [
    areaOf("Cordons", [["Blk", "Rw", "Vn", "Sd", "Crd", "Trk", "Len ft", "Pos", "Live"], ...ROWS]),
  ];
  const season = readSeason(areas);
  expect(season.account.questions[0].proposals[0].heads![0].columns).toMatchObject({
    Pos: "positions",
    "Len ft": "length",
  });
  const after = afterFirstAnswers(areas);
  expect(counts(after)).toEqual(PLAIN);
  expect(after.tables("cordons")[0].column("positions")!.usable[0]).toBe(8);
  // 3 ft are 0.9144 m.
  expect(after.tables("cordons")[0].column("length")!.usable[0]).toBeCloseTo(0.9144, 9);
});

describe("candidates side by side", () => {
  const vines = [1, 2].flatMap((row) =>
    [1, 2, 3, 4, 5, 6].map((vine) => ({ row, vine, live: 1 + ((row + vine) % 8) })),
  );
  const wide = (heads: readonly string[], arm: (live: number) => Row) => [
    areaOf("Cordons", [
      ["Block", "Row", "Vine", ...heads.flatMap((head) => `L ${head}`), ...heads.map((head) => `R ${head}`)],
      ...vines.map(({ row, vine, live }): Row => ["North Bench", row, vine, ...arm(live), ...arm(live)]),
    ]),
  ];

  test("live spurs are positions less the dead ones of their own side", () => {
    const season = readSeason(wide(["positions", "dead"], (live) => [8, 8 - live]));
    expect(counts(season)).toEqual(PLAIN);
    expect(codes(season)).toContain("liveDerived");
  });

  test("spurs of last year before those of this one are not taken", () => {
    const season = readSeason(wide(["spurs 2025", "spurs 2026", "positions"], (live) => [7, live, 8]));
    expect(counts(season)).toEqual(PLAIN);
  });

  test("lengths without a unit that no vine has are one question for both sides", () => {
    const areas = wide(["spurs", "length", "positions"], (live) => [live, 36, 8]);
    expect(questions(readSeason(areas))).toEqual(["unit"]);
    const after = afterFirstAnswers(areas);
    expect(counts(after)).toEqual(PLAIN);
    for (const table of after.tables("cordons"))
      expect(table.column("length")!.usable[0]).toBeCloseTo(0.9144, 9);
  });
});

test("heads with units below them that come again above each caption lose no row of the first", () => {
  const heads = [HEADS.slice(2).map((head) => head.replace(" (ft)", "")), [null, null, null, null, "ft"]];
  const rowsOf = (row: number) =>
    ROWS.filter((cells) => cells[1] === row).map((cells): Row => [
      cells[2],
      cells[3] === "left" ? "L" : "R",
      ...cells.slice(4),
    ]);
  const season = readSeason([
    areaOf("Cordons", [
      ...heads,
      ["North Bench row 1"],
      ...rowsOf(1),
      ["Total"],
      ...heads,
      ["North Bench row 2"],
      ...rowsOf(2),
    ]),
  ]);
  expect(counts(season)).toEqual(PLAIN);
});
