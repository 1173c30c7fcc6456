import type { TextFacts } from "../../texts/language";
import type { SheetId } from "../sheets/column";
import type { Severity } from "./finding";
import type { Season, SurveyColumn, SurveyTable } from "../season/season";
import type { VinePlaces } from "../season/vinePlaces";

/** What a person does about a finding; findings are grouped by it. */
export type FindingAction = "fillIn" | "correct" | "lookAtVine" | "askCounter" | "mendRegister" | "mendSheet";

/** A kind of finding. Its title, sentence, reason and remedy stand in src/texts/findings.ts by `code`. */
export interface FindingKind {
  readonly code: string;
  readonly severity: Severity;
  readonly action: FindingAction;
}

/** What a check may know beside the table it judges. */
export interface CheckContext {
  readonly season: Season;
  /** Spreadsheet serial of the day of the check; undefined when the caller gave none. */
  readonly today: number | undefined;
  readonly places: VinePlaces;
}

/** Index of the header row, for findings about the table itself. */
export const HEADER = -1;

/** Where a finding stands: a row of the table, its header, or a row of the sheet that is none of the table's. */
export type FindingRow = number | { readonly sheetRow: number };

/** Takes a finding down: the row's place is added to the facts. */
export type Report = (
  kind: FindingKind,
  row: FindingRow,
  column: Pick<SurveyColumn, "header" | "sheetColumn"> | undefined,
  facts?: TextFacts,
) => void;

/** Looks at the rows from `from` up to but without `to`. */
export type Judge = (from: number, to: number, report: Report) => void;

/** One check: one file, its kinds of finding, and a judge for each table it applies to. */
export interface Check {
  readonly id: string;
  readonly kinds: readonly FindingKind[];
  readonly sheets: readonly SheetId[];
  /** "row": the row, its vine and the register suffice, so that it also runs while typing. "survey": needs other rows. */
  readonly scope: "row" | "survey";
  /** Undefined when the table lacks the columns that the check needs. */
  prepare(table: SurveyTable, context: CheckContext): Judge | undefined;
}

/** Every sheet with rows counted in the vineyard. */
export const COUNT_SHEETS: readonly SheetId[] = ["cordons", "vines", "budCuts"];
/** Every sheet but the settings. */
export const DATA_SHEETS: readonly SheetId[] = ["blocks", "cordons", "vines", "budCuts", "harvest"];
