import { blockOutlook } from "../../../src/survey/crop/blockOutlook";
import {
  cropFigureSentence,
  cropLoadSentence,
  shootThinningSentence,
  winterNotes,
} from "../../../src/survey/crop/cropNotes";
import { outlookInputs } from "../../../src/survey/crop/outlookInputs";
import { disagreementSentence, ownHarvestsSentence } from "../../../src/survey/crop/harvestSentences";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets, type Sheets } from "./seasonOfSheets";

/** Two vines of 16 nodes and 30 shoots each, in block A. */
function outlookOf(own: Readonly<Record<string, CellValue>>, more: Sheets = {}) {
  const cells = {
    Block: "A",
    Vines: 2,
    "Cluster weight (kg)": 0.1,
    "Clusters a shoot": 2,
    Budbreak: 0.9,
    ...own,
  };
  const season = seasonOfSheets({
    blocks: [Object.keys(cells), Object.values(cells)],
    vines: [
      ["Block", "Row", "Vine", "Status", "Shoots"],
      ["A", 1, 1, "bearing", 30],
      ["A", 1, 2, "bearing", 30],
    ],
    cordons: [
      [...CORDON_HEADS, "Nodes a spur", "Fixed choice"],
      ...[1, 2].flatMap((vine) => [
        ["A", 1, vine, "left", "A", 1, 3, 9, 4, 2, "stays"],
        ["A", 1, vine, "right", "B", 2, 3, 9, 4, 2, "stays"],
      ]),
    ],
    ...more,
  });
  return blockOutlook(outlookInputs(season, { year: 2026 })[0], season.settings, []);
}

test("secondaries that read two ways: 16 nodes x 0.9 x 2 clusters, of which 4 of 8 live or (4 + 4 x 0.38) of 8", () => {
  const budCuts = [
    ["Block", "Nodes cut", "Primaries alive", "Secondaries alive"],
    ["A", 8, 4, 4],
  ];
  expect(winterNotes(outlookOf({}, { budCuts }), "en").at(-1)).toBe(
    "Read the other way, the secondaries would give 19.9 clusters a vine, not 14.4.",
  );
});

test("a young block: what it may carry, and what it would where that can be told", () => {
  // In its third year: 10 clusters by Settings (winegrowers.info); 30 shoots with 2 clusters each
  expect(winterNotes(outlookOf({ "Year planted": 2024 }), "en")).toEqual([
    "Year 3 of a young block: at most 10 clusters a vine; it carries about 60.",
  ]);
  expect(winterNotes(outlookOf({ "Year planted": 2024, "Cluster weight (kg)": null }), "en")).toEqual([
    "Year 3 of a young block: at most 10 clusters a vine.",
  ]);
  expect(winterNotes(outlookOf({ "Year planted": 2011 }), "en")).toEqual([]);
});

test("the worth of basal shoots is named only where basal shoots are counted on", () => {
  const named = (own: Readonly<Record<string, CellValue>>) => cropFigureSentence(outlookOf(own), "en");
  expect(named({ "Basal shoots": 0, "Basal worth": 0.6 })).toBe(
    "Figures of this block: Secondary worth 0.38 (Settings, Wines & Vines 2015); Basal shoots 0 (Blocks sheet); Nodes a spur 2 (Settings, UMN 2022); Clusters a shoot 2 (Blocks sheet); Budbreak 0.9 (Blocks sheet).",
  );
  expect(named({ "Basal shoots": 0.5, "Basal worth": 0.6 })).toMatch(
    /; Basal worth 0\.6 \(Blocks sheet\)\.$/,
  );
});

test("shoots that the wire carries are none to thin", () => {
  const shootThinning = { keep: 32, counted: 32, remove: 0, hours: 0, vines: 8 };
  expect(shootThinningSentence({ inputs: { shootThinning } }, "en")).toBe(
    "No shoots to thin: 32 were counted on a vine on average, no more than its wire carries.",
  );
});

test("crop load to a tenth, and that it may turn where its range reaches over a limit", () => {
  const pair = {
    pair: "following",
    year: 2025,
    verdict: "below",
    load: { low: 2, likely: 3.4567, high: 5 },
    limits: { low: 4, high: 10 },
    range: "hybrids",
    sure: false,
  } as const;
  const said =
    "Crop of 2025 over the prunings of the winter after it, the pair that published ranges are of. Crop load 3.5 lies below 4 to 10 (hybrids): the vines could carry more.";
  expect(cropLoadSentence(pair, "en")).toBe(
    `${said} The range of the crop reaches over a limit, so this may turn.`,
  );
  expect(cropLoadSentence({ ...pair, sure: true }, "en")).toBe(said);
});

test("harvests are those of the first to the last year on record", () => {
  const years = [2019, 2022, 2025].map((year) => ({ year, picked: 1000 }));
  const harvests = { years, least: 1000, mean: 2000, most: 3000 };
  const inTonnes = (mass: number) => ({ value: mass / 1000, unit: "t" });
  expect(ownHarvestsSentence(harvests, inTonnes, "en")).toBe(
    "Your own harvests, 3 from 2019 to 2025: 1 to 3 t, 2 on average.",
  );
  expect(
    disagreementSentence("none", { low: 1, likely: 2, high: 3 }, harvests, inTonnes, "en"),
  ).toBeUndefined();
});
