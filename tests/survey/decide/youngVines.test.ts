import { crewCards } from "../../../src/survey/decide/cards/crewCards";
import { cardLine } from "../../../src/survey/decide/cards/cardWords";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { blockBudgets } from "../../../src/survey/decide/plan/blockBudgets";
import { vineBudgets } from "../../../src/survey/decide/plan/vineBudgets";
import { trunksToRenew } from "../../../src/survey/decide/renewal/trunksToRenew";
import { blockOutlook } from "../../../src/survey/crop/blockOutlook";
import { winterNotes } from "../../../src/survey/crop/cropNotes";
import { outlookInputs } from "../../../src/survey/crop/outlookInputs";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { LANGUAGES } from "../../../src/texts/language";
import { cardsHtml } from "../../../src/workbook/results/cardsHtml";
import { cardsSheet, vineCard } from "../../../src/workbook/results/cardsSheet";
import { areaOf } from "../area";
import { cordonHeads } from "../cordonHeads";

// Counted in January 2026: the next year of growth of a vine planted in 2026 is its first, in 2023 its fourth.
const COUNTED = 46040;
const cordon = (
  vine: number,
  side: string,
  letter: string,
  inches: number,
  places: number,
  spurs: number,
) => [...["Old Hill", 1, vine, side, letter, 1, inches, places, spurs, COUNTED]];
const CORDONS = [
  cordon(1, "left", "A", 40, 10, 9),
  cordon(1, "right", "B", 40, 10, 9),
  // 2 of 5 places empty, 0.4, above a third: on a bearing vine the cordon would be renewed
  cordon(3, "left", "A", 20, 5, 3),
  cordon(3, "right", "B", 40, 10, 9),
  cordon(4, "left", "A", 40, 10, 10),
  cordon(4, "right", "B", 40, 18, 18),
  cordon(5, "left", "A", 40, 10, 10),
  cordon(5, "right", "B", 40, 10, 10),
];
const VINES: CellValue[][] = [
  ["Old Hill", 1, 1, "bearing", 1, ""],
  ["Old Hill", 1, 2, "replanted", 1, 2026],
  ["Old Hill", 1, 3, "replanted", 1, 2024],
  ["Old Hill", 1, 4, "bearing", 1, 2023],
  ["Old Hill", 1, 5, "bearing", 1, 2022],
  ["Old Hill", 1, 6, "replanted", 1, ""],
  ["New Slope", 1, 1, "bearing", 1, ""],
  ["New Slope", 1, 2, "bearing", 1, ""],
];
const seasonOf = (
  training = "high wire",
  head = "Year planted",
  settings: readonly (readonly [string, number])[] = [],
  newSlope = 2025,
) =>
  readSeason([
    areaOf("Cordons", [[...cordonHeads("in"), "Date"], ...CORDONS]),
    areaOf("Vines", [["Block", "Row", "Vine", "Status", "Live trunks", head], ...VINES]),
    areaOf("Blocks", [
      ["Block", "Year planted", "Vine spacing (ft)", "Training system", "Node rule", "Cluster weight (lb)"],
      ["Old Hill", 2010, 7, training, "40", 0.2],
      ["New Slope", newSlope, 7, training, "40", 0.2],
    ]),
    areaOf("Settings", [["Setting", "Value"], ...settings]),
  ]);

const worked = () => {
  const season = seasonOf();
  const decided = [...decideSeason(season)];
  const [oldHill, newSlope] = crewCards(season, decided);
  return {
    season,
    decided,
    oldHill,
    newSlope,
    notesOf: (vine: number) => cardLine(oldHill.vines[vine - 1], "en", "US").notes,
    decidedVine: (vine: number) => decided.find((one) => one.vine === vine)!,
  };
};

