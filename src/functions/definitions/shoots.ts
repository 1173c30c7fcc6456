import { shoots } from "../../domain/shoots";
import { SHOOTS_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { number, optional, share } from "../parameter";

export const SHOOTS = cordonFunction({
  id: "SHOOTS",
  texts: SHOOTS_TEXT,
  parameters: [
    number("spurs", { most: 500 }),
    number("nodes_per_spur", { most: 15 }),
    share("budbreak"),
    optional(number("basal_shoots", { most: 5 }), 0),
  ],
  result: oneValue("shoots"),
  examples: [
    {
      formula: "=CORDON.SHOOTS(24,2,0.75)",
      gives: [[36]],
      within: 0,
      source: {
        work: "Cabernet Sauvignon at Oakville 1992, American Journal of Enology and Viticulture: 24 two-node spurs, 36 shoots",
        mark: "published",
      },
    },
    {
      formula: "=CORDON.SHOOTS(12,2,90%,0.5)",
      gives: [[27.6]],
      within: 0,
      source: { work: "12 spurs x 2 nodes x 0.9 + 12 x 0.5 by hand", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.SHOOTS(Cordons[Live spurs],Cordons[Nodes a spur],0.85)",
  run: (a) => shoots(a.spurs, a.nodes_per_spur, a.budbreak, a.basal_shoots).total,
});
