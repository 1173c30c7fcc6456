import { GAPSBYROW_TEXT } from "../../texts/functions/cordons";
import { cordonFunction, tableOf } from "../cordonFunction";
import { gapsOfTable } from "../wholeTables";
import { choice, once, optional, table } from "../parameter";

export const GAPSBYROW = cordonFunction({
  id: "GAPSBYROW",
  texts: GAPSBYROW_TEXT,
  parameters: [
    table("cordons", "cordons"),
    optional(once(choice("which", ["all", "staying", "chosen"])), "all"),
    optional(table("settings", "settings")),
    optional(table("blocks", "blocks")),
    optional(table("vines", "vines")),
  ],
  result: tableOf(
    "block",
    "row",
    "vines",
    "cordons",
    "positions",
    "liveSpurs",
    "gaps",
    ["share", "share"],
    "longestGap",
  ),
  examples: [
    {
      formula:
        '=CORDON.GAPSBYROW({"Block","Row","Vine","Positions","Live spurs","Longest gap";"North Bench",1,1,8,6,2;"North Bench",1,1,8,7,1;"North Bench",2,1,10,10,0})',
      gives: [
        [
          "Block",
          "Row",
          "Vines",
          "Cordons",
          "Positions",
          "Live spurs",
          "Gaps",
          "Share of gaps",
          "Longest gap",
        ],
        ["North Bench", 1, 1, 2, 16, 13, 3, 0.1875, 2],
        ["North Bench", 2, 1, 1, 10, 10, 0, 0, 0],
      ],
      within: 0,
      source: { work: "An invented vineyard, added up by hand", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.GAPSBYROW(Cordons[#All])",
  run: ({ which, ...tables }) => gapsOfTable(tables, which),
});
