import type { SettingRow } from "./setting";
import { figure, share, words } from "./figure";
import { TEXTS } from "../../texts/texts";

const MEANINGS = TEXTS.settings.plan;

/** Settings for the node plan, the order of work and the crew cards. */
export const PLAN_SETTINGS = {
  planLeastNodesASpur: figure(
    "Plan: least nodes a spur",
    1,
    "nodes",
    "common practice",
    [1, 15],
    MEANINGS.planLeastNodesASpur,
  ),
  planMostNodesASpur: figure(
    "Plan: most nodes a spur",
    3,
    "nodes",
    "klodd2022",
    [1, 15],
    MEANINGS.planMostNodesASpur,
  ),
  tenderCultivars: words("Tender cultivars", "", "ours", MEANINGS.tenderCultivars),
  fruitfulSecondaries: words("Fruitful secondaries", "", "ours", MEANINGS.fruitfulSecondaries),
  doublePruning: words("Double pruning", "", "ours", MEANINGS.doublePruning),
  doublePruningNodesOfTheFirstPass: figure(
    "Double pruning: nodes of the first pass",
    2.5,
    "times",
    "purdueDoublePruning",
    [1, 5],
    MEANINGS.doublePruningNodesOfTheFirstPass,
  ),
  doublePruningTimeOfTheSecondPass: share(
    "Double pruning: time of the second pass",
    0.4,
    "ours",
    MEANINGS.doublePruningTimeOfTheSecondPass,
  ),
  pruningStarts: figure("Pruning starts", 46054, "date", "ours", [0, 2958465], MEANINGS.pruningStarts),
  secondPassStarts: figure(
    "Second pass starts",
    46127,
    "date",
    "ours",
    [0, 2958465],
    MEANINGS.secondPassStarts,
  ),
  shootThinningStarts: figure(
    "Shoot thinning starts",
    46162,
    "date",
    "ours",
    [0, 2958465],
    MEANINGS.shootThinningStarts,
  ),
  daysAWeek: figure("Days a week", 5, "days", "ours", [1, 7], MEANINGS.daysAWeek),
  daysOff: words("Days off", "", "ours", MEANINGS.daysOff),
  ribbonStays: words("Ribbon, stays", "orange", "ours", MEANINGS.ribbonStays),
  ribbonAsk: words("Ribbon, ask", "blue", "ours", MEANINGS.ribbonAsk),
  vinesACardPage: figure("Vines a card page", 25, "vines", "ours", [5, 40], MEANINGS.vinesACardPage),
} satisfies Readonly<Record<string, SettingRow>>;
