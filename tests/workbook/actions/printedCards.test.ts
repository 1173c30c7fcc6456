import { crewCards, type CrewCard } from "../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { notePrinted, printedCards } from "../../../src/workbook/actions/printedCards";
import { CORDON_HEADS } from "../../survey/cordonHeads";
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

test("a card is printed anew when what the crew is to do has changed, and only then", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  const before = cardsOf(...vine(1, 7), ...vine(2, 7));
  expect(before).toHaveLength(2);
  expect(before.map(await printedCards(workbook))).toEqual([false, false]);
  await notePrinted(workbook, before);
  expect(before.map(await printedCards(workbook))).toEqual([true, true]);
  // The crew pruned row 1 on 10 February 2026, and row 2 has a spur less.
  const after = cardsOf(...vine(1, 7, 46_063), ...vine(2, 6));
  expect(after.map(await printedCards(workbook))).toEqual([true, false]);
  await notePrinted(workbook, after.slice(1));
  expect(after.map(await printedCards(workbook))).toEqual([true, true]);
});

test("a note that somebody else garbled is passed over", async () => {
  const workbook = new MemoryWorkbook({ Cordons: [HEADS] });
  const cards = cardsOf(...vine(1, 7));
  await workbook.writeFlag("printed.x", "{not json");
  expect(cards.map(await printedCards(workbook))).toEqual([false]);
  await notePrinted(workbook, cards);
  expect(cards.map(await printedCards(workbook))).toEqual([true]);
});
