import { WorkbookProblem } from "../surveyWorkbook";
import type { ListedPart } from "./workbookPackage";

/** An entry of a zip file's central directory, with where its bytes stand. */
export interface ZipEntry extends ListedPart {
  readonly crc: number;
  /** Where the entry's local header starts. */
  readonly offset: number;
  /** Where the record says so in 64 bits; undefined where 32 are enough. */
  readonly largeOffsetAt: number | undefined;
  /** Where its central record starts and ends. */
  readonly recordStart: number;
  readonly recordEnd: number;
}

/** A zip file's own list of its entries. */
export interface ZipDirectory {
  readonly entries: readonly ZipEntry[];
  /** Where the central directory starts. */
  readonly start: number;
  /** Where the comment at the end of the file starts. */
  readonly commentStart: number;
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
 * Reads the central directory of a zip file that is held in memory (PKWARE APPNOTE 4.3.12 and 4.3.16). Small files
 * with 64-bit records, as some writers make every file (4.3.14, 4.3.15 and 4.5.3), are read too; names with backslashes,
 * which some writers make on Windows, mean the same as with slashes.
 *
 * @throws WorkbookProblem "damagedFile" where the directory does not fit the file.
 */
export function zipDirectory(file: string, bytes: Uint8Array): ZipDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const damaged = () => new WorkbookProblem("damagedFile", { file });
  const end = endRecord(view);
  if (end === undefined) throw damaged();
  const { count, start, directoryEnd } = directoryPlace(file, view, end);
  const entries: ZipEntry[] = [];
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + RECORD_LENGTH > directoryEnd || view.getUint32(at, true) !== RECORD) throw damaged();
    const nameLength = view.getUint16(at + 28, true);
    const recordEnd =
      at + RECORD_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (recordEnd > directoryEnd) throw damaged();
    const flags = view.getUint16(at + 8, true);
    const written = new TextDecoder().decode(
      bytes.subarray(at + RECORD_LENGTH, at + RECORD_LENGTH + nameLength),
    );
    const large = largeFields(view, at, recordEnd);
    entries.push({
      name: written.replaceAll("\\", "/"),
      method: view.getUint16(at + 10, true),
      encrypted: (flags & 1) === 1,
      crc: view.getUint32(at + 16, true),
      packedBytes: large.packedBytes ?? view.getUint32(at + 20, true),
      unpackedBytes: large.unpackedBytes ?? view.getUint32(at + 24, true),
      offset: large.offset ?? view.getUint32(at + 42, true),
      largeOffsetAt: large.offsetAt,
      recordStart: at,
      recordEnd,
    });
    at = recordEnd;
  }
  if (at !== directoryEnd) throw damaged();
  mustNotOverlap(file, view, entries, start);
  return { entries, start, commentStart: end + END_LENGTH };
}

const LARGE_END = 0x06064b50;
const LARGE_LOCATOR = 0x07064b50;
const LARGE_LOCATOR_LENGTH = 20;
const LARGE_END_LENGTH = 56;
const LARGE_FIELD = 1;

/** Where the directory stands, by the end record or, where that says so, by the 64-bit one before it. */
function directoryPlace(file: string, view: DataView, end: number) {
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  const locator = end - LARGE_LOCATOR_LENGTH;
  if (locator < 0 || view.getUint32(locator, true) !== LARGE_LOCATOR) {
    if (count === 0xffff || start === LARGEST_PLAIN) throw new WorkbookProblem("tooLargeToHold", { file });
    return { count, start, directoryEnd: end };
  }
  const large = numberAt(view, locator + 8);
  if (large + LARGE_END_LENGTH > locator || view.getUint32(large, true) !== LARGE_END)
    throw new WorkbookProblem("damagedFile", { file });
  return { count: numberAt(view, large + 32), start: numberAt(view, large + 48), directoryEnd: large };
}

/** What a record says in 64 bits, because its 32 are all ones. */
function largeFields(view: DataView, record: number, recordEnd: number) {
  const found: { packedBytes?: number; unpackedBytes?: number; offset?: number; offsetAt?: number } = {};
  const isLarge = (at: number) => view.getUint32(record + at, true) === LARGEST_PLAIN;
  let field = record + RECORD_LENGTH + view.getUint16(record + 28, true);
  const fieldsEnd = field + view.getUint16(record + 30, true);
  for (; field + 4 <= fieldsEnd; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== LARGE_FIELD) continue;
    let at = field + 4;
    const next = () => (at + 8 <= recordEnd ? numberAt(view, (at += 8) - 8) : undefined);
    if (isLarge(24)) found.unpackedBytes = next();
    if (isLarge(20)) found.packedBytes = next();
    if (isLarge(42)) {
      found.offsetAt = at;
      found.offset = next();
    }
    break;
  }
  return found;
}

function numberAt(view: DataView, at: number): number {
  return Number(view.getBigUint64(at, true));
}

/** Refuses a file whose entries share bytes, as no writer makes them: a small file would unpack without end. */
function mustNotOverlap(file: string, view: DataView, entries: readonly ZipEntry[], start: number): void {
  let free = 0;
  for (const { offset, packedBytes: length } of [...entries].sort((a, b) => a.offset - b.offset)) {
    if (offset < free) throw new WorkbookProblem("damagedFile", { file });
    free = offset + LOCAL_LENGTH + length;
  }
  if (free > Math.min(start, view.byteLength)) throw new WorkbookProblem("damagedFile", { file });
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
