import {
  cropOutlook,
  type CropOutlook,
  type OutlookBlock,
  type Stage,
  type StageFigures,
} from "../../domain/outlook/cropOutlook";
import {
  cropLoadAgainst,
  type CropLoadRangeName,
  type CropLoadVerdict,
} from "../../domain/outlook/cropLoadRanges";
import { disagreement, type Disagreement } from "../../domain/outlook/ownHarvests";
import { nextSteps, sampledUnits, type NextStep } from "../../domain/outlook/nextSteps";
import { thinning, thinningGroups, type Thinning } from "../../domain/outlook/thinning";
import type { Range } from "../../domain/outlook/productRange";
import { yearOfGrowth } from "../../domain/plan/youngVine";
import type { BlockOutlookInputs } from "./outlookInputs";
import { cropLoadLimit } from "../settings/outlook";
import type { SettingValues } from "../settings/settings";

/** What a young block may carry. */
export interface YoungLimit {
  /** Year of growth, the year of planting being the first. */
  readonly leaf: number;
  /** Most clusters on a vine by the Settings sheet. */
  readonly clusters: number;
  /** Likely clusters on a vine as it stands; undefined where none are to be expected or counted. */
  readonly likely: number | undefined;
}

/**
 * Crop over prunings of one pair. "following": the crop of the year before over the prunings of the winter after it, as
 * published ranges have it. "before": this year's likely crop over the prunings of the winter before it.
 */
export interface CropLoadOfPair extends CropLoadVerdict {
  readonly pair: "following" | "before";
  /** Of the crop. */
  readonly year: number;
  readonly range: CropLoadRangeName;
  readonly limits: { readonly low: number; readonly high: number };
}

/** Everything the outlook says of one block. */
export interface BlockOutlook {
  readonly inputs: BlockOutlookInputs;
  /** One a stage, in the order of the season; the last is the one in force. */
  readonly stages: readonly CropOutlook[];
  readonly latest: CropOutlook | undefined;
  /** The winter's crop with the nodes as counted, beside that of the plan. */
  readonly asCounted: CropOutlook | undefined;
  /** How each stage's range stands to the block's own harvests; empty without any. */
  readonly againstHarvests: readonly { readonly stage: Stage; readonly disagreement: Disagreement }[];
  readonly latestFigures: StageFigures | undefined;
  /** Best ways to spend the time named in the Settings sheet. */
  readonly steps: readonly NextStep[];
  /** Minutes that a step may take, and by which share it must narrow the range to be one; where anything is sampled. */
  readonly leastStep?: { readonly minutes: number; readonly gain: number };
  /** The winter's crop with the secondaries read the other way, where the bud cuts do not tell. */
  readonly otherSecondaries: CropOutlook | undefined;
  /** Against the range named in the Settings sheet, where prunings were weighed; a pair of crop and prunings each. */
  readonly cropLoads: readonly CropLoadOfPair[];
  /** Undefined without a target, a cluster weight, a density or counted clusters. */
  readonly thinning: Thinning | undefined;
  /** Picked over likely, for each stage, once the harvest is in. */
  readonly pickedOverLikely: readonly {
    readonly stage: string;
    readonly ratio: number;
    readonly held: boolean;
  }[];
  readonly young: YoungLimit | undefined;
}

/**
 * The outlook of one block: every stage that the sheets have figures for, what narrows the latest, crop load, thinning to the
 * target, and the harvest against each stage.
 *
 * @param groupNames names of the groups of vines for thinning, lightest first
 */
