import { clustersToRemove } from "../../domain/clustersToRemove";
import type { KilogramsPerHectare, VinesPerHectare } from "../../domain/units";
import { CLUSTERSTOREMOVE_TEXT } from "../../texts/functions/crop";
import { cordonFunction, sideBySide } from "../cordonFunction";
import { mass, measured, number, unitSystem } from "../parameter";

export const CLUSTERSTOREMOVE = cordonFunction({
  id: "CLUSTERSTOREMOVE",
  texts: CLUSTERSTOREMOVE_TEXT,
  parameters: [
    measured<"target", KilogramsPerHectare>("target", "cropPerArea", { most: 100000 }),
    measured<"density", VinesPerHectare>("density", "vinesPerArea", { least: 1, most: 20000 }),
    mass("cluster_weight", { least: 0.001, most: 3 }),
    number("counted", { most: 30000 }),
    unitSystem(),
  ],
  result: sideBySide("remove", "keep"),
  examples: [
    {
      formula: "=CORDON.CLUSTERSTOREMOVE(4,605,0.25,70)",
      gives: [[18, 52]],
      within: 0,
      source: { work: "4 x 2000 / 605 / 0.25 = 52.89 by hand: keep 52, remove 18", mark: "derived" },
    },
  ],
  onSheet: "=CORDON.CLUSTERSTOREMOVE(4,605,0.25,Vines[Clusters])",
  run: (a) => ({ ...clustersToRemove(a.target, a.density, a.cluster_weight, a.counted) }),
});
