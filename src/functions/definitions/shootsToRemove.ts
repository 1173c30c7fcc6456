import { shootsToThin } from "../../domain/shootsToThin";
import type { PerMetre } from "../../domain/units";
import { SHOOTSTOREMOVE_TEXT } from "../../texts/functions/crop";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { length, measured, number, optional, unitSystem } from "../parameter";

export const SHOOTSTOREMOVE = cordonFunction({
  id: "SHOOTSTOREMOVE",
  texts: SHOOTSTOREMOVE_TEXT,
  parameters: [
    number("shoots", { most: 1000 }),
    length("length", { least: 0.3, most: 10 }),
    measured<"density", PerMetre>("density", "perLength", { least: 1, most: 60 }),
    optional(number("vines", { most: 1e7 }), 1),
    optional(number("minutes", { most: 240 })),
    unitSystem(),
  ],
  result: sideBySide("remove", "keep", ["hours", "hours"]),
  examples: [
    {
      formula: "=CORDON.SHOOTSTOREMOVE(50,6,6,605,2)",
      gives: [[14, 36, 20.1667]],
      within: 0.0001,
      source: {
        work: "Atucha and Wimmer, University of Wisconsin-Madison 2015: 6 shoots a foot; 6 x 6 = 36 stay of 50, and 605 x 2 / 60 hours by hand",
        mark: "derived",
      },
    },
    {
      formula: '=CORDON.SHOOTSTOREMOVE(40,1,15,,,"metric")',
      gives: [[25, 15, ""]],
      within: 0,
      source: {
        work: "Sabbatini, Michigan State University: 15 viable shoots a metre of row; 40 - 15 by hand",
        mark: "published",
      },
    },
  ],
  onSheet: "=CORDON.SHOOTSTOREMOVE(Vines[Shoots],6,6,1,2)",
  run: (a) => {
    const thinned = shootsToThin(a.shoots, a.length, a.density, a.vines, a.minutes);
    return { ...thinned, hours: a.minutes === undefined ? undefined : thinned.hours };
  },
});
