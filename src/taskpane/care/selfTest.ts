import { evaluateFormula } from "../../functions/evaluateFormula";
import { PROJECT_VERSION } from "../../functions/version";
import type { Text, TextFacts } from "../../texts/language";
import { CARE_TEXTS } from "../../texts/pane";
import { ABILITY_TEXTS, SELF_TEST } from "../../texts/selfTest";
import type { ExcelExtras } from "../../workbook/excel/excelExtras";
import type { ExcelAbility, FunctionsAnswer } from "../../workbook/excel/excelAbilities";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";

/** One thing that was tried. */
export interface SelfTestLine {
  readonly text: Text;
  /** What follows from it, where it does not work. */
  readonly note?: Text;
  readonly facts: TextFacts;
  /** "missing" where the add-in does without it. */
  readonly outcome: "works" | "fails" | "unsure" | "missing";
  /** What it failed with. */
  readonly failure?: unknown;
}

/** A formula with a published answer: 3 lb at 30+10 leave 50 nodes. */
const FORMULA = '=CORDON.NODEBUDGET(3,"30+10")';
const ANSWER = 50;
const OUTCOMES: Readonly<Record<FunctionsAnswer["state"], SelfTestLine["outcome"]>> = {
  answers: "works",
  otherVersion: "fails",
  unknown: "fails",
  waiting: "unsure",
  error: "fails",
};
/** How long the workbook may take to calculate a formula, in milliseconds. */
const PATIENCE = 5000;

/**
 * Tries what the add-in needs of this workbook, on sheets of its own that are taken away again: reading, writing,
 * facts kept in the workbook, and whether our functions calculate in cells. In Excel it then says what this copy
 * supports.
 *
 * @param wait lets time pass, in milliseconds
 * @param excel what only Excel has; undefined elsewhere
 */
export async function* selfTest(
  workbook: SurveyWorkbook,
  wait: (milliseconds: number) => Promise<void>,
  excel?: Pick<ExcelExtras, "abilities" | "askFunctions">,
): AsyncGenerator<SelfTestLine, void, void> {
  yield {
    text: CARE_TEXTS.version,
    facts: { version: PROJECT_VERSION, host: workbook.host },
    outcome: "works",
  };
  const outcome = evaluateFormula(FORMULA);
  const calculated = "values" in outcome && outcome.values[0][0] === ANSWER;
  yield { text: CARE_TEXTS.calculates, facts: {}, outcome: calculated ? "works" : "fails" };
  yield await tried(CARE_TEXTS.reads, async () => {
    const names = await workbook.sheetNames();
    if (names.length > 0) await workbook.readSheet(names[0], { rows: { first: 1, count: 1 } });
  });
  yield await tried(CARE_TEXTS.keeps, async () => {
    await workbook.writeFlag("selfTest", "kept");
    const kept = await workbook.readFlag("selfTest");
    await workbook.writeFlag("selfTest", undefined);
    if (kept !== "kept") throw new Error("the fact was not kept");
  });
  const shown = await workbook.selectedCell().catch(() => undefined);
  const sheet = await freeName(workbook);
  const written = await tried(CARE_TEXTS.writes, async () => {
    await workbook.writeOwnSheet({ sheet, headers: ["A"], rows: [["=1+1"]] });
    const area = await workbook.readSheet(sheet);
    if (area.values.at(-1)?.[0] !== "=1+1" || area.formulaAt(area.values.length - 1, 0) !== null)
      throw new Error("text became a formula");
  });
  yield written;
  if (written.outcome === "works") {
    yield excel === undefined
      ? withNote(CARE_TEXTS.notInCells, await tried(CARE_TEXTS.inCells, () => inCells(workbook, sheet, wait)))
      : await inExcelCells(excel);
    yield await tried(CARE_TEXTS.takesAway, async () => {
      await workbook.deleteOwnSheet(sheet);
      if (shown && (await workbook.selectedCell())?.sheet !== shown.sheet)
        await workbook.selectCell(shown.sheet, shown.row, shown.column);
    });
  }
  for (const ability of excel?.abilities() ?? []) yield abilityLine(ability);
}

/** The line with what to do, unless it works. */
function withNote(note: Text, line: SelfTestLine): SelfTestLine {
  return line.outcome === "works" ? line : { ...line, note };
}

/** Whether a formula of ours comes to its value in a cell; a host that does not calculate leaves it open. */
async function inCells(
  workbook: SurveyWorkbook,
  sheet: string,
  wait: (milliseconds: number) => Promise<void>,
): Promise<"unsure" | void> {
  await workbook.writeCells(sheet, [{ row: 1, column: 3, formula: FORMULA }]);
  for (let waited = 0; waited <= PATIENCE; waited += 250) {
    const area = await workbook.readSheet(sheet);
    const value = area.values[1 - area.firstRow]?.[3 - area.firstColumn];
    if (value === ANSWER) return;
    await wait(250);
  }
  return "unsure";
}

/** Whether our functions calculate in Excel, with the next step where they do not. */
async function inExcelCells(excel: Pick<ExcelExtras, "askFunctions">): Promise<SelfTestLine> {
  try {
    const { state, shows } = await excel.askFunctions();
    return { text: SELF_TEST[state], facts: { shows, version: PROJECT_VERSION }, outcome: OUTCOMES[state] };
  } catch (failure) {
    return { text: CARE_TEXTS.inCells, facts: {}, outcome: "fails", failure };
  }
}

function abilityLine({ id, outcome, set }: ExcelAbility): SelfTestLine {
  const text = ABILITY_TEXTS[id];
  if (outcome === "yes") return { text, facts: {}, outcome: "works" };
  const failed = outcome === "tooOld";
  return { text, note: SELF_TEST[outcome], facts: { set }, outcome: failed ? "fails" : outcome };
}

async function tried(text: Text, action: () => Promise<"unsure" | void>): Promise<SelfTestLine> {
  try {
    return { text, facts: {}, outcome: (await action()) ?? "works" };
  } catch (failure) {
    return { text, facts: {}, outcome: "fails", failure };
  }
}

async function freeName(workbook: SurveyWorkbook): Promise<string> {
  const names = new Set((await workbook.sheetNames()).map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const name = `Cordonbook test ${number}`;
    if (!names.has(name.toLowerCase())) return name;
  }
}
