import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { columnName, rowValue } from "../../../src/cli/rowsCommand";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { withAnswers, type ReadingAnswers } from "../../../src/survey/reading/readingAccount";
import type { Season } from "../../../src/survey/season/season";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";

export const FOREIGN = join(__dirname, "sheets");

/** A row by the columns of `rows`; a column that a sheet lacks is left out. */
export type CountedRow = Readonly<Record<string, string | number | null>>;

/** What the crew counted, metric, in the order of its walk. */
export const TRUTH: readonly CountedRow[] = Papa.parse<Record<string, string>>(
  readFileSync(join(FOREIGN, "truth.csv"), "utf8").trim(),
  { header: true },
).data.map((row) =>
  Object.fromEntries(
    Object.entries(row).map(([column, cell]) => [column, /^-?[\d.]+$/.test(cell) ? Number(cell) : cell]),
  ),
);

/** The season in a workbook of the folder as the command line reads it. */
export async function readForeign(file: string, answers: ReadingAnswers = {}): Promise<Season> {
  const book = await openWorkbookBytes(file, readFileSync(join(FOREIGN, file)));
  const sheets = book.sheetNames.map((sheet) => ({
    sheet,
    rows: (onEnd?: Parameters<typeof book.rows>[1]) => book.rows(sheet, onEnd),
  }));
  return readLargeSeason(sheets, { answers });
}

/** The first answer to each question that has one. */
export function firstAnswers({ account }: Season): ReadingAnswers {
  return account.questions.reduce<ReadingAnswers>(
    (all, { proposals }) => withAnswers(all, proposals[0] ?? {}),
    {},
  );
}

/** Every row of this winter's cordons as `rows` writes it. */
export function rowsRead(season: Season): CountedRow[] {
  return season
    .tables("cordons")
    .flatMap((table) =>
      Array.from({ length: table.rowCount }, (_, i) =>
        Object.fromEntries(
          table.columns
            .filter(({ column }) => column.id !== "note")
            .map((column) => [columnName(column.column.id), rowValue(column, i, season.words)]),
        ),
      ),
    );
}

/** What is wrong with rows that were read: values that nobody counted, rows too many; and what is missing of the true ones. */
export function againstTruth(
  read: readonly CountedRow[],
  truth: readonly CountedRow[],
  roughly = 0.0001,
): { wrong: string[]; missing: string[] } {
  const wrong: string[] = [];
  const missing: string[] = [];
  const found = inPlaces(read);
  for (const [place, row] of inPlaces(truth)) {
    const own = found.get(place);
    if (!own) {
      missing.push(place);
      continue;
    }
    found.delete(place);
    for (const [column, value] of Object.entries(row)) {
      const got = own[column];
      if (got === undefined || column === "block") continue;
      if (got === null) {
        if (value !== "" && value !== null) missing.push(`${place} ${column}`);
      } else if (!isSame(got, value, roughly))
        wrong.push(`${place} ${column}: ${got}, but ${value} was counted`);
    }
  }
  for (const place of found.keys()) wrong.push(`${place} was never counted`);
  return { wrong, missing };
}

function isSame(one: string | number, other: string | number | null, roughly: number): boolean {
  if (typeof one === "number" && typeof other === "number") return Math.abs(one - other) <= roughly;
  return one === other;
}

/** Rows by their places; candidates of a side are told apart by their order. */
function inPlaces(rows: readonly CountedRow[]): Map<string, CountedRow> {
  const places = new Map<string, CountedRow>();
  const seen = new Map<string, number>();
  for (const row of rows) {
    const block = String(row.block).toLowerCase().replace(/\s+/g, " ");
    const place = [block, row.vine_row, row.vine, row.side].join(" ");
    const which = (seen.get(place) ?? 0) + 1;
    seen.set(place, which);
    places.set(`${place} ${which}`, row);
  }
  return places;
}
