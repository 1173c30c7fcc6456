import type { CellValue } from "../../survey/sheets/cell";
import type { CellWrite } from "../surveyWorkbook";

/** What is put into range.values or range.formulas so that the cell holds exactly this value; blank clears the cell. */
export function asExcelInput(value: CellValue): string | number | boolean {
  if (value === null || value === "") return "";
  if (typeof value === "string") return `'${value}`;
  return typeof value === "object" ? value.error : value;
}

/** Input for one write: a formula as it is, any text with the apostrophe that keeps it text. */
export function inputOf(write: CellWrite): string | number | boolean {
  return "formula" in write ? write.formula : asExcelInput(write.value);
}

/** A cell as Excel gave it, with errors told from text. */
export function cellValueOf(value: unknown, type: string): CellValue {
  if (value === "" || type === "Empty") return null;
  if (type === "Error") return { error: String(value) };
  return value as string | number | boolean;
}

/** The formula of a cell, or null: text that only looks like one equals its own value. */
export function formulaOf(formula: unknown, value: unknown): string | null {
  return typeof formula === "string" && formula.startsWith("=") && formula !== value ? formula : null;
}

/** What brings a cell back to what it was: its formula, or its value. */
export function inputToRestore(formula: unknown, value: unknown, type: string): string | number | boolean {
  return formulaOf(formula, value) ?? asExcelInput(cellValueOf(value, type));
}
