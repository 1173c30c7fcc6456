import { EXCEL_REPORT_TEXTS as TEXTS } from "../../texts/excelReport";
import { say, type Language, type Text } from "../../texts/language";
import { EXCEL_FLOOR } from "../excel/excelFloor";
import { REPORT_PAGES, type ReportRow } from "../excel/reportPages";
import type { OwnSheet } from "../surveyWorkbook";

/** A line of the report in words: what was tried, expected and seen, the result, and the page that says so. */
export function reportLine(row: ReportRow, language: Language): string[] {
  const { tried, expected }: { tried: Text; expected: Text } = TEXTS.rows[row.id];
  const others: Partial<Record<string, Text>> = TEXTS.otherwise;
  const sets = EXCEL_FLOOR.map(({ set, version }) => `${set} ${version}`).join(", ");
  return [
    tried[language],
    say((row.otherwise && others[row.id]) || expected, language, { sets }),
    say(TEXTS.says[row.says], language, { shows: row.shows }),
    TEXTS.outcomes[row.outcome][language],
    REPORT_PAGES[row.id],
  ];
}

/** How many lines came out how, in a sentence. */
export function reportCounts(rows: readonly ReportRow[], language: Language): string {
  const count = (outcome: ReportRow["outcome"]) => rows.filter((row) => row.outcome === outcome).length;
  return say(TEXTS.counts, language, {
    same: count("same"),
    different: count("different"),
    notTried: count("notTried"),
  });
}

/** The report about an Excel as a sheet, a line for each thing that was tried. */
export function excelReportSheet(
  rows: readonly ReportRow[],
  options: { readonly language: Language; readonly date: string; readonly version: string },
): OwnSheet {
  const { language, date, version } = options;
  const { tried, expected, seen, outcome, page } = TEXTS.heads;
  return {
    sheet: TEXTS.sheet[language],
    title: [
      TEXTS.title[language],
      say(TEXTS.made, language, { date, version }),
      reportCounts(rows, language),
    ],
    headers: [tried, expected, seen, outcome, page].map((head) => head[language]),
    columns: [
      { width: 34, wrap: true },
      { width: 34, wrap: true },
      { width: 30, wrap: true },
      { width: 12 },
      { width: 60 },
    ],
    rows: rows.map((row) => reportLine(row, language)),
  };
}

/** The same as text, with tabs between the columns: for a letter, or for another sheet. */
export function excelReportText({ title = [], headers, rows }: OwnSheet): string {
  return [...title, headers.join("\t"), ...rows.map((row) => row.join("\t"))].join("\n");
}
