import { randomSource } from "../../sample-workbooks/make/randomSource";
import { startChromium } from "../browser/chromium";
import type { BenchmarkSheet, BenchmarkTimes } from "../browser/pages/deskBenchmark";
import { scriptPage } from "../browser/scriptFor";
import { median } from "./timed";

const ROWS = 2000;
const ROUNDS = 5;

interface BenchmarkPage {
  timeSheet(sheet: BenchmarkSheet, rounds: number): Promise<BenchmarkTimes>;
}

/** The same sheets from the engine's own functions and from ours: 2,000 figures a vine, one formula a row or one for all. */
export async function run(): Promise<void> {
  const { whole } = randomSource(11);
  const figures = Array.from({ length: ROWS }, () => [whole(10, 60) / 10, whole(7, 11), whole(5, 9)]);
  const eachRow = (formula: (row: number) => string) => figures.map((_, index) => formula(index + 1));
  const pairs: readonly (readonly [string, string[], string[]])[] = [
    [
      "node budget, a formula a row",
      eachRow((row) => `=30+10*MAX(0,A${row}-1)`),
      eachRow((row) => `=CORDON.NODEBUDGET(A${row},"30+10")`),
    ],
    [
      "vines an acre, a formula a row",
      eachRow((row) => `=43560/(B${row}*C${row})`),
      eachRow((row) => `=CORDON.VINEDENSITY(B${row},C${row})`),
    ],
    [
      "node budget, ours as one formula that spills",
      eachRow((row) => `=30+10*MAX(0,A${row}-1)`),
      [`=CORDON.NODEBUDGET(A1:A${ROWS},"30+10")`],
    ],
  ];
  const browser = await startChromium();
  try {
    const page = await scriptPage(browser, "tests/browser/pages/deskBenchmark.ts", "window.timeSheet");
    const time = (name: string, formulas: string[]) =>
      page.evaluate(([sheet, rounds]) => (window as unknown as BenchmarkPage).timeSheet(sheet, rounds), [
        { name, figures, formulas },
        ROUNDS,
      ] as const);
    console.log(`${ROWS} rows on the desk page's engine, median of ${ROUNDS} rounds, both sides in one page`);
    for (const [name, native, own] of pairs) {
      const theirs = await time("native", native);
      const ours = await time("CORDON", own);
      if (Math.abs(theirs.sum - ours.sum) > 1e-6 * theirs.sum)
        throw new Error(`${name}: the two sheets differ, ${theirs.sum} and ${ours.sum}`);
      for (const what of ["all", "one"] as const) {
        const [before, after] = [median(theirs[what]), median(ours[what])];
        console.log(
          `${name}, ${what === "all" ? "everything anew" : "one figure changed"}: ` +
            `native ${before.toFixed(0)} ms, CORDON ${after.toFixed(0)} ms, ${(after / before).toFixed(2)} x`,
        );
      }
    }
  } finally {
    await browser.close();
  }
}
