import { cropAfterFrost } from "../../domain/cropAfterFrost";
import { grouped } from "../../domain/grouped";
import type { StageFigures } from "../../domain/outlook/cropOutlook";
import { clustersWeighedTogether } from "../../domain/outlook/clustersWeighed";
import {
  exactly,
  fromYears,
  shareFromYears,
  spreadOfUsual,
  type Estimate,
} from "../../domain/outlook/estimate";
import { fruitfulNodes, type CaneCut } from "../../domain/outlook/fruitfulNodes";
import { worthOfShoots } from "../../domain/outlook/worthOfShoots";
import {
  secondariesOnly,
  secondariesWritten,
  type CaneAsWritten,
  type SecondariesWritten,
} from "../../domain/outlook/secondariesWritten";
import {
  kilogramsPerHectareFromTonnes,
  kilogramsPerHectareFromTonsPerAcre,
  metres,
  type KilogramsPerHectare,
  type VinesPerHectare,
} from "../../domain/units";
import { vineDensity } from "../../domain/vineDensity";
import type { DecidedVine } from "../decide/decideSeason";
import { injuryOfBlocks, type InjuredBlock } from "../decide/plan/injuryOfBlocks";
import { plannedNodes } from "../decide/plan/plannedNodes";
import { stayingCordons } from "../decide/stayingCordons";
import { fixedCordons, type Stays } from "../season/fixedCordons";
import { blockFigures, type BlockFigures } from "../season/blockFigures";
import type { Season, SurveyTable } from "../season/season";
import { ownHarvests, type OwnHarvests } from "../../domain/outlook/ownHarvests";
import type { VinePlaces } from "../season/vinePlaces";
import { shootThinningOf, vinesOfBlocks, type ShootThinning, type VinesOfBlock } from "./vinesOfBlocks";
import { PUBLISHED_MULTIPLIER } from "./farmFigures";
import { isSameFigure } from "../settings/setting";
import type { SettingValues } from "../settings/settings";
import { FROST_COUNTS } from "../sheets/sheets";
import { harvestRows } from "../season/harvestRows";
import { winterOfSeason } from "../season/winterOfSeason";
import { bearsNothingYet } from "../season/youngVines";
import { NO_WORD } from "../sheets/words";
import { choiceId, NO_PLACE, placeKey, placeOf } from "../season/vinePlaces";

/** What the sheets lack: "needed" leaves a stage out, "assumed" is made up for by what stands beside it in the texts. */
export interface Lacking {
  readonly code:
    | "vinesOfBlock"
    | "clusterWeight"
    | "countedVines"
    | "decidedVines"
    | "budCuts"
    | "secondaries"
    | "register"
    | "rowsOfVines"
    | "usualFigures"
    | "fewVines"
    | "frostCounts";
  readonly kind: "needed" | "assumed";
}

/** Everything the outlook of one block needs, taken from the sheets. Masses in kilograms. */
export interface BlockOutlookInputs {
  readonly block: string;
  readonly cultivar: string | undefined;
  readonly training: string | undefined;
  /** Season that the figures are of: the year of its harvest. */
  readonly year: number;
  readonly yearPlanted: number | undefined;
  readonly planted: number;
  readonly bearingVines: number;
  readonly bearing: Estimate;
  readonly density: VinesPerHectare | undefined;
  /** Shoots to thin a vine to; undefined where none were counted. */
  readonly shootThinning: ShootThinning | undefined;
  /** One for each stage that the sheets have figures for, in the order of the season. */
  readonly stages: readonly StageFigures[];
  /** The winter's figures with the nodes that stand on the staying cordons as counted; undefined where no vine has a plan. */
  readonly asCounted: StageFigures | undefined;
  /** The winter's figures with the secondaries read the other way, where the bud cuts do not tell which is meant. */
  readonly otherSecondaries: StageFigures | undefined;
  readonly injured: InjuredBlock | undefined;
  /** Nodes counted after a spring frost of the season, with the share of a crop that they leave. */
  readonly frost: FrostCount | undefined;
  /** Of the years before this one. */
  readonly harvests: OwnHarvests | undefined;
  /** Clusters of each counted bearing vine. */
  readonly clusterCounts: readonly number[];
  /** Mean prunings of a bearing vine and how many were weighed. */
  readonly prunings: { readonly mean: number; readonly weighed: number } | undefined;
  readonly targetCrop: KilogramsPerHectare | undefined;
  /** Usual weight of a ripe cluster, from the Blocks sheet. */
  readonly clusterWeight: number | undefined;
  /** Picked this season. */
  readonly picked: number | undefined;
  /** Of the year before: the crop whose prunings are those of this winter. */
  readonly pickedBefore: CropBefore | undefined;
  readonly lacking: readonly Lacking[];
  /** In force in the block, and where each is from. */
  readonly figures: BlockFigures;
}

