import { CELL } from "../../../src/survey/season/season";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetId } from "../../../src/survey/sheets/column";
import { seasonOfSheets } from "../crop/seasonOfSheets";

const SOUND: Readonly<Partial<Record<SheetId, Readonly<Record<string, CellValue>>>>> = {
  cordons: {
    Block: "A",
    Row: 1,
    Vine: 1,
    Side: "left",
    Cordon: "A",
    Trunk: 1,
    "Length (m)": 1,
    Positions: 9,
    "Live spurs": 6,
    "Longest gap": 2,
    Condition: "sound",
  },
  vines: { Block: "A", Row: 1, Vine: 1, Status: "bearing", Clusters: 5, Shoots: 5 },
  budCuts: { Block: "A", "Nodes cut": 8, "Primaries alive": 5, "Secondaries alive": 3 },
  blocks: { Block: "A", Vines: 9, "Year planted": 2011, "Vine spacing (m)": 2 },
};

/** What is made of a cell beside sound others: the names of the columns of its row that cannot be used, and why. */
function judged(sheet: SheetId, cells: Readonly<Record<string, CellValue>>): string[] {
  const row = { ...SOUND[sheet], ...cells };
  const [table] = seasonOfSheets({ [sheet]: [Object.keys(row), Object.values(row)] }).tables(sheet);
  const names = new Map(Object.entries(CELL).map(([name, state]) => [state as number, name]));
  return table.columns.flatMap(({ header, states, usable, numbers, column }) => {
    if (states[0] === CELL.usable) return [];
    if (column.kind !== "choice") expect([numbers[0], usable[0]]).toEqual([expect.any(Number), NaN]);
    return [`${header} ${names.get(states[0])}`];
  });
}

test.each<[string, SheetId, Readonly<Record<string, CellValue>>, string[]]>([
  ["60 positions are the most", "cordons", { Positions: 60, "Live spurs": 58 }, []],
  ["61 are none", "cordons", { Positions: 61, "Live spurs": 59 }, ["Positions outside"]],
  [
    "fewer than none are none",
    "cordons",
    { Positions: -1, "Live spurs": null },
    ["Positions outside", "Live spurs blank"],
  ],
  ["half a spur is none", "cordons", { "Live spurs": 6.5 }, ["Live spurs notWhole"]],
  ["a vine stands halfway between two others", "cordons", { Vine: 1.5 }, []],
  ["a row does not", "cordons", { Row: 1.5 }, ["Row notWhole"]],
  ["6 m are the longest cordon", "cordons", { "Length (m)": 6 }, []],
  ["6.1 m are none", "cordons", { "Length (m)": 6.1 }, ["Length (m) outside"]],
  ["every position may bear", "cordons", { "Live spurs": 9, "Longest gap": 0 }, []],
  [
    "more spurs than positions",
    "cordons",
    { "Live spurs": 10, "Longest gap": null },
    ["Positions contradicted", "Live spurs contradicted", "Longest gap blank"],
  ],
  ["a gap of all that is empty", "cordons", { "Longest gap": 3 }, []],
  ["a gap of more than is empty", "cordons", { "Longest gap": 4 }, ["Longest gap contradicted"]],
  ["a gap shorter than an even share", "cordons", { "Longest gap": 0 }, ["Longest gap contradicted"]],
  // 1 spur parts 9 - 1 = 8 empty positions into two stretches: the longest has 4 at least
  ["a gap of an even share", "cordons", { "Live spurs": 1, "Longest gap": 4 }, []],
  [
    "a gap below an even share",
    "cordons",
    { "Live spurs": 1, "Longest gap": 3 },
    ["Longest gap contradicted"],
  ],
  [
    "a dead cordon with spurs",
    "cordons",
    { Condition: "dead" },
    ["Live spurs contradicted", "Condition contradicted"],
  ],
  ["a dead cordon without", "cordons", { Condition: "dead", "Live spurs": 0, "Longest gap": 9 }, []],
  ["clusters on a missing vine", "vines", { Status: "missing", Shoots: 0 }, ["Clusters contradicted"]],
  ["shoots on a missing vine", "vines", { Status: "missing", Clusters: 0 }, ["Shoots contradicted"]],
  ["clusters on a young vine", "vines", { Status: "young" }, []],
  ["every bud alive", "budCuts", { "Primaries alive": 8, "Secondaries alive": 8 }, []],
  [
    "more primaries than nodes",
    "budCuts",
    { "Primaries alive": 9 },
    ["Nodes cut contradicted", "Primaries alive contradicted", "Secondaries alive contradicted"],
  ],
  [
    "more secondaries than nodes",
    "budCuts",
    { "Secondaries alive": 9 },
    ["Nodes cut contradicted", "Primaries alive contradicted", "Secondaries alive contradicted"],
  ],
  ["planted in 1850", "blocks", { "Year planted": 1850 }, []],
  ["planted in 1849", "blocks", { "Year planted": 1849 }, ["Year planted outside"]],
  ["planted in the middle of a year", "blocks", { "Year planted": 2011.5 }, ["Year planted notWhole"]],
  ["vines 0.3 m apart", "blocks", { "Vine spacing (m)": 0.3 }, []],
  ["vines 0.29 m apart", "blocks", { "Vine spacing (m)": 0.29 }, ["Vine spacing (m) outside"]],
])("%s", (_, sheet, cells, expected) => {
  expect(judged(sheet, cells)).toEqual(expected);
});

test("a limit in another unit is the limit itself: 19.685 ft are 6 m but for rounding", () => {
  const row = { ...SOUND.cordons, "Length (m)": undefined };
  const heads = Object.keys(row).map((head) => (head === "Length (m)" ? "Length (ft)" : head));
  const cells = Object.values(row).map((cell) => cell ?? 6 / 0.3048);
  const [table] = seasonOfSheets({ cordons: [heads, cells] }).tables("cordons");
  expect(table.column("length")!.usable[0]).toBeLessThanOrEqual(6);
  expect(table.column("length")!.usable[0]).toBeCloseTo(6, 12);
});
