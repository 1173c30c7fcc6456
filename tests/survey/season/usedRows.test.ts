import * as fc from "fast-check";
import { winterRows } from "../../../src/survey/season/winterRows";
import { cardLine } from "../../../src/survey/decide/cards/cardWords";
import { cardsSheet } from "../../../src/workbook/results/cardsSheet";
import { crewCards } from "../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { outlookInputs } from "../../../src/survey/crop/outlookInputs";
import { gapsOfSeason } from "../../../src/survey/season/gapsOfSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { Season } from "../../../src/survey/season/season";
import { usedSentence } from "../../../src/survey/season/usedSentence";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { NO_PLACE, placeOf } from "../../../src/survey/season/vinePlaces";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEAD = [...CORDON_HEADS, "Longest gap", "Condition", "Fixed choice"];

/** Six vines of an invented block, three candidates each; every left one is better on A, the right one is fixed. */
const SOUND: readonly (readonly CellValue[])[] = [1, 2, 3, 4, 5, 6].flatMap((vine) => [
  ["North Bench", 1, vine, "left", "A", 1, 3, 9, 8, 1, "sound", "stays"],
  ["North Bench", 1, vine, "left", "B", 2, 3, 9, 3, 4, "sound", "goes"],
  ["North Bench", 1, vine, "right", "C", 2, 3, 9, 8, 1, "sound", "stays"],
]);

const blocks = areaOf("Blocks", [
  ["Block", "Vines", "Vine spacing (ft)", "Training system", "Cluster weight (lb)", "Node rule"],
  ["North Bench", 6, 8, "high wire", 0.25, "40"],
]);

const seasonOf = (rows: readonly (readonly CellValue[])[]) =>
  readSeason([areaOf("Cordons", [HEAD, ...rows]), blocks]);

const changed = (cells: readonly CellValue[], at: number, value: CellValue) =>
  cells.map((cell, column) => (column === at ? value : cell));

const BAD: readonly CellValue[] = [
  null,
  "x",
  "?",
  -1,
  90,
  1e6,
  2.5,
  NaN,
  Infinity,
  true,
  { error: "#N/A" },
  "twelve",
];

const name = (block: string, { row, vine }: { readonly row: number; readonly vine: number }) =>
  `${block} ${row} ${vine}`;

/** Vines that each result is worked out from. */
function vinesUsed(season: Season) {
  const decisions = [...decideSeason(season)];
  const rowsOf = (used: (index: number) => boolean) => {
    const [table] = season.tables("cordons");
    const vines = new Set<number>();
    const places = season.places.keysOf(table);
    for (let i = 0; i < table.rowCount; i++) if (used(i)) vines.add(places[i]);
    return [...vines].map((key) => name(season.words.wordOf(placeOf(key).block), placeOf(key))).sort();
  };
  const [table] = season.tables("cordons");
  const cards = crewCards(season, decisions).flatMap(({ block, row, vines }) =>
    vines
      .filter(({ keeps, canes }) => keeps.length + canes.length > 0)
      .map(({ vine }) => name(block, { row, vine })),
  );
  const [outlook] = outlookInputs(season, { decided: decisions });
  const winter = outlook?.stages.find(({ stage }) => stage === "winter");
  return {
    rows: rowsOf((i) => season.used.isUsed(table, i)),
    choice: decisions
      .filter(({ decision }) => decision.sides.length > 0)
      .map((vine) => name(vine.block, vine))
      .sort(),
    gaps: gapsOfSeason(season)
      .rows.flatMap(({ block, row, byVine }) =>
        byVine.filter(({ positions }) => positions > 0).map(({ vine }) => name(block, { row, vine })),
      )
      .sort(),
    cards: cards.sort(),
    winters: winterRows(season).reduce((sum, { vines }) => sum + vines, 0),
    nodesKnown: winter !== undefined,
  };
}

