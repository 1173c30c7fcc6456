import * as z from "zod/mini";
import type { VoidLines } from "../../survey/decide/cards/cardWords";
import type { CardVine, CrewCard } from "../../survey/decide/cards/crewCards";
import type { SurveyWorkbook } from "../surveyWorkbook";
import { shortHash } from "./shortHash";

/** A key for each printing, so that two people who print at once lose nothing. */
const PREFIX = "printed.";
/** Block, row, and of each vine what its line said; "" for a vine that was on a card and is gone. */
const ROW = z.tuple([z.string(), z.number(), z.array(z.tuple([z.number(), z.string()]))]);
const ENTRY = z.object({ turn: z.number(), rows: z.array(ROW) });
type Entry = z.infer<typeof ENTRY>;

/** What differs from the cards that the crew has in hand. */
export interface ChangedCards {
  /** Cards of the vines alone whose line differs, and that are not pruned yet; of rows never printed all vines. */
  readonly cards: readonly CrewCard[];
  readonly voided: readonly VoidLines[];
}

interface PrintedRow {
  readonly block: string;
  readonly row: number;
  /** What the line of a vine said last. */
  readonly lines: Map<number, string>;
}

/** The cards as they were printed last, vine by vine. */
export class PrintedCards {
  readonly #rows = new Map<string, PrintedRow>();

  constructor(entries: readonly Entry[]) {
    for (const { rows } of [...entries].sort((first, second) => first.turn - second.turn))
      for (const [block, row, lines] of rows) {
        const name = rowName(block, row);
        const known = this.#rows.get(name) ?? { block, row, lines: new Map<number, string>() };
        this.#rows.set(name, known);
        for (const [vine, line] of lines) known.lines.set(vine, line);
      }
  }

  /** True for a card of which nothing needs printing again. */
  isPrinted({ block, row, vines }: CrewCard): boolean {
    const known = this.#rows.get(rowName(block, row));
    return known !== undefined && !vines.some((vine) => this.#differs(known, vine));
  }

  /** @param cards every card of what is to be printed: a vine that none of them holds is gone */
  changed(cards: readonly CrewCard[]): ChangedCards {
    const held = new Map(cards.map((card) => [rowName(card.block, card.row), card]));
    return {
      cards: cards.flatMap((card) => {
        const known = this.#rows.get(rowName(card.block, card.row));
        const vines = card.vines.filter((vine) =>
          known === undefined ? vine.prunedOn === undefined : this.#differs(known, vine),
        );
        return vines.length === 0 ? [] : [{ ...card, vines }];
      }),
      voided: [...this.#rows].flatMap(([name, known]) => {
        const card = held.get(name);
        const onCard = new Map(card?.vines.map((vine) => [vine.vine, vine]));
        const printed = [...known.lines].filter(([, line]) => line !== "").map(([vine]) => vine);
        const vines = printed.filter((vine) => {
          const now = onCard.get(vine);
          return now === undefined || this.#differs(known, now);
        });
        const isWhole = vines.length === printed.length;
        return vines.length === 0 ? [] : [{ block: known.block, row: known.row, vines, isWhole }];
      }),
    };
  }

  #differs({ lines }: PrintedRow, vine: CardVine): boolean {
    return vine.prunedOn === undefined && lines.get(vine.vine) !== contentOf(vine);
  }
}

/**
 * Notes in the workbook that these cards were printed as they stand, and that lines printed before hold no more.
 * Earlier printings of which nothing is left go.
 */
export async function notePrinted(
  workbook: SurveyWorkbook,
  cards: readonly CrewCard[],
  voided: readonly VoidLines[],
): Promise<void> {
  const before = entriesOf(await workbook.readFlags(PREFIX));
  const turn = Math.max(0, ...[...before.values()].map((entry) => entry.turn)) + 1;
  const gone = voided.map(({ block, row, vines }): Entry["rows"][number] => [
    block,
    row,
    vines.map((vine) => [vine, ""]),
  ]);
  const now = cards.map(({ block, row, vines }): Entry["rows"][number] => [
    block,
    row,
    vines.map((vine) => [vine.vine, contentOf(vine)]),
  ]);
  const entry = { turn, rows: [...gone, ...now] };
  const text = JSON.stringify(entry);
  await workbook.writeFlag(PREFIX + shortHash(text), text);
  const said = new Set(vinesOf(entry));
  for (const [key, earlier] of before)
    if (vinesOf(earlier).every((vine) => said.has(vine))) await workbook.writeFlag(key, undefined);
}

/** What was printed last, as the workbook keeps it. */
export async function printedCards(workbook: SurveyWorkbook): Promise<PrintedCards> {
  return printedOfFlags([await workbook.readFlags(PREFIX)]);
}

/** The same from all the small facts of one or several workbooks, by key. */
export function printedOfFlags(flags: readonly ReadonlyMap<string, string>[]): PrintedCards {
  return new PrintedCards(flags.flatMap((some) => [...entriesOf(some).values()]));
}

function entriesOf(flags: ReadonlyMap<string, string>): Map<string, Entry> {
  const entries = new Map<string, Entry>();
  for (const [key, text] of flags) {
    if (!key.startsWith(PREFIX)) continue;
    try {
      entries.set(key, ENTRY.parse(JSON.parse(text)));
    } catch {
      continue;
    }
  }
  return entries;
}

const rowName = (block: string, row: number) => `${row} ${block}`;

function vinesOf({ rows }: Entry): string[] {
  return rows.flatMap(([block, row, lines]) => lines.map(([vine]) => `${vine} ${rowName(block, row)}`));
}

/** Parts of a plan that no card says. */
const UNSAID = new Set(["short", "orCane", "renews"]);

/**
 * What the crew reads beside the vine, lengths to the centimetre. The day of pruning is written there afterwards and
 * changes nothing.
 */
function contentOf({ prunedOn: _prunedOn, ...vine }: CardVine): string {
  const text = JSON.stringify(vine, (key, value: unknown) => {
    if (UNSAID.has(key)) return undefined;
    return typeof value === "number" ? Math.round(value * 100) / 100 : value;
  });
  return shortHash(text).slice(0, 8);
}
