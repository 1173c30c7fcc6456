import { html, nothing, type TemplateResult } from "lit";
import type { CropOutlook } from "../../domain/outlook/cropOutlook";
import type { Range } from "../../domain/outlook/productRange";
import type { BlockOutlook } from "../../survey/crop/blockOutlook";
import {
  cropFigureSentence,
  cropLoadSentence,
  shootThinningSentence,
  winterNotes,
} from "../../survey/crop/cropNotes";
import { disagreementSentence, ownHarvestsSentence } from "../../survey/crop/harvestSentences";
import {
  areaCropIn,
  blockCrop,
  blockCropIn,
  threeDigits,
  vineCropIn,
  type ShownCrop,
} from "../../survey/crop/cropWords";
import { NEXT_STEPS, OUTLOOK_LACKS, SPREAD_SOURCES, STAGE_NAMES } from "../../texts/outlook";
import { OUTLOOK_SHEET_TEXTS, OUTLOOK_TEXTS } from "../../texts/pane";
import { outlookSheet } from "../../workbook/results/outlookSheet";
import { choiceField } from "../fields";
import { settingButton } from "../settingButton";
import { usedRowsLine } from "../usedRowsLine";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { percent } from "../percent";
import { progressBar } from "../progressBar";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import type { OutlookState } from "./outlookState";
import { countView } from "./countView";
import { cropAxis, type CropRow } from "./cropAxis";
import { figuresView } from "./figuresView";
import { OUTLOOK_STYLES } from "./outlookStyles";
import { scaleEnd } from "./scaleEnd";
import { seasonsView } from "./seasonsView";
import { workOutlook } from "./workOutlook";

export { workOutlookAnew } from "./workOutlook";

/** Pixels of the pane's own edges. */
const EDGES = 24;

/** The page that shows what crop the pruning leaves. */
export function outlookPage(pane: Pane): TemplateResult {
  const page = pane.state.outlook;
  return html`<style>
      ${OUTLOOK_STYLES}
    </style>
    <h1>${pane.say(OUTLOOK_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(OUTLOOK_TEXTS.intro)}</p>
    ${
      page.progress !== undefined
        ? progressBar(pane, pane.say(OUTLOOK_TEXTS.progress), page.progress)
        : page.blocks === undefined
          ? html`<div class="buttons">
              <fluent-button
                id="work-outlook"
                appearance="primary"
                @click=${() => pane.start((signal) => workOutlook(pane, signal))}
                >${pane.say(OUTLOOK_TEXTS.work)}</fluent-button
              >
            </div>`
          : nothing
    }
    ${page.blocks === undefined || page.progress !== undefined ? nothing : result(pane, page, page.blocks)}`;
}

function result(pane: Pane, page: OutlookState, blocks: readonly BlockOutlook[]): TemplateResult {
  if (blocks.length === 0)
    return html`<fluent-message-bar intent="info" layout="singleline"
      >${pane.say(OUTLOOK_TEXTS.none)}</fluent-message-bar
    >`;
  const chosen = blocks.find(({ inputs }) => inputs.block === page.block) ?? blocks[0];
  return html`<p class="small">${pane.say(OUTLOOK_TEXTS.caution)}</p>
    ${page.season === undefined ? nothing : usedRowsLine(pane, page.season.used.account())}
    <div class="buttons">
      <fluent-button
        id="write-outlook"
        size="small"
        @click=${() => void currentOnly(pane, "outlook", () => write(pane, page, blocks))}
        >${pane.say(OUTLOOK_TEXTS.write)}</fluent-button
      >
    </div>
    ${choiceField({
      id: "outlook-block",
      label: pane.say(OUTLOOK_SHEET_TEXTS.block),
      value: chosen.inputs.block,
      options: blocks.map(({ inputs: { block } }) => ({ value: block, label: block })),
      onChoose: (block) =>
        pane.change((state) => {
          const { outlook } = state;
          const seasons = outlook.seasons && { ...outlook.seasons, row: "" };
          return { ...state, outlook: { ...outlook, block, seasons } };
        }),
    })}
    ${blockView(pane, page, chosen)} ${countView(pane, page, chosen.inputs.block)}
    ${seasonsView(pane, page, chosen.inputs.block)} ${figuresView(pane, page)}`;
}

