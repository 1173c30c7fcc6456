import { keptValue, listOf } from "../../survey/reading/keptEntries";
import { RUN_LOG } from "../../texts/runLog";
import type { Language } from "../../texts/language";
import type { OwnSheet, SurveyWorkbook } from "../surveyWorkbook";
import { ownSheetName } from "./ownSheetName";
import { writeAgain } from "./writeAgain";

/** Who ran what when: a line of the log sheet. */
export interface LogLine {
  /** Seconds since 1970. */
  readonly at: number;
  readonly who: string;
  readonly what: string;
  readonly result: string;
}

const SWITCH = "logsRuns";
/** Each line is a fact of its own in the workbook, so that two people who run something at once lose nothing. */
const PREFIX = "run.";
const MOST_LINES = 300;

/** Whether runs are written down in this workbook: not until somebody switches it on. */
export async function logsRuns(workbook: SurveyWorkbook): Promise<boolean> {
  return (await workbook.readFlag(SWITCH)) === "on";
}

/** Switches the log on or off for everybody who works in this workbook; lines that are there stay. */
export function setLogsRuns(workbook: SurveyWorkbook, on: boolean): Promise<void> {
  return workbook.writeFlag(SWITCH, on ? "on" : undefined);
}

/**
 * Writes a run into the log, where the log is switched on, and rewrites the log's sheet, newest first. The oldest
 * lines go when there are more than three hundred.
 *
 * @param written how a person writes a moment, from seconds since 1970
 * @returns the name of the log's sheet, with sentences about a person's remarks that have no place on it any more;
 * undefined when the log is off
 * @throws WorkbookProblem "notOurs" when a sheet of that name is somebody's own
 */
export async function logRun(
  workbook: SurveyWorkbook,
  line: LogLine,
  language: Language,
  written: (at: number) => string,
): Promise<{ readonly sheet: string; readonly lost: readonly string[] } | undefined> {
  if (!(await logsRuns(workbook))) return undefined;
  const key = `${PREFIX}${String(line.at).padStart(12, "0")}.${crypto.getRandomValues(new Uint32Array(1))[0].toString(16)}`;
  await workbook.writeFlag(key, JSON.stringify([line.at, line.who, line.what, line.result]));
  const lines = await readLines(workbook);
  for (const { key: old } of lines.slice(MOST_LINES)) await workbook.writeFlag(old, undefined);
  const sheet = await ownSheetName(workbook, RUN_LOG.sheet, language);
  const content = logSheet(sheet, lines.slice(0, MOST_LINES), language, written);
  return { sheet, lost: (await writeAgain(workbook, content, language)).lost };
}

/** The lines that the workbook keeps, newest first. */
async function readLines(workbook: SurveyWorkbook): Promise<{ key: string; line: LogLine }[]> {
  const flags = await workbook.readFlags(PREFIX);
  return [...flags]
    .sort(([a], [b]) => b.localeCompare(a))
    .flatMap(([key, text]) => {
      const line = lineOf(text);
      return line ? [{ key, line }] : [];
    });
}

const LINE = listOf<[number, string, string, string]>("number", "string", "string", "string");

function lineOf(text: string): LogLine | undefined {
  const line = keptValue(text, LINE);
  return line && { at: line[0], who: line[1], what: line[2], result: line[3] };
}

function logSheet(
  sheet: string,
  lines: readonly { readonly line: LogLine }[],
  language: Language,
  written: (at: number) => string,
): OwnSheet {
  return {
    sheet,
    title: [RUN_LOG.title[language]],
    headers: [RUN_LOG.when, RUN_LOG.who, RUN_LOG.what, RUN_LOG.result].map((text) => text[language]),
    columns: [{ width: 18 }, { width: 16 }, { width: 28 }, { width: 60, wrap: true }],
    rows: lines.map(({ line }) => [written(line.at), line.who, line.what, line.result]),
  };
}
