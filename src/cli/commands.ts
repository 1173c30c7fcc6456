import { COMMAND_LINE } from "../texts/commandLine";
import { CHECK_COMMAND } from "./checkCommand";
import type { Command } from "./command";
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
export const COMMANDS: ReadonlyMap<string, Command> = new Map([
  ["check", CHECK_COMMAND],
  ["formula", FORMULA_COMMAND],
]);