describe("young vines, worked by hand", () => {
  test("a vine of an old block that is planted this year: 3 to 6 shoots and no crop, though nobody counted it", () => {
    const { oldHill, notesOf } = worked();
    expect(oldHill.vines[1].young?.year).toBe(1);
    expect(notesOf(2)).toEqual(["replanted", "year 1: 3 to 6 shoots, no clusters"]);
  });

  test("a block planted last year is in its second: two shoots become the cordons", () => {
    expect(cardLine(worked().newSlope.vines[0], "en", "US").notes[0]).toBe(
      "year 2: the 2 best shoots become cordons, half a cane at most, 0 clusters at most",
    );
  });

  test("a vine in its third year keeps its cordons, which grow on over the wire, and is left no nodes by its block's rule", () => {
    // wire (84 - 4) / 2 = 40 in; 40 - 20 = 20 in are bare
    const { decidedVine, oldHill, notesOf } = worked();
    const vine = decidedVine(3);
    expect(
      vine.plan.keeps.map(({ cordon: letter, renewal }) => [letter, renewal.action, renewal.triggers]),
    ).toEqual([
      ["A", "extend", []],
      ["B", "keep", []],
    ]);
    expect(vine.plan.cuts).toEqual([]);
    expect(oldHill.vines[2].nodes).toBeUndefined();
    expect(notesOf(3)).toEqual([
      "replanted",
      "year 3: shoots of the cordon, on by half a cane at most, 10 clusters at most",
      "extend A 20 in",
    ]);
    expect(vineCard(vine, "en", "US").notes.slice(0, 5)).toEqual([
      "Year 3 of this vine.",
      "Shoots from the cordon are grown (UMN 2010).",
      "Share of a cane that is laid, its thick part: 0.5 at most (UMN 2020).",
      "Flower clusters to leave: 10 at most (Winegrowers UK).",
      "No publication seen gives nodes to leave on a vine of this year.",
    ]);
  });

  test("a vine in its fourth year has 8 to 15 spurs of 2 nodes on a cordon: of 10 and 18 spurs 3 are cut off", () => {
    // 2 x 10 + 2 x 15 = 50 nodes, on 25 of 28 spurs
    expect(worked().oldHill.vines[3].nodes).toEqual({
      spurs: [{ spurs: 25, nodes: 2 }],
      nodes: 50,
      short: 0,
      surplusSpurs: 3,
    });
    const upright = seasonOf("upright shoots");
    const [card] = crewCards(upright, [...decideSeason(upright)]);
    expect(card.vines[3].nodes).toBeUndefined();
    expect(cardLine(card.vines[3], "en", "US").notes[0]).toBe("year 4: no rule seen for this training");
  });

  test("from the fifth year on a vine is pruned by the rules for bearing ones", () => {
    const { decidedVine, oldHill } = worked();
    expect(decidedVine(5).plan.young).toBeUndefined();
    expect(oldHill.vines[4].nodes?.nodes).toBe(40);
  });

  test("a young vine with its one trunk is not asked for a new one, on its card or in the list; a bearing one is", () => {
    const { season, decided, decidedVine, notesOf } = worked();
    const asked = (vine: number) => notesOf(vine).includes("new trunks: 1");
    expect([1, 2, 3, 4, 5, 6].map(asked)).toEqual([true, false, false, false, true, false]);
    expect(trunksToRenew(season, decided).vines.map(({ block, vine }) => `${block} ${vine}`)).toEqual([
      "Old Hill 1",
      "Old Hill 5",
    ]);
    expect(decided.filter(({ renewsTrunk }) => renewsTrunk).map(({ vine }) => vine)).toEqual([1, 5]);
    expect(decidedVine(4).decision.notes.map(({ code }) => code)).not.toContain("oneTrunk");
  });

  test("a replanted vine whose year nobody wrote is told so, and a missing winter makes no vine young", () => {
    expect(worked().oldHill.vines[5].young).toBeUndefined();
    const undated = readSeason([
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", "Year planted"],
        ["Old Hill", 1, 1, "bearing", 2025],
      ]),
    ]);
    expect(crewCards(undated, [])[0].vines[0].young).toBeUndefined();
  });

  test("the budget by the rule of the block refuses on vine and block, by name of the year", () => {
    const { season, decided } = worked();
    const budgetOf = vineBudgets(season);
    expect([1, 2, 3, 4, 5].map((vine) => budgetOf("Old Hill", 1, vine).refusal?.facts)).toEqual([
      undefined,
      { year: 1 },
      { year: 3 },
      { year: 4 },
      undefined,
    ]);
    expect(budgetOf("Old Hill", 1, 1).nodes).toBe(40);
    const leave = blockBudgets(season, decided).blocks.map(({ block, leave: { nodes, refusal } }) => [
      block,
      nodes,
      refusal?.code,
    ]);
    expect(leave).toEqual([
      ["Old Hill", 40, undefined],
      ["New Slope", undefined, "youngVine"],
    ]);
  });

  test("a figure of the farm's own goes before the published one, on every page", () => {
    const own = seasonOf("high wire", "Year planted", [["Clusters a vine in year 3", 6]]);
    const vines = [...decideSeason(own)];
    const third = vines.find(({ vine }) => vine === 3)!;
    expect(vineCard(third, "en", "US").notes).toContain("Flower clusters to leave: 6 at most (Settings).");
    const [card] = crewCards(own, vines);
    expect(cardLine(card.vines[2], "en", "US").notes[1]).toContain("6 clusters at most");
  });

  test("cards, sheet and page in every language leave no word out", () => {
    const { oldHill, newSlope } = worked();
    for (const language of LANGUAGES) {
      const options = { language, date: "2 February 2026", unitSystem: "US" as const };
      const print = { paper: "A4" as const, farm: "", ribbons: { stays: "", ask: "" }, vinesAPage: 25 };
      const html = cardsHtml([oldHill, newSlope], { ...options, ...print });
      const { rows } = cardsSheet([oldHill, newSlope], options);
      for (const text of [html, JSON.stringify(rows)]) {
        expect(text).not.toMatch(/\{\w+\}|undefined|NaN/);
        expect(text).toMatch(/(year|año|année) 3.*10 (clusters|racimos|grappes)/);
      }
    }
  });
});

