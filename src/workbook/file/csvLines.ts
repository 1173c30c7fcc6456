import { WorkbookProblem } from "../surveyWorkbook";
import type { CsvSource } from "./csvSource";

export type CsvEncoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

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
  const decoder = new TextDecoder(encoding, { fatal: encoding === "utf-8" });
  const decode = (chunk?: Uint8Array) => {
    try {
      return decoder.decode(chunk, { stream: chunk !== undefined });
    } catch (error) {
      throw new BytesDoNotFit(source.file, { cause: error });
    }
  };
  for await (const chunk of source.chunks()) yield decode(chunk);
  yield decode();
}

/** All line ends as \n; \r alone counts as one only in files that have no other. */
export function oneLineEnd(text: string, hasLineFeeds: boolean): string {
  return hasLineFeeds ? text.replaceAll("\r\n", "\n") : text.replaceAll("\r", "\n");
}
