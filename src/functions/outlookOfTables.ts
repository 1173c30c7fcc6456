import type { CropOutlook } from "../domain/outlook/cropOutlook";
import type { Range } from "../domain/outlook/productRange";
import type { UnitSystem } from "../domain/units";
import { decideSeason } from "../survey/decide/decideSeason";
import { outlookInputs } from "../survey/crop/outlookInputs";
import { blockOutlook } from "../survey/crop/blockOutlook";
import { blockCrop } from "../survey/crop/cropWords";
import { disagreementSentence, ownHarvestsSentence } from "../survey/crop/harvestSentences";
import { OUTLOOK_LINES } from "../texts/functions/outlook";
import { say, type Language, type Text } from "../texts/language";
import { OUTLOOK_LACKS, SPREAD_SOURCES, STAGE_NAMES } from "../texts/outlook";
import { usedSentence } from "../survey/season/usedSentence";
import type { ResultRow } from "./cordonFunction";
import { fromMetric, unitName, type Measure } from "./measure";
import { seasonOfTables, type GivenTables } from "./seasonOfTables";
import { neededColumn } from "./surveyTable";

const SHEETS_OF = {
  vines: "vines",
  blocks: "blocks",
  settings: "settings",
  cordons: "cordons",
  bud_cuts: "budCuts",
  harvest: "harvest",
} as const;

/**
 * The outlook of every block of a Blocks table, stage by stage: clusters a vine, crop of a vine, of an area and of the block,
 * low, likely and high, with the largest source of doubt. What the tables lack is said in a line of its own.
 *
 * @param given the tables `vines` and `blocks` and, where they are given, `settings`, `cordons`, `bud_cuts` and `harvest`
 * @example
 * outlookOfTables({ vines: readTable(functionNamed("CROPOUTLOOK").parameters[0], [["Block", "Row", "Vine", "Status", "Clusters"], ["A", 1, 1, "bearing", 60], ["A", 1, 2, "bearing", 80]]), blocks: readTable(functionNamed("CROPOUTLOOK").parameters[1], [["Block", "Vines", "Cluster weight (lb)"], ["A", 2, 0.25]]) }, undefined, "en")[1].likely // 17.5
 */
export function outlookOfTables(
  given: GivenTables,
  unitSystem: UnitSystem | undefined,
  language: Language,
): readonly ResultRow[] {
  const season = seasonOfTables(given, SHEETS_OF, unitSystem);
  neededColumn("vines", season.tables("vines")[0], "block");
  neededColumn("blocks", season.tables("blocks")[0], "block");
  const units = season.unitSystem;
  const options = given["cordons"] ? { decided: [...decideSeason(season)] } : {};
  const rowsUsed = season.used.account();
  const lines: ResultRow[] = outlookInputs(season, options).flatMap((inputs) => {
    const { block, harvests, lacking } = inputs;
    const { stages, asCounted, againstHarvests } = blockOutlook(inputs, season.settings, []);
    const against = (stage: CropOutlook) => {
      const how = againstHarvests.find((one) => one.stage === stage.stage)?.disagreement;
      return (
        how &&
        harvests &&
        disagreementSentence(how, stage.block, harvests, blockCrop(units, language), language)
      );
    };
    return [
      ...stages.flatMap((stage) => [
        ...stageRows(block, stage, STAGE_NAMES[stage.stage], against(stage), units, language),
        ...(stage.stage === "winter" && asCounted
          ? stageRows(block, asCounted, STAGE_NAMES.asCounted, undefined, units, language)
          : []),
      ]),
      ...(harvests && stages.length > 0
        ? [{ block, says: ownHarvestsSentence(harvests, blockCrop(units, language), language) }]
        : []),
      ...lacking
        .filter(({ kind }) => kind === "assumed" || stages.length === 0)
        .map(({ code }) => ({ block, says: OUTLOOK_LACKS[code][language] })),
    ];
  });
  return rowsUsed.leftOut.length === 0 ? lines : [...lines, { says: usedSentence(rowsUsed, language) }];
}

function stageRows(
  block: string,
  { clusters, perVine, perHectare, block: whole, spread }: CropOutlook,
  name: Text,
  against: string | undefined,
  units: UnitSystem,
  language: Language,
): readonly ResultRow[] {
  const line = (figure: keyof typeof OUTLOOK_LINES.figures, range: Range, measure: Measure, says = "") => ({
    block,
    stage: name[language],
    figure: OUTLOOK_LINES.figures[figure][language],
    low: fromMetric(range.low, measure, units),
    likely: fromMetric(range.likely, measure, units),
    high: fromMetric(range.high, measure, units),
    unit: unitName(measure, units)[language],
    says,
  });
  const [largest] = spread;
  const doubt =
    largest.share > 0
      ? say(OUTLOOK_LINES.doubt, language, {
          source: SPREAD_SOURCES[largest.source][language],
          percent: Math.round(100 * largest.share),
        })
      : "";
  return [
    line("clusters", clusters, "plain"),
    line("perVine", perVine, "mass"),
    ...(perHectare ? [line("perArea", perHectare, "cropPerArea")] : []),
    line("block", whole, "mass", [doubt, against].filter(Boolean).join(" ")),
  ];
}
