import {
  areaWithout,
  HostFault,
  sharedArea,
  type HostArea,
  type HostBook,
  type HostCell,
  type HostChart,
  type HostConditionalFormat,
  type HostFormat,
  type HostHierarchy,
  type HostName,
  type HostPivot,
  type HostRemark,
  type HostReply,
  type HostSeries,
  type HostSheet,
  type HostTable,
  type HostValue,
} from "./hostBook";

/**
 * The objects of Excel as the host sees them, with the names that travel over the wire: a property is read or set,
 * a method called, by its wire name. Only what the product uses is here; anything else fails a test loudly.
 */

/** What acts for one person: where they are, and how everybody hears of a change. */
export interface Person {
  readonly knowsNotes: boolean;
  /** Whether copied cells come without their notes and comments: no page says which. */
  readonly leavesRemarks?: boolean;
  readonly name: string;
  readonly book: HostBook;
  selection: HostArea | undefined;
  activeSheet: HostSheet | undefined;
  /** How often Excel was asked to tell of changes, and not told again to stop. */
  registrations: number;
  /** A registration that is taken back ends all others, as people report. */
  endsWatchesTogether?: boolean;
  tellChange(area: HostArea, changeType?: string): void;
  /** Asked to tell of selected cells. */
  followsSelection?: boolean;
  tellSelection(area: HostArea): void;
}

/** Answered for every ...OrNullObject that finds nothing. */
export class NullObject {}
const NULL = new NullObject();

export abstract class Collection<T> {
  abstract items(): T[];
  abstract Indexer(key: string): T;
  GetCount(): number {
    return this.items().length;
  }
  GetItemAt(index: number): T {
    return this.items()[index] ?? notFound();
  }
}

function notFound(): never {
  throw new HostFault("ItemNotFound", "The requested resource doesn't exist.");
}

function denied(): never {
  throw new HostFault("AccessDenied", "You cannot perform the requested operation.");
}

function invalid(message = "The argument is invalid or missing or has an incorrect format."): never {
  throw new HostFault("InvalidArgument", message);
}

export class WorkbookObject {
  constructor(private readonly person: Person) {}
  get Name() {
    return "Book.xlsx";
  }
  get Worksheets() {
    return new WorksheetCollectionObject(this.person);
  }
  get Settings() {
    return new SettingCollectionObject(this.person.book);
  }
  get Protection() {
    return { Protected: this.person.book.structureLocked };
  }
  get Tables() {
    return new TableCollectionObject(this.person, this.person.book);
  }
  get PivotTables() {
    return new PivotCollectionObject(this.person, undefined);
  }
  get Names() {
    return new WorkbookNames(this.person);
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.stylecollection */
  get Styles() {
    const normal = { Name: "Normal", Font: { Name: "Aptos Narrow", Size: 11, Color: "#000000" } };
    return { GetItemOrNullObject: (name: string) => (name === normal.Name ? normal : NULL) };
  }
  _RemoveReference() {}
  GetActiveCell() {
    const at = this.person.selection ?? { sheet: this.person.book.sheets[0], row: 0, column: 0 };
    return new RangeObject(this.person, { ...at, rows: 1, columns: 1 });
  }
}

class WorksheetCollectionObject extends Collection<WorksheetObject> {
  constructor(private readonly person: Person) {
    super();
  }
  items() {
    return this.person.book.sheets.map((sheet) => new WorksheetObject(this.person, sheet));
  }
  Indexer(key: string) {
    return new WorksheetObject(this.person, this.person.book.sheet(key));
  }
  GetItem(key: string) {
    return this.Indexer(key);
  }
  GetItemOrNullObject(key: string) {
    const sheet = this.person.book.findSheet(key);
    return sheet ? new WorksheetObject(this.person, sheet) : NULL;
  }
  GetActiveWorksheet() {
    return new WorksheetObject(this.person, this.person.activeSheet ?? this.person.book.sheets[0]);
  }
  Add(name: string) {
    if (this.person.book.structureLocked) denied();
    if (name.length > 31 || /[:\\/?*[\]]/.test(name)) invalid();
    return new WorksheetObject(this.person, this.person.book.addSheet(name));
  }
  _RegisterDataChangedEvent() {
    this.person.registrations += 1;
  }
  _UnregisterDataChangedEvent() {
    this.person.registrations -= this.person.endsWatchesTogether ? this.person.registrations : 1;
  }
  _RegisterSelectionChangedEvent() {
    this.person.followsSelection = true;
  }
}

/** Names of the whole workbook. */
class WorkbookNames {
  constructor(private readonly person: Person) {}
  GetItemOrNullObject(name: string) {
    const area = this.person.book.names.get(name);
    return area ? { GetRangeOrNullObject: () => new RangeObject(this.person, area) } : NULL;
  }
}

class WorksheetObject {
  constructor(
    private readonly person: Person,
    readonly sheet: HostSheet,
  ) {}
  /** A sheet that was deleted since the path was made answers as Excel does. */
  private get there(): HostSheet {
    if (this.sheet.gone) notFound();
    return this.sheet;
  }
  get Id() {
    return this.there.id;
  }
  get Name() {
    return this.there.name;
  }
  set Name(name: string) {
    if (this.person.book.structureLocked) denied();
    const other = this.person.book.findSheet(name);
    if (other && other !== this.sheet) throw new HostFault("ItemAlreadyExists", "The name is taken.");
    this.there.name = name;
  }
  get Visibility() {
    return this.there.visibility;
  }
  set Visibility(visibility: HostSheet["visibility"]) {
    if (this.person.book.structureLocked) denied();
    this.there.visibility = visibility;
  }
  get Position() {
    return this.person.book.sheets.indexOf(this.there);
  }
  get Protection() {
    return { Protected: this.there.locked };
  }
  get Names() {
    return new NameCollectionObject(this.there);
  }
  get Tables() {
    return new TableCollectionObject(this.person, this.person.book, this.there);
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.autofilter */
  get AutoFilter() {
    const { filter } = this.there;
    return {
      IsDataFiltered: (filter?.hiddenRows.size ?? 0) > 0,
      GetRange: () => (filter ? new RangeObject(this.person, filter.area) : notFound()),
    };
  }
  get PivotTables() {
    return new PivotCollectionObject(this.person, this.there);
  }
  get Charts() {
    return new ChartCollectionObject(this.person, this.there);
  }
  get Comments() {
    return new RemarkCollectionObject(this.person, this.there, "comment");
  }
  get Notes() {
    if (!this.person.knowsNotes) throw new HostFault("ApiNotFound", "The API Worksheet.notes isn't there.");
    return new RemarkCollectionObject(this.person, this.there, "note");
  }
  get FreezePanes() {
    return new WorksheetFreezePanesObject(this.there);
  }
  GetRange(address?: string) {
    if (address === undefined || address === null || address === "")
      return new RangeObject(this.person, wholeSheet(this.there), everyCell(this.there));
    return new RangeObject(this.person, parseArea(this.there, address));
  }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number) {
    if (!(row >= 0 && column >= 0 && rows >= 1 && columns >= 1)) invalid();
    return new RangeObject(this.person, { sheet: this.there, row, column, rows, columns });
  }
  GetCell(row: number, column: number) {
    return this.GetRangeByIndexes(row, column, 1, 1);
  }
  GetRanges(address: string) {
    if (address.length > 8192) invalid();
    return new RangeAreasObject(
      this.person,
      address.split(",").map((part) => parseArea(this.there, part)),
    );
  }
  GetUsedRange() {
    const area = this.there.used();
    return new RangeObject(
      this.person,
      area ?? { sheet: this.sheet, row: 0, column: 0, rows: 1, columns: 1 },
    );
  }
  /** Formats count unless only values do: https://learn.microsoft.com/javascript/api/excel/excel.worksheet */
  GetUsedRangeOrNullObject(valuesOnly?: boolean) {
    const area = this.there.used(valuesOnly !== true);
    return area ? new RangeObject(this.person, area) : NULL;
  }
  Activate() {
    if (this.there.visibility !== "Visible") denied();
    this.person.activeSheet = this.sheet;
  }
  Delete() {
    if (this.person.book.structureLocked) denied();
    if (this.there.visibility === "VeryHidden") denied();
    const visible = this.person.book.sheets.filter((sheet) => sheet.visibility === "Visible");
    if (visible.length === 1 && visible[0] === this.sheet)
      throw new HostFault("InvalidOperation", "The only visible sheet cannot be deleted.");
    this.person.book.deleteSheet(this.sheet);
  }
}

/** https://learn.microsoft.com/javascript/api/excel/excel.comment, excel.note and excel.commentreply */
class RemarkObject {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet,
    readonly remark: HostRemark,
  ) {}
  private get there(): HostRemark {
    return this.sheet.remarks.includes(this.remark) ? this.remark : notFound();
  }
  get Id() {
    return this.there.id;
  }
  get AuthorName() {
    return this.there.author;
  }
  get Content() {
    return this.there.content;
  }
  set Content(content: string) {
    this.there.content = content;
  }
  GetLocation() {
    const { row, column } = this.there;
    return new RangeObject(this.person, { sheet: this.sheet, row, column, rows: 1, columns: 1 });
  }
  get Resolved() {
    return this.there.resolved;
  }
  set Resolved(resolved: boolean) {
    this.there.resolved = resolved;
  }
  get Replies() {
    return new ReplyCollectionObject(this.person.name, this.there.replies);
  }
  Delete() {
    const { there } = this;
    this.sheet.remarks = this.sheet.remarks.filter((other) => other !== there);
  }
}

