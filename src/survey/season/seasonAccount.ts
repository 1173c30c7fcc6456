import { grouped } from "../../domain/grouped";
import type { LeftOut, LeftOutReason } from "../reading/readingAccount";
import type { Season } from "./season";
import { winterOfSeason } from "./winterOfSeason";
import type { RowsUsed } from "./usedRows";

/** How much was read, without Settings and earlier winters. */
export interface SeasonRead {
  readonly files: number;
  readonly sheets: number;
  readonly tables: number;
  readonly columns: number;
  readonly rows: number;
  /** Winters that the counts were taken as, named by the year in which each ends; none where nothing tells. */
  readonly winters?: readonly number[];
}

/** Parts of one kind that were not read. */
export interface NotRead {
  readonly reason: LeftOutReason | OtherLines | FileReason;
  /** Sheets, heads of columns or files. */
  readonly names: readonly string[];
  /** Rows in them, lines of totals; 0 where nobody counted them. */
  readonly rows: number;
}

/** Lines between the rows that are no counts. */
const OTHER_LINES = ["totalLines", "headsAgain", "remarkLines"] as const;
type OtherLines = (typeof OTHER_LINES)[number];

/** Why a file of a folder was passed over. */
export type FileReason = "otherFormat" | "copy";

/** A file of a folder that was passed over. */
export interface PassedOver {
  readonly file: string;
  readonly reason: FileReason;
}

/** What was read and what was not: the same for every page, sheet and command. */
export interface SeasonAccount {
  readonly read: SeasonRead;
  readonly notRead: readonly NotRead[];
  /** Questions that nobody has answered yet. */
  readonly open: number;
  readonly used: RowsUsed;
}

/** Reasons for which a column was not read. */
export const COLUMN_REASONS: ReadonlySet<string> = new Set([
  "total",
  "qualifier",
  "otherColumn",
  "asked",
  "repeated",
  "noHead",
]);

/**
 * The account of a season: how many files, sheets, tables, columns and rows were read, and what was not, by reason.
 *
 * @param seasons of one farm, or of each of several farms
 * @param files how many were read, and which of a folder were passed over
 */
export function seasonAccount(
  seasons: Season | readonly Season[],
  files: { readonly read: number; readonly passedOver: readonly PassedOver[] } = { read: 1, passedOver: [] },
): SeasonAccount {
  const farms = [seasons].flat();
  const tables = farms.flatMap(countTables);
  const accounts = farms.map(({ account }) => account);
  const others = OTHER_LINES.flatMap((reason) =>
    accounts.flatMap(({ notes }) =>
      notes.flatMap(({ code, sheet, facts }) => (code === reason ? [{ reason, sheet, facts }] : [])),
    ),
  );
  const parts: NotRead[] = [
    ...accounts.flatMap(({ leftOut }) => leftOut.map(partOf)),
    ...others.map(({ reason, sheet, facts }): NotRead => ({
      reason,
      names: (facts.sheets as readonly string[] | undefined) ?? [sheet],
      rows: Number(facts.lines),
    })),
    ...files.passedOver.map(({ file, reason }): NotRead => ({ reason, names: [file], rows: 0 })),
  ];
  return {
    read: {
      files: files.read,
      sheets: new Set(tables.map(({ sheet }) => sheet)).size,
      tables: tables.length,
      columns: tables.reduce((sum, { columns }) => sum + columns.length, 0),
      rows: tables.reduce((sum, { rowCount }) => sum + rowCount, 0),
      winters: [...new Set(farms.map(winterOfSeason))].filter((winter) => winter > 0).sort(),
    },
    notRead: [...grouped(parts, ({ reason }) => reason)].map(([reason, alike]) => ({
      reason,
      names: [...new Set(alike.flatMap(({ names }) => names))],
      rows: alike.reduce((sum, { rows }) => sum + rows, 0),
    })),
    open: accounts.reduce((sum, { questions }) => sum + questions.length, 0),
    used: usedOf(farms),
  };
}

/** True where something that looks like counts was not read, or is still to be counted. */
export function leavesOpen({ account: { questions, leftOut }, used }: Season): boolean {
  return (
    questions.length > 0 ||
    leftOut.some(({ reason }) => reason === "notCalculated") ||
    used.account().leftOut.some(({ reason }) => reason === "toCount")
  );
}

/** Tables of what was counted this winter; Settings are none. */
export function countTables(season: Season) {
  return season.allTables.filter(
    (table) => table.shape.id !== "settings" && season.tables(table.shape.id).includes(table),
  );
}

function partOf({ reason, sheet, facts }: LeftOut): NotRead {
  const isColumn = COLUMN_REASONS.has(reason);
  return {
    reason,
    names: [isColumn ? String(facts.head) : sheet],
    rows: isColumn ? 0 : Number(facts.rows ?? 0),
  };
}

function usedOf(farms: readonly Season[]): RowsUsed {
  const all = farms.map(({ used }) => used.account());
  if (all.length === 1) return all[0];
  return {
    rows: all.reduce((sum, { rows }) => sum + rows, 0),
    used: all.reduce((sum, { used }) => sum + used, 0),
    leftOut: all.flatMap(({ leftOut }) => leftOut),
  };
}
