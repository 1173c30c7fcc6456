import fc from "fast-check";
import type { CellValue } from "../../../src/survey/sheets/cell";
import {
  changeSettings,
  type ChangedSettings,
  type SettingChange,
} from "../../../src/survey/settings/changeSettings";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { settingDifferences } from "../../../src/survey/settings/settingDifferences";
import { defaultSettings, SETTINGS, settingOf, type SettingId } from "../../../src/survey/settings/settings";
import { settingsTable, sourceName, type SettingCell } from "../../../src/survey/settings/settingsTable";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { upgradeSettings } from "../../../src/survey/settings/upgradeSettings";
import { say, LANGUAGES } from "../../../src/texts/language";
import { SETTING_CHANGE_PROBLEMS, SETTINGS_STEPS } from "../../../src/texts/settings";

const areaOf = (values: CellValue[][], sheet = "Settings"): SheetArea => ({
  sheet,
  firstRow: 1,
  firstColumn: 1,
  values,
  formulaAt: () => null,
});

/** The Settings table as the present version writes it. */
const present = (): CellValue[][] => [
  ["Setting", "Value", "Unit", "Source", "Meaning", "Changed by", "Changed on"],
  ...SETTINGS.map((setting): CellValue[] => [
    setting.name.en,
    setting.value,
    setting.unit,
    sourceName(setting),
    setting.meaning.en,
    null,
    null,
  ]),
];

const rowOf = (values: CellValue[][], id: string) => values.findIndex(([name]) => name === id);

function written(values: readonly (readonly CellValue[])[], cells: readonly SettingCell[]): CellValue[][] {
  const after = values.map((row) => [...row]);
  for (const { row, column, value } of cells) (after[row - 1] ??= [])[column - 1] = value;
  return after.map((row) => Array.from(row, (cell) => cell ?? null));
}

const inForce = (values: CellValue[][]) => readSeason([areaOf(values)]).settings;
const change = (values: CellValue[][], changes: SettingChange[]): ChangedSettings =>
  changeSettings(settingsTable(areaOf(values))!, changes, "AB", 46000);

describe("a Settings table as it stands", () => {
  test("rows with their unit, who changed them and when, and where", () => {
    const table = settingsTable(
      areaOf([
        ["Larkmoor Bend Vineyard (invented)", null, null, null, null],
        ["Setting", "Value", "Unit", "Changed by", "Changed on"],
        ["Spur spacing", 10, "cm", " AB ", 46000],
        ["Colour of ribbons", "red", null, null, null],
        ["Nodes a spur", null, "nodes", null, null],
      ]),
    )!;
    expect(table.headerRow).toBe(2);
    const [spacing, ribbons, nodes] = table.entries;
    expect(spacing).toMatchObject({ name: "Spur spacing", changedBy: "AB", changedOn: 46000, sheetRow: 3 });
    expect(spacing.taken).toEqual({ value: expect.closeTo(10 / 2.54, 10) });
    expect(ribbons.setting).toBeUndefined();
    expect(nodes).toMatchObject({ taken: undefined, sheetRow: 5 });
  });

  test("a value out of its limits, a word for a number, a foreign unit: not taken, with what was expected", () => {
    const table = settingsTable(
      areaOf([
        ["Setting", "Value", "Unit"],
        ["Spur spacing", 100, "in"],
        ["Nodes a spur", "two", "nodes"],
        ["Spur spacing", 4, "kg"],
        ["Injury rule", "Davis", ""],
      ]),
    )!;
    const reasons = table.entries.map(({ taken }) => (taken && "reason" in taken ? taken.reason : "taken"));
    expect(reasons).toEqual(["outside", "notANumber", "wrongUnit", "notAChoice"]);
  });

  test("headers in Spanish and French, no table in another sheet", () => {
    expect(
      settingsTable(
        areaOf([
          ["Ajuste", "Valor", "Unidad"],
          ["Spur spacing", 5, "in"],
        ]),
      )!.language,
    ).toBe("es");
    expect(
      settingsTable(
        areaOf([
          ["Réglage", "Valeur", "Unité"],
          ["Spur spacing", 5, "in"],
        ]),
      )!.language,
    ).toBe("fr");
    expect(
      settingsTable(
        areaOf([
          ["Block", "Row", "Vine"],
          ["A", 1, 1],
        ]),
      ),
    ).toBeUndefined();
  });
});

