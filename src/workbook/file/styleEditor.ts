import { WorkbookProblem } from "../surveyWorkbook";
import { freeNumber } from "./freeNumber";
import { spliced, xmlAttribute, xmlSpans, type Splice, type XmlRoot, type XmlSpan } from "./xmlSpans";

/** How a cell of a sheet of ours looks. */
export interface CellLook {
  readonly format?: string;
  readonly wrap?: boolean;
  readonly bold?: boolean;
  /** Text stands at the top of its cell; text that wraps always does. */
  readonly top?: boolean;
}

/** Formats, fonts and the like that a style sheet may list; a spreadsheet itself takes 65,490 formats of cells. */
const MOST_STYLES = 200_000;

/** Number formats that no style sheet lists (ECMA-376 part 1, 18.8.30). */
const BUILT_IN_FORMATS = Array.from({ length: 164 }, (_, id) => id);
const MOST_FORMAT_IDS = 2 ** 32 - 1;
/** Order of a style sheet's children (ECMA-376 part 1, 18.8.39). */
const ORDER = [
  "numFmts",
  "fonts",
  "fills",
  "borders",
  "cellStyleXfs",
  "cellXfs",
  "cellStyles",
  "dxfs",
  "tableStyles",
  "colors",
  "extLst",
];

/** Order of a font's properties, as it is checked by those who read the standard strictly (ECMA-376 part 1, 18.8.22). */
const FONT_ORDER = [
  "b",
  "i",
  "strike",
  "condense",
  "extend",
  "outline",
  "shadow",
  "u",
  "vertAlign",
  "sz",
  "color",
  "name",
  "family",
  "charset",
  "scheme",
];

/** Adds formats, cell styles and conditional styles at the end of a style sheet's lists; nothing there is changed. */
export class StyleEditor {
  private readonly shape: XmlRoot;
  private readonly added = new Map<string, string[]>();
  private readonly looks = new Map<string, number>();
  /** Formats that were added, by their code. */
  private readonly formats = new Map<string, number>();

  constructor(
    file: string,
    part: string,
    private readonly xml: string,
  ) {
    this.shape = xmlSpans(xml, (path) => path.length <= 2, MOST_STYLES);
    for (const list of ["fonts", "cellXfs"])
      if (!this.list(list)) throw new WorkbookProblem("layoutUnknown", { file, part });
  }

  /** Number of the cell style with this look; 0 for the workbook's own plain cells. */
  look({ format, wrap, bold, top = wrap }: CellLook): number {
    if (format === undefined && !wrap && !bold && !top) return 0;
    const key = JSON.stringify([format ?? "", wrap ?? false, bold ?? false, top ?? false]);
    let index = this.looks.get(key);
    if (index === undefined) {
      const { prefix: p } = this.shape;
      const alignment = top ? `<${p}alignment vertical="top"${wrap ? ' wrapText="1"' : ""}/>` : "";
      const attributes =
        `numFmtId="${format === undefined ? 0 : this.format(format)}" fontId="${bold ? this.boldFont() : 0}"` +
        this.firstOf("fillId", "fills") +
        this.firstOf("borderId", "borders") +
        this.firstOf("xfId", "cellStyleXfs") +
        (format === undefined ? "" : ' applyNumberFormat="1"') +
        (bold ? ' applyFont="1"' : "") +
        (top ? ' applyAlignment="1"' : "");
      index = this.add("cellXfs", `<${p}xf ${attributes}${top ? `>${alignment}</${p}xf>` : "/>"}`);
      this.looks.set(key, index);
    }
    return index;
  }

  /** Names the first of a list, where it has one. */
  private firstOf(attribute: string, list: string): string {
    return this.children(list).length > 0 ? ` ${attribute}="0"` : "";
  }

