import { html, type TemplateResult } from "lit";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import type { Pane } from "../pane";

const TEXTS = SEASON_TEXTS.empty;

/** A vine drawn with what is counted on it: length, live spurs, the longest gap, trunks. */
export function countedVine(pane: Pane): TemplateResult {
  const words = (text: keyof typeof TEXTS, facts = {}) => pane.say(TEXTS[text], facts);
  return html`<svg
    id="counted-vine"
    viewBox="0 0 296 168"
    role="img"
    aria-label=${words("drawing")}
    style="inline-size:100%;block-size:auto"
    fill="none"
    stroke="currentColor"
  >
    <line x1="0" x2="296" y1="60" y2="60" stroke-width="1" stroke-dasharray="2 4" />
    <line x1="0" x2="296" y1="164" y2="164" stroke-width="1" />
    <g stroke-width="6" stroke-linecap="round">
      <path d="M138 162 C136 120 140 90 132 70 C128 60 118 60 104 60 L18 60" />
      <path d="M158 162 C160 120 156 90 164 70 C168 60 178 60 192 60 L278 60" />
    </g>
    <g stroke-width="2.5" stroke-linecap="round">
      <path d="M30 62v14M46 62v14M62 58v-14M78 62v14M94 62v14M110 62v14" />
      <path d="M186 62v14M202 58v-14M250 62v14M266 62v14" />
    </g>
    <rect x="212" y="49" width="30" height="22" stroke-width="1.5" stroke-dasharray="3 2" />
    <g stroke-width="1">
      <path d="M18 24H118M18 20v8M118 20v8" />
      <path d="M70 84v10M227 72v20M128 140h-20M168 140h20" />
    </g>
    <g class="drawn-words" stroke="none" fill="currentColor" font-size="12">
      <text x="68" y="16" text-anchor="middle">${words("length")}</text>
      <text x="70" y="107" text-anchor="middle">${words("spurs")}</text>
      <text x="227" y="106" text-anchor="middle">${words("gap")}</text>
      <text x="104" y="144" text-anchor="end">${words("trunk", { trunk: 1 })}</text>
      <text x="192" y="144">${words("trunk", { trunk: 2 })}</text>
      <text x="8" y="64" text-anchor="middle" font-weight="600">A</text>
      <text x="288" y="64" text-anchor="middle" font-weight="600">B</text>
    </g>
  </svg>`;
}
