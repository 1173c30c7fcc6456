import type { IRange } from "@univerjs/core";
import type { CellArea } from "../address";
import type { ReadLimits } from "../file/readLimits";
import { numberOf } from "../file/movableFormula";
import { isYes } from "../file/sheetRows";
import type { WorkbookPackage } from "../file/workbookPackage";
import { parseXml, type XmlListener } from "../file/xmlParser";

/** A rectangle of cells; rows and columns count from 0, ends are included. */
export type Area = Pick<IRange, "startRow" | "startColumn" | "endRow" | "endColumn">;

/** What a sheet of a file looks like, beside what its cells hold. */
export interface SheetLook {
  /** Width in characters of columns that have their own, by column from 0. */
  readonly widths: ReadonlyMap<number, number>;
  /** Height in points of rows that have their own, by row from 0. */
  readonly heights: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly merged: readonly Area[];
  /** Areas that one formula fills, with their first cell; one that is not dynamic keeps its size. */
  readonly filledByFormula: readonly (Area & { readonly isDynamic: boolean })[];
  /** Numbers of the cell styles, by row and column from 0; without those of cells that have none. */
  readonly styles: readonly (readonly number[])[];
}

/** Number of the style of a cell, by row and column from 0. */
export function styleAt(look: SheetLook | undefined, row: number, column: number): number {
  return look?.styles[row]?.[column] ?? 0;
}

/** Most columns that get a width of their own: "to the last column of the sheet" is one entry in a file. */
const COLUMNS_WITH_WIDTH = 1000;

/** Reads how a sheet looks; a second pass over its part, so that whoever only wants values need not pay for it. */
export async function sheetLook(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<SheetLook> {
  const collector = new LookCollector();
  await parseXml(source.file, part, source.chunks(part), collector, limits);
  const { widths, heights, frozenRows, frozenColumns, merged, filledByFormula, styles } = collector;
  return { widths, heights, frozenRows, frozenColumns, merged, filledByFormula, styles };
}

class LookCollector implements XmlListener, SheetLook {
  readonly widths = new Map<number, number>();
  readonly heights = new Map<number, number>();
  frozenRows = 0;
  frozenColumns = 0;
  readonly merged: Area[] = [];
  readonly filledByFormula: (Area & { isDynamic: boolean })[] = [];
  private isDynamic = false;
  readonly styles: number[][] = [];
  private row = -1;
  private column = -1;

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    switch (name) {
      case "c":
        this.cell(attributes);
        break;
      case "row":
        this.column = -1;
        this.row = attributes.r === undefined ? this.row + 1 : Number(attributes.r) - 1;
        if (isYes(attributes.customHeight) && Number(attributes.ht) >= 0)
          this.heights.set(this.row, Number(attributes.ht));
        break;
      case "f":
        if (attributes.t === "array" && attributes.ref)
          this.filledByFormula.push({ ...areaOf(attributes.ref), isDynamic: this.isDynamic });
        break;
      case "col":
        this.columnWidth(attributes);
        break;
      case "pane":
        if (attributes.state !== "frozen" && attributes.state !== "frozenSplit") break;
        this.frozenRows = Number(attributes.ySplit ?? 0) || 0;
        this.frozenColumns = Number(attributes.xSplit ?? 0) || 0;
        break;
      case "mergeCell":
        if (attributes.ref) this.merged.push(areaOf(attributes.ref));
        break;
    }
  }

  text(): void {}

  close(): void {}

  private cell({ r, s, cm }: Readonly<Record<string, string>>): void {
    this.isDynamic = cm !== undefined;
    this.column = r === undefined ? this.column + 1 : numberOf(r.replace(/\d+$/, "")) - 1;
    if (s !== undefined) (this.styles[this.row] ??= [])[this.column] = Number(s);
  }

  private columnWidth({ min, max, width }: Readonly<Record<string, string>>): void {
    if (!(Number(width) >= 0)) return;
    const last = Math.min(Number(max), COLUMNS_WITH_WIDTH);
    for (let column = Number(min); column <= last; column++) this.widths.set(column - 1, Number(width));
  }
}

/** The same rectangle with rows and columns counted from 1. */
export const cellArea = ({ startRow, endRow, startColumn, endColumn }: Area): CellArea => ({
  firstRow: startRow + 1,
  lastRow: endRow + 1,
  firstColumn: startColumn + 1,
  lastColumn: endColumn + 1,
});

/** The cells of "B2:D9" or "B2". */
export function areaOf(ref: string): Area {
  const [first, last = first] = ref.replace(/\$/g, "").split(":").map(cellOf);
  return { startRow: first.row, startColumn: first.column, endRow: last.row, endColumn: last.column };
}

function cellOf(address: string): { row: number; column: number } {
  const digits = address.search(/\d/);
  return { row: Number(address.slice(digits)) - 1, column: numberOf(address.slice(0, digits)) - 1 };
}
