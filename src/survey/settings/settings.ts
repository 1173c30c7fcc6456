import type { UnitSystem } from "../../domain/units";
import { LANGUAGES } from "../../texts/language";
import { unitNamed } from "../sheets/unit";
import { wordKey } from "../sheets/words";
import { BUDGET_SETTINGS } from "./budget";
import { CHECK_SETTINGS } from "./checks";
import { CHOICE_SETTINGS } from "./choice";
import { OUTLOOK_SETTINGS } from "./outlook";
import { PLAN_SETTINGS } from "./plan";
import { RENEWAL_SETTINGS } from "./renewal";
import type { SettingRow, ValueOf } from "./setting";
import { WORK_SETTINGS } from "./work";

const ROWS = {
  ...BUDGET_SETTINGS,
  ...CHOICE_SETTINGS,
  ...RENEWAL_SETTINGS,
  ...OUTLOOK_SETTINGS,
  ...WORK_SETTINGS,
  ...PLAN_SETTINGS,
  ...CHECK_SETTINGS,
} satisfies Readonly<Record<string, SettingRow>>;

/** How code asks for a setting: "spurSpacing". */
export type SettingId = keyof typeof ROWS;

/** A figure or word that changes a result: a row of the Settings sheet. */
export type Setting = SettingRow & { readonly id: SettingId };

/** The values in force, metric: the sheet's where it has them, else the sources'. */
export type SettingValues = { readonly [Id in SettingId]: ValueOf<(typeof ROWS)[Id]> };

const listed = (rows: Readonly<Record<string, SettingRow>>): readonly Setting[] =>
  Object.entries(rows).map(([id, row]) => ({ id: id as SettingId, ...row }));

/** Every figure that changes a result, in the order of the Settings sheet. */
export const SETTINGS: readonly Setting[] = listed(ROWS);

const BY_ID = new Map(SETTINGS.map((setting) => [setting.id, setting]));

const areaOf = (rows: Readonly<Record<string, SettingRow>>): readonly Setting[] =>
  Object.keys(rows).map((id) => BY_ID.get(id as SettingId)!);

/** The same, by area. */
export const SETTINGS_BY_AREA = {
  budget: areaOf(BUDGET_SETTINGS),
  choice: areaOf(CHOICE_SETTINGS),
  renewal: areaOf(RENEWAL_SETTINGS),
  outlook: areaOf(OUTLOOK_SETTINGS),
  work: areaOf(WORK_SETTINGS),
  plan: areaOf(PLAN_SETTINGS),
  checks: areaOf(CHECK_SETTINGS),
} as const;

/**
 * The row of a setting.
 *
 * @example
 * settingOf("spurSpacing").name.en // "Spur spacing"
 */
export const settingOf = (id: SettingId): Setting => BY_ID.get(id)!;

/** Settings that were called otherwise in an earlier version, by their old name; read under both. */
export const FORMER_NAMES: Readonly<Record<string, SettingId>> = {};

const BY_NAME = new Map([
  ...Object.entries(FORMER_NAMES).map(([name, id]) => [wordKey(name), settingOf(id)] as const),
  ...SETTINGS.flatMap((setting) => LANGUAGES.map((of) => [wordKey(setting.name[of]), setting] as const)),
]);

/** The setting of that name on a sheet, in any language, upper or lower case, also a name of an earlier version. */
export const settingNamed = (name: string): Setting | undefined => BY_NAME.get(wordKey(name));

/** The values in force for those written in the sheet's own units, the sources' for all others. */
export function settingValues(written: ReadonlyMap<SettingId, number | string>): SettingValues {
  return Object.fromEntries(
    SETTINGS.map((setting) => [setting.id, metric(setting, written.get(setting.id) ?? setting.value)]),
  ) as unknown as SettingValues;
}

/**
 * The values in force before a farm changes any.
 *
 * @example
 * defaultSettings().daysAWeek // 5
 */
export const defaultSettings = (): SettingValues => settingValues(new Map());

/**
 * A value in force as the sheet shows it, in the setting's own unit.
 *
 * @example
 * shownValue("spurSpacing", defaultSettings()) // 4
 */
export function shownValue(id: SettingId, settings: SettingValues): number | string {
  const value: number | string = settings[id];
  return typeof value === "number" ? Number((value / metricPerUnit(settingOf(id))).toPrecision(12)) : value;
}

/** Units of the settings, and what stands for them in a metric workbook. */
const METRIC_UNIT: Readonly<Record<string, string>> = {
  in: "cm",
  ft: "m",
  lb: "kg",
  "nodes/ft": "nodes/m",
  "shoots/ft": "shoots/m",
};

/**
 * The unit in which a workbook of that system has a setting.
 *
 * @example
 * settingUnit(settingOf("spurSpacing"), "metric") // "cm"
 */
export const settingUnit = ({ unit }: Setting, units: UnitSystem): string =>
  units === "metric" ? (METRIC_UNIT[unit] ?? unit) : unit;

/**
 * A figure in the setting's own unit, in that of a workbook of that system; words stay.
 *
 * @example
 * settingIn(settingOf("spurSpacing"), 4, "metric") // 10.16
 */
export function settingIn(setting: Setting, value: number | string, units: UnitSystem): number | string {
  const unit = unitNamed(settingUnit(setting, units));
  return typeof value === "number" && unit !== undefined
    ? Number(((value * metricPerUnit(setting)) / unit.perUnit).toPrecision(12))
    : value;
}

const metric = (setting: Setting, value: number | string) =>
  typeof value === "number" ? value * metricPerUnit(setting) : value;

const metricPerUnit = ({ unit }: Setting): number => unitNamed(unit)?.perUnit ?? 1;
