import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/preset-sheets-core";
import { callFunction, isRefused, type ResultCell, type ResultError } from "../../functions/callFunction";
import type { CordonFunction } from "../../functions/cordonFunction";
import type { RawArgument } from "../../functions/readArgument";
import type { CellValue } from "../../survey/sheets/cell";
import type { Language } from "../../texts/language";

/** Told of every result: the sentences of its errors, by place within the result. Empty when there are none. */
export type OnErrors = (
  place: { unit: string; sheet: string; row: number; column: number },
  errors: readonly { rowOffset: number; columnOffset: number; error: ResultError }[],
) => void;

/**
 * A CORDON function in the engine's formula language. The engine's own way to add a function hands blanks over as 0
 * and lets a failure inside end the calculation; this one keeps a blank a blank and turns whatever is thrown into an
 * error value.
 */
export class FunctionExecutor extends BaseFunction {
  constructor(
    private readonly called: CordonFunction,
    private readonly language: () => Language,
    private readonly onErrors: OnErrors,
  ) {
    super(`CORDON.${called.id}`);
  }

  override calculate(...variants: BaseValueObject[]): BaseValueObject {
    const place = {
      unit: this.unitId ?? "",
      sheet: this.subUnitId ?? "",
      row: this.row,
      column: this.column,
    };
    try {
      const outcome = callFunction(this.called, variants.map(rawArgument), this.language());
      const cells = isRefused(outcome) ? [[outcome]] : outcome.values;
      this.onErrors(place, errorsOf(cells));
      return valueOf(cells);
    } catch (problem) {
      this.onErrors(place, []);
      reportError(problem);
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  }
}

function rawArgument(variant: BaseValueObject): RawArgument {
  if (!variant.isArray()) return cellValue(variant);
  const array = variant as ArrayValueObject;
  const columnCount = array.getColumnCount();
  const values = array.getArrayValue();
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: columnCount }, (_, column) => cellValue(values[row]?.[column])),
  );
}

function cellValue(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  if (value.isError()) return { error: (value as ErrorValueObject).getErrorType() };
  return value.getValue() as string | number | boolean;
}

function errorsOf(cells: readonly (readonly ResultCell[])[]) {
  return cells.flatMap((row, rowOffset) =>
    row.flatMap((cell, columnOffset) =>
      typeof cell === "object" ? [{ rowOffset, columnOffset, error: cell }] : [],
    ),
  );
}

function valueOf(cells: readonly (readonly ResultCell[])[]): BaseValueObject {
  if (cells.length === 1 && cells[0].length === 1) return oneValue(cells[0][0]);
  return ArrayValueObject.create({
    calculateValueList: cells.map((row) => row.map(oneValue)),
    rowCount: cells.length,
    columnCount: cells[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function oneValue(cell: ResultCell): BaseValueObject {
  if (typeof cell === "object") return ErrorValueObject.create(cell.error as ErrorType);
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  return StringValueObject.create(cell);
}
