import type { DecidedVine } from "../survey/decide/decideSeason";
import { CHECK_TEXTS, DECIDE_TEXTS } from "../texts/pane";
import type { SeasonReading } from "./heldSeason";
import type { Pane } from "./pane";
import { UPKEEP_TEXTS } from "../texts/upkeep";
import type { CellChange } from "../workbook/surveyWorkbook";
import type { Progress } from "./progress";

/** Share of the progress bar that reading takes; deciding takes the rest. */
const READING = 0.5;
/** Vines between two steps of the progress bar. */
const VINES_A_STEP = 100;

/** Reads the survey of the workbook. */
export function readSeasonOf(
  pane: Pane,
  signal: AbortSignal,
  onProgress: (progress: Progress) => void,
): Promise<SeasonReading> {
  return pane.held.read({
    signal,
    onProgress: (sheet, done) => onProgress({ text: pane.say(CHECK_TEXTS.reading, { sheet }), done }),
  });
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
): Promise<SeasonReading & { readonly vines: readonly DecidedVine[] }> {
  const reading = await readSeasonOf(pane, signal, ({ text, done }) =>
    onProgress({ text, done: done * READING }),
  );
  const rows = reading.season.tables("cordons").reduce((sum, table) => sum + table.rowCount, 0);
  const text = pane.say(DECIDE_TEXTS.deciding);
  let [seen, count] = [0, 0];
  const vines = await pane.held.decide(reading, signal, (vine) => {
    seen += vine.rows.length;
    count += 1;
    if (count % VINES_A_STEP === 0) onProgress({ text, done: READING + (1 - READING) * (seen / rows) });
  });
  return { ...reading, vines };
}
