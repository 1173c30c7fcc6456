import { LANGUAGES, say, withTexts, type Language, type Text } from "../../texts/language";
import { TEXTS } from "../../texts/texts";
import { isBlank, type CellValue } from "../sheets/cell";
import { plainHeader, type SheetId } from "../sheets/column";
import { SHEETS } from "../sheets/sheets";
import { wordKey } from "../sheets/words";
import type { DoubtKind } from "./countOfText";
import { withAnswers, type ReadingAnswers } from "./readingAccount";
import type { DayOrder } from "./serialDate";
import type { SheetArea } from "./sheetArea";

const { answers: WORDS, kinds: KINDS } = TEXTS.reading;

/** Answers as the table that a workbook keeps: a line each, in words that the next reading understands in any language. */
export interface AnswersTable {
  readonly sheet: string;
  readonly title: readonly string[];
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** The name without the file that stands before it where several files are read as one farm. */
const OF_FILE = /^\[[^\]]*\]/;

/**
 * True for the name of the sheet in which a workbook keeps answers about its sheets, in any language.
 *
 * @example
 * isAnswersSheet("[counts.xlsx]Respuestas") // true
 */
export function isAnswersSheet(sheet: string): boolean {
  const name = plainHeader(sheet.replace(OF_FILE, ""));
  return LANGUAGES.some((language) => plainHeader(WORDS.sheet[language]) === name);
}

/** True for a sheet of that name that holds the table of answers, and not counts of somebody's own. */
export function holdsAnswers({ sheet, values }: SheetArea): boolean {
  return (
    isAnswersSheet(sheet) &&
    values.some(
      ([, what, of, answer]) =>
        isWord(WORDS.what, String(what)) &&
        isWord(WORDS.of, String(of)) &&
        isWord(WORDS.answer, String(answer)),
    )
  );
}

/** The table in which a workbook keeps these answers. */
export function answersTable(answers: ReadingAnswers, language: Language): AnswersTable {
  const word = (text: Text) => say(text, language);
  const rows: (string | number)[][] = [];
  for (const { sheet, shape, columns } of answers.heads ?? [])
    for (const [head, id] of Object.entries(columns))
      rows.push([sheet, headOf(shape)[language], head, headerOf(id, shape)?.[language] ?? id]);
  for (const { sheet, column, value } of answers.constants ?? [])
    rows.push([sheet, word(WORDS.value), headerOf(column)?.[language] ?? column, value]);
  for (const sheet of answers.leaveOut ?? []) rows.push([sheet, word(WORDS.leaveOut), "", ""]);
  for (const { sheet, column, unit, counter } of answers.units ?? []) {
    const header = headerOf(column)?.[language] ?? column;
    rows.push(
      counter === undefined
        ? [sheet, word(WORDS.unit), header, unit]
        : [sheet, word(WORDS.counterUnit), `${header}: ${counter}`, unit],
    );
  }
  for (const { sheet, winter } of answers.winters ?? []) rows.push([sheet, word(WORDS.winter), "", winter]);
  if (answers.dateOrder) rows.push(["", word(WORDS.dateOrder), "", word(WORDS[answers.dateOrder])]);
  for (const kind of answers.oddCounts ?? []) rows.push(["", word(WORDS.oddCounts), word(KINDS[kind]), ""]);
  for (const kind of answers.recount ?? []) rows.push(["", word(WORDS.recount), word(KINDS[kind]), ""]);
  const lines = new Map<string, (string | number)[]>();
  for (const row of rows) {
    const key = JSON.stringify(row.slice(0, 3));
    if (!lines.has(key)) lines.set(key, row);
  }
  return {
    sheet: word(WORDS.sheet),
    title: [word(WORDS.title)],
    headers: [word(TEXTS.heads.sheet), word(WORDS.what), word(WORDS.of), word(WORDS.answer)],
    rows: [...lines.values()],
  };
}

/** The answers in a sheet of them; a line that says nothing known is passed over. */
export function answersOfSheet({ sheet, values }: SheetArea): ReadingAnswers {
  const file = OF_FILE.exec(sheet)?.[0] ?? "";
  return values.map((row) => answerOf(row, file)).reduce(withAnswers, {});
}

/** What was answered, in the options or on a sheet of the workbook; the options are newer. */
export function allAnswers(areas: readonly SheetArea[], given: ReadingAnswers = {}): ReadingAnswers {
  return withAnswers(areas.filter(holdsAnswers).map(answersOfSheet).reduce(withAnswers, {}), given);
}

function answerOf([first, what, of, answer]: readonly CellValue[], file: string): ReadingAnswers {
  if (typeof what !== "string") return {};
  const sheet = isBlank(first) ? "" : file + String(first);
  const columns = typeof of === "string" ? columnsOf(of) : [];
  const is = (text: Text) => isWord(text, what);
  for (const shape of Object.values(SHEETS))
    if (is(headOf(shape.id)) && typeof of === "string") {
      const own = shape.columns.find(({ header }) => isWord(header, String(answer)));
      return own ? { heads: [{ sheet, shape: shape.id, columns: { [of]: own.id } }] } : {};
    }
  if (is(WORDS.value) && (typeof answer === "string" || typeof answer === "number"))
    return { constants: columns.map((column) => ({ sheet, column, value: answer })) };
  if (is(WORDS.leaveOut)) return { leaveOut: [sheet] };
  if (is(WORDS.unit)) return { units: columns.map((column) => ({ sheet, column, unit: String(answer) })) };
  if (is(WORDS.counterUnit) && typeof of === "string") {
    const [, header, counter] = /^([^:]*): *(.*)$/.exec(of) ?? [];
    return counter === undefined
      ? {}
      : { units: columnsOf(header).map((column) => ({ sheet, column, unit: String(answer), counter })) };
  }
  if (is(WORDS.winter) && typeof answer === "number") return { winters: [{ sheet, winter: answer }] };
  const kind = typeof of === "string" ? kindOf(of) : undefined;
  if (is(WORDS.oddCounts) && kind) return { oddCounts: [kind] };
  if (is(WORDS.recount) && kind) return { recount: [kind] };
  if (!is(WORDS.dateOrder)) return {};
  const order = (["dayFirst", "monthFirst"] as const).find((one: DayOrder) =>
    isWord(WORDS[one], String(answer)),
  );
  return order ? { dateOrder: order } : {};
}

function isWord(text: Text, word: string): boolean {
  return LANGUAGES.some((language) => wordKey(text[language]) === wordKey(word));
}

function headOf(shape: SheetId): Text {
  return withTexts(WORDS.headOf, { shape: SHEETS[shape].name });
}

function headerOf(id: string, sheet?: SheetId): Text | undefined {
  for (const { columns } of sheet ? [SHEETS[sheet]] : Object.values(SHEETS))
    for (const column of columns) if (column.id === id) return column.header;
  return undefined;
}

/** Columns of that name; two sheets may have one each. */
function columnsOf(word: string): string[] {
  const named = Object.values(SHEETS).flatMap(({ columns }) =>
    columns.filter(({ header }) => isWord(header, word)),
  );
  return [...new Set(named.map(({ id }) => id))];
}

function kindOf(word: string): DoubtKind | undefined {
  return (Object.keys(KINDS) as DoubtKind[]).find((kind) => isWord(KINDS[kind], word));
}
