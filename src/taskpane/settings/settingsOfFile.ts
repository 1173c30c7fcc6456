import { HEADER_SEARCH_ROWS } from "../../survey/reading/findTable";
import { settingsTable, type SettingsTable } from "../../survey/settings/settingsTable";
import { openWorkbookBytes } from "../../workbook/file/openWorkbook";

/**
 * The Settings table of a workbook or csv file that a person chose; undefined when none of its sheets has one. The file
 * is only read, and only in memory.
 *
 * @throws WorkbookProblem when the file cannot be read
 */
export async function settingsOfFile(file: File): Promise<SettingsTable | undefined> {
  const opened = await openWorkbookBytes(file.name, new Uint8Array(await file.arrayBuffer()));
  try {
    for (const sheet of opened.sheetNames) {
      const top = await opened.readSheet(sheet, { rows: { first: 1, count: HEADER_SEARCH_ROWS } });
      if (settingsTable(top) !== undefined) return settingsTable(await opened.readSheet(sheet));
    }
    return undefined;
  } finally {
    await opened.close();
  }
}
