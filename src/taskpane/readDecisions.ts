import { decideSeason, type DecidedVine } from "../survey/decide/decideSeason";
import type { Season } from "../survey/season/season";
import { CHECK_TEXTS, DECIDE_TEXTS } from "../texts/pane";
import { readHeads } from "../workbook/actions/ownHeads";
import { readTables } from "./check/readTables";
import { inSlices } from "./inSlices";
import type { Pane } from "./pane";
import { UPKEEP_TEXTS } from "../texts/upkeep";
import type { CellChange } from "../workbook/surveyWorkbook";
import type { Progress } from "./progress";

/** Share of the progress bar that reading takes; deciding takes the rest. */
const READING = 0.5;
/** Vines between two steps of the progress bar. */
const VINES_A_STEP = 100;

/** Reads the survey of the workbook. */
export async function readSeasonOf(
  pane: Pane,
  signal: AbortSignal,
  onProgress: (progress: Progress) => void,
): Promise<Season> {
  const { season, metOnTheWay } = await readTables(pane.workbook, {
    mapping: await readHeads(pane.workbook),
    signal,
    onProgress: (sheet, done) => onProgress({ text: pane.say(CHECK_TEXTS.reading, { sheet }), done }),
  });
  tellOfColleagues(pane, metOnTheWay);
  return season;
}

/** Says that a colleague's edits made a run read again. */
export function tellOfColleagues(pane: Pane, met: readonly CellChange[]): void {
  const sheets = [...new Set(met.map(({ sheet }) => sheet))];
  if (sheets.length > 0) pane.tell("info", UPKEEP_TEXTS.readAgain, { sheets });
}

/** Reads the survey and decides every vine, in slices. */
export async function readDecisions(
  pane: Pane,
  signal: AbortSignal,
  onProgress: (progress: Progress) => void,
): Promise<{ season: Season; vines: DecidedVine[] }> {
  const season = await readSeasonOf(pane, signal, ({ text, done }) =>
    onProgress({ text, done: done * READING }),
  );
  const rows = season.tables("cordons").reduce((sum, table) => sum + table.rowCount, 0);
  const text = pane.say(DECIDE_TEXTS.deciding);
  const vines: DecidedVine[] = [];
  let seen = 0;
  await inSlices(
    decideSeason(season),
    (vine) => {
      vines.push(vine);
      seen += vine.rows.length;
      if (vines.length % VINES_A_STEP === 0)
        onProgress({ text, done: READING + (1 - READING) * (seen / rows) });
    },
    signal,
  );
  return { season, vines };
}
