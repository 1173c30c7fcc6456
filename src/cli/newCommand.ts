import { basename } from "node:path";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { emptySeasonFile } from "../texts/emptySeasonFile";
import { say } from "../texts/language";
import { FileWorkbook } from "../workbook/file/fileWorkbook";
import { saveNew } from "../workbook/file/saveFile";
import { CommandProblem, type Command } from "./command";

/** An empty workbook for a farm. It never writes over a file. */
export const NEW_COMMAND: Command = {
  takes: "FILE.xlsx",
  summary: COMMAND_LINE.newSummary,
  examples: [
    'new season-2027.xlsx --farm "Larkmoor Bend Vineyard (invented)"',
    "new temporada.xlsx --units metric",
  ],
  options: {
    farm: { type: "string", value: "NAME", meaning: OPTION_TEXTS.farm },
    units: { type: "string", value: "US|metric", words: ["US", "metric"], meaning: OPTION_TEXTS.newUnits },
  },
  least: 1,
  most: 1,
  async run([path], options, terminal) {
    const file = basename(path);
    if (!/\.xlsx$/i.test(file)) throw new CommandProblem("notAWorkbookName", { file });
    const supplied = emptySeasonFile(options.units === "metric" ? "metric" : "US", terminal.language);
    const workbook = await FileWorkbook.open(file, await terminal.supplied(supplied));
    if (options.farm !== undefined && String(options.farm).trim() !== "") {
      const [first] = await workbook.sheetNames();
      await workbook.writeCells(first, [{ row: 1, column: 1, value: String(options.farm).trim() }]);
    }
    await saveNew(path, workbook.bytes());
    terminal.print(say(COMMAND_LINE.saved, terminal.language, { file: path }));
    return 0;
  },
};
