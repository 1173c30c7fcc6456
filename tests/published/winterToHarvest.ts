import { KILOGRAMS_PER_POUND } from "../../src/domain/units";
import { blockOutlook } from "../../src/survey/crop/blockOutlook";
import { outlookInputs } from "../../src/survey/crop/outlookInputs";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import { areaOf } from "../survey/area";

/** A vine of which the nodes left in winter and the crop at harvest were both published. */
export interface PublishedWinter {
  readonly vine: string;
  readonly source: string;
  readonly nodes: number;
  readonly clusterGrams: number;
  readonly clusterSource: string;
  /** Crop of a vine, in kilograms. */
  readonly harvest: number;
}

const GROWER = "Sampson Valley grower's blog, 1 Apr 2013: yields of 2012";

/** Every pair that was found; in none of these winters was bud injury reported. */
export const PUBLISHED_WINTERS: readonly PublishedWinter[] = [
  {
    vine: "Cabernet Sauvignon, Oakville 1992, 24 two-bud spurs",
    source: "AJEV table 4, single canopy, bilateral cordon",
    nodes: 48,
    clusterGrams: 142,
    clusterSource: "the same table: 9.8 kg over 69 clusters",
    harvest: 9.8,
  },
  {
    vine: "Frontenac 2012, 50 to 60 buds, upright shoots",
    source: GROWER,
    nodes: 56,
    clusterGrams: 165,
    clusterSource: "from memory, unverified: 130 to 200 g",
    harvest: 10.9 * KILOGRAMS_PER_POUND,
  },
  {
    vine: "Marquette 2012, 50 buds, upright shoots",
    source: GROWER,
    nodes: 50,
    clusterGrams: 95,
    clusterSource: "from memory, unverified: 80 to 110 g",
    harvest: 4.6 * KILOGRAMS_PER_POUND,
  },
];

/** The winter outlook of such a vine, with the usual figures of Settings for all that was not published. */
export function winterOutlookOf({ nodes, clusterGrams }: PublishedWinter) {
  const spurs = nodes / 2;
  const vines = Array.from({ length: 10 }, (_, at) => at + 1);
  const season = readSeason([
    areaOf("Blocks", [
      ["Block", "Cluster weight (g)", "Rows", "Vines", "Training system", "Node rule"],
      ["Trial", clusterGrams, 1, 10, "upright shoots", String(nodes)],
    ]),
    areaOf("Cordons", [
      ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Positions", "Live spurs", "Longest gap"],
      ...vines.flatMap((vine) => [
        ["Trial", 1, vine, "left", "A", 1, Math.ceil(spurs / 2), Math.ceil(spurs / 2), 0],
        ["Trial", 1, vine, "right", "B", 2, Math.floor(spurs / 2), Math.floor(spurs / 2), 0],
      ]),
    ]),
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status"],
      ...vines.map((vine) => ["Trial", 1, vine, "bearing"]),
    ]),
  ]);
  const [inputs] = outlookInputs(season, { decided: [...decideSeason(season)] });
  return blockOutlook(inputs, season.settings, ["light", "medium", "heavy"]).latest!;
}
