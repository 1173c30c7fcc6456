import { createHash } from "node:crypto";
import { constants } from "node:fs";
import * as nodeDisk from "node:fs/promises";
import { hostname } from "node:os";
import { basename, dirname, extname, join } from "node:path";
import { WorkbookProblem } from "../surveyWorkbook";

/** The calls to the disk that saving needs; tests give one that fails. */
export type Disk = Pick<
  typeof nodeDisk,
  "access" | "copyFile" | "link" | "open" | "readdir" | "readFile" | "realpath" | "rename" | "stat" | "unlink"
>;

/** A file as it was when it was read, to notice that somebody else saved it meanwhile. */
export interface FileState {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly modified: number;
}

/** Reads a file that will be changed in place, and remembers its state. */
export async function readForChange(path: string, disk: Disk = nodeDisk): Promise<FileState> {
  const real = await disk.realpath(path).catch(refusal(path));
  await mustNotBeOpen(real, disk);
  const { mtimeMs } = await disk.stat(real).catch(refusal(path));
  const bytes = await disk.readFile(real).catch(refusal(path));
  return {
    path: real,
    bytes: new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length),
    modified: mtimeMs,
  };
}

/**
 * Puts new content in the place of a file: first a backup beside it, then the new content under another name, flushed to
 * the disk, then one rename. At every moment the file is either the old one or the new one, whole.
 *
 * @returns the path of the backup
 * @throws WorkbookProblem "openElsewhere", "changedMeanwhile", "diskFull", "mayNotWrite"; the file is then as it was
 */
export async function saveInPlace(
  state: FileState,
  bytes: Uint8Array,
  now: Date,
  disk: Disk = nodeDisk,
): Promise<string> {
  const { path } = state;
  await mustNotBeOpen(path, disk);
  await mustBeUnchanged(state, disk);
  await clearLeftovers(dirname(path), disk);
  const backup = await backUp(path, now, disk);
  const waiting = waitingName(path);
  inUse.add(waiting);
  try {
    const { mode } = await disk.stat(path);
    await writeThrough(waiting, bytes, mode, disk);
    await mustNotBeOpen(path, disk);
    await mustBeUnchanged(state, disk);
    await disk.rename(waiting, path);
  } catch (error) {
    await disk.unlink(waiting).catch(() => undefined);
    await disk.unlink(backup).catch(() => undefined);
    return refusal(path)(error);
  } finally {
    inUse.delete(waiting);
  }
  await flushFolder(dirname(path), disk);
  return backup;
}

/**
 * Writes a new file, whole or not at all.
 *
 * @throws WorkbookProblem "fileExists" rather than writing over anything, "diskFull", "mayNotWrite"
 */
export async function saveNew(path: string, bytes: Uint8Array, disk: Disk = nodeDisk): Promise<void> {
  const there = await disk.access(path).then(
    () => true,
    () => false,
  );
  if (there) throw new WorkbookProblem("fileExists", { file: basename(path) });
  await clearLeftovers(dirname(path), disk);
  const waiting = waitingName(path);
  inUse.add(waiting);
  try {
    await writeThrough(waiting, bytes, 0o644, disk);
    await disk.link(waiting, path).catch(async (error: NodeJS.ErrnoException) => {
      if (error.code === "EEXIST") throw error;
      await disk.copyFile(waiting, path, constants.COPYFILE_EXCL);
    });
  } catch (error) {
    return refusal(path)(error);
  } finally {
    await disk.unlink(waiting).catch(() => undefined);
    inUse.delete(waiting);
  }
  await flushFolder(dirname(path), disk);
}

/** Name of a result beside its source: "season.xlsx" gives "season-findings.xlsx". */
export function besideSource(path: string, word: string, ending = extname(path)): string {
  return join(dirname(path), `${basename(path, extname(path))}-${word}${ending}`);
}

/**
 * Keeps the old content under another name. A second name for the same file is there at once and whole; only where the
 * disk knows no second names is the file copied.
 */
