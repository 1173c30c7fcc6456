import type { Language } from "./language";

/** The file of a filled season, with its invented farm. */
export const SAMPLE_SEASON_FILE = "larkmoor-clean.xlsx";

/**
 * The file of the empty season in these units and this language, as it comes with the program.
 *
 * @example
 * emptySeasonFile("metric", "es") // "empty-season-es-metric.xlsx"
 */
export function emptySeasonFile(units: "US" | "metric", language: Language): string {
  const parts = [
    "empty-season",
    ...(language === "en" ? [] : [language]),
    ...(units === "US" ? [] : [units]),
  ];
  return `${parts.join("-")}.xlsx`;
}
