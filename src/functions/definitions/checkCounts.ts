import { CHECKCOUNTS_TEXT } from "../../texts/functions/checks";
import { cordonFunction, tableOf } from "../cordonFunction";
import { findingsOfCounts } from "../wholeTables";
import { optional, optionalUnitSystem, table } from "../parameter";

export const CHECKCOUNTS = cordonFunction({
  id: "CHECKCOUNTS",
  texts: CHECKCOUNTS_TEXT,
  parameters: [
    table("counts", "cordons"),
    optional(table("settings", "settings")),
    optional(table("blocks", "blocks")),
    optional(table("vines", "vines")),
    optionalUnitSystem(),
  ],
  result: tableOf("row", "column", "severity", "finding"),
  examples: [
    {
      formula:
        '=CORDON.CHECKCOUNTS({"Block","Row","Vine","Side","Cordon","Trunk","Length (ft)","Positions","Live spurs";"North Bench",1,1,"left","A",1,3,8,6})',
      gives: [
        ["Row of the range", "Column", "How sure", "Finding"],
        ["", "", "", "No finding; rows read: 1."],
      ],
      within: 0,
      source: { work: "An invented vineyard: a sound row", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.CHECKCOUNTS(Cordons[#All],Settings[#All],Blocks[#All],Vines[#All])",
  run: ({ unit, ...tables }, { language }) => findingsOfCounts(tables, unit, language),
});
