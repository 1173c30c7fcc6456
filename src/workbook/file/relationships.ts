import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";

/** A relation of a part to another part of the package. */
export interface Relationship {
  readonly id: string;
  /** Last word of the relation's type, the same in transitional and strict files: "worksheet", "table". */
  readonly kind: string;
  /** Name of the part it points to. */
  readonly part: string;
}

/** The relations of a part ("" for the package itself) by their ids; those that point outside are left out. */
export async function relationships(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<ReadonlyMap<string, Relationship>> {
  const slash = part.lastIndexOf("/") + 1;
  const folder = part.slice(0, slash);
  const listed = `${folder}_rels/${part.slice(slash)}.rels`;
  const found = new Map<string, Relationship>();
  if (!source.parts.has(listed)) return found;
  await parseXml(
    source.file,
    listed,
    source.chunks(listed),
    {
      open: (name, { Id, Type, Target, TargetMode }) => {
        if (name !== "Relationship" || TargetMode === "External" || !Id || !Type || !Target) return;
        found.set(Id, {
          id: Id,
          kind: Type.slice(Type.lastIndexOf("/") + 1),
          part: resolvePart(folder, Target),
        });
      },
      text: () => undefined,
      close: () => undefined,
    },
    limits,
  );
  return found;
}

/** The part that a relation leads to; a relation to a part that is not there is a damaged file. */
export function relatedPart(source: WorkbookPackage, relation: Relationship): string {
  if (!source.parts.has(relation.part))
    throw new WorkbookProblem("missingPart", { file: source.file, part: relation.part });
  return relation.part;
}

/** The part that a target means, seen from a folder of the package. */
export function resolvePart(folder: string, target: string): string {
  const path = target.startsWith("/") ? target.slice(1) : folder + target;
  const steps: string[] = [];
  for (const step of path.split("/"))
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  return steps.join("/");
}
