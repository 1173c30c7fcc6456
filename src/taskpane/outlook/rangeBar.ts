import { html, type TemplateResult } from "lit";
import type { Range } from "../../domain/outlook/productRange";

/** A range on a scale that several bars share. */
export interface RangeBar {
  readonly range: Range;
  /** End of the scale; it begins at 0. */
  readonly most: number;
  /** The bar in words, for whoever does not see it. */
  readonly words: string;
}

/** Low to high as a band, the likely value as a line across it. */
export function rangeBar({ range, most, words }: RangeBar): TemplateResult {
  const at = (value: number) => (100 * Math.min(value, most)) / most;
  return html`<svg
    class="range"
    role="img"
    aria-label=${words}
    viewBox="0 0 100 14"
    preserveAspectRatio="none"
  >
    <rect class="scale" x="0" y="6" width="100" height="2"></rect>
    <rect
      class="band"
      x=${at(range.low)}
      y="3"
      width=${Math.max(0.5, at(range.high) - at(range.low))}
      height="8"
    ></rect>
    <line class="likely" x1=${at(range.likely)} x2=${at(range.likely)} y1="0" y2="14"></line>
  </svg>`;
}
