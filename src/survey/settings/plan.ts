import { LAST_DAY } from "../../domain/plan/orderOfWork";
import { DAYS_LISTED } from "./daysListed";
import type { SettingRow } from "./setting";
import { figure, share, words } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.plan;

/** Settings for the node plan, the order of work and the crew cards. */
export const PLAN_SETTINGS = {
  planLeastNodesASpur: figure(
    NAMES.planLeastNodesASpur,
    1,
    "nodes",
    "common practice",
    [1, 15],
    MEANINGS.planLeastNodesASpur,
  ),
  planMostNodesASpur: figure(
    NAMES.planMostNodesASpur,
    3,
    "nodes",
    "klodd2022",
    [1, 15],
    MEANINGS.planMostNodesASpur,
  ),
  tenderCultivars: words(NAMES.tenderCultivars, "", "ours", MEANINGS.tenderCultivars),
  fruitfulSecondaries: words(NAMES.fruitfulSecondaries, "", "ours", MEANINGS.fruitfulSecondaries),
  doublePruning: words(NAMES.doublePruning, "", "ours", MEANINGS.doublePruning),
  doublePruningNodesOfTheFirstPass: figure(
    NAMES.doublePruningNodesOfTheFirstPass,
    2.5,
    "times",
    "purdueDoublePruning",
    [1, 5],
    MEANINGS.doublePruningNodesOfTheFirstPass,
  ),
  doublePruningTimeOfTheSecondPass: share(
    NAMES.doublePruningTimeOfTheSecondPass,
    0.4,
    "ours",
    MEANINGS.doublePruningTimeOfTheSecondPass,
  ),
  pruningStarts: figure(NAMES.pruningStarts, 46054, "date", "ours", [0, LAST_DAY], MEANINGS.pruningStarts),
  secondPassStarts: figure(
    NAMES.secondPassStarts,
    46127,
    "date",
    "ours",
    [0, LAST_DAY],
    MEANINGS.secondPassStarts,
  ),
  shootThinningStarts: figure(
    NAMES.shootThinningStarts,
    46162,
    "date",
    "ours",
    [0, LAST_DAY],
    MEANINGS.shootThinningStarts,
  ),
  daysAWeek: figure(NAMES.daysAWeek, 5, "days", "ours", [1, 7], MEANINGS.daysAWeek),
  daysOff: words(NAMES.daysOff, "", "ours", MEANINGS.daysOff, DAYS_LISTED),
  ribbonStays: words(NAMES.ribbonStays, "orange", "ours", MEANINGS.ribbonStays),
  ribbonAsk: words(NAMES.ribbonAsk, "blue", "ours", MEANINGS.ribbonAsk),
  vinesACardPage: figure(NAMES.vinesACardPage, 25, "vines", "ours", [5, 40], MEANINGS.vinesACardPage),
} satisfies Readonly<Record<string, SettingRow>>;
