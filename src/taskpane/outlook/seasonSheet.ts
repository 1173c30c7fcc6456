import {
  readWinterCells,
  WINTER_COLUMNS,
  winterCells,
  winterHeadRow,
  withWinter,
  type WinterRow,
} from "../../survey/season/winterRows";
import { LANGUAGES, say, type Language } from "../../texts/language";
import { SEASON_SHEET } from "../../texts/season";
import { SEASONS_TEXTS } from "../../texts/seasons";
import type { OwnSheet, SurveyWorkbook } from "../../workbook/surveyWorkbook";

/** The Winters sheet as it stands. */
export interface KeptSeasons {
  readonly sheet: string;
  readonly rows: readonly WinterRow[];
  /** Lines below the heads that are filled but cannot be read as a row of a winter. */
  readonly unreadable: number;
  /** A sheet of that name is there, but no table of winters on it. */
  readonly foreign: boolean;
}

/** Reads the winters that the workbook keeps, under the name of the sheet in any language. */
export async function keptSeasons(workbook: SurveyWorkbook, language: Language): Promise<KeptSeasons> {
  const names = await workbook.sheetNames();
  const sheet = [language, ...LANGUAGES].flatMap((one) => {
    const found = names.find((name) => name.toLowerCase() === SEASON_SHEET[one].toLowerCase());
    return found === undefined ? [] : [found];
  })[0];
  if (sheet === undefined) return { sheet: SEASON_SHEET[language], rows: [], unreadable: 0, foreign: false };
  const { values } = await workbook.readSheet(sheet);
  const rows = readWinterCells(values);
  const head = winterHeadRow(values);
  if (head < 0) return { sheet, rows, unreadable: 0, foreign: values.length > 0 };
  const filled = values.slice(head + 1).filter((row) => row.some((cell) => cell !== null && cell !== ""));
  return { sheet, rows, unreadable: filled.length - rows.length, foreign: false };
}

/** The sheet with earlier winters and this one, which replaces its own rows. */
export function seasonSheet(
  { sheet, rows }: KeptSeasons,
  now: readonly WinterRow[],
  language: Language,
  date: string,
): OwnSheet {
  const [headers, ...cells] = winterCells(withWinter(rows, now), language);
  return {
    sheet,
    title: [say(SEASONS_TEXTS.sheetTitle, language), say(SEASONS_TEXTS.sheetNote, language, { date })],
    headers: headers.map(String),
    columns: WINTER_COLUMNS.map((column) => ({ width: column === "block" ? 18 : 12 })),
    rows: cells as (string | number)[][],
  };
}

/** True when the sheet holds exactly these rows of their winter. */
export function isKept({ rows }: KeptSeasons, now: readonly WinterRow[]): boolean {
  const lines = (some: readonly WinterRow[]) =>
    JSON.stringify(some.map((row) => WINTER_COLUMNS.map((column) => row[column])));
  return now.length > 0 && lines(withWinter(rows, [])) === lines(withWinter(rows, now));
}
