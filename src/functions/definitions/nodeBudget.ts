import { balancedFormula } from "../../domain/balancedFormula";
import { limitedNodes } from "../../domain/limitedNodes";
import { BELOW_ONE_POUND, nodeBudget } from "../../domain/nodeBudget";
import { NODEBUDGET_TEXT } from "../../texts/functions/budget";
import { cordonFunction, oneValue } from "../cordonFunction";
import { choice, mass, number, once, optional, text, unitSystem } from "../parameter";

export const NODEBUDGET = cordonFunction({
  id: "NODEBUDGET",
  texts: NODEBUDGET_TEXT,
  parameters: [
    mass("prunings", { most: 20, aboveZero: true }),
    text("formula"),
    unitSystem(),
    optional(number("least", { most: 1000 })),
    optional(number("most", { most: 1000 })),
    optional(once(choice("below_one_pound", BELOW_ONE_POUND)), "refuse"),
  ],
  result: oneValue("nodes"),
  examples: [
    {
      formula: '=CORDON.NODEBUDGET(3,"30+10")',
      gives: [[50]],
      within: 0,
      source: {
        work: "West Virginia Department of Agriculture, Growing Grapes in WV, p. 14",
        mark: "published",
      },
    },
    {
      formula: '=CORDON.NODEBUDGET(1.5,"20+20")',
      gives: [[30]],
      within: 0,
      source: { work: "Finger Lakes grape column, Auburn Citizen, March 2021", mark: "published" },
    },
    {
      formula: '=CORDON.NODEBUDGET({1;2.5;4},"30+10","US",,50)',
      gives: [[30], [45], [50]],
      within: 0,
      source: { work: "30+10 by hand: 30, 45 and 60 held at 50", mark: "derived" },
    },
  ],
  onSheet: '=CORDON.NODEBUDGET(Vines[Prunings (lb)],"30+10")',
  run: (a) =>
    limitedNodes(nodeBudget(a.prunings, balancedFormula(a.formula), a.below_one_pound), a.least, a.most)
      .nodes,
});
