import { CROP_LOAD_RANGES } from "../../domain/outlook/cropLoadRanges";
import { withTexts, type Text } from "../../texts/language";
import type { Setting } from "./setting";
import { figure, oneOf, share } from "./figure";
import { TEXTS } from "../../texts/texts";

const MEANINGS = TEXTS.settings.outlook;

const MEMORY = "from memory, unverified";

const minutes = (id: string, value: number, meaning: Text): Setting =>
  figure(id, value, "min", MEMORY, [0.1, 240], meaning);

const RANGE_WORDS: Readonly<Record<string, Text>> = MEANINGS.rangeWords;

const LEAST_CROP_LOAD = MEANINGS.leastCropLoad;
const MOST_CROP_LOAD = MEANINGS.mostCropLoad;

const cropLoadLimits = CROP_LOAD_RANGES.flatMap(({ name, low, high, source }): Setting[] => {
  const vines = RANGE_WORDS[name];
  const limit = (id: string, value: number, meaning: Text): Setting =>
    figure(`${id} crop load, ${name}`, value, "", source, [0, 100], meaning);
  return [
    limit("Least", low, withTexts(LEAST_CROP_LOAD, { vines })),
    limit("Most", high, withTexts(MOST_CROP_LOAD, { vines })),
  ];
});

/** Settings for crop outlook, sampling and crop load. */
export const OUTLOOK_SETTINGS: readonly Setting[] = [
  share("Usual budbreak", 0.85, MEMORY, MEANINGS.usualBudbreak),
  figure("Budbreak, year to year", 0.06, "share", MEMORY, [0, 0.5], MEANINGS.budbreakYearToYear),
  figure("Usual clusters a shoot", 2, "", "common practice", [0.1, 6], MEANINGS.usualClustersAShoot),
  figure("Usual cluster weight", 0.25, "lb", "ours", [0.02, 3], MEANINGS.usualClusterWeight),
  share("Cluster weight, between cultivars", 0.4, "ours", MEANINGS.clusterWeightBetweenCultivars),
  share("Clusters a shoot, year to year", 0.25, "cornell2012", MEANINGS.clustersAShootYearToYear),
  share("Cluster weight, year to year", 0.2, MEMORY, MEANINGS.clusterWeightYearToYear),
  share("Cluster weight, between clusters", 0.4, MEMORY, MEANINGS.clusterWeightBetweenClusters),
  share("Worth of a secondary shoot", 0.38, "winesVines2015", MEANINGS.worthOfASecondaryShoot),
  figure("Basal shoots a spur", 0, "", "ours", [0, 5], MEANINGS.basalShootsASpur),
  share("Worth of a basal shoot", 0.5, MEMORY, MEANINGS.worthOfABasalShoot),
  figure("Lag phase multiplier", 2, "", "iowa2013", [1, 5], MEANINGS.lagPhaseMultiplier),
  share("Lag phase multiplier, year to year", 0.1, MEMORY, MEANINGS.lagPhaseMultiplierYearToYear),
  figure("Clusters weighed", 100, "clusters", "iowa2013", [2, 100000], MEANINGS.clustersWeighed),
  oneOf("Vines were drawn", "at random", ["at random", "by row"], "ours", MEANINGS.vinesWereDrawn),
  figure("Spread between vines", 0.43, "share", "strickland1932", [0.01, 3], MEANINGS.spreadBetweenVines),
  figure("Margin of a count", 0.1, "share", "bcwgc", [0.001, 1], MEANINGS.marginOfACount),
  figure("Spread between farms", 0.25, "share", "ours", [0.001, 1], MEANINGS.spreadBetweenFarms),
  figure("Budbreak, between farms", 0.06, "share", "ours", [0.001, 0.5], MEANINGS.budbreakBetweenFarms),
  figure(
    "Lag phase multiplier, between farms",
    0.1,
    "share",
    "ours",
    [0.001, 1],
    MEANINGS.lagPhaseMultiplierBetweenFarms,
  ),
  oneOf(
    "Crop load range",
    "single canopy",
    CROP_LOAD_RANGES.map(({ name }) => name),
    "kliewer2005",
    MEANINGS.cropLoadRange,
  ),
  ...cropLoadLimits,
  figure("Clusters a vine in year 2", 0, "clusters", MEMORY, [0, 500], MEANINGS.clustersAVineInYear2),
  figure(
    "Clusters a vine in year 3",
    10,
    "clusters",
    "winegrowersUk",
    [0, 500],
    MEANINGS.clustersAVineInYear3,
  ),
  share("Floor of live spurs", 0.7, "ours", MEANINGS.floorOfLiveSpurs),
  minutes("Minutes to count a vine", 3, MEANINGS.minutesToCountAVine),
  minutes("Minutes to cut a cane", 4, MEANINGS.minutesToCutACane),
  minutes("Minutes to weigh a cluster", 0.5, MEANINGS.minutesToWeighACluster),
  figure("Minutes for a next step", 120, "min", "ours", [1, 10000], MEANINGS.minutesForANextStep),
];
