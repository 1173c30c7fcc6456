import { cellName } from "../address";
import type { OwnSheetLayout } from "../ownSheet";
import { SHADE_BANDS, shadeCondition, shadedRuns } from "../shadeBands";
import type { OwnSheet } from "../surveyWorkbook";

/**
 * Shades the share columns of an own sheet by conditional formats, so that the shade follows the value and lives on
 * where the add-in is not installed. Formats that the sheet had before are taken off first; nothing is sent yet.
 */
export function shadeExcelColumns(
  worksheet: Excel.Worksheet,
  content: OwnSheet,
  layout: OwnSheetLayout,
): void {
  const runs = shadedRuns(content.columns);
  const rows = layout.values.length - layout.headerRow;
  if (runs.length === 0 || rows === 0) return;
  worksheet.getRange().conditionalFormats.clearAll();
  for (const { first, last } of runs) {
    const area = worksheet.getRangeByIndexes(layout.headerRow, first, rows, last - first + 1);
    const firstCell = cellName(layout.headerRow + 1, first + 1);
    for (const band of SHADE_BANDS) {
      const format = area.conditionalFormats.add("Custom");
      format.custom.rule.formula = `=${shadeCondition(band, firstCell)}`;
      format.custom.format.fill.color = `#${band.fill}`;
      format.custom.format.font.color = `#${band.font}`;
      if (band.worst) format.custom.format.font.bold = true;
      format.stopIfTrue = true;
    }
  }
}
