import type { DecidedVine } from "../../survey/decide/decideSeason";
import { DECIDE_TEXTS } from "../../texts/pane";
import { LANGUAGES } from "../../texts/language";
import { vineKey, vinesToShow, type DecideState } from "./decideState";
import { placeOfLabel } from "../../survey/reading/placeLabel";

/** Where a person stands on the walk from vine to vine. */
export interface VineWalk {
  readonly vine: DecidedVine;
  /** The vines of the list that is walked, and the place of this one in it, from 1; undefined where it is not in it. */
  readonly of: number;
  readonly at?: number;
  readonly previous?: DecidedVine;
  readonly next?: DecidedVine;
}

/**
 * The vine that is shown, with its neighbours in the list that a person walks. A vine that has left the list, because it
 * was decided, keeps its place between those that are still in it.
 */
export function vineWalk(
  vines: readonly DecidedVine[],
  { shown, block, at: key }: Pick<DecideState, "shown" | "block" | "at">,
): VineWalk | undefined {
  const list = vinesToShow(vines, shown, block);
  const known = vines.findIndex((vine) => vineKey(vine) === key);
  const vine = known < 0 ? (list[0] ?? vines[0]) : vines[known];
  if (vine === undefined) return undefined;
  const order = new Map(vines.map((one, index) => [one, index]));
  const place = list.indexOf(vine);
  const before = list.filter((one) => order.get(one)! < order.get(vine)!);
  return {
    vine,
    of: list.length,
    ...(place < 0 ? {} : { at: place + 1 }),
    previous: before.at(-1),
    next: list[before.length + (place < 0 ? 0 : 1)],
  };
}

/** The name of the vine with which the walk through a list begins. */
export function firstVine(
  vines: readonly DecidedVine[],
  list: Pick<DecideState, "shown" | "block">,
): string | undefined {
  const vine = vineWalk(vines, list)?.vine;
  return vine && vineKey(vine);
}

/** The places that a word of a search can mean: 12, 12a, C, A121; R7 is row 7, or the seventh of the rows with an R. */
function placesSought(word: string): number[] {
  if (!/^(\d+([.,]\d+)?[a-z]?|[a-z]{1,2}|[a-z]\d+)$/.test(word)) return [];
  return [placeOfLabel(word), placeOfLabel(word, "")].filter((place) => place !== undefined);
}

/** Words around block, row and vine in a vine's name, in every language: they say nothing about which vine. */
const NAMING = new Set(
  LANGUAGES.flatMap((language) =>
    wordsOf(DECIDE_TEXTS.vine[language].replace(/\{[^}]*\}/g, " ")).map((word) => word.toLowerCase()),
  ),
);

function wordsOf(written: string): string[] {
  return written.split(/(?!(?<=\p{N})[.,](?=\p{N}))[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

/**
 * The first vine that a search means: words of a block's name, then the row, then the vine, as in "north 1 14"; the last
 * numbers or letters are row and vine where there are two, the row where there is one.
 */
export function vineFound(vines: readonly DecidedVine[], search: string): DecidedVine | undefined {
  const words = wordsOf(search.toLowerCase()).filter((word) => !NAMING.has(word));
  if (words.length === 0) return undefined;
  for (const numbers of [2, 1, 0]) {
    const cut = words.length - numbers;
    const places = cut < 0 ? [[]] : words.slice(cut).map(placesSought);
    if (places.some(({ length }) => length === 0)) continue;
    const [row, number] = places;
    const found = vines.find((vine) => {
      const name = wordsOf(vine.block.toLowerCase());
      return (
        words.slice(0, cut).every((word) => name.some((part) => part.startsWith(word))) &&
        (row === undefined || row.includes(vine.row)) &&
        (number === undefined || number.includes(vine.vine))
      );
    });
    if (found) return found;
  }
  return undefined;
}
