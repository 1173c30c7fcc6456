import type { Finding, Severity } from "../../survey/finding";
import type { SheetId } from "../../survey/column";

/** A survey table that was found in the workbook. */
export interface FoundTable {
  readonly sheet: string;
  readonly shape: SheetId;
  readonly rows: number;
}

/** A finding with the place in the vineyard that its row speaks of. */
export interface PlacedFinding extends Finding {
  readonly block: string;
  readonly vineyardRow: string;
  readonly vine: string;
  readonly counter: string;
}

/** What a person wants to see of the findings; an empty word means all. */
export interface FindingFilter {
  readonly severity: Severity | "";
  readonly sheet: string;
  readonly counter: string;
  readonly words: string;
}

export interface CheckProgress {
  readonly step: "reading" | "checking";
  /** Sheet that is being read. */
  readonly sheet: string;
  /** 0 to 1 of the whole run. */
  readonly done: number;
}

/** The check page as data. */
export interface CheckState {
  readonly progress?: CheckProgress;
  /** Tables of the last look or run; undefined before the first. */
  readonly tables?: readonly FoundTable[];
  /** Sheets that a person wants left out. */
  readonly leftOut: ReadonlySet<string>;
  /** Findings of the last finished run; undefined before the first. */
  readonly findings?: readonly PlacedFinding[];
  /** Findings of the run before. */
  readonly before?: readonly PlacedFinding[];
  readonly filter: FindingFilter;
  /** How many findings of an opened group are listed; a group that is not here is closed. */
  readonly open: ReadonlyMap<string, number>;
}

/** How many findings a group lists at first, and how many more each time. */
export const LISTED_AT_ONCE = 25;

export const EVERYTHING: FindingFilter = { severity: "", sheet: "", counter: "", words: "" };

export const FIRST_CHECK_STATE: CheckState = {
  leftOut: new Set(),
  filter: EVERYTHING,
  open: new Map(),
};

const ORDER: readonly Severity[] = ["wrong", "ask", "note"];

/** Findings of one kind: they call for the same thing to be done. */
export interface FindingGroup {
  readonly code: string;
  readonly severity: Severity;
  readonly findings: readonly PlacedFinding[];
}

/**
 * Groups findings by what is to be done about them, one group a kind: first what is wrong, then what someone must
 * look at, then notes; within these the largest group first. The order within a group is the order of the sheet.
 */
export function groupFindings(findings: readonly PlacedFinding[]): FindingGroup[] {
  const groups = new Map<string, PlacedFinding[]>();
  for (const finding of findings) {
    const key = `${finding.severity} ${finding.code}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()]
    .map((group) => ({ code: group[0].code, severity: group[0].severity, findings: group }))
    .sort(
      (one, other) =>
        ORDER.indexOf(one.severity) - ORDER.indexOf(other.severity) ||
        other.findings.length - one.findings.length ||
        one.code.localeCompare(other.code),
    );
}

/**
 * The findings that pass the filter. Words are looked for in the finding's sentence and place, in any case and
 * without accents; every word must be there.
 */
export function filterFindings(
  findings: readonly PlacedFinding[],
  filter: FindingFilter,
  sentence: (finding: PlacedFinding) => string,
): readonly PlacedFinding[] {
  const words = plain(filter.words).split(/\s+/).filter(Boolean);
  return findings.filter(
    (finding) =>
      (filter.severity === "" || finding.severity === filter.severity) &&
      (filter.sheet === "" || finding.sheet === filter.sheet) &&
      (filter.counter === "" || finding.counter === filter.counter) &&
      (words.length === 0 || containsAll(words, finding, sentence)),
  );
}

function containsAll(
  words: readonly string[],
  finding: PlacedFinding,
  sentence: (finding: PlacedFinding) => string,
): boolean {
  const text = plain(
    [finding.sheet, finding.column, finding.block, finding.counter, sentence(finding)].join(" "),
  );
  return words.every((word) => text.includes(word));
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
}

/** How many findings of each severity there are. */
export function countSeverities(findings: readonly Finding[]): Record<Severity, number> {
  const counts = { wrong: 0, ask: 0, note: 0 };
  for (const finding of findings) counts[finding.severity] += 1;
  return counts;
}

/** Counts of the findings at one place or of one counter. */
export interface PlaceCount {
  readonly name: string;
  readonly wrong: number;
  readonly ask: number;
  readonly note: number;
}

/**
 * Counts findings per vineyard row ("North Bench, 7") or per counter, most wrong ones first; findings without the
 * place are left out.
 */
export function countBy(findings: readonly PlacedFinding[], by: "row" | "counter"): PlaceCount[] {
  const counts = new Map<string, { name: string; wrong: number; ask: number; note: number }>();
  for (const finding of findings) {
    const name =
      by === "counter"
        ? finding.counter
        : finding.vineyardRow === ""
          ? ""
          : `${finding.block}, ${finding.vineyardRow}`;
    if (name === "") continue;
    const count = counts.get(name) ?? { name, wrong: 0, ask: 0, note: 0 };
    count[finding.severity] += 1;
    counts.set(name, count);
  }
  return [...counts.values()].sort(
    (one, other) =>
      other.wrong - one.wrong ||
      other.ask - one.ask ||
      other.note - one.note ||
      one.name.localeCompare(other.name, undefined, { numeric: true }),
  );
}

/** What a run found that the run before did not, and the other way round. */
export interface RunChange {
  readonly gone: readonly PlacedFinding[];
  readonly come: readonly PlacedFinding[];
  readonly stayed: number;
}

/** Compares two runs; a finding is the same when kind, sheet, row and column are. */
export function compareRuns(before: readonly PlacedFinding[], after: readonly PlacedFinding[]): RunChange {
  const then = new Set(before.map(findingKey));
  const now = new Set(after.map(findingKey));
  const come = after.filter((finding) => !then.has(findingKey(finding)));
  return {
    gone: before.filter((finding) => !now.has(findingKey(finding))),
    come,
    stayed: after.length - come.length,
  };
}

/** Names a finding within a workbook: kind, sheet, row and column. */
export function findingKey(finding: Finding): string {
  return [finding.code, finding.sheet, finding.row, finding.columnNumber].join("|");
}

/** Opens or closes a group. */
export function toggleGroup(state: CheckState, key: string): CheckState {
  const open = new Map(state.open);
  if (!open.delete(key)) open.set(key, LISTED_AT_ONCE);
  return { ...state, open };
}

/** Lists more findings of an opened group. */
export function listMore(state: CheckState, key: string): CheckState {
  const open = new Map(state.open);
  open.set(key, (open.get(key) ?? 0) + LISTED_AT_ONCE);
  return { ...state, open };
}

/** Takes in the result of a run; the findings of the run before are kept to compare. */
export function finishRun(
  state: CheckState,
  tables: readonly FoundTable[],
  findings: readonly PlacedFinding[],
): CheckState {
  const { progress: _progress, ...rest } = state;
  return {
    ...rest,
    tables,
    before: state.findings,
    findings,
    filter: EVERYTHING,
    open: new Map(),
  };
}

/** Ends a run without a result: cancelled or failed. */
export function stopRun(state: CheckState): CheckState {
  const { progress: _progress, ...rest } = state;
  return rest;
}

/** Leaves a sheet out of the next run, or takes it in again. */
export function toggleSheet(state: CheckState, sheet: string): CheckState {
  const leftOut = new Set(state.leftOut);
  if (!leftOut.delete(sheet)) leftOut.add(sheet);
  return { ...state, leftOut };
}
