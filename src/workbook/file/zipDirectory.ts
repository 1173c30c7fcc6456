import { WorkbookProblem } from "../surveyWorkbook";
import type { ListedPart } from "./workbookPackage";

/** An entry of a zip file's central directory, with where its bytes stand. */
export interface ZipEntry extends ListedPart {
  readonly crc: number;
  /** Where the entry's local header starts. */
  readonly offset: number;
  /** Where its central record starts and ends. */
  readonly recordStart: number;
  readonly recordEnd: number;
}

/** A zip file's own list of its entries. */
export interface ZipDirectory {
  readonly entries: readonly ZipEntry[];
  /** Where the central directory starts. */
  readonly start: number;
}

const END = 0x06054b50;
const RECORD = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const RECORD_LENGTH = 46;
const LOCAL_LENGTH = 30;
const LONGEST_COMMENT = 65535;
const LARGEST_PLAIN = 0xffffffff;

/**
 * Reads the central directory of a zip file that is held in memory (PKWARE APPNOTE 4.3.12 and 4.3.16). Files past four
 * gigabytes, which need the 64-bit records, are refused.
 *
 * @throws WorkbookProblem "damagedFile" where the directory does not fit the file.
 */
export function zipDirectory(file: string, bytes: Uint8Array): ZipDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const damaged = () => new WorkbookProblem("damagedFile", { file });
  const end = endRecord(view);
  if (end === undefined) throw damaged();
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || start === LARGEST_PLAIN) throw new WorkbookProblem("tooLargeToHold", { file });
  const entries: ZipEntry[] = [];
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + RECORD_LENGTH > end || view.getUint32(at, true) !== RECORD) throw damaged();
    const nameLength = view.getUint16(at + 28, true);
    const recordEnd =
      at + RECORD_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (recordEnd > end) throw damaged();
    const flags = view.getUint16(at + 8, true);
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + RECORD_LENGTH, at + RECORD_LENGTH + nameLength)),
      method: view.getUint16(at + 10, true),
      encrypted: (flags & 1) === 1,
      crc: view.getUint32(at + 16, true),
      packedBytes: view.getUint32(at + 20, true),
      unpackedBytes: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
      recordStart: at,
      recordEnd,
    });
    at = recordEnd;
  }
  if (at !== end) throw damaged();
  return { entries, start };
}

/** The packed bytes of an entry. */
export function packedBytes(file: string, bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (entry.offset + LOCAL_LENGTH > bytes.length || view.getUint32(entry.offset, true) !== LOCAL)
    throw new WorkbookProblem("damagedFile", { file });
  const start =
    entry.offset +
    LOCAL_LENGTH +
    view.getUint16(entry.offset + 26, true) +
    view.getUint16(entry.offset + 28, true);
  if (start + entry.packedBytes > bytes.length) throw new WorkbookProblem("damagedFile", { file });
  return bytes.subarray(start, start + entry.packedBytes);
}

function endRecord(view: DataView): number | undefined {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--)
    if (
      view.getUint32(at, true) === END &&
      at + END_LENGTH + view.getUint16(at + 20, true) === view.byteLength
    )
      return at;
  return undefined;
}
