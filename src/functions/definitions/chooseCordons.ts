import { CHOOSECORDONS_TEXT } from "../../texts/functions/choice";
import { decisionsOfTable } from "../wholeTables";
import { cordonFunction, tableOf } from "../cordonFunction";
import { optional, optionalUnitSystem, table } from "../parameter";

export const CHOOSECORDONS = cordonFunction({
  id: "CHOOSECORDONS",
  texts: CHOOSECORDONS_TEXT,
  parameters: [
    table("cordons", "cordons"),
    optional(table("settings", "settings")),
    optional(table("blocks", "blocks")),
    optional(table("vines", "vines")),
    optionalUnitSystem(),
  ],
  result: tableOf("verdict", "score", "reason"),
  examples: [
    {
      formula:
        '=CORDON.CHOOSECORDONS({"Block","Row","Vine","Side","Cordon","Trunk","Length (in)","Live spurs","Longest gap","Condition";"North Bench",1,1,"left","A",1,40,8,0,"sound";"North Bench",1,1,"left","B",2,40,9,3,"sound";"North Bench",1,1,"right","C",2,40,9,1,"sound"})',
      gives: [
        ["Decision", "Score", "Reason"],
        [
          "stays",
          0.942857142857,
          "Keep A on the left: no gap against one of 3; it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
        ],
        [
          "goes",
          0.757142857143,
          "Cut B on the left; A is better: no gap against one of 3; it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
        ],
        [
          "stays",
          0.971428571429,
          "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
        ],
      ],
      within: 1e-9,
      source: {
        work: "Common practice: a gap counts for a cordon's whole life, and both cordons should not hang on one trunk; scores by hand, such as (0.2 x 0.8 + 0.3 x 1 + 0.2 x 1) / 0.7 and, with a gap of 3, (0.2 x 0.9 + 0.3 x 0.5 + 0.2) / 0.7",
        mark: "derived",
      },
    },
  ],
  onSheet: "=CORDON.CHOOSECORDONS(Cordons[#All],Settings[#All],Blocks[#All],Vines[#All])",
  run: ({ unit, ...tables }, call) => decisionsOfTable(tables, unit, call.language, call.units),
});
