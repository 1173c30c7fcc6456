import { emptySeasonFile, SAMPLE_SEASON_FILE } from "../texts/emptySeasonFile";
import type { Language } from "../texts/language";

/** Draws the pane over Excel's workbook. What it is made of stands in this script and begins once the texts are there. */
export async function openPane(element: HTMLElement, language: Language): Promise<void> {
  const [{ mountPane }, { ExcelWorkbook }, { excelExtras }] = await Promise.all([
    import(/* webpackMode: "eager" */ "./mountPane"),
    import(/* webpackMode: "eager" */ "../workbook/excel/excelWorkbook"),
    import(/* webpackMode: "eager" */ "../workbook/excel/excelExtras"),
  ]);
  const excel = excelExtras();
  mountPane(element, new ExcelWorkbook(), {
    language,
    excel,
    ways: {
      sample: () => excel.openSupplied(SAMPLE_SEASON_FILE),
      begin: (units, of) => excel.openSupplied(emptySeasonFile(units, of)),
    },
  });
}
