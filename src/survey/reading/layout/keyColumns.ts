import type { Column } from "../../sheets/column";
import type { OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { everyRow, type AddedColumn } from "./addedColumn";
import type { Segment } from "./bestShape";
import { labelOf, nearestAbove } from "./captions";
import { keysAbove, type Section } from "./heads";
import { labelsOf, type Labels } from "./labels";
import { constantsOf, type KEYS, type LayoutOptions } from "./layoutOptions";
import { keysOfSheetName, shortKeys, type FoundKeys } from "./sheetKeys";

/**
 * Block, row and vine where no column of the table is theirs: by answers, labels, captions, the lines above or the sheet's
 * name. Labels take the place of the column of vines; what nothing tells is asked.
 */
export function keyColumns(
  area: SheetArea,
  section: Section,
  segment: Segment,
  columns: Map<Column, number>,
  captions: ReadonlyMap<number, FoundKeys>,
  options: LayoutOptions,
  account: OpenAccount,
): AddedColumn[] {
  const { sheet } = area;
  const byId = (id: string) => segment.shape.columns.find((column) => column.id === id)!;
  const answered = constantsOf(options, sheet);
  const elsewhere = constantsOf(options, "");
  const above = keysAbove(area, section.index);
  const told = keysOfSheetName(sheet);
  const isSure = told.row !== undefined || (told.block !== undefined && options.knowsBlock(told.block));
  const named = isSure ? told : {};
  const labels = columns.has(byId("row"))
    ? undefined
    : labelsOf(area, section, segment, columns, byId("vine"));
  const added: AddedColumn[] = [];
  const lacking: string[] = [];
  for (const id of ["block", "row"] as const) {
    const column = byId(id);
    if (answered[id] === undefined && (columns.has(column) || labels?.tells.has(id))) continue;
    const fromCaptions = [...captions].filter(([, keys]) => keys[id] !== undefined);
    const constant =
      answered[id] ?? above[id] ?? (fromCaptions.length > 0 ? undefined : (named[id] ?? elsewhere[id]));
    if (fromCaptions.length > 0 && answered[id] === undefined) {
      added.push({
        column,
        header: "",
        sheetColumn: 0,
        valueOf: (i) => labelOf(nearestAbove(fromCaptions, i)?.[id] ?? above[id] ?? null),
      });
    } else if (constant !== undefined) {
      account.notes.push({
        code: above[id] !== undefined && answered[id] === undefined ? "keysAbove" : "keysOfName",
        sheet,
        facts: { column: id, value: labelOf(constant) },
      });
      added.push(everyRow(column, labelOf(constant)));
    } else lacking.push(id);
  }
  if (!labels && !columns.has(byId("vine"))) lacking.push("vine");
  if (lacking.length > 0) askKeys(sheet, lacking, told, account);
  if (labels) {
    columns.delete(byId("vine"));
    const own = [...labels.tells].filter((id) => answered[id] === undefined && !columns.has(byId(id)));
    added.push(...own.map((id) => labelColumn(area, section, labels, id, byId(id))));
    account.notes.push({
      code: "labels",
      sheet,
      facts: {
        head: section.texts[labels.at]!,
        columns: [...labels.tells],
        examples: [String(area.values[[...labels.parts.keys()][0]][labels.at])],
      },
    });
  }
  return added;
}

/** Asks for keys, with what the sheet's name makes likely. */
function askKeys(sheet: string, lacking: readonly string[], told: FoundKeys, account: OpenAccount): void {
  const likelyKeys = lacking.includes("row") ? (shortKeys(sheet) ?? told) : told;
  const likely = (["block", "row"] as const).flatMap((column) => {
    const value = likelyKeys[column];
    return lacking.includes(column) && value !== undefined ? [{ sheet, column, value }] : [];
  });
  account.questions.push({
    code: "keys",
    sheet,
    facts: { columns: lacking },
    proposals: likely.length === 0 ? [] : [{ constants: likely }],
  });
}

/** One key as the labels of a column tell it. */
function labelColumn(
  { firstColumn }: SheetArea,
  { texts }: Section,
  { at, parts }: Labels,
  id: (typeof KEYS)[number],
  column: Column,
): AddedColumn {
  return {
    column,
    header: texts[at]!,
    sheetColumn: firstColumn + at,
    valueOf: (i) => parts.get(i)?.[id] ?? null,
  };
}
