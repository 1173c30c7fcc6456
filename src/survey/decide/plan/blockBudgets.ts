import { limitedNodes, type LimitedNodes } from "../../../domain/limitedNodes";
import { nodesAfterEveryRule, nodesAfterInjury, type InjuryAnswer } from "../../../domain/nodesAfterInjury";
import { yearOfGrowth } from "../../../domain/plan/youngVine";
import { Refusal } from "../../../domain/refusal";
import { KILOGRAMS_PER_POUND } from "../../../domain/units";
import { blockFigures, type BlockFigures } from "../../season/blockFigures";
import type { Season } from "../../season/season";
import { winterOfSeason } from "../../season/winterOfSeason";
import { placeOf } from "../../season/vinePlaces";
import { NODE_RULES, nodeRule, type BudgetBasis } from "../../sheets/nodeRules";
import { isSameChoice, wordKey } from "../../sheets/words";
import type { DecidedVine } from "../decideSeason";
import { budsCut, pooled, type BudsCut } from "./deadShares";
import {
  answer,
  injuryOf,
  straddled,
  type Injury,
  type NodesOrRefusal,
  type Straddle,
} from "./injuryOfBlocks";
import { spurLimits, spursOn, type SpurLimits } from "./plannedNodes";
import { blockRules, weighedVines, woodOf, type WeighedVine, type WeighedVines } from "./vineBudgets";

/** What one node rule leaves on a vine that no winter hurt. */
export interface RuleBudget extends NodesOrRefusal {
  readonly rule: string;
  /** True for the rule in force. */
  readonly inForce: boolean;
}

/** A vine with less than a pound of prunings, for which the balanced formulas give no number. */
export interface LightVine extends WeighedVine {
  readonly row: number;
  readonly vine: number;
}

/** What the winter did to a block and what to leave on its mean vine. */
export interface BlockBudget {
  readonly block: string;
  /** "" where the Blocks sheet names none. */
  readonly cultivar: string;
  readonly injury?: Injury;
  readonly basis: BudgetBasis;
  /** Vines weighed, and the mean of their prunings in kilograms. */
  readonly weighed: { readonly vines: number; readonly mean?: number };
  /** Before injury, the rule in force first. */
  readonly rules: readonly RuleBudget[];
  readonly injuryRule: string;
  /** What each injury rule makes of the rule in force; empty without bud cuts or without a number. */
  readonly corrected: readonly InjuryAnswer[];
  readonly straddle?: Straddle;
  /** What to leave, after injury and within the limits of Settings. */
  readonly leave: Partial<LimitedNodes> & { readonly refusal?: Refusal };
  /** Spurs on the cordons that stay, a vine: those counted, and the vines that they were counted on. */
  readonly spurs?: { readonly vines: number; readonly mean: number };
  readonly light: readonly LightVine[];
  readonly figures: BlockFigures;
  readonly spurLimits: SpurLimits;
}

/** The buds of a cultivar, pooled over its blocks. */
export interface CultivarInjury extends Injury {
  readonly cultivar: string;
  readonly blocks: readonly string[];
}

/** What the winter did and what to leave, block by block. */
export interface NodesOfSeason {
  readonly blocks: readonly BlockBudget[];
  /** Cultivars with bud cuts in more than one block. */
  readonly cultivars: readonly CultivarInjury[];
}

/**
 * Every block with its dead buds and their range, what each node rule that applies would leave on a vine of the block's
 * mean prunings, what each injury rule makes of the one in force, and the spurs that must carry it.
 *
 * @param decided the vines with their answers; the cordons that stay are the ones whose spurs are counted
 */
