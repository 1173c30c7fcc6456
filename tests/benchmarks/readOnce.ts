import { readFileSync } from "node:fs";
import type { CellValue } from "../../src/survey/sheets/cell";
import type { Season } from "../../src/survey/season/season";

async function largeSeasonOf(path: string): Promise<() => Promise<Season>> {
  const { openWorkbookFile } = await import("../../src/workbook/file/openWorkbookFile");
  const { readLargeSeason } = await import("../../src/survey/reading/readLargeSeason");
  return async () => {
    const book = await openWorkbookFile(path);
    const season = await readLargeSeason(
      book.sheetNames.map((sheet) => ({ sheet, rows: () => book.rows(sheet) })),
    );
    await book.close();
    return season;
  };
}

/** How one reader reads one file; what is made is the reading itself, once its packages are loaded. */
const READERS: Readonly<Record<string, (path: string) => Promise<() => Promise<number>>>> = {
  ours: async (path) => {
    const { openWorkbookFile } = await import("../../src/workbook/file/openWorkbookFile");
    return async () => {
      const book = await openWorkbookFile(path);
      let cells = 0;
      for (const sheet of book.sheetNames)
        for await (const batch of book.rows(sheet)) for (const row of batch) cells += filled(row.values);
      await book.close();
      return cells;
    };
  },
  "ours, checked": async (path) => {
    const { checkSeason } = await import("../../src/survey/checks/checkSeason");
    const read = await largeSeasonOf(path);
    return async () => {
      let cells = 0;
      for (const step of checkSeason(await read())) if (step.finding) cells++;
      return cells;
    };
  },
  "ours, checked, with gaps": async (path) => {
    const { checkSeason } = await import("../../src/survey/checks/checkSeason");
    const { gapsOfSeason } = await import("../../src/survey/season/gapsOfSeason");
    const read = await largeSeasonOf(path);
    return async () => {
      const season = await read();
      let cells = gapsOfSeason(season).rows.length;
      for (const step of checkSeason(season)) if (step.finding) cells++;
      return cells;
    };
  },
  hucre: async (path) => {
    const { readXlsx } = await import("hucre");
    return async () => {
      const book = await readXlsx(readFileSync(path));
      return book.sheets.reduce((sum, sheet) => sum + sheet.rows.reduce((n, row) => n + filled(row), 0), 0);
    };
  },
  "@e965/xlsx": async (path) => {
    const XLSX = await import("@e965/xlsx");
    return async () => {
      const book = XLSX.read(readFileSync(path), { dense: true });
      let cells = 0;
      for (const name of book.SheetNames)
        for (const row of XLSX.utils.sheet_to_json<CellValue[]>(book.Sheets[name], { header: 1 }))
          cells += filled(row);
      return cells;
    };
  },
  exceljs: async (path) => {
    const { default: ExcelJS } = await import("exceljs");
    return async () => {
      const book = new ExcelJS.Workbook();
      await book.xlsx.readFile(path);
      let cells = 0;
      book.eachSheet((sheet) => sheet.eachRow((row) => (cells += row.actualCellCount)));
      return cells;
    };
  },
  "Papa Parse": async (path) => {
    const { default: Papa } = await import("papaparse");
    return async () => {
      const { data } = Papa.parse<string[]>(readFileSync(path, "utf8"), { dynamicTyping: true });
      return data.reduce((sum, row) => sum + filled(row), 0);
    };
  },
  "exceljs csv": async (path) => {
    const { default: ExcelJS } = await import("exceljs");
    return async () => {
      let cells = 0;
      const sheet = await new ExcelJS.Workbook().csv.readFile(path);
      sheet.eachRow((row) => (cells += row.actualCellCount));
      return cells;
    };
  },
  "exceljs streaming": async (path) => {
    const { default: ExcelJS } = await import("exceljs");
    return async () => {
      let cells = 0;
      const options = { sharedStrings: "cache", worksheets: "emit" } as const;
      for await (const sheet of new ExcelJS.stream.xlsx.WorkbookReader(path, options))
        for await (const row of sheet) cells += row.actualCellCount;
      return cells;
    };
  },
};

/** Cells of a row that hold something. */
function filled(row: readonly unknown[]): number {
  let cells = 0;
  for (const value of row) if (value !== null && value !== undefined && value !== "") cells++;
  return cells;
}

/**
 * Reads one file with one reader and prints seconds, peak memory and cells seen as JSON.
 *
 * @param first a file that is read before, so that the machine code of everything is there; nothing where it is not given
 */
async function readOnce(reader: string, path: string, first?: string): Promise<void> {
  if (first) await (await READERS[reader](first))();
  const read = await READERS[reader](path);
  let peak = 0;
  const look = () => (peak = Math.max(peak, process.memoryUsage.rss()));
  const looking = setInterval(look, 10);
  const start = performance.now();
  const cells = await read();
  const seconds = (performance.now() - start) / 1000;
  clearInterval(looking);
  look();
  const most = process.resourceUsage().maxRSS * 1024;
  console.log(JSON.stringify({ seconds, peak: Math.max(peak, most), cells }));
}

void readOnce(process.argv[2], process.argv[3], process.argv[4]);
