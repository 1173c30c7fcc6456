/** The bytes of a csv file, from the beginning each time that they are asked for. */
export interface CsvSource {
  /** File name as messages show it. */
  readonly file: string;
  chunks(): AsyncIterable<Uint8Array>;
}

const CHUNK_BYTES = 2 ** 16;

/** A csv file that is held in memory. */
export function bytesSource(file: string, bytes: Uint8Array): CsvSource {
  return {
    file,
    async *chunks() {
      for (let at = 0; at < bytes.length; at += CHUNK_BYTES) yield bytes.subarray(at, at + CHUNK_BYTES);
    },
  };
}
