import { createHash } from "node:crypto";
import { basename } from "node:path";
import type { FileWorkbook } from "./fileWorkbook";

/** Facts of a file that say which content it took the place of, one a saving: "former." and the content's fingerprint. */
const FORMER = "former.";
/** Fact of a copy that says of which file, and of which content, it was made. */
const COPY_OF = "copyOf";
/** So many former contents are remembered. */
const MOST_FORMER = 60;

/** By what a content is known again, whatever its file is called. */
export function fingerprint(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex").slice(0, 32);
}

/** Keeps in a workbook which content it is about to take the place of, so that a backup is known again. */
export async function keepFormer(workbook: FileWorkbook, former: Uint8Array, now: Date): Promise<void> {
  const kept = [...(await workbook.readFlags(FORMER))].sort(([, one], [, other]) => one.localeCompare(other));
  for (const [key] of kept.slice(0, Math.max(0, kept.length + 1 - MOST_FORMER)))
    await workbook.writeFlag(key, undefined);
  await workbook.writeFlag(FORMER + fingerprint(former), now.toISOString());
}

/** Keeps in a copy which file it was made of. */
export async function keepOrigin(copy: FileWorkbook, path: string, original: Uint8Array): Promise<void> {
  await copy.writeFlag(COPY_OF, JSON.stringify([basename(path), fingerprint(original)]));
}

/** A file of a folder with the small facts that it keeps. */
export interface FolderFile {
  readonly path: string;
  readonly flags: ReadonlyMap<string, string>;
  bytes(): Promise<Uint8Array>;
}

/**
 * Files of a folder that were made of another file of it: backups, known by the fingerprint that the file keeps which
 * took their place, and copies, known by what they keep themselves. A copy whose original is not there is no such file.
 *
 * @returns path of the original by the path of what was made of it
 */
export async function madeOfOthers(files: readonly FolderFile[]): Promise<Map<string, string>> {
  const prints = new Map<string, Promise<string>>();
  const printOf = (file: FolderFile) => {
    const print = prints.get(file.path) ?? file.bytes().then(fingerprint);
    prints.set(file.path, print);
    return print;
  };
  const made = new Map<string, string>();
  const successors = new Map<string, string>();
  for (const { path, flags } of files)
    for (const key of flags.keys())
      if (key.startsWith(FORMER)) successors.set(key.slice(FORMER.length), path);
  for (const file of files) {
    const [name, print] = originOf(file);
    const original = name === undefined ? undefined : await originalAmong(files, file, name, print, printOf);
    if (original !== undefined) made.set(file.path, original);
  }
  if (successors.size === 0) return made;
  for (const file of files) {
    const successor = successors.get(await printOf(file));
    if (successor !== undefined && successor !== file.path) made.set(file.path, successor);
  }
  return made;
}

async function originalAmong(
  files: readonly FolderFile[],
  copy: FolderFile,
  name: string,
  print: string,
  printOf: (file: FolderFile) => Promise<string>,
): Promise<string | undefined> {
  for (const file of files)
    if (file !== copy && (basename(file.path) === name || (await printOf(file)) === print)) return file.path;
  return undefined;
}

function originOf({ flags }: FolderFile): [name: string | undefined, print: string] {
  try {
    const [name, print] = JSON.parse(flags.get(COPY_OF) ?? "[]") as unknown[];
    return typeof name === "string" ? [name, String(print)] : [undefined, ""];
  } catch {
    return [undefined, ""];
  }
}
