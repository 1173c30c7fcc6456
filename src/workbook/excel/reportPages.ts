const LEARN = "https://learn.microsoft.com/";
const EXCEL = `${LEARN}javascript/api/excel/excel.`;
const GUIDE = `${LEARN}office/dev/add-ins/excel/`;

/** What is tried, in its order, with the page that says what is expected. */
export const REPORT_PAGES = {
  build: `${LEARN}javascript/api/office/office.contextinformation`,
  platform: `${LEARN}javascript/api/office/office.platformtype`,
  sets: `${LEARN}javascript/api/requirement-sets/excel/excel-api-requirement-sets`,
  editing: `${EXCEL}runoptions`,
  undo: `${GUIDE}excel-add-ins-undo-capabilities`,
  undoFact: `${GUIDE}excel-add-ins-undo-capabilities#unsupported-apis`,
  blank: "https://github.com/OfficeDev/office-js/issues/4702",
  error: `${GUIDE}custom-functions-json#allowerrorfordatatypeany`,
  errorInArray: `${GUIDE}custom-functions-errors#handle-errors-when-working-with-dynamic-arrays`,
  spill: `${EXCEL}range#excel-excel-range-getspillingtorangeornullobject-member(1)`,
  spillBlocked: `${GUIDE}custom-functions-dynamic-arrays`,
  watch: `${GUIDE}excel-add-ins-events`,
  text: `${EXCEL}range#excel-excel-range-values-member`,
  filterSeen: `${EXCEL}autofilter#excel-excel-autofilter-isdatafiltered-member`,
  filterWrite: `${LEARN}office/dev/add-ins/testing/application-specific-api-error-handling`,
  marks: `${EXCEL}conditionalformatcollection#excel-excel-conditionalformatcollection-add-member(1)`,
  marksOff: `${EXCEL}conditionalformat#excel-excel-conditionalformat-delete-member(1)`,
  rewrite: `${EXCEL}range#excel-excel-range-formulas-member`,
  pivot: `${GUIDE}excel-add-ins-pivottables`,
  chart: `${GUIDE}excel-add-ins-charts`,
  print: "https://github.com/OfficeDev/office-js/issues/3385",
  file: `${LEARN}javascript/api/office/office.filetype`,
} as const;

export type ReportId = keyof typeof REPORT_PAGES;

/** What was seen: the key of its words in src/texts, and what stands in them. */
export interface ReportSeen {
  readonly outcome: "same" | "different" | "notTried";
  readonly says: "value" | "refused" | "nothing" | "notCalled" | "notTold" | "notEditing" | "skipped";
  readonly shows: string;
}

/** One line of the report; `otherwise` where this copy of Excel is expected to do otherwise than most. */
export interface ReportRow extends ReportSeen {
  readonly id: ReportId;
  readonly otherwise?: true;
}
