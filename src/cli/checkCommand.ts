import { grouped } from "../domain/grouped";
import { checkSeason, inSheetOrder } from "../survey/checks/checkSeason";
import type { Finding, Severity } from "../survey/checks/finding";
import { findingGroups, type FindingGroup } from "../survey/checks/findingGroups";
import { findingSentence } from "../survey/checks/findingSentence";
import { changeInWords, groupHeading, mendSentence } from "../survey/checks/groupSentence";
import type { CellMend } from "../survey/checks/mendOf";
import { isoDay } from "../survey/reading/serialDate";
import type { AsideFinding, SetAside } from "../survey/checks/setAside";
import type { Season } from "../survey/season/season";
import { countTables } from "../survey/season/seasonAccount";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { FINDING_TEXTS, SEVERITY_TEXTS } from "../texts/findings";
import { say } from "../texts/language";
import { ASIDE_TEXTS } from "../texts/pane";
import { csvResultLine } from "../workbook/csvText";
import { changesSheet } from "../workbook/results/changesSheet";
import { findingsSheet } from "../workbook/results/findingsSheet";
import { cellName } from "../workbook/address";
import { jsonText } from "../workbook/withoutControls";
import { CommandProblem, type Command, type CommandOption, type OptionValues } from "./command";
import type { Inputs } from "./readInputs";
import { readSeasonInputs } from "./readSurveyInputs";
import { isSaved, SAVE_OPTIONS, saveResult, type Result } from "./saveResult";
import { FORMAT_OPTION, formatOf, READING_OPTIONS, TODAY_OPTION, todayOf } from "./sharedOptions";
import { sortInputFindings } from "./sortInputFindings";
import { exitOf, readingData, readingLeavesOpen, tellAccount } from "./tellAccount";
import { printable, type Terminal } from "./terminal";

const SEVERITIES: readonly Severity[] = ["wrong", "ask", "note"];

/** Letters of the column of severities, one at least left blank. */
export const SEVERITY_WIDTH = 10;

const ONLY_OPTION: Readonly<Record<string, CommandOption>> = {
  severity: {
    type: "string",
    value: SEVERITIES.join("|"),
    words: SEVERITIES,
    meaning: OPTION_TEXTS.severity,
  },
};

const REPAIR_OPTIONS: Readonly<Record<string, CommandOption>> = {
  repair: { type: "boolean", meaning: OPTION_TEXTS.repair, not: ["in-place"] },
  "also-likely": { type: "boolean", meaning: OPTION_TEXTS.alsoLikely },
};

const ASIDE_OPTION: Readonly<Record<string, CommandOption>> = {
  "also-set-aside": { type: "boolean", meaning: OPTION_TEXTS.alsoSetAside },
};

/** Checks count sheets: 0 nothing found but what was set aside, 1 open findings, 2 a file that cannot be read. */
export const CHECK_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.checkSummary,
  examples: [
    "check sample-workbooks/larkmoor-mistakes.xlsx",
    "check counts.csv vines.csv --format json",
    "check season-2026/ --severity wrong --language es",
    "check - --format csv < counts.csv",
    "check season.xlsx --in-place",
    "check season.xlsx --also-set-aside",
    "check season.xlsx --repair --out mended.xlsx",
  ],
  options: {
    ...FORMAT_OPTION,
    ...ONLY_OPTION,
    ...ASIDE_OPTION,
    ...REPAIR_OPTIONS,
    ...SAVE_OPTIONS,
    ...TODAY_OPTION,
    ...READING_OPTIONS,
  },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const today = todayOf(options, terminal.today);
    const { inputs, season } = await readSeasonInputs(words, options, terminal);
    if (hasHeadsOnly(season)) throw new CommandProblem("noRows", { files: inputs.files });
    const all = findingsOf(season, today, terminal);
    const least = SEVERITIES.indexOf((options.severity as Severity | undefined) ?? "note");
    const wanted = all.filter((finding) => SEVERITIES.indexOf(finding.severity) <= least);
    const { open, aside } = sortInputFindings(wanted, inputs);
    const groups = findingGroups(open, season);
    if (options.repair) {
      if (!isSaved(options)) throw new CommandProblem("repairOut");
      await saveRepaired(groups, { open, aside, season, inputs, terminal }, options);
    } else if (isSaved(options))
      await saveResult(inputs, season, resultOf(open, aside, terminal), "findings", options, terminal);
    const listsAside = Boolean(options["also-set-aside"]);
    WRITERS[formatOf(options)]({ open, groups, aside, listsAside, season, inputs, terminal });
    return exitOf(open.length > 0, season, inputs);
  },
};

