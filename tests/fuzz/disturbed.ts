import { spawn } from "node:child_process";
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { openWorkbookBytes } from "../../src/workbook/file/openWorkbook";
import type { Dice } from "./dice";
import { soundWorkbook } from "./writers";
import { inFolder, must, type Outcome } from "./writingRun";

const FILE = "farm.xlsx";
const COMMANDS = ["check", "choose", "gaps", "crop", "cards"] as const;

/** Runs the command line in a process of its own, killed after so many milliseconds. */
function ownProcess(words: readonly string[], killedAfter?: number): Promise<{ code: number; told: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["src/cli/start.mjs", ...words], {
      env: { ...process.env, LC_ALL: "en_US.UTF-8" },
      stdio: ["ignore", "ignore", "pipe"],
    });
    let told = "";
    child.stderr.on("data", (data: Buffer) => (told += String(data)));
    const timer =
      killedAfter === undefined ? undefined : setTimeout(() => child.kill("SIGKILL"), killedAfter);
    child.on("close", (code) => {
      clearTimeout(timer);
      resolve({ code: code ?? -1, told });
    });
  });
}

async function sheetsOf(bytes: Uint8Array): Promise<readonly string[]> {
  return (await openWorkbookBytes(FILE, bytes)).sheetNames;
}

const same = (one: Uint8Array, other: Uint8Array) => Buffer.compare(one, other) === 0;

/** Every backup is whole, and at most as many stand there as there were runs. */
function mustHaveSoundBackups(folder: string, contents: readonly Uint8Array[]): void {
  for (const name of readdirSync(folder).filter((each) => each.includes(".backup-"))) {
    const backup = readFileSync(join(folder, name));
    must(
      contents.some((content) => same(content, backup)),
      `${name} is none of what the file was`,
    );
  }
}

/**
 * A process that writes a file is killed at a random moment: the file is the old one or the whole new one, and the next
 * run works, reads nothing that was left behind and clears it away.
 */
export async function killedAtSomeMoment(dice: Dice): Promise<Outcome> {
  const { bytes } = await soundWorkbook(dice);
  return inFolder(async (folder) => {
    const path = join(folder, FILE);
    writeFileSync(path, bytes);
    const start = performance.now();
    await ownProcess([dice.one(COMMANDS), path, "--in-place"]);
    const usual = performance.now() - start;
    writeFileSync(path, bytes);
    for (const name of readdirSync(folder)) if (name !== FILE) rmSync(join(folder, name));
    await ownProcess([dice.one(COMMANDS), path, "--in-place"], dice.whole(usual * 0.4, usual));
    const after = new Uint8Array(readFileSync(path));
    const isOld = same(after, bytes);
    const names = await sheetsOf(after);
    must(names.length >= (await sheetsOf(bytes)).length, "sheets are gone");
    mustHaveSoundBackups(folder, [bytes]);
    const next = await ownProcess(["check", folder, "--format", "csv"]);
    must(next.code !== 2 && !/same rows/.test(next.told), `the folder is misread: ${next.told}`);
    const saved = await ownProcess(["choose", path, "--in-place"]);
    must(saved.code !== 2, `the next run cannot save: ${saved.told}`);
    mustHaveSoundBackups(folder, [bytes, after]);
    const left = readdirSync(folder).filter((name) => name.startsWith("."));
    must(left.length === 0, `left behind: ${left.join(", ")}`);
    return isOld ? "refused" : "done";
  });
}

/** Two processes write one file at once: at least one saves, the other saves after it or says why not. */
export async function writtenByTwo(dice: Dice): Promise<Outcome> {
  const { bytes } = await soundWorkbook(dice);
  return inFolder(async (folder) => {
    const path = join(folder, FILE);
    writeFileSync(path, bytes);
    const [one, other] = dice.some(COMMANDS, 2, 2);
    const first = ownProcess([one, path, "--in-place"]);
    await wait(dice.whole(0, 200));
    const runs = await Promise.all([first, ownProcess([other, path, "--in-place"])]);
    const saved = runs.filter(({ told }) => told.includes("Saved in"));
    const refused = runs.filter(({ code, told }) => code === 2 && /saved by|being saved|open in/.test(told));
    must(saved.length >= 1 && saved.length + refused.length === 2, runs.map(({ told }) => told).join(" | "));
    const after = await sheetsOf(new Uint8Array(readFileSync(path)));
    const own = after.length - (await sheetsOf(bytes)).length;
    must(own >= saved.length, `${own} sheets for ${saved.length} results`);
    const names = readdirSync(folder);
    must(names.filter((name) => name.includes(".backup-")).length === saved.length, names.join(", "));
    must(!names.some((name) => name.startsWith(".")), names.join(", "));
    return refused.length > 0 ? "refused" : "done";
  });
}

/** A file is saved by somebody else at a random moment of a run: their content is never lost. */
export async function changedWhileRead(dice: Dice): Promise<Outcome> {
  const [mine, theirs] = [(await soundWorkbook(dice)).bytes, (await soundWorkbook(dice)).bytes];
  return inFolder(async (folder) => {
    const path = join(folder, FILE);
    writeFileSync(path, mine);
    const running = ownProcess([dice.one(COMMANDS), path, "--in-place"]);
    await wait(dice.whole(100, 1500));
    writeFileSync(`${path}.new`, theirs);
    renameSync(`${path}.new`, path);
    const { code, told } = await running;
    const after = new Uint8Array(readFileSync(path));
    const backups = readdirSync(folder).filter((name) => name.includes(".backup-"));
    const kept = [after, ...backups.map((name) => new Uint8Array(readFileSync(join(folder, name))))];
    must(
      kept.some((content) => same(content, theirs)),
      `their content is lost: ${told}`,
    );
    must(!readdirSync(folder).some((name) => name.startsWith(".")), "left behind");
    if (code === 2) must(/saved by|being saved|open in|damaged|not a workbook/.test(told), told);
    return code === 2 ? "refused" : "done";
  });
}
