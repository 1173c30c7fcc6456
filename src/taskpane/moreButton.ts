import { html, nothing, type TemplateResult } from "lit";
import { CHECK_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** How much of a long list is shown, and how much a click adds. */
export interface ListedPart {
  readonly all: number;
  readonly listed: number;
  readonly stretch: number;
}

/** The button that lists a further stretch of a long list; nothing where all of it is listed. */
export function moreButton(
  pane: Pane,
  { all, listed, stretch }: ListedPart,
  onMore: () => void,
): TemplateResult | typeof nothing {
  if (all <= listed) return nothing;
  return html`<div class="buttons">
    <fluent-button size="small" @click=${onMore}
      >${pane.say(CHECK_TEXTS.more, { more: Math.min(stretch, all - listed), all })}</fluent-button
    >
  </div>`;
}
