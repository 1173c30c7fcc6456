import type { ReadLimits } from "./readLimits";
import { unescapeText } from "./sharedStrings";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";
import { xmlAttribute, xmlText } from "./xmlSpans";

const NAMESPACE = "urn:cordonbook:flags";

/**
 * The small facts that a workbook file keeps for the add-in, as a custom XML part. A fact without a value says that the
 * one that Excel keeps under this key counts no longer.
 */
export function flagsXml(flags: ReadonlyMap<string, string | undefined>): string {
  const inner = [...flags]
    .map(([key, value]) =>
      value === undefined
        ? `<flag key="${xmlAttribute(key)}" gone="1"/>`
        : `<flag key="${xmlAttribute(key)}">${xmlText(value)}</flag>`,
    )
    .join("");
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<flags xmlns="${NAMESPACE}">${inner}</flags>`;
}

/**
 * Facts from such a part; undefined for a custom XML part that is somebody else's.
 *
 * @throws WorkbookProblem "badXml" for a part that is no XML
 */
export async function readFlagsXml(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<Map<string, string | undefined> | undefined> {
  const flags = new Map<string, string | undefined>();
  let isOurs = false;
  let depth = 0;
  let current: { key: string; value: string; isGone: boolean } | undefined;
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name, attributes) => {
        if (depth++ === 0) isOurs = name === "flags" && Object.values(attributes).includes(NAMESPACE);
        else if (isOurs && depth === 2 && name === "flag")
          current = { key: unescapeText(attributes.key ?? ""), value: "", isGone: attributes.gone === "1" };
      },
      text: (text) => {
        if (current) current.value += text;
      },
      close: () => {
        depth--;
        if (depth !== 1 || !current) return;
        flags.set(current.key, current.isGone ? undefined : unescapeText(current.value));
        current = undefined;
      },
    },
    limits,
  );
  return isOurs ? flags : undefined;
}
