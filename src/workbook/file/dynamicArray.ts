import { addContentType, addRelation, freePart, PART_TYPES, relationsOf } from "./editWorkbook";
import type { WorkbookNamespaces } from "./editWorkbook";
import type { PackageEditor } from "./packageEditor";
import { spliced, xmlSpans, type Splice, type XmlSpan } from "./xmlSpans";

/** Kind of metadata by which a cell is told to hold a dynamic array ([MS-XLSX], dynamicArrayProperties). */
const KIND = "XLDAPR";
const PROPERTIES = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";

const TYPE =
  `metadataType name="${KIND}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" ` +
  'splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';

/**
 * Number of the mark of dynamic arrays among the cell metadata of a workbook (ECMA-376 part 1, 18.3.1.4, attribute cm,
 * counted from 1); the metadata part, its type and its records are added where they are not there yet (18.9).
 */
export async function dynamicArrayMark(
  editor: PackageEditor,
  workbookPart: string,
  namespaces: WorkbookNamespaces,
): Promise<number> {
  const there = (await relationsOf(editor, workbookPart)).find(({ kind }) => kind === "sheetMetadata");
  const part = there?.part ?? (await addMetadataPart(editor, workbookPart, namespaces));
  const xml = await editor.text(part);
  const { prefix: p, spans, root } = xmlSpans(xml, (path) => path.length <= 3);
  const lists = spans.filter((span) => !spans.some((other) => isInside(span, other)));
  const inside = (list: XmlSpan | undefined) =>
    list
      ? spans.filter(
          (span) =>
            isInside(span, list) && !spans.some((o) => o !== list && isInside(span, o) && isInside(o, list)),
        )
      : [];
  const splices: Splice[] = [];
  /** Number of an item of a list from 0, added where no item is the one that is wanted. */
  const numberIn = (
    list: XmlSpan | undefined,
    open: string,
    isWanted: (item: XmlSpan) => boolean,
    item: string,
    after: readonly string[],
  ): number => {
    const items = inside(list);
    const index = items.findIndex(isWanted);
    if (index >= 0) return index;
    const name = /^\w+/.exec(open)![0];
    if (list && !list.selfClosing) {
      const tag = xml
        .slice(list.start, list.openEnd)
        .replace(/(\scount\s*=\s*)["']\d*["']/, `$1"${items.length + 1}"`);
      splices.push(
        { start: list.start, end: list.openEnd, text: tag },
        { start: list.closeStart, end: list.closeStart, text: item },
      );
    } else {
      const before = lists.filter((span) => after.includes(span.name));
      const at = list?.start ?? before[before.length - 1]?.end ?? root.openEnd;
      splices.push({ start: at, end: list?.end ?? at, text: `<${p}${open} count="1">${item}</${p}${name}>` });
    }
    return items.length;
  };
  const listOf = (name: string) => lists.find((span) => span.name === name);
  const type =
    numberIn(
      listOf("metadataTypes"),
      "metadataTypes",
      (item) => item.attributes.name === KIND,
      `<${p}${TYPE}`,
      [],
    ) + 1;
  const before = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata"];
  const value = numberIn(
    lists.find(({ name, attributes }) => name === "futureMetadata" && attributes.name === KIND),
    `futureMetadata name="${KIND}"`,
    ({ openEnd, closeStart }) => /\bfDynamic\s*=\s*["'](?:1|true)["']/.test(xml.slice(openEnd, closeStart)),
    `<${p}bk><${p}extLst><${p}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">` +
      `<xda:dynamicArrayProperties xmlns:xda="${PROPERTIES}" fDynamic="1" fCollapsed="0"/></${p}ext></${p}extLst></${p}bk>`,
    before,
  );
  const cell = numberIn(
    listOf("cellMetadata"),
    "cellMetadata",
    (item) => {
      const records = inside(item);
      return (
        records.length === 1 &&
        Number(records[0].attributes.t) === type &&
        Number(records[0].attributes.v) === value
      );
    },
    `<${p}bk><${p}rc t="${type}" v="${value}"/></${p}bk>`,
    before,
  );
  if (splices.length > 0) editor.put(part, spliced(xml, splices));
  return cell + 1;
}

async function addMetadataPart(
  editor: PackageEditor,
  workbookPart: string,
  { main, relations }: WorkbookNamespaces,
): Promise<string> {
  const part = editor.has("xl/metadata.xml") ? freePart(editor, "xl/metadata{n}.xml") : "xl/metadata.xml";
  editor.put(
    part,
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${main}"></metadata>`,
  );
  await addRelation(editor, workbookPart, `${relations}/sheetMetadata`, part);
  await addContentType(editor, part, PART_TYPES.metadata);
  return part;
}

function isInside(inner: XmlSpan, outer: XmlSpan): boolean {
  return inner !== outer && outer.start < inner.start && inner.end <= outer.end;
}
