import { html, svg, type TemplateResult } from "lit";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { isAsked } from "../../survey/decide/isAsked";
import { toCount } from "../../survey/decide/toCount";
import { DECIDE_TEXTS } from "../../texts/pane";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { vineKey } from "./decideState";

const STEP = 10;
const TALL = 18;
/** So few vines are not drawn wider than these many would be. */
const LEAST = 20;

/** The row of a vine from its first to its last, as it stands: what is decided, asked and to be counted. */
export function rowPicture(pane: Pane, vines: readonly DecidedVine[], shown: DecidedVine): TemplateResult {
  const { block, row } = shown;
  const own = vines.filter((vine) => vine.block === block && vine.row === row);
  const count = own.filter((vine) => toCount(vine) !== undefined).length;
  const ask = own.filter((vine) => isAsked(vine) && toCount(vine) === undefined).length;
  const words = pane.say(DECIDE_TEXTS.rowPicture, {
    block,
    row,
    decided: own.length - ask - count,
    ask,
    count,
  });
  const width = Math.max(LEAST, own.length) * STEP;
  return html`<figure class="row-picture stack" style="margin:0">
    <svg viewBox=${`0 0 ${width} ${TALL}`} role="img" aria-label=${words} style="inline-size:100%">
      <defs>
        <pattern id="asked" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="4" stroke="currentColor" stroke-width="1.4" />
        </pattern>
      </defs>
      ${own.map((vine, index) => vineMark(pane, vine, index * STEP, vine === shown))}
    </svg>
    <figcaption class="small quiet">${words} ${pane.say(DECIDE_TEXTS.rowKey)}</figcaption>
  </figure>`;
}

function vineMark(pane: Pane, vine: DecidedVine, x: number, isShown: boolean) {
  const mark =
    toCount(vine) !== undefined
      ? svg`<path d=${`M${x + 2} 4 l6 10 m0 -10 l-6 10`} stroke="currentColor" stroke-width="1.4" fill="none" />`
      : svg`<rect x=${x + 2} y="4" width="6" height="10" stroke="currentColor" stroke-width="0.8" fill=${isAsked(vine) ? "url(#asked)" : "currentColor"} />`;
  return svg`<g
    class="vine-mark"
    style="cursor:pointer"
    @click=${() => changePage(pane, "decide", { at: vineKey(vine) })}
  >
    <title>${pane.say(DECIDE_TEXTS.vine, { block: vine.block, row: vine.row, vine: vine.vine })}</title>
    <rect x=${x} y="0" width=${STEP} height=${TALL} fill="transparent" />
    ${mark}
    ${isShown ? svg`<rect x=${x + 0.5} y="1" width="9" height="16" fill="none" stroke="currentColor" stroke-width="1.4" />` : ""}
  </g>`;
}
