import { vineCrop } from "../../domain/vineCrop";
import { VINECROP_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { mass, number, unitSystem } from "../parameter";

export const VINECROP = cordonFunction({
  id: "VINECROP",
  texts: VINECROP_TEXT,
  parameters: [
    number("clusters", { most: 30000 }),
    mass("cluster_weight", { most: 3, aboveZero: true }),
    unitSystem(),
  ],
  result: oneValue("crop", "mass"),
  examples: [
    {
      formula: "=CORDON.VINECROP(48,0.25)",
      gives: [[12]],
      within: 0,
      source: { work: "Missouri grower's projection 2009: 48 clusters x 0.25 lb = 12 lb", mark: "published" },
    },
  ],
  onSheet: "=CORDON.VINECROP(Vines[Clusters],0.25)",
  run: (a) => vineCrop(a.clusters, a.cluster_weight),
});
