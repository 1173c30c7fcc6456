import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";
import {
  blockOfRow,
  choiceId,
  namedPlace,
  neighbourKey,
  NO_PLACE,
  placeKey,
  placeOf,
  rowKey,
} from "../../../src/survey/season/vinePlaces";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { NO_WORD } from "../../../src/survey/sheets/words";
import { seasonOfSheets, type Rows } from "../crop/seasonOfSheets";
import { placeOfLabel } from "../../../src/survey/reading/placeLabel";

const LABELS = [
  "1",
  "1a",
  "1z",
  "2",
  "12",
  "12.1",
  "12.2",
  "12.25",
  "12.3",
  "12.5",
  "12.75",
  "12.9",
  "12b",
  "A",
  "Z",
  "A1",
  "A121",
  "B7",
  "Z315",
];
const places = LABELS.map((label) => placeOfLabel(label)!);

test.each(places)("a row and a vine at %d come back from their key, whatever the block's number", (place) => {
  for (const block of [0, 1, 19_999]) {
    expect(placeOf(placeKey(block, 7, place))).toEqual({ block, row: 7, vine: place });
    expect(placeOf(placeKey(block, place, place))).toEqual({ block, row: place, vine: place });
  }
});

test("keys are in the order of block, row and vine, and different for different vines", () => {
  const ordered = [...places].sort((a, b) => a - b);
  const keys = ordered.flatMap((row) => ordered.map((vine) => placeKey(3, row, vine)));
  expect(keys).toEqual([...new Set(keys)].sort((a, b) => a - b));
  expect(rowKey(placeKey(3, 12, 12.5))).toBe(rowKey(placeKey(3, 12, 1)));
  expect(rowKey(placeKey(3, places[1], 1))).not.toBe(rowKey(placeKey(3, 1, 1)));
});

test.each([NaN, 0, 0.5, -1, 12.333, 8192])("%d is no place of a vine", (vine) => {
  expect(placeKey(0, 1, vine)).toBe(NO_PLACE);
});

test("a list of vines without statuses is no register: a vine that it lacks is not unknown", () => {
  const counts = areaOf("Cordons", [
    [...CORDON_HEADS],
    ["North Bench", 1, 1, "left", "A", 1, 3, 8, 7],
    ["North Bench", 1, 2, "left", "A", 1, 3, 8, 6],
  ]);
  const codes = (vines: SheetArea) => allFindings(readSeason([counts, vines])).map(({ code }) => code);
  const clusters = ["Block", "Row", "Vine", "Clusters", "Cluster weight (g)"];
  expect(codes(areaOf("Yield", [clusters, ["North Bench", 1, 1, 30, 110]]))).not.toContain("unknownVine");
  expect(
    codes(
      areaOf("Vines", [
        [...clusters, "Status"],
        ["North Bench", 1, 1, 30, 110, "bearing"],
      ]),
    ),
  ).toContain("unknownVine");
});

test.each<[string, number, number, number]>([
  ["no block", NO_WORD, 1, 1],
  ["a row before the first", 0, 0, 1],
  ["a row between none and the first", 0, 0.5, 1],
  ["a row that nobody can read", 0, NaN, 1],
  ["a row above any", 0, 8192, 1],
  ["a row at no part of the way", 0, 12.333, 1],
])("%s is no place", (_, block, row, vine) => expect(placeKey(block, row, vine)).toBe(NO_PLACE));

test("the last row and vine are places, neighbours follow each other, and a row knows its block", () => {
  const key = placeKey(3, 8191, 8190);
  expect(placeOf(key)).toEqual({ block: 3, row: 8191, vine: 8190 });
  expect([neighbourKey(key, 1), neighbourKey(key, -2)]).toEqual([
    placeKey(3, 8191, 8191),
    placeKey(3, 8191, 8188),
  ]);
  expect([0, 3, 19_999].map((block) => blockOfRow(rowKey(placeKey(block, 8191, 8191))))).toEqual([
    0, 3, 19_999,
  ]);
  expect(namedPlace("North Bench", 3, 12.5)).toBe("3 12.5 North Bench");
});

