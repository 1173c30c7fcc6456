import * as z from "zod/mini";
import type { CrewCard } from "../../survey/decide/cards/crewCards";
import type { SurveyWorkbook } from "../surveyWorkbook";
import { shortHash } from "./shortHash";

/** A key for each printing, so that two people who print at once lose nothing. */
const PREFIX = "printed.";
const ENTRY = z.record(z.string(), z.string());

/** Notes in the workbook that these cards were printed as they stand. */
export async function notePrinted(workbook: SurveyWorkbook, cards: readonly CrewCard[]): Promise<void> {
  const entry = JSON.stringify(Object.fromEntries(cards.map((card) => [nameOf(card), contentOf(card)])));
  await workbook.writeFlag(PREFIX + shortHash(entry), entry);
}

/** Tells of a card whether it was printed as it stands: a card that says something else by now is to be printed again. */
export async function printedCards(workbook: SurveyWorkbook): Promise<(card: CrewCard) => boolean> {
  const printed = new Set<string>();
  for (const text of (await workbook.readFlags(PREFIX)).values())
    for (const [name, content] of Object.entries(entryOf(text))) printed.add(`${name} ${content}`);
  return (card) => printed.has(`${nameOf(card)} ${contentOf(card)}`);
}

function entryOf(text: string): Readonly<Record<string, string>> {
  try {
    return ENTRY.parse(JSON.parse(text));
  } catch {
    return {};
  }
}

function nameOf({ block, row }: CrewCard): string {
  return shortHash(`${block}|${row}`);
}

/** What the crew does by the card; the day of pruning is written beside it afterwards and changes nothing on it. */
function contentOf({ vines }: CrewCard): string {
  return shortHash(JSON.stringify(vines.map(({ prunedOn: _prunedOn, ...vine }) => vine)));
}
