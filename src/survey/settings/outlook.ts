import { CROP_LOAD_RANGES, type CropLoadRangeName } from "../../domain/outlook/cropLoadRanges";
import { withTexts, type Text } from "../../texts/language";
import type { Figure, SettingRow } from "./setting";
import { figure, oneOf, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.outlook;

const MEMORY = "from memory, unverified";

const minutes = (name: Text, value: number, meaning: Text) =>
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
    const range = TEXTS.outlook.cropLoadRanges[name];
    const limit = (end: "leastCropLoad" | "mostCropLoad", value: number) =>
      figure(
        withTexts(NAMES[end], { range }),
        value,
        "",
        source,
        [0, 100],
        withTexts(MEANINGS[end], { vines }),
      );
    return [
      [cropLoadLimit("least", name), limit("leastCropLoad", low)],
      [cropLoadLimit("most", name), limit("mostCropLoad", high)],
    ];
  }),
) as Readonly<Record<CropLoadLimitId, Figure<"">>>;

/** Settings for crop outlook, sampling and crop load. */
export const OUTLOOK_SETTINGS = {
  usualBudbreak: share(NAMES.usualBudbreak, 0.85, MEMORY, MEANINGS.usualBudbreak),
  budbreakYearToYear: figure(
    NAMES.budbreakYearToYear,
    0.06,
    "share",
    MEMORY,
    [0, 0.5],
    MEANINGS.budbreakYearToYear,
  ),
  usualClustersAShoot: figure(
    NAMES.usualClustersAShoot,
    2,
    "",
    "common practice",
    [0.1, 6],
    MEANINGS.usualClustersAShoot,
  ),
  usualClusterWeight: figure(
    NAMES.usualClusterWeight,
    0.25,
    "lb",
    "ours",
    [0.02, 3],
    MEANINGS.usualClusterWeight,
  ),
  clusterWeightBetweenCultivars: share(
    NAMES.clusterWeightBetweenCultivars,
    0.4,
    "ours",
    MEANINGS.clusterWeightBetweenCultivars,
  ),
  clustersAShootYearToYear: share(
    NAMES.clustersAShootYearToYear,
    0.25,
    "cornell2012",
    MEANINGS.clustersAShootYearToYear,
  ),
  clusterWeightYearToYear: share(
    NAMES.clusterWeightYearToYear,
    0.2,
    "awri2022",
    MEANINGS.clusterWeightYearToYear,
  ),
  clusterWeightBetweenClusters: share(
    NAMES.clusterWeightBetweenClusters,
    0.4,
    MEMORY,
    MEANINGS.clusterWeightBetweenClusters,
  ),
  worthOfASecondaryShoot: share(
    NAMES.worthOfASecondaryShoot,
    0.38,
    "winesVines2015",
    MEANINGS.worthOfASecondaryShoot,
  ),
  secondariesAreWritten: oneOf(
    NAMES.secondariesAreWritten,
    "as the counts tell",
    ["as the counts tell", "of all nodes", "under dead primaries"],
    "ours",
    MEANINGS.secondariesAreWritten,
  ),
  basalShootsASpur: figure(NAMES.basalShootsASpur, 0, "", "ours", [0, 5], MEANINGS.basalShootsASpur),
  worthOfABasalShoot: share(NAMES.worthOfABasalShoot, 0.5, MEMORY, MEANINGS.worthOfABasalShoot),
  frostedNodesAsOne: figure(NAMES.frostedNodesAsOne, 1.7, "", "ours", [1, 10], MEANINGS.frostedNodesAsOne),
  lagPhaseMultiplier: figure(
    NAMES.lagPhaseMultiplier,
    2,
    "",
    "iowa2013",
    [1, 5],
    MEANINGS.lagPhaseMultiplier,
  ),
  lagPhaseMultiplierYearToYear: share(
    NAMES.lagPhaseMultiplierYearToYear,
    0.15,
    "delaFuente2015",
    MEANINGS.lagPhaseMultiplierYearToYear,
  ),
  clustersWeighed: figure(
    NAMES.clustersWeighed,
    100,
    "clusters",
    "iowa2013",
    [2, 100000],
    MEANINGS.clustersWeighed,
  ),
  vinesWereDrawn: oneOf(
    NAMES.vinesWereDrawn,
    "at random",
    ["at random", "by row"],
    "ours",
    MEANINGS.vinesWereDrawn,
  ),
  spreadBetweenVines: figure(
    NAMES.spreadBetweenVines,
    0.43,
    "share",
    "strickland1932",
    [0.01, 3],
    MEANINGS.spreadBetweenVines,
  ),
  marginOfACount: figure(NAMES.marginOfACount, 0.1, "share", "bcwgc", [0.001, 1], MEANINGS.marginOfACount),
  spreadBetweenFarms: figure(
    NAMES.spreadBetweenFarms,
    0.25,
    "share",
    "ours",
    [0.001, 1],
    MEANINGS.spreadBetweenFarms,
  ),
  budbreakBetweenFarms: figure(
    NAMES.budbreakBetweenFarms,
    0.06,
    "share",
    "ours",
    [0.001, 0.5],
    MEANINGS.budbreakBetweenFarms,
  ),
  lagPhaseMultiplierBetweenFarms: figure(
    NAMES.lagPhaseMultiplierBetweenFarms,
    0.1,
    "share",
    "ours",
    [0.001, 1],
    MEANINGS.lagPhaseMultiplierBetweenFarms,
  ),
  cropLoadRange: oneOf(
    NAMES.cropLoadRange,
    "single canopy",
    CROP_LOAD_RANGES.map(({ name }) => name),
    "kliewer2005",
    MEANINGS.cropLoadRange,
  ),
  ...cropLoadLimits,
  clustersAVineInYear2: figure(
    NAMES.clustersAVineInYear2,
    0,
    "clusters",
    MEMORY,
    [0, 500],
    MEANINGS.clustersAVineInYear2,
  ),
  clustersAVineInYear3: figure(
    NAMES.clustersAVineInYear3,
    10,
    "clusters",
    "winegrowersUk",
    [0, 500],
    MEANINGS.clustersAVineInYear3,
  ),
  floorOfLiveSpurs: share(NAMES.floorOfLiveSpurs, 0.7, "ours", MEANINGS.floorOfLiveSpurs),
  minutesToCountAVine: minutes(NAMES.minutesToCountAVine, 3, MEANINGS.minutesToCountAVine),
  minutesToCutACane: minutes(NAMES.minutesToCutACane, 4, MEANINGS.minutesToCutACane),
  minutesToWeighACluster: minutes(NAMES.minutesToWeighACluster, 0.5, MEANINGS.minutesToWeighACluster),
  minutesForANextStep: figure(
    NAMES.minutesForANextStep,
    120,
    "min",
    "ours",
    [1, 10000],
    MEANINGS.minutesForANextStep,
  ),
  leastGainOfANextStep: share(NAMES.leastGainOfANextStep, 0.05, "ours", MEANINGS.leastGainOfANextStep),
} satisfies Readonly<Record<string, SettingRow>>;
