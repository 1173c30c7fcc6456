import { selfTest, type SelfTestLine } from "../../../src/taskpane/care/selfTest";
import { CARE_TEXTS } from "../../../src/texts/pane";
import { ABILITY_TEXTS, SELF_TEST } from "../../../src/texts/selfTest";
import type { FunctionsAnswer } from "../../../src/workbook/excel/excelAbilities";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";
import { WorkbookProblem } from "../../../src/workbook/surveyWorkbook";

const noWait = async () => undefined;

async function lines(workbook: MemoryWorkbook): Promise<SelfTestLine[]> {
  const seen: SelfTestLine[] = [];
  for await (const line of selfTest(workbook, noWait)) seen.push(line);
  return seen;
}

test("everything works but what this host does not calculate, and no trace is left", async () => {
  const workbook = new MemoryWorkbook({ Plan: [["x"]], "Cordonbook test 1": [["mine"]] });
  const seen = await lines(workbook);
  const outcomes = seen.map(({ outcome }) => outcome);
  expect(outcomes).toEqual(["works", "works", "works", "works", "works", "unsure", "works"]);
  expect(seen[5].note).toBe(CARE_TEXTS.notInCells);
  expect(await workbook.sheetNames()).toEqual(["Plan", "Cordonbook test 1"]);
  expect(await workbook.readFlag("selfTest")).toBeUndefined();
});

test("a formula that comes to its value in a cell is seen", async () => {
  const workbook = new MemoryWorkbook({ Plan: [["x"]] });
  const writeCells = workbook.writeCells.bind(workbook);
  workbook.writeCells = async (sheet, cells) => {
    await writeCells(sheet, cells);
    for (const { row, column } of cells)
      workbook.type(sheet, row, column, { formula: '=CORDON.NODEBUDGET(3,"30+10")', value: 50 });
  };
  const line = (await lines(workbook)).find(({ text }) => text === CARE_TEXTS.inCells);
  expect(line?.outcome).toBe("works");
  expect(line?.note).toBeUndefined();
});

test("the cell that was selected is selected again where making sheets went elsewhere", async () => {
  const workbook = new MemoryWorkbook({ Plan: [["x"]], Counts: [["y"]] });
  await workbook.selectCell("Counts", 1, 1);
  const deleteOwnSheet = workbook.deleteOwnSheet.bind(workbook);
  workbook.deleteOwnSheet = async (sheet) => {
    await deleteOwnSheet(sheet);
    await workbook.selectCell("Plan", 1, 1);
  };
  await lines(workbook);
  expect(await workbook.selectedCell()).toEqual({ sheet: "Counts", row: 1, column: 1 });
});

test("a workbook that takes no new sheet is told so, with its own sentence", async () => {
  const workbook = new MemoryWorkbook({ Plan: [["x"]] });
  workbook.writeOwnSheet = async () => {
    throw new WorkbookProblem("protectedWorkbook");
  };
  const line = (await lines(workbook)).at(-1);
  expect(line).toMatchObject({ text: CARE_TEXTS.writes, outcome: "fails" });
  expect(line?.failure).toBeInstanceOf(WorkbookProblem);
});

test("a host that turns text into a formula fails", async () => {
  const workbook = new MemoryWorkbook({ Plan: [["x"]] });
  const readSheet = workbook.readSheet.bind(workbook);
  workbook.readSheet = async (name, options) => {
    const area = await readSheet(name, options);
    return name === "Plan" ? area : { ...area, formulaAt: () => "=1+1" };
  };
  expect((await lines(workbook)).find(({ text }) => text === CARE_TEXTS.writes)?.outcome).toBe("fails");
});

describe("in Excel", () => {
  const abilities = () => [
    { id: "pane", outcome: "yes", set: "SharedRuntime 1.1" } as const,
    { id: "oneUndo", outcome: "missing", set: "ExcelApi 1.20" } as const,
    { id: "spill", outcome: "tooOld", set: "ExcelApi 1.12" } as const,
  ];

  async function inExcel(askFunctions: () => Promise<FunctionsAnswer>): Promise<SelfTestLine[]> {
    const seen: SelfTestLine[] = [];
    const workbook = new MemoryWorkbook({ Plan: [["x"]] });
    for await (const line of selfTest(workbook, noWait, { abilities, askFunctions })) seen.push(line);
    expect(await workbook.sheetNames()).toEqual(["Plan"]);
    return seen;
  }

  test("what this copy supports follows in the same list", async () => {
    const seen = await inExcel(async () => ({ state: "answers", shows: "0.1.0" }));
    expect(seen.slice(-3)).toEqual([
      { text: ABILITY_TEXTS.pane, facts: {}, outcome: "works" },
      {
        text: ABILITY_TEXTS.oneUndo,
        note: SELF_TEST.missing,
        facts: { set: "ExcelApi 1.20" },
        outcome: "missing",
      },
      {
        text: ABILITY_TEXTS.spill,
        note: SELF_TEST.tooOld,
        facts: { set: "ExcelApi 1.12" },
        outcome: "fails",
      },
    ]);
  });

  test.each([
    ["answers", "works"],
    ["otherVersion", "fails"],
    ["unknown", "fails"],
    ["waiting", "unsure"],
    ["error", "fails"],
  ] as const)("a cell that gives %s says so in one line: %s", async (state, outcome) => {
    const seen = await inExcel(async () => ({ state, shows: "as seen" }));
    expect(seen.filter(({ text }) => text === CARE_TEXTS.inCells)).toEqual([]);
    expect(seen.find(({ text }) => text === SELF_TEST[state])).toMatchObject({
      outcome,
      facts: { shows: "as seen" },
    });
  });

  test("a question that Excel refuses fails, and the rest is tried all the same", async () => {
    const failure = new WorkbookProblem("protectedWorkbook");
    const seen = await inExcel(() => Promise.reject(failure));
    expect(seen.find(({ text }) => text === CARE_TEXTS.inCells)).toMatchObject({ outcome: "fails", failure });
    expect(seen).toHaveLength(10);
  });
});
