import { cellName, areasOfAddress } from "../address";
import { saidBy } from "../saidBy";
import type { CellPlace } from "../surveyWorkbook";
import { addRelation, removePart, removeRelations, type WorkbookNamespaces } from "./editWorkbook";
import type { PackageEditor } from "./packageEditor";
import type { ReadLimits } from "./readLimits";
import { relationships, type Relationship } from "./relationships";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";
import { plainText, spliced, withAttributes, xmlSpans, type Splice, type XmlSpan } from "./xmlSpans";

/** Relation from a sheet to its threaded comments, which the standard does not know. */
const THREADS = "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment";

/** Where a cell with a note stands afterwards; undefined for one that has no place any more. */
export type PlaceOf = (row: number, column: number) => CellPlace | undefined;

/**
 * The notes and comments of a sheet as a person reads them, by the name of their cell: "Ana: count again | Ben: done".
 * Where a comment has answers, the note that older programs show in its place is left out.
 */
export async function notesOf(
  source: WorkbookPackage,
  workbookPart: string,
  sheetPart: string,
  limits: ReadLimits,
): Promise<ReadonlyMap<string, string>> {
  const parts = async (of: string, wanted: string) =>
    [...(await relationships(source, of, limits)).values()].flatMap(({ kind, part }) =>
      kind === wanted && source.parts.has(part) ? [part] : [],
    );
  const notes = new Map<string, string>();
  for (const part of await parts(sheetPart, "comments")) {
    const authors: string[] = [];
    await eachElement(source, part, limits, ({ name, attributes, text }) => {
      if (name === "author") authors.push(text);
      else if (name === "comment")
        notes.set(placeOf(attributes), saidBy(writerOf(authors[Number(attributes.authorId)]), text));
    });
  }
  const people = new Map<string, string>();
  const threads = new Map<string, string[]>();
  for (const part of await parts(sheetPart, "threadedComment")) {
    for (const list of people.size === 0 ? await parts(workbookPart, "person") : [])
      await eachElement(source, list, limits, ({ name, attributes }) => {
        if (name === "person") people.set(attributes.id, attributes.displayName);
      });
    await eachElement(source, part, limits, ({ name, attributes, text }) => {
      if (name !== "threadedComment") return;
      const place = placeOf(attributes);
      threads.set(place, [...(threads.get(place) ?? []), saidBy(people.get(attributes.personId), text)]);
    });
  }
  for (const [place, words] of threads) notes.set(place, words.join(" | "));
  return notes;
}

interface ReadElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Elements whose text is said by the element around them, and those whose text nobody reads. */
const LETTERS = new Set(["text", "t", "r"]);
const GUIDES = new Set(["rPh", "rPr"]);

/** Tells of every author, comment and person of a part with its letters, in the order in which they end. */
async function eachElement(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
  onElement: (element: ReadElement) => void,
): Promise<void> {
  const open: ReadElement[] = [];
  let guides = 0;
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name, attributes) => {
        if (GUIDES.has(name)) guides++;
        else if (!LETTERS.has(name)) open.push({ name, attributes, text: "" });
      },
      text: (text) => {
        const inner = open[open.length - 1] as ReadElement | undefined;
        if (inner && guides === 0 && inner.text.length < limits.cellCharacters) inner.text += text;
      },
      close: (name) => {
        if (GUIDES.has(name)) guides--;
        else if (!LETTERS.has(name)) onElement(open.pop()!);
      },
    },
    limits,
  );
}

/**
 * Puts the notes and comments of a sheet that is written anew where their cells stand now; those without a place go.
 *
 * @param former the relations that the sheet had
 * @returns the relation to the frames of the notes, where any are left
 */
export async function putNotes(
  editor: PackageEditor,
  namespaces: WorkbookNamespaces,
  sheetPart: string,
  former: readonly Relationship[],
  to: PlaceOf,
): Promise<string | undefined> {
  let frames: string | undefined;
  for (const { kind, part } of former) {
    const placed = PLACED_PARTS[kind];
    if (placed === undefined || !editor.has(part)) continue;
    const before = await editor.text(part);
    const { xml, left } = placed(before, to);
    if (left === 0) {
      removeRelations(editor, part);
      await removePart(editor, part);
      continue;
    }
    if (xml !== before) editor.put(part, xml);
    const type = kind === "threadedComment" ? THREADS : `${namespaces.relations}/${kind}`;
    const relation = await addRelation(editor, sheetPart, type, part);
    if (kind === "vmlDrawing") frames = relation;
  }
  return frames;
}

interface Placed {
  readonly xml: string;
  /** How many notes are left in the part. */
  readonly left: number;
}

const PLACED_PARTS: Readonly<Record<string, (xml: string, to: PlaceOf) => Placed>> = {
  comments: placedComments,
  threadedComment: placedComments,
  vmlDrawing: placedFrames,
};

function placedComments(xml: string, to: PlaceOf): Placed {
  const { spans } = xmlSpans(xml, (path) => /^(?:comment|threadedComment)$/.test(path[path.length - 1]));
  const splices = spans.map((span): Splice => {
    const [area] = areasOfAddress(span.attributes.ref ?? "");
    const place = area && to(area.firstRow, area.firstColumn);
    return place
      ? withAttributes(xml, span, { ref: cellName(place.row, place.column) })
      : { start: span.start, end: span.end, text: "" };
  });
  return { xml: spliced(xml, splices), left: splices.filter(({ text }) => text !== "").length };
}

/** The frames in which notes are shown: they name their cell, and stand beside it. */
function placedFrames(xml: string, to: PlaceOf): Placed {
  const { spans } = xmlSpans(xml, ([first]) => first === "shape");
  const splices: Splice[] = [];
  let left = 0;
  for (const shape of spans.filter(({ name }) => name === "shape")) {
    const within = spans.filter(({ start, end }) => isWithin(shape, start, end));
    const find = (wanted: string) => within.find(({ name }) => name === wanted);
    const [row, column, anchor] = ["Row", "Column", "Anchor"].map(find);
    if (find("ClientData")?.attributes.ObjectType !== "Note" || !row || !column) continue;
    const [wasRow, wasColumn] = [row, column].map((span) => Number(textOf(xml, span)));
    const place = to(wasRow + 1, wasColumn + 1);
    if (!place) {
      splices.push({ start: shape.start, end: shape.end, text: "" });
      continue;
    }
    left++;
    const inner = ({ openEnd, closeStart }: XmlSpan, text: string) =>
      splices.push({ start: openEnd, end: closeStart, text });
    inner(row, String(place.row - 1));
    inner(column, String(place.column - 1));
    if (!anchor) continue;
    const shifts = [place.column - 1 - wasColumn, 0, place.row - 1 - wasRow, 0];
    const corners = textOf(xml, anchor)
      .split(",")
      .map((number, at) => Math.max(0, Number(number) + shifts[at % 4]));
    inner(anchor, corners.join(", "));
  }
  return { xml: spliced(xml, splices), left };
}

/** The writer of a note; none for one that stands in the place of a comment, in programs that know none. */
function writerOf(author: string | undefined): string | undefined {
  return author?.startsWith("tc={") ? undefined : author;
}

function placeOf({ ref = "" }: Readonly<Record<string, string>>): string {
  return ref.replace(/\$/g, "");
}

function textOf(xml: string, { openEnd, closeStart }: XmlSpan): string {
  return plainText(xml.slice(openEnd, closeStart));
}

function isWithin(outer: XmlSpan, start: number, end: number): boolean {
  return start >= outer.openEnd && end <= outer.closeStart;
}
