import { grouped } from "../../domain/grouped";
import { CELL, type SurveyColumn, type SurveyTable } from "../season/season";
import { columnsById } from "../season/surveyTable";
import { holdsUnit, unitNamed, type Unit } from "../sheets/unit";
import type { Words } from "../sheets/words";
import { LEAST_VALUES, lies, MIDDLES, middleOf, STEPS, WRITTEN } from "./likelyUnits";
import type { OpenAccount, ReadingAnswers } from "./readingAccount";
import { textNumber } from "./textNumber";

/** Measured columns in which one counter can have kept to a unit of his own. */
const MEASURED = [
  ["cordons", "length"],
  ["cordons", "diameter"],
  ["vines", "prunings"],
] as const;

/** How many times a counter's middle value is the others' at the least, where they counted the same blocks and where not; ours. */
const TIMES_OFF = 2;
const TIMES_OFF_ELSEWHERE = 6;
/** How near the values must come to the others' in the other unit, as a ratio, and how many of them nearer than before; ours. */
const NEAR = 1.35;
const SHARE_NEARER = 0.9;
/** Values that are looked at of one kind, evenly over all its tables. */
const MOST_SAMPLED = 2000;

/** A counter who wrote a column of some sheets in another unit than its head's. */
interface Habit {
  readonly counter: number;
  readonly unit: Unit;
  readonly likely: Unit;
  readonly sheets: readonly string[];
}

/**
 * Values of counters who wrote in another unit than the head's: read in it where that was answered; asked, and left unread
 * till then, where they are the others' values in that unit only. The values of other counters stay as they are.
 *
 * @param account takes one question for each counter and column
 */
export function unitsOfCounters(
  tables: readonly SurveyTable[],
  words: Words,
  answers: ReadingAnswers,
  account: OpenAccount,
): SurveyTable[] {
  const known = tables.map((table) => inAnsweredUnits(table, words, answers));
  for (const [shape, id] of MEASURED) {
    const own = known.filter((table) => table.shape.id === shape && table.column(id));
    for (const { counter, unit, likely, sheets } of habitsOf(own, shape, id)) {
      const name = words.wordOf(counter);
      let rows = 0;
      let head = "";
      known.forEach((table, at) => {
        const column = table.column(id);
        if (table.shape.id !== shape || !sheets.includes(table.sheet) || column?.unit?.id !== unit.id) return;
        head ||= column.header;
        const asked = ofCounter(table, column, counter);
        rows += asked.length;
        known[at] = withColumn(
          table,
          changed(column, asked, () => NaN, CELL.unitAsked),
        );
      });
      const proposed = new Set([likely, unit, ...WRITTEN.map((other) => unitNamed(other)!)]);
      account.questions.push({
        code: "counterUnit",
        sheet: sheets[0],
        facts: { sheets, counter: name, head, column: id, unit: unit.id, likely: likely.id, rows },
        proposals: [...proposed]
          .filter(({ dimension }) => dimension === unit.dimension)
          .map((other) => ({
            units: sheets.map((sheet) => ({ sheet, column: id, unit: other.id, counter: name })),
          })),
      });
    }
  }
  return known;
}

/** The table with the values of counters in the units that were answered for them. */
function inAnsweredUnits(table: SurveyTable, words: Words, { units = [] }: ReadingAnswers): SurveyTable {
  let result = table;
  const given = units.filter(({ sheet, counter }) => sheet === table.sheet && counter !== undefined);
  for (const [id, own] of grouped(given, ({ column }) => column)) {
    const column = table.column(id);
    if (!column?.unit || !table.column("countedBy")) continue;
    const byCounter = new Map<number, Unit>();
    for (const { counter, unit } of own) {
      const code = words.codeOf(counter);
      const meant = unitNamed(unit);
      if (meant && holdsUnit(column.column.kind, meant) && !byCounter.has(code)) byCounter.set(code, meant);
    }
    let next: SurveyColumn = column;
    for (const [counter, { perUnit }] of byCounter)
      next = changed(next, ofCounter(table, column, counter), (cell) => cell * perUnit, CELL.usable);
    result = withColumn(result, { ...next, ofCounters: byCounter });
  }
  return result;
}

/** Rows in which a counter wrote a number without a unit of its own. */
function ofCounter(table: SurveyTable, { numbers, raw }: SurveyColumn, counter: number): number[] {
  const codes = table.column("countedBy")?.codes;
  const rows: number[] = [];
  for (let i = 0; i < table.rowCount; i++)
    if (codes?.[i] === counter && !Number.isNaN(numbers[i]) && plainNumber(raw.at(i)) !== undefined)
      rows.push(i);
  return rows;
}

function plainNumber(cell: unknown): number | undefined {
  return typeof cell === "number" ? cell : typeof cell === "string" ? textNumber(cell) : undefined;
}

function changed(
  column: SurveyColumn,
  rows: readonly number[],
  valueOf: (cell: number) => number,
  state: number,
): SurveyColumn {
  const numbers = Float64Array.from(column.numbers);
  const usable = Float64Array.from(column.usable);
  const states = Uint8Array.from(column.states);
  for (const i of rows) {
    numbers[i] = usable[i] = valueOf(plainNumber(column.raw.at(i))!);
    states[i] = state;
  }
  return { ...column, numbers, usable, states };
}

