import { NOTHING_BEHIND } from "../../../src/survey/reading/sheetArea";
import "@univerjs/preset-sheets-core/lib/index.css";
import words from "../../../src/desk/engine/words-en";
import { FUNCTIONS } from "../../../src/functions/registry";
import { registerFunctions } from "../../../src/workbook/desk/registerFunctions";
import { startEngine } from "../../../src/workbook/desk/startEngine";
import { workbookData } from "../../../src/workbook/desk/workbookData";

/** A column of formulas to be timed: one cell for each row of figures, or one formula that spills over all of them. */
export interface BenchmarkSheet {
  readonly name: string;
  /** Figures in columns A, B and C. */
  readonly figures: readonly (readonly number[])[];
  /** The formulas of column E, from row 1 on. */
  readonly formulas: readonly string[];
}

export interface BenchmarkTimes {
  /** Milliseconds until every formula has its value again, one number a round. */
  readonly all: number[];
  /** Milliseconds until the sheet has settled after one figure changed, one number a round. */
  readonly one: number[];
  /** Sum of what column E shows, to hold the sheets against each other. */
  readonly sum: number;
}

const container = document.createElement("div");
container.style.cssText = "width: 900px; height: 600px";
document.body.append(container);
const engine = startEngine(container, "en", words);
let registered = false;

async function timeSheet(
  { name, figures, formulas }: BenchmarkSheet,
  rounds: number,
): Promise<BenchmarkTimes> {
  const rowCount = Math.max(figures.length, formulas.length);
  const workbook = engine.createWorkbook(
    await workbookData({
      file: name,
      names: [],
      styles: [],
      startsIn1904: false,
      flags: new Map(),
      sheets: [
        {
          name,
          hidden: false,
          end: NOTHING_BEHIND,
          look: undefined,
          tables: [],
          rows: Array.from({ length: rowCount }, (_, row) => ({
            number: row + 1,
            values: [...(figures[row] ?? []), null, null].slice(0, 5),
            formulas: formulas[row] === undefined ? undefined : new Map([[4, formulas[row]]]),
          })),
        },
      ],
    }),
  );
  if (!registered)
    registerFunctions(
      workbook.getActiveSheet().getInject(),
      FUNCTIONS,
      () => "en",
      () => {},
    );
  registered = true;
  const formula = engine.getFormula();
  const sheet = workbook.getActiveSheet();
  const settled = (start: () => void): Promise<number> => {
    const begin = performance.now();
    const end = formula.onCalculationResultApplied(60_000).then(() => performance.now() - begin);
    start();
    return end;
  };
  await settled(() => formula.executeCalculation());
  const all: number[] = [];
  const one: number[] = [];
  for (let round = 0; round < rounds; round++) {
    all.push(await settled(() => formula.executeCalculation()));
    one.push(await settled(() => sheet.getRange(0, 0).setValue(figures[0][0] + round)));
    await settled(() => sheet.getRange(0, 0).setValue(figures[0][0]));
  }
  const values = sheet.getRange(0, 4, rowCount, 1).getValues().flat();
  engine.disposeUnit(workbook.getId());
  return { all, one, sum: values.reduce<number>((sum, value) => sum + Number(value ?? 0), 0) };
}

Object.assign(window, { timeSheet });