describe("differences between two workbooks", () => {
  const changed = (id: string, value: CellValue, unit?: string): CellValue[][] => {
    const values = present();
    const row = rowOf(values, id);
    values[row][1] = value;
    if (unit !== undefined) values[row][2] = unit;
    values[row][5] = "JT";
    values[row][6] = 46010;
    return values;
  };

  test("none between equal tables, nor with a workbook that has no table", () => {
    const table = settingsTable(areaOf(present()));
    expect(settingDifferences(table, table)).toEqual([]);
    expect(settingDifferences(table, undefined)).toEqual([]);
  });

  test("a changed figure, with who changed it and when", () => {
    const differences = settingDifferences(
      settingsTable(areaOf(present())),
      settingsTable(areaOf(changed("Spur spacing", 5))),
    );
    expect(differences).toEqual([
      {
        id: "spurSpacing",
        here: { value: 4, from: "sheet", changedBy: "", changedOn: undefined },
        there: { value: 5, from: "sheet", changedBy: "JT", changedOn: 46010 },
      },
    ]);
  });

  test("4 in and 10.16 cm are the same figure, an inch is 2.54 cm", () => {
    const metric = settingsTable(areaOf(changed("Spur spacing", 10.16, "cm")));
    expect(settingDifferences(settingsTable(areaOf(present())), metric)).toEqual([]);
  });

  test("a figure that cannot be used counts as the source's, as the reader has it", () => {
    const broken = settingsTable(areaOf(changed("Spur spacing", "five")));
    expect(settingDifferences(broken, settingsTable(areaOf(changed("Spur spacing", 5))))).toMatchObject([
      { id: "spurSpacing", here: { value: 4, from: "default" }, there: { value: 5 } },
    ]);
  });
});

