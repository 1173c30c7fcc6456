import { html, nothing, svg, type TemplateResult } from "lit";
import type { Range } from "../../domain/outlook/productRange";
import { axisSteps } from "./axisSteps";

/** Everything on one axis of crop, in the unit that is shown. */
export interface CropAxis {
  /** Pixels. */
  readonly width: number;
  readonly rows: readonly CropRow[];
  readonly harvests: { readonly name: string; readonly years: readonly { year: number; crop: number }[] };
  readonly target: { readonly name: string; readonly crop: number } | undefined;
  /** End of the axis; it begins at 0. */
  readonly most: number;
  readonly unit: string;
  readonly digits: (value: number) => string;
  /** The picture in words, for whoever does not see it. */
  readonly words: string;
}

export interface CropRow {
  readonly name: string;
  readonly range: Range;
  /** The plan of the cards, against what was only counted. */
  readonly plan: boolean;
}

const LINE = 36;
const LABEL = 12;
const BAND = 12;
const EDGE = 6;
const TOP = 16;
const AXIS = 30;

/**
 * A row a stage: its range as a band with the likely value across it, hollow where the nodes are only counted; the own
 * harvests as dots; the target as a dashed line through all of them.
 */
export function cropAxis(axis: CropAxis): TemplateResult {
  const { width, rows, harvests, target, most } = axis;
  const at = (value: number) => EDGE + (Math.min(value, most) / most) * (width - 2 * EDGE);
  const lines = rows.length + (harvests.years.length > 0 ? 1 : 0);
  const bottom = TOP + lines * LINE;
  return html`<svg
    id="crop-axis"
    class="crop-axis"
    role="img"
    aria-label=${axis.words}
    viewBox=${`0 0 ${width} ${bottom + AXIS}`}
  >
    ${axisSteps(most).map(
      (step) => svg`<line class="grid" x1=${at(step)} x2=${at(step)} y1=${TOP} y2=${bottom} />
        <text x=${at(step)} y=${bottom + 12} text-anchor="middle">${axis.digits(step)}</text>`,
    )}
    <text x=${width - EDGE} y=${bottom + 26} text-anchor="end">${axis.unit}</text>
    ${rows.map(({ range, plan }, index) => {
      const y = TOP + index * LINE + LABEL + 3;
      return svg`<g class=${plan ? "stage" : "counted"}>
        <rect class="band" x=${at(range.low)} y=${y} width=${Math.max(2, at(range.high) - at(range.low))} height=${BAND} />
        <line class="likely" x1=${at(range.likely)} x2=${at(range.likely)} y1=${y - 2} y2=${y + BAND + 2} />
      </g>`;
    })}
    ${harvests.years.length > 0 ? harvestRow(axis, at, TOP + rows.length * LINE) : nothing}
    ${
      target === undefined
        ? nothing
        : svg`<line class="target" x1=${at(target.crop)} x2=${at(target.crop)} y1=${TOP - 2} y2=${bottom} />
            <text class="target-name" x=${at(target.crop)} y=${TOP - 5} text-anchor=${at(target.crop) > width / 2 ? "end" : "start"}>${target.name}</text>`
    }
    ${rows.map(({ name }, index) => svg`<text x=${EDGE} y=${TOP + index * LINE + LABEL - 1}>${name}</text>`)}
    ${harvests.years.length > 0 ? svg`<text x=${EDGE} y=${TOP + rows.length * LINE + LABEL - 1}>${harvests.name}</text>` : nothing}
  </svg>`;
}

/** A dot a year. */
function harvestRow({ harvests }: CropAxis, at: (value: number) => number, top: number) {
  const y = top + LABEL + 9;
  return harvests.years.map(
    ({ year, crop }) =>
      svg`<circle class="picked" cx=${at(crop)} cy=${y} r="4"><title>${year}</title></circle>`,
  );
}
