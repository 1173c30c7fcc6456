import { grouped } from "../../domain/grouped";
import { html, nothing, type TemplateResult } from "lit";
import type { HandbookSample } from "../../domain/outlook/handbookSampleSizes";
import type { PlannedVine } from "../../domain/outlook/samplingPlan";
import { SMALLEST_PILOT } from "../../domain/outlook/vinesCounted";
import type { Counted, CountPlan } from "../../survey/crop/countPlan";
import { threeDigits } from "../../survey/crop/cropWords";
import { COUNT_PLAN_TEXTS } from "../../texts/countPlan";
import { HANDBOOK_SAMPLES, MISSING_TWICE } from "../../texts/outlook";
import { choiceField, textField } from "../fields";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import type { OutlookState, PlannedCount } from "./outlookState";
import { COUNTED, planCount } from "./planCount";
import { printWalk, writeWalk } from "./printWalk";

/** How many vines of the block to count, and which. */
export function countView(pane: Pane, page: OutlookState, block: string): TemplateResult {
  const count = page.count?.block === block ? page.count : undefined;
  return html`<section class="stack" aria-labelledby="count-plan">
    <h2 id="count-plan">${pane.say(COUNT_PLAN_TEXTS.title)}</h2>
    ${
      count === undefined
        ? html`<div class="buttons">
            <fluent-button
              id="plan-count"
              size="small"
              @click=${() => void pane.attempt(() => planCount(pane, block))}
              >${pane.say(COUNT_PLAN_TEXTS.plan, { block })}</fluent-button
            >
          </div>`
        : fields(pane, count, block)
    }
  </section>`;
}

function fields(pane: Pane, count: PlannedCount, block: string) {
  const planAgain = (part: Partial<PlannedCount>) => void pane.attempt(() => planCount(pane, block, part));
  return html`${choiceField({
      id: "count-what",
      label: pane.say(COUNT_PLAN_TEXTS.counted),
      value: count.counted,
      options: COUNTED.map((value) => ({ value, label: pane.say(COUNT_PLAN_TEXTS[value]) })),
      onChoose: (counted) => planAgain({ counted: counted as Counted }),
    })}
    ${textField({
      id: "count-margin",
      label: pane.say(COUNT_PLAN_TEXTS.margin),
      value: count.typed,
      onInput: (typed) => planAgain({ typed }),
    })}
    <p role="alert" id="count-problem">${count.problem ?? nothing}</p>
    ${count.plan === undefined ? nothing : planView(pane, count.plan)}`;
}

function planView(pane: Pane, plan: CountPlan): TemplateResult {
  const missing = Math.round(plan.missingShare * 100);
  const percent = threeDigits(plan.cv * 100, pane.state.language);
  return html`<p id="count-vines" role="status">
      <strong
        >${pane.say(COUNT_PLAN_TEXTS.vines, {
          vines: plan.vines,
          all: plan.bearingVines,
          margin: plan.margin * 100,
          confidence: Math.round(plan.confidence * 100),
        })}</strong
      >
    </p>
    <p class="small">
      ${
        plan.cvFrom === "pilot"
          ? pane.say(COUNT_PLAN_TEXTS.pilot, { percent, pilot: plan.pilot })
          : pane.say(COUNT_PLAN_TEXTS.setting, { percent, least: SMALLEST_PILOT })
      }
    </p>
    ${missing > 0 ? html`<p class="small">${pane.say(MISSING_TWICE, { percent: missing })}</p>` : nothing}
    <h3>${pane.say(COUNT_PLAN_TEXTS.handbooks)}</h3>
    <ul class="small" id="count-handbooks">
      ${plan.handbooks.map((handbook) => html`<li>${handbookWords(pane, handbook)}</li>`)}
    </ul>
    <h3>${pane.say(COUNT_PLAN_TEXTS.walk)}</h3>
    <ul class="plain" id="count-walk">
      ${rowsOfWalk(plan.walk).map(
        ({ row, vines }) => html`<li>${pane.say(COUNT_PLAN_TEXTS.row, { row, vines })}</li>`,
      )}
    </ul>
    <p class="small quiet">${pane.say(COUNT_PLAN_TEXTS.drawn, { seed: plan.seed })}</p>
    <div class="buttons">
      <fluent-button
        id="print-walk"
        size="small"
        appearance="primary"
        @click=${() => void currentOnly(pane, "outlook", () => printWalk(pane, plan))}
        >${pane.say(COUNT_PLAN_TEXTS.print)}</fluent-button
      >
      <fluent-button
        id="write-walk"
        size="small"
        @click=${() => void currentOnly(pane, "outlook", () => writeWalk(pane, plan))}
        >${pane.say(COUNT_PLAN_TEXTS.write)}</fluent-button
      >
      <fluent-button
        id="draw-again"
        size="small"
        @click=${() => void pane.attempt(() => planCount(pane, plan.block, { seed: plan.seed + 1 }))}
        >${pane.say(COUNT_PLAN_TEXTS.other)}</fluent-button
      >
    </div>`;
}

function handbookWords(pane: Pane, { source, vines, clusters }: HandbookSample): string {
  return pane.say(HANDBOOK_SAMPLES[source], { vines: fromTo(vines), clusters: fromTo(clusters) });
}

function fromTo(range: readonly [number, number] | undefined): string {
  if (range === undefined) return "";
  const [least, most] = range;
  return least === most ? String(least) : `${least}–${most}`;
}

/** The drawn vines of each row, in the order in which they are met. */
function rowsOfWalk(walk: readonly PlannedVine[]): { row: number; vines: number[] }[] {
  return [...grouped(walk, ({ row }) => row)].map(([row, vines]) => ({
    row,
    vines: vines.map(({ vine }) => vine),
  }));
}
