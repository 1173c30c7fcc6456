import type { ChangedCell } from "../../workbook/actions/changeCells";
import type { SettingDifference } from "../../survey/settings/settingDifferences";
import type { SettingId } from "../../survey/settings/settings";
import type { SettingsTable } from "../../survey/settings/settingsTable";
import type { SheetArea } from "../../survey/reading/sheetArea";
import type { Season } from "../../survey/season/season";
import type { Progress } from "../progress";
import type { MovedResults } from "./movedResults";

/** The workbook as the settings page read it. */
export interface ReadSettings {
  readonly areas: readonly SheetArea[];
  readonly season: Season;
  /** The table of settings, where the workbook has one. */
  readonly table?: SettingsTable;
}

/** A figure that somebody is about to change. */
export interface SettingEdit {
  readonly id: SettingId;
  /** As typed. */
  readonly typed: string;
  /** Why it cannot be taken, as a sentence. */
  readonly problem?: string;
  /** What would move, once that was asked for. */
  readonly moved?: MovedResults;
}

/** Another workbook whose figures are compared with this one's. */
export interface OtherWorkbook {
  /** Name of its file. */
  readonly file: string;
  readonly differences: readonly SettingDifference[];
  /** Settings that are to be copied, by id. */
  readonly ticked: ReadonlySet<SettingId>;
  /** Why nothing was copied, as a sentence. */
  readonly problem?: string;
  /** What would move, once that was asked for. */
  readonly moved?: MovedResults;
}

declare module "../pageStates" {
  interface PageStates {
    readonly settings: SettingsState;
  }
}

/** The settings page as data. */
export interface SettingsState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly read?: ReadSettings;
  readonly search: string;
  /** Groups that are opened. */
  readonly open: ReadonlySet<string>;
  readonly edit?: SettingEdit;
  readonly other?: OtherWorkbook;
  /** Cells that the last copy or upgrade changed. */
  readonly undo?: readonly ChangedCell[];
  /** Who changes figures. */
  readonly by: string;
}

export const FIRST_SETTINGS_STATE: SettingsState = { search: "", open: new Set(), by: "" };