/** Nodes by the best that lives on each, all of them, and the share of a full crop that is left. */
export interface FrostCount {
  readonly primaries: number;
  readonly secondaries: number;
  readonly nodes: number;
  /** Nodes with any living shoot. */
  readonly living: number;
  readonly share: number;
  readonly secondaryWorth: number;
}

/** A crop in kilograms and the vines that bore it. */
export interface CropBefore {
  readonly picked: number;
  readonly vines: number;
}

export interface OutlookOptions {
  /** Year of the harvest; left out: the season of the latest count. */
  readonly year?: number;
  /** The vines with their plans, from which the nodes left are taken; left out: as counted on the cordons fixed in the sheet. */
  readonly decided?: readonly DecidedVine[];
}

/**
 * Makes the inputs of the outlook from the survey's sheets, a block each in the order of the Blocks sheet: bearing vines and
 * missing ones from the Vines sheet, counted shoots and clusters from it too, nodes left from the vines' plans, injury
 * from the Bud cuts sheet, weights and lag-phase figures of the season from the Harvest sheet, everything else from the
 * Blocks and Settings sheets. What the sheets lack is named, never guessed in silence.
 *
 * @param survey sheets as read
 */
export function outlookInputs(season: Season, options: OutlookOptions = {}): BlockOutlookInputs[] {
  const places = season.places;
  const year = options.year ?? winterOfSeason(season);
  const vinesOf = vinesOfBlocks(season);
  const { decided } = options;
  const stays = decided ? stayingCordons(decided) : fixedCordons(season);
  const counted = nodesLeft(season, places, stays);
  const planned = decided && nodesPlanned(season, decided);
  const left = planned?.size ? nodesLeft(season, places, stays, planned) : counted;
  const cuts = caneCuts(season);
  const seasons = winterRows(season, year);
  const crops = cropsByYear(season);
  const injured = injuryOfBlocks(season);
  const inputs: BlockOutlookInputs[] = [];
  for (const [code, vines] of vinesOf)
    inputs.push(
      inputsOfBlock(
        season,
        places,
        code,
        year,
        vines,
        { left: left.get(code), counted: planned?.size ? counted.get(code) : undefined },
        cuts.get(code),
        seasons.get(code),
        crops.get(code) ?? new Map<number, CropBefore>(),
        injured.get(code),
      ),
    );
  return inputs;
}

interface VineNodes {
  readonly nodes: number;
  readonly spurs: number;
}

/** Nodes and spurs of each vine by row: those of the plan, and those on the staying cordons as counted. */
interface NodesOfBlock {
  readonly left: ReadonlyMap<number, VineNodes[]> | undefined;
  readonly counted: ReadonlyMap<number, VineNodes[]> | undefined;
}

interface WinterFigures {
  readonly picked: number;
  readonly lagWeight: number;
  readonly clustersWeighed: number;
  /** Nodes with a living primary, secondary only, tertiary only, and none; NaN where not counted. */
  readonly frost: readonly number[];
}

