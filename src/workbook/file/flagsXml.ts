import { xmlAttribute, xmlSpans, xmlText } from "./xmlSpans";
import { unescapeText } from "./sharedStrings";

const NAMESPACE = "urn:cordonbook:flags";

/** The small facts that a workbook keeps for the add-in, as a custom XML part. */
export function flagsXml(flags: ReadonlyMap<string, string>): string {
  const inner = [...flags]
    .map(([key, value]) => `<flag key="${xmlAttribute(key)}">${xmlText(value)}</flag>`)
    .join("");
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<flags xmlns="${NAMESPACE}">${inner}</flags>`;
}

/** Facts from such a part; undefined for a custom XML part that is somebody else's. */
export function readFlags(xml: string): Map<string, string> | undefined {
  if (!xml.includes(NAMESPACE)) return undefined;
  const { namespace, spans } = xmlSpans(xml, (path) => path[0] === "flag");
  if (namespace !== NAMESPACE) return undefined;
  return new Map(
    spans.map(({ attributes, openEnd, closeStart }) => [
      unescapeText(attributes.key ?? ""),
      unescapeText(plain(xml.slice(openEnd, closeStart))),
    ]),
  );
}

function plain(text: string): string {
  return text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}
