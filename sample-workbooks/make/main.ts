import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { cleanSeason, emptySeason, seasonWithMistakes } from "./sampleWorkbooks";
import { emptySeasonFile } from "../../src/texts/emptySeasonFile";
import { LANGUAGES } from "../../src/texts/language";
import { writeXlsx } from "./writeXlsx";

const FOLDER = new URL("../", import.meta.url);

for (const [name, workbook] of [
  ["larkmoor-clean.xlsx", cleanSeason()],
  ["larkmoor-mistakes.xlsx", seasonWithMistakes().workbook],
  ...LANGUAGES.flatMap((language) =>
    (["US", "metric"] as const).map(
      (units) => [emptySeasonFile(units, language), emptySeason(units, language)] as const,
    ),
  ),
] as const) {
  const bytes = await writeXlsx(workbook);
  const path = fileURLToPath(new URL(name, FOLDER));
  await writeFile(path, bytes);
  console.log(`${name}: ${bytes.length} bytes`);
}
