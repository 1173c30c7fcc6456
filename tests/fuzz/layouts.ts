import * as fc from "fast-check";
import { readSeason } from "../../src/survey/reading/readSeason";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import type { Season } from "../../src/survey/season/season";
import { placeName } from "../../src/texts/placeName";
import { isCellError, type CellValue } from "../../src/survey/sheets/cell";

type Row = readonly CellValue[];

/** A cordon as the crew counted it. */
interface Counted {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly side: "left" | "right";
  readonly cordon: string;
  readonly length: number;
  readonly positions: number;
  readonly liveSpurs: number;
}

/** An invented season of two blocks with two rows each; its numbers follow from where a cordon stands. */
const SEASON: readonly Counted[] = ["North Bench", "Creek Side"].flatMap((block, b) =>
  [1, 2].flatMap((row) =>
    [1, 2, 3, 4, 5, 6].flatMap((vine) =>
      (["left", "right"] as const).map((side, at) => ({
        block,
        row,
        vine,
        side,
        cordon: "AB"[at],
        length: 3 + ((vine + at) % 3) / 2,
        positions: 7 + ((row + vine) % 3),
        liveSpurs: 1 + ((b + row + vine + at) % 7),
      })),
    ),
  ),
);

const COLUMNS = {
  block: ["Block", "BLOCK:", "Field", "Cuartel", "Parcelle"],
  row: ["Row", "Row #", "Row No.", "Hilera", "Rang"],
  vine: ["Vine", "VINE*", "Vine no", "Planta"],
  side: ["Side", " side ", "Lado"],
  cordon: ["Cordon", "Cordon\u00a0", "Brazo"],
  length: ["Length (ft)", "LENGTH (in)", "Length (cm)"],
  positions: ["Positions", "positions*"],
  liveSpurs: ["Live spurs", "LIVE  SPURS", "Pulgares vivos"],
} as const;
type ColumnId = keyof typeof COLUMNS;
const IDS = Object.keys(COLUMNS) as ColumnId[];
const PER_FOOT = { ft: 1, in: 12, cm: 30.48 } as const;

/** How a sheet is laid out. */
export const layout = fc.record({
  heads: fc.record(
    Object.fromEntries(IDS.map((id) => [id, fc.constantFrom(...COLUMNS[id])])) as {
      [id in ColumnId]: fc.Arbitrary<string>;
    },
  ),
  order: fc.shuffledSubarray(IDS, { minLength: IDS.length }),
  sides: fc.constantFrom(
    ["left", "right"],
    ["L", "R"],
    ["LH", "RH"],
    ["izquierda", "derecha"],
    ["gauche", "droite"],
  ),
  counts: fc.constantFrom("number", "text", "strokes", "words"),
  keys: fc.constantFrom("each", "onceAGroup", "captions", "above", "sheetName"),
  labels: fc.constantFrom("plain", "worded", "letters"),
  dates: fc.constantFrom("none", "day", "text", "words", "bothWays"),
  measured: fc.constantFrom("number", "text", "ownUnit"),
  linesAbove: fc.integer({ min: 0, max: 3 }),
  extra: fc.constantFrom(undefined, "Weather", "Total", "Live spurs last year", "Live spurs %"),
  totals: fc.boolean(),
  headAgain: fc.boolean(),
});

type Layout = typeof layout extends fc.Arbitrary<infer Drawn> ? Drawn : never;

/** The season on sheets laid out so. */
export function sheetsOf(drawn: Layout): SheetArea[] {
  const parted = drawn.keys === "above" || drawn.keys === "sheetName";
  const order =
    parted || drawn.keys === "captions"
      ? drawn.order.filter((id) => id !== "block" && id !== "row")
      : drawn.order;
  const groups = new Map<string, Counted[]>();
  for (const cordon of SEASON) {
    const key = `${cordon.block} row ${cordon.row}`;
    groups.set(key, [...(groups.get(key) ?? []), cordon]);
  }
  const heads: CellValue[] = [
    ...order.map((id) => drawn.heads[id]),
    ...(drawn.dates === "none" ? [] : ["Date"]),
    ...(drawn.extra ? [drawn.extra] : []),
  ];
  const body = (cordons: readonly Counted[]) =>
    cordons.map((cordon, i): CellValue[] => [
      ...order.map((id) =>
        drawn.keys === "onceAGroup" && i > 0 && (id === "block" || id === "row")
          ? null
          : cellOf(cordon, id, drawn),
      ),
      ...(drawn.dates === "none" ? [] : [dateOf(cordon, drawn.dates)]),
      ...(drawn.extra ? [drawn.extra === "Weather" ? "dry" : drawn.extra === "Live spurs %" ? 1 : 99] : []),
    ]);
  const total = (cordons: readonly Counted[]): CellValue[] =>
    order.map((id, i) =>
      i === 0
        ? "Total"
        : id === "liveSpurs"
          ? cordons.reduce((sum, { liveSpurs }) => sum + liveSpurs, 0)
          : null,
    );
  const above: Row[] = Array.from({ length: drawn.linesAbove }, (_, i) => [
    ["Counted by the winter crew", "Snow on the third day", "Page"][i],
  ]);
  const area = (sheet: string, values: readonly Row[]): SheetArea => ({
    sheet,
    firstRow: 1,
    firstColumn: 1,
    values,
    formulaAt: () => null,
  });
  if (parted)
    return [...groups].map(([name, cordons]) =>
      area(drawn.keys === "sheetName" ? name : `S${name.length}${cordons[0].row}${cordons[0].block[0]}`, [
        ...above,
        ...(drawn.keys === "above" ? [["Block:", cordons[0].block, "Row:", cordons[0].row]] : []),
        heads,
        ...body(cordons),
        ...(drawn.totals ? [total(cordons)] : []),
      ]),
    );
  const lines = [...groups].flatMap(([name, cordons], i): Row[] => [
    ...(drawn.headAgain && i > 0 ? [heads] : []),
    ...(drawn.keys === "captions" ? [[name]] : []),
    ...body(cordons),
    ...(drawn.totals ? [total(cordons)] : []),
  ]);
  return [area("Counts", [...above, heads, ...lines])];
}

