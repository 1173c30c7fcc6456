import { CROP_LOAD_RANGES, type CropLoadRangeName } from "../../domain/outlook/cropLoadRanges";
import { withTexts, type Text } from "../../texts/language";
import type { Figure, SettingRow } from "./setting";
import { figure, oneOf, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const MEANINGS = TEXTS.settings.outlook;

const MEMORY = "from memory, unverified";

const minutes = (name: string, value: number, meaning: Text) =>
  figure(name, value, "min", MEMORY, [0.1, 240], meaning);

const RANGE_WORDS: Readonly<Record<CropLoadRangeName, Text>> = MEANINGS.rangeWords;

type CropLoadLimitId = `${"least" | "most"} crop load, ${CropLoadRangeName}`;

/**
 * The setting of a limit of a named range of crop load.
 *
 * @example
 * cropLoadLimit("least", "hybrids") // "least crop load, hybrids"
 */
export const cropLoadLimit = (end: "least" | "most", range: CropLoadRangeName): CropLoadLimitId =>
  `${end} crop load, ${range}`;

const cropLoadLimits = Object.fromEntries(
  CROP_LOAD_RANGES.flatMap(({ name, low, high, source }) => {
    const vines = RANGE_WORDS[name];
    const limit = (word: string, value: number, meaning: Text) =>
      figure(`${word} crop load, ${name}`, value, "", source, [0, 100], meaning);
    return [
      [cropLoadLimit("least", name), limit("Least", low, withTexts(MEANINGS.leastCropLoad, { vines }))],
      [cropLoadLimit("most", name), limit("Most", high, withTexts(MEANINGS.mostCropLoad, { vines }))],
    ];
  }),
) as Readonly<Record<CropLoadLimitId, Figure<"">>>;

/** Settings for crop outlook, sampling and crop load. */
export const OUTLOOK_SETTINGS = {
  usualBudbreak: share("Usual budbreak", 0.85, MEMORY, MEANINGS.usualBudbreak),
  budbreakYearToYear: figure(
    "Budbreak, year to year",
    0.06,
    "share",
    MEMORY,
    [0, 0.5],
    MEANINGS.budbreakYearToYear,
  ),
  usualClustersAShoot: figure(
    "Usual clusters a shoot",
    2,
    "",
    "common practice",
    [0.1, 6],
    MEANINGS.usualClustersAShoot,
  ),
  usualClusterWeight: figure(
    "Usual cluster weight",
    0.25,
    "lb",
    "ours",
    [0.02, 3],
    MEANINGS.usualClusterWeight,
  ),
  clusterWeightBetweenCultivars: share(
    "Cluster weight, between cultivars",
    0.4,
    "ours",
    MEANINGS.clusterWeightBetweenCultivars,
  ),
  clustersAShootYearToYear: share(
    "Clusters a shoot, year to year",
    0.25,
    "cornell2012",
    MEANINGS.clustersAShootYearToYear,
  ),
  clusterWeightYearToYear: share(
    "Cluster weight, year to year",
    0.2,
    "awri2022",
    MEANINGS.clusterWeightYearToYear,
  ),
  clusterWeightBetweenClusters: share(
    "Cluster weight, between clusters",
    0.4,
    MEMORY,
    MEANINGS.clusterWeightBetweenClusters,
  ),
  worthOfASecondaryShoot: share(
    "Worth of a secondary shoot",
    0.38,
    "winesVines2015",
    MEANINGS.worthOfASecondaryShoot,
  ),
  secondariesAreWritten: oneOf(
    "Secondaries are written",
    "as the counts tell",
    ["as the counts tell", "of all nodes", "under dead primaries"],
    "ours",
    MEANINGS.secondariesAreWritten,
  ),
  basalShootsASpur: figure("Basal shoots a spur", 0, "", "ours", [0, 5], MEANINGS.basalShootsASpur),
  worthOfABasalShoot: share("Worth of a basal shoot", 0.5, MEMORY, MEANINGS.worthOfABasalShoot),
  frostedNodesAsOne: figure("Frosted nodes as one", 1.7, "", "ours", [1, 10], MEANINGS.frostedNodesAsOne),
  lagPhaseMultiplier: figure("Lag phase multiplier", 2, "", "iowa2013", [1, 5], MEANINGS.lagPhaseMultiplier),
  lagPhaseMultiplierYearToYear: share(
    "Lag phase multiplier, year to year",
    0.15,
    "delaFuente2015",
    MEANINGS.lagPhaseMultiplierYearToYear,
  ),
  clustersWeighed: figure(
    "Clusters weighed",
    100,
    "clusters",
    "iowa2013",
    [2, 100000],
    MEANINGS.clustersWeighed,
  ),
  vinesWereDrawn: oneOf(
    "Vines were drawn",
    "at random",
    ["at random", "by row"],
    "ours",
    MEANINGS.vinesWereDrawn,
  ),
  spreadBetweenVines: figure(
    "Spread between vines",
    0.43,
    "share",
    "strickland1932",
    [0.01, 3],
    MEANINGS.spreadBetweenVines,
  ),
  marginOfACount: figure("Margin of a count", 0.1, "share", "bcwgc", [0.001, 1], MEANINGS.marginOfACount),
  spreadBetweenFarms: figure(
    "Spread between farms",
    0.25,
    "share",
    "ours",
    [0.001, 1],
    MEANINGS.spreadBetweenFarms,
  ),
  budbreakBetweenFarms: figure(
    "Budbreak, between farms",
    0.06,
    "share",
    "ours",
    [0.001, 0.5],
    MEANINGS.budbreakBetweenFarms,
  ),
  lagPhaseMultiplierBetweenFarms: figure(
    "Lag phase multiplier, between farms",
    0.1,
    "share",
    "ours",
    [0.001, 1],
    MEANINGS.lagPhaseMultiplierBetweenFarms,
  ),
  cropLoadRange: oneOf(
    "Crop load range",
    "single canopy",
    CROP_LOAD_RANGES.map(({ name }) => name),
    "kliewer2005",
    MEANINGS.cropLoadRange,
  ),
  ...cropLoadLimits,
  clustersAVineInYear2: figure(
    "Clusters a vine in year 2",
    0,
    "clusters",
    MEMORY,
    [0, 500],
    MEANINGS.clustersAVineInYear2,
  ),
  clustersAVineInYear3: figure(
    "Clusters a vine in year 3",
    10,
    "clusters",
    "winegrowersUk",
    [0, 500],
    MEANINGS.clustersAVineInYear3,
  ),
  floorOfLiveSpurs: share("Floor of live spurs", 0.7, "ours", MEANINGS.floorOfLiveSpurs),
  minutesToCountAVine: minutes("Minutes to count a vine", 3, MEANINGS.minutesToCountAVine),
  minutesToCutACane: minutes("Minutes to cut a cane", 4, MEANINGS.minutesToCutACane),
  minutesToWeighACluster: minutes("Minutes to weigh a cluster", 0.5, MEANINGS.minutesToWeighACluster),
  minutesForANextStep: figure(
    "Minutes for a next step",
    120,
    "min",
    "ours",
    [1, 10000],
    MEANINGS.minutesForANextStep,
  ),
  leastGainOfANextStep: share("Least gain of a next step", 0.05, "ours", MEANINGS.leastGainOfANextStep),
} satisfies Readonly<Record<string, SettingRow>>;
