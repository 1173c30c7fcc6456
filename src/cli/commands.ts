import { COMMAND_LINE } from "../texts/commandLine";
import { CHECK_COMMAND } from "./checkCommand";
import { CARDS_COMMAND, CHOOSE_COMMAND } from "./chooseCommand";
import type { Command } from "./command";
import { GAPS_COMMAND } from "./gapsCommand";
import { NEW_COMMAND } from "./newCommand";
import { OUTLOOK_COMMAND } from "./outlookCommand";
import { ROWS_COMMAND } from "./rowsCommand";
import { formulaCommand } from "./formulaCommand";

const FORMULA_COMMAND: Command = {
  takes: "FORMULA",
  summary: COMMAND_LINE.formulaSummary,
  examples: [
    `formula '=CORDON.NODEBUDGET(3,"30+10")'`,
    "formula '=CORDON.VINEDENSITY(9,6)'",
    "formula '=CORDON.BUDINJURY(15,148)'",
  ],
  options: {},
  least: 1,
  most: 1,
  async run([formula], _options, terminal) {
    const { lines, exitCode } = formulaCommand(formula, terminal.language);
    for (const line of lines) terminal.print(line);
    return exitCode;
  },
};

/** Every command by its word. */
export const COMMANDS: ReadonlyMap<string, Command> = new Map<string, Command>([
  ["check", CHECK_COMMAND],
  ["choose", CHOOSE_COMMAND],
  ["gaps", GAPS_COMMAND],
  ["crop", OUTLOOK_COMMAND],
  ["cards", CARDS_COMMAND],
  ["new", NEW_COMMAND],
  ["rows", ROWS_COMMAND],
  ["formula", FORMULA_COMMAND],
]);
