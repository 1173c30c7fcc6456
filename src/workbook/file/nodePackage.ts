import { open as openFile } from "node:fs/promises";
import { basename } from "node:path";
import { pipeline, type Readable } from "node:stream";
import { promisify } from "node:util";
import * as zlib from "node:zlib";
import yauzl, { type Entry, type ZipFile } from "yauzl";
import { WorkbookProblem } from "../surveyWorkbook";
import { crc32 as ownCrc32 } from "./crc32";
import { READ_LIMITS, type ReadLimits } from "./readLimits";
import { DEFLATED, mustLookLikePackage, PartLength, PartList, type WorkbookPackage } from "./workbookPackage";

const crc32: (bytes: Uint8Array, earlier?: number) => number =
  "crc32" in zlib ? (zlib.crc32 as typeof ownCrc32) : ownCrc32;

/** Opens a workbook file on disk; its parts are unpacked as they are read, so that the file may be larger than memory. */
export async function nodePackage(path: string, limits: ReadLimits = READ_LIMITS): Promise<WorkbookPackage> {
  const file = basename(path);
  const fileBytes = await lookAt(path, file);
  const zip = await promisify<string, yauzl.Options, ZipFile>(yauzl.open)(path, {
    lazyEntries: true,
    autoClose: false,
    strictFileNames: false,
    validateEntrySizes: true,
  }).catch((error: unknown) => {
    throw new WorkbookProblem("damagedFile", { file }, { cause: error });
  });
  try {
    if (zip.entryCount > limits.parts)
      throw new WorkbookProblem("tooManyParts", { file, most: limits.parts });
    const list = new PartList(file, fileBytes, limits);
    const entries = await listed(zip, file, (entry) => {
      list.add({
        name: entry.fileName,
        packedBytes: entry.compressedSize,
        unpackedBytes: entry.uncompressedSize,
        method: entry.compressionMethod,
        encrypted: entry.isEncrypted(),
      });
    });
    mustNotOverlap(file, [...entries.values()]);
    return {
      file,
      parts: list.parts,
      chunks: (part) => unpacked(zip, file, entries.get(part)!, list),
      close: async () => zip.close(),
    };
  } catch (error) {
    zip.close();
    throw error;
  }
}

/** The file's size, after a look at its first bytes. */
async function lookAt(path: string, file: string): Promise<number> {
  const handle = await openFile(path, "r").catch((error: NodeJS.ErrnoException) => {
    const code = error.code === "ENOENT" ? "noFile" : "unreadableFile";
    throw new WorkbookProblem(code, { file, reason: error.code ?? error.message }, { cause: error });
  });
  try {
    const status = await handle.stat();
    if (!status.isFile()) throw new WorkbookProblem("unreadableFile", { file, reason: "EISDIR" });
    const start = new Uint8Array(8);
    const { bytesRead } = await handle.read(start, 0, start.length, 0);
    mustLookLikePackage(file, start.subarray(0, bytesRead));
    return status.size;
  } finally {
    await handle.close();
  }
}

function listed(zip: ZipFile, file: string, onEntry: (entry: Entry) => void): Promise<Map<string, Entry>> {
  return new Promise((resolve, reject) => {
    const entries = new Map<string, Entry>();
    zip.on("error", (error: Error) => {
      const [, part] =
        /(?:relative path|absolute path|characters in fileName): (.*)/.exec(error.message) ?? [];
      reject(
        part === undefined
          ? new WorkbookProblem("damagedFile", { file }, { cause: error })
          : new WorkbookProblem("badPartName", { file, part }, { cause: error }),
      );
    });
    zip.on("end", () => resolve(entries));
    zip.on("entry", (entry: Entry) => {
      try {
        onEntry(entry);
        entries.set(entry.fileName, entry);
        zip.readEntry();
      } catch (error) {
        reject(error);
      }
    });
    zip.readEntry();
  });
}

const LOCAL_LENGTH = 30;

/** Refuses a file whose entries share bytes, as no writer makes them: a small file would unpack without end. */
function mustNotOverlap(file: string, entries: readonly Entry[]): void {
  let free = 0;
  const inOrder = [...entries].sort((a, b) => a.relativeOffsetOfLocalHeader - b.relativeOffsetOfLocalHeader);
  for (const { relativeOffsetOfLocalHeader: offset, compressedSize } of inOrder) {
    if (offset < free) throw new WorkbookProblem("damagedFile", { file });
    free = offset + LOCAL_LENGTH + compressedSize;
  }
}

/** How far another thread may unpack ahead of what is read. */
const AHEAD: zlib.ZlibOptions & { readonly highWaterMark: number } = {
  chunkSize: 2 ** 15,
  highWaterMark: 2 ** 16,
};

/** Errors reach whoever reads the stream. */
const ignored = () => undefined;

async function* unpacked(
  zip: ZipFile,
  file: string,
  entry: Entry,
  list: PartList,
): AsyncGenerator<Uint8Array> {
  const part = entry.fileName;
  const damaged = (error: unknown) => new WorkbookProblem("damagedPart", { file, part }, { cause: error });
  const length = new PartLength(file, list.parts.get(part)!);
  const packed = await promisify<Entry, { decodeFileData: false }, Readable>(zip.openReadStream.bind(zip))(
    entry,
    {
      decodeFileData: false,
    },
  ).catch((error: unknown) => {
    throw damaged(error);
  });
  const stream =
    entry.compressionMethod === DEFLATED ? pipeline(packed, zlib.createInflateRaw(AHEAD), ignored) : packed;
  let crc = 0;
  try {
    for await (const chunk of stream as AsyncIterable<Uint8Array>) {
      length.add(chunk.length);
      crc = crc32(chunk, crc);
      yield chunk;
    }
  } catch (error) {
    if (error instanceof Error && "code" in error && String(error.code).startsWith("Z_"))
      throw damaged(error);
    throw error;
  } finally {
    stream.destroy();
  }
  length.end();
  if (crc !== entry.crc32) throw damaged(undefined);
}
