import type { Farm, FarmRow } from "../../sample-workbooks/make/farm";
import { inventedFarm } from "../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import { surveySheet } from "../../sample-workbooks/make/surveySheet";
import { writeXlsx } from "../../sample-workbooks/make/writeXlsx";
import { SHEETS } from "../../src/survey/sheets/sheets";

const OPTIONS = { farm: "A large farm (invented)" };

/** A workbook with at least so many rows of cordons: the invented farm again and again, its blocks under new names. */
export async function largeSeason(cordonRows: number): Promise<{ bytes: Uint8Array; rows: number }> {
  const farms: Farm[] = [];
  let rows = 0;
  while (rows < cordonRows) {
    const farm = inventedFarm(randomSource(farms.length + 1));
    farms.push(farm);
    rows += farm.cordons.length;
  }
  const all = (sheet: "blocks" | "cordons" | "vines"): FarmRow[] =>
    farms.flatMap((farm, copy) =>
      farm[sheet].map((row) => ({ ...row, block: `${String(row.block)} ${copy + 1}` })),
    );
  const sheets = (["blocks", "cordons", "vines"] as const).map((sheet) =>
    surveySheet(SHEETS[sheet], all(sheet), OPTIONS),
  );
  return { bytes: await writeXlsx({ sheets }), rows };
}