export function blockOutlook(
  inputs: BlockOutlookInputs,
  settings: SettingValues,
  groupNames: readonly string[],
): BlockOutlook {
  const confidence = settings.confidenceOfRanges;
  const block: OutlookBlock = {
    planted: inputs.planted,
    bearing: inputs.bearing,
    ...(inputs.density === undefined ? {} : { density: inputs.density }),
  };
  const stages = inputs.stages.map((figures) => cropOutlook(figures, block, confidence));
  const latest = stages.at(-1);
  const latestFigures = inputs.stages.at(-1);
  const costs = {
    vines: settings.minutesToCountAVine,
    canes: settings.minutesToCutACane,
    clusters: settings.minutesToWeighACluster,
  };
  const range = settings.cropLoadRange;
  const limits = {
    low: settings[cropLoadLimit("least", range)],
    high: settings[cropLoadLimit("most", range)],
  };
  return {
    inputs,
    stages,
    latest,
    asCounted: inputs.asCounted && cropOutlook(inputs.asCounted, block, confidence),
    againstHarvests: stages.flatMap(({ stage, block: range }) =>
      inputs.harvests ? [{ stage, disagreement: disagreement(range, inputs.harvests) }] : [],
    ),
    latestFigures,
    steps: latestFigures
      ? nextSteps(latestFigures, block, confidence, costs, {
          minutes: settings.minutesForANextStep,
          leastGain: settings.leastGainOfANextStep,
          margin: settings.marginOfACount,
        })
      : [],
    ...(latestFigures && sampledUnits(latestFigures).length > 0
      ? { leastStep: { minutes: settings.minutesForANextStep, gain: settings.leastGainOfANextStep } }
      : {}),
    otherSecondaries: inputs.otherSecondaries && cropOutlook(inputs.otherSecondaries, block, confidence),
    cropLoads:
      limits.low <= limits.high
        ? cropLoads(inputs, latest).map(({ crop, prunings, ...pair }) => ({
            ...cropLoadAgainst(crop, prunings, limits),
            ...pair,
            range,
            limits,
          }))
        : [],
    thinning: thinningOf(inputs, latestFigures, settings.minutesAVineThinning, groupNames),
    pickedOverLikely:
      inputs.picked === undefined
        ? []
        : stages
            .filter((stage) => stage.block.likely > 0)
            .map(({ stage, block: { low, likely, high } }) => ({
              stage,
              ratio: inputs.picked! / likely,
              held: inputs.picked! >= low && inputs.picked! <= high,
            })),
    young: youngLimit(inputs, latest, settings),
  };
}

function cropLoads({ prunings, pickedBefore, year }: BlockOutlookInputs, latest: CropOutlook | undefined) {
  if (!prunings) return [];
  const pairs: { pair: CropLoadOfPair["pair"]; year: number; crop: Range; prunings: number }[] = [];
  if (pickedBefore && pickedBefore.vines > 0) {
    const aVine = pickedBefore.picked / pickedBefore.vines;
    pairs.push({
      pair: "following",
      year: year - 1,
      crop: { low: aVine, likely: aVine, high: aVine },
      prunings: prunings.mean,
    });
  }
  if (latest) pairs.push({ pair: "before", year, crop: latest.perVine, prunings: prunings.mean });
  return pairs;
}

function thinningOf(
  { targetCrop, density, planted, bearingVines, clusterCounts, clusterWeight }: BlockOutlookInputs,
  figures: StageFigures | undefined,
  minutes: number,
  groupNames: readonly string[],
): Thinning | undefined {
  const weight =
    figures?.stage === "lagPhase" ? figures.clusterWeight.value * figures.multiplier.value : clusterWeight;
  if (!targetCrop || !density || !weight || clusterCounts.length < groupNames.length) return undefined;
  const allowed = (targetCrop * (planted / density)) / weight;
  return thinning(
    thinningGroups(clusterCounts, Math.max(bearingVines, clusterCounts.length), groupNames),
    allowed,
    minutes,
  );
}

function youngLimit(
  { year, yearPlanted }: BlockOutlookInputs,
  latest: CropOutlook | undefined,
  settings: SettingValues,
): YoungLimit | undefined {
  const leaf = yearPlanted === undefined ? undefined : yearOfGrowth(yearPlanted, year);
  if (leaf === undefined || leaf === 4) return undefined;
  const clusters =
    leaf === 1 ? 0 : leaf === 2 ? settings.clustersAVineInYear2 : settings.clustersAVineInYear3;
  return { leaf, clusters, likely: latest?.clusters.likely };
}
