/**
 * A spreadsheet date as year-month-day.
 *
 * @param serial days since 1899-12-30
 * @example
 * isoDate(45350) // "2024-02-28"
 */
export function isoDate(serial: number): string {
  return new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * 86_400_000).toISOString().slice(0, 10);
}
