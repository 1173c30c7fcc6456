import { sortFindings } from "../../survey/checks/setAside";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { isCounted, seasonStands, type SeasonStands } from "../../survey/decide/plan/seasonStands";
import { printedCards, type PrintedCards } from "../../workbook/actions/printedCards";
import { readAside } from "../../workbook/actions/setAside";
import { crewOf } from "../crew/crewOf";
import type { SeasonReading } from "../heldSeason";
import type { Pane } from "../pane";

/** How far the work is by what the workbook holds now, and the cards as they were printed last. */
export async function standsNow(
  pane: Pane,
  reading: SeasonReading & { readonly vines: readonly DecidedVine[] },
  signal: AbortSignal,
): Promise<{ stands: SeasonStands; printed: PrintedCards }> {
  const findings = await pane.held.check(reading, pane.today, signal);
  const { open } = sortFindings(findings, await readAside(pane.workbook));
  const wrong = open.filter(({ severity }) => severity === "wrong");
  const printed = await printedCards(pane.workbook);
  const { cards, work } = crewOf(pane, reading);
  const crew = { cards: reading.vines.some(isCounted) ? cards : [], work };
  const stands = pane.held.timed("stands", () =>
    seasonStands(reading.season, reading.vines, wrong, crew, (card) => printed.isPrinted(card)),
  );
  return { stands, printed };
}
