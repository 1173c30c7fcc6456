import { areasOfAddress, holdsCell, type CellArea } from "../address";
import { WorkbookProblem, type CellWrite } from "../surveyWorkbook";
import { inputOf, inputToRestore } from "./cellContent";
import { messageBatches } from "./messageBatches";

/** Ranges that go into one message. */
const RUNS_A_BATCH = 1_000;
/** About what a cell takes in a message beside its value. */
const FRAME_OF_A_CELL = 8;
/** Cells of one column that are written as one range: Excel names at most 512 merged areas of a range. */
const LONGEST_RUN = 500;

interface Run {
  readonly row: number;
  readonly column: number;
  readonly inputs: (string | number | boolean)[];
}

/**
 * Writes cells and leaves all others alone. What stood there is read first, and put back when a later batch is
 * refused.
 *
 * @throws WorkbookProblem "noSheet", "protectedSheet", "filteredTable", "mergedCell", "notAFormula"
 */
export async function writeExcelCells(
  context: Excel.RequestContext,
  sheet: string,
  cells: readonly CellWrite[],
): Promise<void> {
  const wrong = cells.find((cell) => "formula" in cell && !cell.formula.startsWith("="));
  if (wrong) throw new WorkbookProblem("notAFormula", { sheet, row: wrong.row, column: wrong.column });
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
  worksheet.load("id");
  worksheet.protection.load("protected");
  worksheet.autoFilter.load("isDataFiltered");
  worksheet.tables.load("items/name,items/autoFilter/isDataFiltered");
  await context.sync();
  if (worksheet.isNullObject) throw new WorkbookProblem("noSheet", { sheet });
  await refuseFilteredCells(context, worksheet, sheet, cells);
  if (worksheet.protection.protected) await refuseLockedCells(context, worksheet, sheet, cells);

  const before: { run: Run; inputs: (string | number | boolean)[][] }[] = [];
  try {
    for (const runs of messageBatches(runsOf(cells), charactersOf, RUNS_A_BATCH)) {
      const batch = runs.map((run) => {
        const range = worksheet.getRangeByIndexes(run.row - 1, run.column - 1, run.inputs.length, 1);
        range.load("values,formulas,valueTypes");
        const merged = range.getMergedAreasOrNullObject();
        merged.load("address");
        return { run, range, merged };
      });
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a batch, by size of message
      await context.sync();
      for (const { run, merged } of batch)
        if (!merged.isNullObject) refuseCovered(sheet, run, areasOfAddress(merged.address));
      for (const { run, range } of batch) {
        const { values, formulas, valueTypes } = range;
        before.push({
          run,
          inputs: values.map((line, r) => [inputToRestore(formulas[r][0], line[0], valueTypes[r][0])]),
        });
      }
      for (const { run, range } of batch) range.formulas = run.inputs.map((input) => [input]);
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- as above
      await context.sync();
    }
  } catch (error) {
    for (const { run, inputs } of before)
      worksheet.getRangeByIndexes(run.row - 1, run.column - 1, inputs.length, 1).formulas = inputs;
    await context.sync().catch(() => {
      throw new WorkbookProblem("halfWritten", { sheet }, { cause: error });
    });
    throw error;
  }
}

/** What is written into a cell of a merged area other than its first is lost. */
function refuseCovered(sheet: string, run: Run, merged: readonly CellArea[]): void {
  const { column } = run;
  for (let row = run.row; row < run.row + run.inputs.length; row++) {
    const area = merged.find((one) => holdsCell(one, row, column));
    if (area && (row !== area.firstRow || column !== area.firstColumn))
      throw new WorkbookProblem("mergedCell", { sheet, row, column });
  }
}

/**
 * Values written through rows that a filter hides can land in other rows, or Excel refuses them with
 * FilteredRangeConflict (https://learn.microsoft.com/javascript/api/excel/excel.errorcodes).
 * So nothing is written where a filter is at work.
 */
async function refuseFilteredCells(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  sheet: string,
  cells: readonly CellWrite[],
): Promise<void> {
  const filtered = [
    ...(worksheet.autoFilter.isDataFiltered ? [worksheet.autoFilter.getRange()] : []),
    ...worksheet.tables.items.flatMap((table) => (table.autoFilter.isDataFiltered ? [table.getRange()] : [])),
  ];
  if (filtered.length === 0) return;
  for (const range of filtered) range.load("rowIndex,rowCount");
  await context.sync();
  const hit = cells.find(({ row }) =>
    filtered.some(({ rowIndex, rowCount }) => row > rowIndex && row <= rowIndex + rowCount),
  );
  if (hit) throw new WorkbookProblem("filteredTable", { sheet, row: hit.row });
}

async function refuseLockedCells(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  sheet: string,
  cells: readonly CellWrite[],
): Promise<void> {
  const locks = runsOf(cells).map((run) => {
    const { protection } = worksheet.getRangeByIndexes(
      run.row - 1,
      run.column - 1,
      run.inputs.length,
      1,
    ).format;
    protection.load("locked");
    return protection;
  });
  await context.sync();
  if (locks.some((protection) => protection.locked !== false))
    throw new WorkbookProblem("protectedSheet", { sheet });
}

/** Cells one below the other become one range; when a cell is given twice the last one counts. */
function runsOf(cells: readonly CellWrite[]): Run[] {
  const byPlace = new Map(cells.map((cell) => [`${cell.column} ${cell.row}`, cell]));
  const sorted = [...byPlace.values()].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: Run[] = [];
  for (const cell of sorted) {
    const last = runs.at(-1);
    const continues =
      last?.column === cell.column &&
      last.row + last.inputs.length === cell.row &&
      last.inputs.length < LONGEST_RUN;
    if (continues) last.inputs.push(inputOf(cell));
    else runs.push({ row: cell.row, column: cell.column, inputs: [inputOf(cell)] });
  }
  return runs;
}

function charactersOf({ inputs }: Run): number {
  return inputs.reduce<number>((sum, input) => sum + String(input).length + FRAME_OF_A_CELL, 0);
}
