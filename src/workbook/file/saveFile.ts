import { createHash } from "node:crypto";
import { constants, type Stats } from "node:fs";
import * as nodeDisk from "node:fs/promises";
import { hostname } from "node:os";
import { basename, dirname, extname, join } from "node:path";
import { WorkbookProblem } from "../surveyWorkbook";

/** The calls to the disk that saving needs; tests give one that fails. */
export type Disk = Pick<
  typeof nodeDisk,
  | "access"
  | "copyFile"
  | "link"
  | "lstat"
  | "open"
  | "readdir"
  | "readFile"
  | "readlink"
  | "realpath"
  | "rename"
  | "stat"
  | "symlink"
  | "unlink"
>;

/** By what a file is known to be the one that was read: its place on the disk, its length, when it was last written. */
export interface FileStamp {
  readonly inode: number;
  readonly size: number;
  readonly modified: number;
}

/** A file as it was when it was read, to notice that somebody else saved it meanwhile. */
export interface FileState {
  /** Where the file itself stands, behind any link. */
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly stamp: FileStamp;
  /** True where the path that was given is a link to the file. */
  readonly isLink: boolean;
  /** Names that the file has on its disk; more than one where hard links lead to it. */
  readonly names: number;
}

/** The stamp of a file before it is read; undefined for what is no file on a disk. */
export async function stampOf(path: string, disk: Disk = nodeDisk): Promise<FileStamp | undefined> {
  const status = await disk.stat(path).catch(() => undefined);
  return status?.isFile() ? stamped(status) : undefined;
}

function stamped({ ino, size, mtimeMs }: { ino: number; size: number; mtimeMs: number }): FileStamp {
  return { inode: ino, size, modified: mtimeMs };
}

/**
 * Reads a file that will be changed in place, and remembers its state.
 *
 * @param asRead stamp of the file when what is to be written was worked out from it
 * @throws WorkbookProblem "changedMeanwhile" where the file is no longer the one that was read
 */
export async function readForChange(
  path: string,
  asRead?: FileStamp,
  disk: Disk = nodeDisk,
): Promise<FileState> {
  const real = await disk.realpath(path).catch(refusal(path));
  await mustNotBeOpen(real, disk);
  const status = await disk.stat(real).catch(refusal(path));
  const state = {
    path: real,
    stamp: asRead ?? stamped(status),
    isLink: (await disk.lstat(path).catch(refusal(path))).isSymbolicLink(),
    names: status.nlink,
  };
  await mustBeUnchanged(state, disk);
  const bytes = await disk.readFile(real).catch(refusal(path));
  await mustBeUnchanged(state, disk);
  return { ...state, bytes: new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length) };
}

/**
 * Puts new content in the place of a file: first a backup beside it, then the new content under another name, flushed to
 * the disk, then one rename. At every moment the file is either the old one or the new one, whole. Mode and owner stay.
 *
 * @returns the path of the backup
 * @throws WorkbookProblem "openElsewhere", "savedElsewhere" while another run saves the file, "changedMeanwhile",
 * "readOnlyFile", "ownerNotKept", "diskFull", "mayNotWrite"; the file is then as it was
 */
export async function saveInPlace(
  state: FileState,
  bytes: Uint8Array,
  now: Date,
  disk: Disk = nodeDisk,
): Promise<string> {
  const { path } = state;
  await mustNotBeOpen(path, disk);
  await clearLeftovers(dirname(path), disk);
  const waiting = waitingName(path);
  inUse.add(waiting);
  let backup: string | undefined;
  let isLocked = false;
  try {
    const status = await disk.stat(path);
    if ((status.mode & WRITABLE) === 0) throw new WorkbookProblem("readOnlyFile", { file: basename(path) });
    await writeThrough(waiting, bytes, status, path, disk);
    await lock(path, disk);
    isLocked = true;
    await mustBeUnchanged(state, disk);
    backup = await backUp(state, now, disk);
    await mustNotBeOpen(path, disk);
    await mustBeUnchanged(state, disk);
    await disk.rename(waiting, path);
  } catch (error) {
    await disk.unlink(waiting).catch(() => undefined);
    if (backup !== undefined) await disk.unlink(backup).catch(() => undefined);
    return refusal(path)(error);
  } finally {
    if (isLocked) await disk.unlink(lockName(path)).catch(() => undefined);
    inUse.delete(waiting);
  }
  await flushFolder(dirname(path), disk);
  return backup;
}

