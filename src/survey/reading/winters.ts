import { CELL, type SurveyColumn, type SurveyTable } from "../season/season";
import { columnsById } from "../season/surveyTable";
import { BEFORE_COUNTING } from "../season/uncountedRows";
import { grouped } from "../../domain/grouped";
import type { OpenAccount, ReadingAnswers } from "./readingAccount";
import { isPlausibleDay, yearsLater, winterOf } from "./serialDate";

/** Days between counts that can still be one winter's, either side of the season's first day. */
export const ONE_WALK_DAYS = 75;
/** Share of a sheet's vines that must stand in another for the two to be the same vines in two winters. */
const SAME_VINES = 0.2;
const MOST_SAMPLED = 5000;

/**
 * Parts tables of this winter from those of earlier ones. A table belongs to an earlier winter only where the same vines
 * stand in a later one; another date without that is asked, and a year in a sheet's name is then the year of planting.
 *
 * @param told.isBegun true for a sheet of which only the first rows are given, which can be blank where the others are not
 * @param told.today the day on which it is read, where the host says
 */
export function partByWinter(
  tables: readonly SurveyTable[],
  answers: ReadingAnswers = {},
  account: OpenAccount = { notes: [], questions: [], leftOut: [] },
  { isBegun = () => false, today }: { isBegun?: (sheet: string) => boolean; today?: number } = {},
): { past: readonly SurveyTable[]; tables: readonly SurveyTable[] } {
  const settled = withoutBlank(
    tables.map((table) => answered(table, answers)),
    isBegun,
    account,
  );
  const past: SurveyTable[] = [];
  for (const id of new Set(settled.map((table) => table.shape.id))) {
    const own = settled.filter((table) => table.shape.id === id);
    if (new Set(own.map(({ winter }) => winter)).size < 2 && own[0].winter === undefined) continue;
    const parted = partOne(own, account);
    own.forEach((table, index) => (settled[settled.indexOf(table)] = parted.tables[index]));
    past.push(...parted.past);
  }
  askOtherWinter(
    settled.filter((table) => !past.includes(table)),
    answers,
    account,
    today,
  );
  return { past: past.sort((a, b) => (b.winter ?? 0) - (a.winter ?? 0)), tables: settled };
}

/** Share of a blank sheet's vines that must be counted in another for it to be the empty form of that one. */
const SAME_FORM = 0.9;

/** Without sheets that are laid out and blank while their vines are counted in another: forms to print, as is said. */
function withoutBlank(
  tables: readonly SurveyTable[],
  isBegun: (sheet: string) => boolean,
  account: OpenAccount,
): SurveyTable[] {
  const isBlank = ({ shape, sheet, columns, rowCount }: SurveyTable) =>
    shape.id === "cordons" &&
    rowCount > 0 &&
    !isBegun(sheet) &&
    columns.every(
      ({ column, states }) => BEFORE_COUNTING.has(column.id) || states.every((state) => state === CELL.blank),
    );
  const blank = tables.filter(isBlank);
  if (blank.length === 0) return [...tables];
  const counted = tables.filter((table) => table.shape.id === "cordons" && !blank.includes(table));
  const vines = new Set(counted.flatMap((table) => [...sampledVines(table)]));
  const forms = blank.filter((table) => {
    const own = [...sampledVines(table)];
    return own.length > 0 && own.filter((vine) => vines.has(vine)).length >= own.length * SAME_FORM;
  });
  for (const { sheet, rowCount } of forms)
    account.leftOut.push({ what: "rows", reason: "toCount", sheet, facts: { rows: rowCount } });
  return tables.filter((table) => !forms.includes(table));
}

/**
 * Asks about counts that are all dated in one winter where the name of their sheet, counts of vines or buds beside them or
 * the day on which they are read say the one beside it: a year that was typed wrong all the way down. They are read as
 * dated till then.
 */
function askOtherWinter(
  tables: readonly SurveyTable[],
  { winters = [] }: ReadingAnswers,
  account: OpenAccount,
  today: number | undefined,
): void {
  const dated = tables.filter((table) => middleDay(table) !== undefined);
  const counts = dated.filter(
    ({ shape, sheet }) => shape.id === "cordons" && !winters.some((own) => own.sheet === sheet),
  );
  const beside = new Set(dated.flatMap(({ shape, winter }) => (shape.id === "cordons" ? [] : [winter!])));
  const evidence = (table: SurveyTable): { by: "name" | "sheets" | "today"; likely: number } | undefined => {
    const { winter, sheet } = table;
    const later = winter! + 1;
    if (today !== undefined && middleDay(table)! > today && winterOf(today) === winter! - 1)
      return { by: "today", likely: winter! - 1 };
    if (yearOfName(sheet) === later) return { by: "name", likely: later };
    return beside.size === 1 && beside.has(later) ? { by: "sheets", likely: later } : undefined;
  };
  const told = counts.flatMap((table) => {
    const found = evidence(table);
    return found ? [{ table, ...found }] : [];
  });
  for (const own of grouped(told, ({ by, likely }) => `${by} ${likely}`).values()) {
    const [{ by, likely, table }] = own;
    const sheets = [...new Set(own.map((one) => one.table.sheet))];
    account.questions.push({
      code: "otherWinter",
      sheet: sheets[0],
      facts: {
        sheets,
        rows: own.reduce((sum, one) => sum + one.table.rowCount, 0),
        winter: table.winter!,
        likely,
        by,
      },
      proposals: [likely, table.winter!].map((winter) => ({
        winters: sheets.map((sheet) => ({ sheet, winter })),
      })),
    });
  }
}

