import type { ResultCell } from "../../functions/callFunction";
import type { ArgumentRead, CallExplained } from "../../functions/explainCall";
import { fromMetric, unitName, type Measure } from "../../functions/measure";
import type { UnitSystem } from "../../domain/units";
import { usedSentence } from "../../survey/season/usedSentence";
import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import { cellName } from "../../survey/sheets/cellName";
import { say, type Language, type Text, type TextFacts } from "../../texts/language";
import { FUNCTIONS_TEXTS } from "../../texts/pane";
import type { CellExplained } from "../../workbook/actions/explainCell";

const TEXTS = FUNCTIONS_TEXTS.cell;

/** One cell as a person reads it: numbers to six digits in the language's notation. */
export function shownCell(value: CellValue, language: Language): string {
  if (isBlank(value)) return "";
  if (isCellError(value)) return value.error;
  if (typeof value === "boolean") return String(value).toUpperCase();
  if (typeof value === "string") return `“${value.length > 80 ? `${value.slice(0, 79)}…` : value}”`;
  return new Intl.NumberFormat(language, { maximumSignificantDigits: 6, useGrouping: false }).format(value);
}

function withUnit(value: CellValue, measure: Measure, units: UnitSystem, language: Language): string {
  const shown = shownCell(value, language);
  if (typeof value !== "number") return shown;
  if (measure === "share")
    return say(TEXTS.share, language, { value: shown, percent: Number((value * 100).toPrecision(6)) });
  return `${shown} ${unitName(measure, units)[language]}`.trim();
}

/** What an argument came to, in words, with its unit. */
export function argumentWords(argument: ArgumentRead, units: UnitSystem, language: Language): string {
  const { parameter, written, cells, filled, blanks, errors, from } = argument;
  if (written === "") return say(TEXTS.missing, language);
  if (cells === undefined) return say(TEXTS.unknown, language);
  const shown = (value: CellValue) =>
    withUnit(value, parameter.kind === "share" ? "share" : parameter.measure, units, language);
  const [rows, columns] = [cells.length, cells[0]?.length ?? 0];
  if (parameter.kind === "table" && rows > 1)
    return from
      ? say(TEXTS.table, language, {
          rows: rows - 1,
          columns,
          sheet: from.sheet,
          cell: cellName(from.row, from.column),
        })
      : say(TEXTS.list, language, { rows: rows - 1, columns });
  if (rows === 1 && columns === 1) {
    const only = cells[0][0];
    return isBlank(only) ? say(TEXTS.blankCell, language) : shown(only);
  }
  const first = cells.flat().find((cell) => !isBlank(cell));
  if (first === undefined) return say(TEXTS.noneFilled, language, { rows });
  const words = say(TEXTS.several, language, { rows, filled, blanks, first: shown(first) });
  return errors === 0 ? words : say(TEXTS.withErrors, language, { words, errors });
}

/** Arguments that may be left out and are; undefined where all are given. */
export function leftOutSentence(
  { called, args, units }: CallExplained,
  language: Language,
): string | undefined {
  const names = args.filter(isLeftOut).map(({ parameter: { id, fallback, measure } }) => {
    const label = called.texts.parameters[id].label[language];
    if (fallback === undefined) return label;
    const value =
      typeof fallback === "number"
        ? withUnit(fromMetric(fallback, measure, units), measure, units, language)
        : String(fallback);
    return say(TEXTS.leftOutAs, language, { label, value });
  });
  return names.length === 0 ? undefined : say(TEXTS.leftOut, language, { names });
}

/** True for an argument that may be left out and is. */
export const isLeftOut = ({ written, parameter }: ArgumentRead) => written === "" && parameter.optional;

