import { blockOutlook } from "../survey/crop/blockOutlook";
import {
  cropFigureSentence,
  cropLoadSentence,
  shootThinningSentence,
  winterNotes,
} from "../survey/crop/cropNotes";
import { blockCrop } from "../survey/crop/cropWords";
import { ownHarvestsSentence } from "../survey/crop/harvestSentences";
import { outlookInputs } from "../survey/crop/outlookInputs";
import { isoDay } from "../survey/reading/serialDate";
import { COMMAND_LINE } from "../texts/commandLine";
import { OUTLOOK_LACKS, THINNING_GROUPS } from "../texts/outlook";
import { OUTLOOK_TEXTS } from "../texts/pane";
import { outlookSheet } from "../workbook/results/outlookSheet";
import { decided } from "./chooseCommand";
import { jsonText } from "../workbook/withoutControls";
import type { Command } from "./command";
import { printCsv, printTable } from "./printTable";
import { isSaved, SAVE_OPTIONS, saveResult } from "./saveResult";
import { FORMAT_OPTION, formatOf, READING_OPTIONS } from "./sharedOptions";
import { exitOf, readingData, tellAccount } from "./tellAccount";
import { printable } from "./terminal";

/** What the pruning leaves of a crop, block by block and stage by stage: low, likely and high. */
export const OUTLOOK_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.outlookSummary,
  examples: [
    "crop sample-workbooks/larkmoor-clean.xlsx",
    "crop season.xlsx --format csv",
    "crop season.xlsx --save",
  ],
  options: { ...FORMAT_OPTION, ...SAVE_OPTIONS, ...READING_OPTIONS },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const { inputs, season, vines } = await decided(words, options, terminal, ["cordons", "vines"]);
    const { language } = terminal;
    const groups = THINNING_GROUPS.map((name) => name[language]);
    const blocks = outlookInputs(season, { decided: vines }).map((own) =>
      blockOutlook(own, season.settings, groups),
    );
    const sheet = outlookSheet(blocks, language, season.unitSystem, isoDay(terminal.today));
    if (isSaved(options)) await saveResult(inputs, season, { sheets: [sheet] }, "crop", options, terminal);
    const format = formatOf(options);
    if (format === "csv") printCsv(sheet, season, inputs, terminal);
    else if (format === "json")
      terminal.print(
        jsonText({ reading: readingData(season, inputs, terminal), rowsUsed: season.used.account(), blocks }),
      );
    else {
      printTable(sheet, terminal, 16);
      for (const outlook of blocks) {
        const { block, harvests, lacking } = outlook.inputs;
        const shoots = shootThinningSentence(outlook, language);
        for (const sentence of [
          ...winterNotes(outlook, language),
          cropFigureSentence(outlook, language),
          ...(shoots === undefined ? [] : [shoots]),
          ...outlook.cropLoads.map((pair) => cropLoadSentence(pair, language)),
        ])
          terminal.print(printable(`${block}: ${sentence}`));
        if (harvests)
          terminal.print(
            printable(
              `${block}: ${ownHarvestsSentence(harvests, blockCrop(season.unitSystem, language), language)}`,
            ),
          );
        for (const { code } of lacking)
          terminal.print(printable(`${block}: ${OUTLOOK_LACKS[code][language]}`));
      }
      if (blocks.length === 0) terminal.print(OUTLOOK_TEXTS.none[language]);
      tellAccount(season, inputs, terminal);
    }
    return exitOf(false, season, inputs);
  },
};
