import { INJURY_RULE_NAMES } from "../../domain/injuryRules";
import { nodesAfterInjury } from "../../domain/nodesAfterInjury";
import { NODESAFTERINJURY_TEXT } from "../../texts/functions/injury";
import { cordonFunction, oneValue } from "../cordonFunction";
import { choice, number, share } from "../parameter";

export const NODESAFTERINJURY = cordonFunction({
  id: "NODESAFTERINJURY",
  texts: NODESAFTERINJURY_TEXT,
  parameters: [number("nodes", { most: 1000 }), share("dead_share"), choice("rule", INJURY_RULE_NAMES)],
  result: oneValue("nodes"),
  examples: [
    {
      formula: '=CORDON.NODESAFTERINJURY(40,35%,"Cornell 2014")',
      gives: [[54]],
      within: 0,
      source: {
        work: "Cornell Cooperative Extension, Northern New York Grape Update, 28 Feb 2014: 35 % injured, 35 % more",
        mark: "published",
      },
    },
    {
      formula: '=CORDON.NODESAFTERINJURY({40;40},{0.1;0.2},"Purdue")',
      gives: [[40], [54]],
      within: 0,
      source: {
        work: "Purdue University, Double pruning grapevines: to 15 % as usual, 15 to 35 % 35 % more",
        mark: "published",
      },
    },
  ],
  run: (a) => nodesAfterInjury(a.nodes, a.dead_share, a.rule),
});
