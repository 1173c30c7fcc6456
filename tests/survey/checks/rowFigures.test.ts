import { CORDON, found, rowsFound, sheetOf, VINE, type Cells } from "./found";

const { "Length (ft)": _, ...NO_LENGTH } = CORDON;

describe("spurs that cannot stand so close", () => {
  const close = (usual: Cells, row: Cells) =>
    found("spursTooClose", [sheetOf("Cordons", usual, [row])], ({ column, facts }) => [
      column,
      facts.places,
      facts.fit,
      facts.distance,
    ]);

  // Distances of 2 in: on 8 in stand 4 and one more. 20 cm are 7.87 in, 3 whole distances and one more; 2 in are 5.08 cm.
  test.each<[string, Cells, unknown[]]>([
    ["5 on 8 in", { "Length (in)": 8, Positions: 5 }, []],
    ["6 on 8 in", { "Length (in)": 8, Positions: 6 }, [["Positions", 6, 5, "2 in"]]],
    ["4 on 20 cm", { "Length (cm)": 20, Positions: 4 }, []],
    ["5 on 20 cm", { "Length (cm)": 20, Positions: 5 }, [["Positions", 5, 4, "5.1 cm"]]],
    ["5 on 0.2 m", { "Length (m)": 0.2, Positions: 5 }, [["Positions", 5, 4, "5.1 cm"]]],
    ["5 on 200 mm", { "Length (mm)": 200, Positions: 5 }, [["Positions", 5, 4, "5.1 cm"]]],
  ])("%s", (_, row, expected) => {
    expect(close({ ...NO_LENGTH, "Live spurs": 2 }, row)).toEqual(expected);
  });

  test("are counted where the sheet has no positions", () => {
    const { Positions: _, ...rest } = NO_LENGTH;
    expect(close(rest, { "Length (in)": 8, "Live spurs": 6 })).toEqual([["Live spurs", 6, 5, "2 in"]]);
  });
});

describe("live buds of a cane", () => {
  const CANE: Cells = {
    Block: "North Bench",
    Row: 1,
    Vine: 1,
    Cane: "1",
    "Nodes cut": 8,
    "Primaries alive": 8,
  };
  const above = (...rows: readonly Cells[]) =>
    found("aliveAboveCut", [sheetOf("Bud cuts", CANE, rows)], ({ row, column, facts }) => [
      row,
      column,
      facts.alive,
      facts.cut,
    ]);

  test("are no more than the nodes cut, primaries and secondaries each", () => {
    expect(above({ "Secondaries alive": 8 })).toEqual([]);
    expect(above({ "Primaries alive": 9 }, { "Secondaries alive": 9 })).toEqual([
      [2, "Primaries alive", 9, 8],
      [3, "Secondaries alive", 9, 8],
    ]);
  });
});

