import { zipSync } from "fflate";
import { WorkbookProblem } from "../surveyWorkbook";
import { bytesPackage } from "./bytesPackage";
import { READ_LIMITS, type ReadLimits } from "./readLimits";
import type { WorkbookPackage } from "./workbookPackage";
import { zipDirectory, type ZipEntry } from "./zipDirectory";

const END_RECORD = 22;
const LARGEST_PLAIN = 0xffffffff;
const MOST_ENTRIES = 0xfffe;
/** The day that spreadsheets themselves write into packages: the first that a zip file can hold. */
const PART_DATE = "1980-01-01T00:00:00";

/**
 * Changes some parts of a package held in memory. All other parts, with their headers, stay what they were byte for
 * byte and in their order; new parts come last.
 */
export class PackageEditor {
  readonly source: WorkbookPackage;
  /** The part whose text was asked for last. */
  lastPart = "";
  private readonly entries: readonly ZipEntry[];
  private readonly directoryStart: number;
  private readonly commentStart: number;
  private readonly changes = new Map<string, Uint8Array | undefined>();

  constructor(
    readonly file: string,
    private readonly original: Uint8Array,
    limits: ReadLimits = READ_LIMITS,
  ) {
    this.source = bytesPackage(file, original, limits);
    const directory = zipDirectory(file, original);
    this.entries = directory.entries;
    this.directoryStart = directory.start;
    this.commentStart = directory.commentStart;
  }

  has(part: string): boolean {
    return this.changes.has(part) ? this.changes.get(part) !== undefined : this.source.parts.has(part);
  }

  get changedParts(): ReadonlySet<string> {
    return new Set(this.changes.keys());
  }

  /** The text of a part. Refuses other encodings than UTF-8, because their splices would not keep bytes. */
  async text(part: string): Promise<string> {
    this.lastPart = part;
    try {
      return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await this.bytesOf(part));
    } catch (error) {
      if (error instanceof WorkbookProblem) throw error;
      throw new WorkbookProblem("layoutUnknown", { file: this.file, part }, { cause: error });
    }
  }

  put(part: string, content: string): void {
    this.changes.set(part, new TextEncoder().encode(content));
  }

  remove(part: string): void {
    if (this.source.parts.has(part)) this.changes.set(part, undefined);
    else this.changes.delete(part);
  }

  /** The package with its changes. */
  bytes(): Uint8Array {
    const pieces: Uint8Array[] = [];
    const records: Uint8Array[] = [];
    let length = 0;
    const add = (local: Uint8Array, record: Uint8Array, largeOffsetAt?: number) => {
      const moved = new Uint8Array(record);
      const view = new DataView(moved.buffer);
      if (largeOffsetAt === undefined) view.setUint32(42, length, true);
      else view.setBigUint64(largeOffsetAt, BigInt(length), true);
      pieces.push(local);
      records.push(moved);
      length += local.length;
    };
    const byOffset = [...this.entries].sort((a, b) => a.offset - b.offset);
    const written = new Set<string>();
    byOffset.forEach((entry, index) => {
      const end = byOffset[index + 1]?.offset ?? this.directoryStart;
      const record = this.original.subarray(entry.recordStart, entry.recordEnd);
      const largeOffsetAt = entry.largeOffsetAt && entry.largeOffsetAt - entry.recordStart;
      if (!this.changes.has(entry.name))
        return add(this.original.subarray(entry.offset, end), record, largeOffsetAt);
      const content = this.changes.get(entry.name);
      written.add(entry.name);
      if (content) add(...packed(entry.name, content));
    });
    for (const [name, content] of this.changes)
      if (content && !written.has(name)) add(...packed(name, content));
    const directoryLength = records.reduce((sum, record) => sum + record.length, 0);
    if (length + directoryLength > LARGEST_PLAIN || records.length > MOST_ENTRIES)
      throw new WorkbookProblem("tooLargeToHold", { file: this.file });
    const comment = this.comment();
    const end = new Uint8Array(END_RECORD + comment.length);
    const view = new DataView(end.buffer);
    view.setUint32(0, 0x06054b50, true);
    view.setUint16(8, records.length, true);
    view.setUint16(10, records.length, true);
    view.setUint32(12, directoryLength, true);
    view.setUint32(16, length, true);
    view.setUint16(20, comment.length, true);
    end.set(comment, END_RECORD);
    return joined([...pieces, ...records, end]);
  }

  private async bytesOf(part: string): Promise<Uint8Array> {
    const changed = this.changes.get(part);
    if (changed) return changed;
    if (this.changes.has(part) || !this.source.parts.has(part))
      throw new WorkbookProblem("missingPart", { file: this.file, part });
    const chunks: Uint8Array[] = [];
    for await (const chunk of this.source.chunks(part)) chunks.push(new Uint8Array(chunk));
    return joined(chunks);
  }

  /** The comment at the end of the zip file, which belongs to whoever made it. */
  private comment(): Uint8Array {
    return this.original.subarray(this.commentStart);
  }
}

/** An entry of its own: local header with packed bytes, and central record. */
function packed(name: string, content: Uint8Array): [local: Uint8Array, record: Uint8Array] {
  const zip = zipSync({ [name]: [content, { mtime: PART_DATE, level: 6 }] });
  const { entries, start } = zipDirectory(name, zip);
  return [zip.subarray(0, start), zip.subarray(entries[0].recordStart, entries[0].recordEnd)];
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
