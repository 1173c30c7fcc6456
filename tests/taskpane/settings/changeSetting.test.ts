import { readSeason } from "../../../src/survey/reading/readSeason";
import type { Figure } from "../../../src/survey/settings/setting";
import { SETTINGS, settingOf, type SettingId } from "../../../src/survey/settings/settings";
import { settingsTable } from "../../../src/survey/settings/settingsTable";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { freshSettings, planChange } from "../../../src/taskpane/settings/changeSetting";
import { movedResults, nothingMoves, type MovedResults } from "../../../src/taskpane/settings/movedResults";
import type { ReadSettings } from "../../../src/taskpane/settings/settingsState";
import { LANGUAGES } from "../../../src/texts/language";
import { layOutOwnSheet } from "../../../src/workbook/ownSheet";
import { CORDON_HEADS } from "../../survey/cordonHeads";

const area = (sheet: string, values: SheetArea["values"]): SheetArea => ({
  sheet,
  firstRow: 1,
  firstColumn: 1,
  values,
  formulaAt: () => null,
});

const HEAD = [...CORDON_HEADS, "Longest gap"];
const CORDONS = area("Cordons", [
  HEAD,
  ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1],
  ["North Bench", 1, 1, "left", "B", 2, 3.5, 7, 5, 1],
  ["North Bench", 1, 1, "right", "C", 1, 3.5, 7, 7, 0],
]);

function read(...areas: SheetArea[]): ReadSettings {
  const table = areas.map(settingsTable).find((found) => found !== undefined);
  return { areas, season: readSeason(areas), table };
}

