import { TRUNKSTORENEW_TEXT } from "../../texts/functions/renewal";
import { cordonFunction, tableOf } from "../cordonFunction";
import { optional, table } from "../parameter";
import { renewalOfTables } from "../wholeTables";

export const TRUNKSTORENEW = cordonFunction({
  id: "TRUNKSTORENEW",
  texts: TRUNKSTORENEW_TEXT,
  parameters: [
    table("vines", "vines"),
    optional(table("settings", "settings")),
    optional(table("cordons", "cordons")),
  ],
  result: tableOf("order", "block", "row", "vine", "liveTrunks", "bringUp", "what"),
  examples: [
    {
      formula:
        '=CORDON.TRUNKSTORENEW({"Block","Row","Vine","Status","Live trunks";"North Bench",1,1,"bearing",2;"North Bench",1,2,"bearing",1})',
      gives: [
        ["Order", "Block", "Row", "Vine", "Live trunks", "Trunks to bring up", "What to do"],
        [1, "North Bench", 1, 2, 1, 1, "One live trunk: bring up 1 more from a sucker."],
      ],
      within: 0,
      source: { work: "Common practice: in cold climates a vine keeps at least two trunks", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.TRUNKSTORENEW(Vines[#All],Settings[#All],Cordons[#All])",
  run: (tables, { language }) => renewalOfTables(tables, language),
});
