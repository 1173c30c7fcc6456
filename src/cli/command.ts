import type { ParseArgsConfig } from "node:util";
import type { Text } from "../texts/language";
import type { ExitCode, Terminal } from "./terminal";

/** The options of a command as they were given, checked against the command's own list. */
export type OptionValues = Readonly<Record<string, string | boolean | undefined>>;

/** A word of the command line and what it does. */
export interface Command {
  /** What stands behind the command: "FILE...", "FORMULA". */
  readonly takes: string;
  readonly summary: Text;
  /** Worked examples, without the program's own name. */
  readonly examples: readonly string[];
  /** Options beside --language and --help, with what each means. */
  readonly options: Readonly<Record<string, CommandOption>>;
  readonly least: number;
  readonly most: number;
  run(words: readonly string[], options: OptionValues, terminal: Terminal): Promise<ExitCode>;
}

export interface CommandOption {
  readonly type: "string" | "boolean";
  /** What the option takes, as the help shows it: "text|json|csv". */
  readonly value?: string;
  /** The words that it accepts, where they are few. */
  readonly words?: readonly string[];
  readonly meaning: Text;
  /** Options that it contradicts. */
  readonly not?: readonly string[];
}

/** A command's options in the form of node:util's parseArgs. */
export function parserOptions(command: Command): NonNullable<ParseArgsConfig["options"]> {
  return {
    language: { type: "string" },
    help: { type: "boolean", short: "h" },
    ...Object.fromEntries(Object.entries(command.options).map(([name, { type }]) => [name, { type }])),
  };
}

/** Thrown by a command when the words given to it make no sense; the sentence is in src/texts/commandLine.ts. */
export class CommandProblem extends Error {
  constructor(
    readonly code: string,
    readonly facts: Readonly<Record<string, string | number | readonly string[]>> = {},
  ) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = "CommandProblem";
  }
}
