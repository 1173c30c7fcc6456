import { NOTHING_BEHIND } from "../../../src/survey/reading/sheetArea";
import "@univerjs/preset-sheets-core/lib/index.css";
import { DeskWorkbook } from "../../../src/workbook/desk/deskWorkbook";
import { EarlyWorkbook } from "../../../src/workbook/desk/earlyWorkbook";
import { loadWorkbook, withStyles } from "../../../src/workbook/desk/loadWorkbook";
import { Pace } from "../../../src/workbook/desk/pace";
import { readContent, type FileContent, type FileRows } from "../../../src/workbook/desk/readContent";
import { isCsvName } from "../../../src/workbook/file/openWorkbook";
import type { SurveyWorkbook } from "../../../src/workbook/surveyWorkbook";
import { startEngine } from "../../../src/workbook/desk/startEngine";
import { workbookData } from "../../../src/workbook/desk/workbookData";
import words from "../../../src/desk/engine/words-en";
import { areasOfAddress } from "../../../src/workbook/address";
import { surveyWorkbookContract } from "../../workbook/contract";

const container = document.createElement("div");
container.style.cssText = "width: 900px; height: 600px";
document.body.append(container);
const engine = startEngine(container, "en", words);
let open: { getId(): string } | undefined;

const cases = surveyWorkbookContract(async (sheets, merged = {}) => {
  if (open) engine.disposeUnit(open.getId());
  const workbook = engine.createWorkbook(
    await workbookData({
      file: "Contract",
      names: [],
      styles: [],
      startsIn1904: false,
      flags: new Map(),
      sheets: Object.entries(sheets).map(([name, rows]) => ({
        name,
        hidden: false,
        end: NOTHING_BEHIND,
        look: undefined,
        tables: [],
        rows: rows.map((values, index) => ({
          number: index + 1,
          values: [...values],
          formulas: undefined,
        })),
      })),
    }),
  );
  open = workbook;
  for (const [name, addresses] of Object.entries(merged))
    for (const { firstRow, firstColumn, lastRow, lastColumn } of addresses.flatMap(areasOfAddress))
      workbook
        .getSheetByName(name)!
        .getRange(firstRow - 1, firstColumn - 1, lastRow - firstRow + 1, lastColumn - firstColumn + 1)
        .merge();
  return new DeskWorkbook(engine, workbook);
});

/** For the test that drives this page: runs one rule and gives back what is wrong, if anything. */
Object.assign(window, {
  marksOf: async (bytes: number[]) => {
    if (open) engine.disposeUnit(open.getId());
    const loaded = await loadWorkbook("marked.xlsx", Uint8Array.from(bytes));
    const workbook = engine.createWorkbook(await workbookData(loaded));
    open = workbook;
    const desk = new DeskWorkbook(engine, workbook);
    const { marks } = await desk.readSheet("Cordons");
    const { isHidden } = await desk.readSheet("Spare");
    return { marks, isHidden, hidden: await desk.hiddenSheets() };
  },
  earlyAndThere: async (file: string, bytes: number[]) => {
    if (open) engine.disposeUnit(open.getId());
    const all = Uint8Array.from(bytes);
    let tell: (rows: FileRows) => void;
    const early = new EarlyWorkbook(new Promise((resolve) => (tell = resolve)));
    const content = await readContent(file, all, new Pace(undefined), (rows) => tell(rows));
    const before = await seenOf(early, content);
    const workbook = engine.createWorkbook(await workbookData(await withStyles(content, all)));
    open = workbook;
    const desk = new DeskWorkbook(engine, workbook, isCsvName(file), content.sheets);
    for (const [key, value] of content.flags) await desk.writeFlag(key, value);
    early.arrive(desk);
    return [before, await seenOf(desk, content), await seenOf(early, content)];
  },
  ruleNames: cases.map(({ name }) => name),
  runRule: (name: string) =>
    cases
      .find((rule) => rule.name === name)!
      .run()
      .then(
        () => undefined,
        (problem: Error) => problem.message,
      ),
});

/** What the pane reads of a workbook before a person does anything; sheets with formulas wait for the grid. */
async function seenOf(workbook: SurveyWorkbook, { sheets }: FileContent) {
  const areas = [];
  for (const { name, rows } of sheets) {
    if (rows.some(({ formulas }) => formulas)) continue;
    const { values, marks, formulaAt: _none, ...area } = await workbook.readSheet(name);
    const marked = marks?.marked.map(({ row, column, struck = false, note }) => ({
      row,
      column,
      struck,
      note,
    }));
    marked?.sort((one, other) => one.row - other.row || one.column - other.column);
    areas.push({
      ...area,
      values,
      marks: marks && { ...marks, marked },
      own: await workbook.isOwnSheet(name),
    });
  }
  const flags = Object.fromEntries(await workbook.readFlags(""));
  return { names: await workbook.sheetNames(), hidden: await workbook.hiddenSheets?.(), flags, areas };
}
