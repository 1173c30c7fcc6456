import type { Column } from "../../sheets/column";
import { SHEETS } from "../../sheets/sheets";
import { choiceOf } from "../choiceWords";
import { columnNamed, headWords, likeness, plainWords, sharesWord, single } from "../headWords";

/** Columns of one candidate among several that stand side by side in a line. */
export interface WideGroup {
  /** As the heads name it: "L1", "Left arm", "A". */
  readonly name: string;
  /** Word of the side; undefined where the name tells none. */
  readonly side: string | undefined;
  /** Our columns by position. */
  readonly positions: ReadonlyMap<number, Column>;
  /** Positions of dead or missing spurs. */
  readonly dead: readonly number[];
  /** What the head says beside the candidate's name, by position. */
  readonly rest: ReadonlyMap<number, string>;
}

const { columns } = SHEETS.cordons;
const SIDE = columns.find(({ id }) => id === "side")!;
const LIVE = columns.find(({ id }) => id === "liveSpurs")!;
const LENGTH = columns.find(({ id }) => id === "length")!;
/** Says no more of a candidate than its side does. */
const ARM = /\b(arm|cordon|brazo|bras)\b/;
const VALUES = new Set([
  "length",
  "positions",
  "liveSpurs",
  "longestGap",
  "gapFrom",
  "canesNearHead",
  "spurHeight",
  "spursDown",
  "spursLevel",
  "spursUp",
  "nodesPerSpur",
  "diameter",
  "condition",
  "trunk",
  "trunkCondition",
  "trunkYear",
]);

/**
 * Candidates that stand side by side in a line of heads: "L1 spurs", "L1 gap", "R1 spurs"; none where there are no two. Of
 * heads with years those of this winter are taken, of none the newest.
 *
 * @param own columns that a person gave to heads, by their plain words
 */
export function wideGroups(
  texts: readonly (string | undefined)[],
  from: number,
  to: number,
  winter: number | undefined,
  own: ReadonlyMap<string, Column>,
): WideGroup[] {
  const found = new Map<
    string,
    {
      name: string;
      side: string | undefined;
      positions: Map<number, Column>;
      dead: number[];
      rest: Map<number, string>;
    }
  >();
  const heads = texts
    .slice(from, to)
    .map((text) => (text === undefined ? undefined : candidateHead(text, own)));
  const newest = heads.reduce((most, head) => Math.max(most, head?.year ?? 0), 0);
  for (let at = from; at < to; at++) {
    const parts = heads[at - from];
    if (!parts || (parts.year !== undefined && parts.year !== (winter ?? newest))) continue;
    const key = keyOf(parts.name);
    const group = found.get(key) ?? {
      name: parts.name,
      side: parts.side,
      positions: new Map<number, Column>(),
      dead: [] as number[],
      rest: new Map<number, string>(),
    };
    if (parts.isDead) {
      group.dead.push(at);
      found.set(key, group);
      continue;
    }
    if ([...group.positions.values()].includes(parts.column)) continue;
    group.positions.set(at, parts.column);
    group.rest.set(at, parts.rest);
    found.set(key, group);
  }
  const groups = [...found.values()];
  if (groups.length < 2) return [];
  const columnsOf = (group: (typeof groups)[number]) => [...group.positions.values()].map(({ id }) => id);
  const shared = columnsOf(groups[0]).filter(
    (id) => groups.filter((group) => columnsOf(group).includes(id)).length > 1,
  );
  return shared.length > 0 ? groups : [];
}

/** A candidate's name as it is compared: "L1" and "L1 arm" are one. */
const keyOf = (name: string) => single(plainWords(name).replace(ARM, " "));

/** A head of a candidate with words that name no column, and the column of his that they may mean. */
export interface UnknownHead {
  readonly at: number;
  readonly column: Column;
  /** What the head says beside the candidate's name. */
  readonly rest: string;
}

