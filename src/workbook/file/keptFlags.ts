import { WorkbookProblem } from "../surveyWorkbook";
import { excelFlags } from "./excelFlags";
import { readFlagsXml } from "./flagsXml";
import type { ReadLimits } from "./readLimits";
import { relationships } from "./relationships";
import type { WorkbookPackage } from "./workbookPackage";

/** The small facts that a workbook file keeps for the add-in, from both places where they can stand. */
export interface KeptFlags {
  /** Our custom XML part; undefined where the file has none yet. */
  readonly part: string | undefined;
  /** What stands in it. A key without a value stands for a fact of Excel's that was taken away in the file. */
  readonly own: ReadonlyMap<string, string | undefined>;
  /** What Excel kept when it saved the file. */
  readonly ofExcel: ReadonlyMap<string, string>;
}

/** Reads the small facts of a workbook file. */
export async function keptFlags(
  source: WorkbookPackage,
  workbookPart: string,
  limits: ReadLimits,
): Promise<KeptFlags> {
  const ofExcel = await excelFlags(source, workbookPart, limits);
  for (const { kind, part } of (await relationships(source, workbookPart, limits)).values()) {
    if (kind !== "customXml" || !source.parts.has(part)) continue;
    const own = await readFlagsXml(source, part, limits).catch((problem: unknown) => {
      if (problem instanceof WorkbookProblem) return undefined;
      throw problem;
    });
    if (own) return { part, own, ofExcel };
  }
  return { part: undefined, own: new Map(), ofExcel };
}

/** The facts in force: those of our own part before those of Excel. */
export function flagsOf({ own, ofExcel }: KeptFlags): Map<string, string> {
  const flags = new Map(ofExcel);
  for (const [key, value] of own)
    if (value === undefined) flags.delete(key);
    else flags.set(key, value);
  return flags;
}
