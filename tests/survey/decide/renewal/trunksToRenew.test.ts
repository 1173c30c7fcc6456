import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import type { VineToDecide } from "../../../../src/domain/choice/candidateCordon";
import { renewalRules } from "../../../../src/survey/decide/renewal/renewalRules";
import { hasTrunkToRenew, trunksToRenew } from "../../../../src/survey/decide/renewal/trunksToRenew";
import { defaultSettings } from "../../../../src/survey/settings/settings";
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
import { inventedSeason, seasonOfFarm } from "../cards/season";

test.each([1, 2, 3])(
  "with %d trunks wanted the list of vines and the list of trunks name the same vines",
  (wanted) => {
    const season = seasonOfFarm(inventedSeason(), [["Trunks wanted on a vine", wanted]]);
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
    expect(trunksToRenew(seasonOfFarm(farm)).byAge).toMatchObject({ now: 0, nextWinter: sound });
  });
});

describe("the list of trunks to renew, two wanted on a vine, worked by hand", () => {
  // Vine: live trunks, status, condition of trunk 1 and of trunk 2 as the Cordons sheet has them.
  const VINES: readonly (readonly [number | string, string, string, string])[] = [
    [2, "bearing", "sound", "sound"],
    [1, "bearing", "sound", ""],
    [0, "bearing", "", ""],
    [1, "missing", "sound", ""],
    ["", "bearing", "sound", "sound"],
    [1, "young", "sound", ""],
    [2, "bearing", "dead", "sound"],
    [2, "bearing", "sound", "injured"],
    [2, "bearing", "injured", "diseased"],
    ["", "bearing", "", ""],
    [3, "bearing", "sound", "sound"],
    [1, "bearing", "injured", ""],
  ];
  const read = () =>
    readSeason([
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", "Live trunks"],
        ...VINES.map(([live, status], at) => ["Low", 1, at + 1, status, live]),
      ]),
      areaOf("Cordons", [
        [...cordonHeads("in"), "Longest gap", "Trunk condition"],
        ...VINES.flatMap(([, , ...conditions], at) =>
          conditions.flatMap((condition, trunk) =>
            condition === ""
              ? []
              : [
                  [
                    "Low",
                    1,
                    at + 1,
                    ...(trunk === 0 ? ["left", "A"] : ["right", "B"]),
                    trunk + 1,
                    40,
                    10,
                    9,
                    1,
                    condition,
                  ],
                ],
          ),
        ),
      ]),
    ]);

  test("the most urgent vine first, and of equals the first of the walk", () => {
    expect(trunksToRenew(read()).vines.map(({ vine, renewal }) => [vine, renewal.urgency])).toEqual([
      [3, "noTrunk"],
      [12, "lastTrunkHurt"],
      [2, "oneTrunk"],
      [9, "everyTrunkHurt"],
      [8, "hurtTrunk"],
      // two live trunks beside a dead one: nothing to bring up, and the dead one comes out
      [7, "none"],
    ]);
  });

  test("each with its live trunks and what is done: suckers, trunks to replace and to take out", () => {
    const found = trunksToRenew(read()).vines.map(({ vine, liveTrunks, renewal }) => [
      ...[vine, liveTrunks, renewal.bringUp, renewal.replace, renewal.takeOut],
    ]);
    expect(found).toEqual([
      [3, 0, 2, [], []],
      [12, 1, 2, [1], []],
      [2, 1, 1, [], []],
      [9, 2, 2, [2, 1], []],
      [8, 2, 1, [2], []],
      [7, 2, 0, [], [1]],
    ]);
  });

  test("vines by their live trunks: missing ones and those not counted are not among them", () => {
    const { byLiveTrunks, notCounted } = trunksToRenew(read());
    // none: vine 3; one: 2, 6 and 12; two: 1, 7, 8 and 9; three: 11
    expect(byLiveTrunks).toEqual([1, 3, 4, 1]);
    expect(notCounted).toBe(2);
  });

  test("a vine by itself says the same, and without a count of trunks or a vine nothing", () => {
    const rules = renewalRules(defaultSettings());
    const renews = (vine: Omit<VineToDecide, "candidates">) =>
      hasTrunkToRenew({ candidates: [], ...vine }, rules);
    expect(renews({ liveTrunks: 1 })).toBe(true);
    expect(renews({ liveTrunks: 2 })).toBe(false);
    expect(renews({})).toBe(false);
    expect(renews({ liveTrunks: 1, status: "missing" })).toBe(false);
    expect(renews({ liveTrunks: 1, status: "young" })).toBe(false);
    expect(renews({ liveTrunks: 0, status: "young" })).toBe(true);
    const dead = { side: "left", cordon: "A", trunk: 3, trunkCondition: "dead" } as const;
    expect(hasTrunkToRenew({ liveTrunks: 2, candidates: [dead] }, rules)).toBe(true);
  });

  test("ages are counted over the vines that stand, once one trunk has a year: a missing vine's trunk is none", () => {
    const aged = readSeason([
      areaOf("Vines", [
        ["Block", "Row", "Vine", "Status", "Live trunks"],
        ["Low", 1, 1, "bearing", 2],
        ["Low", 1, 2, "missing", ""],
      ]),
      areaOf("Cordons", [
        [...cordonHeads("in"), "Longest gap", "Date", "Trunk year"],
        ["Low", 1, 1, "left", "A", 1, 40, 10, 9, 1, 46040, 2014],
        ["Low", 1, 1, "right", "B", 2, 40, 10, 9, 1, 46040, ""],
        ["Low", 1, 2, "left", "A", 1, 40, 10, 9, 1, 46040, 2014],
        ["Low", 1, 2, "right", "B", 2, 40, 10, 9, 1, 46040, 2017],
      ]),
    ]);
    expect(trunksToRenew(aged).byAge).toEqual({ now: 1, nextWinter: 0, withoutYear: 1 });
  });
});
