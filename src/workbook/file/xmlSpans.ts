import { SaxesParser } from "saxes";

/** Where an element stands in the text of its part. */
export interface XmlSpan {
  /** Name without prefix. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly start: number;
  /** Behind the opening tag. */
  readonly openEnd: number;
  /** Before the closing tag; equal to `openEnd` for an element that closes itself. */
  readonly closeStart: number;
  readonly end: number;
  readonly selfClosing: boolean;
}

/** A change of text: what stands from `start` to `end` is replaced. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** An XML part that is changed by splices only, so that everything else keeps its bytes. */
export interface XmlRoot {
  /** Prefix of the root's elements with its colon, "" for the default namespace. */
  readonly prefix: string;
  readonly namespace: string;
  readonly root: XmlSpan;
  /** The elements asked for, in order. */
  readonly spans: readonly XmlSpan[];
}

/** Elements that are held of one part. */
const MOST_SPANS = 3_000_000;

/** A part that is not as the standard has it, so that nothing can be put into it safely. */
export class MalformedPart extends Error {}

/**
 * Finds elements in the text of a part without changing it. `wanted` is asked for each element with its path of names
 * below the root, such as ["sheetData", "row"].
 *
 * @throws MalformedPart for what is not well formed, and where more elements are wanted than `most`
 */
export function xmlSpans(
  xml: string,
  wanted: (path: readonly string[]) => boolean,
  most = MOST_SPANS,
): XmlRoot {
  const parser = new SaxesParser({ position: true });
  const path: string[] = [];
  const open: { name: string; attributes: Record<string, string>; openEnd: number; selfClosing: boolean }[] =
    [];
  const found: { span: XmlSpan; order: number }[] = [];
  let root: XmlSpan | undefined;
  let prefix = "";
  parser.on("opentag", (tag) => {
    const name = tag.name.slice(tag.name.indexOf(":") + 1);
    if (open.length === 0) prefix = tag.name.slice(0, tag.name.length - name.length);
    else path.push(name);
    open.push({
      name,
      attributes: tag.attributes as Record<string, string>,
      openEnd: parser.position,
      selfClosing: tag.isSelfClosing,
    });
  });
  parser.on("closetag", () => {
    const { name, attributes, openEnd, selfClosing } = open.pop()!;
    const isRoot = open.length === 0;
    if (isRoot || wanted(path)) {
      const end = parser.position;
      const span: XmlSpan = {
        name,
        attributes,
        start: xml.lastIndexOf("<", openEnd - 1),
        openEnd,
        closeStart: selfClosing ? openEnd : xml.lastIndexOf("<", end - 1),
        end,
        selfClosing,
      };
      if (isRoot) root = span;
      else if (found.push({ span, order: span.start }) > most) throw new MalformedPart("too many elements");
    }
    path.pop();
  });
  parser.on("error", (error) => {
    throw new MalformedPart(error.message);
  });
  parser.on("doctype", () => {
    throw new MalformedPart("document type");
  });
  parser.write(xml).close();
  const { attributes } = root!;
  return {
    prefix,
    namespace: (prefix ? attributes[`xmlns:${prefix.slice(0, -1)}`] : attributes.xmlns) ?? "",
    root: root!,
    spans: found.sort((a, b) => a.order - b.order).map(({ span }) => span),
  };
}

/** The text with all splices made; they must not overlap. Insertions at the same place keep their order. */
export function spliced(text: string, splices: readonly Splice[]): string {
  const sorted = splices
    .map((splice, order) => ({ splice, order }))
    .sort(
      (a, b) =>
        a.splice.start - b.splice.start ||
        Number(a.splice.end > a.splice.start) - Number(b.splice.end > b.splice.start) ||
        a.order - b.order,
    );
  const pieces: string[] = [];
  let at = 0;
  for (const { splice } of sorted) {
    if (splice.start < at) throw new RangeError("splices overlap");
    pieces.push(text.slice(at, splice.start), splice.text);
    at = splice.end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}

/** Control characters and lone halves of a character pair, which XML cannot hold. */
const NOT_IN_XML =
  // eslint-disable-next-line no-control-regex
  /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as the content of an element. Characters that XML cannot hold are written as a workbook does. */
export function xmlText(text: string): string {
  return text
    .replace(/_x[0-9A-Fa-f]{4}_/g, (escape) => `_x005F${escape}`)
    .replace(
      NOT_IN_XML,
      (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
    )
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;");
}

/** Text as the value of an attribute in double quotes. */
export function xmlAttribute(text: string): string {
  return xmlText(text).replace(/"/g, "&quot;").replace(/\n/g, "&#10;").replace(/\t/g, "&#9;");
}

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The text that the content of an element means. */
export function plainText(xml: string): string {
  return xml.replace(/&(?:(amp|lt|gt|quot|apos)|#(\d+)|#x([0-9a-f]+));/gi, (_whole, name, decimal, hex) =>
    name ? ENTITIES[name] : String.fromCodePoint(decimal ? Number(decimal) : parseInt(hex, 16)),
  );
}

/** The opening tag of an element with another value for an attribute that it has. */
export function withAttribute(xml: string, span: XmlSpan, name: string, value: string): Splice {
  return withAttributes(xml, span, { [name]: value });
}

/** The same for several attributes. */
export function withAttributes(
  xml: string,
  { start, openEnd }: XmlSpan,
  values: Readonly<Record<string, string>>,
): Splice {
  const text = Object.entries(values).reduce(
    (tag, [name, value]) =>
      tag.replace(
        new RegExp(`(\\s${name}\\s*=\\s*)("[^"]*"|'[^']*')`),
        (_whole, before: string) => `${before}"${xmlAttribute(value)}"`,
      ),
    xml.slice(start, openEnd),
  );
  return { start, end: openEnd, text };
}
