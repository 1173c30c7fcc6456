import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { say, type Language } from "../texts/language";
import type { Command } from "./command";

/** How the program is started in every example. */
const PROGRAM = "npm run -s cordonbook --";
const NAME_WIDTH = 12;
const OPTION_WIDTH = 30;

/** The help of the whole program: its commands and the exit codes. */
export function programHelp(commands: ReadonlyMap<string, Command>, language: Language): string[] {
  return [
    say(COMMAND_LINE.usage, language, { program: PROGRAM }),
    "",
    ...[...commands].map(
      ([name, command]) => `  ${name.padEnd(NAME_WIDTH)}${say(command.summary, language)}`,
    ),
    "",
    say(COMMAND_LINE.moreHelp, language, { program: PROGRAM }),
    say(COMMAND_LINE.exitCodes, language),
    say(COMMAND_LINE.caution, language),
  ];
}

/** The help of one command, with examples that can be copied. */
export function commandHelp(name: string, command: Command, language: Language): string[] {
  const options = [
    ...Object.entries(command.options),
    ["language", { value: "en|es|fr", meaning: OPTION_TEXTS.language }] as const,
  ];
  return [
    `${PROGRAM} ${name} ${command.takes}`,
    say(command.summary, language),
    "",
    ...options.map(([option, { value, meaning }]) =>
      `  --${option}${value ? ` ${value}` : ""}`.padEnd(OPTION_WIDTH).concat(say(meaning, language)),
    ),
    "",
    ...command.examples.map((example) => `  ${PROGRAM} ${example}`),
  ];
}
