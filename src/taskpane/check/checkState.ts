import { findingIdentity, type SetAside } from "../../survey/checks/setAside";
import type { Season } from "../../survey/season/season";
import type { Finding, Severity } from "../../survey/checks/finding";
import type { FindingGroup } from "../../survey/checks/findingGroups";
import type { ReadingAnswers } from "../../survey/reading/readingAccount";
import type { SheetArea } from "../../survey/reading/sheetArea";
import type { ChangedCell } from "../../workbook/actions/changeCells";
import type { FindingAction } from "../../survey/checks/check";
import type { SheetId } from "../../survey/sheets/column";
import { EVERYTHING, type FindingFilter } from "./findingFilter";
import type { TypingState } from "./typingState";

/** A survey table that was found in the workbook. */
export interface FoundTable {
  readonly sheet: string;
  readonly shape: SheetId;
  readonly rows: number;
}

export interface CheckProgress {
  readonly step: "reading" | "checking";
  /** Sheet that is being read. */
  readonly sheet: string;
  /** 0 to 1 of the whole run. */
  readonly done: number;
}

/** What a person has answered so far on why a finding may stand. */
export interface AsideQuestion {
  readonly finding: Finding;
  readonly reason: string;
  readonly by: string;
  /** True once they tried to go on without reason or name. */
  readonly lacking: boolean;
}

/** The line of a sheet that most likely holds its heads. */
export interface SheetHeads {
  readonly sheet: string;
  readonly headers: readonly string[];
  readonly headerRow: number;
  readonly area: SheetArea;
}

/** What a person has said so far of a sheet's own column heads. */
export interface HeadsStep {
  readonly sheet: string;
  readonly shape: SheetId;
  /** Header in the sheet by column id of ours. */
  readonly headers: Readonly<Record<string, string>>;
  /** Units that were chosen, by column id. */
  readonly units: Readonly<Record<string, string>>;
}

declare module "../pageStates" {
  interface PageStates {
    readonly check: CheckState;
  }
}

/** The check page as data. */
export interface CheckState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: CheckProgress;
  /** Tables of the last look or run; undefined before the first. */
  readonly tables?: readonly FoundTable[];
  readonly typing: TypingState;
  /** Column heads of every sheet that has some, from the last look. */
  readonly headsOf?: readonly SheetHeads[];
  /** What the workbook keeps of answers about its sheets, and its season, from the last look. */
  readonly looked?: { readonly answers: ReadingAnswers; readonly season: Season };
  /** The step in which a person says what their own column heads mean, while it is open. */
  readonly heads?: HeadsStep;
  /** True while the list of sheets to choose from is open. */
  readonly choosing: boolean;
  /** Sheets that a person wants left out. */
  readonly leftOut: ReadonlySet<string>;
  /** Findings of the last finished run; undefined before the first. */
  readonly findings?: readonly Finding[];
  /** What the last finished run read. */
  readonly season?: Season;
  /** Findings that somebody let stand, as the workbook keeps them. */
  readonly entries: readonly SetAside[];
  /** The question why a finding may stand, while it is open. */
  readonly settingAside?: AsideQuestion;
  /** Cells that were mended last, to take that back. */
  readonly mended?: readonly ChangedCell[];
  /** What was answered before the last answer, to take that one back. */
  readonly answered?: ReadingAnswers;
  /** Findings of the last run that a person asked for. */
  readonly asked?: readonly Finding[];
  /** Findings of the run before that. */
  readonly before?: readonly Finding[];
  readonly filter: FindingFilter;
  /** How many findings of an opened group are listed; a group that is not here is closed. */
  readonly open: ReadonlyMap<string, number>;
}

/** How many findings a group lists at first, and how many more each time. */
export const LISTED_AT_ONCE = 25;

export const SEVERITIES: readonly Severity[] = ["wrong", "ask", "note"];

/** Groups of findings that call for the same thing to be done. */
export interface ActionGroup {
  readonly action: FindingAction;
  readonly groups: readonly FindingGroup[];
}

/** In this order things are done: what can be mended at the desk before someone walks out. */
export const ACTIONS: readonly FindingAction[] = [
  "mendSheet",
  "correct",
  "fillIn",
  "mendRegister",
  "askCounter",
  "lookAtVine",
];

/** So few findings are listed as they are; more are folded away by what caused them. */
export const FEW_FINDINGS = 7;