describe("changing figures", () => {
  test("value, source, who and when; nothing else", () => {
    const values = present();
    const row = rowOf(values, "Spur spacing") + 1;
    const { cells, problems } = change(values, [{ id: "spurSpacing", value: 5 }]);
    expect(problems).toEqual([]);
    expect(cells.every((cell) => cell.row === row)).toBe(true);
    const after = written(values, cells);
    expect(after[row - 1].slice(0, 4)).toEqual(["Spur spacing", 5, "in", "own figure"]);
    expect(after[row - 1].slice(5)).toEqual(["AB", 46000]);
    expect(inForce(after).spurSpacing).toBeCloseTo(0.127, 12);
  });

  test("the value is written in the unit that stands in its row", () => {
    const values = present();
    const row = rowOf(values, "Spur spacing");
    values[row][2] = "cm";
    const after = written(values, change(values, [{ id: "spurSpacing", value: 5 }]).cells);
    expect(after[row][1]).toBe(12.7);
    expect(inForce(after).spurSpacing).toBeCloseTo(0.127, 12);
  });

  test("without a value the source's figure is back, and its source is named again", () => {
    const values = present();
    const row = rowOf(values, "Injury rule");
    values[row][1] = "Purdue";
    values[row][3] = "own figure";
    const after = written(values, change(values, [{ id: "injuryRule" }]).cells);
    expect(after[row].slice(0, 4)).toEqual(["Injury rule", "Cornell 2014", "", "Cornell 2014"]);
  });

  test("a setting that the table does not have comes just below it, with unit and meaning", () => {
    const values = present().filter(([name]) => name !== "Spur spacing");
    const after = written(values, change(values, [{ id: "spurSpacing", value: 5 }]).cells);
    expect(after).toHaveLength(values.length + 1);
    expect(after[values.length].slice(0, 4)).toEqual(["Spur spacing", 5, "in", "own figure"]);
    expect(after[values.length][4]).toBe(SETTINGS.find(({ id }) => id === "spurSpacing")!.meaning.en);
    expect(inForce(after).spurSpacing).toBeCloseTo(0.127, 12);
  });

  test("columns that the table does not have are left out", () => {
    const values: CellValue[][] = [
      ["Setting", "Value"],
      ["Spur spacing", 4],
    ];
    expect(change(values, [{ id: "spurSpacing", value: 5 }]).cells).toEqual([
      { row: 2, column: 2, before: 4, value: 5 },
    ]);
  });

  test.each<{ id: SettingId; value: number | string; reason: string }>([
    { id: "spurSpacing", value: 100, reason: "outside" },
    { id: "spurSpacing", value: "five", reason: "notANumber" },
    { id: "injuryRule", value: "Davis", reason: "notAChoice" },
  ])("$id = $value is not taken: $reason", ({ id, value, reason }) => {
    const { cells, problems } = change(present(), [{ id, value }]);
    expect(cells).toEqual([]);
    expect(problems).toMatchObject([{ reason, value }]);
    for (const language of LANGUAGES) {
      const facts = { setting: settingOf(id).name[language], value, expected: problems[0].expected };
      expect(say(SETTING_CHANGE_PROBLEMS[reason], language, facts)).toMatch(/^[^{}]*\.$/);
    }
  });

  test("a unit that measures something else stops the change of that row only", () => {
    const values = present();
    values[rowOf(values, "Spur spacing")][2] = "kg";
    const { cells, problems } = change(values, [
      { id: "spurSpacing", value: 5 },
      { id: "nodesASpur", value: 3 },
    ]);
    expect(problems).toMatchObject([{ id: "spurSpacing", reason: "wrongUnit" }]);
    expect(inForce(written(values, cells)).nodesASpur).toBe(3);
  });

  test("farm-wide figures copied from one workbook to another leave no difference", () => {
    const there = present();
    there[rowOf(there, "Spur spacing")][1] = 5;
    there[rowOf(there, "Injury rule")][1] = "Purdue";
    const here: CellValue[][] = [
      ["Réglage", "Valeur", "Unité"],
      ["Spur spacing", 10, "cm"],
    ];
    const table = settingsTable(areaOf(here))!;
    const source = settingsTable(areaOf(there))!;
    const wanted = settingDifferences(table, source).map(({ id, there: side }) => ({
      id,
      value: side.value,
    }));
    const after = written(here, change(here, wanted).cells);
    expect(settingDifferences(settingsTable(areaOf(after)), source)).toEqual([]);
    expect(after[1]).toEqual(["Spur spacing", 12.7, "cm"]);
  });

  test("writing what stood there before undoes a change exactly", () => {
    const values = present();
    const { cells } = change(values, [
      { id: "spurSpacing", value: 5 },
      { id: "nodesASpur", value: 3 },
    ]);
    const undone = written(
      written(values, cells),
      cells.map((cell) => ({ ...cell, value: cell.before as string })),
    );
    expect(undone).toEqual(values);
  });
});

