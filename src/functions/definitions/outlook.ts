import { OUTLOOK_TEXT } from "../../texts/functions/outlook";
import { cordonFunction, tableOf } from "../cordonFunction";
import { outlookOfTables } from "../wholeTables";
import { optional, optionalUnitSystem, table } from "../parameter";

export const CROPOUTLOOK = cordonFunction({
  id: "CROPOUTLOOK",
  texts: OUTLOOK_TEXT,
  parameters: [
    table("vines", "vines"),
    table("blocks", "blocks"),
    optional(table("settings", "settings")),
    optional(table("cordons", "cordons")),
    optional(table("bud_cuts", "budCuts")),
    optional(table("harvest", "harvest")),
    optionalUnitSystem(),
  ],
  result: tableOf("block", "stage", "figure", "low", "likely", "high", "unit", "says"),
  examples: [
    {
      formula:
        '=CORDON.CROPOUTLOOK({"Block","Row","Vine","Status","Clusters";"North Bench",1,1,"bearing",60;"North Bench",1,2,"bearing",80},{"Block","Row spacing (ft)","Vine spacing (ft)","Cluster weight (lb)";"North Bench",9,6,0.25})',
      gives: [
        ["Block", "Stage", "Figure", "Low", "Likely", "High", "Unit", "What it rests on"],
        ["North Bench", "Clusters counted", "clusters a vine", 70, 70, 70, "", ""],
        ["North Bench", "Clusters counted", "crop of a vine", 12.594, 17.5, 24.317, "lb", ""],
        ["North Bench", "Clusters counted", "crop of an area", 5.08, 7.058, 9.808, "tons an acre", ""],
        [
          "North Bench",
          "Clusters counted",
          "crop of the block",
          25.188,
          35,
          48.634,
          "lb",
          "Largest doubt: weight of a cluster, 100 %.",
        ],
      ],
      within: 0.002,
      source: {
        work: "By hand: both vines counted, (60 + 80)/2 x 0.25 lb x 806.67 vines an acre / 2000; ends times exp(+-1.644854 x 0.2), the spread of cluster weight between years",
        mark: "derived",
      },
    },
  ],
  onSheet:
    "=CORDON.CROPOUTLOOK(Vines[#All],Blocks[#All],Settings[#All],Cordons[#All],Budcuts[#All],Harvest[#All])",
  run: ({ unit, ...tables }, { language }) => outlookOfTables(tables, unit, language),
});
