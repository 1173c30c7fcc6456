import { COMMAND_LINE } from "../texts/commandLine";
import { languageOf, say } from "../texts/language";
import { formulaCommand } from "./formulaCommand";

/** What a command leaves behind: 0 clean or a value, 1 findings or an error value, 2 cannot do it. */
interface Answer {
  readonly lines: readonly string[];
  readonly exitCode: 0 | 1 | 2;
}

const language = languageOf(process.env.LANG);

const COMMANDS: Readonly<Record<string, (words: readonly string[]) => Answer>> = {
  formula: (words) =>
    words.length === 1
      ? formulaCommand(words[0], language)
      : refused("formulaUsage", { example: `'=CORDON.NODEBUDGET(3,"30+10")'` }),
};

function refused(code: string, facts: Readonly<Record<string, string | readonly string[]>>): Answer {
  return { lines: [say(COMMAND_LINE[code], language, facts)], exitCode: 2 };
}

const [command = "", ...words] = process.argv.slice(2);
const answer =
  COMMANDS[command]?.(words) ?? refused("unknownCommand", { command, commands: Object.keys(COMMANDS) });
const print = answer.exitCode === 2 ? console.error : console.log;
for (const line of answer.lines) print(line);
process.exitCode = answer.exitCode;
