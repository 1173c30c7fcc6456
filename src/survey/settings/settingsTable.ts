import { SOURCES, type SourceId } from "../../domain/sources";
import { LANGUAGES, type Language } from "../../texts/language";
import { isBlank, type CellValue } from "../sheets/cell";
import { plainHeader } from "../sheets/column";
import { findTable } from "../reading/findTable";
import { takeValue, type Taken } from "./readSettings";
import { settingNamed, type Setting } from "./settings";
import type { SheetArea } from "../reading/sheetArea";
import { SHEETS } from "../sheets/sheets";

/** One row of a Settings table as it stands in the sheet. */
export interface SettingEntry {
  /** Name as written. */
  readonly name: string;
  /** The setting of that name; undefined for a row of the farm's own. */
  readonly setting: Setting | undefined;
  readonly value: CellValue;
  readonly unit: CellValue;
  /** What the value comes to in the setting's own unit, or why it cannot be used; undefined when it is blank. */
  readonly taken: Taken | undefined;
  readonly changedBy: string;
  /** Spreadsheet serial; undefined where no day was written. */
  readonly changedOn: number | undefined;
  /** Row of the sheet, the first is 1. */
  readonly sheetRow: number;
}

/** A Settings table: where it stands and what it holds. */
export interface SettingsTable {
  readonly area: SheetArea;
  readonly headerRow: number;
  /** Sheet column by column id, 1 is A. */
  readonly columns: ReadonlyMap<string, number>;
  /** Language of its headers. */
  readonly language: Language;
  readonly entries: readonly SettingEntry[];
}

/** A cell to write, with what stands there now, for a preview and an exact undo. */
export interface SettingCell {
  readonly row: number;
  readonly column: number;
  readonly before: CellValue;
  readonly value: string | number;
}

/** How a setting's source is named on a sheet: "Cornell 2014", or "ours" where nothing was published. */
export const sourceName = ({ source }: Setting): string =>
  source in SOURCES ? SOURCES[source as SourceId].name : source;

/**
 * Finds and reads the Settings table of a sheet, rows of the farm's own included; undefined when there is none.
 *
 * @example
 * settingsTable({ sheet: "Settings", firstRow: 1, firstColumn: 1, values: [["Setting", "Value"], ["Spur spacing", 5]], formulaAt: () => null }).entries[0].taken // { value: 5 }
 */
export function settingsTable(area: SheetArea): SettingsTable | undefined {
  const found = findTable(area);
  if (found?.shape.id !== "settings") return undefined;
  const positions = new Map([...found.columns].map(([column, position]) => [column.id, position]));
  if (!positions.has("setting") || !positions.has("value")) return undefined;
  const rows = area.values.slice(found.headerIndex + 1);
  const first = area.firstRow + found.headerIndex + 1;
  return {
    area,
    headerRow: area.firstRow + found.headerIndex,
    columns: new Map([...positions].map(([id, position]) => [id, area.firstColumn + position])),
    language: languageOfHeader(area.values[found.headerIndex][positions.get("setting")!]),
    entries: rows.flatMap((cells, index) => entryOf(cells, positions, first + index) ?? []),
  };
}

/** Shows what a cell of the table's sheet holds now; blank outside the filled part. */
export function cellAt(area: SheetArea, row: number, column: number): CellValue {
  return area.values[row - area.firstRow]?.[column - area.firstColumn] ?? null;
}

function entryOf(
  cells: readonly CellValue[],
  positions: ReadonlyMap<string, number>,
  sheetRow: number,
): SettingEntry | undefined {
  const cell = (id: string) => cells[positions.get(id) ?? -1] ?? null;
  const name = cell("setting");
  if (isBlank(name) || typeof name === "object") return undefined;
  const setting = settingNamed(String(name));
  const value = cell("value");
  const changedOn = cell("changedOn");
  const changedBy = cell("changedBy");
  return {
    name: String(name).trim(),
    setting,
    value,
    unit: cell("unit"),
    taken: setting && !isBlank(value) ? takeValue(setting, value, cell("unit")) : undefined,
    changedBy: isBlank(changedBy) || typeof changedBy === "object" ? "" : String(changedBy).trim(),
    changedOn: typeof changedOn === "number" ? changedOn : undefined,
    sheetRow,
  };
}

function languageOfHeader(header: CellValue): Language {
  const column = SHEETS.settings.columns.find(({ id }) => id === "setting")!;
  const plain = plainHeader(String(header));
  return LANGUAGES.find((language) => plainHeader(column.header[language]) === plain) ?? "en";
}
