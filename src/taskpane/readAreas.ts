import { isReadSheet } from "../survey/reading/isReadSheet";
import type { SheetArea } from "../survey/reading/sheetArea";
import type { SurveyWorkbook } from "../workbook/surveyWorkbook";
import { breathe } from "../workbook/breathe";

export interface ReadingOptions {
  readonly onProgress?: (sheet: string, done: number) => void;
  readonly signal?: AbortSignal;
}

/** The filled part of every sheet but those that the add-in made; of those, Settings and answers are read too. */
export async function readAreas(
  workbook: SurveyWorkbook,
  { onProgress, signal }: ReadingOptions,
): Promise<SheetArea[]> {
  const areas: SheetArea[] = [];
  const names = await workbook.sheetNames();
  for (const [index, sheet] of names.entries()) {
    signal?.throwIfAborted();
    if (!isReadSheet(sheet) && (await workbook.isOwnSheet(sheet))) continue;
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
  return areas;
}
