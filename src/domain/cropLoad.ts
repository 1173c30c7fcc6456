import { mustLieBetween, Refusal } from "./refusal";
import type { Kilograms } from "./units";

/**
 * Crop load (Ravaz index): weight of the crop over the weight of the prunings of the following winter, both in
 * kilograms from the same vines. 4 to 10 is balanced for single canopies and 5 to 10 for divided ones (Kliewer and
 * Dokoozlian 2005, American Journal of Enology and Viticulture 56:170-181, on vinifera in California).
 *
 * Refuses (noPrunings) when the prunings weigh nothing.
 *
 * @example
 * cropLoad(kilograms(9.8), kilograms(1.3)) // 7.54
 */
export function cropLoad(crop: Kilograms, prunings: Kilograms): number {
  mustLieBetween("crop", crop, 0, 1e8, "kg");
  mustLieBetween("prunings", prunings, 0, 1e7, "kg");
  if (prunings === 0) throw new Refusal("notAvailable", "noPrunings", { argument: "prunings" });
  return crop / prunings;
}
