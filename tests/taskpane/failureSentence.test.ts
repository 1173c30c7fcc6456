import { Refusal } from "../../src/domain/refusal";
import { failureSentence, isUnforeseen } from "../../src/taskpane/failureSentence";
import { LANGUAGES } from "../../src/texts/language";
import { PANE_TEXTS } from "../../src/texts/pane";
import { WorkbookProblem } from "../../src/workbook/surveyWorkbook";

test.each(LANGUAGES)("a refusal of the workbook is one sentence in %s that names the sheet", (language) => {
  const sentence = failureSentence(new WorkbookProblem("noSheet", { sheet: "Tally" }), language);
  expect(sentence).toContain("Tally");
  expect(sentence).not.toContain("{");
});

test("a refusal of a calculation is one sentence that names the argument", () => {
  const refusal = new Refusal("invalid", "outside", {
    argument: "length",
    value: -1,
    least: 0,
    most: 9,
    unit: "m",
  });
  expect(failureSentence(refusal, "en")).toContain("length");
  expect(isUnforeseen(refusal)).toBe(false);
});

test("stopping is no failure", () => {
  expect(failureSentence(new DOMException("stopped", "AbortError"), "en")).toBeUndefined();
});

test.each([new TypeError("x is undefined"), new WorkbookProblem("neverHeardOf"), "text"])(
  "what nobody foresaw shows no stack: %s",
  (failure) => {
    expect(failureSentence(failure, "en")).toBe(PANE_TEXTS.somethingWrong.en);
    expect(isUnforeseen(failure)).toBe(true);
  },
);
