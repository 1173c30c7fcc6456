const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * The checksum that zip packages carry (CRC-32 of ISO 3309), continued from an earlier one.
 *
 * @example
 * crc32(new TextEncoder().encode("123456789")) // 3421780262
 */
export function crc32(bytes: Uint8Array, earlier = 0): number {
  let value = ~earlier;
  for (let i = 0; i < bytes.length; i++) value = TABLE[(value ^ bytes[i]) & 0xff] ^ (value >>> 8);
  return ~value >>> 0;
}
