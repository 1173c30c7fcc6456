import { countOfText, doubtOfNumber, type DoubtKind } from "../reading/countOfText";
import { yearlessDate } from "../reading/serialDate";
import type { Season } from "../season/season";
import { wordKey } from "../sheets/words";
import type { Finding, Severity } from "./finding";
import { findingCell, isUnclearDate, type FindingCell } from "./findingCell";
import { mendOf, type CellMend } from "./mendOf";

/**
 * What findings have in common that made them: a word that was typed each time, a kind of odd cell, whoever counted, a
 * column, or a sheet.
 */
export interface FindingCause {
  readonly by: "word" | "kind" | "counter" | "column" | "sheet";
  /** The word, the initials, the header or the sheet's name; of "kind" one of DoubtKind. */
  readonly value: string;
}

/** Findings of one kind with one cause, and what would mend them. */
export interface FindingGroup {
  /** Names the group within a check. */
  readonly key: string;
  readonly code: string;
  readonly severity: Severity;
  readonly cause: FindingCause;
  readonly findings: readonly Finding[];
  /** What each cell would hold afterwards; no more than the cells for which that can be said. */
  readonly mends: readonly CellMend[];
}

const ORDER: readonly Severity[] = ["wrong", "ask", "note"];

/** Kinds that are about a sheet's dates. */
const OF_SHEETS = new Set([
  "dateInFuture",
  "dateOutOfSeason",
  "dateOtherYear",
  "vineNeverCounted",
  "rowNeverCounted",
]);
/** Kinds that are about what a column is written in. */
const OF_COLUMNS = new Set(["numberAsText", "missingValue", "outsideLimits", "unitSlip", "errorCell"]);
/** Different words in a column from which the column itself is the cause. */
const MANY_WORDS = 3;

/**
 * Findings grouped by what caused them, first what is wrong, then what somebody must look at, then notes, the largest
 * group first; within a group the order of the sheet.
 */
export function findingGroups(findings: readonly Finding[], season: Season): FindingGroup[] {
  const groups = new Map<string, { cause: FindingCause; findings: Finding[] }>();
  const words = wordsOfColumns(findings);
  const told = findings.map((finding) => ({ finding, cause: causeOf(finding, season, words) }));
  const many = manyCausesOf(told);
  for (const { finding, cause: own } of told) {
    const isOfAll = many.has(finding.code) && MANY_OF.has(own.by) && finding.column !== "";
    const cause: FindingCause = isOfAll ? { by: "column", value: finding.column } : own;
    const key = [finding.code, cause.by, wordKey(cause.value)].join("|");
    const known = groups.get(key);
    if (known) known.findings.push(finding);
    else groups.set(key, { cause, findings: [finding] });
  }
  return [...groups]
    .map(([key, { cause, findings: own }]) => ({
      key,
      code: own[0].code,
      severity: own[0].severity,
      cause,
      findings: own,
      mends: own.flatMap((finding) => mendOf(finding, season)),
    }))
    .sort(
      (one, other) =>
        ORDER.indexOf(one.severity) - ORDER.indexOf(other.severity) ||
        other.findings.length - one.findings.length,
    );
}

/** Causes that are many of a kind where the column itself is at fault: who counted, and the sheet. */
const MANY_OF: ReadonlySet<FindingCause["by"]> = new Set(["counter", "sheet"]);
/** Counters or sheets with findings of one kind from which the column is their cause. */
const MOST_ALIKE = 3;

/** Kinds of findings that more counters or sheets share than would be a habit of theirs. */
function manyCausesOf(
  told: readonly { readonly finding: Finding; readonly cause: FindingCause }[],
): ReadonlySet<string> {
  const values = new Map<string, Set<string>>();
  for (const { finding, cause } of told) {
    if (!MANY_OF.has(cause.by)) continue;
    const own = values.get(finding.code) ?? new Set();
    values.set(finding.code, own.add(`${cause.by} ${wordKey(cause.value)}`));
  }
  return new Set([...values].flatMap(([code, own]) => (own.size > MOST_ALIKE ? [code] : [])));
}

function causeOf(
  finding: Finding,
  season: Season,
  words: ReadonlyMap<string, ReadonlySet<string>>,
): FindingCause {
  const { code, facts, sheet, column } = finding;
  const cell = ODD.has(code) ? findingCell(finding, season) : undefined;
  const kind = cell && kindOf(cell);
  if (kind) return { by: "kind", value: kind };
  if (code === "dateOutOfSeason" && season.account.notes.some((note) => note.code === "oneWinter"))
    return { by: "column", value: column };
  if (OF_SHEETS.has(code)) return { by: "sheet", value: sheet };
  if (code === "missingColumn" || code === "columnTwice")
    return { by: "column", value: String(facts["columnId"] ?? facts["wanted"]) };
  if (WORDS.has(code)) {
    const different = words.get(wordsKey(finding))!;
    return different.size > MANY_WORDS
      ? { by: "column", value: column }
      : { by: "word", value: String(facts["value"] ?? facts["setting"]) };
  }
  if (OF_COLUMNS.has(code)) return { by: "column", value: column };
  const counter = facts["counter"] ?? facts["countedBy"];
  return counter === undefined ? { by: "sheet", value: sheet } : { by: "counter", value: String(counter) };
}

const ODD = new Set(["notANumber", "notADate"]);
const WORDS = new Set(["unknownWord", "unknownBlock", "notANumber", "notADate", "settingUnknown"]);

const wordsKey = ({ code, sheet, column }: Finding) => [code, sheet, column].join("|");

function wordsOfColumns(findings: readonly Finding[]): Map<string, Set<string>> {
  const words = new Map<string, Set<string>>();
  for (const finding of findings) {
    if (!WORDS.has(finding.code)) continue;
    const key = wordsKey(finding);
    const seen = words.get(key) ?? new Set();
    words.set(key, seen.add(wordKey(String(finding.facts["value"] ?? finding.facts["setting"]))));
  }
  return words;
}

function kindOf(cell: FindingCell): DoubtKind | "bothWays" | "noYear" | undefined {
  if (isUnclearDate(cell)) return "bothWays";
  const { value } = cell;
  if (cell.column.column.kind === "date")
    return typeof value === "string" && yearlessDate(value).length > 0 ? "noYear" : undefined;
  if (cell.column.column.kind !== "count") return undefined;
  if (typeof value === "number" || typeof value === "boolean")
    return doubtOfNumber(value, cell.column.column.most ?? Infinity)?.doubt;
  const found = typeof value === "string" ? countOfText(value) : undefined;
  return found && "doubt" in found ? found.doubt : undefined;
}
