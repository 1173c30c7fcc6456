import type { Range } from "../../domain/outlook/productRange";

/** End of a scale on which all ranges and the target fit, with a little room. */
export function scaleEnd(ranges: readonly Range[], target: number | undefined): number {
  return Math.max(...ranges.map(({ high }) => high), target ?? 0) * 1.05 || 1;
}
