import { isSettingsSheet } from "../../survey/reading/isSettingsSheet";
import type { HeaderMapping } from "../../survey/reading/findTable";
import { readSeason } from "../../survey/reading/readSeason";
import type { SheetArea } from "../../survey/reading/sheetArea";
import type { Season } from "../../survey/season/season";
import { runUndisturbed } from "../../workbook/actions/runUndisturbed";
import type { CellChange, SurveyWorkbook } from "../../workbook/surveyWorkbook";
import { breathe } from "../inSlices";

export interface ReadTablesOptions {
  /** A person's own column heads. */
  readonly mapping: readonly HeaderMapping[];
  readonly onProgress?: (sheet: string, done: number) => void;
  readonly signal?: AbortSignal;
}

/**
 * Reads the survey tables of a workbook, sheet by sheet; sheets that the add-in made are left out. When a colleague
 * edits one of them meanwhile, all are read again.
 *
 * @returns the survey, the areas that it was read from, and the colleagues' edits that were met
 */
export async function readTables(
  workbook: SurveyWorkbook,
  options: ReadTablesOptions,
): Promise<{ season: Season; areas: readonly SheetArea[]; metOnTheWay: readonly CellChange[] }> {
  let areas: readonly SheetArea[] = [];
  const { result, metOnTheWay } = await runUndisturbed(
    workbook,
    () => areas.map(({ sheet }) => sheet),
    async () => (areas = await readAreas(workbook, options)),
  );
  return { season: readSeason(result, { mapping: options.mapping }), areas: result, metOnTheWay };
}

async function readAreas(
  workbook: SurveyWorkbook,
  { onProgress, signal }: ReadTablesOptions,
): Promise<SheetArea[]> {
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
  return areas;
}
