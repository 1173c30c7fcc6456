import type { TextFacts } from "../../texts/language";
import { HEADER, type CheckContext, type FindingKind, type FindingRow, type Report } from "./check";
import { CHECKS } from "./checks";
import type { Finding } from "./finding";
import type { Season, SurveyColumn, SurveyTable } from "../season/season";
import { choiceId } from "../season/vinePlaces";
import { placeName } from "../../texts/placeName";

export interface CheckOptions {
  /** Spreadsheet serial of the day of the check; without it nothing is said about dates in the future. */
  readonly today?: number;
  /** Rows judged between two ticks; 5,000 when left out. */
  readonly slice?: number;
  /** Ids of the checks to run; all when left out. */
  readonly only?: readonly string[];
}

/** A finding, or a tick that says how far the check has come, 0 to 1. */
export type CheckStep =
  | { readonly finding: Finding; readonly done?: undefined }
  | { readonly done: number; readonly finding?: undefined };

/**
 * Checks a survey and hands out findings one by one, with a tick after every slice of rows, so that a page can let go
 * of the machine between two of them. Findings come check by check; sort them with `inSheetOrder` to show them.
 */
export function* checkSeason(season: Season, options: CheckOptions = {}): Generator<CheckStep, void, void> {
  const slice = options.slice ?? 5000;
  const context = contextOf(season, options.today);
  const checks = CHECKS.filter((check) => !options.only || options.only.includes(check.id));
  const jobs = checks.flatMap((check) =>
    check.sheets.flatMap((id) => season.tables(id).map((table) => ({ table, check }))),
  );
  const total = jobs.reduce((rows, { table }) => rows + table.rowCount + 1, 0);
  let done = 0;
  const found: Finding[] = [];
  for (const { table, check } of jobs) {
    const judge = check.prepare(table, context);
    const report = reporter(season, table, (finding) => found.push(finding));
    for (let from = 0; from === 0 || from < table.rowCount; from += slice) {
      const to = Math.min(from + slice, table.rowCount);
      judge?.(from, to, report);
      for (const finding of found) yield { finding };
      found.length = 0;
      done += to - from;
      if (judge) yield { done: done / total };
    }
    done++;
  }
  yield { done: 1 };
}

/** All findings of a survey at once, in the order of the sheets. */
export function allFindings(season: Season, options: CheckOptions = {}): Finding[] {
  const findings: Finding[] = [];
  for (const step of checkSeason(season, options)) if (step.finding) findings.push(step.finding);
  return inSheetOrder(findings, season);
}

/** Findings by sheet, row and column, as a person works them off. */
export function inSheetOrder(findings: readonly Finding[], season: Season): Finding[] {
  const order = new Map(season.allTables.map((table, index) => [table.sheet, index]));
  return [...findings].sort(
    (a, b) =>
      (order.get(a.sheet) ?? 0) - (order.get(b.sheet) ?? 0) ||
      a.row - b.row ||
      a.columnNumber - b.columnNumber,
  );
}

/** What the checks may know: today, the settings, the register. */
export function contextOf(season: Season, today: number | undefined): CheckContext {
  return {
    season,
    today,
    places: season.places,
  };
}

/** Makes findings of a table's rows and hands them on. */
export function reporter(season: Season, table: SurveyTable, take: (finding: Finding) => void): Report {
  return (kind, row, column, facts) => take(makeFinding(season, table, kind, row, column, facts));
}

function makeFinding(
  season: Season,
  table: SurveyTable,
  kind: FindingKind,
  row: FindingRow,
  column: Pick<SurveyColumn, "header" | "sheetColumn"> | undefined,
  facts: TextFacts = {},
): Finding {
  const index = typeof row === "number" ? row : HEADER;
  return {
    code: kind.code,
    severity: kind.severity,
    sheet: table.sheet,
    row: typeof row !== "number" ? row.sheetRow : index === HEADER ? table.headerRow : table.sheetRow(index),
    columnNumber: column?.sheetColumn ?? 0,
    column: column?.header ?? "",
    facts: index === HEADER ? facts : { ...placeFacts(season, table, index), ...facts },
  };
}

function placeFacts(season: Season, table: SurveyTable, index: number): Record<string, string | number> {
  const facts: Record<string, string | number> = {};
  for (const id of ["block", "cordon", "countedBy"]) {
    const code = table.column(id)?.codes[index] ?? -1;
    if (code >= 0) facts[id] = season.words.wordOf(code);
  }
  for (const id of ["row", "vine"]) {
    const value = table.column(id)?.numbers[index] ?? NaN;
    if (!Number.isNaN(value)) facts[id] = placeName(value);
  }
  const side = table.column("side");
  const sideId = side && choiceId(side, index);
  if (sideId) facts["side"] = sideId;
  return facts;
}
