import { budInjury } from "../../domain/budInjury";
import { INTERVAL_METHODS } from "../../domain/proportionInterval";
import { BUDINJURY_TEXT } from "../../texts/functions/injury";
import { confidence } from "../confidence";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { choice, once, optional, whole } from "../parameter";

export const BUDINJURY = cordonFunction({
  id: "BUDINJURY",
  texts: BUDINJURY_TEXT,
  parameters: [
    whole("dead", { most: 1e6 }),
    whole("cut", { most: 1e6, aboveZero: true }),
    confidence(),
    optional(once(choice("method", INTERVAL_METHODS)), "Wilson"),
  ],
  result: sideBySide(["share", "share"], ["low", "share"], ["high", "share"]),
  examples: [
    {
      formula: "=CORDON.BUDINJURY(15,148,0.95)",
      gives: [[0.1014, 0.0624, 0.1605]],
      within: 0.00005,
      source: {
        work: "Newcombe 1998, Statistics in Medicine 17:857-872, from memory, unverified; the limits agree with @stdlib's normal quantile",
        mark: "derived",
      },
    },
    {
      formula: '=CORDON.BUDINJURY(15,148,0.95,"Clopper-Pearson")',
      gives: [[0.1014, 0.0578, 0.1617]],
      within: 0.00005,
      source: { work: "@stdlib's beta quantile and binomial test: 0.057844 to 0.161650", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.BUDINJURY(SUM(Budcuts[Nodes cut])-SUM(Budcuts[Primaries alive]),SUM(Budcuts[Nodes cut]))",
  run: (a) => ({ ...budInjury(a.dead, a.cut, a.confidence, a.method) }),
});
