import { html, nothing, type TemplateResult } from "lit";
import type { SeverityCounts } from "../../survey/checks/counts";
import { SEVERITY_TEXTS } from "../../texts/findings";
import type { Text } from "../../texts/language";
import { CHECK_TEXTS } from "../../texts/pane";
import { moreButton } from "../moreButton";
import type { Pane } from "../pane";
import { LISTED_AT_ONCE, SEVERITIES, listMore } from "./checkState";

/** Counts of findings by place or person, opened and closed like a list of findings. */
export function countTable(
  pane: Pane,
  key: "perRow" | "perCounter",
  head: Text,
  counts: readonly (SeverityCounts & { readonly name: string })[],
): TemplateResult | typeof nothing {
  if (counts.length === 0) return nothing;
  const listed = pane.state.check.open.get(key);
  return html`<fluent-accordion-item
    block
    marker-position="end"
    headinglevel="2"
    data-key=${key}
    .expanded=${listed !== undefined}
  >
    <span slot="heading" class="heading">${pane.say(CHECK_TEXTS[key])} (${counts.length})</span>
    ${
      listed === undefined
        ? nothing
        : html`<table>
              <thead>
                <tr>
                  <th scope="col">${pane.say(head)}</th>
                  ${SEVERITIES.map(
                    (severity) =>
                      html`<th scope="col" class="number">${pane.say(SEVERITY_TEXTS[severity])}</th>`,
                  )}
                </tr>
              </thead>
              <tbody>
                ${counts.slice(0, listed).map(
                  (count) =>
                    html`<tr>
                      <th scope="row">${count.name}</th>
                      ${SEVERITIES.map((severity) => html`<td class="number">${count[severity]}</td>`)}
                    </tr>`,
                )}
              </tbody>
            </table>
            ${moreOf(pane, key, counts.length, listed)}`
    }
  </fluent-accordion-item>`;
}

/** The button that lists a further stretch of a folded list. */
export function moreOf(
  pane: Pane,
  key: string,
  all: number,
  listed: number,
): TemplateResult | typeof nothing {
  return moreButton(pane, { all, listed, stretch: LISTED_AT_ONCE }, () =>
    pane.change((state) => ({ ...state, check: listMore(state.check, key) })),
  );
}
