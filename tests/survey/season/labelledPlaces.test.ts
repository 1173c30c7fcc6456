import { evaluateFormula } from "../../../src/functions/evaluateFormula";
import { rowValue } from "../../../src/cli/rowsCommand";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { crewCards } from "../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { gapsOfSeason } from "../../../src/survey/season/gapsOfSeason";
import { readWinterCells, winterCells, winterRows } from "../../../src/survey/season/winterRows";
import { trunksToRenew } from "../../../src/survey/decide/renewal/trunksToRenew";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { vineFound } from "../../../src/taskpane/decide/vineWalk";
import { placeName } from "../../../src/texts/placeName";
import { cardsHtml } from "../../../src/workbook/results/cardsHtml";
import { cardsSheet } from "../../../src/workbook/results/cardsSheet";
import { choiceSheet } from "../../../src/workbook/results/choiceSheet";
import { gapCountsSheet } from "../../../src/workbook/results/gapCountsSheet";
import { gapMapSheet, rowGapsSheet } from "../../../src/workbook/results/gapSheets";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

/** Rows and vines in the order of the walk: a row with a letter between two, a vine with one, a vine half way. */
const WALK: readonly (readonly [row: CellValue, vine: CellValue])[] = [
  [12, 1],
  [12, "1a"],
  [12, 2],
  ["12B", 1],
  ["12B", 2],
  [13, 1],
  [13, 1.5],
  [13, 2],
];
const LETTERS: typeof WALK = [
  ["A", 1],
  ["A", "1a"],
  ["B", 1],
  ["C", 1],
];

/** R and P stand for no word here, since both are there. */
const LETTERS_AND_NUMBERS: typeof WALK = [
  ["A9", 1],
  ["A10", "A1"],
  ["A10", "A2"],
  ["A10", "B1"],
  ["A121", 1],
  ["B1", 1],
  ["B1", 2],
  ["P1", 1],
  ["R1", 1],
];

const seasonOf = (walk: typeof WALK) =>
  readSeason([
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Live trunks"],
      ...walk.map(([row, vine], i): CellValue[] => ["North", row, vine, "bearing", i === 1 ? 1 : 2]),
    ]),
    areaOf("Cordons", [
      [...CORDON_HEADS, "Decided"],
      ...walk.flatMap(([row, vine]) =>
        (["left", "right"] as const).map((side, at): CellValue[] => [
          "North",
          row,
          vine,
          side,
          "AB"[at],
          at + 1,
          3,
          8,
          6,
          "stays",
        ]),
      ),
    ]),
  ]);

describe.each([
  ["between numbers", WALK],
  ["letters", LETTERS],
  ["letters and numbers", LETTERS_AND_NUMBERS],
])("rows and vines with labels, %s", (_, walk) => {
  const season = seasonOf(walk);
  const decided = [...decideSeason(season)];
  const labels = walk.map(([row, vine]) => [
    typeof row === "string" && /^\d/.test(row) ? row.toLowerCase() : row,
    vine,
  ]);
  const rows = [...new Set(labels.map(([row]) => row))];
  const pairs = <Row extends readonly unknown[]>(list: readonly Row[], at: number) =>
    list.map((row) => [row[at], row[at + 1]]);

  test("every vine is a place, used by every result, and nothing is found wrong with it", () => {
    expect(season.used.account().leftOut).toEqual([]);
    expect(allFindings(season).filter(({ severity }) => severity === "wrong")).toEqual([]);
    expect(allFindings(season).filter(({ code }) => code === "outOfWalkOrder")).toEqual([]);
  });

  test("choice and cards name them in order", () => {
    expect(decided.map(({ row, vine }) => [placeName(row), placeName(vine)])).toEqual(labels);
    const choice = choiceSheet(decided, "en", "US", "day").rows;
    expect(pairs(choice, 1)).toEqual(labels.flatMap((label) => [label, label]));
    const cards = crewCards(season, decided);
    expect(pairs(cardsSheet(cards, { language: "en", unitSystem: "US", date: "day" }).rows, 1)).toEqual(
      labels,
    );
    const page = cardsHtml(cards, {
      language: "en",
      unitSystem: "US",
      paper: "Letter",
      date: "day",
      farm: "Larkmoor Bend (invented)",
      vinesAPage: 10,
      ribbons: { stays: "blue", ask: "pink" },
    });
    expect([...page.matchAll(/<td class="vine">([^<]*)</g)].map(([, vine]) => vine)).toEqual(
      labels.map(([, vine]) => String(vine)),
    );
    for (const row of rows) expect(page).toContain(`row ${row}`);
  });

  test("gaps, their map, the pivot's sheet and the winters name them in order", () => {
    const gaps = gapsOfSeason(season);
    expect(rowGapsSheet(gaps, "en", "day").rows.map(([, row]) => row)).toEqual(rows);
    const map = gapMapSheet(gaps, "en", "day");
    for (const [row, vine] of labels) {
      const line = map.rows.find(([, name]) => name === row)!;
      const at = map.headers.indexOf(`Vine ${vine}`);
      // 2 cordons of 8 positions with 6 live spurs: 4 of 16 are empty.
      expect([row, vine, line[at]]).toEqual([row, vine, 0.25]);
    }
    const counts = gapCountsSheet(season, () => true, "Gap counts", "en", "day").rows;
    expect(pairs(counts, 1)).toEqual(labels.flatMap((label) => [label, label]));
    const winter = winterRows(season);
    const cells = winterCells(winter, "en");
    expect(cells.slice(1).map((line) => line[1])).toEqual(rows);
    expect(readWinterCells(cells)).toEqual(winter);
  });

  test("rows, trunks to renew and the search know them by their labels", () => {
    const [table] = season.tables("cordons");
    const [row, vine] = [table.column("row")!, table.column("vine")!];
    expect(
      walk.map((_, i) => [rowValue(row, 2 * i, season.words), rowValue(vine, 2 * i, season.words)]),
    ).toEqual(walk);
    const [renew] = trunksToRenew(season).vines;
    expect([placeName(renew.row), placeName(renew.vine)]).toEqual(labels[1]);
    for (const [at, [own, number]] of labels.entries())
      expect(vineFound(decided, `north ${own} ${number}`)).toBe(decided[at]);
  });
});

test("functions take and give them", () => {
  const table =
    '{"Block","Row","Vine","Positions","Live spurs";"North","A",1,8,6;"North","A","1a",8,7;"North","B",1,8,8}';
  const outcome = evaluateFormula(`=CORDON.GAPSBYROW(${table})`);
  // Row A: 2 vines, 16 positions, 13 live spurs, 3 gaps.
  expect("values" in outcome && outcome.values.slice(1)).toEqual([
    ["North", "A", 2, 2, 16, 13, 3, 0.1875, ""],
    ["North", "B", 1, 1, 8, 8, 0, 0, ""],
  ]);
  const vines =
    '{"Block","Row","Vine","Status","Live trunks";"North","12B","3a","bearing",1;"North","12B",4,"bearing",2}';
  expect(JSON.stringify(evaluateFormula(`=CORDON.TRUNKSTORENEW(${vines})`))).toContain('"North","12b","3a"');
});