class ReplyCollectionObject extends Collection<ReplyObject> {
  constructor(
    private readonly who: string,
    private readonly replies: HostReply[],
  ) {
    super();
  }
  items() {
    return this.replies.map((reply, at) => new ReplyObject(reply, `reply-${at}`));
  }
  Indexer(id: string) {
    return this.items().find(({ Id }) => Id === id) ?? notFound();
  }
  /** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-comments: in their order, by the add-in's user. */
  Add(content: string) {
    const reply = { author: this.who, content };
    this.replies.push(reply);
    return new ReplyObject(reply, `reply-${this.replies.length - 1}`);
  }
}

class ReplyObject {
  constructor(
    private readonly reply: HostReply,
    readonly Id: string,
  ) {}
  get AuthorName() {
    return this.reply.author;
  }
  get Content() {
    return this.reply.content;
  }
  set Content(content: string) {
    this.reply.content = content;
  }
}

/** Adds for a cell that has neither a note nor a comment; what is added is by the add-in's user. */
function addRemark(person: Person, cell: RangeObject, kind: HostRemark["kind"], content: string): HostRemark {
  const { sheet, row, column, rows, columns } = cell.area;
  if (rows !== 1 || columns !== 1) invalid();
  if (sheet.remarksIn(cell.area).length > 0)
    throw new HostFault("InvalidOperation", "There is a comment or a note in the cell.");
  const id = person.book.nextId(kind);
  const remark = { id, kind, row, column, author: person.name, content, resolved: false, replies: [] };
  sheet.remarks.push(remark);
  return remark;
}

class RemarkCollectionObject extends Collection<RemarkObject> {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet,
    private readonly kind: HostRemark["kind"],
  ) {
    super();
  }
  items() {
    return this.sheet.remarks
      .filter(({ kind }) => kind === this.kind)
      .map((remark) => new RemarkObject(this.person, this.sheet, remark));
  }
  Indexer(id: string) {
    return this.items().find(({ remark }) => remark.id === id) ?? notFound();
  }
  Add(cell: RangeObject, content: string) {
    return new RemarkObject(this.person, this.sheet, addRemark(this.person, cell, this.kind, content));
  }
}

class WorksheetFreezePanesObject {
  constructor(private readonly sheet: HostSheet) {}
  FreezeRows(count: number) {
    this.sheet.frozenRows = count;
  }
}

function everyCell(sheet: HostSheet): HostArea {
  return { sheet, row: 0, column: 0, rows: 1_048_576, columns: 16_384 };
}

function wholeSheet(sheet: HostSheet): HostArea {
  const used = sheet.used();
  return {
    sheet,
    row: 0,
    column: 0,
    rows: used ? used.row + used.rows : 1,
    columns: used ? used.column + used.columns : 1,
  };
}