export function blockBudgets(season: Season, decided: readonly DecidedVine[]): NodesOfSeason {
  const buds = budsCut(season);
  const weights = weighedVines(season);
  const rulesOf = blockRules(season);
  const figuresOf = blockFigures(season);
  const limitsOf = spurLimits(season);
  const spurs = spursByBlock(decided);
  const blocks = blocksToBudget(season, buds, weights).map((code): BlockBudget => {
    const block = season.words.wordOf(code);
    const { nodes: text, injury: injuryRule, mostNodes } = rulesOf(code);
    const vines = [...weights.byVine].filter(([key]) => placeOf(key).block === code);
    const wood = woodOf(season, code, weights);
    const rule = nodeRule(text);
    const sample = buds.get(block);
    const injury = sample && injuryOf(season, sample);
    const before = answer(() => rule.nodes(text, wood));
    const correct = (share: number) => answer(() => nodesAfterInjury(before.nodes ?? NaN, share, injuryRule));
    const basis = rule.basis(wood);
    const figures = figuresOf(code);
    return {
      block,
      cultivar: figures.nodeRule.cultivar,
      ...(injury && { injury }),
      basis,
      weighed: { vines: vines.length, mean: wood.blockPrunings },
      rules: rulesToShow(text).map((one, at) => ({
        rule: one,
        inForce: at === 0,
        ...answer(() => nodeRule(one).nodes(one, wood)),
      })),
      injuryRule,
      corrected: injury && before.nodes !== undefined ? nodesAfterEveryRule(before.nodes, injury.share) : [],
      ...(injury && before.nodes !== undefined && straddled(injuryRule, injury, correct)),
      leave: leaves(
        season,
        code,
        injury && before.nodes !== undefined ? correct(injury.share) : before,
        mostNodes,
      ),
      figures,
      spurLimits: limitsOf(code),
      ...(spurs.has(block) && { spurs: spurs.get(block) }),
      light: basis === "blockMean" ? lightVines(vines) : [],
    };
  });
  return { blocks, cultivars: cultivarsOf(blocks, (pool) => injuryOf(season, pool)) };
}

function leaves(
  season: Season,
  block: number,
  { nodes, refusal }: NodesOrRefusal,
  most: number,
): BlockBudget["leave"] {
  const planted = season.places.blockNumber(block, "planted");
  const year = yearOfGrowth(planted, winterOfSeason(season));
  if (year !== undefined) return { refusal: new Refusal("notAvailable", "youngVine", { year }) };
  if (nodes === undefined) return { refusal };
  return limitedNodes(nodes, season.settings.leastNodesAVine, most);
}

/** The rule in force, then the published ones that are not it. */
function rulesToShow(inForce: string): string[] {
  const published = NODE_RULES.flatMap((rule) => rule.published);
  const isInForce = (text: string) =>
    isSameChoice(text, inForce) || (nodeRule(text) === nodeRule(inForce) && nodeRule(text).isOneRule);
  return [inForce, ...published.filter((text) => !isInForce(text))];
}

/** Numbers of the names of blocks that bud cuts, prunings or the Blocks sheet know, in the order of that sheet. */
function blocksToBudget(
  season: Season,
  buds: ReadonlyMap<string, BudsCut>,
  weights: WeighedVines,
): readonly number[] {
  const codes = new Set<number>(season.places.blockRows().keys());
  for (const key of weights.byVine.keys()) codes.add(placeOf(key).block);
  for (const block of buds.keys()) codes.add(season.words.codeOf(block));
  return [...codes];
}

function lightVines(vines: readonly (readonly [number, WeighedVine])[]): LightVine[] {
  return vines.flatMap(([key, weighed]) => {
    if (!(weighed.prunings < KILOGRAMS_PER_POUND)) return [];
    const { row, vine } = placeOf(key);
    return [{ ...weighed, row, vine }];
  });
}

function spursByBlock(decided: readonly DecidedVine[]): Map<string, { vines: number; mean: number }> {
  const sums = new Map<string, { vines: number; spurs: number }>();
  for (const vine of decided) {
    const spurs = vine.plan.keeps.length === 0 ? undefined : spursOn(vine);
    if (spurs === undefined) continue;
    const sum = sums.get(vine.block) ?? { vines: 0, spurs: 0 };
    sums.set(vine.block, { vines: sum.vines + 1, spurs: sum.spurs + spurs });
  }
  return new Map([...sums].map(([block, { vines, spurs }]) => [block, { vines, mean: spurs / vines }]));
}

function cultivarsOf(blocks: readonly BlockBudget[], injuryOf: (buds: BudsCut) => Injury): CultivarInjury[] {
  const byName = new Map<string, { cultivar: string; blocks: string[]; buds: BudsCut }>();
  for (const { block, cultivar, injury } of blocks) {
    if (cultivar === "" || injury === undefined) continue;
    const known = byName.get(wordKey(cultivar));
    byName.set(wordKey(cultivar), {
      cultivar: known?.cultivar ?? cultivar,
      blocks: [...(known?.blocks ?? []), block],
      buds: pooled(known?.buds, injury),
    });
  }
  return [...byName.values()]
    .filter((one) => one.blocks.length > 1)
    .map(({ cultivar, blocks: names, buds }) => ({ cultivar, blocks: names, ...injuryOf(buds) }));
}
