import { acceptedHeaders, plainHeader, type Column, type SheetId } from "../../survey/sheets/column";
import { headWords, plainWords } from "../../survey/reading/headWords";
import { fits } from "../../survey/reading/likelyColumns";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { likelyUnits, type LikelyUnits } from "../../survey/reading/likelyUnits";
import { holdsUnit } from "../../survey/sheets/unit";
import { SHEETS } from "../../survey/sheets/sheets";
import type { UnitSystem } from "../../domain/units";
import type { HeadsStep, SheetHeads } from "./checkState";

/** The columns that a person can map: all but those of the settings, the needed ones first. */
export function mappableColumns(shape: SheetId): readonly Column[] {
  const { columns } = SHEETS[shape];
  return [...columns.filter(({ required }) => required), ...columns.filter(({ required }) => !required)];
}

/**
 * A first proposal for what the heads of a sheet mean: the heads that are known anyway, then those that contain a
 * known one as a word and stand over cells that could be of such a column.
 */
export function proposeHeads(
  shape: SheetId,
  { headers, area, headerRow }: Omit<SheetHeads, "sheet">,
): Record<string, string> {
  const line = headsOfLine(area, headerRow);
  const rows = area.values.slice(headerRow - area.firstRow + 1, headerRow - area.firstRow + 200);
  const cellsUnder = (head: string) => rows.map((row) => row[line.indexOf(head)] ?? null);
  const proposal: Record<string, string> = {};
  const free = new Set(headers);
  const take = (
    column: Column,
    isOf: (header: string, accepted: readonly string[], written: string) => boolean,
  ) => {
    if (column.id in proposal) return;
    const accepted = acceptedHeaders(column);
    const header = [...free].find((candidate) => isOf(plainHeader(candidate), accepted, candidate));
    if (header === undefined) return;
    proposal[column.id] = header;
    free.delete(header);
  };
  for (const column of mappableColumns(shape)) take(column, (header, accepted) => accepted.includes(header));
  for (const column of mappableColumns(shape))
    take(
      column,
      (header, accepted, written) =>
        !isOfAnother(column, written) &&
        (rows.length === 0 || fits(column, cellsUnder(written))) &&
        accepted.some((word) => word.length > 2 && ` ${header} `.includes(` ${word} `)),
    );
  return proposal;
}

/** Words of a measure of a trunk, which is not its number. */
const MEASURED =
  /\b(circumference|circ|girth|diam(eter)?|perimetro|circunferencia|diametro|circonference|diametre|tour)\b/;

/** True for a head that only borrows a column's word: a trunk's circumference, per cents or dead ones of a count. */
function isOfAnother(column: Column, header: string): boolean {
  const { unit, qualifier } = headWords(header);
  return (
    (column.kind === "count" && (unit !== undefined || MEASURED.test(plainWords(header)))) ||
    qualifier !== undefined
  );
}

/** The needed columns that a mapping leaves open. */
export function openColumns(shape: SheetId, headers: Readonly<Record<string, string>>): Column[] {
  return SHEETS[shape].columns.filter(({ id, required }) => required && !headers[id]);
}

function headsOfLine({ values, firstRow }: SheetArea, headerRow: number): string[] {
  return values[headerRow - firstRow].map((cell) => String(cell ?? "").trim());
}

/** A measured column that a mapping names under a head without a unit of it, and the units that are offered for it. */
export interface OpenUnit extends LikelyUnits {
  readonly column: Column;
  readonly head: string;
}

/** The measured columns of a mapping whose heads name no unit, the likely unit of each first. */
export function openUnits(
  { shape, headers }: Pick<HeadsStep, "shape" | "headers">,
  { area, headerRow }: SheetHeads,
  system: UnitSystem,
): OpenUnit[] {
  const headerIndex = headerRow - area.firstRow;
  const line = headsOfLine(area, headerRow);
  const named = SHEETS[shape].columns.filter(({ id }) => id in headers);
  const columns = new Map(named.map((column) => [column, line.indexOf(headers[column.id])]));
  return named.flatMap((column) => {
    const head = headers[column.id];
    const { unit, lastWord = unit } = headWords(head);
    if (lastWord && holdsUnit(column.kind, lastWord)) return [];
    const likely = likelyUnits(area, { shape: SHEETS[shape], headerIndex, columns }, column, system);
    return likely ? [{ column, head, ...likely }] : [];
  });
}
