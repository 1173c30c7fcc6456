import type { Stage } from "../../domain/outlook/cropOutlook";
import type { UnitSystem } from "../../domain/units";
import type { Range } from "../../domain/outlook/productRange";
import { checkSeason } from "../../survey/checks/checkSeason";
import { blockOutlook } from "../../survey/crop/blockOutlook";
import { outlookInputs } from "../../survey/crop/outlookInputs";
import { decideSeason, type DecidedVine } from "../../survey/decide/decideSeason";
import { blockBudgets } from "../../survey/decide/plan/blockBudgets";
import { isSameFigure } from "../../survey/settings/setting";
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

/** A block's crop at a stage that would move, in kilograms; undefined where there is none before, or none afterwards. */
export interface MovedCrop {
  readonly block: string;
  readonly stage: Stage;
  readonly before: Range | undefined;
  readonly after: Range | undefined;
}

/** Nodes to leave on a block's mean vine that would move; undefined where there is no number. */
export interface MovedBudget {
  readonly block: string;
  readonly before: number | undefined;
  readonly after: number | undefined;
}

/** What a change of settings would move. */
export interface MovedResults {
  readonly vines: number;
  /** The workbook's, in which crops are shown. */
  readonly units: UnitSystem;
  readonly moved: readonly MovedVine[];
  readonly budgets: readonly MovedBudget[];
  readonly crops: readonly MovedCrop[];
  readonly findingsGone: readonly Finding[];
  readonly findingsCome: readonly Finding[];
}

/**
 * Works out which results a change of settings moves: the decision of every vine, the node budget and crop of every block
 * and the findings of the check, with the figures in force and with the new ones.
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
  const decidedBefore: DecidedVine[] = [];
  const decidedAfter: DecidedVine[] = [];
  const afterVines = decideSeason(after);
  for (const now of decideSeason(before)) {
    const then = afterVines.next().value as DecidedVine;
    decidedBefore.push(now);
    decidedAfter.push(then);
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
    units: before.unitSystem,
    moved,
    budgets: movedBudgets(budgetsOf(before, decidedBefore), budgetsOf(after, decidedAfter)),
    crops: movedCrops(cropsOf(before, decidedBefore), cropsOf(after, decidedAfter)),
    findingsGone: missingFrom(foundBefore, foundAfter),
    findingsCome: missingFrom(foundAfter, foundBefore),
  };
}

/** True when no decision and no finding would move. */
export function nothingMoves({ moved, findingsGone, findingsCome }: MovedResults): boolean {
  return moved.length + findingsGone.length + findingsCome.length === 0;
}

const budgetsOf = (season: Season, decided: readonly DecidedVine[]) =>
  new Map(blockBudgets(season, decided).blocks.map(({ block, leave }) => [block, leave.nodes]));

function movedBudgets(
  now: ReadonlyMap<string, number | undefined>,
  then: ReadonlyMap<string, number | undefined>,
): MovedBudget[] {
  return [...new Set([...now.keys(), ...then.keys()])].flatMap((block) => {
    const [before, after] = [now.get(block), then.get(block)];
    return isSameFigure(before ?? "", after ?? "") ? [] : [{ block, before, after }];
  });
}

const cropsOf = (season: Season, decided: readonly DecidedVine[]) =>
  new Map(
    outlookInputs(season, { decided }).flatMap((inputs) =>
      blockOutlook(inputs, season.settings, []).stages.map(
        ({ stage, block: range }) =>
          [`${stage} ${inputs.block}`, { block: inputs.block, stage, range }] as const,
      ),
    ),
  );

/** The crop of every block and stage that is another afterwards, that comes, or that goes. */
function movedCrops(now: ReturnType<typeof cropsOf>, then: ReturnType<typeof cropsOf>): MovedCrop[] {
  return [...new Map([...now, ...then])].flatMap(([key, { block, stage }]) => {
    const [before, after] = [now.get(key)?.range, then.get(key)?.range];
    const same = (["low", "likely", "high"] as const).every((end) => before?.[end] === after?.[end]);
    return same ? [] : [{ block, stage, before, after }];
  });
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
