import type { SheetId } from "../sheets/column";
import type { Codes, SurveyTable } from "./surveyTable";
import { isYieldList } from "./yieldList";
import { NO_WORD } from "../sheets/words";
import { PARTS_OF_A_WAY } from "../../texts/placeName";

/** A row that names no usable block, row and vine. */
export const NO_PLACE = -1;

const ROWS = 8192;
const VINES = 8192;
const LETTERS = 512;
const SIDES = 8;

/** Parts by the tenths and quarters of a way, in their order. */
const PART_OF = new Map([
  ...[0, 6, 12, 20, 26, 32, 38, 44, 52, 58].map((part, tenths) => [tenths * 10, part] as const),
  [25, 16] as const,
  [75, 48] as const,
]);
const SHARE_OF = new Map([...PART_OF].map(([hundredths, part]) => [part, hundredths / 100]));

/** A row or vine on the parts of its way; NaN where no label stands. */
function onParts(place: number): number {
  const whole = Math.floor(place);
  if (whole === place) return place;
  const part = (place - whole) * PARTS_OF_A_WAY;
  if (part % 2 === 1) return place;
  return whole + (PART_OF.get(Math.round((place - whole) * 1e6) / 1e4) ?? NaN) / PARTS_OF_A_WAY;
}

/**
 * True for a place at a letter, a tenth or a quarter of the way from one to the next, and for a whole one.
 *
 * @example
 * isOnTheWay(12.25) // true
 * isOnTheWay(12.33) // false
 */
export const isOnTheWay = (place: number): boolean => !Number.isNaN(onParts(place));

function fromParts(place: number): number {
  const whole = Math.floor(place);
  if (whole === place) return place;
  const part = (place - whole) * PARTS_OF_A_WAY;
  return part % 2 === 1 ? place : Math.round((whole + SHARE_OF.get(part)!) * 100) / 100;
}

/**
 * One number for block, row and vine; NO_PLACE unless all three are usable. A row or vine between two others may stand at
 * a letter, a vine at a tenth of the way or a quarter too.
 */
export function placeKey(block: number, row: number, vine: number): number {
  if (block === NO_WORD || !(row >= 1 && row < ROWS) || !(vine >= 1 && vine < VINES)) return NO_PLACE;
  const key = (block * ROWS + onParts(row)) * PARTS_OF_A_WAY * VINES + onParts(vine);
  return Number.isNaN(key) ? NO_PLACE : key;
}

/** Block, row and vine of a place. */
export function placeOf(key: number): { block: number; row: number; vine: number } {
  const vine = key % VINES;
  const rest = (key - vine) / VINES / PARTS_OF_A_WAY;
  const row = rest % ROWS;
  return { block: (rest - row) / ROWS, row: fromParts(row), vine: fromParts(vine) };
}

/**
 * One text for a vine by the name of its block, for what holds vines beside a Season.
 *
 * @example
 * namedPlace("North Bench", 3, 12.5) // "3 12.5 North Bench"
 */
export const namedPlace = (block: string, row: number, vine: number) => `${row} ${vine} ${block}`;

/** One number for block and row of a place. */
export function rowKey(key: number): number {
  return Math.floor(key / VINES);
}

/** Block of a row's number. */
export function blockOfRow(row: number): number {
  return Math.floor(row / ROWS / PARTS_OF_A_WAY);
}

/** The neighbour `steps` vines further along the same row. */
export function neighbourKey(key: number, steps: number): number {
  return key + steps;
}

const keysOfTables = new WeakMap<SurveyTable, Float64Array>();

/** Where each row stands in the vineyard, and the register of vines, made once for a Season. */
export class VinePlaces {
  private registerRows: Map<number, RegisterEntry> | undefined;
  private blocks: Map<number, { table: SurveyTable; index: number }> | undefined;
  private registered: Set<number> | undefined;

  private readonly letters = new Map<number, number>();
  private readonly between = new Map<number, number>();

  /** @param tables the tables of this winter by their sheet */
  constructor(private readonly tables: (id: SheetId) => readonly SurveyTable[]) {}

  /** One number for block, row, vine, side and letter of a cordon; undefined for a row without vine or letter. */
  cordonKeys(table: SurveyTable): (index: number) => number | undefined {
    const vines = this.keysOf(table);
    const cordon = table.column("cordon")?.codes;
    const side = table.column("side")?.codes;
    if (!cordon) return () => undefined;
    return (i) => {
      if (vines[i] === NO_PLACE || cordon[i] < 0) return undefined;
      const letter = this.letterOf(cordon[i]);
      if (letter >= LETTERS) return undefined;
      return (this.vineNumber(vines[i]) * LETTERS + letter) * SIDES + (side ? Math.max(0, side[i] + 1) : 0);
    };
  }