  /** Number of the cell style that is like another, with a number format. */
  formatted(like: number, format: string): number {
    const { start, openEnd, end } = this.children("cellXfs")[like];
    const tag = this.xml
      .slice(start, openEnd)
      .replace(/\s+(?:numFmtId|applyNumberFormat)\s*=\s*(?:"[^"]*"|'[^']*')/g, "")
      .replace(/^<[^\s/>]+/, `$& numFmtId="${this.format(format)}" applyNumberFormat="1"`);
    return this.add("cellXfs", tag + this.xml.slice(openEnd, end));
  }

  /** Number of a conditional style; one that stands there already is used again. */
  conditional(inner: string): number {
    const { prefix: p } = this.shape;
    const xml = `<${p}dxf>${inner.replace(/<(\/?)/g, `<$1${p}`)}</${p}dxf>`;
    return this.add("dxfs", xml);
  }

  /** The style sheet with what was added. */
  text(): string {
    const splices: Splice[] = [];
    for (const [name, items] of this.added) {
      const list = this.list(name);
      if (list) splices.push(...this.appended(list, items));
      else {
        const { prefix: p } = this.shape;
        const at = this.placeFor(name);
        splices.push({
          start: at,
          end: at,
          text: `<${p}${name} count="${items.length}">${items.join("")}</${p}${name}>`,
        });
      }
    }
    return spliced(this.xml, splices);
  }

  private format(code: string): number {
    const there = this.children("numFmts").map(({ attributes }) => attributes);
    const known = there.find(({ numFmtId, formatCode }) => formatCode === code && /^\d+$/.test(numFmtId));
    const own = known ? Number(known.numFmtId) : this.formats.get(code);
    if (own !== undefined) return own;
    const taken = [...BUILT_IN_FORMATS, ...there.map(({ numFmtId }) => numFmtId), ...this.formats.values()];
    const id = freeNumber(taken, MOST_FORMAT_IDS);
    this.formats.set(code, id);
    this.add("numFmts", `<${this.shape.prefix}numFmt numFmtId="${id}" formatCode="${xmlAttribute(code)}"/>`);
    return id;
  }

  /** The workbook's own font in bold, its properties in the order that the schema asks for. */
  private boldFont(): number {
    const { prefix: p } = this.shape;
    const [font] = this.children("fonts");
    const xml = font ? this.xml.slice(font.start, font.end) : `<${p}font/>`;
    const own = xmlSpans(xml, (path) => path.length === 1 && path[0] !== "b").spans;
    const properties = own
      .map(({ name, start, end }) => ({ order: FONT_ORDER.indexOf(name), text: xml.slice(start, end) }))
      .sort((one, other) => one.order - other.order);
    return this.add("fonts", `<${p}font><${p}b/>${properties.map(({ text }) => text).join("")}</${p}font>`);
  }

  /** Number of an item of a list; one that stands there already is used again. */
  private add(list: string, item: string): number {
    const there = this.children(list);
    const same = there.findIndex(({ start, end }) => this.xml.slice(start, end) === item);
    if (same >= 0) return same;
    const items = this.added.get(list) ?? [];
    this.added.set(list, items);
    const waiting = items.indexOf(item);
    if (waiting >= 0) return there.length + waiting;
    items.push(item);
    return there.length + items.length - 1;
  }

  private list(name: string): XmlSpan | undefined {
    return this.shape.spans.find(
      (span) =>
        span.name === name && !this.shape.spans.some((other) => other !== span && contains(other, span)),
    );
  }

  private children(name: string): XmlSpan[] {
    const list = this.list(name);
    return list ? this.shape.spans.filter((span) => span !== list && contains(list, span)) : [];
  }

  private appended(list: XmlSpan, items: readonly string[]): Splice[] {
    const count = this.children(list.name).length + items.length;
    const tag = this.xml.slice(list.start, list.openEnd).replace(/\s+count="[^"]*"/, "");
    const name = /^<([^\s/>]+)/.exec(tag)![1];
    const opened = tag.replace(/\s*\/?>$/, "").replace(`<${name}`, `<${name} count="${count}"`) + ">";
    if (list.selfClosing)
      return [{ start: list.start, end: list.end, text: `${opened}${items.join("")}</${name}>` }];
    return [
      { start: list.start, end: list.openEnd, text: opened },
      { start: list.closeStart, end: list.closeStart, text: items.join("") },
    ];
  }

  /** Where a list that is missing belongs. */
  private placeFor(name: string): number {
    const later = ORDER.slice(ORDER.indexOf(name) + 1);
    const next = this.shape.spans.find((span) => later.includes(span.name) && this.list(span.name) === span);
    return next?.start ?? this.shape.root.closeStart;
  }
}

function contains(outer: XmlSpan, inner: XmlSpan): boolean {
  return outer.start < inner.start && inner.end < outer.end + 1 && inner.end <= outer.end;
}
