import { WorkbookProblem } from "../surveyWorkbook";

/** Code of an error that Office.js threw, "" for any other error. */
export function officeCode(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code;
  return typeof code === "string" ? code : "";
}

const PROBLEM_OF_CODE: Readonly<Record<string, string>> = {
  ItemNotFound: "noSheet",
  InvalidReference: "noSheet",
  AccessDenied: "protectedSheet",
  InvalidOperationInCellEditMode: "cellBeingEdited",
  FilteredRangeConflict: "filteredTable",
  InactiveWorkbook: "otherWorkbook",
  InvalidSelection: "otherWorkbook",
  MergedRangeConflict: "overlap",
  PivotTableRangeConflict: "overlap",
  RequestPayloadSizeLimitExceeded: "tooMuchAtOnce",
  ResponsePayloadSizeLimitExceeded: "tooMuchAtOnce",
  RangeExceedsLimit: "tooMuchAtOnce",
  ApiNotFound: "notInThisExcel",
  NotImplemented: "notInThisExcel",
  UnsupportedOperation: "notInThisExcel",
  UnsupportedFeature: "notInThisExcel",
};

/**
 * Calls that Excel on Windows and Mac refuses with GeneralException while another workbook is in front
 * (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-troubleshooting), of those that are used.
 */
const NEEDS_THE_FRONT = /^(Range\.select|Worksheet\.activate|WorksheetCollection\.add)$/i;

/** What went wrong in Excel as a WorkbookProblem that names the sheet; stopped runs and our own problems pass as they are. */
export function excelProblem(error: unknown, sheet: string): unknown {
  if (error instanceof WorkbookProblem || (error as Error | null)?.name === "AbortError") return error;
  const code = officeCode(error);
  if (code === "") return error;
  const { message, debugInfo } = error as Partial<OfficeExtension.Error>;
  const isBehind = code === "GeneralException" && NEEDS_THE_FRONT.test(debugInfo?.errorLocation ?? "");
  return new WorkbookProblem(
    isBehind ? "otherWorkbook" : (PROBLEM_OF_CODE[code] ?? "excelRefused"),
    { sheet, reason: `${code}: ${String(message).replace(/\.$/, "")}` },
    { cause: error },
  );
}
