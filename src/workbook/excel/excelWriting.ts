/** What changes the workbook, fetched before the first change. */
export { excelCellExtras } from "./excelCellExtras";
export { markExcelCells } from "./markExcelCells";
export { writeExcelCells } from "./writeExcelCells";
export { writeExcelPivot } from "./writeExcelPivot";
export { writeOwnExcelSheet } from "./writeOwnExcelSheet";
