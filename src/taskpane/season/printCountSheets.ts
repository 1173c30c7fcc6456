import type { Season } from "../../survey/season/season";
import type { Paper } from "../../workbook/results/cardsHtml";
import { countSheetHtml } from "../../workbook/results/countSheetHtml";
import { printHtml } from "../printHtml";
import type { Pane } from "../pane";

/** Paper for the count sheets: the chosen one, or what goes with the units of the sheets. */
export function paperOf(pane: Pane, season: Season): Paper {
  return pane.state.season.paper ?? (season.unitSystem === "US" ? "Letter" : "A4");
}

/** Prints the empty count sheets for the clipboard. */
export async function printCountSheets(pane: Pane, season: Season): Promise<void> {
  const [cordons] = season.tables("cordons");
  if (cordons === undefined) return;
  await printHtml(countSheetHtml(cordons, { language: pane.state.language, paper: paperOf(pane, season) }));
}
