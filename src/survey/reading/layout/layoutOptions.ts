import type { SheetId } from "../../sheets/column";
import type { ReadingAnswers } from "../readingAccount";

/** What is known before a sheet is looked at. */
export interface LayoutOptions {
  /** Which sheet of ours it is, where a formula tells that of its range. */
  readonly told?: SheetId;
  readonly answers: ReadingAnswers;
  /** The winter that most dates of the workbook tell, for heads that name a year. */
  readonly winter: number | undefined;
  /** Block names that are written in other sheets. */
  readonly knowsBlock: (name: string) => boolean;
}

export const KEYS = ["block", "row", "vine"] as const;

/** What was answered for every row of a sheet; of "" what holds where a sheet itself tells nothing. */
export function constantsOf({ answers }: LayoutOptions, sheet: string): Record<string, string | number> {
  return Object.fromEntries(
    (answers.constants ?? [])
      .filter((constant) => constant.sheet === sheet)
      .map(({ column, value }) => [column, value]),
  );
}