function parseArea(sheet: HostSheet, address: string): HostArea {
  const match = /^(?:.*!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/.exec(address.trim());
  if (!match) return invalid();
  const [, left, top, right = left, bottom = top] = match;
  const [column, row] = [columnIndex(left), Number(top) - 1];
  return { sheet, row, column, rows: Number(bottom) - row, columns: columnIndex(right) - column + 1 };
}

function columnIndex(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function columnLetters(index: number): string {
  return index < 0 ? "" : columnLetters(Math.floor(index / 26) - 1) + String.fromCharCode(65 + (index % 26));
}

export function areaAddress(area: HostArea, withSheet = true): string {
  const corner = (row: number, column: number) => `${columnLetters(column)}${row + 1}`;
  const from = corner(area.row, area.column);
  const to = corner(area.row + area.rows - 1, area.column + area.columns - 1);
  const name = /^[A-Za-z_]\w*$/.test(area.sheet.name)
    ? area.sheet.name
    : `'${area.sheet.name.replace(/'/g, "''")}'`;
  return `${withSheet ? `${name}!` : ""}${from === to ? from : `${from}:${to}`}`;
}

class RangeObject {
  readonly keepsReference = true;
  constructor(
    private readonly person: Person,
    readonly area: HostArea,
    private readonly formatted: HostArea = area,
  ) {}
  private get sheet(): HostSheet {
    if (this.area.sheet.gone) notFound();
    return this.area.sheet;
  }
  private map<T>(make: (cell: HostCell, row: number, column: number) => T): T[][] {
    const { row, column, rows, columns } = this.area;
    if (rows * columns > 5_000_000)
      throw new HostFault("RangeExceedsLimit", "The cell count in the range has exceeded the maximum.");
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_, c) =>
        make(this.sheet.cell(row + r, column + c), row + r, column + c),
      ),
    );
  }
  private enter(
    input: unknown,
    write: (row: number, column: number, value: HostValue) => void,
    option?: "allowFormatCells",
  ): void {
    const { row, column, rows, columns } = this.area;
    if (option ? this.sheet.refuses(option) : this.sheet.locked && !this.sheet.format(row, column).unlocked)
      denied();
    const grid = Array.isArray(input) ? (input as (HostValue | null)[][]) : undefined;
    this.refuseWhatIsThere();
    if (grid && (grid.length !== rows || grid.some((line) => line.length !== columns)))
      invalid("The number of rows or columns in the input array doesn't match the size of the range.");
    for (let r = 0; r < rows; r++)
      for (let c = 0; c < columns; c++) {
        const value = grid ? grid[r][c] : (input as HostValue | null);
        if (value !== null) write(row + r, column + c, value);
      }
  }
  /**
   * A range of more than one row that a filter cuts through, and a range that a PivotTable stands in:
   * https://learn.microsoft.com/office/dev/add-ins/testing/application-specific-api-error-handling
   */
  private refuseWhatIsThere(of: HostArea = this.area): void {
    const { row, rows } = of;
    if (this.sheet.pivots.some((pivot) => sharedArea(pivotArea(pivot), of)))
      throw new HostFault(
        "PivotTableRangeConflict",
        "The attempted operation causes a conflict with a PivotTable range.",
      );
    if (rows === 1) return;
    const hidden = [this.sheet.filter?.hiddenRows, ...this.sheet.tables.map((table) => table.hiddenRows)];
    if (hidden.some((set) => [...(set ?? [])].some((at) => at >= row && at < row + rows)))
      throw new HostFault(
        "FilteredRangeConflict",
        "The attempted operation causes a conflict with a filtered range.",
      );
  }
  private type(row: number, column: number, value: HostValue): void {
    const { book } = this.person;
    const cell = book.typed(value, this.sheet.format(row, column).numberFormat);
    this.sheet.put(row, column, cell);
    if (cell.formula) book.onFormula?.(this.sheet, row, column, cell.formula);
  }
  get Values() {
    return this.map((cell) => cell.value);
  }
  set Values(input: unknown) {
    this.enter(input, (row, column, value) => this.type(row, column, value));
    this.person.tellChange(this.area);
  }
  get Formulas() {
    if (this.sheet.spills.length === 0) return this.map((cell) => cell.formula ?? cell.value);
    return this.map((cell, row, column) => {
      const spill = this.sheet.spillAt(row, column);
      return cell.formula ?? (spill && this.sheet.cell(spill.row, spill.column).formula) ?? cell.value;
    });
  }
  set Formulas(input: unknown) {
    this.enter(input, (row, column, value) => this.type(row, column, value));
    this.person.tellChange(this.area);
  }
  get ValueTypes() {
    return this.map((cell) => cell.type);
  }
  get NumberFormat() {
    return this.map((_, row, column) => this.sheet.format(row, column).numberFormat ?? "General");
  }
  set NumberFormat(input: unknown) {
    this.enter(
      input,
      (row, column, value) =>
        this.sheet.setFormat(row, column, { ...this.sheet.format(row, column), numberFormat: String(value) }),
      "allowFormatCells",
    );
  }
  /** All cells spilled, none, or some. */
  get HasSpill() {
    if (this.sheet.spills.length === 0) return false;
    const spilled = this.map((_, row, column) => this.sheet.spillAt(row, column) !== undefined).flat();
    return spilled.every((is) => is === spilled[0]) ? spilled[0] : null;
  }
  GetSpillParentOrNullObject() {
    const spill = this.sheet.spillAt(this.area.row, this.area.column);
    return spill ? new RangeObject(this.person, { ...spill, rows: 1, columns: 1 }) : NULL;
  }
  /** Only the cell of the formula spills: https://learn.microsoft.com/javascript/api/excel/excel.range */
  GetSpillingToRangeOrNullObject() {
    const { row, column } = this.area;
    const spill = this.sheet.spills.find((area) => area.row === row && area.column === column);
    return spill ? new RangeObject(this.person, spill) : NULL;
  }
  get RowIndex() {
    return this.area.row;
  }
  get ColumnIndex() {
    return this.area.column;
  }
  get RowCount() {
    return this.area.rows;
  }
  get ColumnCount() {
    return this.area.columns;
  }
  get Address() {
    return areaAddress({ ...this.area, sheet: this.sheet });
  }
  get Worksheet() {
    return new WorksheetObject(this.person, this.sheet);
  }
  get Format() {
    return new RangeFormatObject(this.sheet, this.area);
  }
  get ConditionalFormats() {
    return new ConditionalFormatCollectionObject(this.person, [this.formatted]);
  }
  GetCell(row: number, column: number) {
    return new RangeObject(this.person, {
      ...this.area,
      row: this.area.row + row,
      column: this.area.column + column,
      rows: 1,
      columns: 1,
    });
  }
  GetRow(row: number) {
    return new RangeObject(this.person, { ...this.area, row: this.area.row + row, rows: 1 });
  }
  GetColumn(column: number) {
    return new RangeObject(this.person, { ...this.area, column: this.area.column + column, columns: 1 });
  }
  GetBoundingRect(other: RangeObject) {
    const row = Math.min(this.area.row, other.area.row);
    const column = Math.min(this.area.column, other.area.column);
    return new RangeObject(this.person, {
      ...this.area,
      row,
      column,
      rows: Math.max(this.area.row + this.area.rows, other.area.row + other.area.rows) - row,
      columns:
        Math.max(this.area.column + this.area.columns, other.area.column + other.area.columns) - column,
    });
  }
  /** Of the rows that anything stands in: those below hold nothing. */
  GetEntireColumn() {
    const { rows } = wholeSheet(this.sheet);
    return new RangeObject(this.person, { ...this.area, row: 0, rows });
  }
  GetUsedRangeOrNullObject() {
    const filled: [number, number][] = [];
    this.map((cell, row, column) => {
      if (cell.type !== "Empty" || cell.formula) filled.push([row, column]);
    });
    if (filled.length === 0) return NULL;
    const [rows, columns] = [filled.map(([row]) => row), filled.map(([, column]) => column)];
    const [row, column] = [Math.min(...rows), Math.min(...columns)];
    return new RangeObject(this.person, {
      sheet: this.sheet,
      row,
      column,
      rows: Math.max(...rows) - row + 1,
      columns: Math.max(...columns) - column + 1,
    });
  }
  GetPivotTables() {
    return new PivotCollectionObject(this.person, this.sheet);
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-getmergedareasornullobject-member(1) */
  GetMergedAreasOrNullObject() {
    const areas = this.sheet.merged.filter((area) => sharedArea(area, this.area));
    if (areas.length > 512)
      throw new HostFault("GeneralException", "There was an internal error while processing the request.");
    return areas.length === 0 ? NULL : new RangeAreasObject(this.person, areas);
  }
  Select() {
    this.person.activeSheet = this.sheet;
    this.person.selection = this.area;
    this.person.tellSelection(this.area);
  }
  /**
   * With the formats go the conditional formats and the merging of the cells (from memory, no page says it); notes and
   * comments go when everything does (https://learn.microsoft.com/office/vba/api/excel.range.clear).
   */
  Clear(applyTo: string) {
    if (this.sheet.locked) denied();
    this.refuseWhatIsThere();
    if (applyTo === "All" || !applyTo) this.sheet.takeRemarksOff(this.area);
    if (applyTo !== "Contents") {
      takeConditionalFormatsOff(this.area);
      this.sheet.merged = this.sheet.merged.filter((area) => !sharedArea(area, this.area));
    }
    this.each((row, column) => {
      if (applyTo === "All" || applyTo === "Contents" || !applyTo)
        this.sheet.put(row, column, { value: "", type: "Empty" });
      if (applyTo === "All" || applyTo === "Formats" || !applyTo) this.sheet.setFormat(row, column, {});
    });
    this.person.tellChange(this.area);
  }
  /**
   * Copying takes notes and comments along, as Copy and Paste do
   * (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-ranges-cut-copy-paste), unless `leavesRemarks`.
   * The destination grows to the source; one that is an exact multiple of it is filled with copies
   * (https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-copyfrom-member(1)).
   */
  CopyFrom(source: RangeObject, copyType: string) {
    if (this.sheet.locked) denied();
    const times = (own: number, its: number) => (own % its === 0 ? own / its : 1);
    for (let down = 0; down < times(this.area.rows, source.area.rows); down++)
      for (let right = 0; right < times(this.area.columns, source.area.columns); right++)
        this.copyTo(
          {
            ...source.area,
            sheet: this.sheet,
            row: this.area.row + down * source.area.rows,
            column: this.area.column + right * source.area.columns,
          },
          source,
          copyType,
        );
  }
  private copyTo(to: HostArea, source: RangeObject, copyType: string): void {
    this.refuseWhatIsThere(to);
    const cells = source.map((cell, row, column) => ({
      cell,
      format: source.sheet.format(row, column),
    }));
    if ((copyType === "All" || !copyType) && !this.person.leavesRemarks) {
      const copies = source.sheet.remarksIn(source.area).map(({ replies, ...remark }) => ({
        ...remark,
        id: this.person.book.nextId(remark.kind),
        row: remark.row + to.row - source.area.row,
        column: remark.column + to.column - source.area.column,
        replies: replies.map((reply) => ({ ...reply })),
      }));
      this.sheet.takeRemarksOff(to);
      this.sheet.remarks.push(...copies);
    }
    const carriesFormats = copyType === "All" || copyType === "Formats" || !copyType;
    if (carriesFormats) {
      takeConditionalFormatsOff(to);
      this.sheet.merged = this.sheet.merged.filter((area) => !sharedArea(area, to));
      copyConditionalFormats(this.person, source.area, to);
    }
    cells.forEach((line, r) =>
      line.forEach(({ cell, format }, c) => {
        const [row, column] = [to.row + r, to.column + c];
        if (copyType === "Formats") {
          this.sheet.setFormat(row, column, { ...format });
          return;
        }
        if (copyType === "Values") {
          const { formula: _formula, quoted: _quoted, ...value } = cell;
          this.sheet.put(row, column, value);
        } else this.sheet.put(row, column, { ...cell });
        if (copyType === "All" || !copyType) this.sheet.setFormat(row, column, { ...format });
      }),
    );
    if (carriesFormats)
      for (const area of [...source.sheet.merged])
        if (within(area, source.area)) this.sheet.merge(movedArea(area, source.area, to));
    if (copyType === "All" || !copyType) this.copyTables(source.area, to);
    if (copyType !== "Formats") this.person.tellChange(to);
  }
  /**
   * A copy of cells that hold a whole table is a second table, and no table may lie over another
   * (https://github.com/OfficeDev/office-js/issues: copyFrom of a table; seen by people, not documented).
   */
  private copyTables(source: HostArea, to: HostArea): void {
    for (const table of [...source.sheet.tables]) {
      if (!within(table.area, source)) continue;
      const area = movedArea(table.area, source, to);
      refuseOverlap(area);
      this.sheet.tables.push({
        id: this.person.book.nextId("table"),
        name: this.person.book.nextId("Table").replace(/\W/g, ""),
        area,
        style: table.style,
      });
    }
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-getcellproperties-member(1) */
  GetCellProperties({ format = {} }: Excel.CellPropertiesLoadOptions) {
    return this.map((_, row, column) => {
      const of = new RangeFormatObject(this.sheet, { ...this.area, row, column, rows: 1, columns: 1 });
      const lines = of.Borders.items().map(({ SideIndex, Style }) => [
        SideIndex.replace("Edge", "").toLowerCase(),
        { style: Style, color: "#000000" },
      ]);
      const all = {
        fill: { color: of.Fill.Color },
        font: {
          name: of.Font.Name,
          size: of.Font.Size,
          color: of.Font.Color,
          bold: of.Font.Bold,
          italic: of.Font.Italic,
          underline: of.Font.Underline,
          strikethrough: of.Font.Strikethrough,
        },
        borders: Object.fromEntries(lines),
        horizontalAlignment: of.HorizontalAlignment,
        indentLevel: of.IndentLevel,
        textOrientation: of.TextOrientation,
      };
      return { format: Object.fromEntries(Object.entries(all).filter(([name]) => name in format)) };
    });
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-rowhidden-member: null where rows differ. */
  get RowHidden() {
    return allOrNone(this.GetRowProperties().map(({ rowHidden }) => rowHidden));
  }
  get ColumnHidden() {
    return allOrNone(this.GetColumnProperties().map(({ columnHidden }) => columnHidden));
  }
  GetRowProperties() {
    const { row, rows } = this.area;
    return Array.from({ length: rows }, (_, r) => ({ rowHidden: this.sheet.hiddenRows.has(row + r) }));
  }
  GetColumnProperties() {
    const { column, columns } = this.area;
    return Array.from({ length: columns }, (_, c) => ({
      columnHidden: this.sheet.hiddenColumns.has(column + c),
    }));
  }
  _KeepReference() {}
  _ValidateArraySize(rows: number, columns: number) {
    if (rows !== this.area.rows || columns !== this.area.columns) invalid();
  }
  private each(act: (row: number, column: number) => void): void {
    const { row, column, rows, columns } = this.area;
    for (let r = 0; r < rows; r++) for (let c = 0; c < columns; c++) act(row + r, column + c);
  }
}

function allOrNone(each: readonly boolean[]): boolean | null {
  return each.every((is) => is === each[0]) ? each[0] : null;
}

function within(inner: HostArea, outer: HostArea): boolean {
  return (
    inner.row >= outer.row &&
    inner.column >= outer.column &&
    inner.row + inner.rows <= outer.row + outer.rows &&
    inner.column + inner.columns <= outer.column + outer.columns
  );
}

function movedArea(area: HostArea, from: HostArea, to: HostArea): HostArea {
  return {
    ...area,
    sheet: to.sheet,
    row: area.row + to.row - from.row,
    column: area.column + to.column - from.column,
  };
}

/** MergedRangeConflict of https://learn.microsoft.com/office/dev/add-ins/testing/application-specific-api-error-handling */
function refuseOverlap(area: HostArea, but?: HostTable): void {
  const { tables, pivots, merged } = area.sheet;
  const others = [
    ...tables.filter((other) => other !== but).map((other) => other.area),
    ...pivots.map(pivotArea),
    ...merged,
  ];
  if (others.some((other) => sharedArea(other, area)))
    throw new HostFault(
      "MergedRangeConflict",
      "Cannot complete the operation. A table can't overlap with another table, a PivotTable report, query results, merged cells, or an XML Map.",
    );
}

/** The cells that a PivotTable takes; the stand-in does not calculate it and gives every one the same size. */
function pivotArea({ destination }: HostPivot): HostArea {
  return { ...destination, rows: 8, columns: 6 };
}

function takeConditionalFormatsOff(area: HostArea): void {
  const { sheet } = area;
  for (const format of sheet.conditionalFormats) {
    const [first] = format.areas;
    const left = format.areas.flatMap((own) => areaWithout(own, area));
    if (left.length > 0) format.formula = movedRule(format.formula, first, left[0]);
    format.areas = left;
  }
  sheet.conditionalFormats = sheet.conditionalFormats.filter(({ areas }) => areas.length > 0);
}

function copyConditionalFormats(person: Person, source: HostArea, to: HostArea): void {
  const copies = source.sheet.conditionalFormats.flatMap((format) => {
    const shared = format.areas.flatMap((area) => sharedArea(area, source) ?? []);
    if (shared.length === 0) return [];
    const areas = shared.map((area) => movedArea(area, source, to));
    const formula = movedRule(format.formula, format.areas[0], areas[0]);
    return [{ ...format, id: person.book.nextId("format"), formula, areas }];
  });
  to.sheet.conditionalFormats.unshift(...copies);
}

/** A rule that was written for the first cell of one area as it is written for that of another. */
function movedRule(formula: string, from: HostArea, to: HostArea): string {
  return formula.replace(/"[^"]*"|(\$?)([A-Z]{1,3})(\$?)(\d+)/g, (part, fixed, letters, fixedRow, row) => {
    if (letters === undefined) return part;
    const column = fixed === "$" ? letters : columnLetters(columnIndex(letters) + to.column - from.column);
    return `${fixed}${column}${fixedRow}${fixedRow === "$" ? row : Number(row) + to.row - from.row}`;
  });
}