function inputsOfBlock(
  season: Season,
  places: VinePlaces,
  code: number,
  year: number,
  vines: VinesOfBlock,
  nodes: NodesOfBlock,
  cuts: CutsOfBlock | undefined,
  figures: WinterFigures | undefined,
  crops: ReadonlyMap<number, CropBefore>,
  injured: InjuredBlock | undefined,
): BlockOutlookInputs {
  const { settings } = season;
  const inForce = blockFigures(season)(code);
  const secondaryWorth = inForce.secondaryWorth.value;
  const figure = (column: string) => usable(places.blockNumber(code, column));
  const entry = places.blockRows().get(code);
  const lacking: Lacking[] = [];
  const lack = (what: Lacking["code"], kind: Lacking["kind"]) => lacking.push({ code: what, kind });

  const { listed, planted, complete, bearing, bearingVines, estimate, clusters, shoots } = vines;
  if (planted === 0) lack("vinesOfBlock", "needed");
  if (listed === 0) lack("register", "assumed");
  if (settings.vinesWereDrawn === "by row" && !complete) lack("rowsOfVines", "assumed");
  const nodesOf = (byRow: NodesOfBlock["left"]) => {
    if (!byRow) return undefined;
    const ofRow = (row: number) => (byRow.get(row) ?? []).map((vine) => vine.nodes);
    return estimate([...byRow.keys()].flatMap(ofRow), ofRow);
  };
  const left = nodesOf(nodes.left);
  const counted = nodesOf(nodes.counted);
  if (vines.few()) lack("fewVines", "assumed");

  const usualWeight = figure("clusterWeight");
  if (usualWeight === undefined) lack("clusterWeight", "needed");
  const clusterWeight =
    usualWeight === undefined
      ? undefined
      : fromYears("clusterWeight", usualWeight, settings.clusterWeightYearToYear);
  const ownClusters = figure("clustersPerShoot");
  const clustersPerShoot = fromYears(
    "clustersPerShoot",
    inForce.clustersPerShoot.value,
    ownClusters === undefined
      ? spreadOfUsual(settings.clustersAShootYearToYear, settings.spreadBetweenFarms, 1)
      : settings.clustersAShootYearToYear,
  );
  const ownBudbreak = figure("budbreak");
  if (
    clusterWeight &&
    ((left && ownBudbreak === undefined) || ((left || shoots) && ownClusters === undefined))
  )
    lack("usualFigures", "assumed");

  const stages: StageFigures[] = [];
  let asCounted: StageFigures | undefined;
  let otherSecondaries: StageFigures | undefined;
  if (left && clusterWeight) {
    if (!cuts) lack("budCuts", "assumed");
    const basalWorth = (byRow: NodesOfBlock["left"]) =>
      inForce.basalShoots.value * inForce.basalWorth.value * spursANode(byRow, inForce.nodesASpur.value);
    const winter: StageFigures = {
      stage: "winter",
      nodes: left,
      buds: cuts ? fruitfulNodes(cuts.canes, secondaryWorth) : exactly("buds", 1),
      budbreak: shareFromYears(
        "budbreak",
        inForce.budbreak.value,
        ownBudbreak === undefined
          ? spreadOfUsual(settings.budbreakYearToYear, settings.budbreakBetweenFarms, 0.5)
          : settings.budbreakYearToYear,
      ),
      basalWorth: basalWorth(nodes.left),
      clustersPerShoot,
      clusterWeight,
    };
    stages.push(winter);
    asCounted = counted && { ...winter, nodes: counted, basalWorth: basalWorth(nodes.counted) };
    if (cuts?.otherwise) {
      lack("secondaries", "assumed");
      otherSecondaries = {
        ...winter,
        buds: fruitfulNodes(cuts.otherwise, secondaryWorth),
      };
    }
  }
  const frosted = frostCount(figures?.frost ?? [], secondaryWorth);
  if (frosted === "incomplete") lack("frostCounts", "needed");
  const frost = frosted === "incomplete" ? undefined : frosted;
  if (frost && left && clusterWeight) {
    const { nodes, primaries, secondaries } = frost;
    const count = fruitfulNodes(
      [{ nodes, primaries, secondariesOnly: secondaries }],
      secondaryWorth,
      settings.frostedNodesAsOne,
    );
    stages.push({
      stage: "frost",
      nodes: left,
      buds: { ...count, sample: undefined },
      clustersPerShoot,
      clusterWeight,
    });
  }
  if (shoots && clusterWeight) {
    const worthAfterFrost =
      frost && frost.living > 0
        ? fruitfulNodes(
            [{ nodes: frost.living, primaries: frost.primaries, secondariesOnly: frost.secondaries }],
            secondaryWorth,
            settings.frostedNodesAsOne,
          )
        : undefined;
    const worthOfWinter = cuts?.canes.some((cane) => cane.primaries + cane.secondariesOnly > 0)
      ? worthOfShoots(cuts.canes, secondaryWorth, inForce.budbreak.value, {
          perNode: inForce.basalShoots.value * spursANode(nodes.left, inForce.nodesASpur.value),
          worth: inForce.basalWorth.value,
        })
      : undefined;
    const worth = worthAfterFrost ? { ...worthAfterFrost, sample: undefined } : worthOfWinter;
    stages.push({ stage: "shoots", shoots, ...(worth ? { worth } : {}), clustersPerShoot, clusterWeight });
  }
  if (clusters && clusterWeight) stages.push({ stage: "clusters", clusters, clusterWeight });
  const lagWeight = figures?.lagWeight ?? NaN;
  if (clusters && lagWeight > 0)
    stages.push({
      stage: "lagPhase",
      clusters,
      clusterWeight: clustersWeighedTogether(
        lagWeight,
        settings.clusterWeightBetweenClusters,
        Math.max(2, usable(figures!.clustersWeighed) ?? settings.clustersWeighed),
      ),
      multiplier: fromYears("lagMultiplier", settings.lagPhaseMultiplier, multiplierSpread(settings)),
    });
  if (!left && !shoots && !clusters && !vines.tooYoung)
    lack(nodes.left ? "decidedVines" : "countedVines", "needed");

  const rowSpacing = figure("rowSpacing");
  const vineSpacing = figure("vineSpacing");
  const before = crops.get(year - 1);
  const trainingColumn = entry?.table.column("training");
  return {
    block: season.words.wordOf(code),
    cultivar: inForce.secondaryWorth.cultivar || undefined,
    training: entry && trainingColumn && choiceId(trainingColumn, entry.index),
    year,
    yearPlanted: figure("planted"),
    planted,
    bearingVines,
    bearing,
    density:
      rowSpacing === undefined || vineSpacing === undefined
        ? undefined
        : vineDensity(metres(rowSpacing), metres(vineSpacing)),
    shootThinning: shootThinningOf(season, code, vines),
    stages: planted > 0 ? stages : [],
    asCounted: planted > 0 ? asCounted : undefined,
    otherSecondaries: planted > 0 ? otherSecondaries : undefined,
    injured,
    frost,
    harvests: ownHarvests(
      [...crops].flatMap(([of, { picked }]) => (of < year ? [{ year: of, picked }] : [])),
    ),
    clusterCounts: vines.clusterCounts,
    prunings: vines.prunings,
    targetCrop: entry && targetCrop(entry.table, entry.index, season.unitSystem),
    clusterWeight: usualWeight,
    picked: crops.get(year)?.picked ?? usable(figures?.picked),
    pickedBefore: before && { ...before, vines: before.vines || bearingVines },
    lacking,
    figures: inForce,
  };
}