/** Days of a walk over the first days of February 2026, a row of vines a day; day 46,055 is 2 February. */
const FIRST_DAY = 46055;
const dayOf = ({ block, row }: Counted) => (block === "North Bench" ? 0 : 2) + row - 1;

function dateOf(cordon: Counted, how: Layout["dates"]): CellValue {
  const day = 2 + dayOf(cordon);
  if (how === "day") return FIRST_DAY + dayOf(cordon);
  if (how === "text") return `2026-02-0${day}`;
  return how === "words" ? `${day} Feb 2026` : `0${day}/02/2026`;
}

function cellOf(cordon: Counted, id: ColumnId, drawn: Layout): CellValue {
  const { sides, counts, heads, labels, measured } = drawn;
  if (id === "side") return sides[cordon.side === "left" ? 0 : 1];
  if (id === "row" && labels !== "plain")
    return labels === "worded" ? `R${cordon.row}` : "AB"[cordon.row - 1];
  if (id === "vine" && labels === "worded") return `V0${cordon.vine}`;
  if (id === "length") {
    const unit = (Object.keys(PER_FOOT) as (keyof typeof PER_FOOT)[]).find((each) =>
      heads.length.includes(`(${each})`),
    )!;
    const length = Number((cordon.length * PER_FOOT[unit]).toFixed(4));
    return measured === "number" ? length : measured === "text" ? String(length) : `${length} ${unit}`;
  }
  const value = cordon[id];
  if (typeof value !== "number" || id === "row" || id === "vine" || counts === "number") return value;
  if (counts === "text") return String(value);
  if (counts === "words") return id === "liveSpurs" ? `${value} spurs` : value;
  const left = value % 5;
  return id === "liveSpurs"
    ? `${"|||| ".repeat((value - left) / 5)}${"|".repeat(left === 4 ? 4 : left)}`.trimStart()
    : value;
}

/**
 * Every number that was read is the true one of its cordon, every cordon that was counted is there, or the reading says
 * what it could not read. Throws what is wrong in silence.
 */
export function mustBeExactOrAsked(areas: readonly SheetArea[]): void {
  const season = readSeason(areas);
  const truth = new Map(
    SEASON.map((cordon) => [keyOf(cordon.block, cordon.row, cordon.vine, cordon.side), cordon]),
  );
  const isAsked = season.account.questions.length > 0;
  const seen = new Set<string>();
  for (const table of season.tables("cordons"))
    for (let i = 0; i < table.rowCount; i++) {
      const at = (id: string) => table.column(id)?.usable[i] ?? NaN;
      const block = table.column("block");
      const side = table.column("side");
      const key = keyOf(
        block ? season.words.wordOf(block.codes[i]) : "",
        rowNumber(at("row")),
        at("vine"),
        side?.column.choices?.[side.codes[i]]?.id ?? "",
      );
      const cordon = truth.get(key);
      if (!cordon) {
        if (isAsked || hasErrorKey(table, i)) continue;
        throw new Error(`a row that nobody counted: ${key}`);
      }
      if (seen.has(key)) throw new Error(`counted twice: ${key}`);
      seen.add(key);
      for (const id of ["positions", "liveSpurs"] as const)
        if (at(id) !== cordon[id] && !(Number.isNaN(at(id)) && isAsked))
          throw new Error(`${key}: ${id} is ${at(id)}, but ${cordon[id]} were counted`);
      const date = table.column("countedOn");
      if (
        date &&
        at("countedOn") !== FIRST_DAY + dayOf(cordon) &&
        !(Number.isNaN(at("countedOn")) && isAsked)
      )
        throw new Error(`${key}: dated ${at("countedOn")}, but counted on ${FIRST_DAY + dayOf(cordon)}`);
      if (Math.abs(at("length") - cordon.length * 0.3048) > 1e-9 && !(Number.isNaN(at("length")) && isAsked))
        throw new Error(`${key}: length is ${at("length")} m, but ${cordon.length} ft were measured`);
    }
  if (seen.size < truth.size && !isAsked)
    throw new Error(`${truth.size - seen.size} cordons are missing and nothing is asked`);
}

function hasErrorKey(table: ReturnType<Season["tables"]>[number], i: number): boolean {
  return ["block", "row", "vine", "side"].some((id) => {
    const cell = table.column(id)?.raw.at(i);
    return isCellError(cell ?? null);
  });
}

/** The number of a row whose label may be a letter. */
const rowNumber = (place: number) => {
  const label = placeName(place);
  return typeof label === "string" ? label.charCodeAt(0) - 64 : label;
};

function keyOf(block: string, row: number, vine: number, side: string): string {
  return [block.toLowerCase(), row, vine, side].join("|");
}
