import { acceptedHeaders, plainHeader, type Column, type SheetId } from "../../survey/sheets/column";
import { SHEETS } from "../../survey/sheets/sheets";

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
