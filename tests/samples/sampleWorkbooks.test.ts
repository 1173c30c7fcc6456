import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { FARM_NAME, inventedFarm } from "../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import {
  cleanSeason,
  emptySeason,
  SEED,
  seasonWithMistakes,
} from "../../sample-workbooks/make/sampleWorkbooks";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { FINDING_KINDS } from "../../src/survey/checks/checks";
import { evaluateFormula } from "../../src/functions/evaluateFormula";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import { numberOf } from "../../src/workbook/file/movableFormula";
import type { Finding } from "../../src/survey/checks/finding";
import { readSeason } from "../../src/survey/reading/readSeason";
import { isSameFigure } from "../../src/survey/settings/setting";
import {
  SETTINGS,
  settingOf,
  shownValue,
  type SettingId,
  type SettingValues,
} from "../../src/survey/settings/settings";
import { settingsTable } from "../../src/survey/settings/settingsTable";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { Language } from "../../src/texts/language";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { writeXlsx } from "../../sample-workbooks/make/writeXlsx";
import { hasValidator, openXmlFaults } from "./openXmlFaults";
import { packageFaults } from "./packageFaults";

const FOLDER = join(__dirname, "../../sample-workbooks");
const onlyWithValidator = hasValidator ? test : test.skip;

const WORKBOOKS = [
  { name: "larkmoor-clean.xlsx", make: cleanSeason },
  { name: "larkmoor-mistakes.xlsx", make: () => seasonWithMistakes().workbook },
  { name: "empty-season.xlsx", make: () => emptySeason() },
  { name: "empty-season-metric.xlsx", make: () => emptySeason("metric") },
  { name: "empty-season-es.xlsx", make: () => emptySeason("US", "es") },
  { name: "empty-season-es-metric.xlsx", make: () => emptySeason("metric", "es") },
  { name: "empty-season-fr.xlsx", make: () => emptySeason("US", "fr") },
  { name: "empty-season-fr-metric.xlsx", make: () => emptySeason("metric", "fr") },
] as const;

const committed = (name: string) => new Uint8Array(readFileSync(join(FOLDER, name)));

test.each(WORKBOOKS.filter(({ name }) => name.includes("metric")))(
  "$name has metric Settings, none of them other than the sources'",
  async ({ name }) => {
    const workbook = await openWorkbookFile(join(FOLDER, name));
    const areas = await Promise.all(workbook.sheetNames.map((sheet) => workbook.readSheet(sheet)));
    const { settings, settingProblems } = readSeason(areas);
    expect(settingProblems).toEqual([]);
    expect(Object.keys(settings).filter((id) => !isSame(settings, id as SettingId))).toEqual([]);
    const table = areas.map(settingsTable).find((found) => found !== undefined)!;
    const unitOf = (id: SettingId) => table.entries.find(({ setting }) => setting?.id === id)!;
    // 4 in x 2.54 cm; 0.25 lb x 0.45359237 kg; 5 nodes a foot / 0.3048 m
    expect(unitOf("spurSpacing")).toMatchObject({ value: 10.16, unit: "cm" });
    expect(unitOf("usualClusterWeight")).toMatchObject({ value: 0.1133980925, unit: "kg" });
    expect(unitOf("nodesByLength").value).toBeCloseTo(16.40419948, 8);
    expect(unitOf("nodesByLength").unit).toBe("nodes/m");
    const language = /-(es|fr)-/.exec(name)?.[1] ?? "en";
    expect(table.entries.map((entry) => entry.name)).toEqual(
      SETTINGS.map((setting) => setting.name[language as Language]),
    );
    expect(table.entries.map(({ unit }) => unit)).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^(in|ft|lb|nodes\/ft)$/)]),
    );
  },
);

const isSame = (settings: SettingValues, id: SettingId) =>
  isSameFigure(shownValue(id, settings), settingOf(id).value);

describe.each(WORKBOOKS)("$name", ({ name, make }) => {
  test("is what the script writes, byte for byte", async () => {
    const written = await writeXlsx(make());
    expect(Buffer.compare(written, committed(name))).toBe(0);
  });

  onlyWithValidator(
    "has no fault by the Open XML SDK's validator",
    async () => {
      expect(await openXmlFaults(join(FOLDER, name))).toEqual([]);
    },
    60000,
  );

  test("has none of the faults that the validator misses", () => {
    expect(packageFaults(committed(name))).toEqual([]);
  });

  test("asks for no recalculation on opening and passes as Excel's own", () => {
    const parts = unzipSync(committed(name));
    expect(strFromU8(parts["xl/workbook.xml"])).not.toMatch(/fullCalcOnLoad|forceFullCalc/);
    expect(strFromU8(parts["docProps/app.xml"])).toContain("<Application>Microsoft Excel</Application>");
  });
});

