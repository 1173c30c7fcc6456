/** An error that stands in a cell, such as #N/A. */
export interface CellError {
  readonly error: string;
}

/** What a cell holds. A blank is null; dates are spreadsheet serial numbers (days since 1899-12-30). */
export type CellValue = string | number | boolean | null | CellError;

/** Blank on any host: nothing, or text without a visible character. */
export function isBlank(value: CellValue | undefined): value is null | undefined | "" {
  return value === null || value === undefined || (typeof value === "string" && value.trim() === "");
}

/** True for an error cell. */
export function isCellError(value: CellValue | undefined): value is CellError {
  return typeof value === "object" && value !== null;
}