async function backUp(path: string, now: Date, disk: Disk): Promise<string> {
  const stamp = now.toISOString().replace(/[-:]|\.\d+/g, "");
  const ending = extname(path);
  for (let n = 1; ; n++) {
    const number = n === 1 ? "" : `-${n}`;
    const backup = join(dirname(path), `${basename(path, ending)}.backup-${stamp}${number}${ending}`);
    try {
      await disk.link(path, backup).catch((error: NodeJS.ErrnoException) => {
        if (error.code === "EEXIST") throw error;
        return copied(path, backup, disk);
      });
      return backup;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") return refusal(path)(error);
    }
  }
}

async function copied(path: string, backup: string, disk: Disk): Promise<void> {
  await disk.copyFile(path, backup, constants.COPYFILE_EXCL);
  try {
    const handle = await disk.open(backup, "r+");
    await handle.sync().finally(() => handle.close());
  } catch (error) {
    await disk.unlink(backup).catch(() => undefined);
    throw error;
  }
}

async function writeThrough(path: string, bytes: Uint8Array, mode: number, disk: Disk): Promise<void> {
  const handle = await disk.open(path, "wx", mode & 0o777);
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Names of new content that this process is writing now. */
const inUse = new Set<string>();

/** Tells this machine from others that save in the same shared folder. */
const MACHINE = createHash("sha256").update(hostname()).digest("hex").slice(0, 12);
const WAITING = new RegExp(`^\\..+\\.(\\d+)-${MACHINE}\\.waiting$`);

function waitingName(path: string): string {
  return join(dirname(path), `.${basename(path)}.${process.pid}-${MACHINE}.waiting`);
}

/**
 * Removes new content that a process of this machine left behind when it was killed before the rename. What belongs to
 * a process that runs, or to another machine, stays; a folder that cannot be cleaned is no reason not to save.
 */
async function clearLeftovers(folder: string, disk: Disk): Promise<void> {
  const entries = await disk.readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    const owner = WAITING.exec(entry.name)?.[1];
    if (owner === undefined || !entry.isFile()) continue;
    const path = join(folder, entry.name);
    if (!isRunning(Number(owner), path)) await disk.unlink(path).catch(() => undefined);
  }
}

function isRunning(id: number, waiting: string): boolean {
  if (id === process.pid) return inUse.has(waiting);
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}

/** Spreadsheets leave a file beside one that they have open. */
async function mustNotBeOpen(path: string, disk: Disk): Promise<void> {
  const [folder, name] = [dirname(path), basename(path)];
  for (const sign of [`~$${name}`, `~$${name.slice(2)}`, `.~lock.${name}#`]) {
    const open = await disk.access(join(folder, sign)).then(
      () => true,
      () => false,
    );
    if (open) throw new WorkbookProblem("openElsewhere", { file: name });
  }
}

async function mustBeUnchanged({ path, bytes, modified }: FileState, disk: Disk): Promise<void> {
  const { mtimeMs, size } = await disk.stat(path);
  if (mtimeMs !== modified || size !== bytes.length)
    throw new WorkbookProblem("changedMeanwhile", { file: basename(path) });
}

/** Makes the rename itself last through a power cut, where the system can do that. */
async function flushFolder(folder: string, disk: Disk): Promise<void> {
  const handle = await disk.open(folder, "r").catch(() => undefined);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

const PROBLEM_OF_CODE: Readonly<Record<string, string>> = {
  ENOSPC: "diskFull",
  EDQUOT: "diskFull",
  EFBIG: "diskFull",
  EACCES: "mayNotWrite",
  EPERM: "mayNotWrite",
  EROFS: "mayNotWrite",
  EBUSY: "openElsewhere",
  ETXTBSY: "openElsewhere",
  EEXIST: "fileExists",
  ENOENT: "noFile",
};

function refusal(path: string): (error: unknown) => never {
  return (error) => {
    if (error instanceof WorkbookProblem) throw error;
    const { code = "", message } = error as NodeJS.ErrnoException;
    const facts = { file: basename(path), reason: code || message };
    throw new WorkbookProblem(PROBLEM_OF_CODE[code] ?? "mayNotWrite", facts, { cause: error });
  };
}