class RangeAreasObject {
  readonly keepsReference = true;
  constructor(
    private readonly person: Person,
    private readonly areas: HostArea[],
  ) {}
  get Address() {
    return this.areas.map((area) => areaAddress(area)).join(", ");
  }
  get ConditionalFormats() {
    return new ConditionalFormatCollectionObject(this.person, this.areas);
  }
  _KeepReference() {}
}

class RangeFormatObject {
  constructor(
    private readonly sheet: HostSheet,
    private readonly area: HostArea,
  ) {}
  private change(part: HostFormat): void {
    if (this.sheet.refuses("allowFormatCells")) denied();
    const { row, column, rows, columns } = this.area;
    for (let r = row; r < row + rows; r++)
      for (let c = column; c < column + columns; c++)
        this.sheet.setFormat(r, c, { ...this.sheet.format(r, c), ...part });
  }
  private get first(): HostFormat {
    return this.sheet.format(this.area.row, this.area.column);
  }
  /** null where cells differ: https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-blank-null-values */
  private shared<T>(of: (format: HostFormat) => T): T | null {
    const value = of(this.first);
    const { row, column, rows, columns } = this.area;
    for (let r = row; r < row + rows; r++)
      for (let c = column; c < column + columns; c++) if (of(this.sheet.format(r, c)) !== value) return null;
    return value;
  }
  get HorizontalAlignment() {
    return "General";
  }
  get IndentLevel() {
    return 0;
  }
  get TextOrientation() {
    return 0;
  }
  get Borders() {
    const sides = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"];
    return {
      items: () =>
        sides.map((SideIndex) => ({
          SideIndex,
          Style: this.shared(({ lines = [] }) => (lines.includes(SideIndex) ? "Continuous" : "None")),
        })),
    };
  }
  get Protection() {
    return { Locked: this.first.unlocked !== true };
  }
  set ColumnWidth(width: number) {
    if (this.sheet.refuses("allowFormatColumns")) denied();
    for (let c = 0; c < this.area.columns; c++) this.sheet.columnWidths.set(this.area.column + c, width);
  }
  get ColumnWidth() {
    return this.sheet.columnWidths.get(this.area.column) ?? 48;
  }
  set WrapText(wrap: boolean) {
    this.change({ wrap });
  }
  get WrapText() {
    return this.first.wrap ?? false;
  }
  set VerticalAlignment(alignment: string) {
    this.change({ alignment });
  }
  get Font() {
    const change = (part: HostFormat) => this.change(part);
    const shared = <T>(of: (format: HostFormat) => T) => this.shared(of);
    return {
      get Bold() {
        return shared(({ bold = false }) => bold);
      },
      set Bold(bold: boolean | null) {
        change({ bold: bold ?? false });
      },
      Name: shared(({ font = "Aptos Narrow" }) => font),
      Size: shared(({ size = 11 }) => size),
      Color: shared(({ color = "#000000" }) => color),
      Italic: shared(({ italic = false }) => italic),
      Underline: "None",
      Strikethrough: shared(({ struck = false }) => struck),
    };
  }
  get Fill() {
    const change = (part: HostFormat) => this.change(part);
    const shared = () => this.shared(({ fill = "#FFFFFF" }) => fill);
    return {
      set Color(fill: string | null) {
        change({ fill: fill ?? "#FFFFFF" });
      },
      get Color() {
        return shared();
      },
    };
  }
}

