/** The sample that is opened when the page's address asks for none. */
export const FIRST_SAMPLE = "clean";

/**
 * The file of a sample workbook by its name in the page's address.
 *
 * @example
 * sampleFile("empty-es-metric") // "empty-season-es-metric.xlsx"
 */
export function sampleFile(id: string): string {
  return id.startsWith("empty") ? `${id.replace("empty", "empty-season")}.xlsx` : `larkmoor-${id}.xlsx`;
}
