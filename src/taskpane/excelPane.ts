/** What the page in Excel needs beyond the functions: fetched once they are bound. */
export { excelExtras } from "../workbook/excel/excelExtras";
export { ExcelWorkbook } from "../workbook/excel/excelWorkbook";
export { mountPane } from "./mountPane";