class ConditionalFormatCollectionObject extends Collection<ConditionalFormatObject> {
  constructor(
    private readonly person: Person,
    private readonly areas: HostArea[],
  ) {
    super();
  }
  private get sheet(): HostSheet {
    return this.areas[0].sheet;
  }
  items() {
    return this.sheet.conditionalFormats
      .filter((format) => format.areas.some((own) => this.areas.some((area) => sharedArea(own, area))))
      .map((format) => new ConditionalFormatObject(this.person, this.sheet, format));
  }
  Indexer(id: string) {
    return this.items().find((item) => item.Id === id) ?? notFound();
  }
  GetItem(id: string) {
    return this.Indexer(id);
  }
  ClearAll() {
    if (this.sheet.refuses("allowFormatCells")) denied();
    for (const area of this.areas) takeConditionalFormatsOff(area);
  }
  Add(type: string) {
    if (this.sheet.refuses("allowFormatCells")) denied();
    const format: HostConditionalFormat = {
      id: this.person.book.nextId("format"),
      type,
      formula: "",
      fill: "",
      font: "",
      border: "",
      bold: false,
      stopIfTrue: false,
      areas: this.areas,
    };
    this.sheet.conditionalFormats.unshift(format);
    return new ConditionalFormatObject(this.person, this.sheet, format);
  }
}

