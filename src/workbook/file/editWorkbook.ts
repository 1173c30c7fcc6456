import { OWN_SHEET_NAME } from "../ownSheet";
import { WorkbookProblem } from "../surveyWorkbook";
import { freeNumber } from "./freeNumber";
import type { PackageEditor } from "./packageEditor";
import { resolvePart, type Relationship } from "./relationships";
import type { WorkbookOutline } from "./workbookOutline";
import {
  spliced,
  withAttribute,
  xmlAttribute,
  xmlSpans,
  type Splice,
  type XmlRoot,
  type XmlSpan,
} from "./xmlSpans";

const CONTENT_TYPES = "[Content_Types].xml";
const PACKAGE_RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const TRANSITIONAL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const STRICT = "http://purl.oclc.org/ooxml/officeDocument/relationships";
const TYPE_BASE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Content types of the parts that we add. */
export const PART_TYPES = {
  worksheet: `${TYPE_BASE}.worksheet+xml`,
  table: `${TYPE_BASE}.table+xml`,
  drawing: "application/vnd.openxmlformats-officedocument.drawing+xml",
  chart: "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
  customXml: "application/xml",
  metadata: `${TYPE_BASE}.sheetMetadata+xml`,
} as const;

/** Where children of the workbook element come after the sheets (ECMA-376 part 1, 18.2.27). */
const BEFORE_NAMES = [
  "fileVersion",
  "fileSharing",
  "workbookPr",
  "AlternateContent",
  "revisionPtr",
  "absPath",
  "workbookProtection",
  "bookViews",
  "sheets",
  "functionGroups",
  "externalReferences",
];

/** Numbers that sheets may have (MS-OI29500 2.1.602, from memory). */
const MOST_SHEET_IDS = 65_534;

/** Namespaces of a workbook, transitional or strict. */
export interface WorkbookNamespaces {
  readonly main: string;
  /** Base of relation types, and namespace of relation ids. */
  readonly relations: string;
}

/** Namespaces of the workbook, and a refusal for workbooks that we must not change. */
export async function mayEdit(editor: PackageEditor, outline: WorkbookOutline): Promise<WorkbookNamespaces> {
  const { file } = editor;
  if ([...editor.source.parts.keys()].some((part) => part.startsWith("_xmlsignatures/")))
    throw new WorkbookProblem("signedFile", { file });
  const { namespace, spans } = xmlSpans(await editor.text(outline.workbookPart), (path) => path.length === 1);
  if (!/spreadsheetml/.test(namespace))
    throw new WorkbookProblem("layoutUnknown", { file, part: outline.workbookPart });
  const protection = spans.find(({ name }) => name === "workbookProtection");
  if (protection && /^(1|true)$/.test(protection.attributes.lockStructure ?? ""))
    throw new WorkbookProblem("protectedWorkbook");
  return { main: namespace, relations: namespace.includes("purl.oclc.org") ? STRICT : TRANSITIONAL };
}

/** Puts a new sheet behind the others and marks it as made by the add-in. The sheet's own part is put in by the caller. */
export async function addOwnSheet(
  editor: PackageEditor,
  outline: WorkbookOutline,
  namespaces: WorkbookNamespaces,
  sheet: { readonly name: string; readonly part: string },
): Promise<void> {
  const relationId = await addRelation(
    editor,
    outline.workbookPart,
    `${namespaces.relations}/worksheet`,
    sheet.part,
  );
  await addContentType(editor, sheet.part, PART_TYPES.worksheet);
  const xml = await editor.text(outline.workbookPart);
  const shape = xmlSpans(xml, (path) => path.length <= 2);
  const p = shape.prefix;
  const sheets = child(shape, "sheets");
  if (!sheets || sheets.selfClosing)
    throw new WorkbookProblem("layoutUnknown", { file: editor.file, part: outline.workbookPart });
  const listed = shape.spans.filter(({ name }) => name === "sheet");
  const ids = listed.map(({ attributes }) => attributes.sheetId);
  const sheetId = freeNumber(ids, MOST_SHEET_IDS);
  const entry = `<${p}sheet xmlns:r="${namespaces.relations}" name="${xmlAttribute(sheet.name)}" sheetId="${sheetId}" r:id="${relationId}"/>`;
  const own = `<${p}definedName name="${OWN_SHEET_NAME}" localSheetId="${listed.length}" hidden="1">TRUE</${p}definedName>`;
  editor.put(
    outline.workbookPart,
    spliced(xml, [
      { start: sheets.closeStart, end: sheets.closeStart, text: entry },
      ...withNames(shape, own),
    ]),
  );
}

