import { spurLoss, yearsToFloor, type SpurLoss } from "../../domain/outlook/spurLoss";
import type { Range } from "../../domain/outlook/productRange";
import { LANGUAGES, type Language } from "../../texts/language";
import { WINTER_HEADERS } from "../../texts/season";
import type { CellValue } from "../sheets/cell";
import { plainHeader } from "../sheets/column";
import { winterOfSeason } from "./winterOfSeason";
import { fixedCordons, type Stays } from "./fixedCordons";
import { countsOfCordons } from "./gapsOfSeason";
import type { Season } from "./season";
import { NO_PLACE, placeOf, rowKey } from "./vinePlaces";
import { placeName } from "../../texts/placeName";
import { placeOfLabel } from "../reading/placeLabel";

/** What the Winters sheet keeps of one row of vines in one winter. */
export interface WinterRow {
  readonly block: string;
  readonly row: number;
  readonly year: number;
  /** Vines with a cordon that stays. */
  readonly vines: number;
  readonly cordons: number;
  readonly positions: number;
  readonly liveSpurs: number;
  readonly gaps: number;
  readonly longestGap: number;
  /** Live trunks of the row's vines, from the Vines sheet. */
  readonly liveTrunks: number;
}

export const WINTER_COLUMNS = [
  "block",
  "row",
  "year",
  "vines",
  "cordons",
  "positions",
  "liveSpurs",
  "gaps",
  "longestGap",
  "liveTrunks",
] as const satisfies readonly (keyof WinterRow)[];

/**
 * This winter's rows for the Winters sheet, from the cordons that stay, so that winters can be compared. Cordons without usable
 * positions and live spurs are left out.
 *
 * @param stays which cordons stay; left out: those fixed in the sheet
 */
export function winterRows(season: Season, stays: Stays = fixedCordons(season)): readonly WinterRow[] {
  const year = winterOfSeason(season);
  const places = season.places;
  const open = new Map<
    number,
    { -readonly [Key in keyof WinterRow]: WinterRow[Key] } & { seen: Set<number> }
  >();
  for (const table of season.tables("cordons")) {
    const keys = places.keysOf(table);
    const counted = countsOfCordons(table);
    for (let index = 0; index < keys.length; index++) {
      if (keys[index] === NO_PLACE || stays(table, index) !== true || !counted.areUsable(index)) continue;
      const { positions, liveSpurs, longestGap = 0 } = counted.at(index);
      const { block, row } = placeOf(keys[index]);
      const key = rowKey(keys[index]);
      const sums = open.get(key) ?? {
        block: season.words.wordOf(block),
        row,
        year,
        vines: 0,
        cordons: 0,
        positions: 0,
        liveSpurs: 0,
        gaps: 0,
        longestGap: 0,
        liveTrunks: 0,
        seen: new Set<number>(),
      };
      open.set(key, sums);
      sums.cordons++;
      sums.positions += positions;
      sums.liveSpurs += liveSpurs;
      sums.gaps += positions - liveSpurs;
      sums.longestGap = Math.max(sums.longestGap, longestGap);
      if (sums.seen.has(keys[index])) continue;
      sums.seen.add(keys[index]);
      sums.vines++;
      const vine = places.register().get(keys[index]);
      const trunks = vine?.table.column("liveTrunks")?.usable[vine.index];
      if (trunks !== undefined && trunks >= 0) sums.liveTrunks += trunks;
    }
  }
  return [...open.values()].map(({ seen: _, ...row }) => row).sort(inWalkOrder);
}

/** The rows of earlier winters with those of this one in the place of any of the same block, row and year. */
export function withWinter(kept: readonly WinterRow[], now: readonly WinterRow[]): readonly WinterRow[] {
  const key = ({ block, row, year }: WinterRow) => `${block.toLowerCase()}\n${row}\n${year}`;
  const fresh = new Set(now.map(key));
  return [...kept.filter((row) => !fresh.has(key(row))), ...now].sort(inWalkOrder);
}

/** The cells of a Winters sheet, headers first. */
export function winterCells(rows: readonly WinterRow[], language: Language): CellValue[][] {
  return [
    WINTER_COLUMNS.map((column) => WINTER_HEADERS[column][language]),
    ...rows.map((row) =>
      WINTER_COLUMNS.map((column) => (column === "row" ? placeName(row.row) : row[column])),
    ),
  ];
}

/** Reads a Winters sheet back, in any language and order of columns, under any title; rows that are not complete are left out. */
export function readWinterCells(cells: readonly (readonly CellValue[])[]): readonly WinterRow[] {
  const headerRow = winterHeadRow(cells);
  const places = headerRow < 0 ? undefined : placesIn(cells[headerRow]);
  if (!places) return [];
  return cells.slice(headerRow + 1).flatMap((cell): WinterRow[] => {
    const row = Object.fromEntries(places.map(([column, at]) => [column, cell[at]]));
    const label = typeof row["row"] === "string" ? placeOfLabel(row["row"], "") : undefined;
    const complete = WINTER_COLUMNS.every((column) =>
      column === "block"
        ? String(row[column] ?? "").trim() !== ""
        : isCount(row[column]) || (column === "row" && label !== undefined),
    );
    return complete && Number(row["liveSpurs"]) <= Number(row["positions"])
      ? [
          {
            ...(row as unknown as WinterRow),
            row: label ?? Number(row["row"]),
            block: String(row["block"]).trim(),
          },
        ]
      : [];
  });
}

/** Index of the row with all heads of a Winters sheet; -1 where there is none. */
export function winterHeadRow(cells: readonly (readonly CellValue[])[]): number {
  return cells.findIndex((row) => placesIn(row) !== undefined);
}

/** Where each column stands, when all of them do. */
function placesIn(row: readonly CellValue[]) {
  const headers = row.map((cell) => (typeof cell === "string" ? plainHeader(cell) : ""));
  const places = WINTER_COLUMNS.map((column) => {
    const names = LANGUAGES.map((language) => plainHeader(WINTER_HEADERS[column][language]));
    return [column, headers.findIndex((header) => names.includes(header))] as const;
  });
  return places.every(([, at]) => at >= 0) ? places : undefined;
}

/** How a block loses its spurs, and when it falls below the floor. */
export interface BlockLoss extends SpurLoss {
  readonly block: string;
  readonly yearsToFloor: Range;
  readonly floor: number;
}

/**
 * Loss of live spurs of one block over the winters of the Winters sheet.
 *
 * Refuses (tooFewRows) fewer than two rows with two winters.
 */
export function blockLoss(
  rows: readonly WinterRow[],
  block: string,
  confidence: number,
  floor: number,
): BlockLoss {
  const own = rows.filter((row) => row.block.toLowerCase() === block.toLowerCase());
  const loss = spurLoss(own, confidence);
  return { ...loss, block, floor, yearsToFloor: yearsToFloor(loss.lossAYear, loss.liveShare, floor) };
}

const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;

const inWalkOrder = (one: WinterRow, other: WinterRow) =>
  one.block.toLowerCase().localeCompare(other.block.toLowerCase()) ||
  one.row - other.row ||
  one.year - other.year;