describe("the year planted of a vine", () => {
  test.each([
    "Planted",
    "Planting year",
    "Replant year",
    "Replanted in",
    "Año de replante",
    "Année de plantation",
  ])("stands under %s", (head) => {
    const read = seasonOf("high wire", head);
    expect(crewCards(read, [...decideSeason(read)])[0].vines.map(({ young }) => young?.year)).toEqual(
      [undefined, 1, undefined, undefined, undefined, undefined].map(
        (year, at) => ({ 2: 3, 3: 4 })[at] ?? year,
      ),
    );
  });
});

describe("the crop of young vines", () => {
  const outlookOf = (read: ReturnType<typeof seasonOf>) =>
    outlookInputs(read, { decided: [...decideSeason(read)] }).map((inputs) =>
      blockOutlook(inputs, read.settings, ["light", "medium", "heavy"]),
    );

  test("vines in their first and second year bear nothing, replanted ones by status, and a block of them lacks no count", () => {
    // bearing by status: vines 1, 4 and 5 of Old Hill, and both of New Slope, which are in their second year
    const [old, young] = outlookOf(seasonOf());
    expect([old.inputs.bearingVines, young.inputs.bearingVines]).toEqual([3, 0]);
    expect(young.inputs.lacking.map(({ code }) => code)).not.toContain("countedVines");
    expect(winterNotes(young, "en")).toEqual(["Year 2 of a young block: at most 0 clusters a vine."]);
  });

  test("a block in its third year bears, at most 10 clusters a vine (winegrowers.info)", () => {
    const [, young] = outlookOf(seasonOf("high wire", "Year planted", [], 2024));
    expect(young.inputs.bearingVines).toBe(2);
    expect(young.young).toEqual({ leaf: 3, clusters: 10, likely: undefined });
  });

  test("a farm that leaves clusters in the second year has bearing vines then", () => {
    const [, young] = outlookOf(seasonOf("high wire", "Year planted", [["Clusters a vine in year 2", 3]]));
    expect(young.inputs.bearingVines).toBe(2);
  });
});
