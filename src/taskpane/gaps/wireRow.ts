import { html, svg, type TemplateResult } from "lit";
import { rowDrawing, type PlaceOnWire, type RowDrawing } from "../../survey/decide/picture/rowDrawing";
import type { DrawnCordon } from "../../survey/decide/picture/vineDrawing";
import { GAPS_TEXTS } from "../../texts/pane";
import { placeName } from "../../texts/placeName";
import type { Pane } from "../pane";

/** Pixels that a vine needs at least, and the pane's own edges. */
const VINE = 46;
const EDGES = 24;
const LEAST = 3;
const HEIGHT = 74;
const WIRE = 16;
/** Below the wire, so that cordons of one side do not cover one another. */
const NEXT = 9;
const GROUND = 58;
const TRUNK_STEP = 5;
const SPUR = 6;
const STROKES: Readonly<Record<DrawnCordon["verdict"], { width: number; dashes: string }>> = {
  stays: { width: 3, dashes: "none" },
  goes: { width: 1.4, dashes: "4 2.5" },
  ask: { width: 2, dashes: "1 2.5" },
};

/** What the picture shows and what a click on a vine does. */
export interface WireRow {
  readonly block: string;
  readonly row: number;
  /** The vine that is framed. */
  readonly vine?: number;
  readonly onVine: (vine: number) => void;
}

/**
 * A row as it stands on the wire, to scale, broken into lines that fit the pane: trunks, cordons with what stays and what
 * goes, live spurs, and each cordon's longest gap.
 */
export function wireRow(pane: Pane, { block, row, vine, onVine }: WireRow): TemplateResult {
  const { counted } = pane.state.gaps;
  if (counted === undefined) return html``;
  const drawing = rowDrawing(counted.season, counted.vines, block, row);
  const width = Math.max(260, (pane.state.width ?? 320) - EDGES);
  const across = Math.max(LEAST, Math.floor(width / VINE));
  const lines: PlaceOnWire[][] = [];
  for (const place of drawing.places) {
    const line = Math.floor(place.at / drawing.spacing / across);
    (lines[line] ??= []).push(place);
  }
  return html`<figure id="wire-row" class="stack" style="margin:0">
    <svg width="0" height="0" style="position:absolute" aria-hidden="true">
      <defs>
        <pattern
          id="bare-wire"
          width="4"
          height="4"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" y1="0" x2="0" y2="4" stroke="currentColor" stroke-width="1.2" />
        </pattern>
      </defs>
    </svg>
    ${lines.map((line, index) =>
      wireLine(pane, drawing, line, {
        from: index * across * drawing.spacing,
        across: Math.min(across, drawing.places.length),
        width,
        chosen: vine,
        onVine,
      }),
    )}
    <figcaption class="small quiet">${pane.say(GAPS_TEXTS.wireKey)}</figcaption>
  </figure>`;
}

interface Line {
  readonly from: number;
  readonly across: number;
  readonly width: number;
  readonly chosen: number | undefined;
  readonly onVine: (vine: number) => void;
}

function wireLine(pane: Pane, { spacing }: RowDrawing, places: readonly PlaceOnWire[], line: Line) {
  const scale = line.width / (line.across * spacing);
  const headOf = ({ at }: PlaceOnWire) => (at - line.from + spacing / 2) * scale;
  const half = (spacing * scale) / 2;
  const first = places[0];
  const last = places[places.length - 1];
  const along = (y: number, width: number, dashes: string) =>
    svg`<line x1="0" x2=${headOf(last) + half} y1=${y} y2=${y} stroke="currentColor" stroke-width=${width} stroke-dasharray=${dashes} />`;
  const words = pane.say(GAPS_TEXTS.wireLine, {
    first: placeName(first.vine),
    last: placeName(last.vine),
    missing: places.filter(({ missing }) => missing).length,
    bare: places.flatMap(({ drawing }) => drawing?.cordons.filter(({ gap }) => gap !== undefined) ?? [])
      .length,
  });
  return html`<svg class="wire" viewBox=${`0 0 ${line.width} ${HEIGHT}`} role="img" aria-label=${words}>
    ${along(WIRE, 0.6, "1 3")}${along(GROUND, 0.8, "none")}
    ${places.map((place) => onWire(pane, place, { ...line, scale, head: headOf(place), half }))}
  </svg>`;
}

