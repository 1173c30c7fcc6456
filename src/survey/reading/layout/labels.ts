import { isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import { blockRowAndVine, type LabelParts, rowAndVine } from "../placeLabel";
import type { SheetArea } from "../sheetArea";
import type { Segment } from "./bestShape";
import type { Section } from "./heads";
import { KEYS } from "./layoutOptions";

/** Labels that hold row and vine, or block, row and vine, and what they tell. */
export interface Labels {
  /** Position of their column. */
  readonly at: number;
  readonly parts: ReadonlyMap<number, LabelParts>;
  readonly tells: ReadonlySet<(typeof KEYS)[number]>;
}

/** Labels of row and vine ("1-12") under the head of vines, or of all three keys ("NB-3-12") under that or an unknown head. */
export function labelsOf(
  area: SheetArea,
  section: Section,
  { from, to }: Segment,
  columns: ReadonlyMap<Column, number>,
  vine: Column,
): Labels | undefined {
  const vines = columns.get(vine);
  if (vines !== undefined) {
    const two = splitLabels(area, section, vines, rowAndVine);
    if (two) return { at: vines, parts: two, tells: new Set(["row", "vine"]) };
  }
  const read = new Set(columns.values());
  for (let at = from; at < to; at++) {
    if (section.texts[at] === undefined || (vines === undefined ? read.has(at) : at !== vines)) continue;
    const three = splitLabels(area, section, at, blockRowAndVine);
    if (three) return { at, parts: three, tells: new Set(KEYS) };
  }
  return undefined;
}

/** The parts of labels, where nearly every line has them. */
function splitLabels(
  area: SheetArea,
  { index, lines, end }: Section,
  column: number,
  split: (label: string) => LabelParts | undefined,
): Map<number, LabelParts> | undefined {
  const found = new Map<number, LabelParts>();
  let filled = 0;
  for (let at = index + lines; at < end; at++) {
    const cell = area.values[at][column];
    if (isBlank(cell)) continue;
    filled++;
    const parts = typeof cell === "string" ? split(cell) : undefined;
    if (parts) found.set(at, parts);
  }
  return filled > 0 && found.size >= filled * 0.8 ? found : undefined;
}