  /** A whole number for a vine that leaves room for its cordons: rows and vines between others are numbered below 0. */
  private vineNumber(key: number): number {
    const vine = key % VINES;
    const row = (key - vine) / VINES / PARTS_OF_A_WAY;
    if (Number.isInteger(vine) && Number.isInteger(row)) return row * VINES + vine;
    let number = this.between.get(key);
    if (number === undefined) this.between.set(key, (number = -1 - this.between.size));
    return number;
  }

  /** Small numbers for the letters of cordons, in the order in which they are met. */
  private letterOf(word: number): number {
    let letter = this.letters.get(word);
    if (letter === undefined) this.letters.set(word, (letter = this.letters.size));
    return letter;
  }

  /** Key of the vine for each row of the table. */
  keysOf(table: SurveyTable): Float64Array {
    const known = keysOfTables.get(table);
    if (known) return known;
    const keys = new Float64Array(table.rowCount).fill(NO_PLACE);
    const block = table.column("block")?.codes;
    const row = table.column("row")?.usable;
    const vine = table.column("vine")?.usable;
    if (block && row && vine)
      for (let i = 0; i < keys.length; i++) keys[i] = placeKey(block[i], row[i], vine[i]);
    keysOfTables.set(table, keys);
    return keys;
  }

  /** The register: the first row of the Vines sheets for each vine, of those with statuses before lists without. */
  register(): ReadonlyMap<number, RegisterEntry> {
    if (this.registerRows) return this.registerRows;
    const register = new Map<number, RegisterEntry>();
    const hasStatus = (table: SurveyTable) => Number(table.column("status") !== undefined);
    for (const table of [...this.tables("vines")].sort((a, b) => hasStatus(b) - hasStatus(a))) {
      const keys = this.keysOf(table);
      for (let index = 0; index < keys.length; index++)
        if (keys[index] !== NO_PLACE && !register.has(keys[index]))
          register.set(keys[index], { table, index });
    }
    this.registerRows = register;
    return register;
  }

  /**
   * True when the Vines sheets list vines of that block, so that a vine missing there is unknown. A list without statuses
   * is of the few vines that were weighed or whose clusters were counted, one of missing vines alone of those to replant.
   */
  hasRegisterOf(block: number): boolean {
    this.registered ??= new Set(
      [...this.register()].flatMap(([key, { table }]) =>
        table.column("status") && this.statusOf(key) !== "missing" ? [placeOf(key).block] : [],
      ),
    );
    return this.registered.has(block);
  }

  /**
   * For a list of what was measured on some vines, which rows are of vines that stand in the register or another list
   * before it, so that nobody counts them twice.
   */
  listedBefore(table: SurveyTable): (index: number) => boolean {
    if (!isYieldList(table)) return () => false;
    const keys = this.keysOf(table);
    const register = this.register();
    return (index) => {
      const entry = register.get(keys[index]);
      return entry !== undefined && entry.table !== table;
    };
  }

  /**
   * Status of the vine in each row of a Vines sheet; in a list without statuses that of the register, and "bearing" where
   * none stands there either.
   */
  statusesOf(table: SurveyTable): (index: number) => string | undefined {
    const status = table.column("status");
    if (status) return (index) => choiceId(status, index);
    const keys = this.keysOf(table);
    return (index) => this.statusOf(keys[index]) ?? "bearing";
  }

  /** Row of the Blocks sheet by number of the block's name. */
  blockRows(): ReadonlyMap<number, RegisterEntry> {
    if (this.blocks) return this.blocks;
    const blocks = new Map<number, RegisterEntry>();
    for (const table of this.tables("blocks")) {
      const codes = table.column("block")?.codes ?? new Int32Array(0);
      for (let index = 0; index < codes.length; index++)
        if (codes[index] !== NO_WORD && !blocks.has(codes[index])) blocks.set(codes[index], { table, index });
    }
    this.blocks = blocks;
    return blocks;
  }

  /** Number of a block, NaN where the Blocks sheet does not tell. */
  blockNumber(block: number, columnId: string): number {
    const entry = this.blockRows().get(block);
    return entry?.table.column(columnId)?.usable[entry.index] ?? NaN;
  }

  /** Status of a vine in the register ("missing", "young"); undefined where the register does not tell. */
  statusOf(key: number): string | undefined {
    const entry = this.register().get(key);
    const status = entry?.table.column("status");
    return entry && status ? choiceId(status, entry.index) : undefined;
  }
}

export interface RegisterEntry {
  readonly table: SurveyTable;
  readonly index: number;
}

/** Id of the choice in a row of a choice column; undefined when blank or unknown. */
export function choiceId(
  column: {
    readonly column: { readonly choices?: readonly { readonly id: string }[] };
    readonly codes: Codes;
  },
  index: number,
): string | undefined {
  return column.column.choices?.[column.codes[index]]?.id;
}
