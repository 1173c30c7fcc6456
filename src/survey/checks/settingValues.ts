import type { Check, FindingKind } from "./check";
import type { SettingProblem, SettingRow } from "../season/season";

const settingUnknown: FindingKind = { code: "settingUnknown", severity: "note", action: "mendSheet" };
const settingNotUsable: FindingKind = { code: "settingNotUsable", severity: "wrong", action: "correct" };
const settingTwice: FindingKind = { code: "settingTwice", severity: "wrong", action: "mendSheet" };

/** Rows of the Settings sheet that could not be taken, so that the default is in force instead. */
export const SETTING_VALUES: Check = {
  id: "settingValues",
  kinds: [settingUnknown, settingNotUsable, settingTwice],
  sheets: ["settings"],
  scope: "row",
  prepare(table, context) {
    const problems = context.season.settingProblems.filter((problem) => problem.sheet === table.sheet);
    const columns = new Map(table.columns.map((column) => [column.sheetColumn, column]));
    return (from, to, report) => {
      for (const problem of problems) {
        const index = table.indexOfSheetRow(problem.sheetRow) ?? -1;
        if (index < from || index >= to) continue;
        const kind =
          problem.reason === "unknown"
            ? settingUnknown
            : problem.reason === "twice"
              ? settingTwice
              : settingNotUsable;
        report(kind, index, columns.get(problem.sheetColumn), {
          setting: problem.setting,
          value: typeof problem.value === "object" ? (problem.value?.error ?? "") : problem.value,
          expected: problem.expected,
          reason: problem.reason,
          ...(problem.first && firstRow(problem, problem.first)),
        });
      }
    };
  },
};

/** Where the value in force stands and what it is; without a sheet's name where it is in the same sheet. */
function firstRow({ sheet, unit }: SettingProblem, first: SettingRow) {
  return {
    unit: unit ?? "",
    otherSheet: first.sheet === sheet ? "" : first.sheet,
    otherRow: first.sheetRow,
    otherValue: typeof first.value === "object" ? "" : first.value,
    otherUnit: first.unit,
  };
}
