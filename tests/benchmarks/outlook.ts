import { randomSource } from "../../sample-workbooks/make/randomSource";
import { cropOutlook } from "../../src/domain/outlook/cropOutlook";
import { exactly, fromYears } from "../../src/domain/outlook/estimate";
import { vinesAtRandom } from "../../src/domain/outlook/vinesCounted";
import { callFunction, isRefused } from "../../src/functions/callFunction";
import { functionNamed } from "../../src/functions/registry";
import { median, timed } from "./timed";

const VINES = 100_000;
const RUNS = 25;

/** Crop outlook of 100,000 counted vines against bare loops over the same counts, in one process. */
export function run(): void {
  const { whole } = randomSource(11);
  const counts = Array.from({ length: VINES }, () => whole(20, 110));
  const cells = [
    ["Block", "Row", "Vine", "Status", "Clusters"],
    ...counts.map((count, index) => ["A", 1 + Math.floor(index / 500), 1 + (index % 500), "bearing", count]),
  ];
  const blocks = [
    ["Block", "Vines", "Row spacing (ft)", "Vine spacing (ft)", "Cluster weight (lb)"],
    ["A", 2 * VINES, 9, 6, 0.25],
  ];
  const OUTLOOK = functionNamed("CROPOUTLOOK")!;
  let check = 0;
  const times = {
    bare: [] as number[],
    domain: [] as number[],
    bareCells: [] as number[],
    call: [] as number[],
  };
  for (let round = 0; round < RUNS; round++) {
    times.bare.push(timed(() => (check += bareLoop(counts))));
    times.domain.push(timed(() => (check += outlookOf(counts))));
    times.bareCells.push(timed(() => (check += bareLoopOverCells(cells))));
    times.call.push(
      timed(() => {
        const outcome = callFunction(OUTLOOK, [cells, blocks]);
        if (isRefused(outcome)) throw new Error(outcome.sentence);
        check += outcome.values.length;
      }),
    );
  }
  const [bare, domain, bareCells, call] = [times.bare, times.domain, times.bareCells, times.call].map(median);
  const line = (name: string, ms: number, against?: number) =>
    console.log(
      `${name.padEnd(52)}${ms.toFixed(2).padStart(9)} ms${against ? `${(ms / against).toFixed(1).padStart(7)} x` : ""}`,
    );
  console.log(`${VINES} vines, median of ${RUNS} runs (check ${check.toFixed(0)})`);
  line("bare loop over the counts: mean and variance", bare);
  line("cropOutlook with its ranges", domain, bare);
  line("bare loop over the cells: types, places, counts", bareCells);
  line("=CORDON.CROPOUTLOOK on the two tables", call, bareCells);
}

function bareLoop(counts: readonly number[]): number {
  let sum = 0;
  for (let index = 0; index < counts.length; index++) sum += counts[index];
  const mean = sum / counts.length;
  let squares = 0;
  for (let index = 0; index < counts.length; index++) squares += (counts[index] - mean) ** 2;
  return mean + squares / (counts.length - 1);
}

function outlookOf(counts: readonly number[]): number {
  return cropOutlook(
    {
      stage: "clusters",
      clusters: vinesAtRandom(counts, 2 * counts.length),
      clusterWeight: fromYears("clusterWeight", 0.1, 0.2),
    },
    { planted: 2 * counts.length, bearing: exactly("missing", 0.95) },
  ).block.likely;
}

/** The least that any reader of such a table must do: look at every cell's type, tell blocks apart, find rows, add up. */
function bareLoopOverCells(cells: readonly (readonly (string | number)[])[]): number {
  const rows = new Map<string, { n: number; sum: number; squares: number }>();
  for (const cell of cells.slice(1)) {
    for (const value of cell) if (typeof value !== "number" && typeof value !== "string") return NaN;
    if (String(cell[3]).trim().toLowerCase() !== "bearing") continue;
    const key = `${String(cell[0]).trim().toLowerCase()}/${cell[1]}`;
    const row = rows.get(key) ?? { n: 0, sum: 0, squares: 0 };
    rows.set(key, row);
    const count = Number(cell[4]);
    row.n++;
    row.sum += count;
    row.squares += count * count;
  }
  return [...rows.values()].reduce((total, { n, sum, squares }) => total + sum / n + squares, 0);
}
