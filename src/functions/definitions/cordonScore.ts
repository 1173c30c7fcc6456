import { TRAININGS } from "../../domain/choice/trainingSystems";
import { CORDONSCORE_TEXT } from "../../texts/functions/choice";
import { scoresOfTable } from "../wholeTables";
import { cordonFunction, tableOf } from "../cordonFunction";
import { choice, once, optional, optionalUnitSystem, table } from "../parameter";

export const CORDONSCORE = cordonFunction({
  id: "CORDONSCORE",
  texts: CORDONSCORE_TEXT,
  parameters: [
    table("cordons", "cordons"),
    optional(table("settings", "settings")),
    optional(table("blocks", "blocks")),
    optional(once(choice("training", TRAININGS))),
    optionalUnitSystem(),
  ],
  result: tableOf("score", "low", "high", "spurs", "stretch", "placing", "soundness", "diameter"),
  examples: [
    {
      formula:
        '=CORDON.CORDONSCORE({"Length (in)","Live spurs","Longest gap","Condition";40,10,0,"sound";40,5,0,"sound"},{"Setting","Value","Unit";"Spur spacing",4,"in";"Weight of live spurs",0.5,"";"Weight of longest gap",0.25,"";"Weight of soundness",0.25,""})',
      gives: [
        ["Score", "Low", "High", "Spurs", "Longest gap", "Placing", "Soundness", "Diameter"],
        [1, 1, 1, 1, 1, "", 1, ""],
        [0.75, 0.75, 0.75, 0.5, 1, "", 1, ""],
      ],
      within: 1e-9,
      source: {
        work: "By hand: 40 in at 4 in a spur carry 10; 10 of 10 score 1, 5 of 10 score 0.5, so 0.5 x 0.5 + 0.25 + 0.25",
        mark: "derived",
      },
    },
  ],
  onSheet: "=CORDON.CORDONSCORE(Cordons[#All],Settings[#All],Blocks[#All])",
  run: ({ training, unit, ...tables }) => scoresOfTable(tables, training, unit),
});