describe("trunks", () => {
  const trunks = (register: number | null, ...numbers: readonly (number | null)[]) => [
    sheetOf("Vines", VINE, [{ "Live trunks": register }]),
    sheetOf(
      "Cordons",
      CORDON,
      numbers.map((Trunk, at) => ({ Trunk, Cordon: "ABCDEF"[at], Side: ["left", "right"][at % 2] })),
    ),
  ];

  test.each<[string, number | null, (number | null)[], unknown[]]>([
    ["as many as the register says", 2, [1, 2], []],
    ["one more", 1, [2, 1], [[2, [1, 2], 1]]],
    ["none in the register, which is a dead vine", 0, [1], [[2, [1], 0]]],
    ["a register that does not say", null, [1, 2], []],
    ["numbers that are no trunks", 1, [1, 0, 9, null], []],
  ])("with live cordons are held against the register: %s", (_, register, numbers, expected) => {
    expect(
      found("trunksAboveRegister", trunks(register, ...numbers), ({ row, facts }) => [
        row,
        facts.trunks,
        facts.living,
      ]),
    ).toEqual(expected);
  });

  // The register says one live trunk; trunk 1 bears a cordon that is sure to live, so a second live one is one too many.
  const { "Live spurs": __, ...NOT_COUNTED } = CORDON;
  test.each<[string, Cells, Cells, boolean]>([
    ["live spurs on both", CORDON, {}, true],
    ["no live spurs on one", CORDON, { "Live spurs": 0 }, false],
    ["one not counted", CORDON, { "Live spurs": null }, false],
    ["live spurs, but called dead", CORDON, { Condition: "dead" }, false],
    ["live spurs, but on a dead trunk", CORDON, { "Trunk condition": "dead" }, false],
    ["spurs that point down", { ...NOT_COUNTED, "Spurs down": 4, "Spurs up": 1 }, {}, true],
    [
      "spurs that only point up",
      { ...NOT_COUNTED, "Spurs down": 4, "Spurs up": 1 },
      { "Spurs down": 0 },
      true,
    ],
    ["no spurs in any direction", { ...NOT_COUNTED, "Spurs down": 4 }, { "Spurs down": 0 }, false],
    ["no count, but called injured", { ...NOT_COUNTED, Condition: "sound" }, { Condition: "injured" }, true],
    ["no count, and called dead", { ...NOT_COUNTED, Condition: "sound" }, { Condition: "dead" }, false],
    ["no count, and no condition", { ...NOT_COUNTED, Condition: "sound" }, { Condition: null }, false],
    ["neither counts nor conditions in the sheet", NOT_COUNTED, {}, false],
  ])("count with cordons known to live: %s", (_, usual, second, isOneTooMany) => {
    const areas = [
      sheetOf("Vines", VINE, [{ "Live trunks": 1 }]),
      sheetOf("Cordons", usual, [{}, { Trunk: 2, Cordon: "B", Side: "right", ...second }]),
    ];
    expect(rowsFound("trunksAboveRegister", areas)).toEqual(isOneTooMany ? [2] : []);
  });

  test("of a missing vine are not counted: that cordons stand there is said of itself", () => {
    const areas = [
      sheetOf("Vines", VINE, [{ Status: "missing", "Live trunks": 0 }, { Vine: 2 }]),
      sheetOf("Cordons", CORDON, [{}]),
    ];
    expect(rowsFound("trunksAboveRegister", areas)).toEqual([]);
    expect(rowsFound("cordonOnMissingVine", areas)).toEqual([2]);
  });

  // Trunks of a vine are numbered from one: a third of two living ones stands beside a dead one, or is none of its own.
  test.each<[string, number, (number | null)[], unknown[]]>([
    ["the second of two", 2, [1, 2], []],
    ["the third of two", 2, [1, 3], [[3, 3, 2, 0]]],
    ["the third of two, first in the sheet", 2, [3, 1], [[2, 3, 2, 0]]],
    ["a number above any trunk", 2, [1, 5], []],
  ])("are numbered from one: %s", (_, register, numbers, expected) => {
    expect(
      found("trunkNotOfVine", trunks(register, ...numbers), ({ row, facts }) => [
        row,
        facts.trunk,
        facts.living,
        facts.dead,
      ]),
    ).toEqual(expected);
  });

  test("beside a dead one may have the number above", () => {
    const dead = { Trunk: 1, Cordon: "A", "Live spurs": 0 };
    const areas = [
      sheetOf("Vines", VINE, [{ "Live trunks": 2 }]),
      sheetOf("Cordons", CORDON, [dead, { Trunk: 2, Cordon: "B" }, { Trunk: 3, Cordon: "C" }]),
    ];
    expect(rowsFound("trunkNotOfVine", areas)).toEqual([]);
  });

  // Three vines numbered in another way are more than the two that may be slips, unless two hundred vines stand for each.
  test.each([
    [2, 10, 2],
    [3, 10, 0],
    [3, 600, 3],
    [3, 599, 0],
  ])("of %p vines among %p: %p are asked about", (odd, vines, expected) => {
    const places = Array.from({ length: vines }, (_, at) => ({ Vine: at + 1, Trunk: at < odd ? 3 : 1 }));
    const areas = [
      sheetOf(
        "Vines",
        { ...VINE, "Live trunks": 2 },
        places.map(({ Vine }) => ({ Vine })),
      ),
      sheetOf("Cordons", CORDON, places),
    ];
    expect(rowsFound("trunkNotOfVine", areas)).toHaveLength(expected);
  });
});

test("a count on a vine that the register calls missing is told in a list without statuses too", () => {
  const { Status: _, ...place } = VINE;
  const areas = [
    sheetOf("Vines", VINE, [{ Vine: 1 }, { Vine: 2, Status: "missing" }, { Vine: 3, Status: "missing" }]),
    sheetOf("Counts", place, [
      { Vine: 1, Clusters: 30 },
      { Vine: 2, Clusters: 30 },
      { Vine: 3, Clusters: 0 },
    ]),
  ];
  expect(found("missingVineCounted", areas, ({ sheet, row }) => [sheet, row])).toEqual([["Counts", 3]]);
  expect(found("missingAsZero", areas, ({ sheet, row }) => [sheet, row])).toEqual([["Counts", 4]]);
});
