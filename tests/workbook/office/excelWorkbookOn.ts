import { ExcelWorkbook } from "../../../src/workbook/excel/excelWorkbook";
import type { StartSheets } from "../contract";
import { ExcelHost } from "./excelHost";

/** A workbook that goes through the real proxies to this host, as one person of possibly several. */
export function excelWorkbookOn(host: ExcelHost, who?: string): ExcelWorkbook {
  const { excel, office } = host.person(who);
  return new ExcelWorkbook(
    (batch, options) => excel.run({ ...options }, batch),
    (set, version) => office.context.requirements.isSetSupported(set, version),
  );
}

/** A host with these sheets. */
export function hostWith(sheets: StartSheets, excelApi?: number): ExcelHost {
  const host = new ExcelHost(excelApi);
  for (const [name, rows] of Object.entries(sheets)) host.addSheet(name, rows);
  return host;
}
