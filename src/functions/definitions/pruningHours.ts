import { pruningHours } from "../../domain/pruningHours";
import { PRUNINGHOURS_TEXT } from "../../texts/functions/work";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { number, optional } from "../parameter";

export const PRUNINGHOURS = cordonFunction({
  id: "PRUNINGHOURS",
  texts: PRUNINGHOURS_TEXT,
  parameters: [
    number("vines", { most: 1e7 }),
    number("minutes", { most: 240 }),
    optional(number("crew", { least: 1, most: 500 }), 1),
    optional(number("hours_a_day", { least: 0.5, most: 16 }), 8),
  ],
  result: sideBySide(["hours", "hours"], "crewDays"),
  examples: [
    {
      formula: "=CORDON.PRUNINGHOURS(807,1)",
      gives: [[13.45, 1.68]],
      within: 0.005,
      source: {
        work: "Martinson, Vanden Heuvel and Preszler, Cornell, Canopy and crop management: 13.5 h an acre at 1 minute a vine",
        mark: "published",
      },
    },
  ],
  onSheet: "=CORDON.PRUNINGHOURS(Blocks[Vine places],4)",
  run: (a) => ({ ...pruningHours(a.vines, a.minutes, a.crew, a.hours_a_day) }),
});
