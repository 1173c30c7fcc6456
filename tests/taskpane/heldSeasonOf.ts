import { HeldSeason } from "../../src/taskpane/heldSeason";
import { HeldSheets } from "../../src/taskpane/heldSheets";
import type { Season } from "../../src/survey/season/season";
import type { SurveyWorkbook } from "../../src/workbook/surveyWorkbook";

/** The season of a workbook, held as the pane holds it. */
export function heldSeasonOf(workbook: SurveyWorkbook, onVersion: () => void = () => {}): HeldSeason {
  return new HeldSeason(new HeldSheets(workbook, onVersion));
}

/** The season of a workbook as it is now, read as the pane reads it. */
export async function seasonOf(workbook: SurveyWorkbook): Promise<Season> {
  const held = heldSeasonOf(workbook);
  const { season } = await held.read();
  await held.stop();
  return season;
}
