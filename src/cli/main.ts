import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { languageOfLocale, say } from "../texts/language";
import { COMMAND_LINE } from "../texts/commandLine";
import { serialOf } from "../survey/reading/serialDate";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import { runCommand } from "./runCommand";
import type { Terminal } from "./terminal";

const language = languageOfLocale(process.env);
const watched = process.stderr.isTTY === true;
let shown = "";

const terminal: Terminal = {
  language,
  today: todaysSerial(new Date()),
  watched,
  print: (line) => process.stdout.write(`${line}\n`),
  written: async () => {
    if (process.stdout.writableNeedDrain) await once(process.stdout, "drain");
  },
  tell: (line) => process.stderr.write(`${line}\n`),
  progress: (done) => {
    if (!watched) return;
    const next = done >= 1 ? "" : `${Math.floor(done * 100)} %`;
    if (next === shown) return;
    process.stderr.write(`\r${next.padEnd(shown.length)}${done >= 1 ? "\r" : ""}`);
    shown = next;
  },
  supplied: (name) => readFile(new URL(`../../sample-workbooks/${name}`, import.meta.url)),
  standardInput: wholeInput,
};

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(process.exitCode ?? 0);
  throw error;
});

runCommand(process.argv.slice(2), terminal).then(
  (exitCode) => {
    process.exitCode = exitCode;
  },
  (error: unknown) => {
    terminal.tell(say(COMMAND_LINE.ownMistake, language));
    console.error(error);
    process.exitCode = 3;
  },
);

const MOST_INPUT_MEGABYTES = 20;

/** What comes in on standard input, which is held in memory with all that is made of it; a file is read row by row. */
async function wholeInput(): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of process.stdin as AsyncIterable<Uint8Array>) {
    length += piece.length;
    if (length > MOST_INPUT_MEGABYTES * 1024 ** 2)
      throw new WorkbookProblem("inputTooLarge", { file: "-", most: MOST_INPUT_MEGABYTES });
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

function todaysSerial(now: Date): number {
  return serialOf(now.getFullYear(), now.getMonth() + 1, now.getDate())!;
}
