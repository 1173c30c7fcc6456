import type { Language } from "../texts/language";
import { withoutControls } from "../workbook/withoutControls";

/** What a command knows of the place where it runs; tests give their own. */
export interface Terminal {
  readonly language: Language;
  /** Spreadsheet serial of today. */
  readonly today: number;
  /** True where a person watches, so that progress may be shown. */
  readonly watched: boolean;
  /** One line of the result. */
  print(line: string): void;
  /** Resolves once the lines printed so far have been taken by whoever reads them. */
  written(): Promise<void>;
  /** One line about the run that is no part of the result. */
  tell(line: string): void;
  /** Shows how far a run has come, 0 to 1, in place of what was shown before; 1 clears it. */
  progress(done: number): void;
  /** A workbook that comes with the program, by its file name. */
  supplied(name: string): Promise<Uint8Array>;
  /** Everything that comes in on standard input. */
  standardInput(): Promise<Uint8Array>;
}

/** 0: clean, or a value. 1: findings, or an error value. 2: cannot do what was asked. */
export type ExitCode = 0 | 1 | 2;

/** Text from a cell as part of one line, without what a terminal would obey. */
export function printable(text: string): string {
  return withoutControls(text).replace(/[\t\n]/g, " ");
}

/** The same terminal, to which nothing comes that it would obey. */
export function harmless(terminal: Terminal): Terminal {
  return {
    ...terminal,
    print: (line) => terminal.print(withoutControls(line)),
    tell: (line) => terminal.tell(withoutControls(line)),
  };
}