/** Some class of people may write the file. */
const WRITABLE = 0o222;

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
    await writeThrough(waiting, bytes, undefined, path, disk);
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
 * Keeps the old content under another name. A second name for the same file is there at once and whole; the file is
 * copied where the disk knows no second names, and where it has other names already, through which it may be written.
 */
async function backUp({ path, names }: FileState, now: Date, disk: Disk): Promise<string> {
  const stamp = now.toISOString().replace(/[-:]|\.\d+/g, "");
  const ending = extname(path);
  for (let n = 1; ; n++) {
    const number = n === 1 ? "" : `-${n}`;
    const backup = join(dirname(path), `${basename(path, ending)}.backup-${stamp}${number}${ending}`);
    try {
      if (names > 1) await copied(path, backup, disk);
      else
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

/** One run at a time puts its content into a file's place: the one after whom this link is named that leads nowhere. */
function lockName(path: string): string {
  return join(dirname(path), `.${basename(path)}.saving`);
}

/** Takes the file's lock; that of a process that is gone, or one older than any saving, counts for nothing. */
async function lock(path: string, disk: Disk): Promise<void> {
  const name = lockName(path);
  const take = () =>
    disk.symlink(`${process.pid}-${MACHINE}`, name).catch(async (error: NodeJS.ErrnoException) => {
      if (error.code === "EEXIST") throw error;
      await (await disk.open(name, "wx")).close();
    });
  const isHeld = (error: unknown) => (error as NodeJS.ErrnoException).code === "EEXIST";
  const other = (cause: unknown) =>
    new WorkbookProblem("savedElsewhere", { file: basename(path) }, { cause });
  try {
    await take();
  } catch (error) {
    if (!isHeld(error)) throw error;
    const owner = await ownerOfLock(name, disk);
    const status = await disk.lstat(name).catch(() => undefined);
    const isYoung = status !== undefined && Date.now() - status.mtimeMs < LONGEST_SAVING;
    if (owner === undefined ? isYoung : isRunning(Number(owner), name)) throw other(error);
    await disk.unlink(name).catch(() => undefined);
    await take().catch((second: unknown) => {
      throw isHeld(second) ? other(second) : second;
    });
  }
}

/** Milliseconds after which nobody is still between backup and rename. */
const LONGEST_SAVING = 20_000;

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

/** Writes the content of a file-to-be, with mode and owner of the one that it replaces. */
async function writeThrough(
  waiting: string,
  bytes: Uint8Array,
  former: Pick<Stats, "mode" | "uid" | "gid"> | undefined,
  path: string,
  disk: Disk,
): Promise<void> {
  const handle = await disk.open(waiting, "wx", (former?.mode ?? 0o644) & 0o777);
  try {
    if (former) {
      const { uid, gid } = await handle.stat();
      if (uid !== former.uid || gid !== former.gid)
        await handle.chown(former.uid, former.gid).catch((cause: unknown) => {
          throw new WorkbookProblem("ownerNotKept", { file: basename(path) }, { cause });
        });
      await handle.chmod(former.mode & 0o7777);
    }
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
    if (!entry.isFile() && !entry.isSymbolicLink()) continue;
    const path = join(folder, entry.name);
    const owner = WAITING.exec(entry.name)?.[1] ?? (await ownerOfLock(path, disk));
    if (owner === undefined) continue;
    if (!isRunning(Number(owner), path)) await disk.unlink(path).catch(() => undefined);
  }
}

/** The process of this machine that made a lock. */
async function ownerOfLock(path: string, disk: Disk): Promise<string | undefined> {
  if (!path.endsWith(".saving")) return undefined;
  const [id, machine] = (await disk.readlink(path).catch(() => "")).split("-");
  return machine === MACHINE ? id : undefined;
}

function isRunning(id: number, waiting: string): boolean {
  if (id === process.pid) return inUse.has(waiting) || waiting.endsWith(".saving");
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

async function mustBeUnchanged(
  { path, stamp }: Pick<FileState, "path" | "stamp">,
  disk: Disk,
): Promise<void> {
  const now = stamped(await disk.stat(path).catch(refusal(path)));
  if (now.inode !== stamp.inode || now.size !== stamp.size || now.modified !== stamp.modified)
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
