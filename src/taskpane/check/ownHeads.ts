import * as z from "zod/mini";
import { keptEntries } from "../../survey/keptEntries";
import { acceptedHeaders, plainHeader, type Column, type SheetId } from "../../survey/column";
import type { HeaderMapping } from "../../survey/findTable";
import { SHEETS } from "../../survey/sheets";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";

/** Where the workbook keeps what a person's own column heads mean. */
const FLAG = "columnHeads";

/** What a person's own column heads mean, as kept in the workbook; what cannot be read is left out. */
export async function readHeads(workbook: SurveyWorkbook): Promise<HeaderMapping[]> {
  return parseHeads(await workbook.readFlag(FLAG));
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

const MAPPING = z.object({
  sheet: z.string(),
  shape: z.enum(Object.keys(SHEETS) as [SheetId, ...SheetId[]]),
  headers: z.record(z.string(), z.string()),
});

/** Reads what `keepHeads` wrote; anything else counts as nothing kept. */
export function parseHeads(kept: string | undefined): HeaderMapping[] {
  return keptEntries(kept, MAPPING);
}

/** The columns that a person can map: all but those of the settings, the needed ones first. */
export function mappableColumns(shape: SheetId): readonly Column[] {
  const { columns } = SHEETS[shape];
  return [...columns.filter(({ required }) => required), ...columns.filter(({ required }) => !required)];
}

/**
 * A first proposal for what the heads of a sheet mean: the heads that are known anyway, then those that contain a
 * known one as a word.
 */
export function proposeHeads(shape: SheetId, headers: readonly string[]): Record<string, string> {
  const proposal: Record<string, string> = {};
  const free = new Set(headers);
  const take = (column: Column, fits: (header: string, accepted: readonly string[]) => boolean) => {
    if (column.id in proposal) return;
    const accepted = acceptedHeaders(column);
    const header = [...free].find((candidate) => fits(plainHeader(candidate), accepted));
    if (header === undefined) return;
    proposal[column.id] = header;
    free.delete(header);
  };
  for (const column of mappableColumns(shape)) take(column, (header, accepted) => accepted.includes(header));
  for (const column of mappableColumns(shape))
    take(column, (header, accepted) =>
      accepted.some((word) => word.length > 2 && ` ${header} `.includes(` ${word} `)),
    );
  return proposal;
}

/** The needed columns that a mapping leaves open. */
export function openColumns(shape: SheetId, headers: Readonly<Record<string, string>>): Column[] {
  return SHEETS[shape].columns.filter(({ id, required }) => required && !headers[id]);
}
