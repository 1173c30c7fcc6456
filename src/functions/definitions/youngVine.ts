import { TRAININGS } from "../../domain/choice/trainingSystems";
import { youngVineIn } from "../../domain/plan/youngVine";
import { SOURCES } from "../../domain/sources";
import { youngVineRuleName } from "../../survey/decide/renewal/youngVineSentence";
import { YOUNGVINE_TEXT } from "../../texts/functions/renewal";
import { cordonFunction, tableOf } from "../cordonFunction";
import { choice, once, optional, whole } from "../parameter";

export const YOUNGVINE = cordonFunction({
  id: "YOUNGVINE",
  texts: YOUNGVINE_TEXT,
  parameters: [
    once(whole("planted", { least: 1850, most: 2100 })),
    once(whole("season", { least: 1850, most: 2100 })),
    optional(once(choice("training", TRAININGS)), "highWire"),
  ],
  result: tableOf("what", "least", "most", "source"),
  examples: [
    {
      formula: "=CORDON.YOUNGVINE(2026,2026)",
      gives: [
        ["What", "Least", "Most", "Source"],
        ["shoots to keep, the best two of them led to the wire", 3, 6, "Amberg nursery"],
        ["flower clusters to leave", "", 0, "UW-Madison 2016"],
      ],
      within: 0,
      source: {
        work: "Amberg Grapevines, The first three years: 3 to 6 shoots; UW-Madison Fruit Program 2016: flowers and fruit removed",
        mark: "published",
      },
    },
    {
      formula: "=CORDON.YOUNGVINE(2023,2026)",
      gives: [
        ["What", "Least", "Most", "Source"],
        ["spurs to leave on a cordon", 8, 15, "NC State"],
        ["nodes on a spur", 2, 2, "NC State"],
        ["nodes on a cordon", 16, 30, "NC State"],
      ],
      within: 0,
      source: {
        work: "NC State Extension, figure 14-33, year 4 and later: 8 to 15 spurs a cordon, 2 buds each; 8 x 2 = 16, 15 x 2 = 30 by hand",
        mark: "derived",
      },
    },
  ],
  run: ({ planted, season, training }, { language }) =>
    youngVineIn(planted, season, training).rules.map((rule) => ({
      what: youngVineRuleName(rule, language),
      least: rule.least,
      most: rule.most,
      source: rule.source && SOURCES[rule.source].name,
    })),
});