function outcome(before: ReadSettings, id: SettingId, typed: string): MovedResults {
  const plan = planChange(before, id, typed, "AB", 45350, "en");
  if (typeof plan === "string") throw new Error(plan);
  const work = movedResults(before.season, readSeason(plan.areas), 45350);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

const number = SETTINGS.find((setting) => setting.kind === "figure")!;
const share = settingOf("weightOfLiveSpurs");

test("a figure as the source has it moves nothing", () => {
  const moved = outcome(read(CORDONS), share.id, String(share.value));
  expect(moved.vines).toBe(1);
  expect(nothingMoves(moved)).toBe(true);
});

test("a figure that decides a vine shows the vine with both answers", () => {
  const lead = SETTINGS.filter(({ id }) => /close/i.test(id));
  const moves = lead
    .map((setting) => outcome(read(CORDONS), setting.id, String((setting as Figure).most)).moved)
    .flat();
  expect(moves).toContainEqual(expect.objectContaining({ block: "North Bench", row: 1, vine: 1 }));
  for (const { before, after } of moves) expect(before).not.toBe(after);
});

// 2.5 lb: 30 + 1.5 x 10 = 45 and 20 + 1.5 x 10 = 35 (Smith, Ohio State University 2023); a basal shoot a spur bears more
test("a figure that decides no vine shows the node budgets and crops that it moves", () => {
  const blocks = area("Blocks", [
    ["Block", "Vines", "Vine spacing (ft)", "Cluster weight (lb)", "Clusters a shoot", "Budbreak"],
    ["North Bench", 10, 8, 0.25, 2, 0.9],
  ]);
  const vines = area("Vines", [
    ["Block", "Row", "Vine", "Status", "Prunings (lb)"],
    ["North Bench", 1, 1, "bearing", 2.5],
  ]);
  const clear = area("Cordons", [
    HEAD,
    ...[1, 2, 3].flatMap((vine) => [
      ["North Bench", 1, vine, "left", "A", 1, 3.5, 7, 7, 0],
      ["North Bench", 1, vine, "right", "C", 2, 3.5, 7, 7, 0],
    ]),
  ]);
  const survey = read(clear, blocks, vines);
  const rule = outcome(survey, "nodeRule", "20+10");
  const [{ block, before, after }] = rule.budgets;
  expect([rule.budgets.length, block, rule.moved]).toEqual([1, "North Bench", []]);
  expect(before).toBeCloseTo(45, 9);
  expect(after).toBeCloseTo(35, 9);
  const bearing = outcome(survey, "basalShootsASpur", "1");
  expect([bearing.budgets, bearing.moved, nothingMoves(bearing)]).toEqual([[], [], true]);
  expect(bearing.crops.map(({ block: name, stage }) => [name, stage])).toEqual([["North Bench", "winter"]]);
  const [crop] = bearing.crops;
  for (const end of ["low", "likely", "high"] as const)
    expect(crop.after![end]).toBeGreaterThan(crop.before![end]);
});

test.each([
  { why: "outside its limits", typed: String(number.most + 1) },
  { why: "words where a number must stand", typed: "plenty" },
])("a figure $why is refused in one sentence that names it", ({ typed }) => {
  const plan = planChange(read(CORDONS), number.id, typed, "AB", 45350, "en");
  expect(plan).toEqual(expect.stringContaining(number.name.en));
});

test("a decimal comma is a decimal comma", () => {
  const plan = planChange(read(CORDONS), share.id, "0,25", "AB", 45350, "es");
  expect(typeof plan === "string" ? plan : plan.cells.map(({ value }) => value)).toContain(0.25);
});

test("the workbook's own table is planned on, and only cells of the figure's row", () => {
  const table = area("Settings", [
    ["Setting", "Value", "Unit", "Source", "Changed by", "Changed on"],
    [share.name.en, 0.3, "share", "ours", null, null],
    ["My own figure", 7, null, null, null, null],
  ]);
  const plan = planChange(read(CORDONS, table), share.id, "0.5", "AB", 45350, "en");
  if (typeof plan === "string") throw new Error(plan);
  expect(new Set(plan.cells.map(({ row }) => row))).toEqual(new Set([2]));
  expect(plan.cells.map(({ value }) => value)).toEqual(expect.arrayContaining([0.5, "AB", 45350]));
  expect(readSeason(plan.areas).settings.weightOfLiveSpurs).toBe(0.5);
});

describe.each(LANGUAGES)("a new sheet of settings in %s", (language) => {
  test.each(["US", "metric"] as const)(
    "in %s units is a table that reads back as every figure's own",
    (units) => {
      const content = freshSettings(language, units);
      const { values } = layOutOwnSheet(content);
      const table = settingsTable(area(content.sheet, values));
      expect(table?.entries.map(({ setting }) => setting?.id)).toEqual(SETTINGS.map(({ id }) => id));
      for (const { taken, setting } of table!.entries) {
        const { value } = setting!;
        const expected = typeof value === "number" ? expect.closeTo(value, 9) : value;
        expect(taken).toEqual(value === "" ? undefined : { value: expected });
      }
      const other = units === "US" ? ["cm", "m", "kg", "nodes/m"] : ["in", "ft", "lb", "nodes/ft"];
      expect(table!.entries.filter(({ unit }) => other.includes(String(unit)))).toEqual([]);
    },
  );
});

// 5 in are 12.7 cm; the limits of 1 to 24 in are 2.54 to 60.96 cm
test("a figure of a metric workbook is typed, refused and written in metric", () => {
  const metric = area("Cordons", [
    HEAD.map((head) => head.replace("(ft)", "(m)")),
    ["North Bench", 1, 1, "left", "A", 1, 1.05, 7, 6, 1],
  ]);
  const table = area("Settings", [
    ["Setting", "Value", "Unit", "Changed by", "Changed on"],
    ["Spur spacing", 10, "cm", null, null],
  ]);
  const plan = planChange(read(metric, table), "spurSpacing", "12.7", "AB", 45350, "en");
  if (typeof plan === "string") throw new Error(plan);
  expect(plan.cells[0].value).toBe(12.7);
  expect(readSeason(plan.areas).settings.spurSpacing).toBeCloseTo(0.127, 9);
  expect(planChange(read(metric, table), "spurSpacing", "70", "AB", 45350, "en")).toBe(
    "Spur spacing must lie within 2.54 – 60.96, but 70 was given.",
  );
});
