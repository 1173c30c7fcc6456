import { marksIfAny, type MarkedCell, type SheetMarks } from "../../survey/reading/sheetArea";
import { remarksOf, wordsOf } from "./excelRemarks";
import { messageBatches } from "./messageBatches";

/** Cells, rows or columns that are asked for in one range. */
const ASKED_AT_ONCE = 20_000;
/** About what Excel answers for a cell, a row or a column of which one property is asked. */
const CHARACTERS_OF_AN_ANSWER = 60;

/**
 * What a person did to the cells of a sheet beside filling them: struck out, hid, commented. Only where the whole
 * says that some of it is struck out or hidden is every cell, row or column asked for.
 *
 * @param used what is filled, loaded with its place, `rowHidden`, `columnHidden` and its font's `strikethrough`
 * @param seesNotes whether this Excel shows notes to add-ins
 */
export async function excelMarks(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  used: Excel.Range,
  seesNotes: boolean,
): Promise<SheetMarks | undefined> {
  const { rowIndex, columnIndex, columnCount, rowHidden: rows, columnHidden: columns } = used;
  const { strikethrough: lines } = used.format.font;
  const remarks = await remarksOf(context, worksheet, seesNotes);
  const marked: MarkedCell[] = remarks.map((remark) => ({
    row: remark.row,
    column: remark.column,
    note: wordsOf(remark),
  }));
  const hiddenRows: number[] = [];
  const hiddenColumns: number[] = [];
  const [first, left] = [rowIndex + 1, columnIndex + 1];
  const questions: Question[] = [];
  if (lines !== false)
    for (const { from, range, count } of slices(worksheet, used, columnCount))
      questions.push({
        cells: count * columnCount,
        ask: () => {
          const answer = range.getCellProperties({ format: { font: { strikethrough: true } } });
          return () =>
            answer.value.forEach((line, r) =>
              line.forEach(({ format }, c) => {
                if (format?.font?.strikethrough === true)
                  marked.push({ row: first + from + r, column: left + c, struck: true });
              }),
            );
        },
      });
  if (rows !== false)
    for (const { from, range, count } of slices(worksheet, used, 1))
      questions.push({
        cells: count,
        ask: () => {
          const answer = range.getRowProperties({ rowHidden: true });
          return () =>
            answer.value.forEach(({ rowHidden }, r) => {
              if (rowHidden === true) hiddenRows.push(first + from + r);
            });
        },
      });
  if (columns !== false)
    questions.push({
      cells: columnCount,
      ask: () => {
        const answer = used.getColumnProperties({ columnHidden: true });
        return () =>
          answer.value.forEach(({ columnHidden }, c) => {
            if (columnHidden === true) hiddenColumns.push(left + c);
          });
      },
    });
  for (const batch of messageBatches(questions, ({ cells }) => cells * CHARACTERS_OF_AN_ANSWER)) {
    const answers = batch.map(({ ask }) => ask());
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a batch, by size of message
    await context.sync();
    for (const take of answers) take();
  }
  return marksIfAny({ marked, hiddenRows, hiddenColumns });
}

interface Question {
  /** How many cells, rows or columns it is about. */
  readonly cells: number;
  /** Asks, and returns what takes the answer down. */
  ask(): () => void;
}

/** The area in slices of rows. */
function slices(
  worksheet: Excel.Worksheet,
  { rowIndex, columnIndex, rowCount, columnCount }: Excel.Range,
  columns: number,
): { from: number; count: number; range: Excel.Range }[] {
  const most = Math.max(1, Math.floor(ASKED_AT_ONCE / columns));
  return Array.from({ length: Math.ceil(rowCount / most) }, (_, slice) => {
    const from = slice * most;
    const count = Math.min(most, rowCount - from);
    return {
      from,
      count,
      range: worksheet.getRangeByIndexes(rowIndex + from, columnIndex, count, columnCount),
    };
  });
}
