import type { Farm, FarmRow } from "../../../sample-workbooks/make/farm";
import { randomSource } from "../../../sample-workbooks/make/randomSource";
import { cardLine, voidSentences } from "../../../src/survey/decide/cards/cardWords";
import { crewCards, type CrewCard } from "../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { notePrinted, printedCards } from "../../../src/workbook/actions/printedCards";
import { CORDON_HEADS } from "../../survey/cordonHeads";
import { inventedSeason, seasonOfFarm } from "../../survey/decide/cards/season";
import { MemoryWorkbook } from "../memory/memoryWorkbook";

const HEADS = [...CORDON_HEADS, "Longest gap", "Pruned on"];
const vine = (number: number, spurs: number, prunedOn: CellValue = null): CellValue[][] => [
  ["North Bench", number, 1, "left", "A", 1, 3.5, 7, spurs, 7 - spurs, prunedOn],
  ["North Bench", number, 1, "left", "B", 2, 3.5, 7, 1, 6, prunedOn],
];

function cardsOf(...rows: CellValue[][]): CrewCard[] {
  const season = readSeason([
    { sheet: "Cordons", firstRow: 1, firstColumn: 1, values: [HEADS, ...rows], formulaAt: () => null },
  ]);
  return [...crewCards(season, [...decideSeason(season)])];
}

const printedOf = async (workbook: MemoryWorkbook, cards: readonly CrewCard[]) => {
  const printed = await printedCards(workbook);
  return cards.map((card) => printed.isPrinted(card));
};
const namesOf = (cards: readonly CrewCard[]) =>
  cards.flatMap(({ block, row, vines }) => vines.map((one) => `${block} ${row} ${one.vine}`)).sort();

test("a card is printed anew when what the crew is to do has changed, and only then", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  const before = cardsOf(...vine(1, 7), ...vine(2, 7));
  expect(before).toHaveLength(2);
  expect(await printedOf(workbook, before)).toEqual([false, false]);
  await notePrinted(workbook, before, []);
  expect(await printedOf(workbook, before)).toEqual([true, true]);
  // On 10 February 2026 the crew pruned row 1, and somebody takes note that row 2 was miscounted: no cordon is left.
  const after = cardsOf(...vine(1, 7, 46_063), ...vine(2, 0));
  expect(await printedOf(workbook, after)).toEqual([true, false]);
  await notePrinted(workbook, after.slice(1), []);
  expect(await printedOf(workbook, after)).toEqual([true, true]);
  // Back to what the first print said: the crew has the second one in hand.
  expect(await printedOf(workbook, before)).toEqual([true, false]);
});

test("what changed is printed alone, what is void is named, and then nothing is left to print", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  await notePrinted(workbook, cardsOf(...vine(1, 7), ...vine(2, 7), ...vine(4, 7)), []);
  // Row 1 as it was, row 2 without a live spur, row 3 new, row 4 gone.
  const now = cardsOf(...vine(1, 7), ...vine(2, 0), ...vine(3, 7));
  const { cards, voided } = (await printedCards(workbook)).changed(now);
  expect(namesOf(cards)).toEqual(["North Bench 2 1", "North Bench 3 1"]);
  expect(voidSentences(voided, "en")).toEqual([
    "Void, the whole card of North Bench, row 2, printed before.",
    "Void, the whole card of North Bench, row 4, printed before.",
  ]);
  await notePrinted(workbook, cards, voided);
  expect((await printedCards(workbook)).changed(now)).toEqual({ cards: [], voided: [] });
});

test("a vine that is pruned needs no other card", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  await notePrinted(workbook, cardsOf(...vine(1, 7)), []);
  // pruned on 10 February 2026
  const pruned = cardsOf(...vine(1, 0)).map((card) => ({
    ...card,
    vines: card.vines.map((one) => ({ ...one, prunedOn: 46_063 })),
  }));
  expect((await printedCards(workbook)).changed(pruned)).toEqual({ cards: [], voided: [] });
});

test("a print of everything leaves nothing of earlier ones in the workbook", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  await notePrinted(workbook, cardsOf(...vine(1, 7), ...vine(2, 7)), []);
  await notePrinted(workbook, cardsOf(...vine(1, 0)), []);
  expect((await workbook.readFlags("printed.")).size).toBe(2);
  await notePrinted(workbook, cardsOf(...vine(1, 7), ...vine(2, 0)), []);
  expect((await workbook.readFlags("printed.")).size).toBe(1);
});

/** Every line of the cards as a crew reads it, in both systems of units. */
function linesOf(cards: readonly CrewCard[]): Map<string, string> {
  return new Map(
    cards.flatMap(({ block, row, vines }) =>
      vines.map((one): [string, string] => [
        `${block} ${row} ${one.vine}`,
        JSON.stringify([cardLine(one, "en", "US"), cardLine(one, "en", "metric")]),
      ]),
    ),
  );
}

test("after a print and one changed cell exactly the vines whose line reads otherwise are printed again", async () => {
  const whole = inventedSeason();
  const isKept = ({ block, row }: FarmRow) =>
    block === "North Bench" && (row === undefined || Number(row) <= 2);
  const farm: Farm = {
    ...whole,
    ...{ cordons: whole.cordons.filter(isKept), vines: whole.vines.filter(isKept) },
    blocks: whole.blocks.filter(({ block }) => block === "North Bench"),
  };
  const cardsOfFarm = (changed: Farm) => {
    const season = seasonOfFarm(changed);
    return crewCards(season, decideSeason(season));
  };
  const before = cardsOfFarm(farm);
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  await notePrinted(workbook, before, []);
  const printed = await printedCards(workbook);
  const saidBefore = linesOf(before);
  const random = randomSource(7);
  const pick = (most: number) => random.whole(0, most - 1);
  const cells = [
    ["cordons", "liveSpurs", () => pick(8)],
    ["cordons", "condition", () => "dead"],
    ["cordons", "fixedChoice", () => "stays"],
    ["cordons", "note", () => "split at the head"],
    ["vines", "status", () => "missing"],
    ["vines", "liveTrunks", () => 1],
    ["vines", "pruningWeight", () => random.number(0.3, 1.3, 1)],
    ["blocks", "nodeRule", () => "35"],
  ] as const;
  const changedPerDraw: number[] = [];
  for (let draw = 0; draw < 40; draw++) {
    const [sheet, column, value] = cells[draw % cells.length];
    const at = pick(farm[sheet].length);
    const rows = farm[sheet].map((row, index) => (index === at ? { ...row, [column]: value() } : row));
    const now = cardsOfFarm({ ...farm, [sheet]: rows });
    const differs = [...linesOf(now)].filter(([name, line]) => saidBefore.get(name) !== line);
    expect(namesOf(printed.changed(now).cards)).toEqual(differs.map(([name]) => name).sort());
    changedPerDraw.push(differs.length);
  }
  // some changes matter to no crew, some to one vine, and the rule of a block to many
  expect(Math.min(...changedPerDraw)).toBe(0);
  expect(changedPerDraw).toContain(1);
  expect(Math.max(...changedPerDraw)).toBeGreaterThan(50);
});

test("a note that somebody else garbled is passed over", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  const cards = cardsOf(...vine(1, 7));
  await workbook.writeFlag("printed.x", "{not json");
  expect(await printedOf(workbook, cards)).toEqual([false]);
  await notePrinted(workbook, cards, []);
  expect(await printedOf(workbook, cards)).toEqual([true]);
});
