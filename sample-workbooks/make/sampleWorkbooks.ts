import type { WriteOptions } from "hucre";
import type { UnitSystem } from "../../src/domain/units";
import { OWN_SHEET_NAME } from "../../src/workbook/ownSheet";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { Farm } from "./farm";
import { figuresSheet } from "./figuresSheet";
import { FARM_NAME, inventedFarm } from "./inventedFarm";
import { noticeSheet } from "./noticeSheet";
import { plantMistakes, type PlantedMistake } from "./plantedMistakes";
import { randomSource } from "./randomSource";
import { settingNames, settingRows, settingsSheet } from "./settingsSheet";
import { surveySheet } from "./surveySheet";

/** Starts the invented farm's chance; another number gives another farm. */
export const SEED = 20260301;

const INVENTED = "Invented data: no such farm, vines or harvest exist. For trying Cordonbook only.";

/** The clean season: nothing in it is wrong. */
export function cleanSeason(): WriteOptions {
  return season(inventedFarm(randomSource(SEED)), [
    FARM_NAME,
    INVENTED,
    "Winter 2025-26, counted January to March 2026. Nothing in these sheets is wrong.",
  ]);
}

/** The same season with mistakes, and the mistakes themselves. */
export function seasonWithMistakes(): { workbook: WriteOptions; mistakes: PlantedMistake[] } {
  const farm = inventedFarm(randomSource(SEED));
  const mistakes = plantMistakes(farm);
  const lines = [
    FARM_NAME,
    INVENTED,
    "Winter 2025-26, the same season as the clean one with the mistakes below planted on purpose.",
  ];
  return { workbook: season(farm, lines, mistakes), mistakes };
}

/** Sheets to start a season from: headers, accepted words, Settings, and ruled lines to print. */
export function emptySeason(units: UnitSystem = "US"): WriteOptions {
  const options = { farm: "", blankLines: 32, units };
  return {
    sheets: [
      noticeSheet("Start here", [
        "A season to fill in",
        "Fill in Blocks and Vines once, print Cordons and Bud cuts for the crew, then type the counts in.",
        "Headers may stand in any order; units stand in the headers. Settings holds every figure that changes a result.",
      ]),
      surveySheet(SHEETS.blocks, [], { ...options, blankLines: 12 }),
      surveySheet(SHEETS.cordons, [], { ...options, blankLines: 96 }),
      surveySheet(SHEETS.vines, [], { ...options, blankLines: 64 }),
      surveySheet(SHEETS.budCuts, [], options),
      surveySheet(SHEETS.harvest, [], { ...options, blankLines: 12 }),
      settingsSheet(settingRows(), { farm: "" }),
    ],
    namedRanges: [...settingNames(settingRows()), ...ownSheets("Start here")],
    properties: properties("A season to fill in"),
    activeSheet: 0,
  };
}

function season(
  farm: Farm,
  lines: readonly string[],
  mistakes: readonly PlantedMistake[] = [],
): WriteOptions {
  const options = { farm: FARM_NAME };
  return {
    sheets: [
      noticeSheet("About this season", lines, mistakes),
      surveySheet(SHEETS.blocks, farm.blocks, options),
      surveySheet(SHEETS.cordons, farm.cordons, options),
      surveySheet(SHEETS.vines, farm.vines, options),
      surveySheet(SHEETS.budCuts, farm.budCuts, options),
      surveySheet(SHEETS.harvest, farm.harvest, options),
      settingsSheet(farm.settings, options),
      figuresSheet(farm, options),
    ],
    namedRanges: [...settingNames(farm.settings), ...ownSheets("About this season", "Figures")],
    properties: properties(FARM_NAME),
    activeSheet: 0,
  };
}

/** Marks sheets that hold no counts as made by Cordonbook, so that no reading asks about them. */
function ownSheets(...names: readonly string[]): NonNullable<WriteOptions["namedRanges"]> {
  return names.map((scope) => ({ name: OWN_SHEET_NAME, range: "TRUE", scope }));
}

/** A day that stays the same, so that two runs give the same bytes. */
const MADE = new Date(Date.UTC(2026, 2, 31));

function properties(title: string): WriteOptions["properties"] {
  return { title, creator: "Cordonbook", lastModifiedBy: "Cordonbook", created: MADE, modified: MADE };
}
