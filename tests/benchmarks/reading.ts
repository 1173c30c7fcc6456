import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { writeLargeWorkbook } from "./largeSeason";

const ROWS = Number(process.env.ROWS ?? 100_000);
const RUNS = Number(process.env.RUNS ?? 3);
const CURVE = [10_000, 100_000, ...(process.env.MILLION ? [1_000_000] : [])];

interface Measured {
  readonly seconds: number;
  readonly peak: number;
  readonly cells: number;
}

/**
 * Reads one workbook with our reader and with exceljs, @e965/xlsx and hucre, each in a process of its own, in turns, so
 * that all of them meet the same machine; prints medians, spread and ratios. Then the cost of a row, read and checked,
 * from 10,000 rows up (MILLION=1 goes to a million).
 */
export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-bench-"));
  try {
    console.log(
      `${cpus().length} x ${cpus()[0].model}, ${Math.round(totalmem() / 2 ** 30)} GB, Node ${process.version}`,
    );
    const path = join(folder, "season.xlsx");
    await writeLargeWorkbook(path, ROWS);
    console.log(`${ROWS} rows x 16 columns, ${(statSync(path).size / 1e6).toFixed(1)} MB, ${RUNS} runs`);
    compare(path);
    for (const rows of CURVE) {
      const large = rows === ROWS ? path : join(folder, `${rows}.xlsx`);
      if (large !== path) await writeLargeWorkbook(large, rows);
      const read = measured("ours", large);
      const checked = measured("check", large);
      console.log(
        `${String(rows).padStart(9)} rows: read ${perRow(read, rows)}, read and checked ${perRow(checked, rows)} (${(checked.seconds / read.seconds).toFixed(2)} x), peak ${megabytes(read)} and ${megabytes(checked)}`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function compare(path: string): void {
  const readers = ["ours", "hucre", "@e965/xlsx", "exceljs", "exceljs streaming"];
  const all = new Map(readers.map((reader) => [reader, [] as Measured[]]));
  for (let round = 0; round < RUNS; round++)
    for (const reader of readers) all.get(reader)!.push(measured(reader, path));
  const ours = median(all.get("ours")!);
  for (const [reader, runs] of all) {
    const middle = median(runs);
    const seconds = runs.map((each) => each.seconds);
    console.log(
      `${reader.padEnd(18)} ${middle.seconds.toFixed(2)} s (${Math.min(...seconds).toFixed(2)} to ${Math.max(...seconds).toFixed(2)}), peak ${megabytes(middle)}: ${(middle.seconds / ours.seconds).toFixed(2)} x our time, ${(middle.peak / ours.peak).toFixed(2)} x our memory, ${middle.cells} cells`,
    );
  }
}

function measured(reader: string, path: string): Measured {
  const output = execFileSync(
    process.execPath,
    ["--import", "tsx", join(process.cwd(), "tests/benchmarks/readOnce.ts"), reader, path],
    { encoding: "utf8" },
  );
  return JSON.parse(output.trim().split("\n").pop()!) as Measured;
}

function median(runs: readonly Measured[]): Measured {
  return [...runs].sort((a, b) => a.seconds - b.seconds)[runs.length >> 1];
}

const megabytes = ({ peak }: Measured) => `${(peak / 1e6).toFixed(0)} MB`;
const perRow = ({ seconds }: Measured, rows: number) => `${((seconds / rows) * 1e6).toFixed(1)} us a row`;
