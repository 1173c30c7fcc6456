import { publishedOfGrape } from "../../src/domain/grapeFigures";
import { balancedFormula } from "../../src/domain/balancedFormula";
import { nodeBudget } from "../../src/domain/nodeBudget";
import { kilogramsFromPounds } from "../../src/domain/units";
import { checkRows, EXACT, half } from "./checkRows";

const HOWELL =
  "Howell, Michigan State, Estimating grapevine potential productivity after spring frost or winter bud damage";
const OHIO =
  "Smith, Ohio State University, Buckeye Appellation, March 2023, after the Midwest Grape Production Guide";
const MISSOURI = "University of Missouri, Vinews";

const number = (
  id: "secondaryWorth" | "basalWorth" | "mostNodes",
  ...grape: Parameters<typeof publishedOfGrape> extends [unknown, ...infer Rest] ? Rest : never
) => publishedOfGrape(id, ...grape)?.figure.value ?? NaN;
const twoPounds = (...grape: [string, ("american" | "frenchHybrid" | "newHybrid" | "vinifera" | "table")?]) =>
  nodeBudget(
    kilogramsFromPounds(2),
    balancedFormula(publishedOfGrape("nodeRule", ...grape)!.figure.value),
    "refuse",
  );

checkRows("published figures by cultivar and kind of grape", [
  {
    why: "Concord: a secondary bears 35 % of the primary's crop",
    source: HOWELL,
    ours: () => number("secondaryWorth", "Concord"),
    published: 0.35,
    within: EXACT,
  },
  {
    why: "Niagara: the same",
    source: HOWELL,
    ours: () => number("secondaryWorth", " niagara "),
    published: 0.35,
    within: EXACT,
  },
  {
    why: "Norton: half of the primaries dead is half of the yield lost, so a secondary is worth 0",
    source: `${MISSOURI} 2023 No. 1`,
    ours: () => number("secondaryWorth", "Norton", "american"),
    published: 0,
    within: EXACT,
  },
  {
    why: "Norton: basal buds do not bear",
    source: `${MISSOURI} 2020 No. 5`,
    ours: () => number("basalWorth", "Norton"),
    published: 0,
    within: EXACT,
  },
  {
    why: "Marquette: (1 / 1.61 - 0.2) / 0.8 = 0.526",
    source: "derived from Frioni et al. 2017, Scientia Horticulturae 219:302-309",
    ours: () => number("secondaryWorth", "Marquette"),
    published: 0.526,
    within: half(2),
  },
  {
    why: "hybrids: 0.275 / 0.725 from the middle of 70 to 75 % on the primary",
    source: "derived from Wines & Vines, October 2015, p. 76",
    ours: () => number("secondaryWorth", "Seyval", "frenchHybrid"),
    published: 0.3793,
    within: half(2),
  },
  {
    why: "Concord: 100 nodes balance",
    source: "Bates, Cornell, Vine size, pruning severity and vine balance",
    ours: () => number("mostNodes", "Concord"),
    published: 100,
    within: EXACT,
  },
  {
    why: "American grapes, 2 lb: 30 + 10",
    source: `${OHIO}; by hand`,
    ours: () => twoPounds("", "american"),
    published: 40,
    within: EXACT,
  },
  {
    why: "French hybrids, 2 lb: 20 + 10",
    source: `${OHIO}; by hand`,
    ours: () => twoPounds("", "frenchHybrid"),
    published: 30,
    within: EXACT,
  },
  {
    why: "new hybrids, 2 lb: 20 + 20",
    source: `${OHIO}; by hand`,
    ours: () => twoPounds("", "newHybrid"),
    published: 40,
    within: EXACT,
  },
  {
    why: "vinifera, 2 lb: 20 + 20",
    source: `${OHIO}; by hand`,
    ours: () => twoPounds("Riesling", "vinifera"),
    published: 40,
    within: EXACT,
  },
  {
    why: "seedless table grapes, 2 lb: 30 + 10",
    source: `${OHIO}; by hand`,
    ours: () => twoPounds("", "table"),
    published: 40,
    within: EXACT,
  },
  {
    why: "Traminette, 2 lb: 40 + 10",
    source: "O'Daniel, Archbold and Kurtural 2012, AJEV 63(2):284-290; by hand",
    ours: () => twoPounds("Traminette"),
    published: 50,
    within: EXACT,
  },
]);

test("where no source gives a figure there is none: vinifera, an unknown cultivar, a name that every object has", () => {
  expect(publishedOfGrape("secondaryWorth", "Riesling", "vinifera")).toBeUndefined();
  expect(publishedOfGrape("secondaryWorth", "Seedling 7")).toBeUndefined();
  expect(publishedOfGrape("nodeRule", "constructor")).toBeUndefined();
});