async function write(pane: Pane, page: OutlookState, blocks: readonly BlockOutlook[]): Promise<void> {
  const { language } = pane.state;
  const content = outlookSheet(blocks, language, page.unitSystem, writtenDate(pane.today, language));
  await writeResult(pane, content, OUTLOOK_SHEET_TEXTS.sheet);
}

function blockView(pane: Pane, page: OutlookState, outlook: BlockOutlook): TemplateResult {
  const { inputs, latest, stages } = outlook;
  const lacks = inputs.lacking.map(({ code }) => html`<li>${pane.say(OUTLOOK_LACKS[code])}</li>`);
  return html`${
    latest === undefined
      ? html`<fluent-message-bar intent="warning" layout="singleline"
          >${pane.say(OUTLOOK_TEXTS.cannotSay)}</fluent-message-bar
        >`
      : html`<p id="outlook-crop"><strong>${cropWords(pane, page, latest)}</strong></p>
          ${winterNotes(outlook, pane.state.language).map((note) => html`<p class="small winter-note">${note}</p>`)}
          <p class="small quiet" id="block-figures">${cropFigureSentence(outlook, pane.state.language)}</p>
          ${inputs.otherSecondaries ? settingButton(pane, "secondariesAreWritten") : nothing}
          ${stageBars(pane, page, outlook, stages)} ${spreadView(pane, latest)}
          ${stepsView(pane, page, outlook)} ${loadView(pane, outlook)} ${shootThinningView(pane, outlook)}
          ${thinningView(pane, outlook)} ${harvestView(pane, outlook)}`
  }
  ${
    lacks.length === 0
      ? nothing
      : html`<h2>${pane.say(OUTLOOK_TEXTS.lacking)}</h2>
          <ul>
            ${lacks}
          </ul>`
  }`;
}

/** Range and likely value in one unit, as words. */
function rangeWords(pane: Pane, range: Range, shown: (value: number) => ShownCrop) {
  const words = (value: number) => threeDigits(shown(value).value, pane.state.language);
  return {
    low: words(range.low),
    likely: words(range.likely),
    high: words(range.high),
    unit: shown(range.likely).unit,
  };
}

function cropWords(pane: Pane, { unitSystem }: OutlookState, outlook: CropOutlook): string {
  const percent = Math.round(outlook.confidence * 100);
  const { perHectare } = outlook;
  return pane.say(OUTLOOK_TEXTS.crop, {
    ...(perHectare === undefined
      ? rangeWords(pane, outlook.block, blockCrop(unitSystem, pane.state.language))
      : rangeWords(pane, perHectare, (mass) => areaCropIn(mass, unitSystem, pane.state.language))),
    percent,
  });
}

