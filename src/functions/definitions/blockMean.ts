import { blockMean } from "../../domain/blockMean";
import { BLOCKMEAN_TEXT } from "../../texts/functions/sampling";
import { confidence } from "../confidence";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { choice, numbers, once, optional, whole } from "../parameter";

export const BLOCKMEAN = cordonFunction({
  id: "BLOCKMEAN",
  texts: BLOCKMEAN_TEXT,
  parameters: [
    numbers("counts", { most: 1e9 }),
    optional(once(whole("vines", { least: 1, most: 1e7 }))),
    confidence(),
    optional(once(choice("zeros", ["count", "skip"])), "count"),
  ],
  result: sideBySide("mean", "low", "high", "n"),
  examples: [
    {
      formula: "=CORDON.BLOCKMEAN({40;50;60},,95%)",
      gives: [[50, 25.159, 74.841, 3]],
      within: 0.0005,
      source: {
        work: "Student's t by hand: 50 +/- 4.302653 x 10 / sqrt(3), t from @stdlib and jstat",
        mark: "derived",
      },
    },
  ],
  onSheet: "=CORDON.BLOCKMEAN(Vines[Clusters])",
  run: (a) => ({
    ...blockMean(
      a.counts.numbers.filter((count) => a.zeros === "count" || count !== 0),
      a.vines ?? Infinity,
      a.confidence,
    ),
  }),
});
