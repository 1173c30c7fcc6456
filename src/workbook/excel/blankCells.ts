import { blankDiffers, type Parameter } from "../../functions/parameter";
import type { ExcelRun } from "./excelRun";

/**
 * Tells blank cells from zeros where an Excel hands blanks to functions as 0: an Excel from before an update of 2024
 * does, and no requirement set tells (https://github.com/OfficeDev/office-js/issues/4702). The range of such an argument is
 * then read by its address (https://learn.microsoft.com/office/dev/add-ins/excel/call-excel-apis-from-custom-function).
 */
export class BlankCells {
  /** A blank has arrived as null: this Excel needs no second look. */
  private arriveAsNull = false;

  constructor(private readonly run: ExcelRun) {}

  /**
   * The arguments with null for each blank cell that arrived as 0; undefined where there is nothing to look up. What
   * cannot be read stays as it arrived.
   *
   * @param addresses of the arguments, as functions with requiresParameterAddresses are told
   */
  told(
    parameters: readonly Parameter[],
    given: readonly unknown[],
    addresses: readonly (string | null | undefined)[] = [],
  ): Promise<readonly unknown[]> | undefined {
    this.arriveAsNull ||= given.some((argument) => holds(argument, null));
    if (this.arriveAsNull) return undefined;
    const doubtful = parameters.flatMap((parameter, index) => {
      const address = addresses[index];
      return address && blankDiffers(parameter) && holds(given[index], 0) ? [{ index, address }] : [];
    });
    if (doubtful.length === 0) return undefined;
    return this.run(async (context) => {
      const ranges = doubtful.map(({ address }) => {
        const range = rangeAt(context, address);
        range.load("valueTypes");
        return range;
      });
      await context.sync();
      return given.map((argument, index) => {
        const at = doubtful.findIndex((place) => place.index === index);
        return at < 0 ? argument : withBlanks(argument as unknown[][], ranges[at].valueTypes);
      });
    }).catch(() => given);
  }
}

function holds(argument: unknown, value: 0 | null): boolean {
  return Array.isArray(argument) && argument.some((row) => Array.isArray(row) && row.includes(value));
}

/** The range of an address such as "Cordons!A1:L9" or "'Bob''s rows'!A1". */
function rangeAt(context: Excel.RequestContext, address: string): Excel.Range {
  const cut = address.lastIndexOf("!");
  const sheet = address
    .slice(0, cut)
    .replace(/^'(.*)'$/, "$1")
    .replaceAll("''", "'");
  return context.workbook.worksheets.getItem(sheet).getRange(address.slice(cut + 1));
}

function withBlanks(
  rows: readonly (readonly unknown[])[],
  types: readonly (readonly string[])[],
): unknown[][] {
  return rows.map((row, r) =>
    row.map((cell, column) => (cell === 0 && types[r]?.[column] === "Empty" ? null : cell)),
  );
}
