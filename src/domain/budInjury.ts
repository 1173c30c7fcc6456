import {
  clopperPearsonInterval,
  wilsonInterval,
  type IntervalMethod,
  type ShareInterval,
} from "./proportionInterval";
import { mustBeWhole, mustLieBetween, Refusal } from "./refusal";

/**
 * Share of dead primary buds in a sample of cut buds, with the range that holds the block's true share at the stated
 * confidence. Used in late winter, after the cold, before the node budget is set.
 *
 * `dead` of `cut`: nodes with a dead primary bud, of all nodes cut; whole numbers. `confidence`: 0.5 to 0.9999.
 * `method`: "Wilson" (default) or "Clopper-Pearson".
 *
 * The range treats each bud as drawn on its own. Buds of one cane share its fate, so cut few buds on many canes of many
 * vines: 6 to 10 canes and 50 to 100 buds a block (Cornell Cooperative Extension 2014); about 100 for each block and
 * cultivar (Fiola, University of Maryland).
 *
 * Refuses (noBudsCut) when no bud was cut.
 *
 * @example
 * budInjury(15, 148, 0.95) // { share: 0.101351, low: 0.062386, high: 0.160487 }
 * budInjury(4, 32, 0.95, "Clopper-Pearson") // { share: 0.125, low: 0.0351, high: 0.2899 }
 * budInjury(0, 0, 0.95) // Refusal noBudsCut
 */
export function budInjury(
  dead: number,
  cut: number,
  confidence: number,
  method: IntervalMethod = "Wilson",
): ShareInterval {
  mustBeWhole("cut", cut, 0, 1e6);
  mustBeWhole("dead", dead, 0, cut);
  mustLieBetween("confidence", confidence, 0.5, 0.9999);
  if (cut === 0) throw new Refusal("notAvailable", "noBudsCut", { argument: "cut" });
  return method === "Wilson"
    ? wilsonInterval(dead, cut, confidence)
    : clopperPearsonInterval(dead, cut, confidence);
}
