import { SaxesParser } from "saxes";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";

/** What is told of a part's elements, their names without a namespace prefix. */
export interface XmlListener {
  open(name: string, attributes: Readonly<Record<string, string>>): void;
  text(text: string): void;
  close(name: string): void;
}

/** More than one character of a text takes, written as &#x10FFFF; or _xHHHH_ in two bytes a letter. */
const BYTES_A_CHARACTER = 40;

/**
 * Parses the XML of one part as its bytes come in. Document types are refused, because nothing but an attack needs one
 * in a workbook; so is XML that is not well formed.
 */
export class XmlParser {
  private readonly saxes = new SaxesParser({ position: false });
  private decoder: TextDecoder | undefined;
  private depth = 0;
  /** Bytes since an element or text last came to its end. */
  private waiting = 0;

  constructor(
    private readonly file: string,
    private readonly part: string,
    listener: XmlListener,
    private readonly limits: ReadLimits,
  ) {
    const facts = { file, part };
    this.saxes.on("doctype", () => {
      throw new WorkbookProblem("documentType", facts);
    });
    this.saxes.on("error", (error) => {
      throw new WorkbookProblem("badXml", facts, { cause: error });
    });
    this.saxes.on("opentag", (tag) => {
      this.waiting = 0;
      if (++this.depth > limits.depth) throw new WorkbookProblem("tooDeep", { ...facts, most: limits.depth });
      listener.open(local(tag.name), tag.attributes as Record<string, string>);
    });
    this.saxes.on("closetag", (tag) => {
      this.waiting = 0;
      this.depth--;
      listener.close(local(tag.name));
    });
    const onText = (text: string) => listener.text(text);
    this.saxes.on("text", onText);
    this.saxes.on("cdata", onText);
  }

  push(chunk: Uint8Array): void {
    this.write(this.textOf(chunk));
  }

  /** The text of the part's next bytes. */
  textOf(chunk: Uint8Array): string {
    this.decoder ??= new TextDecoder(encodingOf(chunk), { fatal: true });
    this.waiting += chunk.length;
    return this.decode(chunk, true);
  }

  /** Told that an element was taken from the text without being parsed here. */
  passOver(): void {
    this.waiting = 0;
  }

  write(text: string): void {
    this.saxes.write(text);
    const most = this.limits.cellCharacters;
    if (this.waiting > most * BYTES_A_CHARACTER)
      throw new WorkbookProblem("tooMuchText", { file: this.file, part: this.part, most });
  }

  end(): void {
    if (this.decoder) this.saxes.write(this.decode(new Uint8Array(), false));
    this.saxes.close();
  }

  private decode(chunk: Uint8Array, stream: boolean): string {
    try {
      return this.decoder!.decode(chunk, { stream });
    } catch (error) {
      throw new WorkbookProblem("badXml", { file: this.file, part: this.part }, { cause: error });
    }
  }
}

/** Parses a whole part. */
export async function parseXml(
  file: string,
  part: string,
  chunks: AsyncIterable<Uint8Array>,
  listener: XmlListener,
  limits: ReadLimits,
): Promise<void> {
  const parser = new XmlParser(file, part, listener, limits);
  for await (const chunk of chunks) parser.push(chunk);
  parser.end();
}

/** The value of an attribute, whatever prefix it carries. */
export function attribute(attributes: Readonly<Record<string, string>>, name: string): string | undefined {
  if (name in attributes) return attributes[name];
  const prefixed = Object.keys(attributes).find((key) => key.endsWith(`:${name}`));
  return prefixed === undefined ? undefined : attributes[prefixed];
}

function local(name: string): string {
  const colon = name.indexOf(":");
  return colon < 0 ? name : name.slice(colon + 1);
}

function encodingOf(start: Uint8Array): string {
  if (start[0] === 0xff && start[1] === 0xfe) return "utf-16le";
  if (start[0] === 0xfe && start[1] === 0xff) return "utf-16be";
  if (start[0] === 0x3c && start[1] === 0) return "utf-16le";
  if (start[0] === 0 && start[1] === 0x3c) return "utf-16be";
  return "utf-8";
}
