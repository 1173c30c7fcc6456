import { cellName } from "../address";
import type { CellExtras } from "../surveyWorkbook";
import { remarksOf, wordsOf } from "./excelRemarks";
import { messageBatches } from "./messageBatches";

/** Cells that are asked for together. */
const CELLS_A_SLICE = 2_000;
/** About what Excel answers for a cell: its number format, and with everything that it may have been given. */
const CHARACTERS_OF_A_FORMAT = 12;
const CHARACTERS_OF_A_DRESS = 600;

type Letters = Pick<Excel.CellPropertiesFont, "name" | "size" | "color">;

const ASKED: Excel.CellPropertiesLoadOptions = {
  format: {
    fill: { color: true },
    font: {
      name: true,
      size: true,
      color: true,
      bold: true,
      italic: true,
      underline: true,
      strikethrough: true,
    },
    borders: { style: true, color: true },
    horizontalAlignment: true,
    indentLevel: true,
    textOrientation: true,
  },
};

/**
 * What a person put on the cells of an own sheet beside their values, from A1 to the end of what is filled. Slices that
 * look alike throughout, as most do, are asked for as one; only of others is every cell asked for.
 */
export async function excelCellExtras(
  context: Excel.RequestContext,
  sheet: string,
  seesNotes: boolean,
): Promise<CellExtras[]> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const remarks = await remarksOf(context, worksheet, seesNotes);
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  const normal = context.workbook.styles.getItemOrNullObject("Normal");
  normal.load("name");
  normal.font.load("name,size,color");
  await context.sync();
  const plain: Letters = normal.isNullObject ? {} : normal.font;
  const extras = new Map<string, CellExtras>();
  if (!used.isNullObject) {
    const [rows, columns] = [used.rowIndex + used.rowCount, used.columnIndex + used.columnCount];
    for await (const extra of looksOf(context, worksheet, rows, columns, plain))
      extras.set(cellName(extra.row, extra.column), extra);
  }
  for (const remark of remarks) {
    const { row, column } = remark;
    const place = cellName(row, column);
    extras.set(place, {
      format: "General",
      dress: "",
      ...extras.get(place),
      row,
      column,
      note: wordsOf(remark),
    });
  }
  return [...extras.values()];
}

async function* looksOf(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  rows: number,
  columns: number,
  plain: Letters,
): AsyncGenerator<CellExtras, void> {
  const most = Math.max(1, Math.floor(CELLS_A_SLICE / columns));
  const slices = Array.from({ length: Math.ceil(rows / most) }, (_, slice) => {
    const range = worksheet.getRangeByIndexes(slice * most, 0, Math.min(most, rows - slice * most), columns);
    const { format } = range;
    format.load("horizontalAlignment,indentLevel,textOrientation");
    format.fill.load("color");
    format.font.load("name,size,color,bold,italic,underline,strikethrough");
    format.borders.load("items/sideIndex,items/style");
    return { range, first: slice * most, cells: Math.min(most, rows - slice * most) * columns };
  });
  await context.sync();
  const asked = slices.map(({ range, ...slice }) => ({
    range,
    ...slice,
    isDressed: !isPlain(range.format, plain),
  }));
  const charactersOf = ({ cells, isDressed }: (typeof asked)[number]) =>
    cells * (isDressed ? CHARACTERS_OF_A_DRESS : CHARACTERS_OF_A_FORMAT);
  for (const batch of messageBatches(asked, charactersOf)) {
    const answers = batch.map(({ range, first, isDressed }) => {
      range.load("numberFormat");
      return { range, first, dresses: isDressed ? range.getCellProperties(ASKED) : undefined };
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a batch, by size of message
    await context.sync();
    for (const { range, first, dresses } of answers) {
      const formats = range.numberFormat as string[][];
      for (const [r, line] of formats.entries())
        for (const [c, format] of line.entries()) {
          const dress = dresses ? dressOf(dresses.value[r][c].format ?? {}, plain) : "";
          if (format !== "General" || dress !== "")
            yield { row: first + r + 1, column: c + 1, note: "", format, dress };
        }
      range.untrack();
    }
  }
}

/** Whether a range looks plain throughout; Excel answers null where its cells differ. */
function isPlain(
  { fill, font, borders, horizontalAlignment, indentLevel, textOrientation }: Excel.RangeFormat,
  plain: Letters,
): boolean {
  const sides = borders.items.map(({ sideIndex, style }) => [sideIndex, { style: style ?? "differs" }]);
  const format = {
    fill,
    font,
    borders: Object.fromEntries(sides),
    horizontalAlignment,
    indentLevel,
    textOrientation,
  };
  return dressOf(format, plain) === "";
}

/** Letters, fill, lines and sideways alignment of a cell in one text; "" for those of a plain one. */
function dressOf(
  { fill, font, borders, horizontalAlignment, indentLevel, textOrientation }: Excel.CellPropertiesFormat,
  plain: Letters,
): string {
  const parts = [
    ["fill", fill?.color, "#FFFFFF", ""],
    ["font", font?.name, plain.name ?? font?.name],
    ["size", font?.size, plain.size ?? font?.size],
    ["letters", font?.color, plain.color ?? "#000000", ""],
    ["bold", font?.bold, false],
    ["italic", font?.italic, false],
    ["underline", font?.underline, "None"],
    ["strikethrough", font?.strikethrough, false],
    ["alignment", horizontalAlignment, "General"],
    ["indent", indentLevel, 0],
    ["orientation", textOrientation, 0],
    ...Object.entries(borders ?? {}).map(([side, { style, color }]: [string, Excel.CellBorder]) => [
      `${side} ${color ?? ""}`,
      style,
      "None",
    ]),
  ];
  return parts
    .filter(([, value, ...usual]) => value !== undefined && !usual.includes(value as never))
    .map(([what, value]) => `${String(what)} ${String(value)}`)
    .join(", ");
}