/** Takes a sheet of ours out of the workbook with its parts and names; other sheets keep their names' places. */
export async function removeOwnSheet(
  editor: PackageEditor,
  outline: WorkbookOutline,
  name: string,
): Promise<void> {
  const index = outline.sheets.findIndex((sheet) => sheet.name === name);
  const { part } = outline.sheets[index];
  const xml = await editor.text(outline.workbookPart);
  const shape = xmlSpans(xml, (path) => path.length <= 2);
  const entry = shape.spans.filter((span) => span.name === "sheet")[index];
  const splices: Splice[] = [{ start: entry.start, end: entry.end, text: "" }];
  const names = shape.spans.filter((span) => span.name === "definedName");
  const gone = names.filter(({ attributes }) => attributes.localSheetId === String(index));
  const list = child(shape, "definedNames");
  if (list && gone.length === names.length) splices.push({ start: list.start, end: list.end, text: "" });
  else
    for (const span of names) {
      const local = Number(span.attributes.localSheetId ?? -1);
      if (local === index) splices.push({ start: span.start, end: span.end, text: "" });
      else if (local > index) splices.push(withAttribute(xml, span, "localSheetId", String(local - 1)));
    }
  for (const view of shape.spans.filter((span) => span.name === "workbookView"))
    for (const attribute of ["activeTab", "firstSheet"]) {
      const tab = Number(view.attributes[attribute] ?? 0);
      if (tab > 0 && tab >= index) splices.push(withAttribute(xml, view, attribute, String(tab - 1)));
    }
  editor.put(outline.workbookPart, spliced(xml, splices));
  await removeRelationTo(editor, outline.workbookPart, part);
  await removeSheetParts(editor, part);
}

/** Takes the parts of one of our sheets away: the sheet, its relations and its tables; its drawing stays. */
export async function removeSheetParts(editor: PackageEditor, part: string): Promise<void> {
  for (const relation of await relationsOf(editor, part))
    if (relation.kind === "table") await removePart(editor, relation.part);
  removeRelations(editor, part);
  await removePart(editor, part);
}

/** The relations of a part to other parts, as they stand after the changes made so far. */
export async function relationsOf(editor: PackageEditor, part: string): Promise<Relationship[]> {
  const relations = relationsPart(part);
  if (!editor.has(relations)) return [];
  return (await relationShape(editor, relations)).spans
    .filter(({ attributes }) => attributes.TargetMode !== "External")
    .map(({ attributes: { Id = "", Type = "", Target = "" } }) => ({
      id: Id,
      kind: Type.slice(Type.lastIndexOf("/") + 1),
      part: resolved(part, Target),
    }));
}

/** Takes all relations of a part away. */
export function removeRelations(editor: PackageEditor, part: string): void {
  editor.remove(relationsPart(part));
}

/** Takes a part and its content type away. */
export async function removePart(editor: PackageEditor, part: string): Promise<void> {
  editor.remove(part);
  const xml = await editor.text(CONTENT_TYPES);
  const { spans } = xmlSpans(xml, (path) => path.length === 1);
  const override = spans.find(
    ({ name, attributes }) =>
      name === "Override" && attributes.PartName?.toLowerCase() === `/${part}`.toLowerCase(),
  );
  if (override)
    editor.put(CONTENT_TYPES, spliced(xml, [{ start: override.start, end: override.end, text: "" }]));
}

/** Takes away the list of cells to calculate, which a spreadsheet makes anew; a stale one counts as damage. */
export async function dropCalculationChain(editor: PackageEditor, outline: WorkbookOutline): Promise<void> {
  const relations = relationsPart(outline.workbookPart);
  if (!editor.has(relations)) return;
  for (const { attributes } of (await relationShape(editor, relations)).spans)
    if (/\/calcChain$/.test(attributes.Type)) {
      const part = resolved(outline.workbookPart, attributes.Target ?? "");
      await removeRelationTo(editor, outline.workbookPart, part);
      await removePart(editor, part);
    }
}

