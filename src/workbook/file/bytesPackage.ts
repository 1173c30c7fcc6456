import { Inflate } from "fflate";
import { WorkbookProblem } from "../surveyWorkbook";
import { crc32 } from "./crc32";
import { READ_LIMITS, type ReadLimits } from "./readLimits";
import { mustLookLikePackage, PartLength, PartList, type WorkbookPackage } from "./workbookPackage";
import { packedBytes, zipDirectory, type ZipEntry } from "./zipDirectory";

const SLICE = 65536;

/** Opens a workbook file that is held in memory, on a page as well as on the command line. */
export function bytesPackage(
  file: string,
  bytes: Uint8Array,
  limits: ReadLimits = READ_LIMITS,
): WorkbookPackage {
  mustLookLikePackage(file, bytes);
  const { entries } = zipDirectory(file, bytes);
  const list = new PartList(file, bytes.length, limits);
  const byName = new Map<string, ZipEntry>();
  for (const entry of entries) {
    list.add(entry);
    byName.set(entry.name, entry);
  }
  return {
    file,
    parts: list.parts,
    chunks: (part) => unpacked(file, bytes, byName.get(part)!),
    close: async () => undefined,
  };
}

async function* unpacked(file: string, bytes: Uint8Array, entry: ZipEntry): AsyncGenerator<Uint8Array> {
  const packed = packedBytes(file, bytes, entry);
  const length = new PartLength(file, entry);
  let crc = 0;
  for (const chunk of entry.method === 0 ? [packed] : inflated(file, entry.name, packed)) {
    length.add(chunk.length);
    crc = crc32(chunk, crc);
    yield chunk;
  }
  length.end();
  if (crc !== entry.crc) throw new WorkbookProblem("damagedPart", { file, part: entry.name });
}

function* inflated(file: string, part: string, packed: Uint8Array): Generator<Uint8Array> {
  let ready: Uint8Array[] = [];
  const inflate = new Inflate((chunk) => ready.push(chunk));
  try {
    for (let at = 0; at < packed.length; at += SLICE) {
      inflate.push(packed.subarray(at, at + SLICE), at + SLICE >= packed.length);
      for (const chunk of ready)
        for (let from = 0; from < chunk.length; from += SLICE) yield chunk.subarray(from, from + SLICE);
      ready = [];
    }
  } catch (error) {
    if (error instanceof WorkbookProblem) throw error;
    throw new WorkbookProblem("damagedPart", { file, part }, { cause: error });
  }
}
