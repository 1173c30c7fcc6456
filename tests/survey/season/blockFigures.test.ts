import { blockFigureSentence } from "../../../src/survey/crop/blockFigureSentence";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { crewCards } from "../../../src/survey/decide/cards/crewCards";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { blockFigures } from "../../../src/survey/season/blockFigures";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { LANGUAGES } from "../../../src/texts/language";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

type Rows = readonly (readonly CellValue[])[];

const HEADS = ["Block", "Cultivar", "Kind of grape", "Secondary worth", "Basal shoots", "Basal worth"];
const BLOCKS: Rows = [
  [...HEADS, "Nodes a spur", "Most nodes"],
  ["Hill", "Marquette", null, null, null, null, null, null],
  ["Dell", "Marquette", "vinifera", 0.45, 1, 0.6, 1, 44],
  ["Pond", "Catawba", "American", null, null, null, null, null],
  ["Gate", "Riesling", "vinifera", null, null, null, null, null],
  ["Barn", null, null, null, null, null, null, null],
];

function figures(block: string, settings: Rows = []) {
  const season = readSeason([
    areaOf("Blocks", BLOCKS),
    areaOf("Settings", [["Setting", "Value"], ...settings]),
  ]);
  return blockFigures(season)(season.words.codeOf(block));
}

test.each([
  ["Hill", "the cultivar's", { value: 0.53, from: "cultivar", source: "frioni2017" }],
  ["Dell", "its own", { value: 0.45, from: "block", source: undefined }],
  ["Pond", "that of its kind", { value: 0.35, from: "kind", source: "howell" }],
  ["Gate", "Settings, as none is published", { value: 0.38, from: "settings", source: "winesVines2015" }],
  ["Barn", "Settings", { value: 0.38, from: "settings", source: "winesVines2015" }],
] as const)("worth of a secondary in %s is %s", (block, _, expected) => {
  expect(figures(block).secondaryWorth).toMatchObject(expected);
});

test("a setting that the farm has changed goes before what is published, but not before a block's own", () => {
  const changed = [["Worth of a secondary shoot", 0.5]];
  expect(figures("Hill", changed).secondaryWorth).toMatchObject({ value: 0.5, from: "settings" });
  expect(figures("Pond", changed).secondaryWorth.value).toBe(0.5);
  expect(figures("Dell", changed).secondaryWorth.value).toBe(0.45);
});

test("every figure has its own column, and the node rule follows the kind of grape (Smith, Ohio State 2023)", () => {
  expect(figures("Dell")).toMatchObject({
    basalShoots: { value: 1 },
    basalWorth: { value: 0.6 },
    nodesASpur: { value: 1, from: "block" },
    mostNodes: { value: 44, from: "block" },
    nodeRule: { value: "20+20", from: "kind" },
  });
  expect(figures("Pond").nodeRule).toMatchObject({ value: "30+10", from: "kind", source: "ohio2023" });
  expect(figures("Barn").nodeRule).toMatchObject({ value: "30+10", from: "settings" });
});

test("one sentence says which figure and where from, in every language", () => {
  expect(blockFigureSentence(figures("Hill"), ["secondaryWorth", "nodesASpur"], "en")).toBe(
    "Figures of this block: Secondary worth 0.53 (Marquette: worked out from Frioni 2017); Nodes a spur 2 (Settings, UMN 2022).",
  );
  expect(blockFigureSentence(figures("Gate"), ["secondaryWorth"], "en")).toBe(
    "Figures of this block: Secondary worth 0.38 (Settings, Wines & Vines 2015). No published worth of a secondary shoot was seen for vinifera; Settings stands in.",
  );
  expect(blockFigureSentence(figures("Pond"), ["secondaryWorth"], "es")).toBe(
    "Cifras de este cuartel: Valor de secundarias 0,35 (americana: Howell, MSU).",
  );
  for (const language of LANGUAGES)
    expect(blockFigureSentence(figures("Dell"), ["nodesASpur", "mostNodes"], language)).toContain("44");
});

test("a figure to three digits, a rule as it is written, and where each is from", () => {
  expect(blockFigureSentence(figures("Dell"), ["basalWorth", "nodeRule"], "en")).toBe(
    "Figures of this block: Basal worth 0.6 (Blocks sheet); Node rule 20+20 (vinifera: Ohio State 2023).",
  );
  expect(
    blockFigureSentence(figures("Barn", [["Worth of a secondary shoot", 0.45678]]), ["secondaryWorth"], "en"),
  ).toBe("Figures of this block: Secondary worth 0.457 (Settings).");
  expect(blockFigureSentence(figures("Barn"), ["secondaryWorth"], "en")).toBe(
    "Figures of this block: Secondary worth 0.38 (Settings, Wines & Vines 2015).",
  );
});

describe("one count node where the basal bud bears", () => {
  const cordons: Rows = [
    [...CORDON_HEADS],
    ["Dell", 1, 1, "left", "A", 1, 3, 10, 10],
    ["Dell", 1, 1, "right", "B", 2, 3, 10, 10],
  ];
  const nodes = (head: readonly string[], own: readonly CellValue[]) => {
    const season = readSeason([
      areaOf("Blocks", [
        ["Block", "Node rule", ...head],
        ["Dell", "36", ...own],
      ]),
      areaOf("Cordons", cordons),
    ]);
    return crewCards(season, decideSeason(season))[0].vines[0].nodes;
  };

  // 20 spurs of 1 node hold 20 of 36; basal shoots 20 x 1 x 0.5 make up for 10 of the 16
  test("is a plan of its own; basal shoots make up for what a second node would have been", () => {
    expect(nodes(["Nodes a spur"], [1])).toMatchObject({ spurs: [{ spurs: 20, nodes: 1 }], short: 16 });
    expect(nodes(["Nodes a spur", "Basal shoots", "Basal worth"], [1, 1, 0.5])).toMatchObject({
      spurs: [{ spurs: 20, nodes: 1 }],
      nodes: 20,
      short: 6,
    });
  });

  test("without nodes of its own the block is planned by Settings: 36 over 20 spurs", () => {
    expect(nodes(["Basal shoots"], [1])).toMatchObject({ nodes: 36, short: 0 });
  });
});
