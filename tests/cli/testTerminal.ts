import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { runCommand } from "../../src/cli/runCommand";
import type { ExitCode, Terminal } from "../../src/cli/terminal";
import { serialOf } from "../../src/survey/reading/serialDate";

/** What a run of the command line left behind. */
export interface Run {
  readonly exitCode: ExitCode;
  readonly out: string;
  readonly told: string;
}

/** Runs a command line with a terminal that only remembers; the day is the last of the sample season. */
export async function run(words: readonly string[], input: Uint8Array = new Uint8Array()): Promise<Run> {
  const out: string[] = [];
  const told: string[] = [];
  const terminal: Terminal = {
    language: "en",
    today: serialOf(2026, 3, 31)!,
    watched: false,
    print: (line) => out.push(line),
    written: async () => undefined,
    tell: (line) => told.push(line),
    progress: () => undefined,
    supplied: (name) => readFile(join("sample-workbooks", name)),
    standardInput: async () => input,
  };
  const exitCode = await runCommand(words, terminal);
  return { exitCode, out: out.join("\n"), told: told.join("\n") };
}
