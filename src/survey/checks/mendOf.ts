import { countOfText, doubtOfNumber } from "../reading/countOfText";
import {
  dayInWinter,
  isoDay,
  isPlausibleDay,
  winterOf,
  yearlessDate,
  yearsLater,
} from "../reading/serialDate";
import { textNumber } from "../reading/textNumber";
import { CELL, type Season, type SurveyColumn } from "../season/season";
import type { CellValue } from "../sheets/cell";
import { unitNamed } from "../sheets/unit";
import type { Finding } from "./finding";
import { findingCell, type FindingCell } from "./findingCell";

/** What a cell holds and what it would hold once mended, in the sheet's own units. */
export interface CellMend {
  readonly sheet: string;
  readonly row: number;
  /** Column of the sheet, 1 is A. */
  readonly column: number;
  readonly from: CellValue;
  readonly to: string | number | null;
  /** What it would hold by the other of two readings, the less likely one. */
  readonly other?: number;
  /** True where nothing else can be meant; else it is what is most likely. */
  readonly isCertain: boolean;
}

/** The new content of a cell; undefined where nobody can say without looking at the vine. */
type Mended = Pick<CellMend, "to" | "other" | "isCertain"> | undefined;

/**
 * What would mend a finding, a cell each; none where only a look at the vine tells. A cell that holds a formula is
 * never changed.
 *
 * @param finding a finding of the check of `season`
 */
export function mendOf(finding: Finding, season: Season): CellMend[] {
  const mend = MENDS[finding.code];
  const first = mend && findingCell(finding, season);
  if (!first || first.column.sheetColumn === 0) return [];
  return rowsOf(finding, first).flatMap((index) => {
    const { table, column } = first;
    const from = column.raw.at(index) ?? null;
    const mended = mend(finding, { ...first, index, value: from });
    if (!mended || mended.to === from || table.formulaAt(index, column) !== null) return [];
    return [{ sheet: table.sheet, row: table.sheetRow(index), column: column.sheetColumn, from, ...mended }];
  });
}

/** Indexes of the rows that a finding speaks of: it is told once for a stretch of rows with the same content. */
function rowsOf({ code, facts }: Finding, { table, index, column }: FindingCell): number[] {
  if (!STRETCHES.has(code)) return [index];
  const last =
    typeof facts["lastRow"] === "number"
      ? (table.indexOfSheetRow(facts["lastRow"]) ?? index)
      : index + Number(facts["rows"] ?? 1) - 1;
  const rows: number[] = [];
  for (let i = index; i <= last; i++) if (column.states[i] !== CELL.blank) rows.push(i);
  return rows;
}

const STRETCHES = new Set(["unknownBlock", "dateOtherYear", "dateInFuture", "unitSlip"]);

/** Three digits behind one point or comma, which somebody may have meant as thousands. */
const COULD_BE_THOUSANDS = /^\s*[+-]?[1-9]\d{0,2}[.,]\d{3}\s*$/;

const MENDS: Readonly<Record<string, ((finding: Finding, cell: FindingCell) => Mended) | undefined>> = {
  numberAsText: (_, { value, column }) => {
    if (typeof value !== "string") return undefined;
    if (COULD_BE_THOUSANDS.test(value)) return thousandsOrParts(value, column);
    const number = textNumber(value);
    return number === undefined ? undefined : { to: number, isCertain: true };
  },
  notANumber: (_, { value, column }) => {
    if (column.column.kind !== "count") return undefined;
    const found =
      typeof value === "string"
        ? countOfText(value)
        : typeof value === "number"
          ? doubtOfNumber(value, column.column.most ?? Infinity)
          : undefined;
    const proposal = found && "doubt" in found ? found.proposal : undefined;
    return proposal === undefined ? undefined : { to: proposal, isCertain: false };
  },
  notADate: (_, { table, value }) => {
    const days = typeof value === "string" && table.winter !== undefined ? yearlessDate(value) : [];
    const [to, other] = days.flatMap((day) => dayInWinter(day, table.winter!) ?? []);
    return to === undefined || other !== undefined ? undefined : { to: isoDay(to), isCertain: false };
  },
  unknownWord: nearest,
  unknownBlock: nearest,
  missingAsZero: () => ({ to: null, isCertain: false }),
  dateOtherYear: inWinterOfTable,
  dateInFuture: inWinterOfTable,
  digitsSwapped: ({ facts }) => ({ to: Number(facts["meant"]), isCertain: false }),
  unitSlip: ({ facts }, { value, column }) => {
    const meant = unitNamed(String(facts["meant"]));
    if (!meant || typeof value !== "number") return undefined;
    return { to: Number(((value * meant.perUnit) / column.perUnit).toPrecision(3)), isCertain: false };
  },
};

/** 1.250 as a thousand and as one and a quarter, within the column's limits; the one nearer to its middle first. */
function thousandsOrParts(text: string, own: SurveyColumn): Mended {
  const { column, perUnit } = own;
  const { kind, least = -Infinity, most = Infinity } = column;
  const middle = middleOf(own);
  const off = (number: number) =>
    middle === undefined ? 0 : Math.abs(Math.log((Math.abs(number) * perUnit) / middle));
  const [to, other] = [Number(text.replace(/[.,]/, "")), textNumber(text)!]
    .filter((number) => number * perUnit >= least && number * perUnit <= most)
    .filter((number) => kind !== "count" || Number.isInteger(number))
    .sort((one, two) => off(one) - off(two));
  return to === undefined ? undefined : { to, ...(other === undefined ? {} : { other }), isCertain: false };
}

const middles = new WeakMap<SurveyColumn, number | undefined>();

/** The middle one of a column's numbers above 0, found once for all its cells; undefined without any. */
function middleOf(column: SurveyColumn): number | undefined {
  if (!middles.has(column)) {
    const sorted = column.numbers.filter((value) => value > 0).sort();
    middles.set(column, sorted[sorted.length >> 1]);
  }
  return middles.get(column);
}

function nearest({ facts }: Finding): Mended {
  const word = facts["nearest"];
  return typeof word === "string" ? { to: word, isCertain: false } : undefined;
}

/** The same day in the winter that the rest of the table was counted in: the January slip. */
function inWinterOfTable({ facts }: Finding, { table, column, index, value }: FindingCell): Mended {
  const serial = column.numbers[index];
  if (table.winter === undefined || !isPlausibleDay(serial)) return undefined;
  const slip = table.winter - winterOf(serial);
  if (Math.abs(slip) !== 1) return undefined;
  const to = yearsLater(serial, slip);
  if (to === undefined || (typeof facts["today"] === "string" && isoDay(to) > facts["today"]))
    return undefined;
  return { to: typeof value === "string" ? isoDay(to) : to, isCertain: false };
}