/** Writes a copy with the mends and a list of them, and says which were made. */
async function saveRepaired(
  groups: readonly FindingGroup[],
  { open, aside, season, inputs, terminal }: Omit<CheckResult, "groups" | "listsAside">,
  options: OptionValues,
): Promise<void> {
  const { language, tell } = terminal;
  const all = onePerCell(groups.flatMap(({ mends }) => mends));
  const mends = all.filter(({ isCertain }) => isCertain || options["also-likely"]);
  if (mends.length === 0) tell(say(COMMAND_LINE.repairNothing, language));
  else {
    const mended = new Set(mends.map(({ sheet, row, column }) => `${sheet}|${row}|${column}`));
    const left = open.filter(
      ({ sheet, row, columnNumber }) => !mended.has(`${sheet}|${row}|${columnNumber}`),
    );
    const { sheets, marks } = resultOf(left, aside, terminal);
    const list = changesSheet(mends, { language, file: inputs.files[0] });
    await saveResult(
      inputs,
      season,
      { sheets: [...sheets, list], marks, mends },
      "repaired",
      options,
      terminal,
    );
    tell(say(COMMAND_LINE.repaired, language, { cells: mends.length }));
    for (const mend of mends)
      tell(printable(`  ${mend.sheet} ${cellName(mend.row, mend.column)}: ${changeInWords(mend, language)}`));
  }
  if (mends.length < all.length)
    tell(say(COMMAND_LINE.likelyLeft, language, { cells: all.length - mends.length }));
}

/** A cell is mended once, as the weightiest finding says. */
function onePerCell(mends: readonly CellMend[]): CellMend[] {
  const cells = new Map<string, CellMend>();
  for (const mend of mends) {
    const cell = `${mend.sheet}|${mend.row}|${mend.column}`;
    if (!cells.has(cell)) cells.set(cell, mend);
  }
  return [...cells.values()];
}

/**
 * The Findings sheet, findings set aside last with their reason, and a mark on every cell that an open finding is
 * about.
 */
function resultOf(
  open: readonly Finding[],
  aside: readonly AsideFinding[],
  { language, today }: Terminal,
): Result {
  const entries = new Map(aside.map(({ finding, entry }) => [finding, entry]));
  const sheet = findingsSheet([...open, ...entries.keys()], {
    language,
    date: isoDay(today),
    sentence: (finding) => findingSentence(finding, language),
    remedy: ({ code }) => FINDING_TEXTS[code].remedy[language],
    setAside: (finding) => {
      const entry = entries.get(finding);
      return entry === undefined ? "" : say(ASIDE_TEXTS.entry, language, { ...entry });
    },
  });
  const marks = open.map(({ sheet: name, row, columnNumber, severity }) => ({
    sheet: name,
    row,
    column: columnNumber || 1,
    severity,
  }));
  return { sheets: [sheet], marks };
}

/** Every finding of a season in the order of its sheets. */
export function findingsOf(season: Season, today: number, terminal: Terminal): Finding[] {
  const findings: Finding[] = [];
  for (const step of checkSeason(season, { today }))
    if (step.finding) findings.push(step.finding);
    else terminal.progress(0.5 + step.done / 2);
  terminal.progress(1);
  return inSheetOrder(findings, season);
}

function countedRows(season: Season): number {
  return countTables(season).reduce((sum, { rowCount }) => sum + rowCount, 0);
}

/** True where counts have heads and none has a row; Settings alone can be checked. */
function hasHeadsOnly(season: Season): boolean {
  return countTables(season).length > 0 && countedRows(season) === 0;
}

