import * as fc from "fast-check";
import { withAnswers, type ReadingAnswers } from "../../src/survey/reading/readingAccount";
import { allFindings } from "../../src/survey/checks/checkSeason";
import type { Finding } from "../../src/survey/checks/finding";
import { readSeason } from "../../src/survey/reading/readSeason";
import type { MergedArea, SheetArea } from "../../src/survey/reading/sheetArea";
import type { Season } from "../../src/survey/season/season";
import { placeName } from "../../src/texts/placeName";
import type { CellValue } from "../../src/survey/sheets/cell";

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
  keys: fc.constantFrom("each", "onceAGroup", "merged", "captions", "above", "sheetName"),
  labels: fc.constantFrom("plain", "worded", "letters"),
  dates: fc.constantFrom("none", "day", "text", "words", "bothWays"),
  measured: fc.constantFrom("number", "text", "ownUnit"),
  /** Where the unit of lengths stands. */
  unit: fc.constantFrom("inHead", "below", "nowhere"),
  /** What stands in brackets behind the head of live spurs. */
  word: fc.constantFrom(undefined, undefined, undefined, "est.", "count", "before frost"),
  /** Names of both sides' columns in a line a vine; undefined for a line a cordon. */
  wide: fc.constantFrom(
    undefined,
    undefined,
    ["L", "R"],
    ["Left", "Right"],
    ["Left arm", "Right arm"],
    ["Brazo izquierdo", "Brazo derecho"],
  ),
  isBackward: fc.boolean(),
  blankColumns: fc.boolean(),
  isBeside: fc.boolean(),
  linesAbove: fc.integer({ min: 0, max: 3 }),
  extra: fc.constantFrom(undefined, "Weather", "Total", "Live spurs last year", "Live spurs %"),
  totals: fc.boolean(),
  headAgain: fc.boolean(),
});

type Layout = typeof layout extends fc.Arbitrary<infer Drawn> ? Drawn : never;

/** Columns that a line a vine has once for each side. */
const OF_A_SIDE: readonly ColumnId[] = ["length", "positions", "liveSpurs"];
const OF_A_GROUP: readonly ColumnId[] = ["block", "row"];

/** A column of a layout: its head, what stands below it, and its cell for the cordons of a line. */
interface Laid {
  readonly id?: ColumnId;
  readonly head: CellValue;
  readonly below: CellValue;
  cell(line: readonly Counted[]): CellValue;
}

