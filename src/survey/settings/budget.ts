import { BELOW_ONE_POUND } from "../../domain/nodeBudget";
import { INJURY_RULE_NAMES } from "../../domain/injuryRules";
import { INTERVAL_METHODS } from "../../domain/proportionInterval";
import { NODE_RULE_FORMS } from "../sheets/nodeRules";
import type { SettingRow } from "./setting";
import { figure, oneOf, words } from "./figure";
import { TEXTS } from "../../texts/texts";

const NAMES = TEXTS.settingNames;
const MEANINGS = TEXTS.settings.budget;

/** Settings for node budgets, injury and spur fit. */
export const BUDGET_SETTINGS = {
  nodeRule: words(NAMES.nodeRule, "30+10", "ohio2023", MEANINGS.nodeRule, NODE_RULE_FORMS),
  belowOnePound: oneOf(NAMES.belowOnePound, "refuse", BELOW_ONE_POUND, "ours", MEANINGS.belowOnePound),
  leastNodesAVine: figure(NAMES.leastNodesAVine, 0, "nodes", "ours", [0, 500], MEANINGS.leastNodesAVine),
  mostNodesAVine: figure(NAMES.mostNodesAVine, 60, "nodes", "ncState", [1, 500], MEANINGS.mostNodesAVine),
  nodesByLength: figure(NAMES.nodesByLength, 5, "nodes/ft", "ohio2023", [0, 18], MEANINGS.nodesByLength),
  injuryRule: oneOf(NAMES.injuryRule, "Cornell 2014", INJURY_RULE_NAMES, "cornell2014", MEANINGS.injuryRule),
  intervalForDeadBuds: oneOf(
    NAMES.intervalForDeadBuds,
    "Wilson",
    INTERVAL_METHODS,
    "wilson1927",
    MEANINGS.intervalForDeadBuds,
  ),
  confidenceOfRanges: figure(
    NAMES.confidenceOfRanges,
    0.9,
    "share",
    "ours",
    [0.5, 0.9999],
    MEANINGS.confidenceOfRanges,
  ),
  spurSpacing: figure(NAMES.spurSpacing, 4, "in", "klodd2022", [1, 24], MEANINGS.spurSpacing),
  nodesASpur: figure(NAMES.nodesASpur, 2, "nodes", "klodd2022", [1, 15], MEANINGS.nodesASpur),
} satisfies Readonly<Record<string, SettingRow>>;