class ConditionalFormatObject {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet,
    private readonly format: HostConditionalFormat,
  ) {}
  get Id() {
    return this.format.id;
  }
  get Type() {
    return this.format.type;
  }
  get Priority() {
    return this.sheet.conditionalFormats.indexOf(this.format);
  }
  /** https://learn.microsoft.com/javascript/api/excel/excel.conditionalformat#excel-excel-conditionalformat-priority-member */
  set Priority(priority: number) {
    const { conditionalFormats } = this.sheet;
    const others = conditionalFormats.filter((other) => other !== this.format);
    const at = priority < 0 ? Math.max(0, conditionalFormats.length + priority) : priority;
    others.splice(Math.min(at, others.length), 0, this.format);
    this.sheet.conditionalFormats = others;
  }
  get StopIfTrue() {
    return this.format.stopIfTrue;
  }
  set StopIfTrue(stop: boolean) {
    this.format.stopIfTrue = stop;
  }
  get Custom() {
    if (this.format.type !== "Custom") notFound();
    return this.custom;
  }
  get CustomOrNullObject() {
    return this.format.type === "Custom" ? this.custom : NULL;
  }
  private get custom() {
    const { format } = this;
    return {
      Rule: {
        get Formula() {
          return format.formula;
        },
        set Formula(formula: string) {
          format.formula = formula;
        },
      },
      Format: {
        Fill: {
          get Color() {
            return format.fill;
          },
          set Color(color: string) {
            format.fill = color;
          },
        },
        Font: {
          get Color() {
            return format.font;
          },
          set Color(color: string) {
            format.font = color;
          },
          get Bold() {
            return format.bold;
          },
          set Bold(bold: boolean) {
            format.bold = bold;
          },
        },
      },
    };
  }
  GetRanges() {
    return new RangeAreasObject(this.person, this.format.areas);
  }
  Delete() {
    if (this.sheet.refuses("allowFormatCells")) denied();
    this.sheet.conditionalFormats = this.sheet.conditionalFormats.filter((other) => other !== this.format);
  }
}

class NameCollectionObject extends Collection<NameObject> {
  constructor(private readonly sheet: HostSheet) {
    super();
  }
  items() {
    return this.sheet.names.map((name) => new NameObject(this.sheet, name));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Name === key) ?? notFound();
  }
  GetItemOrNullObject(key: string) {
    return this.items().find((item) => item.Name.toLowerCase() === key.toLowerCase()) ?? NULL;
  }
  Add(name: string, reference: string, comment: string | null) {
    if (this.sheet.names.some((other) => other.name === name)) throw new HostFault("ItemAlreadyExists", name);
    const made: HostName = { name, formula: reference, visible: true, comment: comment ?? "" };
    this.sheet.names.push(made);
    return new NameObject(this.sheet, made);
  }
}

class NameObject {
  constructor(
    private readonly sheet: HostSheet,
    private readonly name: HostName,
  ) {}
  get Name() {
    return this.name.name;
  }
  get Formula() {
    return this.name.formula;
  }
  set Formula(formula: string) {
    this.name.formula = formula;
  }
  get Visible() {
    return this.name.visible;
  }
  set Visible(visible: boolean) {
    this.name.visible = visible;
  }
  Delete() {
    this.sheet.names = this.sheet.names.filter((other) => other !== this.name);
  }
}

class TableCollectionObject extends Collection<TableObject> {
  constructor(
    private readonly person: Person,
    private readonly book: HostBook,
    private readonly sheet?: HostSheet,
  ) {
    super();
  }
  items() {
    const sheets = this.sheet ? [this.sheet] : this.book.sheets;
    return sheets.flatMap((sheet) => sheet.tables.map((table) => new TableObject(this.person, table)));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Id === key || item.Name === key) ?? notFound();
  }
  GetItemOrNullObject(key: string) {
    return (
      this.items().find((item) => item.Id === key || item.Name.toLowerCase() === key.toLowerCase()) ?? NULL
    );
  }
  Add(address: string | RangeObject, hasHeaders: boolean) {
    const sheet = this.sheet ?? this.book.sheets[0];
    const area = typeof address === "string" ? parseArea(sheet, address) : address.area;
    if (sheet.locked) denied();
    if (!hasHeaders) invalid();
    refuseOverlap(area);
    const table = { id: this.book.nextId("table"), name: this.book.nextId("Table"), area, style: "" };
    sheet.tables.push(table);
    return new TableObject(this.person, table);
  }
}

