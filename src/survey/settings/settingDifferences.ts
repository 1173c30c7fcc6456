import { isSameFigure } from "./setting";
import { SETTINGS, type SettingId } from "./settings";
import type { SettingEntry, SettingsTable } from "./settingsTable";

/** A setting's figure in one workbook. */
export interface SettingSide {
  readonly value: number | string;
  /** "sheet": the table has it. "default": the table has no usable value, so the source's is in force. */
  readonly from: "sheet" | "default";
  readonly changedBy: string;
  readonly changedOn: number | undefined;
}

/** A setting whose figures in two workbooks are not the same; values in the setting's own unit. */
export interface SettingDifference {
  readonly id: SettingId;
  readonly here: SettingSide;
  readonly there: SettingSide;
}

/**
 * Settings in which two workbooks differ by what is in force, in the order of the Settings sheet. Figures in different
 * units are compared after conversion; a workbook without a table, or without a row, has the source's figure.
 *
 * @example
 * settingDifferences(undefined, undefined) // []
 */
export function settingDifferences(
  here: SettingsTable | undefined,
  there: SettingsTable | undefined,
): readonly SettingDifference[] {
  const sideHere = sidesOf(here);
  const sideThere = sidesOf(there);
  return SETTINGS.flatMap(({ id, value }): SettingDifference[] => {
    const byDefault: SettingSide = { value, from: "default", changedBy: "", changedOn: undefined };
    const difference = {
      id,
      here: sideHere.get(id) ?? byDefault,
      there: sideThere.get(id) ?? byDefault,
    };
    return isSameFigure(difference.here.value, difference.there.value) ? [] : [difference];
  });
}

/** First usable row of each setting, as the reader takes them. */
function sidesOf(table: SettingsTable | undefined): Map<SettingId, SettingSide> {
  const sides = new Map<SettingId, SettingSide>();
  for (const entry of table?.entries ?? []) {
    const side = sideOf(entry);
    if (side && !sides.has(entry.setting!.id)) sides.set(entry.setting!.id, side);
  }
  return sides;
}

function sideOf({ setting, taken, changedBy, changedOn }: SettingEntry): SettingSide | undefined {
  if (setting === undefined || taken === undefined || !("value" in taken)) return undefined;
  return { value: taken.value, from: "sheet", changedBy, changedOn };
}