/** A tertiary that nobody wrote is none; without the other three counts the share is not known. */
function frostCount(
  counts: readonly number[],
  secondaryWorth: number,
): FrostCount | "incomplete" | undefined {
  if (!counts.some((count) => count >= 0)) return undefined;
  const [primaries, secondaries, tertiaries, shootless] = counts;
  if (!(primaries >= 0 && secondaries >= 0 && shootless >= 0)) return "incomplete";
  const dead = tertiaries >= 0 ? tertiaries : 0;
  const nodes = primaries + secondaries + dead + shootless;
  if (nodes === 0) return "incomplete";
  const share = cropAfterFrost(primaries, secondaries, dead, shootless, secondaryWorth);
  return { primaries, secondaries, nodes, living: nodes - shootless, share, secondaryWorth };
}

const usable = (value = NaN) => (value >= 0 ? value : undefined);

/** Between years alone where the farm set its own multiplier; that between farms besides where the published one stands. */
function multiplierSpread(settings: SettingValues): number {
  const { lagPhaseMultiplier, lagPhaseMultiplierYearToYear: years } = settings;
  return isSameFigure(lagPhaseMultiplier, PUBLISHED_MULTIPLIER)
    ? spreadOfUsual(years, settings.lagPhaseMultiplierBetweenFarms, 1)
    : years;
}