describe("numbers of cordons", () => {
  const CORDONS = ["Block", "Row", "Vine", "Side", "Cordon", "Positions", "Live spurs"];
  const cordon = (row: CellValue, vine: CellValue, side: CellValue, letter: CellValue): CellValue[] => [
    "North Bench",
    row,
    vine,
    side,
    letter,
    8,
    7,
  ];
  const keys = (...rows: readonly CellValue[][]) => {
    const season = seasonOfSheets({ cordons: [CORDONS, ...rows] });
    const [table] = season.tables("cordons");
    return rows.map((_, i) => season.places.cordonKeys(table)(i));
  };

  test("are whole, and different for different vines, sides and letters", () => {
    const vines = (
      [
        [1, 1],
        [1, 2],
        [2, 1],
        [2, 5000],
        [2000, 1],
        [1, "1a"],
        ["1a", 1],
        [1, 1.5],
      ] as const
    ).flatMap(([row, vine]) =>
      ["left", "right"].flatMap((side) =>
        [..."ABCDEFGHIJKLMNOPQRS"].map((letter) => cordon(row, vine, side, letter)),
      ),
    );
    const found = keys(...vines);
    expect(new Set(found).size).toBe(vines.length);
    expect(found.every(Number.isSafeInteger)).toBe(true);
    // Those of rows and vines between others lie below 0, where no whole number of a row and vine reaches.
    expect(found.map((key) => key! < 0)).toEqual(
      vines.map(([, row, vine]) => typeof row === "string" || !Number.isInteger(vine)),
    );
  });

  test("are the same for the same cordon, however it is written, and for sides that nobody can read", () => {
    const [one, same, blank, unread] = keys(
      cordon(3, 4, "left", "A"),
      cordon(3, 4, "L", "a "),
      cordon(3, 4, null, "A"),
      cordon(3, 4, "purple", "A"),
    );
    expect(same).toBe(one);
    expect(unread).toBe(blank);
    expect(blank).not.toBe(one);
  });

  test("are none without a vine, without a letter, and behind the 512th letter", () => {
    expect(
      keys(cordon(1, 1, "left", "A"), cordon(1, "?", "left", "A"), cordon(1, 2, "left", null)).map(
        (key) => key !== undefined,
      ),
    ).toEqual([true, false, false]);
    const many = keys(...Array.from({ length: 513 }, (_, at) => cordon(1, at + 1, "left", `A${at}`)));
    expect(many.map((key) => key !== undefined)).toEqual([...Array<boolean>(512).fill(true), false]);
  });

  test("stand for sheets without sides, and are none for sheets without letters", () => {
    const season = readSeason([
      areaOf("One", [
        ["Block", "Row", "Vine", "Cordon", "Positions", "Live spurs"],
        ["North Bench", 1, 1, "A", 8, 7],
      ]),
      areaOf("Two", [CORDONS, cordon(1, 1, null, "A")]),
      areaOf("Three", [
        ["Block", "Row", "Vine", "Side", "Positions", "Live spurs"],
        ["North Bench", 1, 2, "left", 8, 7],
      ]),
    ]);
    const [one, two, three] = season.tables("cordons").map((table) => season.places.cordonKeys(table)(0));
    expect(one).toBe(two);
    expect(three).toBeUndefined();
  });
});

