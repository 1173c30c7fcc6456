import { cellName } from "../../survey/sheets/cellName";
import type { FarmFigure } from "../../survey/crop/farmFigures";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { SHEETS } from "../../survey/sheets/sheets";
import type { SettingId } from "../../survey/settings/settings";
import type { SettingCell } from "../../survey/settings/settingsTable";
import { withCells } from "../../survey/settings/upgradeSettings";
import { FARM_FIGURE_TEXTS } from "../../texts/farmFigures";
import { say, type Language } from "../../texts/language";
import type { CellChangeWanted, CellContent } from "../../workbook/actions/changeCells";
import { planChange } from "../settings/changeSetting";
import type { ReadSettings } from "../settings/settingsState";

/** The cells that put a figure of the farm's own in force, and the survey as it would then be. */
export interface FigurePlan {
  readonly areas: readonly SheetArea[];
  readonly cells: readonly CellChangeWanted[];
  /** What those cells held when they were read. */
  readonly expected: readonly CellContent[];
  /** The workbook has no Settings table yet; it is made first. */
  readonly needsTable: boolean;
  /** Where the figure goes, in words: "Settings", "Blocks L4, L5". */
  readonly where: string;
}

/**
 * Plans to put a proposed figure in force, without writing anything: a row of the Settings sheet, or its column of the
 * Blocks sheet for every block of the cultivar. Three digits are written.
 *
 * @param by name or initials of the person
 * @param on spreadsheet serial of the day
 * @returns the plan, or a sentence why the figure cannot be taken
 */
export function planFigure(
  read: ReadSettings,
  figure: FarmFigure,
  by: string,
  on: number,
  language: Language,
): FigurePlan | string {
  return "setting" in figure.writeTo
    ? inSettings(read, figure, figure.writeTo.setting, by, on, language)
    : inBlocks(read, figure, figure.writeTo.column, language);
}

/** A figure as it is written: three digits. */
function threeDigitsOf(value: number): number {
  return Number(value.toPrecision(3));
}

function inSettings(
  read: ReadSettings,
  { proposed }: FarmFigure,
  id: SettingId,
  by: string,
  on: number,
  language: Language,
): FigurePlan | string {
  const plan = planChange(read, id, String(threeDigitsOf(proposed.value)), by, on, language);
  if (typeof plan === "string") return plan;
  const { area } = plan.table;
  return {
    areas: plan.areas,
    cells: plan.cells.map(({ row, column, value }) => ({
      sheet: area.sheet,
      row,
      column,
      content: { value },
    })),
    expected: plan.cells.map((cell) => contentBefore(area, cell)),
    needsTable: read.table === undefined,
    where: area.sheet,
  };
}

function inBlocks(
  { season, areas }: ReadSettings,
  { blocks, proposed }: FarmFigure,
  id: string,
  language: Language,
): FigurePlan | string {
  const wanted = new Set(blocks.map((block) => block.toLowerCase()));
  const changes = season.tables("blocks").flatMap((table) => {
    const names = table.column("block");
    const column = table.column(id);
    if (!names || !column) return [];
    return Array.from({ length: table.rowCount }, (_, index) => index)
      .filter((index) => names.codes[index] >= 0)
      .filter((index) => wanted.has(season.words.wordOf(names.codes[index]).toLowerCase()))
      .map((index) => ({
        sheet: table.sheet,
        formula: table.formulaAt(index, column),
        row: table.sheetRow(index),
        column: column.sheetColumn,
        before: column.raw.at(index) ?? null,
        value: threeDigitsOf(proposed.value / column.perUnit),
      }));
  });
  const shape = SHEETS.blocks;
  const header = shape.columns.find((column) => column.id === id)?.header[language] ?? id;
  if (changes.length === 0)
    return say(FARM_FIGURE_TEXTS.noColumn, language, { sheet: shape.name[language], header });
  const withFormula = changes.find(({ formula }) => formula !== null);
  if (withFormula)
    return say(FARM_FIGURE_TEXTS.formula, language, {
      where: `${withFormula.sheet} ${cellName(withFormula.row, withFormula.column)}`,
    });
  const [{ sheet }] = changes;
  return {
    areas: areas.map((area) =>
      withCells(
        area,
        changes.filter((cell) => cell.sheet === area.sheet),
      ),
    ),
    cells: changes.map(({ sheet, row, column, value }) => ({ sheet, row, column, content: { value } })),
    expected: changes.map(({ before }) => ({ value: before })),
    needsTable: false,
    where: `${sheet} ${changes.map(({ row, column }) => cellName(row, column)).join(", ")}`,
  };
}

function contentBefore(area: SheetArea, { row, column, before }: SettingCell): CellContent {
  const formula = area.formulaAt(row - area.firstRow, column - area.firstColumn);
  return formula === null ? { value: before } : { formula };
}