/** The columns of a layout in their order, with a blank one behind each where they stand apart. */
function columnsOf(drawn: Layout): Laid[] {
  const isParted = drawn.keys === "above" || drawn.keys === "sheetName" || drawn.keys === "captions";
  const order = drawn.order.filter((id) => !isParted || !OF_A_GROUP.includes(id));
  const unit = unitOf(drawn);
  const headOf = (id: ColumnId) => {
    const head = drawn.heads[id];
    if (id === "length" && drawn.unit !== "inHead") return head.replace(/ \(.*/, "");
    return id === "liveSpurs" && drawn.word ? `${head} (${drawn.word})` : head;
  };
  const column = (id: ColumnId, side = 0, name?: string): Laid => ({
    id,
    head: name ? `${name} ${headOf(id)}` : headOf(id),
    below: id === "length" && drawn.unit === "below" ? unit : null,
    cell: (line) => (line[side] ? cellOf(line[side], id, drawn) : null),
  });
  const { wide } = drawn;
  const own = wide
    ? [
        ...order.filter((id) => id === "block" || id === "row" || id === "vine").map((id) => column(id)),
        ...wide.flatMap((name, side) =>
          order.filter((id) => OF_A_SIDE.includes(id)).map((id) => column(id, side, name)),
        ),
      ]
    : order.map((id) => column(id));
  const plain = (head: string, cell: Laid["cell"]): Laid => ({ head, below: null, cell });
  const laid = [
    ...own,
    ...(drawn.dates === "none" ? [] : [plain("Date", ([cordon]) => dateOf(cordon, drawn.dates))]),
    ...(drawn.extra ? [plain(drawn.extra, () => EXTRAS[drawn.extra!])] : []),
  ];
  return drawn.blankColumns ? laid.flatMap((each) => [each, plain("", () => null)]) : laid;
}

const EXTRAS = { Weather: "dry", Total: 99, "Live spurs last year": 99, "Live spurs %": 1 } as const;

/** The season on sheets laid out so. */
export function sheetsOf(drawn: Layout): SheetArea[] {
  const columns = columnsOf(drawn);
  const groups = new Map<string, Counted[]>();
  for (const cordon of SEASON) {
    const key = `${cordon.block} row ${cordon.row}`;
    groups.set(key, [...(groups.get(key) ?? []), cordon]);
  }
  const heads = [
    columns.map(({ head }) => (head === "" ? null : head)),
    ...(columns.some(({ below }) => below !== null) ? [columns.map(({ below }) => below)] : []),
  ];
  const isOnce = drawn.keys === "onceAGroup" || drawn.keys === "merged";
  const body = (cordons: readonly Counted[]) => {
    const lines = drawn.wide
      ? cordons.flatMap((cordon, i) => (i % 2 === 0 ? [[cordon, cordons[i + 1]]] : []))
      : cordons.map((cordon) => [cordon]);
    return (drawn.isBackward ? [...lines].reverse() : lines).map((line, i) =>
      columns.map(({ id, cell }) => (isOnce && i > 0 && id && OF_A_GROUP.includes(id) ? null : cell(line))),
    );
  };
  const total = (cordons: readonly Counted[]): CellValue[] =>
    columns.map(({ id }, i) =>
      i === 0
        ? "Total"
        : id === "liveSpurs"
          ? cordons.reduce((sum, { liveSpurs }) => sum + liveSpurs, 0)
          : null,
    );
  const above: Row[] = Array.from({ length: drawn.linesAbove }, (_, i) => [
    ["Counted by the winter crew", "Snow on the third day", "Page"][i],
  ]);
  const area = (sheet: string, values: readonly Row[], merged: MergedArea[] = []): SheetArea => ({
    sheet,
    firstRow: 1,
    firstColumn: 1,
    values,
    formulaAt: () => null,
    merged,
  });
  if (drawn.keys === "above" || drawn.keys === "sheetName")
    return [...groups].map(([name, cordons]) =>
      area(drawn.keys === "sheetName" ? name : `S${name.length}${cordons[0].row}${cordons[0].block[0]}`, [
        ...above,
        ...(drawn.keys === "above" ? [["Block:", cordons[0].block, "Row:", cordons[0].row]] : []),
        ...heads,
        ...body(cordons),
        ...(drawn.totals ? [total(cordons)] : []),
      ]),
    );
  if (drawn.isBeside && drawn.keys === "each" && !drawn.blankColumns) {
    const [one, other] = [0, 24].map((from) => [...heads, ...body(SEASON.slice(from, from + 24))]);
    return [area("Counts", [...above, ...one.map((row, i): Row => [...row, null, ...other[i]])])];
  }
  const lines: Row[] = [...above, ...heads];
  const merged: MergedArea[] = [];
  [...groups].forEach(([name, cordons], i) => {
    if (drawn.headAgain && i > 0) lines.push(...heads);
    if (drawn.keys === "captions") lines.push([name]);
    const own = body(cordons);
    if (drawn.keys === "merged")
      columns.forEach(({ id }, column) => {
        if (id && OF_A_GROUP.includes(id))
          merged.push({ row: lines.length, column, rows: own.length, columns: 1 });
      });
    lines.push(...own, ...(drawn.totals ? [total(cordons)] : []));
  });
  return [area("Counts", lines, merged)];
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

/** The unit in which lengths are written, whether a head says so or not. */
export function unitOf({ heads }: Layout): keyof typeof PER_FOOT {
  return (Object.keys(PER_FOOT) as (keyof typeof PER_FOOT)[]).find((each) =>
    heads.length.includes(`(${each})`),
  )!;
}

function cellOf(cordon: Counted, id: ColumnId, drawn: Layout): CellValue {
  const { sides, counts, labels, measured } = drawn;
  if (id === "side") return sides[cordon.side === "left" ? 0 : 1];
  if (id === "row" && labels !== "plain")
    return labels === "worded" ? `R${cordon.row}` : "AB"[cordon.row - 1];
  if (id === "vine" && labels === "worded") return `V0${cordon.vine}`;
  if (id === "length") {
    const unit = unitOf(drawn);
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

/** How many layouts were read exactly, how many asked about, since the count began. */
export const READINGS = { exact: 0, asked: 0, silent: 0, wrong: 0 };

/** A count that was read as another, or one that is missing without a word. */
class Misread extends Error {
  constructor(kind: "silent" | "wrong", what: string) {
    super(`${kind}: ${what}`);
    READINGS[kind]++;
  }
}

/**
 * Every number that was read is the true one of its cordon, every cordon that was counted is there, or the reading says
 * what it could not read; and the true unit, or the first answer to another question, makes no other count of it. Throws what is wrong or silent.
 */
export function mustBeExactOrAsked(areas: readonly SheetArea[], unit: string): void {
  const season = readSeason(areas);
  mustBeTrue(season);
  const { questions } = season.account;
  READINGS[questions.length === 0 ? "exact" : "asked"]++;
  const answers = questions.reduce<ReadingAnswers>(
    (all, { proposals }) =>
      withAnswers(all, proposals.find(({ units }) => units?.[0].unit === unit) ?? proposals[0] ?? {}),
    {},
  );
  if (questions.length > 0) mustBeTrue(readSeason(areas, { answers }));
}

/** Questions about whole rows, until whose answer any of them may be missing or without its place. */
const OF_ROWS = new Set(["heads", "noHeads", "keys", "winter", "hidden"]);

function mustBeTrue(season: Season): void {
  const truth = new Map(
    SEASON.map((cordon) => [keyOf(cordon.block, cordon.row, cordon.vine, cordon.side), cordon]),
  );
  const { questions } = season.account;
  const asksRows = questions.some(({ code }) => OF_ROWS.has(code));
  let findings: readonly Finding[] | undefined;
  const isFound = (sheet: string, row: number, id: string) =>
    (findings ??= allFindings(season)).some(
      (finding) => finding.sheet === sheet && (finding.row === row || finding.facts["columnId"] === id),
    );
  const seen = new Set<string>();
  for (const table of season.tables("cordons"))
    for (let i = 0; i < table.rowCount; i++) {
      const at = (id: string) => table.column(id)?.usable[i] ?? NaN;
      const isNamed = (id: string) =>
        questions.some(
          ({ code, facts }) =>
            [facts.column, facts.columns].flat().includes(id) || (code === "dateOrder" && id === "countedOn"),
        ) || isFound(table.sheet, table.sheetRow(i), id);
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
        if (asksRows) continue;
        throw new Misread("wrong", `a row that nobody counted: ${key}`);
      }
      if (seen.has(key)) throw new Misread("wrong", `counted twice: ${key}`);
      seen.add(key);
      const wanted = {
        positions: cordon.positions,
        liveSpurs: cordon.liveSpurs,
        length: cordon.length * 0.3048,
        ...(table.column("countedOn") ? { countedOn: FIRST_DAY + dayOf(cordon) } : {}),
      };
      for (const [id, value] of Object.entries(wanted)) {
        if (Math.abs(at(id) - value) <= 1e-9 || (Number.isNaN(at(id)) && isNamed(id))) continue;
        throw new Misread(
          Number.isNaN(at(id)) ? "silent" : "wrong",
          `${key}: ${id} is ${at(id)}, but ${value} was counted`,
        );
      }
    }
  if (seen.size < truth.size && !asksRows)
    throw new Misread("silent", `${truth.size - seen.size} cordons are missing and nothing is asked`);
}

/** The number of a row whose label may be a letter. */
const rowNumber = (place: number) => {
  const label = placeName(place);
  return typeof label === "string" ? label.charCodeAt(0) - 64 : label;
};

function keyOf(block: string, row: number, vine: number, side: string): string {
  return [block.toLowerCase(), row, vine, side].join("|");
}
