import { cropLoad } from "../../domain/cropLoad";
import { kilograms } from "../../domain/units";
import { CROPLOAD_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { number } from "../parameter";

export const CROPLOAD = cordonFunction({
  id: "CROPLOAD",
  texts: CROPLOAD_TEXT,
  parameters: [
    number("crop", { most: 1e8 }),
    number("prunings", { least: 0.001, most: 1e7, aboveZero: true }),
  ],
  result: oneValue("cropLoad"),
  examples: [
    {
      formula: "=CORDON.CROPLOAD(9.8,1.3)",
      gives: [[7.5]],
      within: 0.1,
      source: {
        work: "Cabernet Sauvignon at Oakville 1992, American Journal of Enology and Viticulture, table 4: 9.8 kg over 1.30 kg is 7.5",
        mark: "published",
      },
    },
  ],
  run: (a) => cropLoad(kilograms(a.crop), kilograms(a.prunings)),
});
