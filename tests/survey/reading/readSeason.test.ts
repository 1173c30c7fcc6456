import { readSeason } from "../../../src/survey/reading/readSeason";
import { CELL } from "../../../src/survey/season/season";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADERS = [...CORDON_HEADS];
const row = (vine: number | null, ...rest: (string | number | null)[]) => [
  "North Bench",
  1,
  vine,
  "left",
  "A",
  1,
  ...rest,
];

describe("reading a survey sheet", () => {
  test("feet in the header become metres (1 ft = 0.3048 m, NIST SP 811)", () => {
    const season = readSeason([areaOf("Cordons", [HEADERS, row(1, 3, 8, 7)])]);
    const length = season.tables("cordons")[0].column("length")!;
    expect(length.numbers[0]).toBeCloseTo(0.9144, 12);
    expect(length.unit?.id).toBe("ft");
  });

  test.each([
    ["(in)", 0.0254],
    ["(m)", 1],
    ["(cm)", 0.01],
    ["(mm)", 0.001],
    ["(ft)", 0.3048],
  ])("a length header %s", (unit, metres) => {
    const headers = HEADERS.map((header) => (header === "Length (ft)" ? `Length ${unit}` : header));
    const season = readSeason([areaOf("Cordons", [headers, row(1, 2, 8, 7)])]);
    expect(season.tables("cordons")[0].column("length")!.numbers[0]).toBeCloseTo(2 * metres, 12);
  });

  test.each([
    ["(lb)", 0.45359237],
    ["(oz)", 0.028349523125],
    ["(kg)", 1],
    ["(g)", 0.001],
  ])("a mass header %s", (unit, kilograms) => {
    const headers = ["Block", "Row", "Vine", "Status", `Prunings ${unit}`];
    const season = readSeason([areaOf("Vines", [headers, ["North Bench", 1, 1, "bearing", 3]])]);
    expect(season.tables("vines")[0].column("prunings")!.numbers[0]).toBeCloseTo(3 * kilograms, 12);
  });

  test("a header without a unit takes the workbook's unit system", () => {
    const headers = ["Block", "Row", "Vine", "Status", "Prunings"];
    const area = areaOf("Vines", [headers, ["North Bench", 1, 1, "bearing", 2]]);
    expect(
      readSeason([area], { unitSystem: "metric" }).tables("vines")[0].column("prunings")!.numbers[0],
    ).toBe(2);
    expect(
      readSeason([area], { unitSystem: "US" }).tables("vines")[0].column("prunings")!.numbers[0],
    ).toBeCloseTo(0.90718474, 12);
  });

  test.each([
    ["metric", "Prunings", 2],
    ["US", "Prunings", 0.90718474],
    ["from headers", "Prunings", 2],
    ["metric", "Prunings (lb)", 0.90718474],
  ])("with the unit system %j in the Settings sheet and the header %j", (system, header, kilograms) => {
    const season = readSeason([
      areaOf("Settings", [
        ["Setting", "Value"],
        ["Unit system", system],
      ]),
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", header],
        ["North Bench", 1, 1, "bearing", 2],
      ]),
      areaOf("Harvest", [["Block", "Year", "Picked (g)", "Cluster weight (g)"]]),
    ]);
    expect(season.tables("vines")[0].column("prunings")!.numbers[0]).toBeCloseTo(kilograms, 8);
  });

  test("a table may start anywhere, below title lines, and sheet rows and columns are the sheet's own", () => {
    const season = readSeason([
      areaOf("Winter", [["Larkmoor Bend Vineyard (invented)"], [], HEADERS, row(4, 3, 8, 7)], {
        firstRow: 5,
        firstColumn: 3,
      }),
    ]);
    const [table] = season.tables("cordons");
    expect([table.headerRow, table.sheetRow(0), table.rowCount]).toEqual([7, 8, 1]);
    expect(table.column("vine")!.sheetColumn).toBe(5);
    expect(table.indexOfSheetRow(8)).toBe(0);
    expect(table.indexOfSheetRow(9)).toBeUndefined();
  });

  test("columns in any order, extra columns left alone", () => {
    const season = readSeason([
      areaOf("S", [
        ["Live spurs", "Weather", "Vine", "Row", "Block", "Positions", "Side", "Cordon", "Trunk"],
        [7, "cold", 3, 2, "B1", 8, "R", "A", 2],
      ]),
    ]);
    const [table] = season.tables("cordons");
    expect(table.column("liveSpurs")!.numbers[0]).toBe(7);
    expect(table.column("side")!.column.choices![table.column("side")!.codes[0]].id).toBe("right");
    expect(table.otherColumns).toMatchObject([{ header: "Weather", sheetColumn: 2 }]);
  });

  test.each([
    ["es", ["Cuartel", "Hilera", "Planta", "Situación", "Troncos vivos"], "en producción"],
    ["fr", ["Parcelle", "Rang", "Cep", "Situation", "Troncs vivants"], "EN PRODUCTION"],
    ["en", ["block", "ROW", "Vine no", "status", "live  trunks"], "Bearing"],
  ])("headers and words in %s", (_language, headers, word) => {
    const season = readSeason([areaOf("x", [headers, ["A", 1, 1, word, 2]])]);
    const status = season.tables("vines")[0].column("status")!;
    expect(status.column.choices![status.codes[0]].id).toBe("bearing");
  });

  test.each([
    [null, CELL.blank],
    ["", CELL.blank],
    ["   ", CELL.blank],
    ["12", CELL.numberAsText],
    ["12,5", CELL.numberAsText],
    ["many", CELL.unreadable],
    [true, CELL.unreadable],
    [{ error: "#N/A" }, CELL.error],
    [0, CELL.usable],
  ])("the cell %j in a count column", (cell, state) => {
    const season = readSeason([areaOf("Cordons", [HEADERS, [...row(1, 3, 8), cell]])]);
    const spurs = season.tables("cordons")[0].column("liveSpurs")!;
    expect(spurs.states[0]).toBe(state);
    expect(Number.isNaN(spurs.numbers[0])).toBe(state !== CELL.usable);
  });

  test("a person's own heads, as they were answered", () => {
    const area = areaOf("Tally", [
      ["Piece", "Line", "Stock", "Which way", "Letter", "From", "How long", "Places", "Alive"],
      ["North Bench", 3, 14, "left", "B", 2, 3.5, 9, 8],
    ]);
    expect(readSeason([area]).tables("cordons")).toHaveLength(0);
    expect(readSeason([area]).otherSheets).toEqual(["Tally"]);
    const season = readSeason([area], {
      answers: {
        heads: [
          {
            sheet: "Tally",
            shape: "cordons",
            columns: { Piece: "block", Line: "row", Stock: "vine", places: "positions", Alive: "liveSpurs" },
          },
        ],
      },
    });
    expect(season.tables("cordons")[0].column("liveSpurs")!.numbers[0]).toBe(8);
  });

  test("blank rows, totals, repeated headers and remarks are no vines", () => {
    const season = readSeason([
      areaOf(
        "Cordons",
        [
          HEADERS,
          row(1, 3, 8, 7),
          ["Row 1 total", null, null, null, null, null, null, 8, 7],
          HEADERS,
          row(2, 3, 8, 6),
          [],
          [null, null, null, null, null, null, null, 16, 13],
          ["Total", null, null, null, null, null, 6, 16, 13],
          [],
          ["Snow on the last two rows"],
          [],
        ],
        { formulas: { "7:8": "=SUM(H2:H6)", "7:9": "=SUM(I2:I6)" } },
      ),
    ]);
    const [table] = season.tables("cordons");
    expect(Array.from(table.column("vine")!.numbers)).toEqual([1, 2]);
    expect(table.totals.map((total) => total.sheetRow)).toEqual([3, 7, 8]);
    expect(table.totals[1].cells).toEqual([
      { columnId: "positions", value: 16, formula: "=SUM(H2:H6)" },
      { columnId: "liveSpurs", value: 13, formula: "=SUM(I2:I6)" },
    ]);
  });

  test("a row that only lacks its vine stays a row", () => {
    const season = readSeason([areaOf("Cordons", [HEADERS, row(null, 3, 8, 7)])]);
    expect(season.tables("cordons")[0].rowCount).toBe(1);
  });

  test.each<[string | number, number | undefined]>([
    [46037, 46037],
    ["2026-01-15", 46037],
    ["15/1/2026", 46037],
    ["1/15/2026", 46037],
    ["15.1.26", 46037],
    ["1/2/2026", undefined],
    ["31/2/2026", undefined],
    ["yesterday", undefined],
  ])("the date %j", (cell, serial) => {
    const season = readSeason([
      areaOf("Cordons", [
        [...HEADERS, "Date"],
        [...row(1, 3, 8, 7), cell],
      ]),
    ]);
    const date = season.tables("cordons")[0].column("countedOn")!.numbers[0];
    expect(Number.isNaN(date) ? undefined : date).toBe(serial);
  });

  test("an unclear text date is read like the clear ones of its column", () => {
    const season = readSeason([
      areaOf("Cordons", [
        [...HEADERS, "Date"],
        [...row(1, 3, 8, 7), "1/14/2026"],
        [...row(2, 3, 8, 7), "2/1/2026"],
      ]),
    ]);
    expect(Array.from(season.tables("cordons")[0].column("countedOn")!.numbers)).toEqual([46036, 46054]);
  });

  test("blocks are the same whatever their case, a number or text; 007 is not 7", () => {
    const rows = ["North Bench", " north  bench ", 7, "7", "007"].map((block) => [block, 1, 1, "bearing"]);
    const { codes } = readSeason([areaOf("Vines", [["Block", "Row", "Vine", "Status"], ...rows])])
      .tables("vines")[0]
      .column("block")!;
    expect(codes[0]).toBe(codes[1]);
    expect(codes[2]).toBe(codes[3]);
    expect(codes[4]).not.toBe(codes[3]);
  });
});
