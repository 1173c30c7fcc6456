import { areasOfAddress } from "../../../src/workbook/address";
import type { ExcelRun } from "../../../src/workbook/excel/excelRun";
import { ExcelWorkbook, type SupportsSet } from "../../../src/workbook/excel/excelWorkbook";
import type { MergedCells, StartSheets } from "../contract";
import { ExcelHost } from "./excelHost";
import type { ExcelProfile } from "./excelProfiles";

/** A workbook that goes through the real proxies to this host, as one person of possibly several. */
export function excelWorkbookOn(host: ExcelHost, who?: string): ExcelWorkbook {
  const { run, supports } = excelOn(host, who);
  return new ExcelWorkbook(run, supports);
}

/** What a workbook is made of: one person's way to run a batch, and what their Excel supports. */
export function excelOn(host: ExcelHost, who = "somebody"): { run: ExcelRun; supports: SupportsSet } {
  const { excel, office } = host.person(who);
  return {
    run: (batch, options) => {
      const run = () => excel.run({ ...options }, batch);
      return options?.mergeUndoGroup ? host.merged(who, run) : run();
    },
    supports: (set, version) => office.context.requirements.isSetSupported(set, version),
  };
}

/** A host with these sheets. */
export function hostWith(sheets: StartSheets, profile?: ExcelProfile, merged: MergedCells = {}): ExcelHost {
  const host = new ExcelHost(profile);
  for (const [name, rows] of Object.entries(sheets)) host.addSheet(name, rows);
  for (const [name, addresses] of Object.entries(merged))
    for (const { firstRow, firstColumn, lastRow, lastColumn } of addresses.flatMap(areasOfAddress)) {
      const sheet = host.book.sheet(name);
      sheet.merge({
        sheet,
        row: firstRow - 1,
        column: firstColumn - 1,
        rows: lastRow - firstRow + 1,
        columns: lastColumn - firstColumn + 1,
      });
    }
  return host;
}
