import type { OnErrors } from "./functionExecutor";

/** The sentences behind the error cells that CORDON functions gave, by cell. */
export class ErrorSentences {
  private readonly byCell = new Map<string, string>();
  private readonly byFormula = new Map<string, string[]>();

  /** Takes the outcome of one formula in place of what it said before. */
  readonly take: OnErrors = ({ unit, sheet, row, column }, errors) => {
    const formula = key(unit, sheet, row, column);
    for (const cell of this.byFormula.get(formula) ?? []) this.byCell.delete(cell);
    if (errors.length === 0) {
      this.byFormula.delete(formula);
      return;
    }
    const cells = errors.map(({ rowOffset, columnOffset, error }) => {
      const cell = key(unit, sheet, row + rowOffset, column + columnOffset);
      this.byCell.set(cell, error.sentence);
      return cell;
    });
    this.byFormula.set(formula, cells);
  };

  /** The sentence of a cell; rows and columns count from 0. */
  at(unit: string, sheet: string, row: number, column: number): string | undefined {
    return this.byCell.get(key(unit, sheet, row, column));
  }
}

function key(unit: string, sheet: string, row: number, column: number): string {
  return `${unit} ${sheet} ${row} ${column}`;
}
