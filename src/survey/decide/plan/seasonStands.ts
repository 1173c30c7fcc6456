import type { Finding } from "../../checks/finding";
import { wordKey } from "../../sheets/words";
import type { Season } from "../../season/season";
import { NO_PLACE, placeOf } from "../../season/vinePlaces";
import type { CrewCard } from "../cards/crewCards";
import type { DecidedVine } from "../decideSeason";
import { isAsked } from "../isAsked";
import type { WorkPlan } from "./workPlan";

/** How far the work on one block is; every figure but `wrong` and `hours` counts vines. */
export interface BlockStands {
  readonly block: string;
  /** Bearing vines of the register, and vines that have a cordon row. */
  readonly vines: number;
  /** Vines with at least one cordon whose live spurs are counted. */
  readonly counted: number;
  /** Counted vines that no open finding calls wrong. */
  readonly checked: number;
  /** Counted vines with an answer for each side. */
  readonly decided: number;
  /** Counted vines that are not decided because a count on them cannot be used. */
  readonly recount: number;
  /** Decided vines whose every cordon has its choice in the sheet. */
  readonly accepted: number;
  /** Vines whose row has a printed card that still says what is decided. */
  readonly printed: number;
  readonly pruned: number;
  /** Open findings that call a cell of this block wrong. */
  readonly wrong: number;
  /** Hours of pruning that are left. */
  readonly hours: number;
}

/** Where the work of a season stands. */
export interface SeasonStands {
  readonly blocks: readonly BlockStands[];
  /** Open findings that call a cell wrong, in the order of the sheets. */
  readonly wrong: readonly Finding[];
  /** Cards that are not printed as they stand. */
  readonly cardsToPrint: number;
}

/**
 * Counts how far the work is, block by block in the order of the Blocks sheet, for the picture that a season opens with.
 *
 * @param decided the vines of the season with their answers
 * @param wrong open findings whose severity is "wrong"
 * @param cards the cards of the season, none while no cordon is counted
 * @param work the order of its work
 * @param isPrinted true for a card that was printed as it stands
 */
export function seasonStands(
  season: Season,
  decided: readonly DecidedVine[],
  wrong: readonly Finding[],
  { cards, work }: { readonly cards: readonly CrewCard[]; readonly work: WorkPlan },
  isPrinted: (card: CrewCard) => boolean,
): SeasonStands {
  const blocks = new Map<string, { -readonly [Key in keyof BlockStands]: BlockStands[Key] }>();
  const named = (block: string) => {
    const key = wordKey(block);
    const known = blocks.get(key);
    if (known) return known;
    const made = { block, vines: 0, counted: 0, checked: 0, decided: 0, accepted: 0, printed: 0 };
    const whole = { ...made, recount: 0, pruned: 0, wrong: 0, hours: 0 };
    blocks.set(key, whole);
    return whole;
  };
  const { places, words } = season;
  for (const block of places.blockRows().keys()) named(words.wordOf(block));
  const vines = new Map<string, { block: string; row: number }>();
  const pruned = new Set<string>();
  for (const [key, { table, index }] of places.register()) {
    const { block, row, vine } = placeOf(key);
    const name = vineName(words.wordOf(block), row, vine);
    if ((table.column("prunedOn")?.usable[index] ?? NaN) > 0) pruned.add(name);
    if ((places.statusOf(key) ?? "bearing") === "bearing")
      vines.set(name, { block: words.wordOf(block), row });
  }
  const touched = touchedVines(season, wrong, (block) => named(block).wrong++);
  for (const vine of decided) {
    const name = vineName(vine.block, vine.row, vine.vine);
    if (!vines.has(name)) vines.set(name, vine);
    if (!isCounted(vine)) continue;
    const block = named(vine.block);
    block.counted++;
    if (!touched.has(name)) block.checked++;
    if (isAsked(vine)) {
      if (vine.recount.some(({ reason }) => reason !== "toCount")) block.recount++;
      continue;
    }
    block.decided++;
    if (vine.toDecide.candidates.every(({ fixedChoice }) => fixedChoice !== undefined)) block.accepted++;
  }
  const printed = new Set(cards.filter(isPrinted).map(({ block, row }) => rowName(block, row)));
  for (const [name, { block, row }] of vines) {
    named(block).vines++;
    if (pruned.has(name)) named(block).pruned++;
    if (printed.has(rowName(block, row))) named(block).printed++;
  }
  for (const { block, pass, hours } of work.passes) if (pass !== "thinning") named(block).hours += hours;
  return {
    blocks: [...blocks.values()].filter(({ vines: count }) => count > 0),
    wrong,
    cardsToPrint: cards.length - printed.size,
  };
}

/** What is open on blocks whose cards are made: vines, but for `wrong`, which counts findings. */
export interface OpenOnCards {
  readonly asked: number;
  /** Of those that are asked, the ones to be counted again. */
  readonly recount: number;
  readonly uncounted: number;
  readonly wrong: number;
  readonly toAccept: number;
}

/** What is open on some blocks, from how far the work on them is. */
export function openOnCards(blocks: readonly BlockStands[]): OpenOnCards {
  const sum = (of: (block: BlockStands) => number) => blocks.reduce((total, block) => total + of(block), 0);
  return {
    asked: sum(({ counted, decided }) => counted - decided),
    recount: sum(({ recount }) => recount),
    uncounted: sum(({ vines, counted }) => vines - counted),
    wrong: sum(({ wrong }) => wrong),
    toAccept: sum(({ decided, accepted }) => decided - accepted),
  };
}

/** True for a vine with a cordon whose live spurs somebody has counted, readable or not. */
export function isCounted({ rows, recount }: DecidedVine): boolean {
  return (
    recount.some(({ reason }) => reason !== "toCount") ||
    rows.some(({ table, index }) => !Number.isNaN(table.column("liveSpurs")?.numbers[index] ?? NaN))
  );
}

const vineName = (block: string, row: number, vine: number) => `${vine} ${row} ${wordKey(block)}`;
const rowName = (block: string, row: number) => `${row} ${wordKey(block)}`;

/** The vines that findings are about, by the rows that they stand in; each finding is told to its block. */
function touchedVines(
  { allTables, places, words }: Season,
  findings: readonly Finding[],
  tell: (block: string) => void,
): ReadonlySet<string> {
  const touched = new Set<string>();
  const tables = new Map(allTables.map((table) => [table.sheet, table]));
  for (const { sheet, row, facts } of findings) {
    const table = tables.get(sheet);
    const index = table?.indexOfSheetRow(row);
    const key = table === undefined || index === undefined ? NO_PLACE : places.keysOf(table)[index];
    if (key !== NO_PLACE) {
      const place = placeOf(key);
      touched.add(vineName(words.wordOf(place.block), place.row, place.vine));
      tell(words.wordOf(place.block));
    } else if (typeof facts["block"] === "string") tell(facts["block"]);
  }
  return touched;
}
