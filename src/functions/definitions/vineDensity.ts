import { vineDensity } from "../../domain/vineDensity";
import { VINEDENSITY_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { length, unitSystem } from "../parameter";

export const VINEDENSITY = cordonFunction({
  id: "VINEDENSITY",
  texts: VINEDENSITY_TEXT,
  parameters: [
    length("row_spacing", { least: 0.3, most: 20 }),
    length("vine_spacing", { least: 0.3, most: 20 }),
    unitSystem(),
  ],
  result: oneValue("density", "vinesPerArea"),
  examples: [
    {
      formula: "=CORDON.VINEDENSITY(9,6)",
      gives: [[806.67]],
      within: 0.005,
      source: {
        work: "Dami, Ohio State University, How to Estimate Grape Yields: 43,560 / 54, printed as 807",
        mark: "published",
      },
    },
    {
      formula: "=CORDON.VINEDENSITY(9,8)",
      gives: [[605]],
      within: 0.001,
      source: {
        work: "Crop Estimation in Vineyards, ch. 30: 8 x 9 ft is 605 vines an acre",
        mark: "published",
      },
    },
    {
      formula: '=CORDON.VINEDENSITY(2.5,1.5,"metric")',
      gives: [[2666.67]],
      within: 0.005,
      source: { work: "10,000 / (2.5 x 1.5) by hand", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.VINEDENSITY(Blocks[Row spacing (ft)],Blocks[Vine spacing (ft)])",
  run: (a) => vineDensity(a.row_spacing, a.vine_spacing),
});
