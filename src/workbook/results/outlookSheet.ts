import type { UnitSystem } from "../../domain/units";
import type { BlockOutlook } from "../../survey/crop/blockOutlook";
import { disagreementSentence } from "../../survey/crop/harvestSentences";
import { cropFigureSentence } from "../../survey/crop/cropNotes";
import { areaCropIn, blockCrop, blockCropIn, vineCropIn } from "../../survey/crop/cropWords";
import { say, type Language } from "../../texts/language";
import { SPREAD_SOURCES, STAGE_NAMES } from "../../texts/outlook";
import { OUTLOOK_SHEET_TEXTS as TEXTS } from "../../texts/pane";
import type { OwnSheet } from "../surveyWorkbook";

/**
 * The sheet with a line for each block and stage: crop of a vine, an area and the block, low, likely and high; in the
 * first line of a block the figures that it was worked out with; and a chart of the block's crop.
 */
export function outlookSheet(
  blocks: readonly BlockOutlook[],
  language: Language,
  units: UnitSystem,
  date: string,
): OwnSheet {
  const text = (name: keyof typeof TEXTS, facts = {}) => say(TEXTS[name], language, facts);
  const unitOf = {
    vine: vineCropIn(0, units).unit,
    area: areaCropIn(0, units, language).unit,
    block: blockCropIn(0, units, language).unit,
  };
  const chart = {
    kind: "range",
    title: text("chartTitle"),
    axis: text("chartAxis", { unit: unitOf.block }),
    labels: text("bar"),
    parts: [
      text("cropLow", { unit: unitOf.block }),
      text("toLikely", { unit: unitOf.block }),
      text("toHigh", { unit: unitOf.block }),
    ],
  } as const;
  return {
    sheet: text("sheet"),
    title: [text("title"), text("made", { date })],
    headers: [
      text("block"),
      text("stage"),
      text("confidence"),
      text("clusters"),
      ...(["vine", "area", "crop"] as const).flatMap((what) => {
        const unit = what === "crop" ? unitOf.block : unitOf[what];
        return [text(`${what}Low`, { unit }), text(`${what}Likely`, { unit }), text(`${what}High`, { unit })];
      }),
      text("widest"),
      text("harvests", { unit: unitOf.block }),
      text("againstHarvests"),
      text("figures"),
      chart.labels,
      ...chart.parts.slice(1),
    ],
    about: { thing: [text("block")], kind: [text("stage")] },
    columns: [
      { width: 16 },
      { width: 20 },
      { width: 11, format: "0%" },
      { width: 11, format: "0" },
      ...Array.from({ length: 9 }, () => ({ width: 12, format: "0.00", wrap: true })),
      { width: 30, wrap: true },
      { width: 12, format: "0.00", wrap: true },
      { width: 50, wrap: true },
      { width: 60, wrap: true },
      { width: 24, wrap: true },
      { width: 11, format: "0.00", wrap: true },
      { width: 11, format: "0.00", wrap: true },
    ],
    charts: [chart],
    rows: blocks.flatMap((outlook) => {
      const { inputs, stages, asCounted, againstHarvests } = outlook;
      return stages
        .flatMap((stage) => [
          { stage, name: STAGE_NAMES[stage.stage][language], isPlanned: true },
          ...(stage.stage === "winter" && asCounted
            ? [{ stage: asCounted, name: STAGE_NAMES.asCounted[language], isPlanned: false }]
            : []),
        ])
        .map(({ stage, name, isPlanned }, line) => {
          const { harvests } = inputs;
          const against = isPlanned && againstHarvests.find((one) => one.stage === stage.stage);
          const crop = (end: "low" | "likely" | "high") =>
            blockCropIn(stage.block[end], units, language).value;
          return [
            inputs.block,
            name,
            stage.confidence,
            stage.clusters.likely,
            ...(["low", "likely", "high"] as const).map((end) => vineCropIn(stage.perVine[end], units).value),
            ...(["low", "likely", "high"] as const).map((end) =>
              stage.perHectare === undefined
                ? null
                : areaCropIn(stage.perHectare[end], units, language).value,
            ),
            ...(["low", "likely", "high"] as const).map(crop),
            stage.spread[0] !== undefined && stage.spread[0].share > 0
              ? SPREAD_SOURCES[stage.spread[0].source][language]
              : null,
            harvests ? blockCropIn(harvests.mean, units, language).value : null,
            (against &&
              harvests &&
              disagreementSentence(
                against.disagreement,
                stage.block,
                harvests,
                blockCrop(units, language),
                language,
              )) ||
              null,
            line === 0 ? cropFigureSentence(outlook, language) : null,
            text("barName", { block: inputs.block, stage: name }),
            crop("likely") - crop("low"),
            crop("high") - crop("likely"),
          ];
        });
    }),
  };
}
