import type { HeaderMapping } from "../../survey/reading/findTable";
import { keptEntries } from "../../survey/reading/keptEntries";
import { SHEETS } from "../../survey/sheets/sheets";
import type { SurveyWorkbook } from "../surveyWorkbook";

/** Where the workbook keeps what a person's own column heads mean. */
const FLAG = "columnHeads";

/** What a person's own column heads mean, as kept in the workbook; what cannot be read is left out. */
export async function readHeads(workbook: SurveyWorkbook): Promise<HeaderMapping[]> {
  return parseHeads(await workbook.readFlag(FLAG));
}

/** The same from all the small facts of a workbook, by key. */
export function headsOfFlags(flags: ReadonlyMap<string, string>): HeaderMapping[] {
  return parseHeads(flags.get(FLAG));
}

/** Keeps the meaning of one sheet's heads in the workbook, in place of what was kept of that sheet. */
export async function keepHeads(workbook: SurveyWorkbook, mapping: HeaderMapping): Promise<void> {
  const others = (await readHeads(workbook)).filter(({ sheet }) => sheet !== mapping.sheet);
  await workbook.writeFlag(FLAG, JSON.stringify([...others, mapping]));
}

/** Forgets what is kept of a sheet's heads. */
export async function forgetHeads(workbook: SurveyWorkbook, sheet: string): Promise<void> {
  const others = (await readHeads(workbook)).filter((kept) => kept.sheet !== sheet);
  await workbook.writeFlag(FLAG, others.length === 0 ? undefined : JSON.stringify(others));
}

/** Reads what `keepHeads` wrote; anything else counts as nothing kept. */
export function parseHeads(kept: string | undefined): HeaderMapping[] {
  return keptEntries(kept, isMapping);
}

function isMapping(value: unknown): value is HeaderMapping {
  if (typeof value !== "object" || value === null) return false;
  const { sheet, shape, headers } = value as Readonly<Record<keyof HeaderMapping, unknown>>;
  const isText = (part: unknown) => typeof part === "string";
  return (
    isText(sheet) &&
    isText(shape) &&
    Object.hasOwn(SHEETS, shape as string) &&
    typeof headers === "object" &&
    headers !== null &&
    !Array.isArray(headers) &&
    Object.values(headers).every(isText)
  );
}
