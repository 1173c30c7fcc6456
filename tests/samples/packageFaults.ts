import { strFromU8, unzipSync } from "fflate";

/**
 * Faults of a workbook package that the Open XML SDK's validator lets pass but that make Excel repair or refuse the
 * file: a relation whose target is missing, a table without its relation, column names of a table used twice, a header
 * cell that differs from its table, a part without content type, a name that points to no sheet, a cell style with a
 * number format that is not there.
 */
export function packageFaults(bytes: Uint8Array): string[] {
  const parts = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  return [
    ...danglingRelations(parts),
    ...missingContentTypes(parts),
    ...tableFaults(parts),
    ...nameFaults(parts),
    ...spillsWithoutMetadata(parts),
    ...unknownNumberFormats(parts),
  ];
}

type Parts = ReadonlyMap<string, string>;

function attributes(tag: string): Record<string, string> {
  return Object.fromEntries([...tag.matchAll(/([\w:]+)="([^"]*)"/g)].map((match) => [match[1], match[2]]));
}

/** The relations of a part with their targets as package paths. */
function relationsOf(parts: Parts, part: string): { id: string; type: string; target: string }[] {
  const slash = part.lastIndexOf("/");
  const folder = part.slice(0, slash + 1);
  const rels = parts.get(`${folder}_rels/${part.slice(slash + 1)}.rels`) ?? "";
  return [...rels.matchAll(/<Relationship\b[^>]*>/g)]
    .map((match) => attributes(match[0]))
    .filter((relation) => relation.TargetMode !== "External")
    .map((relation) => ({
      id: relation.Id,
      type: relation.Type,
      target: new URL(relation.Target, `file:///${folder}`).pathname.slice(1),
    }));
}

function danglingRelations(parts: Parts): string[] {
  return [...parts.keys()]
    .filter((name) => !name.endsWith(".rels"))
    .concat("")
    .flatMap((part) =>
      relationsOf(parts, part)
        .filter((relation) => !parts.has(relation.target))
        .map((relation) => `${part || "package"}: ${relation.id} points to missing ${relation.target}`),
    );
}

function missingContentTypes(parts: Parts): string[] {
  const types = parts.get("[Content_Types].xml") ?? "";
  const overrides = new Set([...types.matchAll(/PartName="\/([^"]+)"/g)].map((match) => match[1]));
  const extensions = new Set([...types.matchAll(/Extension="([^"]+)"/g)].map((match) => match[1]));
  return [
    ...[...parts.keys()]
      .filter(
        (name) =>
          name !== "[Content_Types].xml" && !overrides.has(name) && !extensions.has(name.split(".").pop()!),
      )
      .map((name) => `${name} has no content type`),
    ...[...overrides].filter((name) => !parts.has(name)).map((name) => `content type for missing ${name}`),
  ];
}

function tableFaults(parts: Parts): string[] {
  const shared = [...(parts.get("xl/sharedStrings.xml") ?? "").matchAll(/<si>(.*?)<\/si>/gs)].map((match) =>
    [...match[1].matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map((run) => run[1]).join(""),
  );
  const seen = new Set<string>();
  const reached = new Set<string>();
  const faults: string[] = [];
  for (const [part, sheet] of parts) {
    if (!/^xl\/worksheets\/[^/]+\.xml$/.test(part)) continue;
    const relations = relationsOf(parts, part);
    const referenced = [...sheet.matchAll(/<tablePart r:id="([^"]+)"/g)].map((match) => match[1]);
    for (const relation of relations.filter(({ type }) => type.endsWith("/table"))) {
      reached.add(relation.target);
      if (!referenced.includes(relation.id)) faults.push(`${part}: ${relation.target} is not in tableParts`);
    }
    for (const id of referenced) {
      const relation = relations.find((candidate) => candidate.id === id);
      const table = relation && parts.get(relation.target);
      if (!table) {
        faults.push(`${part}: tablePart ${id} has no table`);
        continue;
      }
      const { name, ref } = attributes(/<table\b[^>]*>/.exec(table)![0]);
      if (seen.has(name.toLowerCase())) faults.push(`${name}: the name of two tables`);
      seen.add(name.toLowerCase());
      const columns = [...table.matchAll(/<tableColumn\b[^>]*\bname="([^"]*)"/g)].map((match) => match[1]);
      if (new Set(columns.map((column) => column.toLowerCase())).size !== columns.length)
        faults.push(`${name}: a column name stands twice`);
      const [, letters, row] = /^([A-Z]+)(\d+)(?::|$)/.exec(ref) ?? [];
      if (row === undefined) {
        faults.push(`${name}: ${ref} is no area`);
        continue;
      }
      columns.forEach((column, index) => {
        const address = columnLetters(columnNumber(letters) + index) + row;
        const written = cellText(sheet, address, shared);
        if (written !== column)
          faults.push(`${name}: ${address} says "${written}", the table says "${column}"`);
      });
    }
  }
  for (const name of parts.keys())
    if (name.startsWith("xl/tables/") && !reached.has(name)) faults.push(`${name} belongs to no sheet`);
  return faults;
}

function cellText(sheet: string, address: string, shared: readonly string[]): string {
  const cell = new RegExp(`<c r="${address}"[^>]*?(?:/>|>(.*?)</c>)`, "s").exec(sheet);
  if (/\bt="inlineStr"/.test(cell?.[0] ?? ""))
    return [...cell![1].matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map((run) => run[1]).join("");
  const value = /<v>([^<]*)<\/v>/.exec(cell?.[1] ?? "")?.[1] ?? "";
  return /\bt="s"/.test(cell?.[0] ?? "") ? (shared[Number(value)] ?? "") : value;
}

function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

function columnLetters(number: number): string {
  const rest = (number - 1) % 26;
  return (number > 26 ? columnLetters((number - 1 - rest) / 26) : "") + String.fromCharCode(65 + rest);
}

function nameFaults(parts: Parts): string[] {
  const workbook = parts.get("xl/workbook.xml") ?? "";
  const sheets = [...workbook.matchAll(/<sheet [^>]*?\bname="([^"]*)"/g)].map((match) => match[1]);
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const match of workbook.matchAll(/<definedName\b([^>]*)>([^<]*)<\/definedName>/g)) {
    const { name, localSheetId } = attributes(match[1]);
    const key = `${name.toLowerCase()} ${localSheetId ?? ""}`;
    if (seen.has(key)) faults.push(`${name}: defined twice`);
    seen.add(key);
    const sheet = /^(?:'((?:[^']|'')+)'|([A-Za-z_][\w.]*))!\$/.exec(match[2]);
    if (match[2] === "TRUE") continue;
    if (!sheet) faults.push(`${name}: ${match[2]} is no absolute reference with a well-formed sheet name`);
    else if (!sheets.includes((sheet[1] ?? sheet[2]).replace(/''/g, "'")))
      faults.push(`${name}: no sheet of the name in ${match[2]}`);
    if (!/^(_xlnm\.)?[A-Za-z_][\w.]*$/.test(name)) faults.push(`${name}: not a name that Excel accepts`);
  }
  return faults;
}

function spillsWithoutMetadata(parts: Parts): string[] {
  const spills = [...parts].some(
    ([part, xml]) => part.startsWith("xl/worksheets/") && /<c [^>]*\bcm="/.test(xml),
  );
  const metadata = parts.get("xl/metadata.xml") ?? "";
  return spills && !metadata.includes("XLDAPR") ? ["a spilling formula without xl/metadata.xml"] : [];
}

/** The first number of a format that a workbook brings along; those below are built in (ECMA-376 part 1, 18.8.30). */
const FIRST_FORMAT = 164;

function unknownNumberFormats(parts: Parts): string[] {
  const styles = parts.get("xl/styles.xml") ?? "";
  const known = new Set([...styles.matchAll(/<numFmt\b[^>]*\bnumFmtId="(\d+)"/g)].map((match) => match[1]));
  return [...styles.matchAll(/<xf\b[^>]*\bnumFmtId="(\d+)"/g)]
    .filter((match) => Number(match[1]) >= FIRST_FORMAT && !known.has(match[1]))
    .map((match) => `styles: number format ${match[1]} is not there`);
}