interface CheckResult {
  readonly open: readonly Finding[];
  /** The open findings by what caused them. */
  readonly groups: readonly FindingGroup[];
  readonly aside: readonly AsideFinding[];
  /** True where those set aside are listed too. */
  readonly listsAside: boolean;
  readonly season: Season;
  readonly inputs: Inputs;
  readonly terminal: Terminal;
}

const WRITERS: Readonly<Record<"text" | "json" | "csv", (result: CheckResult) => void>> = {
  text: writeText,
  json: writeJson,
  csv: writeCsv,
};

/** The address of a finding's cell, or of its row where it is about the whole row. */
function findingAddress({ columnNumber, row }: Finding): string {
  return columnNumber === 0 ? String(row) : cellName(row, columnNumber);
}

function counted(findings: readonly Finding[]): Record<Severity, number> {
  const counts: Record<Severity, number> = { wrong: 0, ask: 0, note: 0 };
  for (const { severity } of findings) counts[severity]++;
  return counts;
}

function writeText({ open, groups, aside, listsAside, season, inputs, terminal }: CheckResult): void {
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
  const large = groups.filter(({ findings }) => findings.length > LISTED_OF_A_CAUSE);
  for (const group of large) listGroup(group, terminal);
  const listed = new Set(large.flatMap(({ findings }) => findings));
  listFindings(
    open.filter((finding) => !listed.has(finding)),
    terminal,
    (finding) =>
      mendLine(
        groups.find(({ findings }) => findings.includes(finding))!,
        finding,
        terminal,
      ),
  );
  if (listsAside && aside.length > 0) {
    const reasons = new Map(aside.map(({ finding, entry }) => [finding, entry]));
    terminal.print(say(COMMAND_LINE.setAsideHeading, language));
    listFindings([...reasons.keys()], terminal, (finding) =>
      say(ASIDE_TEXTS.entry, language, { ...reasons.get(finding) }),
    );
  }
  const rows = countedRows(season);
  terminal.print(
    say(
      COMMAND_LINE[
        open.length + aside.length === 0 && !readingLeavesOpen(season, inputs) ? "checkedClean" : "checked"
      ],
      language,
      {
        ...counted(open),
        rows,
        tables: countTables(season).length,
      },
    ),
  );
  if (aside.length > 0) terminal.print(say(COMMAND_LINE.setAside, language, { findings: aside.length }));
  tellAccount(season, inputs, terminal);
}

/** Findings of one cause that are listed in full; of more the cells are named. */
const LISTED_OF_A_CAUSE = 3;

/** Findings of one cause: three in full, the cells of the others, and what would mend them. */
function listGroup({ severity, findings, mends, ...group }: FindingGroup, terminal: Terminal): void {
  const { language, print } = terminal;
  const word = say(SEVERITY_TEXTS[severity], language);
  print(
    `${word.padEnd(SEVERITY_WIDTH)}${printable(groupHeading({ severity, findings, mends, ...group }, language))}`,
  );
  listFindings(findings.slice(0, LISTED_OF_A_CAUSE), terminal);
  const others = findings.slice(LISTED_OF_A_CAUSE);
  const cells = [...grouped(others, ({ sheet }) => sheet)].map(
    ([sheet, own]) => `${sheet} ${cellRanges(own).join(" ")}`,
  );
  print(printable(`  ${say(COMMAND_LINE.more, language, { findings: others.length, cells })}`));
  if (mends.length > 0) print(printable(`  ${mendSentence(mends, language)}`));
}

/** Cells of one sheet as a spreadsheet names ranges: those below each other joined. */
function cellRanges(findings: readonly Finding[]): string[] {
  const ranges: { column: number; first: number; last: number }[] = [];
  for (const { row, columnNumber } of [...findings].sort(
    (a, b) => a.columnNumber - b.columnNumber || a.row - b.row,
  )) {
    const before = ranges.at(-1);
    if (before?.column === columnNumber && row <= before.last + 1) before.last = row;
    else ranges.push({ column: columnNumber, first: row, last: row });
  }
  const name = (row: number, column: number) => (column === 0 ? String(row) : cellName(row, column));
  return ranges.map(({ column, first, last }) =>
    first === last ? name(first, column) : `${name(first, column)}:${name(last, column)}`,
  );
}