describe("the checks for faults", () => {
  const broken = (change: (parts: Record<string, Uint8Array>) => void) => {
    const parts = unzipSync(committed("larkmoor-clean.xlsx"));
    change(parts);
    return packageFaults(zipSync(parts));
  };
  const edit = (part: string, from: string | RegExp, to: string) => (parts: Record<string, Uint8Array>) => {
    parts[part] = strToU8(strFromU8(parts[part]).replace(from, to));
  };

  test.each([
    [
      "a table that is gone",
      (parts: Record<string, Uint8Array>) => delete parts["xl/tables/table1.xml"],
      /missing xl\/tables\/table1\.xml/,
    ],
    [
      "a header unlike its table",
      edit("xl/tables/table2.xml", 'name="Side"', 'name="Sides"'),
      /"Side", the table says "Sides"/,
    ],
    [
      "a column name used twice",
      edit("xl/tables/table2.xml", 'name="Side"', 'name="Vine"'),
      /column name stands twice/,
    ],
    [
      "a relation that no tablePart uses",
      edit("xl/worksheets/sheet3.xml", /<tableParts.*<\/tableParts>/, ""),
      /is not in tableParts/,
    ],
    [
      "a sheet name that needs quotes",
      edit("xl/workbook.xml", "'Bud cuts'!", "Bud cuts!"),
      /no absolute reference/,
    ],
    [
      "a number format that is not there",
      edit("xl/styles.xml", /(<xf\b[^>]*\bnumFmtId=")\d+"/, '$1499"'),
      /number format 499 is not there/,
    ],
  ] as const)("see %s", (_what, change, expected) => {
    expect(broken(change).join("\n")).toMatch(expected);
  });
});

describe("the invented farm", () => {
  const farm = inventedFarm(randomSource(SEED));

  test("is of the size of a small estate and says that it is invented", () => {
    expect(FARM_NAME).toContain("invented");
    expect(farm.blocks).toHaveLength(3);
    expect(farm.vines).toHaveLength(600);
    expect(farm.cordons.length).toBeGreaterThan(1800);
    expect(farm.cordons.length).toBeLessThan(2200);
    expect(new Set(farm.blocks.map((block) => block.cultivar)).size).toBe(2);
    expect(new Set(farm.cordons.map((row) => row.countedBy)).size).toBe(4);
  });

  test("comes out the same from the same seed and otherwise from another", () => {
    expect(inventedFarm(randomSource(SEED))).toEqual(farm);
    expect(inventedFarm(randomSource(SEED + 1))).not.toEqual(farm);
  });

  test("has spurs that add up on every cordon", () => {
    for (const row of farm.cordons) {
      const [positions, live, gap] = [row.positions, row.liveSpurs, row.longestGap].map(Number);
      expect(Number(row.spursDown) + Number(row.spursLevel) + Number(row.spursUp)).toBe(live);
      expect(live).toBeLessThanOrEqual(positions);
      expect(gap).toBeLessThanOrEqual(positions - live);
    }
  });

  test("is counted by a crew on working days of one winter, in the order it walks", () => {
    const days = farm.cordons.map((row) => Number(row.countedOn));
    expect(days).toEqual([...days].sort((a, b) => a - b));
    const up = farm.cordons.filter((row) => row.block === "Creek Side" && row.row === 3);
    expect(up.map((row) => row.vine)).toEqual(up.map((row) => Number(row.vine)).sort((a, b) => a - b));
    const down = farm.cordons.filter((row) => row.block === "Creek Side" && row.row === 4);
    expect(down.map((row) => row.vine)).toEqual(down.map((row) => Number(row.vine)).sort((a, b) => b - a));
    const first = Date.UTC(2025, 11, 1) / 86400000 + 25569;
    const last = Date.UTC(2026, 2, 31) / 86400000 + 25569;
    for (const day of new Set(days)) {
      expect(day).toBeGreaterThanOrEqual(first);
      expect(day).toBeLessThanOrEqual(last);
      expect([1, 2, 3, 4, 5]).toContain(new Date((day - 25569) * 86400000).getUTCDay());
    }
  });

  test("gets each mistake where the list says", () => {
    const { mistakes } = seasonWithMistakes();
    expect(mistakes.length).toBeGreaterThan(10);
    for (const mistake of mistakes) expect(mistake.sheetRow).toBeGreaterThan(1);
    const places = mistakes.map((mistake) => `${mistake.sheet} ${mistake.sheetRow} ${mistake.column}`);
    expect(new Set(places).size).toBe(places.length);
  });
});

describe("the checks", () => {
  /** Kinds that are about a whole table, which would spoil the season for every other check. */
  const ABOUT_TABLES = [
    "missingColumn",
    "columnTwice",
    "sameBlockTwice",
    "blockUnlikeSpacing",
    "totalDiffers",
  ];
  /** Kinds of text files, which no workbook can show. */
  const ABOUT_CSV = ["extraCells"];
  /** Kinds about what a person puts on cells, which the samples do not have. */
  const ABOUT_MARKS = ["struckOut", "otherNumberInComment"];
  /** Kinds about stretches, counters and other years; npm run check:quality plants them in seasons of their own. */
  const ABOUT_MORE_THAN_A_CELL = [
    "twoStayOnSide",
    "dateInFuture",
    "dateOutOfWalkOrder",
    "vineNeverCounted",
    "rowNeverCounted",
    "cordonsAboveMost",
    "cordonIntoGap",
    "unitSlip",
    "columnsSwapped",
    "sideFromOneTrunk",
    "trunksAboveRegister",
    "digitPreference",
    "counterUnlikeOthers",
    "positionsUnlikeLength",
    "positionsAppeared",
    "trunkChangedPlace",
    "vineCameBack",
  ];

  async function findingsIn(name: string): Promise<Finding[]> {
    const book = await openWorkbookFile(join(FOLDER, name));
    const areas = [];
    for (const sheet of book.sheetNames) areas.push(await book.readSheet(sheet));
    await book.close();
    return allFindings(readSeason(areas));
  }
  const place = (finding: { sheet: string; row: number }) => `${finding.sheet} ${finding.row}`;

  test("find nothing in the clean season and in the empty one", async () => {
    expect(await findingsIn("larkmoor-clean.xlsx")).toEqual([]);
    expect(await findingsIn("empty-season.xlsx")).toEqual([]);
    for (const name of readdirSync(FOLDER).filter((file) => file.startsWith("empty-season-")))
      expect([name, await findingsIn(name)]).toEqual([name, []]);
  });

  test("find every planted mistake at its cell, and nothing in any other row", async () => {
    const { mistakes } = seasonWithMistakes();
    const findings = await findingsIn("larkmoor-mistakes.xlsx");
    const planted = mistakes.map((mistake) => ({
      code: mistake.code,
      sheet: SHEETS[mistake.sheet].name.en,
      row: mistake.sheetRow,
      columnNumber: mistake.columnNumber,
    }));
    for (const mistake of planted) expect(findings).toContainEqual(expect.objectContaining(mistake));
    const rows = new Set(planted.map(place));
    expect(findings.filter((finding) => !rows.has(place(finding)))).toEqual([]);
  });

  test("have a planted mistake for each of their kinds", () => {
    const planted = new Set(seasonWithMistakes().mistakes.map((mistake) => mistake.code));
    const without = [...FINDING_KINDS.keys()].filter((code) => !planted.has(code));
    expect(
      without.filter(
        (code) => ![...ABOUT_TABLES, ...ABOUT_CSV, ...ABOUT_MARKS, ...ABOUT_MORE_THAN_A_CELL].includes(code),
      ),
    ).toEqual([]);
  });
});

describe("the formulas of a season", () => {
  test("stand in the stored form with the values that the functions give for the cells they name", async () => {
    const book = await openWorkbookFile(join(FOLDER, "larkmoor-clean.xlsx"));
    const areas = new Map<string, SheetArea>();
    for (const sheet of book.sheetNames) areas.set(sheet, await book.readSheet(sheet));
    await book.close();
    const names = new Map(book.outline!.names.map(({ name, formula }) => [name, formula]));
    const valueAt = (sheet: string, address: string) => {
      const [, letters, row] = /^\$?([A-Z]+)\$?(\d+)$/.exec(address)!;
      const area = areas.get(sheet)!;
      return area.values[Number(row) - area.firstRow][numberOf(letters) - area.firstColumn];
    };
    const literal = (value: unknown) => (typeof value === "string" ? `"${value}"` : String(value));
    const resolved = (formula: string) =>
      formula
        .replace(/Setting_\w+/g, (name) => names.get(name)!)
        .replace(
          /(?<=["(,/=]|^)(?:(\w+)!)?(\$?[A-Z]{1,2}\$?\d+)(?=[,)/])/g,
          (_all, sheet: string, address: string) => literal(valueAt(sheet ?? "Figures", address)),
        );
    const figures = areas.get("Figures")!;
    let compared = 0;
    for (let r = 1; r <= 3; r++)
      for (let c = 0; c < figures.values[r].length; c++) {
        const formula = figures.formulaAt(r, c);
        if (!formula?.startsWith("=CORDON.")) continue;
        const plain = resolved(formula);
        const divided = plain.replace(/([\d.]+)\/([\d.]+)/, (_all, a: string, b: string) =>
          String(Number(a) / Number(b)),
        );
        const outcome = evaluateFormula(divided);
        if (!("values" in outcome)) throw new Error(`${formula}: ${outcome.sentence}`);
        outcome.values[0].forEach((value, offset) => {
          expect(Number(figures.values[r][c + offset])).toBeCloseTo(Number(value), 9);
          compared++;
        });
      }
    expect(compared).toBe(3 * 12);
  });

  test("say so where they spill", () => {
    const parts = unzipSync(committed("larkmoor-clean.xlsx"));
    const figures = strFromU8(parts["xl/worksheets/sheet8.xml"]);
    expect(figures).toMatch(
      /<c r="A7"[^>]* cm="1"[^>]*><f t="array" ref="A7:I28">_xldudf_CORDON_GAPSBYROW\(/,
    );
    expect(strFromU8(parts["xl/metadata.xml"])).toContain("XLDAPR");
  });
});