/** Spurs for each node left, by the vines of the block; without a vine as long as the usual spur. */
function spursANode(byRow: NodesOfBlock["left"], usual: number): number {
  const vines = [...(byRow?.values() ?? [])].flat();
  const nodes = vines.reduce((sum, vine) => sum + vine.nodes, 0);
  return nodes > 0 ? vines.reduce((sum, vine) => sum + vine.spurs, 0) / nodes : 1 / usual;
}

/** What the card of each vine leaves, by the key of its place. */
function nodesPlanned(season: Season, decided: readonly DecidedVine[]): Map<number, VineNodes> {
  const nodesOf = plannedNodes(season);
  const planned = new Map<number, VineNodes>();
  for (const vine of decided) {
    const plan = nodesOf(vine);
    if (!plan) continue;
    const spurs = plan.spurs.reduce((sum, part) => sum + part.spurs, 0);
    planned.set(placeKey(season.words.codeOf(vine.block), vine.row, vine.vine), { nodes: plan.nodes, spurs });
  }
  return planned;
}

/**
 * Nodes left on each vine, by block and row: those planned, else those counted on the cordons that stay. A vine that is
 * not decided is left out.
 */
function nodesLeft(
  season: Season,
  places: VinePlaces,
  staying: Stays,
  planned: ReadonlyMap<number, VineNodes> = new Map(),
): Map<number, Map<number, VineNodes[]>> {
  const vines = new Map<number, { nodes: number; spurs: number; decided: boolean }>();
  const figuresOf = blockFigures(season);
  const isTooYoung = bearsNothingYet(season);
  for (const table of season.tables("cordons")) {
    const keys = places.keysOf(table);
    const spurs = table.column("liveSpurs")?.usable;
    const perSpur = table.column("nodesPerSpur")?.usable;
    for (let index = 0; index < keys.length; index++) {
      if (keys[index] === NO_PLACE) continue;
      const vine = vines.get(keys[index]) ?? { nodes: 0, spurs: 0, decided: true };
      vines.set(keys[index], vine);
      const stays = staying(table, index);
      if (stays === undefined) vine.decided = false;
      if (!stays) continue;
      const live = spurs?.[index] ?? NaN;
      const usual = figuresOf(placeOf(keys[index]).block).nodesASpur.value;
      vine.nodes += live * (perSpur && perSpur[index] >= 0 ? perSpur[index] : usual);
      vine.spurs += live;
      if (!(live >= 0)) vine.decided = false;
    }
  }
  const blocks = new Map<number, Map<number, VineNodes[]>>();
  for (const [key, vine] of vines) {
    const { block, row } = placeOf(key);
    const rows = blocks.get(block) ?? new Map<number, VineNodes[]>();
    blocks.set(block, rows);
    const status = places.statusOf(key);
    if (!vine.decided || (status !== undefined && status !== "bearing") || isTooYoung(key)) continue;
    rows.set(row, [...(rows.get(row) ?? []), planned.get(key) ?? vine]);
  }
  return blocks;
}

interface CutsOfBlock {
  readonly canes: readonly CaneCut[];
  /** The same with secondaries read the other way; undefined where the sheet or Settings tell which is meant. */
  readonly otherwise: readonly CaneCut[] | undefined;
}

interface WrittenCane {
  readonly block: number;
  readonly counter: number;
  readonly cane: CaneAsWritten;
}