function onWire(
  pane: Pane,
  place: PlaceOnWire,
  { scale, head, half, chosen, onVine }: Line & { scale: number; head: number; half: number },
) {
  const { vine, drawing, missing } = place;
  const name = placeName(vine);
  return svg`<g class="on-wire" data-vine=${name} @click=${() => onVine(vine)}>
    <title>${pane.say(missing ? GAPS_TEXTS.missingVine : drawing === undefined ? GAPS_TEXTS.noCounts : GAPS_TEXTS.vine, { vine: name })}</title>
    <rect x=${head - half} y="0" width=${2 * half} height=${HEIGHT} fill="transparent" />
    ${drawing === undefined ? emptyPlace(missing, head) : standing(drawing, head, scale)}
    <text x=${head} y=${HEIGHT - 4} font-size="11" text-anchor="middle" fill="currentColor" font-weight=${vine === chosen ? 700 : 400}>${name}</text>
    ${
      vine === chosen
        ? svg`<rect class="chosen" x=${head - half + 1} y="1" width=${2 * half - 2} height=${HEIGHT - 2} fill="none" stroke="currentColor" stroke-width="1.6" />`
        : ""
    }
  </g>`;
}

function emptyPlace(missing: boolean, head: number) {
  return missing
    ? svg`<path class="missing" d=${`M${head - 6} ${GROUND - 18} l12 12 m0 -12 l-12 12`} stroke="currentColor" stroke-width="1.6" fill="none" />`
    : svg`<text x=${head} y=${GROUND - 8} font-size="14" text-anchor="middle" fill="currentColor">?</text>`;
}

function standing({ cordons, trunks }: NonNullable<PlaceOnWire["drawing"]>, head: number, scale: number) {
  const trunkAt = (trunk: number | undefined) => {
    const index = trunk === undefined ? -1 : trunks.indexOf(trunk);
    return head + (index < 0 ? 0 : (index - (trunks.length - 1) / 2) * TRUNK_STEP);
  };
  const heights = cordons.map((cordon, index) => WIRE + NEXT * lineOf(cordons, cordon, index));
  return svg`${trunks.map((trunk) => {
    const top = Math.min(...cordons.map((cordon, at) => (cordon.trunk === trunk ? heights[at] : GROUND)));
    return svg`<line class="trunk" x1=${trunkAt(trunk)} x2=${trunkAt(trunk)} y1=${top} y2=${GROUND} stroke="currentColor" stroke-width="3" />`;
  })}
  ${cordons.map((cordon, at) => alongWire(cordon, trunkAt(cordon.trunk), heights[at], scale))}`;
}

/** Cordons of one side stand below one another: what stays on the wire, then what is asked about, then what goes. */
function lineOf(cordons: readonly DrawnCordon[], cordon: DrawnCordon, index: number): number {
  const order = ["stays", "ask", "goes"];
  return cordons.filter((other, at) => {
    const before = order.indexOf(other.verdict) - order.indexOf(cordon.verdict) || at - index;
    return other.towards === cordon.towards && before < 0;
  }).length;
}

function alongWire(cordon: DrawnCordon, from: number, y: number, scale: number) {
  const x = (metres: number) => from + cordon.towards * metres * scale;
  const { width, dashes } = STROKES[cordon.verdict];
  const { gap } = cordon;
  return svg`<g class=${`cordon ${cordon.verdict}`}>
    <line x1=${from} x2=${x(cordon.length)} y1=${y} y2=${y} stroke="currentColor" stroke-width=${width} stroke-dasharray=${dashes} />
    ${cordon.spurs.map(({ at, points }) => svg`<line class="spur" x1=${x(at)} x2=${x(at)} y1=${y} y2=${y + (points === "down" ? SPUR : -SPUR)} stroke="currentColor" stroke-width="1" />`)}
    ${cordon.bare.map((at) => svg`<circle class="bare" cx=${x(at)} cy=${y} r="2" fill="var(--colorNeutralBackground1, Canvas)" stroke="currentColor" stroke-width="0.8" />`)}
    ${
      gap === undefined
        ? ""
        : svg`<rect class="gap" x=${Math.min(x(gap.from), x(gap.to))} y=${y - 4} width=${Math.abs(x(gap.to) - x(gap.from))} height="8" fill="url(#bare-wire)" stroke="currentColor" stroke-width="0.8" />`
    }
  </g>`;
}
