import type { WriteOptions } from "hucre";
import type { UnitSystem } from "../../src/domain/units";
import type { Language } from "../../src/texts/language";
import { OWN_SHEET_NAME } from "../../src/workbook/ownSheet";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { Farm } from "./farm";
import { figuresSheet } from "./figuresSheet";
import { FARM_NAME, inventedFarm, serialDay } from "./inventedFarm";
import { noticeSheet } from "./noticeSheet";
import { plantMistakes, type PlantedMistake } from "./mistakes/plantMistakes";
import { randomSource } from "./randomSource";
import { seasonOf } from "./season";
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
  const sheets = seasonOf(farm, serialDay(2026, 6, 30));
  const mistakes = plantMistakes(sheets);
  const ownColumns = sheets.vines.columns.slice(SHEETS.vines.columns.length);
  const lines = [
    FARM_NAME,
    INVENTED,
    "Winter 2025-26, the same season as the clean one with the mistakes below planted on purpose.",
  ];
  return { workbook: season(farm, lines, mistakes, ownColumns), mistakes };
}

/** What the first sheet of an empty season says. */
const START: Readonly<Record<Language, { name: string; lines: readonly string[] }>> = {
  en: {
    name: "Start here",
    lines: [
      "A season to fill in",
      "Lay out the blocks on the pane's page Season, print the count sheets for the crew, then type the counts in.",
      "Headers may stand in any order; units stand in the headers. Settings holds every figure that changes a result.",
    ],
  },
  es: {
    name: "Empezar aquí",
    lines: [
      "Una temporada por llenar",
      "Prepare los cuarteles en la página Temporada del panel, imprima las hojas de conteo para la cuadrilla y escriba después los conteos.",
      "Los encabezados pueden ir en cualquier orden; las unidades están en ellos. Ajustes guarda cada cifra que cambia un resultado.",
    ],
  },
  fr: {
    name: "Commencer ici",
    lines: [
      "Une saison à remplir",
      "Préparez les parcelles à la page Saison du volet, imprimez les feuilles de comptage pour l'équipe, puis saisissez les comptages.",
      "Les en-têtes peuvent être dans n'importe quel ordre ; les unités y figurent. Réglages contient chaque chiffre qui change un résultat.",
    ],
  },
};

/** Sheets to start a season from: headers, accepted words, Settings, and ruled lines to print. */
export function emptySeason(units: UnitSystem = "US", language: Language = "en"): WriteOptions {
  const options = { farm: "", blankLines: 32, units, language };
  const { name, lines } = START[language];
  const settings = settingRows(language, units);
  return {
    sheets: [
      noticeSheet(name, lines),
      surveySheet(SHEETS.blocks, [], { ...options, blankLines: 12 }),
      surveySheet(SHEETS.cordons, [], { ...options, blankLines: 96 }),
      surveySheet(SHEETS.vines, [], { ...options, blankLines: 64 }),
      surveySheet(SHEETS.budCuts, [], options),
      surveySheet(SHEETS.harvest, [], { ...options, blankLines: 12 }),
      settingsSheet(settings, { farm: "", language }),
    ],
    namedRanges: [...settingNames(settings, language), ...ownSheets(name)],
    properties: properties(lines[0]),
    activeSheet: 0,
  };
}

function season(
  farm: Farm,
  lines: readonly string[],
  mistakes: readonly PlantedMistake[] = [],
  ownColumns: readonly string[] = [],
): WriteOptions {
  const options = { farm: FARM_NAME };
  return {
    sheets: [
      noticeSheet("About this season", lines, mistakes),
      surveySheet(SHEETS.blocks, farm.blocks, options),
      surveySheet(SHEETS.cordons, farm.cordons, options),
      surveySheet(SHEETS.vines, farm.vines, { ...options, ownColumns }),
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