/** Adds a relation from one part to another and answers its id. */
export async function addRelation(
  editor: PackageEditor,
  from: string,
  type: string,
  to: string,
): Promise<string> {
  const part = relationsPart(from);
  if (!editor.has(part))
    editor.put(
      part,
      `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${PACKAGE_RELATIONS}"></Relationships>`,
    );
  const xml = await editor.text(part);
  const shape = xmlSpans(xml, (path) => path.length === 1);
  const ids = new Set(shape.spans.map(({ attributes }) => attributes.Id));
  let number = 1;
  while (ids.has(`rIdCordonbook${number}`)) number++;
  const id = `rIdCordonbook${number}`;
  const entry = `<${shape.prefix}Relationship Id="${id}" Type="${type}" Target="/${xmlAttribute(to)}"/>`;
  editor.put(part, insertedAtEnd(xml, shape, entry));
  return id;
}

/** Names a part's content type. */
export async function addContentType(editor: PackageEditor, part: string, type: string): Promise<void> {
  const xml = await editor.text(CONTENT_TYPES);
  const shape = xmlSpans(xml, () => false);
  const entry = `<${shape.prefix}Override PartName="/${xmlAttribute(part)}" ContentType="${type}"/>`;
  editor.put(CONTENT_TYPES, insertedAtEnd(xml, shape, entry));
}

/** A part name of this pattern that the package does not have yet: "xl/worksheets/cordonbook{n}.xml". */
export function freePart(editor: PackageEditor, pattern: string): string {
  for (let n = 1; ; n++) {
    const part = pattern.replace("{n}", String(n));
    if (!editor.has(part)) return part;
  }
}

/** Adds a list of the whole workbook's names, or to it. */
function withNames(shape: XmlRoot, entry: string): Splice[] {
  const p = shape.prefix;
  const list = child(shape, "definedNames");
  if (list && !list.selfClosing) return [{ start: list.closeStart, end: list.closeStart, text: entry }];
  const text = `<${p}definedNames>${entry}</${p}definedNames>`;
  if (list) return [{ start: list.start, end: list.end, text }];
  const before = shape.spans.filter((span) => BEFORE_NAMES.includes(span.name) && isChild(shape, span));
  const at = before[before.length - 1].end;
  return [{ start: at, end: at, text }];
}

function child(shape: XmlRoot, name: string): XmlSpan | undefined {
  return shape.spans.find((span) => span.name === name && isChild(shape, span));
}

function isChild(shape: XmlRoot, span: XmlSpan): boolean {
  return !shape.spans.some((other) => other.start < span.start && span.end <= other.closeStart);
}

/** The text of a part with this at the end of its root. */
export function insertedAtEnd(xml: string, shape: XmlRoot, text: string): string {
  const { root } = shape;
  if (!root.selfClosing) return spliced(xml, [{ start: root.closeStart, end: root.closeStart, text }]);
  const name = /^<([^\s/>]+)/.exec(xml.slice(root.start))![1];
  const opened = xml.slice(root.start, root.end).replace(/\/>$/, ">");
  return spliced(xml, [{ start: root.start, end: root.end, text: `${opened}${text}</${name}>` }]);
}

function relationsPart(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

async function relationShape(editor: PackageEditor, part: string): Promise<XmlRoot> {
  return xmlSpans(await editor.text(part), (path) => path.length === 1);
}

/** Takes the relations from one part to another away. */
export async function removeRelationTo(editor: PackageEditor, from: string, to: string): Promise<void> {
  const part = relationsPart(from);
  const xml = await editor.text(part);
  const gone = xmlSpans(xml, (path) => path.length === 1).spans.filter(
    ({ attributes }) =>
      attributes.TargetMode !== "External" && resolved(from, attributes.Target ?? "") === to,
  );
  editor.put(
    part,
    spliced(
      xml,
      gone.map(({ start, end }) => ({ start, end, text: "" })),
    ),
  );
}

function resolved(from: string, target: string): string {
  return resolvePart(from.slice(0, from.lastIndexOf("/") + 1), target);
}
