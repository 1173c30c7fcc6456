import { FLAG_PREFIX } from "../flagPrefix";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import { relationships } from "./relationships";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";

/**
 * The small facts that Excel kept for the add-in when it saved the file, by key. They are settings of the workbook in
 * Office.js; a file holds them as properties of a web extension part, which the list of task panes leads to. The form
 * follows the specification MS-OWEXML (sections 2.2.7 and 5.1: `we:property` with `name` and `value`, both text); that
 * Excel writes the value as JSON text has not been seen here, so a value that is no JSON string is taken as it stands.
 * Whatever else is unexpected counts as nothing kept: another part's damage is no reason to refuse the counts.
 */
export async function excelFlags(
  source: WorkbookPackage,
  workbookPart: string,
  limits: ReadLimits,
): Promise<Map<string, string>> {
  const flags = new Map<string, string>();
  for (const owner of ["", workbookPart])
    for (const panes of await partsOfKind(source, owner, "webextensiontaskpanes", limits))
      for (const part of await partsOfKind(source, panes, "webextension", limits))
        for (const [key, value] of await propertiesOf(source, part, limits).catch(nothingKept))
          if (!flags.has(key)) flags.set(key, value);
  return flags;
}

async function partsOfKind(
  source: WorkbookPackage,
  owner: string,
  kind: string,
  limits: ReadLimits,
): Promise<string[]> {
  const relations = await relationships(source, owner, limits).catch(nothingKept);
  return [...relations.values()].flatMap((relation) =>
    relation.kind === kind && source.parts.has(relation.part) ? [relation.part] : [],
  );
}

async function propertiesOf(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (element, { name, value }) => {
        if (element === "property" && name?.startsWith(FLAG_PREFIX) && value !== undefined)
          found.set(name.slice(FLAG_PREFIX.length), textOf(value));
      },
      text: () => undefined,
      close: () => undefined,
    },
    limits,
  );
  return found;
}

function textOf(value: string): string {
  try {
    const parsed: unknown = JSON.parse(value);
    return typeof parsed === "string" ? parsed : value;
  } catch {
    return value;
  }
}

function nothingKept(problem: unknown): Map<string, never> {
  if (problem instanceof WorkbookProblem) return new Map<string, never>();
  throw problem;
}
