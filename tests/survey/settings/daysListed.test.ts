import { readSeason } from "../../../src/survey/reading/readSeason";
import { crewCalendar } from "../../../src/survey/decide/plan/workPlan";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";

const seasonOf = (daysOff: CellValue) =>
  readSeason([
    areaOf("Settings", [
      ["Setting", "Value"],
      ["Days off", daysOff],
    ]),
  ]);

describe("days off", () => {
  // 46054 is 1 February 2026, so that the 16th, a Monday, is 46069.
  test.each<[string, CellValue, number[]]>([
    ["one day", "2026-02-16", [46069]],
    ["a day typed alone, which a spreadsheet keeps as its number", 46069, [46069]],
    ["with commas or semicolons between them", " 2026-02-16,2026-02-17 ; 2026-02-20 ", [46069, 46070, 46073]],
    ["a comma behind the last", "2026-02-16, ", [46069]],
    ["in words, and with a day that can be no month", "16 Feb 2026, 2/17/2026", [46069, 46070]],
    ["none", null, []],
  ])("are read: %s", (_, written, days) => {
    const { settings, settingProblems } = seasonOf(written);
    expect(settingProblems).toEqual([]);
    expect(crewCalendar(settings).daysOff).toEqual(days);
  });

  // Of five days off in a row the crew would be planned for four, and of half a day for none at all.
  test.each<[string, CellValue]>([
    ["from one to another", "2026-02-16 to 2026-02-20"],
    ["a word behind the day", "2026-02-16 afternoon"],
    ["a word before the day", "not 2026-02-16"],
    ["a time behind the day", "2026-02-16T12:00"],
    ["two days without a comma", "2026-02-16 2026-02-17"],
    ["one of them no day", "2026-02-16, soon"],
    ["a day that February does not have", "2026-02-30"],
    ["day and month that may change places", "2/3/2026"],
    ["numbers that are no day of our time", "16, 17"],
    ["half a day", "46069.5"],
    ["a mark", true],
  ])("that are not understood are said, and none is planned by: %s", (_, written) => {
    const { settings, settingProblems } = seasonOf(written);
    expect(settingProblems).toMatchObject([
      { sheet: "Settings", sheetRow: 2, value: written, reason: "notAChoice", expected: "2026-02-16" },
    ]);
    expect(crewCalendar(settings).daysOff).toEqual([]);
  });
});
