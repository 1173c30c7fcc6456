import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { cleanSeason, emptySeason, seasonWithMistakes } from "./sampleWorkbooks";
import { writeXlsx } from "./writeXlsx";

const FOLDER = new URL("../", import.meta.url);

for (const [name, workbook] of [
  ["larkmoor-clean.xlsx", cleanSeason()],
  ["larkmoor-mistakes.xlsx", seasonWithMistakes().workbook],
  ["empty-season.xlsx", emptySeason()],
  ["empty-season-metric.xlsx", emptySeason("metric")],
] as const) {
  const bytes = await writeXlsx(workbook);
  const path = fileURLToPath(new URL(name, FOLDER));
  await writeFile(path, bytes);
  console.log(`${name}: ${bytes.length} bytes`);
}
