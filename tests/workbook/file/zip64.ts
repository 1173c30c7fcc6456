import { strToU8 } from "fflate";
import { crc32 } from "../../../src/workbook/file/crc32";

/** A zip file in which every size and place stands in 64 bits (PKWARE APPNOTE 4.5.3), as some writers make them all. */
export function zip64(parts: Readonly<Record<string, string | Uint8Array>>, slash = "/"): Uint8Array {
  const pieces: Buffer[] = [];
  const records: Buffer[] = [];
  let at = 0;
  for (const [name, part] of Object.entries(parts)) {
    const content = Buffer.from(typeof part === "string" ? strToU8(part) : part);
    const written = Buffer.from(name.replaceAll("/", slash));
    const extra = Buffer.alloc(28);
    extra.writeUInt16LE(1, 0);
    extra.writeUInt16LE(24, 2);
    extra.writeBigUInt64LE(BigInt(content.length), 4);
    extra.writeBigUInt64LE(BigInt(content.length), 12);
    extra.writeBigUInt64LE(BigInt(at), 20);
    const common = Buffer.alloc(26);
    common.writeUInt16LE(45, 0);
    common.writeUInt32LE(crc32(content) >>> 0, 10);
    common.writeUInt32LE(0xffffffff, 14);
    common.writeUInt32LE(0xffffffff, 18);
    common.writeUInt16LE(written.length, 22);
    const local = Buffer.concat([Buffer.from("PK\x03\x04"), common, written, extra.subarray(0, 20)]);
    local.writeUInt16LE(20, 28);
    local.writeUInt16LE(16, 30 + written.length + 2);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(0xffffffff, 10);
    common.writeUInt16LE(extra.length, 24);
    records.push(
      Buffer.concat([Buffer.from("PK\x01\x02"), Buffer.from([45, 0]), common, rest, written, extra]),
    );
    pieces.push(local, content);
    at += local.length + content.length;
  }
  const directory = Buffer.concat(records);
  const large = Buffer.alloc(56);
  large.write("PK\x06\x06", 0, "latin1");
  large.writeBigUInt64LE(44n, 4);
  large.writeBigUInt64LE(BigInt(records.length), 24);
  large.writeBigUInt64LE(BigInt(records.length), 32);
  large.writeBigUInt64LE(BigInt(directory.length), 40);
  large.writeBigUInt64LE(BigInt(at), 48);
  const locator = Buffer.alloc(20);
  locator.write("PK\x06\x07", 0, "latin1");
  locator.writeBigUInt64LE(BigInt(at + directory.length), 8);
  locator.writeUInt32LE(1, 16);
  const end = Buffer.alloc(22, 0xff);
  end.write("PK\x05\x06", 0, "latin1");
  end.writeUInt32LE(0, 4);
  end.writeUInt16LE(0, 20);
  return new Uint8Array(Buffer.concat([...pieces, directory, large, locator, end]));
}
