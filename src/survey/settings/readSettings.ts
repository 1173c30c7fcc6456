import { isBlank, type CellValue } from "../sheets/cell";
import { isSameFigure } from "./setting";
import {
  settingNamed,
  settingUnit,
  settingValues,
  type Setting,
  type SettingId,
  type SettingValues,
} from "./settings";
import { CELL, type SettingProblem, type SettingRow, type SurveyTable } from "../season/season";
import { unitNamed } from "../sheets/unit";
import { isSameChoice, wordKey } from "../sheets/words";

/** A value in the setting's own unit, or why the default must stay in force. */
export type Taken =
  | { value: number | string }
  | { reason: Exclude<SettingProblem["reason"], "unknown" | "twice">; expected: string };

/**
 * The figures in force: those of the Settings sheets where they can be used, the defaults for all others. A blank
 * value keeps the default. A value in another unit of the same kind is converted. The first row of a setting counts;
 * another row is a problem within the same sheet, and in another sheet (several files as one farm each have their own)
 * where its value is another one.
 */
export function readSettings(tables: readonly SurveyTable[]): {
  settings: SettingValues;
  problems: SettingProblem[];
} {
  const written = new Map<SettingId, number | string>();
  const problems: SettingProblem[] = [];
  const inForce = new Map<SettingId, SettingRow>();
  for (const table of tables) {
    const names = table.column("setting");
    const values = table.column("value");
    if (!names || !values) continue;
    const units = table.column("unit");
    for (let i = 0; i < table.rowCount; i++) {
      const name = names.raw.at(i);
      if (names.states[i] === CELL.moved || isBlank(name) || typeof name === "object") continue;
      const setting = settingNamed(String(name));
      const place = { sheet: table.sheet, sheetRow: table.sheetRow(i), setting: String(name).trim() };
      const at = (column: typeof names) => ({ sheetColumn: column.sheetColumn, header: column.header });
      if (!setting) {
        problems.push({ ...place, ...at(names), reason: "unknown", value: name, expected: "" });
        continue;
      }
      const value = values.raw.at(i);
      if (isBlank(value)) continue;
      const taken = takeValue(setting, value, units?.raw.at(i) ?? null);
      if ("reason" in taken) {
        problems.push({ ...place, ...at(values), value, ...taken });
        continue;
      }
      const unit = isBlank(units?.raw.at(i)) ? setting.unit : String(units!.raw.at(i)).trim();
      const first = inForce.get(setting.id);
      if (!first) {
        inForce.set(setting.id, { sheet: table.sheet, sheetRow: table.sheetRow(i), value, unit });
        written.set(setting.id, taken.value);
      } else if (first.sheet === table.sheet || !isSameFigure(written.get(setting.id)!, taken.value))
        problems.push({ ...place, ...at(names), reason: "twice", value, expected: "", unit, first });
    }
  }
  return { settings: settingValues(written), problems };
}

export function takeValue(setting: Setting, value: CellValue, unit: CellValue): Taken {
  if (setting.kind === "oneOf") {
    const choice = setting.choices.find((word) => isSameChoice(word, String(value)));
    return choice === undefined
      ? { reason: "notAChoice", expected: setting.choices.join(", ") }
      : { value: choice };
  }
  if (setting.kind === "words")
    return (typeof value === "string" || typeof value === "number") &&
      (setting.forms?.understands(String(value)) ?? true)
      ? { value: String(value).trim() }
      : { reason: "notAChoice", expected: setting.forms?.written.join(", ") ?? "" };
  if (typeof value !== "number" || !Number.isFinite(value))
    return { reason: "notANumber", expected: isBlank(unit) ? setting.unit : String(unit).trim() };
  const factor = unitFactor(setting, unit);
  if (factor === undefined) return { reason: "wrongUnit", expected: unitsOf(setting) };
  const own = value * factor;
  if (!(own >= setting.least && own <= setting.most)) {
    const limit = (own: number) => Number((own / factor).toPrecision(12));
    return { reason: "outside", expected: `${limit(setting.least)} – ${limit(setting.most)}` };
  }
  return { value: own };
}

/** The setting's unit, and what stands for it in a metric workbook. */
export const unitsOf = (setting: Setting): string =>
  [...new Set([setting.unit, settingUnit(setting, "metric")])].join(", ");

/** 1 when the sheet's unit is the setting's or none that we know; undefined when it measures something else. */
export function unitFactor(setting: Setting, written: CellValue): number | undefined {
  if (isBlank(written) || wordKey(String(written)) === wordKey(setting.unit)) return 1;
  const own = unitNamed(setting.unit);
  if (!own) return 1;
  const other = unitNamed(String(written));
  return other?.dimension === own.dimension ? other.perUnit / own.perUnit : undefined;
}
