import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { trunksToRenew } from "../../../../src/survey/decide/renewal/trunksToRenew";
import { countVines } from "../../../../src/taskpane/decide/decideState";
import { crewCards } from "../../../../src/survey/decide/cards/crewCards";
import { cardLine } from "../../../../src/survey/decide/cards/cardWords";
import { workPlan } from "../../../../src/survey/decide/plan/workPlan";
import { workSentences } from "../../../../src/survey/decide/plan/workSentences";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { LANGUAGES } from "../../../../src/texts/language";
import { vineCard } from "../../../../src/workbook/results/cardsSheet";
import { areaOf } from "../../area";
import { cordonHeads } from "../../cordonHeads";
import { inventedSeason, seasonOfSheets } from "../cards/season";

test.each([1, 2, 3])(
  "with %d trunks wanted the list of vines and the list of trunks name the same vines",
  (wanted) => {
    const season = seasonOfSheets(inventedSeason(), [["Trunks wanted on a vine", wanted]]);
    const vines = [...decideSeason(season)];
    const nameOf = ({ block, row, vine }: { block: string; row: number; vine: number }) =>
      `${block} ${row} ${vine}`;
    const decided = new Set(vines.map(nameOf));
    const toRenew = trunksToRenew(season)
      .vines.map(nameOf)
      .filter((name) => decided.has(name));
    expect(
      vines
        .filter(({ renewsTrunk }) => renewsTrunk)
        .map(nameOf)
        .sort(),
    ).toEqual(toRenew.sort());
    expect(countVines(vines).trunks).toBe(toRenew.length);
    expect(toRenew.length).toBeGreaterThan(20);
  },
);

describe("trunks of known years, counted in January 2026", () => {
  // Laid up in 2016, a trunk has stood ten summers, 2016 to 2025; MSU E-2774 replaces it every 10 to 12 years.
  const row = (vine: number, side: string, cordon: string, trunk: number, year: number | string) => [
    ...["North Bench", 1, vine, side, cordon, trunk, 40, 10, 9, 1, 46040, year],
  ];
  const season = (yearHead: string, counted: number | string = 46040) =>
    readSeason([
      areaOf(
        "Cordons",
        [
          [...cordonHeads("in"), "Longest gap", "Date", yearHead],
          row(1, "left", "A", 1, 2016),
          row(1, "right", "B", 2, 2020),
          row(2, "left", "A", 1, 2017),
          row(2, "right", "B", 2, ""),
          row(3, "left", "A", 1, 2014),
          row(3, "right", "B", 2, 2012),
        ].map((cells, at) => (at === 0 ? cells : cells.map((cell) => (cell === 46040 ? counted : cell)))),
      ),
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", "Live trunks"],
        ["North Bench", 1, 1, "bearing", 2],
        ["North Bench", 1, 2, "bearing", 2],
        ["North Bench", 1, 3, "bearing", 2],
      ]),
      areaOf("Blocks", [
        ["Block", "Vine spacing (ft)", "Training system", "Node rule"],
        ["North Bench", 7, "high wire", "40"],
      ]),
    ]);
  const heads = ["Trunk year", "Año del tronco", "Année du tronc", "trunk laid up", "Year of trunk"];

  test.each(heads)("the column %s gives three due this winter, one next, one without a year", (head) => {
    const read = season(head);
    const { vines, byAge } = trunksToRenew(read);
    expect(byAge).toEqual({ now: 3, nextWinter: 1, withoutYear: 1 });
    expect(workSentences(workPlan(read, new Map(), undefined, byAge), "en")).toContain(
      "Trunks due by their age: 3 this winter, 1 next winter; live trunks without a year: 1.",
    );
    expect(vines.map(({ vine, renewal }) => [vine, renewal.bringUp])).toEqual([
      [1, 1],
      [3, 2],
    ]);
  });

  test("the plan, the card, the sheet and the list of trunks name the same ones, in every language", () => {
    const read = season("Trunk year");
    const decided = [...decideSeason(read)];
    const [card] = crewCards(read, decided);
    const due = decided.map(({ plan }) => (plan.dueTrunks ?? []).map(({ trunk }) => trunk));
    expect(due).toEqual([[1], [], [2, 1]]);
    expect(card.vines.map(({ dueTrunks }) => (dueTrunks ?? []).map(({ trunk }) => trunk))).toEqual(due);
    expect(decided.map(({ renewsTrunk }) => renewsTrunk)).toEqual([true, false, true]);
    expect(cardLine(card.vines[2], "en", "US").notes).toEqual([
      "new trunks: 2",
      "T2 old (14 y): keep a sucker",
      "T1 old (12 y): keep a sucker",
    ]);
    expect(vineCard(decided[0], "en", "US").notes).toContain(
      "Trunk 1 has stood 10 years: keep a shoot low on it or a sucker in its place, and take it out when that is 2 to 3 years old.",
    );
    for (const language of LANGUAGES)
      expect(
        vineCard(decided[2], language, "US").notes.filter((note) => /1[24] (years|años|ans)/.test(note)),
      ).toHaveLength(2);
  });

  test("without the column, or without a date of any count, nothing is said of age", () => {
    expect(trunksToRenew(season("Remarks on trunks")).byAge).toBeUndefined();
    expect(trunksToRenew(season("Trunk year", "")).byAge).toBeUndefined();
  });

  test("in the invented farm's youngest block the first trunk of each vine is due next winter, none this winter", () => {
    // Schoolhouse, planted 2016: first trunks of 2017 have stood nine summers in 2026, the others of 2019 seven
    const farm = inventedSeason();
    const first = new Map(
      farm.cordons
        .filter(({ trunkYear, trunk }) => trunkYear === 2017 && trunk === 1)
        .map(({ row, vine, trunkCondition, condition }) => [
          `${row} ${vine}`,
          trunkCondition === "sound" || (trunkCondition === null && condition !== "dead"),
        ]),
    );
    const sound = [...first.values()].filter(Boolean).length;
    expect(sound).toBeGreaterThan(100);
    expect(trunksToRenew(seasonOfSheets(farm)).byAge).toMatchObject({ now: 0, nextWinter: sound });
  });
});