function withColumn(table: SurveyTable, column: SurveyColumn): SurveyTable {
  const columns = table.columns.map((own) => (own.column === column.column ? column : own));
  return { ...table, ...columnsById(columns) };
}

/** A value with where it stands; of lengths the distance from a position to the next, which differs least. */
interface Sample {
  readonly sheet: string;
  readonly counter: number;
  readonly block: number;
  readonly unit: Unit;
  readonly isAnswered: boolean;
  readonly value: number;
}

function habitsOf(tables: readonly SurveyTable[], shape: string, id: string): Habit[] {
  const counted = tables.filter((table) => table.column("countedBy"));
  const isStep = (table: SurveyTable) => id === "length" && table.column("positions") !== undefined;
  const habits = new Map<string, Habit>();
  for (const byStep of [true, false]) {
    const samples = sampled(
      counted.filter((table) => isStep(table) === byStep),
      id,
    );
    const counters = [...grouped(samples, ({ counter }) => counter).values()];
    const middles = counters.flatMap((all) => [
      middleValue(all),
      ...[...grouped(all, ({ sheet }) => sheet).values()]
        .filter(({ length }) => length >= LEAST_VALUES)
        .map(middleValue),
    ]);
    if (counters.length < 2 || Math.max(...middles) < Math.min(...middles) * TIMES_OFF) continue;
    const range = byStep ? STEPS : MIDDLES.get(`${shape} ${id}`)!;
    const usual = counters.filter((all) => lies(middleValue(all), range));
    const compared = usual.length > 0 ? usual.flat() : samples;
    const open = samples.filter(({ isAnswered }) => !isAnswered);
    for (const all of grouped(open, ({ counter, unit }) => `${counter} ${unit.id}`).values())
      for (const [sheet, inSheet] of grouped(all, (sample) => sample.sheet)) {
        const [{ counter, unit }] = all;
        const likely = likelyOf(inSheet.length < LEAST_VALUES ? all : inSheet, compared);
        if (!likely) continue;
        const key = `${counter} ${unit.id} ${likely.id}`;
        const sheets = habits.get(key)?.sheets ?? [];
        habits.set(key, { counter, unit, likely, sheets: [...new Set([...sheets, sheet])] });
      }
  }
  return [...habits.values()];
}

const middleValue = (samples: readonly Sample[]) => middleOf(samples.map(({ value }) => value));

function sampled(tables: readonly SurveyTable[], id: string): Sample[] {
  const rows = tables.reduce((sum, { rowCount }) => sum + rowCount, 0);
  const step = Math.max(1, Math.floor(rows / MOST_SAMPLED));
  const samples: Sample[] = [];
  for (const table of tables) {
    const { unit, numbers, ofCounters } = table.column(id)!;
    const counters = table.column("countedBy")!.codes;
    const blocks = table.column("block")?.codes;
    const positions = id === "length" ? table.column("positions")?.numbers : undefined;
    for (let i = 0; i < table.rowCount && unit; i += step) {
      const value = positions ? (positions[i] > 1 ? numbers[i] / positions[i] : NaN) : numbers[i];
      if (!(value > 0) || counters[i] < 0) continue;
      const counter = counters[i];
      samples.push({
        sheet: table.sheet,
        counter,
        block: blocks?.[i] ?? -1,
        unit,
        isAnswered: ofCounters?.has(counter) === true,
        value,
      });
    }
  }
  return samples;
}

/** The unit in which a counter's values are those of all others; undefined where they are as they stand. */
function likelyOf(own: readonly Sample[], all: readonly Sample[]): Unit | undefined {
  if (own.length < LEAST_VALUES) return undefined;
  const [{ counter, unit }] = own;
  const blocks = new Set(own.map(({ block }) => block));
  const others = all.filter((sample) => sample.counter !== counter);
  const near = others.filter(({ block }) => blocks.has(block));
  const isNear = near.length >= LEAST_VALUES;
  const compared = isNear ? near : others;
  if (compared.length < LEAST_VALUES) return undefined;
  const usual = middleValue(compared);
  const off = (value: number, times = 1) => Math.abs(Math.log((value * times) / usual));
  const middle = middleValue(own);
  if (off(middle) < Math.log(isNear ? TIMES_OFF : TIMES_OFF_ELSEWHERE)) return undefined;
  const [likely] = WRITTEN.map((id) => unitNamed(id)!)
    .filter(({ dimension }) => dimension === unit.dimension)
    .map((other) => ({ other, times: other.perUnit / unit.perUnit }))
    .filter(({ times }) => off(middle, times) <= Math.log(NEAR))
    .sort((a, b) => off(middle, a.times) - off(middle, b.times));
  if (!likely) return undefined;
  const nearer = own.filter(({ value }) => off(value, likely.times) < off(value)).length;
  return nearer >= own.length * SHARE_NEARER ? likely.other : undefined;
}
