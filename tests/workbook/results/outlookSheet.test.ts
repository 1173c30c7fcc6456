import { blockOutlook } from "../../../src/survey/crop/blockOutlook";
import { areaCropIn, blockCropIn, threeDigits, vineCropIn } from "../../../src/survey/crop/cropWords";
import { cropFigureSentence } from "../../../src/survey/crop/cropNotes";
import { outlookInputs } from "../../../src/survey/crop/outlookInputs";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { LANGUAGES } from "../../../src/texts/language";
import { layOutOwnSheet } from "../../../src/workbook/ownSheet";
import { outlookSheet } from "../../../src/workbook/results/outlookSheet";

const season = readSeason(
  Object.entries({
    Blocks: [
      ["Block", "Vines", "Row spacing (ft)", "Vine spacing (ft)", "Cluster weight (lb)"],
      ["North Bench", 4, 9, 7, 0.25],
    ],
    Vines: [
      ["Block", "Row", "Vine", "Status", "Clusters"],
      ["North Bench", 1, 1, "bearing", 40],
      ["North Bench", 1, 2, "bearing", 60],
      ["North Bench", 1, 3, "bearing", 50],
      ["North Bench", 1, 4, "bearing", 50],
    ],
  }).map(([sheet, values]) => ({ sheet, firstRow: 1, firstColumn: 1, values, formulaAt: () => null })),
);
const blocks = outlookInputs(season).map((inputs) =>
  blockOutlook(inputs, season.settings, ["light", "middle", "heavy"]),
);

describe.each(LANGUAGES)("the Crop outlook sheet in %s", (language) => {
  test("is a table that every host takes, with a line for each block and stage", () => {
    const content = outlookSheet(blocks, language, "US", "day");
    expect(layOutOwnSheet(content).values.length).toBeGreaterThan(2);
    expect(content.rows).toHaveLength(blocks[0].stages.length);
    expect(content.columns).toHaveLength(content.headers.length);
    expect(content.headers.join()).not.toMatch(/[{}]/);
  });
});

test("figures stand in the sheet's units: 50 clusters of a quarter pound are 12.5 lb a vine", () => {
  const { headers, rows } = outlookSheet(blocks, "en", "US", "day");
  const at = (header: string) => rows[0][headers.indexOf(header)];
  expect(at("Clusters a vine")).toBeCloseTo(50, 9);
  expect(at("Vine, likely (lb)")).toBeCloseTo(12.5, 9);
  expect(at("Block, likely (tons)")).toBeCloseTo((4 * 12.5) / 2000, 9);
  // 43,560 square feet an acre over 9 x 7 ft a vine, by hand
  expect(at("Area, likely (tons/acre)")).toBeCloseTo(((43560 / 63) * 12.5) / 2000, 6);
});

test("the first line of a block says with which figures its crop was worked out, as the page does, in every language", () => {
  for (const language of LANGUAGES) {
    const { headers, rows } = outlookSheet([...blocks, ...blocks], language, "US", "day");
    const column = headers.indexOf(
      { en: "Figures used", es: "Cifras usadas", fr: "Chiffres employés" }[language],
    );
    const said = rows.map((row) => row[column]);
    const own = cropFigureSentence(blocks[0], language);
    expect(said).toEqual(
      [...blocks, ...blocks].flatMap(({ stages }) => [own, ...stages.slice(1).map(() => null)]),
    );
  }
  // Neither cultivar nor kind of grape is written down, so Settings are in force: 0.38 (Wines & Vines 2015), 0.85, 2
  const [row] = outlookSheet(blocks, "en", "US", "day").rows;
  expect(row).toContain(
    "Figures of this block: Secondary worth 0.38 (Settings, Wines & Vines 2015); Basal shoots 0 (Settings); Nodes a spur 2 (Settings, UMN 2022); Clusters a shoot 2 (Settings); Budbreak 0.85 (Settings).",
  );
});

test("the parts of the chart's bars add up to low, likely and high, and every bar has a name of its own", () => {
  const { headers, rows, charts } = outlookSheet(blocks, "en", "US", "day");
  const [{ labels, parts }] = charts!;
  const at = (row: (typeof rows)[number], header: string) => row[headers.indexOf(header)];
  for (const row of rows) {
    const [low, toLikely, toHigh] = parts.map((header) => Number(at(row, header)));
    expect(low).toBe(at(row, "Block, low (tons)"));
    expect(low + toLikely).toBeCloseTo(Number(at(row, "Block, likely (tons)")), 12);
    expect(low + toLikely + toHigh).toBeCloseTo(Number(at(row, "Block, high (tons)")), 12);
    expect(Math.min(low, toLikely, toHigh)).toBeGreaterThanOrEqual(0);
  }
  expect(new Set(rows.map((row) => at(row, labels))).size).toBe(rows.length);
});

test("the same crop in metric units", () => {
  expect(vineCropIn(1, "metric")).toEqual({ value: 1, unit: "kg" });
  expect(blockCropIn(1500, "metric", "en")).toEqual({ value: 1.5, unit: "t" });
  expect(areaCropIn(8000, "metric", "en")).toEqual({ value: 8, unit: "t/ha" });
  expect(threeDigits(0.012345, "fr")).toBe("0,0123");
});