function stageBars(
  pane: Pane,
  { unitSystem }: OutlookState,
  { inputs, asCounted, againstHarvests }: BlockOutlook,
  stages: readonly CropOutlook[],
): TemplateResult {
  const { language } = pane.state;
  const byArea = stages.every(({ perHectare }) => perHectare !== undefined);
  const rangeOf = (stage: CropOutlook) => (byArea ? stage.perHectare! : stage.block);
  const shown = (mass: number) =>
    byArea ? areaCropIn(mass, unitSystem, language) : blockCropIn(mass, unitSystem, language);
  const target = byArea ? inputs.targetCrop : undefined;
  const { harvests } = inputs;
  const ofBlock = (mass: number) =>
    byArea ? mass * (stages[0].perHectare!.likely / stages[0].block.likely) : mass;
  const showCrop = (mass: number) => shown(ofBlock(mass));
  const { unit } = shown(0);
  const inUnit = (range: Range): Range => ({
    low: shown(range.low).value,
    likely: shown(range.likely).value,
    high: shown(range.high).value,
  });
  const digits = (value: number) => threeDigits(value, language);
  const years = harvests?.years.map(({ year, picked }) => ({ year, crop: showCrop(picked).value })) ?? [];
  const rows: readonly (CropRow & { readonly stage: CropOutlook })[] = stages.flatMap((stage) => {
    const row = {
      name: pane.say(STAGE_NAMES[stage.stage]),
      range: inUnit(rangeOf(stage)),
      plan: true,
      stage,
    };
    if (stage.stage !== "winter" || asCounted === undefined) return [row];
    const counted = inUnit(rangeOf(asCounted));
    return [
      { ...row, name: pane.say(OUTLOOK_TEXTS.byPlan, { stage: row.name }) },
      { name: pane.say(STAGE_NAMES.asCounted), range: counted, plan: false, stage: asCounted },
    ];
  });
  const aim = target === undefined ? undefined : shown(target).value;
  const against = (stage: CropOutlook) => {
    const how = againstHarvests.find((one) => one.stage === stage.stage)?.disagreement;
    return how && harvests && disagreementSentence(how, stage.block, harvests, showCrop, language);
  };
  const rowWords = ({ name, range: { low, likely, high } }: CropRow) =>
    pane.say(OUTLOOK_TEXTS.bar, {
      stage: name,
      low: digits(low),
      likely: digits(likely),
      high: digits(high),
      unit,
    });
  const targetWords = aim === undefined ? "" : pane.say(OUTLOOK_TEXTS.target, { value: digits(aim), unit });
  const own = harvests === undefined ? "" : ownHarvestsSentence(harvests, showCrop, language);
  return html`<h2>${pane.say(OUTLOOK_TEXTS.stages)}</h2>
    ${cropAxis({
      width: Math.max(280, (pane.state.width ?? 320) - EDGES),
      rows,
      harvests: { name: pane.say(OUTLOOK_TEXTS.harvests), years },
      target: aim === undefined ? undefined : { name: pane.say(OUTLOOK_TEXTS.targetName), crop: aim },
      most: scaleEnd(
        rows.map(({ range }) => range),
        Math.max(aim ?? 0, ...years.map(({ crop }) => crop)),
      ),
      unit,
      digits,
      words: [...rows.map(rowWords), targetWords, own].filter((part) => part !== "").join(" "),
    })}
    <p class="small quiet">${pane.say(OUTLOOK_TEXTS.axisKey)}</p>
    <table id="crop-stages" class="small">
      <thead>
        <tr>
          <th scope="col">${pane.say(OUTLOOK_TEXTS.stage, { unit })}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.low)}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.likely)}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.high)}</th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ name, range, plan, stage }) =>
            html`<tr id=${plan ? nothing : "as-counted"}>
              <th scope="row">
                ${name}
                <span class="quiet aside"
                  >${pane.say(OUTLOOK_TEXTS.aVine, {
                    clusters: digits(stage.clusters.likely),
                    ...rangeWords(pane, stage.perVine, (mass) => vineCropIn(mass, unitSystem)),
                  })}</span
                >
              </th>
              <td class="number">${digits(range.low)}</td>
              <td class="number">${digits(range.likely)}</td>
              <td class="number">${digits(range.high)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    ${stages.map((stage) => {
      const words = against(stage);
      return words === undefined ? nothing : html`<p class="small against-harvests">${words}</p>`;
    })}
    ${own === "" ? nothing : html`<p class="small" id="own-harvests">${own}</p>`}
    ${targetWords === "" ? nothing : html`<p class="small" id="crop-target">${targetWords}</p>`}`;
}

function spreadView(pane: Pane, { spread }: CropOutlook): TemplateResult | typeof nothing {
  const sources = spread.filter(({ share }) => share >= 0.005);
  if (sources.length === 0) return nothing;
  return html`<h2>${pane.say(OUTLOOK_TEXTS.spread)}</h2>
    <ul id="doubt" class="plain">
      ${sources.map(
        ({ source, share }) =>
          html`<li class="doubt">
            <span>${pane.say(SPREAD_SOURCES[source])}</span>
            <span class="number">${percent(pane, share)}</span>
            <span class="track"><i style=${`inline-size:${(100 * share).toFixed(1)}%`}></i></span>
          </li>`,
      )}
    </ul>`;
}

function stepsView(pane: Pane, { unitSystem }: OutlookState, { steps, leastStep }: BlockOutlook) {
  if (leastStep === undefined) return nothing;
  const words = steps.map(({ unit, more, minutes, block, perHectare, halfWidth }) => {
    const range =
      perHectare === undefined
        ? rangeWords(pane, block, blockCrop(unitSystem, pane.state.language))
        : rangeWords(pane, perHectare, (mass) => areaCropIn(mass, unitSystem, pane.state.language));
    return pane.say(NEXT_STEPS[unit], {
      more,
      minutes: Math.round(minutes),
      low: range.low,
      high: `${range.high} ${range.unit}`,
      percent: Math.round(halfWidth * 100),
    });
  });
  const { minutes, gain } = leastStep;
  return html`<h2>${pane.say(OUTLOOK_TEXTS.steps)}</h2>
    ${
      words.length === 0
        ? html`<p id="no-step">${pane.say(NEXT_STEPS.none, { minutes, percent: gain * 100 })}</p>`
        : html`<ul>
            ${words.map((line) => html`<li>${line}</li>`)}
          </ul>`
    }`;
}

function loadView(pane: Pane, { cropLoads }: BlockOutlook) {
  if (cropLoads.length === 0) return nothing;
  return html`<h2>${pane.say(OUTLOOK_TEXTS.load)}</h2>
    ${cropLoads.map((pair) => html`<p class="crop-load">${cropLoadSentence(pair, pane.state.language)}</p>`)}`;
}

function shootThinningView(pane: Pane, outlook: BlockOutlook) {
  const sentence = shootThinningSentence(outlook, pane.state.language);
  return sentence === undefined
    ? nothing
    : html`<p id="shoot-thinning">${sentence}</p>
        <div class="buttons">${settingButton(pane, "shootsByLength")}</div>`;
}

function thinningView(pane: Pane, { thinning }: BlockOutlook) {
  if (thinning === undefined) return nothing;
  if (!Number.isFinite(thinning.keep))
    return html`<h2>${pane.say(OUTLOOK_TEXTS.thinning)}</h2>
      <p>${pane.say(OUTLOOK_TEXTS.noThinning)}</p>`;
  return html`<h2>${pane.say(OUTLOOK_TEXTS.thinning)}</h2>
    <p>
      ${pane.say(OUTLOOK_TEXTS.keep, {
        keep: thinning.keep,
        hours: threeDigits(thinning.hours, pane.state.language),
      })}
    </p>
    <table class="small">
      <thead>
        <tr>
          <th scope="col">${pane.say(OUTLOOK_TEXTS.group)}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.vines)}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.remove)}</th>
          <th scope="col" class="number">${pane.say(OUTLOOK_TEXTS.left)}</th>
        </tr>
      </thead>
      <tbody>
        ${thinning.groups.map(
          ({ name, vines, remove, left }) =>
            html`<tr>
              <th scope="row">${name}</th>
              <td class="number">${vines}</td>
              <td class="number">${threeDigits(remove, pane.state.language)}</td>
              <td class="number">${threeDigits(left, pane.state.language)}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}

function harvestView(pane: Pane, { pickedOverLikely }: BlockOutlook) {
  return html`${
    pickedOverLikely.length === 0
      ? nothing
      : html`<h2>${pane.say(STAGE_NAMES.harvest)}</h2>
          <ul class="plain">
            ${pickedOverLikely.map(
              ({ stage, ratio, held }) =>
                html`<li>
                  ${pane.say(held ? OUTLOOK_TEXTS.held : OUTLOOK_TEXTS.missed, {
                    stage: pane.say(STAGE_NAMES[stage as keyof typeof STAGE_NAMES]),
                    percent: Math.round(ratio * 100),
                  })}
                </li>`,
            )}
          </ul>`
  }`;
}
