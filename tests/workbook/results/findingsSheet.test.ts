import type { Finding } from "../../../src/survey/checks/finding";
import { cellMarks } from "../../../src/taskpane/check/cellMarks";
import { findingsSheet } from "../../../src/workbook/results/findingsSheet";
import { LANGUAGES } from "../../../src/texts/language";
import { layOutOwnSheet } from "../../../src/workbook/ownSheet";

const finding = (part: Partial<Finding>): Finding => ({
  code: "missingValue",
  severity: "ask",
  sheet: "Cordons",
  row: 4,
  columnNumber: 9,
  column: "Live spurs",
  facts: { block: "North Bench", row: 1, vine: 2, countedBy: "MK" },
  ...part,
});

const options = {
  date: "day",
  sentence: () => "sentence",
  remedy: () => "remedy",
  setAside: () => "",
};

describe.each(LANGUAGES)("the Findings sheet in %s", (language) => {
  test("is a table that every host takes, with a row for each finding", () => {
    const content = findingsSheet([finding({}), finding({ row: 5, columnNumber: 0, facts: {} })], {
      ...options,
      language,
    });
    const layout = layOutOwnSheet(content);
    expect(layout.values.length - layout.headerRow).toBe(2);
    expect(content.rows[0].slice(1, 9)).toEqual([
      "Cordons",
      "I4",
      "North Bench",
      1,
      2,
      "MK",
      "sentence",
      "remedy",
    ]);
    expect(content.rows[1].slice(2, 7)).toEqual(["A5", null, null, null, null]);
    expect(content.columns).toHaveLength(content.headers.length);
  });
});

test("a cell is marked once, as severe as its worst finding", () => {
  const marks = cellMarks([finding({}), finding({ severity: "wrong" }), finding({ severity: "note" })]);
  expect(marks).toEqual([{ sheet: "Cordons", row: 4, column: 9, severity: "wrong" }]);
});

test("a finding about a whole row marks its first cell", () => {
  expect(cellMarks([finding({ columnNumber: 0 })])[0]).toMatchObject({ row: 4, column: 1 });
});
