import "@univerjs/preset-sheets-core/lib/index.css";
import { DeskWorkbook } from "../../../src/workbook/desk/deskWorkbook";
import { loadWorkbook } from "../../../src/workbook/desk/loadWorkbook";
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