/** Groups by what is to be done about them, each action's groups in the order in which they came. */
export function byAction(
  groups: readonly FindingGroup[],
  actionOf: (code: string) => FindingAction,
): ActionGroup[] {
  return ACTIONS.flatMap((action) => {
    const own = groups.filter(({ code }) => actionOf(code) === action);
    return own.length === 0 ? [] : [{ action, groups: own }];
  });
}

/**
 * The findings that pass the filter. Words are looked for in the finding's sentence and place, in any case and
 * without accents; every word must be there.
 */
export function filterFindings(
  findings: readonly Finding[],
  filter: FindingFilter,
  sentence: (finding: Finding) => string,
): readonly Finding[] {
  const words = plain(filter.words).split(/\s+/).filter(Boolean);
  return findings.filter(
    (finding) =>
      (filter.severity === "" || finding.severity === filter.severity) &&
      (filter.sheet === "" || finding.sheet === filter.sheet) &&
      (filter.counter === "" || counterOf(finding) === filter.counter) &&
      (words.length === 0 || containsAll(words, finding, sentence)),
  );
}

function containsAll(
  words: readonly string[],
  finding: Finding,
  sentence: (finding: Finding) => string,
): boolean {
  const text = plain(
    [finding.sheet, finding.column, rowName(finding), counterOf(finding), sentence(finding)].join(" "),
  );
  return words.every((word) => text.includes(word));
}

/** Who counted the row that a finding is about; "" where the sheet does not tell. */
export function counterOf(finding: Finding): string {
  return String(finding.facts.countedBy ?? "");
}

/** Block and row of the vineyard that a finding is about, "North Bench, 7"; "" where the sheet does not tell. */
function rowName(finding: Finding): string {
  const { block, row } = finding.facts;
  return block === undefined || row === undefined ? "" : `${String(block)}, ${String(row)}`;
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

/** What a run found that the run before did not, and the other way round. */
export interface RunChange {
  readonly gone: readonly Finding[];
  readonly come: readonly Finding[];
  readonly stayed: number;
}

/** Compares two runs; a finding is the same when its kind, place and judged values are, wherever its row has moved. */
export function compareRuns(before: readonly Finding[], after: readonly Finding[]): RunChange {
  const then = new Set(before.map(findingIdentity));
  const now = new Set(after.map(findingIdentity));
  const come = after.filter((finding) => !then.has(findingIdentity(finding)));
  return {
    gone: before.filter((finding) => !now.has(findingIdentity(finding))),
    come,
    stayed: after.length - come.length,
  };
}

/** Names a finding within a workbook: kind, sheet, row and column. */
export function findingKey(finding: Finding): string {
  return [finding.code, finding.sheet, finding.row, finding.columnNumber].join("|");
}

/** Takes over which groups are open; one that was open keeps the length of its list. */
export function showGroups(
  state: CheckState,
  folds: readonly (readonly [key: string, open: boolean])[],
): CheckState {
  const open = new Map(state.open);
  for (const [key, shown] of folds) {
    if (!shown) open.delete(key);
    else if (!open.has(key)) open.set(key, LISTED_AT_ONCE);
  }
  return { ...state, open };
}

/** Lists more findings of an opened group. */
export function listMore(state: CheckState, key: string): CheckState {
  const open = new Map(state.open);
  open.set(key, (open.get(key) ?? 0) + LISTED_AT_ONCE);
  return { ...state, open };
}

/** What a finished run found. */
export interface RunResult {
  readonly season: Season | undefined;
  readonly tables: readonly FoundTable[];
  readonly findings: readonly Finding[];
  readonly entries: readonly SetAside[];
  readonly version: number;
}

/** Takes in the result of a run; the findings of the run before are kept to compare. */
export function finishRun(state: CheckState, result: RunResult): CheckState {
  const { progress: _progress, ...rest } = state;
  return {
    ...rest,
    ...result,
    before: state.asked,
    asked: result.findings,
    filter: EVERYTHING,
    choosing: false,
    open: new Map(),
  };
}

/**
 * Takes in what the check finds after the workbook has changed: what is shown of it stays, and it is compared with the
 * last run that a person asked for.
 */
export function finishRunAnew(state: CheckState, result: RunResult): CheckState {
  return { ...state, ...result, before: state.asked };
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
