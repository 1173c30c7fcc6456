import { SaxesParser } from "saxes";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";

/** What is told of a part's elements: those of the root's namespace by their names without a prefix. */
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
  /** Namespaces by prefix, the innermost last; an element that declares none adds none. */
  private readonly scopes: { readonly depth: number; readonly declared: ReadonlyMap<string, string> }[] = [];
  private rootNamespace = "";
  /** Scopes below which a name without prefix is one of the root's namespace; undefined where the root has a prefix. */
  private plainScopes: number | undefined;
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
      const attributes = tag.attributes as Record<string, string>;
      this.declare(attributes);
      if (this.depth === 1) {
        this.rootNamespace = this.namespaceOf(tag.name);
        this.plainScopes = tag.name.includes(":") ? undefined : this.scopes.length;
      }
      listener.open(this.told(tag.name), attributes);
    });
    this.saxes.on("closetag", (tag) => {
      this.waiting = 0;
      const name = this.told(tag.name);
      if (this.scopes[this.scopes.length - 1]?.depth === this.depth) this.scopes.pop();
      this.depth--;
      listener.close(name);
    });
    const onText = (text: string) => listener.text(text);
    this.saxes.on("text", onText);
    this.saxes.on("cdata", onText);
  }

  private declare(attributes: Readonly<Record<string, string>>): void {
    let declared: Map<string, string> | undefined;
    for (const name in attributes)
      if (name.startsWith("xmlns") && (name.length === 5 || name[5] === ":"))
        (declared ??= new Map<string, string>()).set(name.slice(6), attributes[name]);
    if (declared) this.scopes.push({ depth: this.depth, declared });
  }

  private namespaceOf(name: string): string {
    const prefix = name.slice(0, Math.max(0, name.indexOf(":")));
    for (let at = this.scopes.length - 1; at >= 0; at--) {
      const namespace = this.scopes[at].declared.get(prefix);
      if (namespace !== undefined) return namespace;
    }
    return "";
  }

  /** An element's name as it is told: without prefix for those of the root's namespace, unlike any of them for others. */
  private told(name: string): string {
    if (this.scopes.length === this.plainScopes && !name.includes(":")) return name;
    return this.namespaceOf(name) === this.rootNamespace ? local(name) : `{other}${name}`;
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
