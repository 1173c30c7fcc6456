import { WorkbookProblem } from "../surveyWorkbook";
import type { CsvSource } from "./csvSource";
import { oneByteDecoder, type OneByteEncoding } from "./oneByteEncoding";

export type CsvEncoding = "utf-8" | "utf-16le" | "utf-16be" | OneByteEncoding;

/** What must be known of a csv file before its records can be read. */
export interface CsvLayout {
  readonly encoding: CsvEncoding;
  readonly delimiter: string;
  /** Characters of the hidden lines. */
  readonly hiddenCharacters: number;
  /** Lines end with \n or \r\n, so that a \r alone is none of their ends. */
  readonly hasLineFeeds: boolean;
}

/**
 * The text of the file below its hidden lines, with one kind of line end.
 *
 * @throws WorkbookProblem "changedMeanwhile" where the bytes no longer fit the encoding that was decided on.
 */
export async function* csvLines(source: CsvSource, layout: CsvLayout): AsyncGenerator<string, void, void> {
  let hidden = layout.hiddenCharacters;
  let isStart = true;
  let held = "";
  try {
    for await (const piece of decoded(source, layout.encoding)) {
      let text = held + piece.slice(hidden);
      hidden = Math.max(0, hidden - piece.length);
      held = layout.hasLineFeeds && text.endsWith("\r") ? "\r" : "";
      text = oneLineEnd(text.slice(0, text.length - held.length), layout.hasLineFeeds);
      if (text === "") continue;
      yield isStart && text.startsWith("\ufeff") ? text.slice(1) : text;
      isStart = false;
    }
  } catch (error) {
    if (!(error instanceof BytesDoNotFit)) throw error;
    throw new WorkbookProblem("changedMeanwhile", { file: source.file }, { cause: error });
  }
  if (held !== "") yield held;
}

/** Bytes do not fit the encoding. */
export class BytesDoNotFit extends Error {}

/** The text of a file; throws BytesDoNotFit where it is not the UTF-8 that it is taken for. */
export async function* decoded(source: CsvSource, encoding: CsvEncoding): AsyncGenerator<string, void, void> {
  const decode = decoderOf(encoding, source.file);
  for await (const chunk of source.chunks()) yield decode(chunk);
  yield decode();
}

function decoderOf(encoding: CsvEncoding, file: string): (chunk?: Uint8Array) => string {
  if (encoding !== "utf-8" && encoding !== "utf-16le" && encoding !== "utf-16be")
    return oneByteDecoder(encoding);
  const decoder = new TextDecoder(encoding, { fatal: encoding === "utf-8" });
  return (chunk) => {
    try {
      return decoder.decode(chunk, { stream: chunk !== undefined });
    } catch (error) {
      throw new BytesDoNotFit(file, { cause: error });
    }
  };
}

/** All line ends as \n; \r alone counts as one only in files that have no other. */
export function oneLineEnd(text: string, hasLineFeeds: boolean): string {
  return hasLineFeeds ? text.replaceAll("\r\n", "\n") : text.replaceAll("\r", "\n");
}