/** What one call answers, a sentence each. */
export function callSentences(cell: CellExplained, call: CallExplained, language: Language): string[] {
  const { called, outcome, units, args, rows } = call;
  const told = (text: Text, facts: TextFacts = {}) => say(text, language, facts);
  if (outcome === undefined) {
    const unknown = args.filter(({ written, cells }) => written !== "" && cells === undefined);
    return unknown.map(({ parameter, written }) =>
      told(TEXTS.notKnown, { argument: called.texts.parameters[parameter.id].label[language], written }),
    );
  }
  if ("error" in outcome) return [told(TEXTS.refused, { error: outcome.error, sentence: outcome.sentence })];
  const { values } = outcome;
  const columns = called.result.columns.map(({ id, measure }) => ({
    label: called.texts.results[id][language],
    measure,
  }));
  const named = (value: ResultCell, at: number) => {
    const { label, measure } = columns[at] ?? columns[0];
    return { label, value: withUnit(value, measure, units, language) };
  };
  const used = rows ? [usedSentence(rows, language)] : [];
  const isTable = called.result.shape === "table";
  const here =
    values.length > 1 && cell.answers !== undefined && isShown(cell.shows, cell.answers)
      ? [hereSentence(cell, cell.answers, isTable, named, language)]
      : [];
  if (isTable)
    return [told(TEXTS.block, { rows: values.length - 1, columns: columns.length }), ...here, ...used];
  if (values.length > 1) return [...columnSentences(values, language), ...here];
  const [row] = values;
  const error = row.find((one) => typeof one === "object");
  if (typeof error === "object")
    return [told(TEXTS.refused, { error: error.error, sentence: error.sentence })];
  if (row.length === 1) return [told(TEXTS.one, named(row[0], 0))];
  const all = row.map((value, at) => named(value, at)).map(({ label, value }) => `${label} ${value}`.trim());
  return [told(TEXTS.row, { values: all })];
}

/** False for an answer that an error such as #SPILL! stands in front of. */
const isShown = (shows: CellValue, answers: ResultCell) => !isCellError(shows) || isResultError(answers);

function hereSentence(
  { row, column, anchor }: CellExplained,
  answer: ResultCell,
  isTable: boolean,
  named: (value: ResultCell, at: number) => { label: string; value: string },
  language: Language,
): string {
  if (isTable && row === anchor.row) return say(TEXTS.heading, language);
  if (typeof answer === "object")
    return say(TEXTS.refused, language, { error: answer.error, sentence: answer.sentence });
  if (answer === "") return say(isTable ? TEXTS.hereNothing : TEXTS.hereBlank, language);
  return say(TEXTS.here, language, named(answer, column - anchor.column));
}

/** How many rows of a column are answered, and the first that is not. */
function columnSentences(values: readonly (readonly ResultCell[])[], language: Language): string[] {
  const blank = values.filter((row) => row.every((one) => one === "")).length;
  const refused = values.flatMap((row, index) => {
    const error = row.find((one) => typeof one === "object");
    return typeof error === "object" ? [{ row: index + 1, sentence: error.sentence }] : [];
  });
  const rows = values.length;
  return [
    say(TEXTS.column, language, {
      rows,
      blank,
      refused: refused.length,
      answered: rows - blank - refused.length,
    }),
    ...refused.slice(0, 1).map((first) => say(TEXTS.firstRefused, language, first)),
  ];
}

/** Why a cell shows something else than its function answers; undefined where it shows just that. */
export function differenceSentence(cell: CellExplained, language: Language): string | undefined {
  const { shows, calls, answers } = cell;
  const facts = { shows: shownCell(shows, language) };
  if (isCellError(shows)) {
    const { error } = shows;
    if (error === "#NAME?") return say(TEXTS.name, language);
    if (error === "#SPILL!") return say(TEXTS.spill, language);
    if (/^#(BUSY!|GETTING_DATA)$/.test(error)) return say(TEXTS.busy, language, facts);
  }
  if (answers === undefined) {
    const gives = calls[0].outcome && "values" in calls[0].outcome ? calls[0].outcome.values : [];
    const isUnexplained = isCellError(shows) && gives.length === 1 && !gives[0].some(isResultError);
    return isUnexplained ? say(TEXTS.otherParts, language, facts) : undefined;
  }
  if (isSame(shows, answers)) return undefined;
  const answered = { ...facts, answers: shownCell(answers, language) };
  return say(isCellError(shows) ? TEXTS.otherError : TEXTS.differs, language, answered);
}

const isResultError = (one: ResultCell) => typeof one === "object";

function isSame(shows: CellValue, answers: ResultCell): boolean {
  if (typeof answers === "object") return isCellError(shows) && shows.error === answers.error;
  if (typeof answers === "number" && typeof shows === "number")
    return Math.abs(shows - answers) <= 1e-9 * Math.max(1, Math.abs(answers));
  return isBlank(shows) ? isBlank(answers) : shows === answers;
}
