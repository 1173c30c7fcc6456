import { isBlank } from "../../sheets/cell";
import { headWords, type HeadWords } from "../headWords";
import type { OpenAccount } from "../readingAccount";
import type { LaidTable } from "../rowsByWinter";
import type { SheetArea } from "../sheetArea";
import { everyRow, type AddedColumn } from "./addedColumn";
import type { Segment } from "./bestShape";
import { captionsOf, dataLines } from "./captions";
import { filledDown } from "./filledDown";
import { askLikelyHeads, askUnknownWords, withoutUnknown } from "./headQuestions";
import type { Section } from "./heads";
import { inTwoParts } from "./inTwoParts";
import { keyColumns } from "./keyColumns";
import type { LayoutOptions } from "./layoutOptions";
import { leftColumns } from "./leftColumns";
import { liveOfDead, yearsAndDead } from "./liveAndYears";
import type { FoundKeys } from "./sheetKeys";
import { sideColumn } from "./sideColumn";
import { unitsOf } from "./unitsOf";
import { plainPlace, virtualTable } from "./virtualTable";

/** The tables of one stretch of columns: one, or one for each candidate where they stand side by side in a line. */
export function laidTables(
  area: SheetArea,
  section: Section,
  found: Segment,
  options: LayoutOptions,
  account: OpenAccount,
): LaidTable[] {
  const segment = withoutUnknown(area, section, found, options, account);
  const { shape } = segment;
  const { sheet } = area;
  const columns = new Map(segment.columns);
  const byId = (id: string) => shape.columns.find((column) => column.id === id)!;
  const extras: AddedColumn[] = [];
  const heads = new Map<number, HeadWords>();
  for (let at = segment.from; at < segment.to; at++) {
    const text = section.texts[at];
    if (text !== undefined) heads.set(at, headWords(text));
  }
  yearsAndDead(area, section, segment, columns, heads, extras, options, account);
  askUnknownWords(segment, columns, heads, sheet, options, account);
  const units = unitsOf(columns, heads, sheet, options, account);
  inTwoParts(area, section, segment, columns, units, extras, account);
  const isKeyless = shape.id === "cordons" || shape.id === "vines";
  const captions = isKeyless
    ? captionsOf(area, section, segment, columns.get(byId("vine")), options)
    : new Map<number, FoundKeys>();
  if (isKeyless) extras.push(...keyColumns(area, section, segment, columns, captions, options, account));
  if (shape.id === "cordons") extras.push(...sideColumn(area, section, segment, columns, account));
  if (captions.size > 0) account.notes.push({ code: "captions", sheet, facts: { lines: captions.size } });
  const lines = dataLines(section, captions);
  const filled = isKeyless ? filledDown(area, lines, columns, segment.groups, account) : undefined;
  if (segment.groups.length === 0) askLikelyHeads(area, section, segment, columns, extras, heads, account);
  leftColumns(area, section, segment, columns, extras, account);
  const base = { area, section, segment, lines, filled, units };
  if (segment.groups.length === 0) {
    const isPlain =
      section.lines === 1 &&
      extras.length === 0 &&
      captions.size === 0 &&
      !filled &&
      section.end === area.values.length &&
      segment.from === 0 &&
      segment.to >= section.texts.length;
    return isPlain
      ? [{ area, place: plainPlace(section, segment, columns, units) }]
      : [virtualTable(base, columns, extras)];
  }
  account.notes.push({
    code: "turned",
    sheet,
    facts: { candidates: segment.groups.length, names: segment.groups.map(({ name }) => name) },
  });
  return segment.groups.map((group) => {
    const own = new Map(
      [...columns].filter(([, at]) => !segment.groups.some((any) => any.positions.has(at))),
    );
    const words = new Map(heads);
    for (const [at, column] of group.positions) {
      own.set(column, at);
      const rest = headWords(group.rest.get(at) ?? "");
      words.set(at, { ...rest, text: section.texts[at]!, unit: heads.get(at)?.unit ?? rest.unit });
    }
    const ownUnits = unitsOf(own, words, sheet, options, account);
    const more: AddedColumn[] = [...extras, ...liveOfDead(area, section, shape, own, group.dead, account)];
    if (group.side && !own.has(byId("side"))) more.push(everyRow(byId("side"), group.side, group.name));
    if (!own.has(byId("cordon"))) more.push(everyRow(byId("cordon"), group.name, group.name));
    const there = lines.filter((index) =>
      [...group.positions.keys()].some((at) => !isBlank(area.values[index][at])),
    );
    return virtualTable({ ...base, lines: there, units: ownUnits }, own, more);
  });
}