function partOne(
  tables: readonly SurveyTable[],
  account: OpenAccount,
): { tables: readonly SurveyTable[]; past: readonly SurveyTable[] } {
  const vines = new Map<SurveyTable, Set<string>>();
  const vinesOf = (table: SurveyTable) => {
    let found = vines.get(table);
    if (!found) vines.set(table, (found = sampledVines(table)));
    return found;
  };
  const sharesVines = (table: SurveyTable, others: readonly SurveyTable[]) => {
    const own = vinesOf(table);
    if (own.size === 0) return others.length > 0;
    let shared = 0;
    for (const vine of own) if (others.some((other) => vinesOf(other).has(vine))) shared++;
    return shared >= own.size * SAME_VINES;
  };
  const isDated = (table: SurveyTable) => table.isWinterTold === true || middleDay(table) !== undefined;
  const known = tables.map((table) => {
    if (table.winter === undefined || isDated(table)) return table;
    const others = tables.filter((other) => other !== table && other.winter !== table.winter);
    if (others.length > 0 && sharesVines(table, others)) return table;
    if (others.length > 0)
      account.notes.push({ code: "plantingYear", sheet: table.sheet, facts: { year: table.winter } });
    return others.length > 0 ? { ...table, winter: undefined } : table;
  });
  const latest = known.reduce((most, { winter }) => Math.max(most, winter ?? -Infinity), -Infinity);
  const undated = known.filter(({ winter }) => winter === undefined);
  const isCurrent = (table: SurveyTable) =>
    table.winter === undefined ||
    (table.winter === latest && (undated.length === 0 || !sharesVines(table, undated)));
  const current = known.filter(isCurrent);
  const now = current.flatMap((table) => middleDay(table) ?? []);
  const past: SurveyTable[] = [];
  const slipped = new Map<number, { sheets: string[]; rows: number }>();
  const parted = known.map((table) => {
    if (isCurrent(table)) return table;
    const winter = table.winter!;
    const day = middleDay(table);
    const isSame = sharesVines(table, current);
    if (!isSame && day !== undefined && now.some((other) => Math.abs(other - day) <= ONE_WALK_DAYS)) {
      account.notes.push({
        code: "oneWinter",
        sheet: table.sheet,
        facts: { winter: latest, rows: table.rowCount },
      });
      return { ...table, winter: latest };
    }
    past.push(table);
    account.leftOut.push({
      what: "rows",
      reason: "pastWinter",
      sheet: table.sheet,
      facts: { rows: table.rowCount, winter },
    });
    if (!isSame && table.shape.id === "cordons") {
      const seen = slipped.get(winter) ?? { sheets: [], rows: 0 };
      seen.sheets.push(table.sheet);
      seen.rows += table.rowCount;
      slipped.set(winter, seen);
    }
    return table;
  });
  for (const [winter, { sheets, rows }] of slipped)
    account.questions.push({
      code: "winter",
      sheet: sheets[0],
      facts: { winter, likely: latest, sheets, rows },
      proposals: [{ winters: sheets.map((sheet) => ({ sheet, winter: latest })) }],
    });
  return { tables: parted, past };
}

/** Block, row and vine of rows of a table, at most a few thousand. */
function sampledVines(table: SurveyTable): Set<string> {
  const block = table.column("block");
  const row = table.column("row");
  const vine = table.column("vine");
  const vines = new Set<string>();
  if (!vine) return vines;
  const step = Math.max(1, Math.floor(table.rowCount / MOST_SAMPLED));
  for (let i = 0; i < table.rowCount; i += step) {
    if (Number.isNaN(vine.numbers[i])) continue;
    vines.add(`${block?.codes[i] ?? ""}|${row?.numbers[i] ?? ""}|${vine.numbers[i]}`);
  }
  return vines;
}

const middleDays = new WeakMap<SurveyTable, number | undefined>();

/** The day in the middle of those of a table; undefined without any. */
export function middleDay(table: SurveyTable): number | undefined {
  if (middleDays.has(table)) return middleDays.get(table);
  const days = Float64Array.from(table.column("countedOn")?.numbers ?? [])
    .filter(isPlausibleDay)
    .sort();
  const middle = days.length === 0 ? undefined : days[days.length >> 1];
  middleDays.set(table, middle);
  return middle;
}

/** The last year that the name of a sheet tells, of two such as 2025/26 the second; undefined without one. */
export function yearOfName(sheet: string): number | undefined {
  const years = [...sheet.matchAll(/(?<!\d)(?:(20\d\d)(?:\s*[-–/]\s*(\d\d(?:\d\d)?))?)(?!\d)/g)].at(-1);
  if (!years) return undefined;
  return years[2] === undefined ? Number(years[1]) : 2000 + (Number(years[2]) % 100);
}

/** The table in the winter that a person gave its sheet, its days moved by whole years. */
function answered(table: SurveyTable, { winters }: ReadingAnswers): SurveyTable {
  const wanted = winters?.find(({ sheet }) => sheet === table.sheet)?.winter;
  if (wanted === undefined || table.winter === wanted) return table;
  const columns = table.columns.map((column) =>
    column.column.id === "countedOn" ? moved(column, wanted) : column,
  );
  return { ...table, winter: wanted, ...columnsById(columns) };
}

function moved(column: SurveyColumn, winter: number): SurveyColumn {
  const numbers = Float64Array.from(column.numbers, (serial, i) => {
    if (column.states[i] !== CELL.usable || !isPlausibleDay(serial) || winterOf(serial) === winter)
      return serial;
    const years = winter - winterOf(serial);
    return yearsLater(serial, years) ?? serial + 365 * years;
  });
  return { ...column, numbers, usable: numbers };
}
