import type { Language } from "../texts/language";

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

/** Text from a cell without control characters, which a terminal would obey. */
export function printable(text: string): string {
  // eslint-disable-next-line no-control-regex
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, " ");
}
