import { choiceOf } from "./choiceWords";
import { isNamedAs } from "../sheets/column";
import { MEASURED } from "../season/yieldList";
import type { LaidTable } from "./rowsByWinter";

/** What names of sheets and heads say where vines are to be put in, in three languages. */
const REPLANTING =
  /replant|reposici|complant|remplac|order|pedid|command|reason|motivo|raison|cause|rootstock|portainjerto|patron|porte-?greffe|clone?s?\b|nursery|vivero|pepini/;

/**
 * True for a list of vines that is no register and counts nothing: which are to be replanted, or were, in a sheet that
 * nobody named after the vines.
 */
export function isReplantList({ area, place: { shape, columns, headerIndex } }: LaidTable): boolean {
  if (shape.id !== "vines" || isNamedAs(shape, area.sheet)) return false;
  const at = new Map([...columns].map(([column, position]) => [column.id, { column, position }]));
  if (MEASURED.some((id) => at.has(id))) return false;
  const status = at.get("status");
  if (!status) return true;
  const words = [area.sheet, ...area.values[headerIndex]].map((cell) =>
    String(cell ?? "")
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .toLowerCase(),
  );
  if (!words.some((word) => REPLANTING.test(word))) return false;
  const [bearing] = status.column.choices!;
  return area.values
    .slice(headerIndex + 1)
    .every(
      (cells) =>
        choiceOf(status.column, String(cells[status.position] ?? "")) !==
        status.column.choices!.indexOf(bearing),
    );
}
