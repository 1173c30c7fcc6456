import { clusters } from "../../domain/clusters";
import { CLUSTERS_TEXT } from "../../texts/functions/crop";
import { cordonFunction, oneValue } from "../cordonFunction";
import { number } from "../parameter";

export const CLUSTERS = cordonFunction({
  id: "CLUSTERS",
  texts: CLUSTERS_TEXT,
  parameters: [number("shoots", { most: 5000 }), number("clusters_per_shoot", { most: 6 })],
  result: oneValue("clusters"),
  examples: [
    {
      formula: "=CORDON.CLUSTERS(24,2)",
      gives: [[48]],
      within: 0,
      source: { work: "Missouri grower's projection 2009: 24 shoots x 2 clusters = 48", mark: "published" },
    },
  ],
  run: (a) => clusters(a.shoots, a.clusters_per_shoot),
});
