import { plainHeader, acceptedHeaders, type Column, type SheetShape } from "../sheets/column";
import { unitNamed, type Unit } from "../sheets/unit";
import { SHEETS } from "../sheets/sheets";

/** What a word in a head makes of its column, so that it is not the column that the other words name. */
export type Qualifier = "dead" | "missing" | "lastYear" | "total" | "planned" | "removed";

/** A head taken apart: the words that name the column, and what else stands in it. */
export interface HeadWords {
  /** The head's text as it stands, single spaces. */
  readonly text: string;
  /** Plain words without number signs, unit, year and qualifier. */
  readonly words: string;
  readonly unit: Unit | undefined;
  /** A unit that the last word names behind words that are none of ours; it counts where a person says what they mean. */
  readonly lastWord: Unit | undefined;
  readonly qualifier: Qualifier | undefined;
  readonly year: number | undefined;
  /** What stands in brackets and is none of our words; a unit of ours misspelt, for example. */
  readonly unknown: string | undefined;
}

const QUALIFIERS: readonly (readonly [Qualifier, RegExp])[] = [
  [
    "lastYear",
    /\b(last (?:year|season|winter)(?:s)?|previous(?: year)?|prior(?: year)?|prev|ano (?:pasado|anterior)|temporada pasada|(?:an(?:nee)?|hiver) (?:dernier|derniere|passee?|precedente?))\b/,
  ],
  ["dead", /\b(dead|muert[oa]s?|mort[es]?s?|sec[oa]s|secs|seches)\b/],
  [
    "missing",
    /\b(missing|faltan(?:tes?)?|falta|manquante?s?|absente?s?|gone|empty|vacant|vaci[oa]s?|vides?)\b/,
  ],
  ["total", /\b(totals?|totales|totaux|sum|suma|somme|average|avg|mean|promedio|moyenne)\b/],
  [
    "planned",
    /\b(planned|plan|target|goal|to (?:leave|keep)|wanted|previst[oa]s?|meta|objetivo|a dejar|prevue?s?|objectif|a laisser)\b/,
  ],
  [
    "removed",
    /\b(removed|cut off|cut|pruned off|quitad[oa]s|cortad[oa]s|eliminad[oa]s|enlevee?s|coupee?s|retiree?s)\b/,
  ],
];

/** Words in brackets that say nothing which the column would not say without them. */
const HARMLESS =
  /^(no|nr|num|number|numero|nombre|count|counted|conteo|live|living|alive|viv[oa]s?|vivante?s?|\d+(?: ?(?:,|or|o|ou|\/|-|–) ?\d+)*|positions?|posiciones|emplacements?|spurs?|pitones|coursons|each|whole|units?|unidad(es)?|unites?|1 ?[-–] ?\d+|a|b|c|a, ?b, ?c|a ?\/ ?b ?\/ ?c|[lig] ?\/ ?[rd]|left ?\/ ?right|name|initials|optional|opcional|y\/n|d\/m\/y+|m\/d\/y+|y-m-d|yyyy-mm-dd|dd\/mm\/yyyy|mm\/dd\/yyyy|to (the )?tip|longest|largest|position)$/;

/** Says how a column was filled, as every column is. */
const OF_COUNTING =
  /\b(measured|counted|medid[oa]s?|contad[oa]s?|mesuree?s?|comptee?s?)\b|^(of|de|des|del)\b/g;

/** True for words that can stand below or behind a head without making its column another. */
export const isHarmless = (words: string) => HARMLESS.test(plainHeader(words));

const OF_A_YEAR =
  /(?:\b(?:winter|season|invierno|temporada|hiver|saison) (?:of |de )?)?\b(20\d\d(?:[-/ ]\d\d(?:\d\d)?)?)\b/;

const parsed = new Map<string, HeadWords>();

/**
 * Takes a head apart. Case, accents, number signs, stars, colons, line breaks and spaces of any kind do not matter; no
 * word of it is lost.
 *
 * @example
 * headWords("Spurs (dead)").qualifier // "dead"
 * @example
 * headWords("Length, ins").unit.id // "in"
 */
export function headWords(text: string): HeadWords {
  let known = parsed.get(text);
  if (!known) {
    known = takeApart(text);
    if (parsed.size > 5000) parsed.clear();
    parsed.set(text, known);
  }
  return known;
}

function takeApart(head: string): HeadWords {
  const text = head.normalize("NFKC").replace(/\s+/g, " ").trim();
  let unit: Unit | undefined;
  let year: number | undefined;
  let qualifier: Qualifier | undefined;
  const unknown: string[] = [];
  const outside = text.replace(/[([{]([^)\]}]*)[)\]}]/g, (_, inside: string) => {
    const written = plainHeader(inside.replace(/[()]/g, ""));
    const named = unitNamed(inside) ?? unitNamed(inside.replace(/\./g, ""));
    if (named) unit ??= named;
    else if (yearOf(written) !== undefined) year ??= yearOf(written);
    else if (qualifierOf(written)) qualifier ??= qualifierOf(written);
    else if (written !== "" && !HARMLESS.test(written)) unknown.push(inside.trim());
    return " ";
  });
  let words = plainWords(outside);
  if (NAMES.has(words))
    return { text, words, unit, lastWord: undefined, year, qualifier, unknown: unknown[0] };
  const trailing = /^(.+?)[ ,;/_-]+(?:(?:in|en) )?(\S+)$/.exec(outside.trim());
  const last = trailing && !unit ? unitNamed(trailing[2].replace(/[.,]/g, "")) : undefined;
  if (last && NAMES.has(plainWords(trailing![1]))) {
    unit = last;
    words = plainWords(trailing![1]);
  }
  if (!NAMES.has(words)) {
    const without = words.replace(OF_A_YEAR, (_, found: string) => {
      year ??= yearOf(found);
      return " ";
    });
    words = single(without);
    const found = QUALIFIERS.find(([, pattern]) => pattern.test(words));
    if (found && !NAMES.has(words)) {
      qualifier ??= found[0];
      words = single(
        words.replace(found[1], " ").replace(/\b(of|de|des|du|del)\b *$|^ *\b(of|de|des|du|del)\b/g, " "),
      );
    }
    const bare = single(words.replace(OF_COUNTING, " "));
    if (!NAMES.has(words) && NAMES.has(bare)) words = bare;
  }
  return { text, words, unit, lastWord: unit ? undefined : last, year, qualifier, unknown: unknown[0] };
}