/** What would mend a finding, as far as that can be said. */
function mendLine({ mends }: FindingGroup, finding: Finding, { language }: Terminal): string | undefined {
  const own = mends.filter(
    ({ sheet, row, column }) =>
      sheet === finding.sheet && row === finding.row && column === finding.columnNumber,
  );
  return own.length === 0 ? undefined : mendSentence(own, language);
}

/** Findings below the names of their sheets; what is said of one beside its sentence stands in a line below it. */
function listFindings(
  findings: readonly Finding[],
  { language, print }: Terminal,
  below?: (finding: Finding) => string | undefined,
): void {
  let sheet: string | undefined;
  for (const finding of findings) {
    if (finding.sheet !== sheet) {
      sheet = finding.sheet;
      print(printable(sheet));
    }
    const severity = say(SEVERITY_TEXTS[finding.severity], language);
    print(
      `  ${findingAddress(finding).padEnd(8)}${severity.padEnd(SEVERITY_WIDTH)}${printable(findingSentence(finding, language))}`,
    );
    const line = below?.(finding);
    if (line !== undefined) print(`${" ".repeat(20)}${printable(line)}`);
  }
}

function writeJson({ open, groups, aside, season, inputs, terminal }: CheckResult): void {
  const place = (name: string) => inputs.origin.get(name) ?? { file: "", sheet: name };
  const written = (finding: Finding) => ({
    code: finding.code,
    severity: finding.severity,
    ...place(finding.sheet),
    row: finding.row,
    column: finding.column,
    cell: findingAddress(finding),
    facts: finding.facts,
    sentence: findingSentence(finding, terminal.language),
  });
  const result = {
    files: inputs.files,
    passedOver: inputs.passedOver.map(({ file }) => file),
    tables: season.allTables.map((table) => ({
      ...place(table.sheet),
      kind: table.shape.id,
      headerRow: table.headerRow,
      rows: table.rowCount,
    })),
    otherSheets: season.otherSheets.map(place),
    csv: Object.fromEntries(inputs.csv),
    reading: readingData(season, inputs, terminal),
    counts: counted(open),
    findings: open.map(written),
    groups: groups.map((group) => ({
      code: group.code,
      severity: group.severity,
      cause: group.cause,
      heading: groupHeading(group, terminal.language),
      cells: group.findings.map((finding) => ({
        ...place(finding.sheet),
        row: finding.row,
        column: finding.column,
        cell: findingAddress(finding),
      })),
      mends: group.mends.map(({ sheet, row, column, ...mend }) => ({
        ...place(sheet),
        cell: cellName(row, column),
        ...mend,
      })),
    })),
    setAside: aside.map(({ finding, entry: { reason, by, on } }) => ({
      ...written(finding),
      reason,
      by,
      on,
    })),
  };
  terminal.print(jsonText(result));
}

function writeCsv({ open, aside, listsAside, season, inputs, terminal }: CheckResult): void {
  const head = ["file", "sheet", "row", "column", "cell", "severity", "code", "sentence"];
  const line = (finding: Finding) => {
    const { file, sheet } = inputs.origin.get(finding.sheet) ?? { file: "", sheet: finding.sheet };
    return [
      file,
      sheet,
      finding.row,
      finding.column,
      findingAddress(finding),
      finding.severity,
      finding.code,
      findingSentence(finding, terminal.language),
    ];
  };
  const ending = (entry?: SetAside) => (listsAside ? [entry?.reason, entry?.by, entry?.on] : []);
  terminal.print(csvResultLine(listsAside ? [...head, "set_aside", "by", "on"] : head));
  for (const finding of open) terminal.print(csvResultLine([...line(finding), ...ending()]));
  for (const { finding, entry } of listsAside ? aside : [])
    terminal.print(csvResultLine([...line(finding), ...ending(entry)]));
  tellAccount(season, inputs, terminal, "told");
}
