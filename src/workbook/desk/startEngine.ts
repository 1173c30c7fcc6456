import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import {
  CalculationMode,
  UniverFormulaEnginePlugin,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import {
  UniverSheetsTablePlugin,
  UniverSheetsTablePreset,
  UniverSheetsTableUIPlugin,
} from "@univerjs/preset-sheets-table";
import { defaultTheme } from "@univerjs/themes";
import type { Language } from "../../texts/language";
import { cureLexer } from "./cureLexer";
import { cureSort } from "./cureSort";
import { PLAIN_TABLE } from "./plainTable";

/** The engine's own words for menus and function help, as src/desk/engine/words-*.ts export them. */
export type EngineWords = readonly Parameters<typeof mergeLocales>[0][];

/** The engine's own tags of the languages. */
export const LOCALES: Readonly<Record<Language, LocaleType>> = {
  en: LocaleType.EN_US,
  es: LocaleType.ES_ES,
  fr: LocaleType.FR_FR,
};

/** Formulas that are worked out before the page may draw and take input again. */
const FORMULAS_AT_ONCE = 10;

/**
 * Starts the spreadsheet engine in an element: a grid with formula bar, sheet tabs, tables and notes; no workbook yet.
 * The presets are registered one by one, because the package that would do it pulls in parts without a licence.
 */
export function startEngine(container: HTMLElement, language: Language, words: EngineWords): FUniver {
  cureLexer();
  cureSort();
  const locale = LOCALES[language];
  const univer = new Univer({
    theme: defaultTheme,
    locale,
    locales: { [locale]: mergeLocales(...words) },
    logLevel: LogLevel.WARN,
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      formulaBar: true,
      disableAutoFocus: true,
      formula: { initialFormulaComputing: CalculationMode.FORCED },
      sheets: { disableForceStringMark: true, disableForceStringAlert: true },
    }),
    UniverSheetsNotePreset(),
    UniverSheetsTablePreset(),
  ];
  const ownOptions = new Map<unknown, object>([
    [UniverFormulaEnginePlugin, { intervalCount: FORMULAS_AT_ONCE }],
    [UniverSheetsTablePlugin, { userThemes: [PLAIN_TABLE], defaultThemeIndex: 0 }],
    [UniverSheetsTableUIPlugin, { hideAnchor: true }],
  ]);
  const known = new Set<string>();
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    const [Plugin, given] = Array.isArray(plugin) ? plugin : [plugin, undefined];
    if (known.has(Plugin.pluginName)) continue;
    known.add(Plugin.pluginName);
    univer.registerPlugin(Plugin, { ...given, ...ownOptions.get(Plugin) });
  }
  return FUniver.newAPI(univer);
}
