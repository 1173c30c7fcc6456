import { checkSeason } from "../../survey/checks/checkSeason";
import { decideSeason, type DecidedVine } from "../../survey/decide/decideSeason";
import type { Finding } from "../../survey/checks/finding";
import { findingIdentity } from "../../survey/checks/setAside";
import type { Season } from "../../survey/season/season";

/** A vine whose answer a change of settings would turn. */
export interface MovedVine {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  /** Cordons that stay, before and after: "A, C". */
  readonly before: string;
  readonly after: string;
}

/** What a change of settings would move. */
export interface MovedResults {
  readonly vines: number;
  readonly moved: readonly MovedVine[];
  readonly findingsGone: readonly Finding[];
  readonly findingsCome: readonly Finding[];
}

/**
 * Works out which results a change of settings moves: the decision of every vine and the findings of the check, with
 * the figures in force and with the new ones.
 *
 * @returns a generator that yields the share done, 0 to 1, so that a page can work in slices
 */
export function* movedResults(
  before: Season,
  after: Season,
  today: number,
): Generator<number, MovedResults, void> {
  const rows = before.tables("cordons").reduce((sum, table) => sum + table.rowCount, 0) || 1;
  const moved: MovedVine[] = [];
  let vines = 0;
  let seen = 0;
  const afterVines = decideSeason(after);
  for (const now of decideSeason(before)) {
    const then = afterVines.next().value as DecidedVine;
    vines += 1;
    seen += now.rows.length;
    const [was, will] = [staying(now), staying(then)];
    if (was !== will)
      moved.push({ block: now.block, row: now.row, vine: now.vine, before: was, after: will });
    yield (seen / rows) * 0.5;
  }
  const foundBefore = yield* found(before, today, 0.5);
  const foundAfter = yield* found(after, today, 0.75);
  return {
    vines,
    moved,
    findingsGone: missingFrom(foundBefore, foundAfter),
    findingsCome: missingFrom(foundAfter, foundBefore),
  };
}

/** True when nothing would move. */
export function nothingMoves({ moved, findingsGone, findingsCome }: MovedResults): boolean {
  return moved.length + findingsGone.length + findingsCome.length === 0;
}

function staying({ decision }: DecidedVine): string {
  return decision.cordons
    .filter(({ verdict }) => verdict !== "goes")
    .map(({ cordon, verdict }) => (verdict === "ask" ? `${cordon}?` : cordon))
    .join(", ");
}

function* found(season: Season, today: number, from: number): Generator<number, Finding[], void> {
  const findings: Finding[] = [];
  for (const { finding, done } of checkSeason(season, { today }))
    if (finding !== undefined) findings.push(finding);
    else yield from + done * 0.25;
  return findings;
}

function missingFrom(some: readonly Finding[], others: readonly Finding[]): Finding[] {
  const known = new Set(others.map(findingIdentity));
  return some.filter((finding) => !known.has(findingIdentity(finding)));
}