/** Canes of each block, by the way in which each counter writes secondaries, or all of them where one alone does not tell. */
function caneCuts(season: Season): Map<number, CutsOfBlock> {
  const written = writtenCanes(season);
  const withSecondaries = written.filter(({ cane }) => cane.secondaries >= 0);
  const asSet = WRITTEN_BY_SETTING[season.settings.secondariesAreWritten];
  const ofAll = secondariesWritten(withSecondaries.map(({ cane }) => cane));
  const byCounter = new Map(
    [...grouped(withSecondaries, ({ counter }) => counter)].map(([counter, rows]) => {
      const own = secondariesWritten(rows.map(({ cane }) => cane));
      return [counter, own.told || !ofAll.told ? own : ofAll];
    }),
  );
  return new Map(
    [...grouped(written, ({ block }) => block)].map(([block, rows]) => {
      const cut = (other: boolean) =>
        rows.map(({ counter, cane: { nodes, primaries, secondaries } }): CaneCut => {
          const read = byCounter.get(counter);
          if (!(secondaries >= 0) || !read) return { nodes, primaries, secondariesOnly: 0 };
          const way = asSet ?? (other && !read.told ? OTHER_WAY[read.written] : read.written);
          return {
            nodes,
            primaries,
            secondariesOnly: secondariesOnly({ nodes, primaries, secondaries }, way),
          };
        });
      const canes = cut(false);
      const otherwise = cut(true);
      const isOther = otherwise.some((cane, at) => cane.secondariesOnly !== canes[at].secondariesOnly);
      return [block, { canes, otherwise: isOther ? otherwise : undefined }];
    }),
  );
}

const WRITTEN_BY_SETTING: Readonly<Record<string, SecondariesWritten | undefined>> = {
  "of all nodes": "ofAllNodes",
  "under dead primaries": "underDeadPrimaries",
};

const OTHER_WAY: Readonly<Record<SecondariesWritten, SecondariesWritten>> = {
  ofAllNodes: "underDeadPrimaries",
  underDeadPrimaries: "ofAllNodes",
};

function writtenCanes(season: Season): WrittenCane[] {
  const canes: WrittenCane[] = [];
  for (const table of season.tables("budCuts")) {
    const blocks = table.column("block")?.codes;
    const nodes = table.column("nodesCut")?.usable;
    const primaries = table.column("primariesAlive")?.usable;
    if (!blocks || !nodes || !primaries) continue;
    const secondaries = table.column("secondariesAlive")?.usable;
    const counters = table.column("countedBy")?.codes;
    for (let at = 0; at < table.rowCount; at++)
      if (blocks[at] >= 0 && nodes[at] >= 0 && primaries[at] >= 0)
        canes.push({
          block: blocks[at],
          counter: counters?.[at] ?? NO_WORD,
          cane: { nodes: nodes[at], primaries: primaries[at], secondaries: secondaries?.[at] ?? NaN },
        });
  }
  return canes;
}

/** What the Harvest sheet says of each block in one year; of rows that name one twice, the last. */
function winterRows(season: Season, year: number): Map<number, WinterFigures> {
  const rows = new Map<number, WinterFigures>();
  for (const { block, year: of, at } of harvestRows(season))
    if (of === year)
      rows.set(block, {
        picked: at("picked"),
        lagWeight: at("lagWeight"),
        clustersWeighed: at("clustersWeighed"),
        frost: FROST_COUNTS.map(at),
      });
  return rows;
}

/** What each block bore in every year that bore, picked rows of a year added up; 0 vines where the Harvest sheet does not say. */
function cropsByYear(season: Season): Map<number, Map<number, CropBefore>> {
  const crops = new Map<number, Map<number, CropBefore>>();
  for (const { block, year, at } of harvestRows(season)) {
    const picked = at("picked");
    if (!(picked > 0)) continue;
    const years = crops.get(block) ?? new Map<number, CropBefore>();
    const sum = years.get(year) ?? { picked: 0, vines: 0 };
    const vines = sum.vines + (usable(at("vinesPicked")) ?? 0);
    crops.set(block, years.set(year, { picked: sum.picked + picked, vines }));
  }
  return crops;
}

function targetCrop(
  table: SurveyTable,
  index: number,
  system: "US" | "metric",
): KilogramsPerHectare | undefined {
  const column = table.column("targetCrop");
  const value = column?.usable[index] ?? NaN;
  if (!column || !(value > 0)) return undefined;
  const perHectare = /ha/i.test(/\(([^)]*)\)/.exec(column.header)?.[1] ?? (system === "metric" ? "ha" : ""));
  return perHectare ? kilogramsPerHectareFromTonnes(value) : kilogramsPerHectareFromTonsPerAcre(value);
}
