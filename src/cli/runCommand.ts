import { parseArgs } from "node:util";
import { Refusal } from "../domain/refusal";
import { COMMAND_LINE } from "../texts/commandLine";
import { LANGUAGES, say, type Language } from "../texts/language";
import { REFUSALS } from "../texts/refusals";
import { WORKBOOK_PROBLEMS } from "../texts/workbook";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import { CommandProblem, parserOptions, type Command, type OptionValues } from "./command";
import { COMMANDS } from "./commands";
import { commandHelp, programHelp } from "./helpLines";
import { harmless, printable, type ExitCode, type Terminal } from "./terminal";

/**
 * Runs the words of a command line. What cannot be done is told in one sentence with exit code 2; only a mistake of the
 * program itself is thrown.
 */
export async function runCommand(words: readonly string[], raw: Terminal): Promise<ExitCode> {
  const terminal = harmless(raw);
  let { language } = terminal;
  try {
    const [name = "", ...rest] = words;
    if (name === "" || name === "help" || name === "--help" || name === "-h")
      return help(rest, terminal, name);
    const command = COMMANDS.get(name);
    if (!command)
      throw new CommandProblem("unknownCommand", { command: name, commands: [...COMMANDS.keys()] });
    const { values, positionals } = parsed(name, command, rest);
    language = languageGiven(values) ?? language;
    const own: Terminal = { ...terminal, language };
    if (values.help) return help([name], own, "help");
    if (positionals.length < command.least || positionals.length > command.most)
      throw new CommandProblem("wrongWords", { command: name, takes: command.takes });
    return await command.run(positionals, values, own);
  } catch (problem) {
    const sentence = problemSentence(problem, language);
    if (sentence === undefined) throw problem;
    terminal.progress(1);
    terminal.tell(printable(sentence));
    return 2;
  }
}

function help(words: readonly string[], terminal: Terminal, name: string): ExitCode {
  const command = COMMANDS.get(words[0]);
  const lines = command
    ? commandHelp(words[0], command, terminal.language)
    : programHelp(COMMANDS, terminal.language);
  for (const line of lines) terminal.print(line);
  return name === "" ? 2 : 0;
}

function parsed(
  name: string,
  command: Command,
  words: readonly string[],
): { values: OptionValues; positionals: string[] } {
  const options = parserOptions(command);
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true });
    for (const [option, { words: accepted, not = [] }] of Object.entries(command.options)) {
      const given = (values as OptionValues)[option];
      const other = given && not.find((each) => (values as OptionValues)[each]);
      if (other) throw new CommandProblem("oneOption", { one: option, other });
      if (accepted && given !== undefined && !accepted.includes(String(given)))
        throw new CommandProblem("badOptionWord", { option, given: String(given), words: accepted });
    }
    return { values: values as OptionValues, positionals };
  } catch (error) {
    if (error instanceof CommandProblem) throw error;
    const [, given = ""] = /['"](-[^'"]*)['"]/.exec((error as Error).message) ?? [];
    throw new CommandProblem("badOption", {
      command: name,
      given,
      options: Object.keys(options).map((option) => `--${option}`),
    });
  }
}

function languageGiven({ language }: OptionValues): Language | undefined {
  if (language === undefined) return undefined;
  const found = LANGUAGES.find((known) => known === language);
  if (!found)
    throw new CommandProblem("badOptionWord", {
      option: "language",
      given: String(language),
      words: LANGUAGES,
    });
  return found;
}

/** The sentence for a problem that somebody foresaw; undefined for a mistake of the program. */
function problemSentence(problem: unknown, language: Language): string | undefined {
  if (problem instanceof CommandProblem) return say(COMMAND_LINE[problem.code], language, problem.facts);
  if (problem instanceof WorkbookProblem && problem.code in WORKBOOK_PROBLEMS)
    return say(WORKBOOK_PROBLEMS[problem.code], language, problem.facts);
  if (problem instanceof Refusal && problem.code in REFUSALS)
    return say(REFUSALS[problem.code], language, problem.facts);
  return undefined;
}