/** With single spaces. */
export const single = (words: string) => words.replace(/\s+/g, " ").trim();

function yearOf(words: string): number | undefined {
  const found = /^(20\d\d)(?:\s*[-/ ]\s*(\d\d(?:\d\d)?))?$/.exec(words);
  if (!found) return undefined;
  return found[2] === undefined ? Number(found[1]) : 2000 + (Number(found[2]) % 100);
}

function qualifierOf(words: string): Qualifier | undefined {
  return QUALIFIERS.find(([, pattern]) => pattern.test(words))?.[0];
}

/** Words of the trade that mean the same as those of our heads. */
const SAME: readonly (readonly [RegExp, string])[] = [
  [/\bpulgar(es)?\b/g, "pitones"],
  [/\bcargadores\b/g, "pitones"],
];

/** The words of a head by which it is looked up. */
export function plainWords(head: string): string {
  let words = plainHeader(head.normalize("NFKC"))
    .replace(/[#№*:;.,!?"“”'’|/\\-]+/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  const bare = words.replace(/(^| )(?:no|nº|n°|nr|num|number|numero|n)(?= |$)/g, " ");
  if (bare.trim() !== "") words = single(bare);
  for (const [pattern, word] of SAME) words = words.replace(pattern, word);
  return words;
}

const COLUMNS: ReadonlyMap<SheetShape, ReadonlyMap<string, Column>> = new Map(
  Object.values(SHEETS).map((shape) => {
    const columns = new Map<string, Column>();
    for (const column of shape.columns)
      for (const header of acceptedHeaders(column)) {
        const words = plainWords(header);
        if (!columns.has(words)) columns.set(words, column);
      }
    return [shape, columns];
  }),
);

/** Every name of every column. */
export const NAMES: ReadonlySet<string> = new Set(
  [...COLUMNS.values()].flatMap((columns) => [...columns.keys()]),
);

/** The column of a sheet that these words name; undefined for none. */
export function columnNamed(shape: SheetShape, words: string): Column | undefined {
  return COLUMNS.get(shape)?.get(words);
}

const WEIGHED = new Map<Column, readonly { readonly name: string; readonly weight: number }[]>();

/** The words that name a column, its own before other spellings; worked out once, since every head is compared with all. */
function namesOf(column: Column) {
  const known = WEIGHED.get(column);
  if (known) return known;
  const own = new Set(Object.values(column.header).map(plainWords));
  const names = acceptedHeaders(column).map(plainWords);
  const weighed = names.map((name) => ({ name, weight: own.has(name) ? 1 : 0.7 }));
  WEIGHED.set(column, weighed);
  return weighed;
}

/**
 * How well an abbreviation can stand for a column, from 0 (not at all) to 1: "Blk" for Block, "LG" for Longest gap.
 *
 * @example
 * likeness("blk", SHEETS.cordons.columns[0]) // 0.6
 */
export function likeness(words: string, column: Column): number {
  const short = words.replace(/[^a-z]/g, "");
  if (short === "") return 0;
  let best = 0;
  for (const { name, weight } of namesOf(column)) {
    const parts = name.split(" ");
    const initials = parts.map((word) => word[0]).join("");
    if (short.length > 2 && name.startsWith(short))
      best = Math.max(best, (0.6 + (0.4 * short.length) / name.length) * weight);
    if (parts.length > 1 && initials === short) best = Math.max(best, 0.9 * weight);
    if (parts.length > 1 && parts.at(-1) === short) best = Math.max(best, 0.8 * weight);
    if (short.length <= 2) {
      if (isWithin(short, name) && name[0] === short[0]) best = Math.max(best, 0.3 * weight);
      continue;
    }
    const last = parts[parts.length - 1];
    if (name[0] === short[0] && isWithin(short, name))
      best = Math.max(best, (short.length / name.length) * weight);
    if (parts.length > 1 && last[0] === short[0] && isWithin(short, last))
      best = Math.max(best, (short.length / last.length) * 0.8 * weight);
  }
  return best;
}

/**
 * True where words hold one of those that name a column and no other column, or begin as one.
 *
 * @example
 * sharesWord("good spurs", SHEETS.cordons.columns[8]) // true
 */
export function sharesWord(words: string, column: Column): boolean {
  const own = words.split(" ");
  return namesOf(column).some(({ name }) =>
    name.split(" ").some((word) => word.length > 2 && own.includes(word)),
  );
}

/** True where the letters stand in the word in that order. */
function isWithin(letters: string, word: string): boolean {
  let at = 0;
  for (const letter of letters) {
    at = word.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}
