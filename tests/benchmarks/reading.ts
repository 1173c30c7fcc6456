import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { writeLargeCsv, writeLargeWorkbook } from "./largeSeason";

const ROWS = Number(process.env.ROWS ?? 100_000);
const RUNS = Number(process.env.RUNS ?? 3);
const CURVE = [10_000, 100_000, ...(process.env.MILLION ? [1_000_000] : [])];

/** What each process runs: one file, as the command line's own code is. */
const READ_ONCE = join(process.cwd(), ".cache/benchmarks/readOnce.cjs");

const CURVE_READERS = ["ours", "ours, checked", "ours, checked, with gaps"];
const LIBRARIES = ["exceljs", "hucre", "@e965/xlsx", "papaparse"];

interface Measured {
  readonly seconds: number;
  readonly peak: number;
  readonly cells: number;
}

/**
 * Reads one workbook, and the same season as csv, with our reader and with those of libraries, each in a process of its
 * own, in turns, so that all of them meet the same machine; prints medians, spread and ratios. Then the cost of a row
 * that is read, checked, and counted in the gaps too, from 10,000 rows up (MILLION=1 goes to a million): in a fresh
 * process, and in one that has read 10,000 rows before.
 */
export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-bench-"));
  buildSync({
    entryPoints: ["tests/benchmarks/readOnce.ts"],
    outfile: READ_ONCE,
    bundle: true,
    external: LIBRARIES,
    platform: "node",
    target: "node20",
  });
  const sized = (rows: number) => join(folder, `${rows}.xlsx`);
  try {
    console.log(
      `${cpus().length} x ${cpus()[0].model}, ${Math.round(totalmem() / 2 ** 30)} GB, Node ${process.version}`,
    );
    for (const rows of new Set([ROWS, ...CURVE])) await writeLargeWorkbook(sized(rows), rows);
    const csv = join(folder, "season.csv");
    await writeLargeCsv(csv, ROWS);
    console.log(
      `${ROWS} rows x 16 columns, ${(statSync(sized(ROWS)).size / 1e6).toFixed(1)} MB, ${RUNS} runs`,
    );
    compare(sized(ROWS), ["ours", "hucre", "@e965/xlsx", "exceljs", "exceljs streaming"]);
    console.log(`the same as csv, ${(statSync(csv).size / 1e6).toFixed(1)} MB`);
    compare(csv, ["ours", "Papa Parse", "@e965/xlsx", "exceljs csv"]);
    for (const first of [undefined, sized(CURVE[0])]) {
      console.log(first ? "after 10,000 rows in the same process" : "in a fresh process");
      for (const rows of CURVE) {
        const ways = inTurns(CURVE_READERS, sized(rows), first);
        const [read, ...others] = Array.from(ways, ([reader, runs]) => ({ reader, ...median(runs) }));
        console.log(
          `${String(rows).padStart(9)} rows: ${[
            `${perRow(read, rows)}, peak ${megabytes(read)}`,
            ...others.map(
              (other) =>
                `${other.reader} ${perRow(other, rows)} (${(other.seconds / read.seconds).toFixed(2)} x), peak ${megabytes(other)}`,
            ),
          ].join("; ")}`,
        );
      }
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** What every reader measures on the same file, one after the other, round by round. */
function inTurns(readers: readonly string[], path: string, first?: string): Map<string, Measured[]> {
  const all = new Map(readers.map((reader) => [reader, [] as Measured[]]));
  for (let round = 0; round < RUNS; round++)
    for (const [reader, runs] of all) runs.push(measured(reader, path, first));
  return all;
}

function compare(path: string, readers: readonly string[]): void {
  const all = inTurns(readers, path);
  const ours = median(all.get("ours")!);
  for (const [reader, runs] of all) {
    const middle = median(runs);
    const seconds = runs.map((each) => each.seconds);
    console.log(
      `${reader.padEnd(18)} ${middle.seconds.toFixed(2)} s (${Math.min(...seconds).toFixed(2)} to ${Math.max(...seconds).toFixed(2)}), peak ${megabytes(middle)}: ${(middle.seconds / ours.seconds).toFixed(2)} x our time, ${(middle.peak / ours.peak).toFixed(2)} x our memory, ${middle.cells} cells`,
    );
  }
}

function measured(reader: string, path: string, first?: string): Measured {
  const output = execFileSync(process.execPath, [READ_ONCE, reader, path, ...(first ? [first] : [])], {
    encoding: "utf8",
  });
  return JSON.parse(output.trim().split("\n").pop()!) as Measured;
}

function median(runs: readonly Measured[]): Measured {
  return [...runs].sort((a, b) => a.seconds - b.seconds)[runs.length >> 1];
}

const megabytes = ({ peak }: Measured) => `${(peak / 1e6).toFixed(0)} MB`;
const perRow = ({ seconds }: Measured, rows: number) => `${((seconds / rows) * 1e6).toFixed(1)} us a row`;
