import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HOSTILE_FILES } from "../workbook/file/hostileFiles";

interface Run {
  readonly why: string;
  readonly seconds: number;
  readonly megabytes: number;
  readonly code: number;
  readonly sentence: string;
}

/**
 * Gives every hostile file to the command line and prints time, peak memory and exit code of the worst, beside those of
 * Node when it does nothing and of a small sound workbook.
 */
export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-refusing-"));
  try {
    const weigh = join(folder, "weigh.mjs");
    writeFileSync(
      weigh,
      'process.on("exit", () => process.stderr.write(`\\n${process.resourceUsage().maxRSS / 1000}`));',
    );
    const started = (why: string, ...words: string[]) =>
      measured(why, [`--import=${pathToFileURL(weigh)}`, ...words]);
    const check = (why: string, path: string) => started(why, "src/cli/start.mjs", "check", path);
    console.log(`${cpus().length} x ${cpus()[0].model}, Node ${process.version}`);
    await check("once, so that the bundle is there", "sample-workbooks/empty-season.xlsx");
    const nothing = await started("Node, doing nothing", "-e", "0");
    const sound = await check("a sound workbook", "sample-workbooks/empty-season.xlsx");
    const refused: Run[] = [];
    for (const { why, bytes, limits } of HOSTILE_FILES) {
      if (limits) continue;
      const path = join(folder, "farm.xlsx");
      writeFileSync(path, bytes());
      refused.push(await check(why, path));
    }
    const worst = (of: (run: Run) => number) =>
      refused.reduce((most, run) => (of(run) > of(most) ? run : most));
    const line = (label: string, { why, seconds, megabytes, code }: Run) =>
      console.log(
        `${label.padEnd(16)} ${seconds.toFixed(2)} s, ${megabytes.toFixed(0)} MB, exit code ${code}: ${why} (${(seconds / sound.seconds).toFixed(1)} x the time of a sound workbook)`,
      );
    line("bare", nothing);
    line("sound", sound);
    line(
      "slowest",
      worst(({ seconds }) => seconds),
    );
    line(
      "largest",
      worst(({ megabytes }) => megabytes),
    );
    const others = refused.filter(({ code }) => code !== 2);
    console.log(
      `${refused.length} hostile files, ${refused.length - others.length} with exit code 2 and one sentence`,
    );
    for (const { why, code, sentence } of others) console.log(`  exit code ${code}: ${why}: ${sentence}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function measured(why: string, words: readonly string[]): Promise<Run> {
  const start = performance.now();
  return new Promise((resolve) => {
    execFile(process.execPath, words, (error, _stdout, stderr) => {
      const seconds = (performance.now() - start) / 1000;
      const lines = stderr.trim().split("\n");
      const megabytes = Number(lines.pop());
      resolve({ why, seconds, megabytes, code: Number(error?.code ?? 0), sentence: lines.join(" ") });
    });
  });
}