describe("older Settings tables", () => {
  const OLDER: readonly { shape: string; values: CellValue[][]; steps: string[] }[] = [
    {
      shape: "names and values only",
      values: [
        ["Setting", "Value"],
        ["Spur spacing", 5],
        ["Nodes a spur", 3],
      ],
      steps: ["columns", "history", "rows"],
    },
    {
      shape: "with units and sources, before changes were noted",
      values: present().map((row) => row.slice(0, 5)),
      steps: ["history"],
    },
    {
      shape: "all columns, some settings not there yet",
      values: present().slice(0, 4),
      steps: ["rows"],
    },
    {
      shape: "Spanish headers, a title above, a column and rows of the farm's own",
      values: [
        ["Larkmoor Bend Vineyard (invented)", null, null, null],
        [null, null, null, null],
        ["Valor", "Mío", "Ajuste", "Unidad"],
        [12.7, "x", "Spur spacing", "cm"],
        ["red", "y", "Colour of ribbons", null],
      ],
      steps: ["columns", "history", "rows"],
    },
    {
      shape: "a setting under its old name",
      values: present().map((row) =>
        row[0] === "Spur spacing" ? ["Spur distance", 5, ...row.slice(2)] : row,
      ),
      steps: ["names"],
    },
    { shape: "the present shape", values: present(), steps: [] },
  ];
  const RENAMED = { "Spur distance": "spurSpacing" } as const;

  test.each(OLDER)("$shape: steps $steps", ({ values, steps }) => {
    const upgraded = upgradeSettings(areaOf(values), RENAMED)!;
    expect(upgraded.steps.map(({ step }) => step)).toEqual(steps);
    for (const { step, names } of upgraded.steps)
      for (const language of LANGUAGES)
        expect(say(SETTINGS_STEPS[step], language, { names: names.slice(0, 3) })).not.toMatch(/[{}]/);
  });

  test.each(OLDER)(
    "$shape: afterwards every column and setting is there, and nothing is left to do",
    ({ values }) => {
      const { area } = upgradeSettings(areaOf(values), RENAMED)!;
      const table = settingsTable(area)!;
      expect([...table.columns.keys()].sort()).toEqual(SHEETS.settings.columns.map(({ id }) => id).sort());
      expect(new Set(table.entries.flatMap(({ setting }) => setting?.id ?? []))).toEqual(
        new Set(SETTINGS.map(({ id }) => id)),
      );
      expect(upgradeSettings(area, RENAMED)!.steps).toEqual([]);
    },
  );

  test.each(OLDER)("$shape: no cell is lost, and the figures in force stay", ({ values }) => {
    const { area, steps } = upgradeSettings(areaOf(values), RENAMED)!;
    const renamedCells = new Set(
      steps
        .filter(({ step }) => step === "names")
        .flatMap(({ cells }) => cells.map(({ row, column }) => `${row} ${column}`)),
    );
    values.forEach((row, rowIndex) =>
      row.forEach((cell, column) => {
        if (cell === null || renamedCells.has(`${rowIndex + 1} ${column + 1}`)) return;
        expect(area.values[rowIndex][column]).toBe(cell);
      }),
    );
    if (renamedCells.size === 0)
      expect(readSeason([area]).settings).toEqual(readSeason([areaOf(values)]).settings);
    else expect(readSeason([area]).settings.spurSpacing).toBeCloseTo(0.127, 12);
  });

  test("an old name beside the present one is left alone, so that no value is taken twice", () => {
    const values = [...present(), ["Spur distance", 9, "in", "", "", null, null]];
    const { area, steps } = upgradeSettings(areaOf(values), RENAMED)!;
    expect(steps).toEqual([]);
    expect(readSeason([area]).settings.spurSpacing).toBe(defaultSettings().spurSpacing);
  });

  test("no Settings table, nothing to bring up to date", () => {
    expect(
      upgradeSettings(
        areaOf([
          ["Block", "Row", "Vine"],
          ["A", 1, 1],
        ]),
      ),
    ).toBeUndefined();
  });

  test("whatever a table holds, no cell of it changes", () => {
    const cell = fc.oneof(
      fc.constantFrom<CellValue>(null, "", "Spur spacing", "Nodes a spur", "Unit", "in", { error: "#N/A" }),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.string({ maxLength: 6 }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, cell, cell), { maxLength: 12 }),
        fc.shuffledSubarray(["Unit", "Source", "Meaning", "Changed by"], { minLength: 1, maxLength: 1 }),
        (rows, [third]) => {
          const values: CellValue[][] = [["Setting", "Value", third], ...rows];
          const upgraded = upgradeSettings(areaOf(values), RENAMED)!;
          values.forEach((row, rowIndex) =>
            row.forEach((before, column) => {
              if (before !== null && before !== "")
                expect(upgraded.area.values[rowIndex][column]).toEqual(before);
            }),
          );
          for (const { cells } of upgraded.steps)
            for (const each of cells) expect(each.before ?? "").toBe("");
        },
      ),
      { numRuns: 60 },
    );
  });
});
