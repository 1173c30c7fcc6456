import { blockCrop } from "../../domain/blockCrop";
import type { VinesPerHectare } from "../../domain/units";
import { BLOCKCROP_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { mass, measured, optional, share, unitSystem } from "../parameter";

export const BLOCKCROP = cordonFunction({
  id: "BLOCKCROP",
  texts: BLOCKCROP_TEXT,
  parameters: [
    mass("vine_crop", { most: 200 }),
    measured<"density", VinesPerHectare>("density", "vinesPerArea", { most: 20000, aboveZero: true }),
    optional(share("missing_share"), 0),
    unitSystem(),
  ],
  result: oneValue("crop", "cropPerArea"),
  examples: [
    {
      formula: "=CORDON.BLOCKCROP(21.605,CORDON.VINEDENSITY(9,6),5%)",
      gives: [[8.278]],
      within: 0.0005,
      source: {
        work: "Dami, Ohio State University: vines x crop / 2000, by hand for 766.33 vines of 21.605 lb",
        mark: "derived",
      },
    },
    {
      formula: '=CORDON.BLOCKCROP(9.7,1381.44,0,"metric")',
      gives: [[13.4]],
      within: 0.05,
      source: {
        work: "Kurtural, Dami and Taylor 2006, HortTechnology 16:233-240: Chambourcin, 9.7 kg a vine, 13.4 t a hectare",
        mark: "published",
      },
    },
  ],
  run: (a) => blockCrop(a.vine_crop, a.density, a.missing_share),
});
