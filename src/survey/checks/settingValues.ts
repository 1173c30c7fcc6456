import type { Check, FindingKind } from "../check";

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
    const problems = context.survey.settingProblems.filter((problem) => problem.sheet === table.sheet);
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
        });
      }
    };
  },
};
