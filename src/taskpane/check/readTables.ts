import { isSettingsSheet } from "../../survey/isSettingsSheet";
import type { HeaderMapping } from "../../survey/findTable";
import { readSurvey } from "../../survey/readSurvey";
import type { SheetArea } from "../../survey/sheetArea";
import type { Survey } from "../../survey/survey";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";
import { breathe } from "../inSlices";

export interface ReadTablesOptions {
  /** A person's own column heads. */
  readonly mapping: readonly HeaderMapping[];
  readonly onProgress?: (sheet: string, done: number) => void;
  readonly signal?: AbortSignal;
}

/**
 * Reads the survey tables of a workbook, sheet by sheet; sheets of results that the add-in made are left out.
 *
 * @returns the survey, and the areas that it was read from
 */
export async function readTables(
  workbook: SurveyWorkbook,
  { mapping, onProgress, signal }: ReadTablesOptions,
): Promise<{ survey: Survey; areas: readonly SheetArea[] }> {
  const areas: SheetArea[] = [];
  const names = await workbook.sheetNames();
  for (const [index, sheet] of names.entries()) {
    signal?.throwIfAborted();
    if (!isSettingsSheet(sheet) && (await workbook.isOwnSheet(sheet))) continue;
    onProgress?.(sheet, index / names.length);
    areas.push(
      await workbook.readSheet(sheet, {
        signal,
        onProgress: (done) => onProgress?.(sheet, (index + done) / names.length),
      }),
    );
    await breathe();
  }
  signal?.throwIfAborted();
  return { survey: readSurvey(areas, { mapping }), areas };
}
