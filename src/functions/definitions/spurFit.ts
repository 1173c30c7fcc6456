import { spurFit } from "../../domain/spurFit";
import { SPURFIT_TEXT } from "../../texts/functions/budget";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { length, number, optional, spurSpacing, unitSystem, whole } from "../parameter";

export const SPURFIT = cordonFunction({
  id: "SPURFIT",
  texts: SPURFIT_TEXT,
  parameters: [
    number("nodes", { most: 1000 }),
    number("nodes_per_spur", { least: 0.5, most: 15 }),
    length("length", { most: 100, aboveZero: true }),
    spurSpacing("spacing", { least: 0.01, most: 2 }),
    unitSystem(),
    optional(whole("cordons", { least: 1, most: 20 }), 1),
  ],
  result: sideBySide("spursWanted", "spursThatFit", "nodesShort"),
  examples: [
    {
      formula: '=CORDON.SPURFIT(40,2,3,6,"US",2)',
      gives: [[20, 12, 16]],
      within: 0,
      source: {
        work: "Common practice: 40 nodes are 20 two-node spurs, and 6 in of cordon a spur leave room for 6 a side on 3 ft",
        mark: "derived",
      },
    },
  ],
  run: (a) => ({ ...spurFit(a.nodes, a.nodes_per_spur, a.length, a.spacing, a.cordons) }),
});
