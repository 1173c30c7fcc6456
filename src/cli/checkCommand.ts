import { checkSurvey, inSheetOrder } from "../survey/checkSurvey";
import type { Finding, Severity } from "../survey/finding";
import { findingSentence } from "../survey/findingSentence";
import { isoDay } from "../survey/serialDate";
import type { Survey } from "../survey/survey";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { FINDING_TEXTS, SEVERITY_TEXTS } from "../texts/findings";
import { say } from "../texts/language";
import { csvLine } from "../workbook/csvText";
import { findingsSheet } from "../workbook/results/findingsSheet";
import { cellAddress } from "../workbook/address";
import type { Command, CommandOption } from "./command";
import type { Inputs } from "./readInputs";
import { readSurveyInputs } from "./readSurveyInputs";
import { isSaved, SAVE_OPTIONS, saveResult, type Result } from "./saveResult";
import { FORMAT_OPTION, formatOf, READING_OPTIONS, TODAY_OPTION, todayOf } from "./sharedOptions";
import { printable, type Terminal } from "./terminal";

const SEVERITIES: readonly Severity[] = ["wrong", "ask", "note"];

const ONLY_OPTION: Readonly<Record<string, CommandOption>> = {
  severity: {
    type: "string",
    value: SEVERITIES.join("|"),
    words: SEVERITIES,
    meaning: OPTION_TEXTS.severity,
  },
};

/** Checks count sheets: 0 nothing found, 1 findings, 2 a file that cannot be read. */
export const CHECK_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.checkSummary,
  examples: [
    "check sample-workbooks/larkmoor-mistakes.xlsx",
    "check counts.csv vines.csv --format json",
    "check season-2026/ --severity wrong --language es",
    "check - --format csv < counts.csv",
    "check season.xlsx --in-place",
  ],
  options: { ...FORMAT_OPTION, ...ONLY_OPTION, ...SAVE_OPTIONS, ...TODAY_OPTION, ...READING_OPTIONS },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const today = todayOf(options, terminal.today);
    const { inputs, survey } = await readSurveyInputs(words, options, terminal);
    const all = findingsOf(survey, today, terminal);
    const least = SEVERITIES.indexOf((options.severity as Severity | undefined) ?? "note");
    const findings = all.filter((finding) => SEVERITIES.indexOf(finding.severity) <= least);
    if (isSaved(options))
      await saveResult(words, resultOf(findings, terminal), "findings", options, terminal);
    WRITERS[formatOf(options)]({ findings, survey, inputs, terminal });
    return findings.length === 0 ? 0 : 1;
  },
};

/** The Findings sheet, and a mark on every cell that a finding is about. */
function resultOf(findings: readonly Finding[], { language, today }: Terminal): Result {
  const sheet = findingsSheet(findings, {
    language,
    date: isoDay(today),
    sentence: (finding) => findingSentence(finding, language),
    remedy: ({ code }) => FINDING_TEXTS[code].remedy[language],
    setAside: () => "",
  });
  const marks = findings.map(({ sheet: name, row, columnNumber, severity }) => ({
    sheet: name,
    row,
    column: columnNumber || 1,
    severity,
  }));
  return { sheets: [sheet], marks };
}

function findingsOf(survey: Survey, today: number, terminal: Terminal): Finding[] {
  const findings: Finding[] = [];
  for (const step of checkSurvey(survey, { today }))
    if (step.finding) findings.push(step.finding);
    else terminal.progress(0.5 + step.done / 2);
  terminal.progress(1);
  return inSheetOrder(findings, survey);
}

interface CheckResult {
  readonly findings: readonly Finding[];
  readonly survey: Survey;
  readonly inputs: Inputs;
  readonly terminal: Terminal;
}

const WRITERS: Readonly<Record<"text" | "json" | "csv", (result: CheckResult) => void>> = {
  text: writeText,
  json: writeJson,
  csv: writeCsv,
};

/** The address of a finding's cell, or of its row where it is about the whole row. */
export function findingAddress({ columnNumber, row }: Finding): string {
  return columnNumber === 0 ? String(row) : cellAddress(row, columnNumber);
}

function counted(findings: readonly Finding[]): Record<Severity, number> {
  const counts: Record<Severity, number> = { wrong: 0, ask: 0, note: 0 };
  for (const { severity } of findings) counts[severity]++;
  return counts;
}

function writeText({ findings, survey, inputs, terminal }: CheckResult): void {
  const { language } = terminal;
  for (const [file, reading] of inputs.csv)
    terminal.tell(
      printable(
        say(COMMAND_LINE[reading.decimal === "undecided" ? "csvUndecided" : "csvRead"], language, {
          file,
          encoding: reading.encoding,
          delimiter: reading.delimiter === "\t" ? "tab" : reading.delimiter,
          decimal: reading.decimal,
        }),
      ),
    );
  let sheet: string | undefined;
  for (const finding of findings) {
    if (finding.sheet !== sheet) {
      sheet = finding.sheet;
      terminal.print(printable(sheet));
    }
    const severity = say(SEVERITY_TEXTS[finding.severity], language);
    terminal.print(
      `  ${findingAddress(finding).padEnd(8)}${severity.padEnd(10)}${printable(findingSentence(finding, language))}`,
    );
  }
  const rows = survey.allTables.reduce((sum, table) => sum + table.rowCount, 0);
  terminal.print(
    say(COMMAND_LINE[findings.length === 0 ? "checkedClean" : "checked"], language, {
      ...counted(findings),
      rows,
      tables: survey.allTables.length,
    }),
  );
}

function writeJson({ findings, survey, inputs, terminal }: CheckResult): void {
  const place = (name: string) => inputs.origin.get(name) ?? { file: "", sheet: name };
  const result = {
    files: inputs.files,
    tables: survey.allTables.map((table) => ({
      ...place(table.sheet),
      kind: table.shape.id,
      headerRow: table.headerRow,
      rows: table.rowCount,
    })),
    otherSheets: survey.otherSheets.map(place),
    csv: Object.fromEntries(inputs.csv),
    counts: counted(findings),
    findings: findings.map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      ...place(finding.sheet),
      row: finding.row,
      column: finding.column,
      cell: findingAddress(finding),
      facts: finding.facts,
      sentence: findingSentence(finding, terminal.language),
    })),
  };
  terminal.print(JSON.stringify(result, null, 2));
}

function writeCsv({ findings, inputs, terminal }: CheckResult): void {
  terminal.print(csvLine(["file", "sheet", "row", "column", "cell", "severity", "code", "sentence"]));
  for (const finding of findings) {
    const { file, sheet } = inputs.origin.get(finding.sheet) ?? { file: "", sheet: finding.sheet };
    terminal.print(
      csvLine([
        file,
        sheet,
        finding.row,
        finding.column,
        findingAddress(finding),
        finding.severity,
        finding.code,
        findingSentence(finding, terminal.language),
      ]),
    );
  }
}
