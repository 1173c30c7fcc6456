import { sortFindings } from "../../survey/checks/setAside";
import { isAsked } from "../../survey/decide/isAsked";
import { isCounted, seasonStands } from "../../survey/decide/plan/seasonStands";
import { printedCards } from "../../workbook/actions/printedCards";
import { readAside } from "../../workbook/actions/setAside";
import { changePage } from "../changePage";
import { crewOf } from "../crew/crewOf";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";

/** Reads, checks and decides what the workbook holds now, and makes the picture of where the work stands. */
export async function pictureSeason(pane: Pane, signal: AbortSignal): Promise<void> {
  const first = pane.state.season.picture === undefined;
  try {
    const reading = await readDecisions(pane, signal, (progress) => {
      if (first) changePage(pane, "season", { progress });
    });
    const { season, version, vines } = reading;
    const findings = await pane.held.check(reading, pane.today, signal);
    const { open } = sortFindings(findings, await readAside(pane.workbook));
    const wrong = open.filter(({ severity }) => severity === "wrong");
    const isPrinted = await printedCards(pane.workbook);
    const { cards, work } = crewOf(pane, reading);
    const crew = { cards: vines.some(isCounted) ? cards : [], work };
    const stands = pane.held.timed("stands", () => seasonStands(season, vines, wrong, crew, isPrinted));
    const picture = {
      ...stands,
      season,
      rowsUsed: season.used.account(),
      firstAsked: vines.find((vine) => isCounted(vine) && isAsked(vine)),
    };
    changePage(pane, "season", { version, picture });
    if (first) performance.mark("cordonbook-season");
  } finally {
    changePage(pane, "season", { progress: undefined });
  }
}