class TableObject {
  constructor(
    private readonly person: Person,
    readonly table: HostTable,
  ) {}
  get Id() {
    return this.table.id;
  }
  get Name() {
    return this.table.name;
  }
  set Name(name: string) {
    const taken = this.person.book.sheets.some((sheet) =>
      sheet.tables.some((other) => other !== this.table && other.name.toLowerCase() === name.toLowerCase()),
    );
    if (taken || !/^[A-Za-z_\\][\w.]*$/.test(name)) invalid();
    this.table.name = name;
  }
  get Style() {
    return this.table.style;
  }
  set Style(style: string) {
    this.table.style = style;
  }
  set ShowFilterButton(_show: boolean) {}
  ClearFilters() {
    this.table.hiddenRows = undefined;
  }
  get ShowTotals() {
    return false;
  }
  get AutoFilter() {
    const { table } = this;
    return {
      get IsDataFiltered() {
        return (table.hiddenRows?.size ?? 0) > 0;
      },
      /** By values: https://learn.microsoft.com/javascript/api/excel/excel.filtercriteria */
      Apply: (_range: RangeObject, column: number, { values = [] }: Excel.FilterCriteria) => {
        const { sheet, row, rows, column: first } = table.area;
        if (sheet.refuses("allowAutoFilter")) denied();
        const shown = (at: number) => values.includes(String(sheet.cell(at, first + column).value));
        const body = Array.from({ length: rows - 1 }, (_, index) => row + 1 + index);
        table.hiddenRows = new Set(body.filter((at) => !shown(at)));
      },
    };
  }
  get Worksheet() {
    return new WorksheetObject(this.person, this.table.area.sheet);
  }
  GetRange() {
    return new RangeObject(this.person, this.table.area);
  }
  GetHeaderRowRange() {
    return new RangeObject(this.person, { ...this.table.area, rows: 1 });
  }
  GetDataBodyRange() {
    const { area } = this.table;
    return new RangeObject(this.person, { ...area, row: area.row + 1, rows: area.rows - 1 });
  }
  Resize(range: RangeObject | string) {
    const area = typeof range === "string" ? parseArea(this.table.area.sheet, range) : range.area;
    if (area.sheet.locked) denied();
    if (area.row !== this.table.area.row || area.rows < 2) invalid();
    refuseOverlap(area, this.table);
    this.table.area = area;
  }
  ConvertToRange() {
    const { sheet } = this.table.area;
    if (sheet.locked) denied();
    sheet.tables = sheet.tables.filter((other) => other !== this.table);
    return new RangeObject(this.person, this.table.area);
  }
}

class ChartCollectionObject extends Collection<ChartObject> {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet,
  ) {
    super();
  }
  items() {
    return this.sheet.charts.map((chart) => new ChartObject(this.sheet, chart));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Id === key) ?? notFound();
  }
  GetItem(name: string) {
    return this.items().find((item) => item.Name === name) ?? notFound();
  }
  /** A series for each column, with its first cell as its name, as Excel makes of a column of figures below a text. */
  Add(type: string, source: RangeObject, seriesBy: string) {
    if (this.sheet.refuses("allowEditObjects")) denied();
    const { area } = source;
    if (area.sheet !== this.sheet || area.rows < 2 || seriesBy !== "Columns") invalid();
    const id = this.person.book.nextId("chart");
    const chart: HostChart = {
      id,
      name: id.replace(/[{}]/g, ""),
      type,
      title: "",
      axis: "",
      minimum: undefined,
      reversed: false,
      crossing: "Automatic",
      legend: "Right",
      from: undefined,
      to: undefined,
      series: Array.from({ length: area.columns }, (_, c) =>
        newSeries(String(this.sheet.cell(area.row, area.column + c).value), {
          ...area,
          row: area.row + 1,
          rows: area.rows - 1,
          column: area.column + c,
          columns: 1,
        }),
      ),
    };
    this.sheet.charts.push(chart);
    return new ChartObject(this.sheet, chart);
  }
}

function newSeries(name: string, values: HostArea): HostSeries {
  return { name, values, categories: undefined, fill: "", line: "", gapWidth: 150 };
}

class ChartObject {
  constructor(
    private readonly sheet: HostSheet,
    readonly chart: HostChart,
  ) {}
  /** A chart that was deleted since the path was made answers as Excel does. */
  private get there(): HostChart {
    if (this.sheet.gone || !this.sheet.charts.includes(this.chart)) notFound();
    return this.chart;
  }
  get Id() {
    return this.there.id;
  }
  get Name() {
    return this.there.name;
  }
  set Name(name: string) {
    this.there.name = name;
  }
  get ChartType() {
    return this.there.type;
  }
  get Title() {
    return textOf(this.there, "title");
  }
  get Legend() {
    const chart = this.there;
    return {
      set Position(position: string) {
        chart.legend = position;
      },
      get Position() {
        return chart.legend;
      },
    };
  }
  get Axes() {
    const chart = this.there;
    return {
      CategoryAxis: {
        set ReversePlotOrder(reversed: boolean) {
          chart.reversed = reversed;
        },
        set Position(crossing: string) {
          chart.crossing = crossing;
        },
      },
      ValueAxis: {
        set Minimum(minimum: number) {
          chart.minimum = minimum;
        },
        Title: textOf(chart, "axis"),
      },
    };
  }
  get Series() {
    return new SeriesCollectionObject(this.there);
  }
  SetPosition(from: RangeObject, to: RangeObject) {
    this.there.from = from.area;
    this.there.to = to.area;
  }
  Delete() {
    const chart = this.there;
    if (this.sheet.refuses("allowEditObjects")) denied();
    this.sheet.charts = this.sheet.charts.filter((other) => other !== chart);
  }
}

function textOf(chart: HostChart, of: "title" | "axis") {
  return {
    set Text(text: string) {
      chart[of] = text;
    },
    get Text() {
      return chart[of];
    },
  };
}

class SeriesCollectionObject extends Collection<SeriesObject> {
  constructor(private readonly chart: HostChart) {
    super();
  }
  items() {
    return this.chart.series.map((series) => new SeriesObject(series));
  }
  Indexer(): never {
    return notFound();
  }
  Add(name: string) {
    const series = newSeries(name, this.chart.series[0].values);
    this.chart.series.push(series);
    return new SeriesObject(series);
  }
}

class SeriesObject {
  constructor(private readonly series: HostSeries) {}
  get Name() {
    return this.series.name;
  }
  set GapWidth(width: number) {
    this.series.gapWidth = width;
  }
  SetValues(range: RangeObject) {
    this.series.values = range.area;
  }
  SetXAxisValues(range: RangeObject) {
    this.series.categories = range.area;
  }
  get Format() {
    const { series } = this;
    return {
      Fill: {
        SetSolidColor: (color: string) => {
          series.fill = color;
        },
      },
      Line: {
        set Color(color: string) {
          series.line = color;
        },
      },
    };
  }
}

