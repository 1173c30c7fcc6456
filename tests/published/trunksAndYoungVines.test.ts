import { dueTrunks } from "../../src/domain/renewal/dueTrunks";
import {
  fourthYearNodes,
  youngVine,
  youngVineIn,
  type YearOfGrowth,
  type YoungVineRuleCode,
} from "../../src/domain/plan/youngVine";
import { Refusal } from "../../src/domain/refusal";
import { defaultSettings } from "../../src/survey/settings/settings";
import { checkRows, EXACT } from "./checkRows";

const MSU =
  "Zabadal, Michigan State University, E-2774 (2002): replace a trunk every 10 to 12 years even under the best conditions";

const due = (trunkAge: number) =>
  dueTrunks({ candidates: [{ side: "left", cordon: "A", trunk: 1, trunkAge }] }, 10, 2).due.length;

checkRows("trunks renewed by plan", [
  {
    why: "the first age of the source is the one in Settings",
    source: MSU,
    ours: () => defaultSettings().trunkAgeThatRenews,
    published: 10,
    within: EXACT,
  },
  ...[
    [9, 0],
    [10, 1],
    [12, 1],
  ].map(([age, published]) => ({
    why: `at ${age} years`,
    source: MSU,
    ours: () => due(age),
    published,
    within: EXACT,
  })),
]);

const AMBERG = "Amberg Grapevines (nursery), The first three years";
const UW = "University of Wisconsin-Madison Fruit Program, 13 May 2016";
const UMN = "van der Linden, University of Minnesota Extension 2010, Pruning grape vines in Minnesota";
const KLODD = "Klodd, Thull and Clark, University of Minnesota 2020, Building new grapevine cordons";
const UK = "winegrowers.info, Training, year 3 onwards: about 10 bunches in the first crop year";
const NC = "NC State Extension Gardener Handbook, figure 14-33, high-wire cordon, year 4 and later";

const rule = (year: YearOfGrowth, code: YoungVineRuleCode, end: "least" | "most") =>
  youngVine(year, "highWire").rules.find((one) => one.rule === code)?.[end] ?? NaN;

const PUBLISHED: readonly (readonly [YearOfGrowth, YoungVineRuleCode, "least" | "most", number, string])[] = [
  [1, "shoots", "least", 3, AMBERG],
  [1, "shoots", "most", 6, AMBERG],
  [1, "clusters", "most", 0, UW],
  [2, "cordons", "most", 2, UMN],
  [2, "growOn", "most", 0.5, KLODD],
  [3, "growOn", "most", 0.5, KLODD],
  [3, "clusters", "most", 10, UK],
  [4, "spurs", "least", 8, NC],
  [4, "spurs", "most", 15, NC],
  [4, "nodesASpur", "least", 2, NC],
  [4, "nodesASpur", "most", 2, NC],
  [4, "nodesACordon", "least", 16, `${NC}: 8 x 2 by hand`],
  [4, "nodesACordon", "most", 30, `${NC}: 15 x 2 by hand`],
];

checkRows("young vines", [
  ...PUBLISHED.map(([year, code, end, published, source]) => ({
    why: `year ${year}, ${code}, ${end}`,
    source,
    ours: () => rule(year, code, end),
    published,
    within: EXACT,
  })),
  {
    why: "two cordons of 8 spurs: 32 nodes a vine",
    source: `${NC}; derived`,
    ours: () => fourthYearNodes([8, 8]),
    published: 32,
    within: EXACT,
  },
  {
    why: "two cordons of 15 spurs: 60 nodes a vine",
    source: `${NC}; derived`,
    ours: () => fourthYearNodes([15, 15]),
    published: 60,
    within: EXACT,
  },
]);

describe("where the sources on young vines end", () => {
  test("no publication seen gives nodes before the fourth year, or clusters in the second and fourth", () => {
    for (const year of [1, 2, 3] as const)
      expect(youngVine(year, "highWire").rules.map((one) => one.rule)).not.toContain("nodesASpur");
    for (const year of [2, 4] as const)
      expect(youngVine(year, "highWire").rules.map((one) => one.rule)).not.toContain("clusters");
  });

  test.each([
    [2026, 2025, "highWire", "vineNotYoung"],
    [2022, 2026, "highWire", "vineNotYoung"],
    [2023, 2026, "upright", "youngVineTraining"],
    [2023, 2026, "divided", "youngVineTraining"],
  ] as const)("planted %d, season %d, %s: %s", (planted, season, training, code) => {
    expect(() => youngVineIn(planted, season, training)).toThrow(Refusal);
    expect(() => youngVineIn(planted, season, training)).toThrow(code);
  });
});
