import { vinesToCount } from "../../domain/vinesToCount";
import { VINESTOCOUNT_TEXT } from "../../texts/functions/sampling";
import { confidence } from "../confidence";
import { cordonFunction, oneValue } from "../cordonFunction";
import { number, optional, whole } from "../parameter";

export const VINESTOCOUNT = cordonFunction({
  id: "VINESTOCOUNT",
  texts: VINESTOCOUNT_TEXT,
  parameters: [
    number("cv", { most: 5, aboveZero: true }),
    number("margin", { least: 0.001, most: 1 }),
    optional(whole("vines", { least: 1, most: 1e7 })),
    confidence(),
  ],
  result: oneValue("vines"),
  examples: [
    {
      formula: "=CORDON.VINESTOCOUNT(0.321578,10%,,95%)",
      gives: [[43]],
      within: 0,
      source: {
        work: "Smallest n with t(n-1) x 0.321578 / sqrt(n) at most 0.1, t from @stdlib and jstat",
        mark: "derived",
      },
    },
  ],
  run: (a) => vinesToCount(a.cv, a.margin, a.vines ?? Infinity, a.confidence).vines,
});
