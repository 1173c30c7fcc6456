import type { XmlParser } from "./xmlParser";

/** What takes the rows of a sheet, its cells by what their attributes and element tell. */
export interface RowListener {
  /** Whether the last that was told through XML is the end of a row. */
  readonly isBehindRow: boolean;
  startRow(r: string, isHidden: boolean): void;
  cell(r: string, style: string | undefined, type: string | undefined, value: string | undefined): void;
  endRow(): void;
}

const ROW_END = "</row>";
/** Longer rows go to the XML parser, which knows the limits of what it holds. */
const MOST_HELD = 2 ** 17;

const ROW = /[ \t\n]*<row r="(\d{1,7})"((?: [A-Za-z]\w*(?::[A-Za-z]\w*)?="[\w.:-]*")*)(\/?)>/y;
/** Values are printable ASCII without the signs that mean something in XML. */
const CELL =
  /<c r="([A-Z]{1,3}\d{1,7})"(?: s="(\d{1,5})")?(?: t="([a-z]{1,3})")?(?:\/>|>(?:<v>([ -%'-;=?-~]*)<\/v>)?<\/c>)/y;

/**
 * Gives a sheet's text to an XML parser, except for rows in the one spelling in which spreadsheets write plain values:
 * those are taken as they are, in less than half the time. Only what stands directly behind a row that the XML parser has
 * closed, or behind another such row, is looked at this way, and any other spelling, formulas and inline texts among
 * them, goes back to the parser, whose word on what is well formed is the last.
 */
export class PlainRows {
  private isBehindRow = false;
  /** The beginning of a row. */
  private held = "";
  /** Attributes of the last plain row; the next has mostly the same. */
  private attributes = "";
  private isHidden = false;

  constructor(
    private readonly parser: XmlParser,
    private readonly listener: RowListener,
  ) {}

  push(text: string): void {
    const behind = this.isBehindRow ? this.held + text : this.throughRowEnd(text);
    this.held = "";
    if (behind === undefined) return;
    let at = 0;
    for (let next = this.plainRow(behind, 0); next !== undefined; next = this.plainRow(behind, at)) at = next;
    const rest = behind.slice(at);
    if (rest.length > MOST_HELD || rest.includes(ROW_END)) this.leave(rest);
    else this.held = rest;
  }

  end(): void {
    this.leave(this.held);
    this.parser.end();
  }

  private leave(text: string): void {
    this.isBehindRow = false;
    this.parser.write(text);
  }

  /** Parses up to the end of a row and returns what stands behind it; without such an end, parses everything. */
  private throughRowEnd(text: string): string | undefined {
    const end = text.indexOf(ROW_END) + ROW_END.length;
    if (end < ROW_END.length) {
      this.parser.write(text);
      return undefined;
    }
    // In a comment or the like these letters end no row: only the parser can tell, when it meets the last of them.
    this.parser.write(text.slice(0, end - 1));
    const before = this.listener.isBehindRow;
    this.parser.write(text.slice(end - 1, end));
    this.isBehindRow = !before && this.listener.isBehindRow;
    if (this.isBehindRow) return text.slice(end);
    this.parser.write(text.slice(end));
    return undefined;
  }

  /** Tells of a row, if it is a plain one, and returns where it ends. */
  private plainRow(text: string, from: number): number | undefined {
    ROW.lastIndex = from;
    const row = ROW.exec(text);
    if (!row || !this.areDifferent(row[2])) return undefined;
    const cells: RegExpExecArray[] = [];
    let at = ROW.lastIndex;
    if (row[3] === "") {
      CELL.lastIndex = at;
      for (let cell = CELL.exec(text); cell; cell = CELL.exec(text)) {
        cells.push(cell);
        at = CELL.lastIndex;
      }
      if (!text.startsWith(ROW_END, at)) return undefined;
      at += ROW_END.length;
    }
    this.listener.startRow(row[1], this.isHidden);
    for (const [, r, style, type, value] of cells) this.listener.cell(r, style, type, value);
    this.listener.endRow();
    this.parser.passOver();
    return at;
  }

  private areDifferent(attributes: string): boolean {
    if (attributes === this.attributes) return true;
    const names = Array.from(attributes.matchAll(/ ([^=]+)=/g), ([, name]) => name);
    if (names.includes("r") || new Set(names).size < names.length) return false;
    this.attributes = attributes;
    this.isHidden = / hidden="(?:1|true|on)"/.test(attributes);
    return true;
  }
}