test("for any one bad cell in a column that decides, every result is worked out from the same vines", () => {
  const deciding = [0, 1, 2, 3, 4, 5, 7, 8, 10, 11];
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: SOUND.length - 1 }),
      fc.constantFrom(...deciding),
      fc.constantFrom(...BAD),
      (row, column, bad) => {
        const rows = SOUND.map((cells, at) => (at === row ? changed(cells, column, bad) : cells));
        const season = seasonOf(rows);
        const used = vinesUsed(season);
        expect(used.choice).toEqual(used.rows);
        expect(used.gaps).toEqual(used.rows);
        expect(used.cards).toEqual(used.rows);
        const [table] = season.tables("cordons");
        const rowsUsed = SOUND.flatMap((_, i) => (season.used.isUsed(table, i) ? [i] : []));
        const keys = season.places.keysOf(table);
        const fixed = new Set(rowsUsed.filter((i) => rows[i][11] === "stays").map((i) => keys[i]));
        expect(used.winters).toBe(fixed.size);
        const account = season.used.account();
        expect(account.rows).toBe(SOUND.length);
        expect(account.used).toBe(rowsUsed.length);
        expect(account.leftOut.reduce((sum, cause) => sum + cause.rows, account.used)).toBe(account.rows);
        expect(gapsOfSeason(season).rowsUsed).toEqual(account);
      },
    ),
    { numRuns: 600 },
  );
});

test("after any one cell is typed, vines decided before and kept give what deciding anew gives", () => {
  const sound = seasonOf(SOUND);
  const before = { settings: sound.settings, vines: [...decideSeason(sound)] };
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: SOUND.length - 1 }),
      fc.integer({ min: 0, max: HEAD.length - 1 }),
      fc.constantFrom<CellValue>(...BAD, 1, 2, 7, "right", "injured", "stays"),
      fc.boolean(),
      (row, column, typed, added) => {
        const typedRows = SOUND.map((cells, at) => (at === row ? changed(cells, column, typed) : cells));
        const season = seasonOf(added ? [...typedRows.slice(0, 9), ...typedRows.slice(3)] : typedRows);
        expect([...decideSeason(season, before)]).toEqual([...decideSeason(season)]);
      },
    ),
    { numRuns: 150 },
  );
});

test("under other settings no vine keeps the answer it had before", () => {
  const sound = seasonOf(SOUND);
  const before = { settings: sound.settings, vines: [...decideSeason(sound)] };
  const season = readSeason([
    areaOf("Cordons", [HEAD, ...SOUND]),
    blocks,
    areaOf("Settings", [
      ["Setting", "Value"],
      ["Weight of live spurs", 0.9],
    ]),
  ]);
  expect(season.settings).not.toEqual(sound.settings);
  expect([...decideSeason(season, before)]).toEqual([...decideSeason(season)]);
});

test("for any one bad cell in any other column, every row is still used and the cell is in no result", () => {
  // 2.5 ft is a sound length
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: SOUND.length - 1 }),
      fc.constantFrom(6, 9),
      fc.constantFrom(...BAD),
      (row, column, bad) => {
        const season = seasonOf(SOUND.map((cells, at) => (at === row ? changed(cells, column, bad) : cells)));
        expect(season.used.account()).toEqual({ rows: 18, used: 18, leftOut: [] });
        const without = seasonOf(
          SOUND.map((cells, at) => (at === row ? changed(cells, column, null) : cells)),
        );
        const decisions = (of: Season) => [...decideSeason(of)].map(({ decision }) => decision);
        if (bad !== 2.5) expect(decisions(season)).toEqual(decisions(without));
      },
    ),
    { numRuns: 200 },
  );
});

