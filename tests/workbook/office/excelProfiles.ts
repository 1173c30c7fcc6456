/** A copy of Excel: what it supports, and how it acts where copies differ. */
export interface ExcelProfile {
  readonly name: string;
  /** Highest ExcelApi requirement set, such as 14 for 1.14. */
  readonly excelApi: number;
  /** Highest CustomFunctionsRuntime requirement set. */
  readonly customFunctions: number;
  readonly platform: "windows" | "mac" | "web";
  /** Office.context.diagnostics: https://learn.microsoft.com/javascript/api/office/office.contextinformation */
  readonly diagnostics: { readonly version: string; readonly platform: string };
  /** As what a blank cell reaches a function: https://github.com/OfficeDev/office-js/issues/4702 */
  readonly blankArgument: 0 | null;
  /** Whether window.print() does anything: https://github.com/OfficeDev/office-js/issues/3385 */
  readonly prints: boolean;
}

/**
 * The copies of Excel that Cordonbook is made for, by
 * https://learn.microsoft.com/javascript/api/requirement-sets/excel/excel-api-requirement-sets and
 * https://learn.microsoft.com/javascript/api/requirement-sets/excel/custom-functions-requirement-sets
 */
export const EXCEL_PROFILES = {
  perpetual2021: {
    name: "Excel 2021 on Windows",
    excelApi: 14,
    customFunctions: 3,
    platform: "windows",
    diagnostics: { version: "16.0.14326.20508", platform: "PC" },
    blankArgument: 0,
    prints: true,
  },
  current: {
    name: "current Microsoft 365 on Windows",
    excelApi: 20,
    customFunctions: 5,
    platform: "windows",
    diagnostics: { version: "16.0.19201.20002", platform: "PC" },
    blankArgument: null,
    prints: true,
  },
  web: {
    name: "Excel on the web",
    excelApi: 20,
    customFunctions: 5,
    platform: "web",
    diagnostics: { version: "16.0.19300.41000", platform: "OfficeOnline" },
    blankArgument: null,
    prints: true,
  },
  mac: {
    name: "current Microsoft 365 on a Mac",
    excelApi: 20,
    customFunctions: 5,
    platform: "mac",
    diagnostics: { version: "16.100.25081015", platform: "Mac" },
    blankArgument: null,
    prints: false,
  },
} as const satisfies Record<string, ExcelProfile>;

/** Methods that fail on Windows and Mac while another workbook is in front, with the error that they throw. */
export const FAILS_BEHIND_ANOTHER_WORKBOOK: Readonly<Record<string, string>> = {
  // https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-troubleshooting
  "Chart.activate": "GeneralException",
  "Range.select": "GeneralException",
  "Table.clearFilters": "GeneralException",
  "Workbook.getActiveCell": "InvalidSelection",
  "Workbook.getSelectedRange": "InvalidSelection",
  "Worksheet.activate": "GeneralException",
  "Worksheet.delete": "InvalidSelection",
  "WorksheetCollection.add": "GeneralException",
  "WorksheetFreezePanes.freezeAt": "GeneralException",
  "WorksheetFreezePanes.freezeColumns": "GeneralException",
  "WorksheetFreezePanes.freezeRows": "GeneralException",
  "WorksheetFreezePanes.unfreeze": "GeneralException",
};

/**
 * Calls that clear a person's list of steps to undo, and cannot be part of a merged group (UndoNotSupported):
 * https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-undo-capabilities#unsupported-apis
 */
const CLEARS_UNDO: Readonly<Record<string, readonly ExcelProfile["platform"][]>> = {
  "NamedItem.comment": ["web"],
  "Workbook.insertWorksheetsFromBase64": ["windows", "mac", "web"],
  "Worksheet.copy": ["windows", "mac", "web"],
  "Worksheet.delete": ["windows", "mac", "web"],
  "Worksheet.name": ["windows", "mac"],
  "Worksheet.position": ["windows", "mac"],
  "Worksheet.visibility": ["windows", "mac"],
  // Not on that page; people report it: https://techcommunity.microsoft.com/t5/microsoft-365-developer-platform/idb-p/Microsoft365DeveloperPlatform
  "SettingCollection.add": ["windows", "mac", "web"],
};

/** Methods that change the workbook; setting any property does too. */
const CHANGES = new Set(
  "add,apply,clear,clearAll,convertToRange,copyFrom,delete,freezeRows,merge,refresh,resize,setPosition,setSolidColor,setValues,setXAxisValues".split(
    ",",
  ),
);

/** What a call means for the list of steps to undo. */
export function undoOf(api: string, sets: boolean, { platform }: ExcelProfile): "none" | "step" | "clears" {
  if (CLEARS_UNDO[api]?.includes(platform)) return "clears";
  return sets || CHANGES.has(api.slice(api.indexOf(".") + 1)) ? "step" : "none";
}
