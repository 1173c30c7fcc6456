import { grouped } from "../../domain/grouped";
import { plainHeader } from "../sheets/column";
import { isBlank, type CellValue } from "../sheets/cell";
import type { FoundTable } from "./findTable";
import type { OpenAccount } from "./readingAccount";
import type { SheetArea } from "./sheetArea";
import { isPlausibleDay, textDate, winterOf } from "./serialDate";
import { yearOfName } from "./winters";

/** A table of a sheet, and where it stands in it. */
export interface LaidTable {
  readonly area: SheetArea;
  readonly place: FoundTable;
}

/** Heads of a column that tells each row's winter by its year. */
const YEAR_HEADS = new Set(
  "year season winter|ano temporada campana invierno|annee saison campagne hiver".split(/[ |]/),
);

/** Position of the column that tells each row's winter, undefined where no head names one. */
export function yearColumn({ area, place }: LaidTable): number | undefined {
  if (place.shape.id !== "cordons" && place.shape.id !== "vines") return undefined;
  const taken = new Set(place.columns.values());
  const at = area.values[place.headerIndex].findIndex(
    (cell, position) =>
      typeof cell === "string" &&
      !taken.has(position) &&
      YEAR_HEADS.has(plainHeader(cell).replace(/\W+$/, "")),
  );
  return at < 0 ? undefined : at;
}

/** Share of the newest winter's rows that must stand in an earlier one too: else the years are those of planting. */
const COUNTED_AGAIN = 0.2;

/**
 * A table in which the same cordons were counted in several winters as a table a winter, told apart by a column of years
 * or by the dates. Rows that tell no winter stay with the newest. Any other table as it is.
 */
export function rowsByWinter(laid: LaidTable, { leftOut }: Pick<OpenAccount, "leftOut">): LaidTable[] {
  const { area, place } = laid;
  const at = yearColumn(laid);
  const dates = place.shape.id === "cordons" ? columnAt(place, "countedOn") : undefined;
  const told = at ?? dates;
  if (told === undefined) return [laid];
  const winterOfCell = at === undefined ? winterOfDate() : yearOf;
  const first = place.headerIndex + 1;
  if (!tellsSeveral(area, first, (cells) => winterOfCell(cells[told]))) return [laid];
  const rows = area.values
    .slice(first)
    .map((cells, index): Row => ({ index: first + index, cells, winter: winterOfCell(cells[told]) }));
  const newest = rows.reduce((most, { winter = -Infinity }) => Math.max(most, winter), -Infinity);
  const winters = grouped(rows, ({ winter }) => winter ?? newest);
  if (!standAgain(place, winters, newest)) return [laid];
  const named = at === undefined ? undefined : plainHeader(String(area.values[place.headerIndex][at]));
  const unread = leftOut.findIndex(
    ({ what, sheet, facts }) =>
      what === "column" && sheet === area.sheet && plainHeader(String(facts["head"])) === named,
  );
  if (unread >= 0) leftOut.splice(unread, 1);
  const heads = area.values[place.headerIndex].map((cell, position) => (position === at ? null : cell));
  const sheetRowOf = place.sheetRowOf ?? ((index: number) => area.firstRow + index);
  return [...winters].map(([winter, own]) => {
    const indexOf = (row: number) => (row === 0 ? place.headerIndex : own[row - 1].index);
    return {
      area: {
        ...area,
        values: [heads, ...own.map(({ cells }) => cells)],
        formulaAt: (row, column) => area.formulaAt(indexOf(row), column),
        merged: undefined,
      },
      place: {
        ...place,
        headerIndex: 0,
        winter,
        sheetRowOf: (row) => sheetRowOf(indexOf(row)),
        sheetColumnOf: place.sheetColumnOf ?? ((position) => area.firstColumn + position),
        ...(place.hasMoved ? { hasMoved: (row: number) => place.hasMoved!(indexOf(row)) } : {}),
      },
    };
  });
}

/** True where two rows tell different winters; most tables are of one. */
function tellsSeveral(
  { values }: SheetArea,
  first: number,
  winterOfRow: (cells: readonly CellValue[]) => number | undefined,
): boolean {
  let known: number | undefined;
  for (let index = first; index < values.length; index++) {
    const winter = winterOfRow(values[index]);
    if (winter === undefined) continue;
    if (known !== undefined && winter !== known) return true;
    known = winter;
  }
  return false;
}

interface Row {
  readonly index: number;
  readonly cells: readonly CellValue[];
  readonly winter: number | undefined;
}

const columnAt = ({ columns }: FoundTable, wanted: string) =>
  [...columns].find(([{ id }]) => id === wanted)?.[1];

/** True where cordons, or vines, of the newest winter were counted in an earlier one of the table too. */
function standAgain(
  place: FoundTable,
  winters: ReadonlyMap<number, readonly Row[]>,
  newest: number,
): boolean {
  const keys = ["block", "row", "vine", "side", "cordon"].flatMap((id) => columnAt(place, id) ?? []);
  const nameOf = ({ cells }: Row) => keys.map((key) => String(cells[key] ?? "").toLowerCase()).join("|");
  const earlier = new Set(
    [...winters].flatMap(([winter, rows]) => (winter === newest ? [] : rows.map(nameOf))),
  );
  const latest = winters.get(newest)!;
  return latest.filter((row) => earlier.has(nameOf(row))).length >= latest.length * COUNTED_AGAIN;
}

/** The winter of a date, each text read once; undefined for what is none or can be read in two ways. */
function winterOfDate(): (cell: CellValue) => number | undefined {
  const known = new Map<string, number | undefined>();
  const ofText = (text: string) => {
    const date = textDate(text);
    return date && "serial" in date ? winterOf(date.serial) : undefined;
  };
  return (cell) => {
    if (typeof cell === "number") return isPlausibleDay(cell) ? winterOf(cell) : undefined;
    if (typeof cell !== "string") return undefined;
    if (!known.has(cell)) known.set(cell, ofText(cell));
    return known.get(cell);
  };
}

const [FIRST_YEAR, LAST_YEAR] = [1990, 2100];

/** The winter that a cell names by the year in which it ends: 2026, "2025/26". */
function yearOf(cell: CellValue): number | undefined {
  if (isBlank(cell)) return undefined;
  const year = typeof cell === "number" ? cell : yearOfName(String(cell));
  return year !== undefined && Number.isInteger(year) && year >= FIRST_YEAR && year <= LAST_YEAR
    ? year
    : undefined;
}