describe("a typo of 90 live spurs", () => {
  const season = seasonOf(SOUND.map((cells, at) => (at === 0 ? changed(cells, 8, 90) : cells)));

  test("is wrong for the check", () => {
    const found = allFindings(season).map(({ code, row, column }) => [code, row, column]);
    expect(found).toContainEqual(["outsideLimits", 2, "Live spurs"]);
  });

  test("is in no gap, no choice, no card, and the crop is worked out from the other five vines", () => {
    const used = vinesUsed(season);
    expect(used.choice).toEqual([2, 3, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
    expect(used.gaps).toEqual([2, 3, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
    const decisions = [...decideSeason(season)];
    const [{ stages, asCounted }] = outlookInputs(season, { decided: decisions });
    // five vines alike: a budget of 40 nodes on 8 + 8 spurs, and two nodes a spur as counted
    expect(stages[0]).toMatchObject({ stage: "winter", nodes: { value: 40, sample: { n: 5 } } });
    expect(asCounted).toMatchObject({ nodes: { value: 32, sample: { n: 5 } } });
  });

  test("is said where the vine is decided", () => {
    const [first] = [...decideSeason(season)];
    expect(first.decision.notes).toEqual([{ code: "recount", facts: { cells: "Cordons I2" } }]);
    expect(first.decision.cordons.map(({ verdict }) => verdict)).toEqual(["ask", "ask", "ask"]);
  });

  test("is said with every result, in each language", () => {
    const account = season.used.account();
    expect(usedSentence(account, "en")).toBe(
      "Worked out from 15 of 18 rows of the Cordons sheets. Left out: 2 beside those on the same vines; 1 where Live spurs is outside its limits (first in Cordons, row 2).",
    );
    expect(usedSentence(account, "es")).toContain("15 de 18 filas");
    expect(usedSentence(account, "fr")).toContain("15 des 18 lignes");
  });
});

test("a length that only rounding parts from its limit is the limit", () => {
  // the least of a length is 0 m; a number this small stands for nothing
  const season = seasonOf(SOUND.map((cells, at) => (at === 0 ? changed(cells, 6, -1e-12) : cells)));
  expect(season.tables("cordons")[0].column("length")!.usable[0]).toBe(0);
  expect([...decideSeason(season)]).toHaveLength(6);
});

test("95 positions change no gap of the block and order no spurs", () => {
  const sound = gapsOfSeason(seasonOf(SOUND.slice(3)));
  const season = seasonOf(SOUND.map((cells, at) => (at === 0 ? changed(cells, 7, 95) : cells)));
  const { gaps, positions } = gapsOfSeason(season).rows[0];
  expect({ gaps, positions }).toEqual({ gaps: sound.rows[0].gaps, positions: sound.rows[0].positions });
  const [card] = crewCards(season, [...decideSeason(season)]);
  expect(card.vines[0]).toMatchObject({ vine: 1, keeps: [], cuts: [], canes: [] });
  expect(card.vines[0]).not.toHaveProperty("nodes");
  expect(cardLine(card.vines[0], "en", "US").notes).toEqual(["recount"]);
  const options = { language: "en", unitSystem: "US", date: "day" } as const;
  const notes = cardsSheet([card], options).rows.map((row) => row[7]);
  expect(notes.map((note) => note === "recount")).toEqual([true, false, false, false, false, false]);
});

test("a row that names no vine holds back the vines above and below it, and no others", () => {
  const season = seasonOf(SOUND.map((cells, at) => (at === 5 ? changed(cells, 2, null) : cells)));
  expect(vinesUsed(season).choice).toEqual([1, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
});

test("a line of a csv file with a cell too many is used nowhere and holds back the vines above and below it", () => {
  const shifted = (cells: readonly CellValue[]) => [...cells.slice(0, 6), 2, ...cells.slice(6)];
  const rows = SOUND.map((cells, at) => (at === 5 ? shifted(cells) : cells));
  const season = readSeason([areaOf("Cordons", [HEAD, ...rows], { isText: true }), blocks]);
  const used = vinesUsed(season);
  expect(used.rows).toEqual([1, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
  expect([used.choice, used.gaps, used.cards]).toEqual([used.rows, used.rows, used.rows]);
  expect(allFindings(season).filter(({ row }) => row === 7)).toMatchObject([{ code: "extraCells" }]);
  expect(usedSentence(season.used.account(), "en")).toContain(
    "1 where Block stands in a line with more cells than heads (first in Cordons, row 7)",
  );
  const sheet = readSeason([areaOf("Cordons", [HEAD, ...rows]), blocks]);
  expect(allFindings(sheet).map(({ code }) => code)).not.toContain("extraCells");
});

test("twenty thousand rows filled down onto one vine are one finding, and every result says so at once", () => {
  const many = Array.from({ length: 20_000 }, (_, i) => changed(SOUND[i % 3], 2, 7));
  const season = seasonOf([...SOUND, ...many]);
  const used = vinesUsed(season);
  expect(used.rows).toEqual([1, 2, 3, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
  expect([used.choice, used.gaps, used.cards]).toEqual([used.rows, used.rows, used.rows]);
  expect(usedSentence(season.used.account(), "en")).toBe(
    "Worked out from 18 of 20018 rows of the Cordons sheets. Left out: 19999 beside those on the same vines; 1 where Vine stands on more rows than a vine has cordons (first in Cordons, row 20).",
  );
  const seventh = [...decideSeason(season)].find(({ vine }) => vine === 7)!;
  expect(seventh.decision.notes).toEqual([{ code: "recount", facts: { cells: "Cordons C20" } }]);
  const found = allFindings(season).filter(({ severity }) => severity === "wrong");
  expect(found).toMatchObject([
    { code: "cordonsAboveMost", row: 20, column: "Vine", facts: { rows: 20_000, most: 24 } },
  ]);
});

test("a register or a Settings line with a cell too many says nothing", () => {
  const cordons = areaOf("Cordons", [HEAD, ...SOUND]);
  const text = { isText: true };
  const season = readSeason([
    cordons,
    areaOf(
      "Vines",
      [
        ["Block", "Row", "Vine", "Status"],
        ["North Bench", 1, 1, "missing", "bearing"],
        ["North Bench", 1, 2, "missing"],
      ],
      text,
    ),
    areaOf(
      "Settings",
      [
        ["Setting", "Value", "Unit"],
        ["Nodes a spur", 3, "nodes", "old"],
      ],
      text,
    ),
  ]);
  const places = season.places;
  const [table] = season.tables("cordons");
  const keys = places.keysOf(table);
  expect([places.statusOf(keys[0]), places.statusOf(keys[3])]).toEqual([undefined, "missing"]);
  expect(allFindings(season).filter(({ code }) => code === "extraCells")).toMatchObject([
    { sheet: "Settings", row: 2 },
    { sheet: "Vines", row: 2 },
  ]);
  expect(season.settings.nodesASpur).toBe(readSeason([cordons]).settings.nodesASpur);
});

test("a dead cordon and one fixed to go need no counts", () => {
  const rows = SOUND.map((cells, at) =>
    at === 1
      ? changed(changed(changed(cells, 7, null), 8, null), 9, null)
      : at === 4
        ? changed(changed(changed(cells, 8, null), 10, "dead"), 9, null)
        : cells,
  );
  expect(seasonOf(rows).used.account()).toEqual({ rows: 18, used: 18, leftOut: [] });
});

test("rows laid out on vines that nobody has counted yet are still to be counted, and hold nothing against the others", () => {
  const laid = [7, 8].flatMap((vine) =>
    SOUND.slice(0, 3).map((cells) => cells.map((cell, at) => (at === 2 ? vine : at > 4 ? null : cell))),
  );
  const season = seasonOf([...SOUND, ...laid]);
  expect(vinesUsed(season).rows).toEqual([1, 2, 3, 4, 5, 6].map((vine) => `North Bench 1 ${vine}`));
  expect(usedSentence(season.used.account(), "en")).toBe(
    "Worked out from 18 of 24 rows of the Cordons sheets. Left out: 6 still to be counted (first in Cordons, row 20).",
  );
  expect(usedSentence(season.used.account(), "fr")).toContain("6 encore à compter");
  const [card] = crewCards(season, [...decideSeason(season)]);
  expect(card.vines.slice(6).map((vine) => cardLine(vine, "en", "US").notes)).toEqual([
    ["still to be counted"],
    ["still to be counted"],
  ]);
  // one cordon of a vine counted, the others not: those were left out
  const begun = laid.map((cells, at) =>
    at === 3 ? [...SOUND[0].slice(0, 2), 8, ...SOUND[0].slice(3)] : cells,
  );
  expect(usedSentence(seasonOf([...SOUND, ...begun]).used.account(), "en")).toBe(
    "Worked out from 18 of 24 rows of the Cordons sheets. Left out: 3 still to be counted (first in Cordons, row 20); 2 where Positions is blank (first in Cordons, row 24); 1 beside those on the same vines.",
  );
});

describe("rows that are left out", () => {
  const HEADS = [
    "Block",
    "Row",
    "Vine",
    "Side",
    "Cordon",
    "Trunk",
    "Positions",
    "Live spurs",
    "Condition",
    "Trunk condition",
    "Fixed choice",
  ];
  /** A sheet with a row a vine, sound but for the cells given. */
  const rowsOf = (rows: readonly Readonly<Record<string, CellValue>>[], heads: readonly string[] = HEADS) => {
    const usual = {
      Block: "North Bench",
      Row: 1,
      Side: "left",
      Cordon: "A",
      Trunk: 1,
      Positions: 8,
      "Live spurs": 7,
      Condition: "sound",
    };
    return readSeason([
      areaOf("Cordons", [
        heads,
        ...rows.map((row, at) => heads.map((head) => ({ Vine: at + 1, ...usual, ...row })[head] ?? null)),
      ]),
    ]);
  };
  /** Rows that are not used as the sheet numbers them, each with the head and the reason of its cell. */
  const leftOut = (season: Season) => {
    const [table] = season.tables("cordons");
    return Array.from({ length: table.rowCount }, (_, i) => {
      const fault = season.used.faultAt(table, i);
      expect(fault === undefined || !season.used.isUsed(table, i)).toBe(true);
      return season.used.isUsed(table, i)
        ? []
        : [[table.sheetRow(i), ...(fault ? [fault.column, fault.sheetColumn, fault.reason] : ["beside"])]];
    }).flat();
  };
  const second = (cells: Readonly<Record<string, CellValue>>) => leftOut(rowsOf([{}, cells, {}]));

  // Columns are counted from the sheet's left: Block is the first, Fixed choice the eleventh.
  test.each<[string, Readonly<Record<string, CellValue>>, unknown[]]>([
    ["live spurs left blank", { "Live spurs": null }, [[3, "liveSpurs", 8, "blank"]]],
    ["a side that nobody wrote", { Side: null }, [[3, "side", 4, "blank"]]],
    ["a cordon without a letter", { Cordon: null }, [[3, "cordon", 5, "blank"]]],
    ["positions above any", { Positions: 61 }, [[3, "positions", 7, "outside"]]],
    [
      "a vine at no tenth or quarter of the way, which has no place",
      { Vine: 2.33 },
      [
        [2, "beside"],
        [3, "vine", 3, "notWhole"],
        [4, "beside"],
      ],
    ],
    ["a vine half way between two others", { Vine: 2.5 }, []],
    ["half a spur", { "Live spurs": 6.5 }, [[3, "liveSpurs", 8, "notWhole"]]],
    [
      "more spurs than positions: the first of both",
      { "Live spurs": 9 },
      [[3, "positions", 7, "contradicted"]],
    ],
    ["a word for a count", { "Live spurs": "many" }, [[3, "liveSpurs", 8, "unreadable"]]],
    ["an error of a formula", { Trunk: { error: "#REF!" } }, [[3, "trunk", 6, "error"]]],
    ["a condition that is none", { Condition: "purple" }, [[3, "condition", 9, "unreadable"]]],
    ["a choice that is none", { "Fixed choice": "purple" }, [[3, "fixedChoice", 11, "unreadable"]]],
    ["spurs on a dead trunk", { "Trunk condition": "dead" }, [[3, "liveSpurs", 8, "contradicted"]]],
    [
      "a vine that is to be counted again",
      { "Fixed choice": "count again" },
      [[3, "fixedChoice", 11, "marked"]],
    ],
    ["two cells: the first counts", { Positions: null, Cordon: null }, [[3, "cordon", 5, "blank"]]],
    [
      "a wrong cell before a mark",
      { Positions: null, "Fixed choice": "count again" },
      [[3, "positions", 7, "blank"]],
    ],
    ["a mark, and the rest is sound", { "Fixed choice": "stays" }, []],
    ["no trunk", { Trunk: null }, []],
    ["no condition", { Condition: null, "Trunk condition": null }, []],
    ["no counts on a dead cordon", { Positions: null, "Live spurs": null, Condition: "dead" }, []],
    ["no counts on a cordon that goes", { Positions: null, "Live spurs": null, "Fixed choice": "goes" }, []],
    [
      "no counts on a cordon that stays",
      { Positions: null, "Live spurs": null, "Fixed choice": "stays" },
      [[3, "positions", 7, "blank"]],
    ],
    [
      "a dead cordon without a letter",
      { Cordon: null, Condition: "dead", Positions: null, "Live spurs": null },
      [[3, "cordon", 5, "blank"]],
    ],
    [
      "a wrong count on a dead cordon",
      { Positions: 61, "Live spurs": null, Condition: "dead" },
      [[3, "positions", 7, "outside"]],
    ],
  ])("by a cell: %s", (_, cells, expected) => expect(second(cells)).toEqual(expected));

  test("with one cordon of a vine the others are left out beside it, and each cell at fault is told for the vine", () => {
    const season = rowsOf([
      { Vine: 1 },
      { Vine: 2, Positions: null },
      { Vine: 2, Side: "right", Cordon: "B" },
      { Vine: 2, Side: "right", Cordon: "C", Trunk: "?" },
      { Vine: 3 },
    ]);
    expect(leftOut(season)).toEqual([
      [3, "positions", 7, "blank"],
      [4, "beside"],
      [5, "trunk", 6, "unreadable"],
    ]);
    const keys = season.places.keysOf(season.tables("cordons")[0]);
    const cell = { sheet: "Cordons" };
    expect(season.used.faultsOf(keys[1])).toEqual([
      { ...cell, sheetRow: 3, column: "positions", sheetColumn: 7, reason: "blank" },
      { ...cell, sheetRow: 5, column: "trunk", sheetColumn: 6, reason: "unreadable" },
    ]);
    expect([season.used.faultsOf(keys[0]), season.used.faultsOf(keys[4])]).toEqual([[], []]);
  });

  // The vines above and below may be the row's own; a row of no vine beside another of none holds back only those beside.
  test.each<[string, CellValue[], number[]]>([
    ["the first row", ["?", 2, 3], [4]],
    ["the last row", [1, 2, "?"], [2]],
    ["between two vines", [1, "?", 3, 4], [5]],
    ["between rows of one vine", [1, "?", 1, 4], [5]],
    ["two rows of no vine", [1, 2, "?", "?", 5, 6], [2, 7]],
  ])("by a row that names no vine: %s", (_, vines, used) => {
    const season = rowsOf(vines.map((Vine) => ({ Vine })));
    const [table] = season.tables("cordons");
    const rows = vines.flatMap((_vine, i) => (season.used.isUsed(table, i) ? [table.sheetRow(i)] : []));
    expect(rows).toEqual(used);
  });

  test.each(["Block", "Row", "Vine"])("all, in a sheet without %s, and that column is named", (head) => {
    const season = rowsOf(
      [{}, {}, {}],
      HEADS.filter((own) => own !== head),
    );
    const [table] = season.tables("cordons");
    // Beside the vine's number the fault is shown, and where that is missing at the first column.
    const sheetColumn = head === "Vine" ? 1 : 2;
    expect(season.used.faultAt(table, 1)).toEqual({
      sheet: "Cordons",
      sheetRow: 3,
      column: head.toLowerCase(),
      sheetColumn,
      reason: "noColumn",
    });
    expect(season.used.account()).toEqual({
      rows: 3,
      used: 0,
      leftOut: [
        { column: head.toLowerCase(), reason: "noColumn", rows: 3, first: { sheet: "Cordons", sheetRow: 2 } },
      ],
    });
  });

  test.each<[string, string[], number]>([
    ["trunks, conditions and choices", [...HEADS.slice(0, 5), "Positions", "Live spurs"], 2],
    ["counts", HEADS.slice(0, 6), 2],
    ["anything but places: they are laid out and still to be counted", HEADS.slice(0, 5), 0],
  ])("by a column that the sheet does not have: %s", (_, heads, used) => {
    expect(rowsOf([{}, {}], heads).used.account()).toMatchObject({ rows: 2, used });
  });

  test("are told by their cause, the most rows first, with the first place of each", () => {
    const blank = { "Live spurs": null };
    const season = rowsOf([
      { Positions: 61 },
      blank,
      blank,
      {},
      { Vine: 4, Cordon: "B", Side: "right", Trunk: "?" },
      blank,
    ]);
    const first = (sheetRow: number) => ({ sheet: "Cordons", sheetRow });
    expect(season.used.account()).toEqual({
      rows: 6,
      used: 0,
      leftOut: [
        { column: "liveSpurs", reason: "blank", rows: 3, first: first(3) },
        { column: "positions", reason: "outside", rows: 1, first: first(2) },
        { column: "vine", reason: "sameVine", rows: 1, first: first(5) },
        { column: "trunk", reason: "unreadable", rows: 1, first: first(6) },
      ],
    });
    expect(season.used.account()).toBe(season.used.account());
  });

  test("still to be counted, and named at the first column of counts that the sheet has", () => {
    const blank = { Trunk: null, Positions: null, "Live spurs": null, Condition: null };
    const at = (heads: readonly string[]) =>
      leftOut(rowsOf([{}, {}, {}, blank], heads)).map(([, ...cell]) => cell);
    expect(at(HEADS)).toEqual([["positions", 7, "toCount"]]);
    expect(at(HEADS.filter((head) => head !== "Positions"))).toEqual([["liveSpurs", 7, "toCount"]]);
    expect(at(HEADS.filter((head) => head !== "Positions" && head !== "Live spurs"))).toEqual([
      ["vine", 3, "toCount"],
    ]);
  });

  // A vine has 24 cordons at most (Settings).
  test.each([
    [24, false],
    [25, true],
  ])("%p rows of one vine are more than a vine has cordons: %p", (rows, overfull) => {
    const two = Array.from({ length: rows }, (_, at) => ({ Vine: 7, Cordon: `A${at}` }));
    const season = rowsOf([
      { Vine: 1 },
      ...two.slice(0, 13),
      { Vine: 2 },
      ...two.slice(13),
      ...Array.from({ length: 30 }, () => ({ Vine: "?" })),
    ]);
    const [table] = season.tables("cordons");
    const key = season.places.keysOf(table)[1];
    expect([...season.used.overfull()]).toEqual(
      overfull ? [[key, { rows, first: { table, index: 1 } }]] : [],
    );
    expect(season.used.overfull()).toBe(season.used.overfull());
    if (overfull)
      expect(season.used.faultsOf(key)).toEqual([
        { sheet: "Cordons", sheetRow: 3, column: "vine", sheetColumn: 3, reason: "tooMany" },
      ]);
    expect(season.used.isUsed(table, 0)).toBe(true);
  });

  test("without sides those whose vine has another cordon, in that sheet or another", () => {
    const heads = ["Block", "Row", "Vine", "Cordon", "Positions", "Live spurs"];
    const row = (vine: number, letter: string, spurs: CellValue = 7): CellValue[] => [
      "North Bench",
      1,
      vine,
      letter,
      8,
      spurs,
    ];
    const season = readSeason([
      areaOf("One", [heads, row(1, "A"), row(2, "A"), row(2, "B", null), row(3, "A")]),
      areaOf("Two", [
        [...heads, "Side"],
        [...row(3, "B"), "left"],
        [...row(4, "A"), "left"],
        [...row(4, "B"), "right"],
      ]),
    ]);
    const codes = season.tables("cordons").map((table) =>
      Array.from({ length: table.rowCount }, (_, i) => {
        const fault = season.used.faultAt(table, i);
        return season.used.isUsed(table, i) ? "used" : fault ? `${fault.column} ${fault.reason}` : "beside";
      }),
    );
    expect(codes).toEqual([
      ["used", "side noColumn", "liveSpurs blank", "side noColumn"],
      ["beside", "used", "used"],
    ]);
  });

  test("are none of a winter before, and a row without a place is no vine to count again", () => {
    const sheet = (year: number, vine: CellValue) =>
      areaOf(`Cordons ${year}`, [
        CORDON_HEADS,
        ...[1, 2, vine].map((own) => ["North Bench", 1, own, "left", "A", 1, 3, 8, 7]),
      ]);
    const season = readSeason([sheet(2026, "?"), sheet(2025, 3)]);
    const [past] = season.pastTables("cordons");
    expect([past.rowCount, season.used.isUsed(past, 0), season.used.faultAt(past, 0)]).toEqual([
      3,
      false,
      undefined,
    ]);
    expect(season.used.account()).toMatchObject({ rows: 3, used: 1 });
    expect(season.used.faultsOf(NO_PLACE)).toEqual([]);
  });
});
