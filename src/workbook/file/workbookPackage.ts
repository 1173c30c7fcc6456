import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";

/** The parts of a workbook file, unpacked one at a time. */
export interface WorkbookPackage {
  /** File name as messages show it. */
  readonly file: string;
  readonly parts: ReadonlyMap<string, PackagePart>;
  /** The unpacked bytes of a part, piece by piece; rejects when they are not what the file says they are. */
  chunks(part: string): AsyncIterable<Uint8Array>;
  close(): Promise<void>;
}

/** What a package's directory says of a part. */
export interface PackagePart {
  readonly name: string;
  readonly packedBytes: number;
  readonly unpackedBytes: number;
}

/** A part as a directory lists it, before anything of it is believed. */
export interface ListedPart extends PackagePart {
  readonly method: number;
  readonly encrypted: boolean;
}

const STORED = 0;
export const DEFLATED = 8;

/**
 * Collects a package's parts and refuses, before a byte is unpacked, what no workbook does: too many parts, a name used
 * twice, names that leave the package, encryption, an unknown packing, expansion far beyond the file's size.
 */
export class PartList {
  readonly parts = new Map<string, PackagePart>();
  private readonly names = new Set<string>();
  private unpacked = 0;

  constructor(
    private readonly file: string,
    private readonly fileBytes: number,
    private readonly limits: ReadLimits,
  ) {}

  add(part: ListedPart): void {
    const { file, limits } = this;
    if (this.names.size >= limits.parts)
      throw new WorkbookProblem("tooManyParts", { file, most: limits.parts });
    const folded = part.name.toLowerCase();
    if (this.names.has(folded)) throw new WorkbookProblem("samePartTwice", { file, part: part.name });
    this.names.add(folded);
    if (part.name.split(/[\\/]/).includes("..") || /^[\\/]|^[a-z]:/i.test(part.name))
      throw new WorkbookProblem("badPartName", { file, part: part.name });
    if (part.encrypted) throw new WorkbookProblem("lockedFile", { file });
    if (part.method !== STORED && part.method !== DEFLATED)
      throw new WorkbookProblem("unknownPacking", { file, part: part.name });
    this.unpacked += part.unpackedBytes;
    if (this.unpacked > limits.unpackedBytes || this.expandsTooFar())
      throw new WorkbookProblem("expandsTooFar", {
        file,
        times: Math.round(this.unpacked / Math.max(1, this.fileBytes)),
        most: limits.expansion,
      });
    if (!part.name.endsWith("/")) this.parts.set(part.name, part);
  }

  private expandsTooFar(): boolean {
    return (
      this.unpacked > this.limits.freeBytes &&
      this.unpacked > this.limits.expansion * Math.max(1, this.fileBytes)
    );
  }
}

/** Follows an unpacked part and refuses it as soon as it is longer, or at its end shorter, than the file said. */
export class PartLength {
  private seen = 0;

  constructor(
    private readonly file: string,
    private readonly part: PackagePart,
  ) {}

  add(bytes: number): void {
    this.seen += bytes;
    if (this.seen > this.part.unpackedBytes) this.refuse();
  }

  end(): void {
    if (this.seen !== this.part.unpackedBytes) this.refuse();
  }

  private refuse(): never {
    throw new WorkbookProblem("sizeLies", { file: this.file, part: this.part.name });
  }
}

/** Refuses what is no zip package at all, with a sentence for the kinds of file that people mistake for one. */
export function mustLookLikePackage(file: string, start: Uint8Array): void {
  const begins = (...bytes: number[]) => bytes.every((byte, i) => start[i] === byte);
  if (start.length === 0) throw new WorkbookProblem("emptyFile", { file });
  if (begins(0xd0, 0xcf, 0x11, 0xe0)) throw new WorkbookProblem("oldOrLockedFile", { file });
  if (!begins(0x50, 0x4b)) throw new WorkbookProblem("notAWorkbook", { file });
}
