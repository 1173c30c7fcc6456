import { gapsOfSeason, type SurveyRowGaps } from "../survey/season/gapsOfSeason";
import { isoDay } from "../survey/reading/serialDate";
import { stayingCordons } from "../survey/decide/stayingCordons";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { gapMapSheet, rowGapsSheet } from "../workbook/results/gapSheets";
import { decided } from "./chooseCommand";
import { jsonText } from "../workbook/withoutControls";
import type { Command } from "./command";
import { printCsv, printTable } from "./printTable";
import { mustHaveRows, readSeasonInputs } from "./readSurveyInputs";
import { isSaved, SAVE_OPTIONS, saveResult } from "./saveResult";
import { FORMAT_OPTION, formatOf, READING_OPTIONS } from "./sharedOptions";
import { exitOf, readingData, tellAccount } from "./tellAccount";
import { placeName } from "../texts/placeName";

/** Gaps on the wire, row by row. */
export const GAPS_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.gapsSummary,
  examples: [
    "gaps sample-workbooks/larkmoor-clean.xlsx",
    "gaps season.xlsx --of staying --format csv",
    "gaps season.xlsx --in-place",
  ],
  options: {
    of: { type: "string", value: "all|staying", words: ["all", "staying"], meaning: OPTION_TEXTS.of },
    ...FORMAT_OPTION,
    ...SAVE_OPTIONS,
    ...READING_OPTIONS,
  },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const { inputs, season, gaps } =
      options.of === "staying"
        ? await decided(words, options, terminal).then(({ vines, ...read }) => ({
            ...read,
            gaps: gapsOfSeason(read.season, stayingCordons(vines)),
          }))
        : await readSeasonInputs(words, options, terminal).then((read) => {
            mustHaveRows(read.season, read.inputs);
            return { ...read, gaps: gapsOfSeason(read.season) };
          });
    terminal.progress(1);
    const date = isoDay(terminal.today);
    const sheet = rowGapsSheet(gaps, terminal.language, date);
    const sheets = [sheet, gapMapSheet(gaps, terminal.language, date)];
    if (isSaved(options)) await saveResult(inputs, season, { sheets }, "gaps", options, terminal);
    const format = formatOf(options);
    if (format === "json")
      terminal.print(
        jsonText({
          reading: readingData(season, inputs, terminal),
          ...gaps,
          rows: gaps.rows.map(namedRow),
        }),
      );
    else if (format === "csv") printCsv(sheet, season, inputs, terminal);
    else {
      printTable(sheet, terminal);
      tellAccount(season, inputs, terminal);
    }
    return exitOf(false, season, inputs);
  },
};

/** A row with its labels, and those of its vines. */
const namedRow = (row: SurveyRowGaps) => ({
  ...row,
  row: placeName(row.row),
  byVine: row.byVine.map((vine) => ({ ...vine, vine: placeName(vine.vine) })),
});