/** Heads of candidates that share a word with a needed column which the candidate lacks. */
export function unknownHeads(
  texts: readonly (string | undefined)[],
  groups: readonly WideGroup[],
): UnknownHead[] {
  return texts.flatMap((text, at) => {
    if (text === undefined || groups.some(({ positions, dead }) => positions.has(at) || dead.includes(at)))
      return [];
    const { qualifier, year } = headWords(text);
    if (qualifier !== undefined || year !== undefined) return [];
    for (const [name, rest] of namesAndRests(text)) {
      const group = groups.find((one) => keyOf(one.name) === keyOf(name));
      if (!group) continue;
      const has = new Set(group.positions.values());
      const column = columns.find(
        (own) => own.required && VALUES.has(own.id) && !has.has(own) && sharesWord(plainWords(rest), own),
      );
      if (column) return [{ at, column, rest }];
    }
    return [];
  });
}

/** The ways to part a head into a candidate's name and the rest, the name before or behind it. */
function namesAndRests(text: string): [name: string, rest: string][] {
  const words = text
    .normalize("NFKC")
    .replace(/[\s_.:/-]+/g, " ")
    .trim()
    .split(" ");
  const parts: [string, string][] = [];
  for (let cut = 1; cut < Math.min(words.length, 4); cut++)
    parts.push(
      [words.slice(0, cut).join(" "), words.slice(cut).join(" ")],
      [words.slice(-cut).join(" "), words.slice(0, -cut).join(" ")],
    );
  return parts;
}

interface CandidateHead {
  readonly name: string;
  readonly side: string | undefined;
  readonly column: Column;
  readonly rest: string;
  readonly year: number | undefined;
  readonly isDead: boolean;
}

/** A head's candidate and the column of ours that the rest names, or that its spurs are the dead or missing ones. */
function candidateHead(text: string, own: ReadonlyMap<string, Column>): CandidateHead | undefined {
  const head = headWords(text);
  const given = own.get(plainWords(text));
  const { qualifier, year } = head;
  const isDead = qualifier === "dead" || qualifier === "missing";
  if (!given && ((qualifier !== undefined && !isDead) || columnNamed(SHEETS.cordons, head.words)))
    return undefined;
  const arm = !isDead && head.unit?.dimension === "length" ? candidateNamed(head.words) : undefined;
  if (arm?.side)
    return { name: head.words, side: arm.side, column: LENGTH, rest: LENGTH.header.en, year, isDead };
  for (const [name, rest] of namesAndRests(text)) {
    const candidate = candidateNamed(name);
    const column = candidate && (given ?? (isDead ? deadSpurs : valueColumn)(rest));
    if (column)
      return { name, side: candidate.side, column, rest: given ? "" : rest, year, isDead: isDead && !given };
  }
  return undefined;
}

/** The column of live spurs for the words of dead or missing ones. */
function deadSpurs(text: string): Column | undefined {
  const { words, qualifier } = headWords(text);
  const isSpurs = words === "" || columnNamed(SHEETS.cordons, words) === LIVE;
  return qualifier !== undefined && isSpurs ? LIVE : undefined;
}

function valueColumn(text: string): Column | undefined {
  const { words, qualifier } = headWords(text);
  if (qualifier !== undefined) return undefined;
  const named = columnNamed(SHEETS.cordons, words);
  if (named) return VALUES.has(named.id) ? named : undefined;
  if (words.length < 3) return undefined;
  const likely = columns
    .filter(({ id }) => VALUES.has(id))
    .map((column) => ({ column, score: likeness(words, column) }))
    .sort((a, b) => b.score - a.score)[0];
  return likely.score >= 0.5 ? likely.column : undefined;
}

/** The side that a candidate's name tells, "L1" or "Left arm 2"; a letter or number alone tells none. */
function candidateNamed(name: string): { side: string | undefined } | undefined {
  const bare = name.trim().replace(/^(cordon|cordón|arm|brazo|bras|candidate|cane) (?=\S)/i, "");
  const sided = /^(.*?[^\d\s])\s*#?(\d{1,2}|[a-c])?$/i.exec(bare);
  const side = sided ? choiceOf(SIDE, sided[1]) : undefined;
  if (sided && side !== undefined && (bare.length > 1 || /[LRlr]/.test(bare)))
    return { side: SIDE.choices![side].id };
  const whole = choiceOf(SIDE, bare);
  if (whole !== undefined && (bare.length > 1 || /[LRlr]/.test(bare)))
    return { side: SIDE.choices![whole].id };
  return /^([A-H]|\d)$/.test(bare) ? { side: undefined } : undefined;
}
