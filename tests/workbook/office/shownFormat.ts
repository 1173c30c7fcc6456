import { holdsCell, type HostSheet, type HostValue } from "./hostBook";

/** What conditional formats show in a cell; what none of them sets is left out. */
export interface ShownFormat {
  fill?: string;
  font?: string;
  bold?: boolean;
}

/**
 * What a cell shows by its sheet's conditional formats: they are asked in the order of their priority, the first that
 * sets a property has it, and one with stopIfTrue ends the asking
 * (https://learn.microsoft.com/javascript/api/excel/excel.conditionalformat#excel-excel-conditionalformat-priority-member
 * and #excel-excel-conditionalformat-stopiftrue-member). A rule is relative to the first cell of its first area.
 */
export function shownFormat(sheet: HostSheet, row: number, column: number): ShownFormat {
  const shown: ShownFormat = {};
  for (const { areas, formula, fill, font, bold, stopIfTrue } of sheet.conditionalFormats) {
    if (!areas.some((area) => holdsCell(area, row, column))) continue;
    const [{ row: top, column: left }] = areas;
    const valueAt = (r: number, c: number) => sheet.cell(r + row - top, c + column - left).value;
    if (!holds(formula.slice(1), valueAt)) continue;
    if (fill) shown.fill ??= fill;
    if (font) shown.font ??= font;
    if (bold) shown.bold ??= bold;
    if (stopIfTrue) break;
  }
  return shown;
}

type ValueAt = (row: number, column: number) => HostValue;

/** The rules that the product writes: AND(...) of ISNUMBER and comparisons, and N("text")=0. Any other fails the test. */
function holds(rule: string, valueAt: ValueAt): boolean {
  const all = /^AND\((.*)\)$/.exec(rule);
  if (all) return all[1].split(",").every((part) => holds(part, valueAt));
  if (/^N\("[^"]*"\)=0$/.test(rule)) return true;
  const number = /^ISNUMBER\(([A-Z]+)(\d+)\)$/.exec(rule);
  if (number) return typeof valueOf(number[1], number[2], valueAt) === "number";
  const compared = /^([A-Z]+)(\d+)(>=|<)([\d.]+)$/.exec(rule);
  if (!compared) throw new Error(`No rule that the stand-in for Excel can judge: ${rule}`);
  const value = valueOf(compared[1], compared[2], valueAt);
  // In a comparison of Excel text is larger than every number, and a blank is 0.
  const number0 = typeof value === "number" ? value : value === "" ? 0 : Infinity;
  return compared[3] === ">=" ? number0 >= Number(compared[4]) : number0 < Number(compared[4]);
}

function valueOf(letters: string, row: string, valueAt: ValueAt): HostValue {
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return valueAt(Number(row) - 1, column);
}