describe("the register of vines", () => {
  const REGISTER: Rows = [
    ["Block", "Row", "Vine", "Status", "Live trunks"],
    ["North Bench", 1, 1, "bearing", 2],
    ["North Bench", 1, 1, "missing", 0],
    ["North Bench", 1, 2, "young", 1],
    ["North Bench", "?", 3, "young", 1],
    ["North Bench", 1, 4, null, 1],
    ["Creek", 1, 1, "missing", null],
  ];
  const LIST: Rows = [
    ["Block", "Row", "Vine", "Clusters"],
    ["North Bench", 1, 2, 30],
    ["North Bench", 1, 9, 31],
    ["Hill", 1, 1, 32],
  ];
  const season = () =>
    readSeason([
      areaOf("Yield", LIST),
      areaOf("Vines", REGISTER),
      areaOf("Yield again", [
        LIST[0],
        ["North Bench", 1, 9, 29],
        ["North Bench", 1, 10, 28],
        ["North Bench", "?", 1, 27],
      ]),
      areaOf("Second walk", [REGISTER[0], ["North Bench", 1, 1, "young", 1]]),
    ]);

  test("has each vine once, of sheets with statuses before lists without, and the first row of two", () => {
    const { places, words } = season();
    const named = [...places.register()].map(([key, { table, index }]) => {
      const { block, row, vine } = placeOf(key);
      return [words.wordOf(block), row, vine, table.sheet, index];
    });
    expect(named).toEqual([
      ["North Bench", 1, 1, "Vines", 0],
      ["North Bench", 1, 2, "Vines", 2],
      ["North Bench", 1, 4, "Vines", 4],
      ["Creek", 1, 1, "Vines", 5],
      ["North Bench", 1, 9, "Yield", 1],
      ["Hill", 1, 1, "Yield", 2],
      ["North Bench", 1, 10, "Yield again", 1],
    ]);
    expect(places.register()).toBe(places.register());
  });

  test("is one of a block of which it names a vine that stands", () => {
    const { places, words } = season();
    // Creek has missing vines alone, Hill a list alone, Lake nothing.
    expect(
      ["North Bench", "Creek", "Hill", "Lake"].map((block) => places.hasRegisterOf(words.codeOf(block))),
    ).toEqual([true, false, false, false]);
  });

  test("tells the status of a vine, and of those in a list without statuses; bearing where it does not tell", () => {
    const { places, tables, words } = season();
    const [list, register, again] = tables("vines");
    const statuses = (table: typeof list) =>
      Array.from({ length: table.rowCount }, (_, i) => places.statusesOf(table)(i));
    expect([list.sheet, statuses(list)]).toEqual(["Yield", ["young", "bearing", "bearing"]]);
    expect(statuses(register)).toEqual(["bearing", "missing", "young", "young", undefined, "missing"]);
    expect(statuses(again)).toEqual(["bearing", "bearing", "bearing"]);
    const north = words.codeOf("North Bench");
    expect([1, 2, 4, 9, 12].map((vine) => places.statusOf(placeKey(north, 1, vine)))).toEqual([
      "bearing",
      "young",
      undefined,
      undefined,
      undefined,
    ]);
  });

  test("counts no vine twice: one of a list that stands in it or in another list before is told", () => {
    const { places, tables } = season();
    const before = tables("vines").map((table) =>
      Array.from({ length: table.rowCount }, (_, i) => places.listedBefore(table)(i)),
    );
    expect(before).toEqual([[true, false, false], Array(6).fill(false), [true, false, false], [false]]);
  });
});

describe("the rows of the Blocks sheets", () => {
  const season = seasonOfSheets({
    blocks: [
      ["Block", "Vines", "Training system", "Row spacing (m)"],
      ["North Bench", 40, "high wire", 3],
      [{ error: "#N/A" }, 9, "high wire", 9],
      ["Creek", null, null, 2.5],
      ["North Bench", 50, "upright shoots", 2],
    ],
  });
  const { places, words } = season;
  const [north, creek] = [words.codeOf("North Bench"), words.codeOf("Creek")];

  test("are found by the block's name, the first of two, and none without a name", () => {
    expect([...places.blockRows()].map(([block, { index }]) => [words.wordOf(block), index])).toEqual([
      ["North Bench", 0],
      ["Creek", 2],
    ]);
    expect(places.blockRows()).toBe(places.blockRows());
  });

  test("tell their numbers, and NaN where nothing stands", () => {
    expect([places.blockNumber(north, "vines"), places.blockNumber(creek, "rowSpacing")]).toEqual([40, 2.5]);
    expect([
      places.blockNumber(creek, "vines"),
      places.blockNumber(north, "vineSpacing"),
      places.blockNumber(99, "vines"),
    ]).toEqual([NaN, NaN, NaN]);
  });

  test("tell their choices; a blank is none, and a column of words has none", () => {
    const [table] = season.tables("blocks");
    const [training, block] = [table.column("training")!, table.column("block")!];
    expect([choiceId(training, 0), choiceId(training, 2), choiceId(training, 3), choiceId(block, 0)]).toEqual(
      ["highWire", undefined, "upright", undefined],
    );
  });
});
