import { cellName } from "../address";
import { saidBy } from "../saidBy";
import type { CarriedCell, CellPlace } from "../surveyWorkbook";

interface Said {
  readonly author: string;
  readonly content: string;
}

/** A note, or a comment with its answers, as it stands on a sheet. */
export interface Remark extends CellPlace {
  readonly kind: "comment" | "note";
  /** What was said, the comment first. */
  readonly said: readonly Said[];
  readonly resolved: boolean;
  readonly item: Excel.Comment | Excel.Note;
}

/** A remark in one line: "Ana Ruiz: replant? | Ben Hale: yes". */
export function wordsOf({ said }: Remark): string {
  return said.map(({ author, content }) => saidBy(author, content)).join(" | ");
}

/**
 * The notes and comments of a sheet. Of notes only what every Excel knows is asked for: their size is not known on the
 * web (https://learn.microsoft.com/javascript/api/excel/excel.note).
 *
 * @param seesNotes whether this Excel shows notes to add-ins
 */
export async function remarksOf(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  seesNotes: boolean,
): Promise<Remark[]> {
  const { comments } = worksheet;
  comments.load("items/id,items/content,items/authorName,items/resolved");
  const notes = seesNotes ? worksheet.notes : undefined;
  notes?.load("items/content,items/authorName");
  await context.sync();
  if (comments.isNullObject) return [];
  const placed = [...comments.items, ...(notes?.items ?? [])].map((item) => {
    const cell = item.getLocation();
    cell.load("rowIndex,columnIndex");
    return { item, cell };
  });
  if (placed.length === 0) return [];
  for (const comment of comments.items) comment.replies.load("items/content,items/authorName");
  await context.sync();
  return placed.map(({ item, cell }, at) => {
    const comment = comments.items[at];
    const said = [item, ...(comment?.replies.items ?? [])];
    return {
      kind: comment ? "comment" : "note",
      row: cell.rowIndex + 1,
      column: cell.columnIndex + 1,
      said: said.map(({ authorName, content }) => ({ author: authorName, content })),
      resolved: comment?.resolved ?? false,
      item,
    };
  });
}

/**
 * Puts the notes and comments that stood on a sheet before it was written again where their cells stand now; those
 * without a place go. It looks at what stands there first, since clearing and copying cells may have taken some along.
 * Nothing moves a comment: what was said is said again, and stands under the name of whoever writes the sheet
 * (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-comments), so another's name is put before it.
 *
 * @returns what stands nowhere any more: without a place, or refused by Excel
 */
export async function putRemarks(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  before: readonly Remark[],
  carried: readonly CarriedCell[],
  seesNotes: boolean,
): Promise<readonly Remark[]> {
  if (before.length === 0) return [];
  const places = new Map(
    carried.filter(({ note }) => note).map(({ from, to }) => [cellName(from.row, from.column), to]),
  );
  const wanted = new Map<string, Placed>();
  const lost: Remark[] = [];
  for (const remark of before) {
    const to = places.get(cellName(remark.row, remark.column));
    if (to) wanted.set(cellName(to.row, to.column), { remark, to });
    else lost.push(remark);
  }
  const former = new Set(before.map(textOf));
  const missing = async (): Promise<Placed[]> => {
    const standing = new Set<Placed>();
    const spare: Remark[] = [];
    for (const now of await remarksOf(context, worksheet, seesNotes)) {
      const here = wanted.get(cellName(now.row, now.column));
      if (here && isSaid(here.remark, now)) standing.add(here);
      else if (former.has(textOf(now)) || here?.remark.said[0].content === now.said[0].content)
        spare.push(now);
    }
    for (const { item } of spare) item.delete();
    if (spare.length > 0) await context.sync();
    return [...wanted.values()].filter((one) => !standing.has(one));
  };
  const attempt = async () => sayAgain(context, worksheet, await missing());
  await attempt()
    .catch(attempt)
    .catch(async () => {
      for (const one of await missing().catch(() => wanted.values()))
        await sayAgain(context, worksheet, [one]).catch(() => lost.push(one.remark));
    });
  return lost;
}

interface Placed {
  readonly remark: Remark;
  readonly to: CellPlace;
}

async function sayAgain(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  remarks: readonly Placed[],
): Promise<void> {
  const again = remarks.map(({ remark, to }) => {
    const cell = worksheet.getRangeByIndexes(to.row - 1, to.column - 1, 1, 1);
    const [first, ...answers] = remark.said;
    if (remark.kind === "note") return { remark, items: [worksheet.notes.add(cell, first.content)] };
    const comment = worksheet.comments.add(cell, first.content);
    return {
      remark,
      items: [comment, ...answers.map(({ content }) => comment.replies.add(content))],
      comment,
    };
  });
  if (again.length === 0) return;
  for (const { items } of again) for (const item of items) item.load("authorName");
  await context.sync();
  let renamed = false;
  for (const { remark, items, comment } of again) {
    items.forEach((item, at) => {
      const { author, content } = remark.said[at];
      if (author === item.authorName || isNamed(author, content)) return;
      item.content = `[${author}] ${content}`;
      renamed = true;
    });
    if (comment && remark.resolved) comment.resolved = renamed = true;
  }
  if (renamed) await context.sync();
}

/** Whether what was said names its writer, as Excel begins notes with a line for the name, or was said again before. */
function isNamed(author: string, content: string): boolean {
  return /^(\[|[^\n:]+:\n)/.test(content) || saidBy(author, content) === saidBy("", content);
}

/** Whether a remark stands there whole, also under another's name with the writer's before it. */
function isSaid({ said, resolved }: Remark, now: Remark): boolean {
  return (
    said.length === now.said.length &&
    resolved === now.resolved &&
    said.every(({ author, content }, at) => {
      const { author: by, content: words } = now.said[at];
      return (
        words === `[${author}] ${content}` ||
        (words === content && (by === author || isNamed(author, content)))
      );
    })
  );
}

function textOf({ kind, said }: Remark): string {
  return JSON.stringify([kind, said.map(({ content }) => content)]);
}
