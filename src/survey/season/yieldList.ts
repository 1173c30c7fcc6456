import { isNamedAs } from "../sheets/column";
import type { SurveyTable } from "./surveyTable";

/** Columns of vines that somebody counted, weighed or did; a list without any of them tells who stands where. */
export const MEASURED = ["liveTrunks", "prunings", "clusters", "shoots", "prunedOn"];

/**
 * True for a table of vines that is no register: a list of what was measured on some of them, without their statuses, in
 * a sheet that nobody named after the vines.
 */
export function isYieldList({
  shape,
  sheet,
  column,
}: Pick<SurveyTable, "shape" | "sheet" | "column">): boolean {
  return (
    shape.id === "vines" &&
    !isNamedAs(shape, sheet) &&
    column("status") === undefined &&
    MEASURED.some((id) => column(id) !== undefined)
  );
}
