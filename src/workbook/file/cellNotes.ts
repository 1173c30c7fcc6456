import { cellName, areasOfAddress } from "../address";
import { saidBy } from "../saidBy";
import type { CellPlace } from "../surveyWorkbook";
import {
  addRelation,
  relationsOf,
  removePart,
  removeRelations,
  type WorkbookNamespaces,
} from "./editWorkbook";
import type { PackageEditor } from "./packageEditor";
import type { Relationship } from "./relationships";
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
  editor: PackageEditor,
  workbookPart: string,
  sheetPart: string,
): Promise<ReadonlyMap<string, string>> {
  const relations = await relationsOf(editor, sheetPart);
  const notes = new Map<string, string>();
  for (const { part } of relations.filter(({ kind }) => kind === "comments")) {
    const xml = await editor.text(part);
    const { spans } = xmlSpans(xml, ([first, second]) => first === "authors" || second === "comment");
    const authors = spans.filter(({ name }) => name === "author").map((span) => textOf(xml, span));
    for (const comment of spans.filter(({ name }) => name === "comment"))
      notes.set(
        placeOf(comment),
        saidBy(writerOf(authors[Number(comment.attributes.authorId)]), lettersOf(xml, spans, comment)),
      );
  }
  const threads = new Map<string, string[]>();
  for (const { part } of relations.filter(({ kind }) => kind === "threadedComment")) {
    const people = await namesOfPeople(editor, workbookPart);
    const xml = await editor.text(part);
    const { spans } = xmlSpans(xml, () => true);
    for (const comment of spans.filter(({ name }) => name === "threadedComment")) {
      const text = spans.find(({ name, start, end }) => name === "text" && isWithin(comment, start, end));
      const words = saidBy(people.get(comment.attributes.personId), text ? textOf(xml, text) : "");
      threads.set(placeOf(comment), [...(threads.get(placeOf(comment)) ?? []), words]);
    }
  }
  for (const [place, words] of threads) notes.set(place, words.join(" | "));
  return notes;
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

async function namesOfPeople(
  editor: PackageEditor,
  workbookPart: string,
): Promise<ReadonlyMap<string, string>> {
  const people = new Map<string, string>();
  for (const { kind, part } of await relationsOf(editor, workbookPart)) {
    if (kind !== "person" || !editor.has(part)) continue;
    const { spans } = xmlSpans(await editor.text(part), (path) => path[path.length - 1] === "person");
    for (const { attributes } of spans) people.set(attributes.id, attributes.displayName);
  }
  return people;
}

/** The letters of a note, without those that only say how others are read. */
function lettersOf(xml: string, spans: readonly XmlSpan[], comment: XmlSpan): string {
  const readings = spans.filter(({ name }) => name === "rPh");
  return spans
    .filter(({ name, start, end }) => name === "t" && isWithin(comment, start, end))
    .filter(({ start, end }) => !readings.some((reading) => isWithin(reading, start, end)))
    .map((span) => textOf(xml, span))
    .join("");
}

/** The writer of a note; none for one that stands in the place of a comment, in programs that know none. */
function writerOf(author: string | undefined): string | undefined {
  return author?.startsWith("tc={") ? undefined : author;
}

function placeOf({ attributes }: XmlSpan): string {
  return (attributes.ref ?? "").replace(/\$/g, "");
}

function textOf(xml: string, { openEnd, closeStart }: XmlSpan): string {
  return plainText(xml.slice(openEnd, closeStart));
}

function isWithin(outer: XmlSpan, start: number, end: number): boolean {
  return start >= outer.openEnd && end <= outer.closeStart;
}
