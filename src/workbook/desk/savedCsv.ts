import { LAST_DAY } from "../../domain/plan/orderOfWork";
import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import { lastFilled } from "../../survey/reading/movedCells";
import { isoDay } from "../../survey/reading/serialDate";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { csvLine } from "../csvText";
import { csvCell } from "../file/csvArea";
import { decideCsv } from "../file/csvReading";
import { csvRecords } from "../file/csvRecords";
import { bytesSource } from "../file/csvSource";
import { showsDay } from "../file/styleKinds";
import type { ReadLimits } from "../file/readLimits";

const BYTE_ORDER_MARK = "\ufeff";

/**
 * A csv file with what its sheet holds now: cells that nobody changed are written as they stood, with the file's own
 * separator, decimal sign and line ends; byte for byte the same where none was changed. A file in another encoding becomes
 * UTF-8 with its mark, since not every letter that can be typed stands in the old ones.
 */
export async function savedCsv(
  file: string,
  original: Uint8Array,
  { firstRow, firstColumn, values }: Pick<SheetArea, "firstRow" | "firstColumn" | "values">,
  formatOf: (row: number, column: number) => string | undefined,
  limits: ReadLimits,
): Promise<Uint8Array> {
  const source = bytesSource(file, original);
  const { layout, reading } = await decideCsv(source, limits);
  const { delimiter, decimal, encoding, hiddenLines } = reading;
  const before: string[][] = [];
  for await (const records of csvRecords(source, layout, limits)) before.push(...records);
  const lineEnd = layout.hasLineFeeds ? (original.includes(CARRIAGE_RETURN) ? "\r\n" : "\n") : "\r";
  const lines: string[] = hiddenLines > 0 ? [`sep=${delimiter}`] : [];
  const lastRow = firstRow + values.length - 1;
  let isChanged = false;
  for (let row = 1; row <= Math.max(lastRow, before.length); row++) {
    const stood = (before[row - 1] ?? []).map((text, at, { length }) =>
      at === length - 1 ? text.replace(/\r+$/, "") : text,
    );
    const now = values[row - firstRow] ?? [];
    const width = Math.max(stood.length, firstColumn - 1 + lastFilled(now));
    const cells = Array.from({ length: width }, (_, column) => {
      const value = now[column + 1 - firstColumn] ?? null;
      const text = stood[column];
      if (text !== undefined && csvCell(text, decimal) === value) return quoted(text, delimiter);
      isChanged = true;
      if (
        typeof value === "number" &&
        value >= 0 &&
        value <= LAST_DAY &&
        showsDay(formatOf(row, column + 1) ?? "")
      )
        return isoDay(value);
      return written(value, delimiter, decimal);
    });
    if (row <= lastRow || cells.some((cell) => !isBlank(cell))) lines.push(cells.join(delimiter));
  }
  if (!isChanged) return original;
  const hasMark = encoding !== "utf-8" || original[0] === 0xef;
  return new TextEncoder().encode(
    (hasMark ? BYTE_ORDER_MARK : "") + lines.map((line) => line + lineEnd).join(""),
  );
}

const CARRIAGE_RETURN = 0x0d;

/** A text in quotes where it needs them. */
function quoted(text: string, delimiter: string): string {
  return /["\r\n]/.test(text) || text.includes(delimiter) ? `"${text.replaceAll('"', '""')}"` : text;
}

function written(value: CellValue, delimiter: string, decimal: string): string {
  if (typeof value === "number" && decimal === ",") return quoted(String(value).replace(".", ","), delimiter);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return csvLine([isCellError(value) ? value.error : value], delimiter);
}