class SettingCollectionObject extends Collection<SettingObject> {
  constructor(private readonly book: HostBook) {
    super();
  }
  items() {
    return [...this.book.settings.keys()].map((key) => new SettingObject(this.book, key));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Key === key) ?? notFound();
  }
  GetItemOrNullObject(key: string) {
    return this.items().find((item) => item.Key === key) ?? NULL;
  }
  Add(key: string, value: unknown) {
    this.book.settings.set(key, value);
    return new SettingObject(this.book, key);
  }
}

class SettingObject {
  constructor(
    private readonly book: HostBook,
    private readonly key: string,
  ) {}
  get Key() {
    return this.key;
  }
  get Value() {
    return this.book.settings.get(this.key);
  }
  Delete() {
    this.book.settings.delete(this.key);
  }
}

class PivotCollectionObject extends Collection<PivotObject> {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet | undefined,
  ) {
    super();
  }
  items() {
    const sheets = this.sheet ? [this.sheet] : this.person.book.sheets;
    return sheets.flatMap((sheet) => sheet.pivots.map((pivot) => new PivotObject(this.person, sheet, pivot)));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Id === key || item.Name === key) ?? notFound();
  }
  GetItemOrNullObject(key: string) {
    return this.items().find((item) => item.Name.toLowerCase() === key.toLowerCase()) ?? NULL;
  }
  Add(name: string, source: RangeObject | TableObject | string, destination: RangeObject | string) {
    if (typeof source === "string" || typeof destination === "string") return invalid();
    const { sheet } = destination.area;
    if (sheet.locked) denied();
    if (this.person.book.sheets.some((other) => other.pivots.some((pivot) => pivot.name === name))) invalid();
    const pivot: HostPivot = {
      id: this.person.book.nextId("pivot"),
      name,
      source: source instanceof TableObject ? source.table.name : source.area,
      destination: destination.area,
      rows: [],
      columns: [],
      filters: [],
      data: [],
      layout: "Compact",
      refreshed: 0,
    };
    sheet.pivots.push(pivot);
    return new PivotObject(this.person, sheet, pivot);
  }
}

class PivotObject {
  constructor(
    private readonly person: Person,
    private readonly sheet: HostSheet,
    private readonly pivot: HostPivot,
  ) {}
  private get source(): HostArea {
    const { source } = this.pivot;
    const tables = this.person.book.sheets.flatMap((sheet) => sheet.tables);
    const area = typeof source === "string" ? tables.find(({ name }) => name === source)?.area : source;
    if (!area || area.sheet.gone)
      throw new HostFault("InvalidReference", "The source of the PivotTable is gone.");
    return area;
  }
  /** The first data field by the first row field, and of all rows. */
  private body(): number[][] {
    const area = this.source;
    const column = (field: string) =>
      Array.from({ length: area.rows - 1 }, (_, index) => index + 1).map(
        (at) => area.sheet.cell(area.row + at, area.column + this.fields().indexOf(field)).value,
      );
    const { rows, data } = this.pivot;
    const [names, figures] = [column(rows[0].field), column(data[0].field).map(Number)];
    const of = (fits: (name: HostValue) => boolean) => {
      const own = figures.filter((_, index) => fits(names[index]));
      return data[0].summarizeBy === "Count" ? own.length : own.reduce((sum, each) => sum + each, 0);
    };
    return [...[...new Set(names)].map((name) => [of((other) => other === name)]), [of(() => true)]];
  }
  private fields(): string[] {
    const area = this.source;
    return Array.from({ length: area.columns }, (_, c) =>
      String(area.sheet.cell(area.row, area.column + c).value),
    );
  }
  get Id() {
    return this.pivot.id;
  }
  get Name() {
    return this.pivot.name;
  }
  set Name(name: string) {
    this.pivot.name = name;
  }
  get Worksheet() {
    return new WorksheetObject(this.person, this.sheet);
  }
  get Hierarchies() {
    const names = this.fields();
    const hierarchy = (name: string) => new FieldObject(name);
    return {
      items: () => names.map(hierarchy),
      Indexer: (name: string) => (names.includes(name) ? hierarchy(name) : notFound()),
      GetItemOrNullObject: (name: string) => (names.includes(name) ? hierarchy(name) : NULL),
    };
  }
  get RowHierarchies() {
    return new HierarchyCollectionObject(this.pivot.rows);
  }
  get ColumnHierarchies() {
    return new HierarchyCollectionObject(this.pivot.columns);
  }
  get FilterHierarchies() {
    return new HierarchyCollectionObject(this.pivot.filters);
  }
  get DataHierarchies() {
    return new HierarchyCollectionObject(this.pivot.data);
  }
  get Layout() {
    const { pivot } = this;
    return {
      set LayoutType(type: string) {
        pivot.layout = type;
      },
      GetRange: () => new RangeObject(this.person, pivotArea(pivot)),
      GetDataBodyRange: () => ({
        keepsReference: true,
        Values: this.body(),
        _KeepReference: () => undefined,
      }),
    };
  }
  Refresh() {
    if (this.sheet.refuses("allowPivotTables")) denied();
    this.fields();
    this.pivot.refreshed += 1;
  }
  Delete() {
    this.sheet.pivots = this.sheet.pivots.filter((other) => other !== this.pivot);
  }
}

class FieldObject {
  constructor(readonly Name: string) {}
  get Id() {
    return this.Name;
  }
}

class HierarchyCollectionObject extends Collection<HierarchyObject> {
  constructor(private readonly list: HostHierarchy[]) {
    super();
  }
  items() {
    return this.list.map((entry) => new HierarchyObject(entry));
  }
  Indexer(key: string) {
    return this.items().find((item) => item.Name === key) ?? notFound();
  }
  GetItemOrNullObject(key: string) {
    return this.items().find((item) => item.Name === key) ?? NULL;
  }
  Add(field: FieldObject) {
    const entry: HostHierarchy = { field: field.Name, name: field.Name };
    this.list.push(entry);
    return new HierarchyObject(entry);
  }
}

class HierarchyObject {
  constructor(private readonly entry: HostHierarchy) {}
  get Id() {
    return this.entry.name;
  }
  get Name() {
    return this.entry.name;
  }
  set Name(name: string) {
    this.entry.name = name;
  }
  get Field() {
    return { Name: this.entry.field };
  }
  get SummarizeBy() {
    return this.entry.summarizeBy ?? "Sum";
  }
  set SummarizeBy(way: string) {
    this.entry.summarizeBy = way;
  }
  set NumberFormat(_format: string) {}
}
