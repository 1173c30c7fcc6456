import { EXCEL_REPORT_TEXTS as TEXTS } from "../../../src/texts/excelReport";
import { LANGUAGES, type Text } from "../../../src/texts/language";
import { REPORT_PAGES, type ReportId, type ReportRow } from "../../../src/workbook/excel/reportPages";
import {
  excelReportSheet,
  excelReportText,
  reportLine,
} from "../../../src/workbook/results/excelReportSheet";

const ROWS: readonly ReportRow[] = [
  { id: "blank", outcome: "different", says: "value", shows: "0" },
  { id: "print", outcome: "same", says: "nothing", shows: "", otherwise: true },
  { id: "editing", outcome: "notTried", says: "notEditing", shows: "" },
  { id: "sets", outcome: "same", says: "value", shows: "ExcelApi 1.20" },
];

test("the sheet says in a line what was tried, expected and seen, and where that is written", () => {
  const sheet = excelReportSheet(ROWS, { language: "en", date: "November 26, 2026", version: "0.1.0" });
  expect(sheet).toMatchObject({
    sheet: "Excel report",
    title: [
      "Report about this Excel",
      "Made on November 26, 2026 by Cordonbook 0.1.0.",
      "2 as expected, 1 different, 1 not tried.",
    ],
    headers: ["What was tried", "Expected", "Seen", "Result", "Says who"],
    rows: [
      [
        "As what a blank cell of a range reaches a function",
        "null",
        "0",
        "different",
        "https://github.com/OfficeDev/office-js/issues/4702",
      ],
      [
        "Printing from the pane",
        "nothing: a Mac does not print from a pane",
        "nothing",
        "same",
        "https://github.com/OfficeDev/office-js/issues/3385",
      ],
      [
        "Asking Excel while a cell is being edited",
        "refused with InvalidOperationInCellEditMode until the cell is left",
        "no cell was being edited",
        "not tried",
        "https://learn.microsoft.com/javascript/api/excel/excel.runoptions",
      ],
      [
        "Highest requirement sets",
        "at least SharedRuntime 1.1, CustomFunctionsRuntime 1.3, ExcelApi 1.14",
        "ExcelApi 1.20",
        "same",
        "https://learn.microsoft.com/javascript/api/requirement-sets/excel/excel-api-requirement-sets",
      ],
    ],
  });
  expect(excelReportText(sheet).split("\n").slice(2, 5)).toEqual([
    "2 as expected, 1 different, 1 not tried.",
    "What was tried\tExpected\tSeen\tResult\tSays who",
    "As what a blank cell of a range reaches a function\tnull\t0\tdifferent\thttps://github.com/OfficeDev/office-js/issues/4702",
  ]);
});

test.each(LANGUAGES)("every line has its words in %s, with nothing left to fill in", (language) => {
  const ids = Object.keys(REPORT_PAGES) as ReportId[];
  expect(Object.keys(TEXTS.rows)).toEqual(ids);
  const others: Partial<Record<string, Text>> = TEXTS.otherwise;
  const tried = ids.map((id) => {
    const line = reportLine({ id, outcome: "same", says: "value", shows: "seen" }, language);
    expect(line.join("\n")).not.toMatch(/[{}]|undefined|\n\n/);
    const other = reportLine({ id, outcome: "same", says: "value", shows: "", otherwise: true }, language);
    expect(other[1] === line[1]).toBe(others[id] === undefined);
    return line[0];
  });
  expect(new Set(tried).size).toBe(ids.length);
});
