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
  RequestPayloadSizeLimitExceeded: "tooMuchAtOnce",
  ResponsePayloadSizeLimitExceeded: "tooMuchAtOnce",
  RangeExceedsLimit: "tooMuchAtOnce",
  ApiNotFound: "notInThisExcel",
  NotImplemented: "notInThisExcel",
  UnsupportedOperation: "notInThisExcel",
  UnsupportedFeature: "notInThisExcel",
};

/** What went wrong in Excel as a WorkbookProblem that names the sheet; stopped runs and our own problems pass as they are. */
export function excelProblem(error: unknown, sheet: string): unknown {
  if (error instanceof WorkbookProblem || (error as Error | null)?.name === "AbortError") return error;
  const code = officeCode(error);
  if (code === "") return error;
  const message = String((error as Error).message).replace(/\.$/, "");
  return new WorkbookProblem(
    PROBLEM_OF_CODE[code] ?? "excelRefused",
    { sheet, reason: `${code}: ${message}` },
    { cause: error },
  );
}
