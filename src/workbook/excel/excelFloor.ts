import type { SupportsSet } from "./excelWorkbook";

/**
 * The least that Excel must offer: Excel on the web, Microsoft 365, Office LTSC 2021 and 2024 do
 * (https://learn.microsoft.com/javascript/api/requirement-sets/excel/excel-api-requirement-sets).
 */
export const EXCEL_FLOOR: readonly { readonly set: string; readonly version: string }[] = [
  { set: "SharedRuntime", version: "1.1" },
  { set: "CustomFunctionsRuntime", version: "1.3" },
  { set: "ExcelApi", version: "1.14" },
];

/** What of the floor this copy of Excel lacks, as "ExcelApi 1.14"; none when the add-in can work. */
export function missingFromFloor(supports: SupportsSet): string[] {
  return EXCEL_FLOOR.filter(({ set, version }) => !supports(set, version)).map(
    ({ set, version }) => `${set} ${version}`,
  );
}
