/** What a host answers instead of a result: the code that Office.js hands on as error.code. */
export class HostFault extends Error {
  constructor(
    readonly code: string,
    message: string,
    /** The call that was refused, as error.debugInfo.errorLocation names it. */
    readonly location = "",
  ) {
    super(message);
  }
}

export type HostValue = string | number | boolean;

/** A cell of the in-memory host, with the value types of Excel.RangeValueType. */
export interface HostCell {
  value: HostValue;
  type: "Empty" | "String" | "Double" | "Boolean" | "Error";
  formula?: string;
  /** Typed with a leading apostrophe. */
  quoted?: boolean;
}

export interface HostFormat {
  numberFormat?: string;
  bold?: boolean;
  fill?: string;
  font?: string;
  size?: number;
  color?: string;
  italic?: boolean;
  struck?: boolean;
  /** Sides with a line: "EdgeBottom". */
  lines?: readonly string[];
  wrap?: boolean;
  alignment?: string;
  unlocked?: boolean;
}

export interface HostArea {
  sheet: HostSheet;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

export interface HostTable {
  id: string;
  name: string;
  area: HostArea;
  style: string;
  /** Rows of the sheet, from 0, that the table's filter hides. */
  hiddenRows?: ReadonlySet<number>;
}

export interface HostConditionalFormat {
  id: string;
  type: string;
  formula: string;
  fill: string;
  font: string;
  border: string;
  bold: boolean;
  stopIfTrue: boolean;
  areas: HostArea[];
}

export interface HostName {
  name: string;
  formula: string;
  visible: boolean;
  comment: string;
}

export interface HostHierarchy {
  field: string;
  name: string;
  summarizeBy?: string;
}

export interface HostPivot {
  id: string;
  name: string;
  /** An area, or the name of a table. */
  source: HostArea | string;
  destination: HostArea;
  rows: HostHierarchy[];
  columns: HostHierarchy[];
  filters: HostHierarchy[];
  data: HostHierarchy[];
  layout: string;
  refreshed: number;
}

export interface HostSeries {
  name: string;
  values: HostArea;
  categories: HostArea | undefined;
  fill: string;
  line: string;
  gapWidth: number;
}

export interface HostChart {
  id: string;
  name: string;
  type: string;
  title: string;
  axis: string;
  minimum: number | undefined;
  reversed: boolean;
  crossing: string;
  legend: string;
  /** First and last cell that it covers; where Excel puts it when left out. */
  from: HostArea | undefined;
  to: HostArea | undefined;
  series: HostSeries[];
}

/** A note, or a comment with its answers. */
export interface HostRemark {
  readonly id: string;
  readonly kind: "note" | "comment";
  row: number;
  column: number;
  readonly author: string;
  content: string;
  resolved: boolean;
  readonly replies: HostReply[];
}

export interface HostReply {
  readonly author: string;
  content: string;
}

export const COLUMNS = 16384;

export class HostSheet {
  readonly cells = new Map<number, HostCell>();
  readonly formats = new Map<number, HostFormat>();
  remarks: HostRemark[] = [];
  readonly columnWidths = new Map<number, number>();
  names: HostName[] = [];
  tables: HostTable[] = [];
  conditionalFormats: HostConditionalFormat[] = [];
  pivots: HostPivot[] = [];
  charts: HostChart[] = [];
  /** Areas that a formula in their first cell fills. */
  spills: HostArea[] = [];
  visibility: "Visible" | "Hidden" | "VeryHidden" = "Visible";
  locked = false;
  /** What a protected sheet allows all the same: https://learn.microsoft.com/javascript/api/excel/excel.worksheetprotectionoptions */
  allowed: ReadonlySet<keyof Excel.WorksheetProtectionOptions> = new Set();
  /** Cells that are merged into one. */
  merged: HostArea[] = [];
  /** What a filter on the sheet itself covers, with the rows that it hides. */
  filter: { area: HostArea; hiddenRows: ReadonlySet<number> } | undefined;
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  frozenRows = 0;
  gone = false;
  private known: Bounds | undefined;

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  cell(row: number, column: number): HostCell {
    return this.cells.get(row * COLUMNS + column) ?? { value: "", type: "Empty" };
  }

  /**
   * A merged area has one value, in its first cell; what is put into another of its cells is lost
   * (https://learn.microsoft.com/office/vba/api/excel.range.merge).
   */
  put(row: number, column: number, cell: HostCell): void {
    if (this.isCovered(row, column)) return;
    if (cell.type === "Empty" && !cell.formula) {
      if (this.cells.delete(row * COLUMNS + column)) this.known = undefined;
    } else {
      this.cells.set(row * COLUMNS + column, cell);
      if (this.known) this.known = grown(this.known, row, column);
    }
  }

  /** Whether the protection of the sheet refuses what this option would allow. */
  refuses(option: keyof Excel.WorksheetProtectionOptions): boolean {
    return this.locked && !this.allowed.has(option);
  }

  /** True for a cell of a merged area that is not its first. */
  isCovered(row: number, column: number): boolean {
    return this.merged.some(
      (area) => holdsCell(area, row, column) && (row !== area.row || column !== area.column),
    );
  }

  merge(area: HostArea): void {
    for (let r = area.row; r < area.row + area.rows; r++)
      for (let c = area.column; c < area.column + area.columns; c++)
        if (r !== area.row || c !== area.column) this.put(r, c, { value: "", type: "Empty" });
    this.merged.push(area);
  }

  /** The area of the spilling formula that fills this cell. */
  spillAt(row: number, column: number): HostArea | undefined {
    return this.spills.find((area) => holdsCell(area, row, column));
  }

  format(row: number, column: number): HostFormat {
    return this.formats.get(row * COLUMNS + column) ?? {};
  }

  setFormat(row: number, column: number, format: HostFormat): void {
    if (Object.keys(format).length === 0) this.formats.delete(row * COLUMNS + column);
    else this.formats.set(row * COLUMNS + column, format);
  }

  remarksIn(area: HostArea): HostRemark[] {
    return this.remarks.filter(({ row, column }) => holdsCell(area, row, column));
  }

  takeRemarksOff(area: HostArea): void {
    this.remarks = this.remarks.filter(({ row, column }) => !holdsCell(area, row, column));
  }

  used(withFormats = false): HostArea | undefined {
    if (this.cells.size === 0 && !(withFormats && this.formats.size > 0)) return undefined;
    const around = (keys: Iterable<number>, bounds: Bounds) => {
      for (const key of keys) grown(bounds, Math.floor(key / COLUMNS), key % COLUMNS);
      return bounds;
    };
    this.known ??= around(this.cells.keys(), { top: Infinity, left: Infinity, bottom: -1, right: -1 });
    const { top, left, bottom, right } = withFormats
      ? around(this.formats.keys(), { ...this.known })
      : this.known;
    return { sheet: this, row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }
}

export function holdsCell(area: HostArea, row: number, column: number): boolean {
  const [down, right] = [row - area.row, column - area.column];
  return down >= 0 && down < area.rows && right >= 0 && right < area.columns;
}

/** What of an area lies inside another, undefined for nothing. */
export function sharedArea(one: HostArea, other: HostArea): HostArea | undefined {
  const row = Math.max(one.row, other.row);
  const column = Math.max(one.column, other.column);
  const rows = Math.min(one.row + one.rows, other.row + other.rows) - row;
  const columns = Math.min(one.column + one.columns, other.column + other.columns) - column;
  return rows > 0 && columns > 0 && one.sheet === other.sheet
    ? { sheet: one.sheet, row, column, rows, columns }
    : undefined;
}

/** What of an area lies outside another: up to four areas. */
export function areaWithout(area: HostArea, other: HostArea): HostArea[] {
  const shared = sharedArea(area, other);
  if (!shared) return [area];
  const right = shared.column + shared.columns;
  const below = shared.row + shared.rows;
  return [
    { ...area, rows: shared.row - area.row },
    { ...area, row: below, rows: area.row + area.rows - below },
    {
      ...area,
      row: shared.row,
      rows: shared.rows,
      columns: shared.column - area.column,
    },
    {
      ...area,
      row: shared.row,
      rows: shared.rows,
      column: right,
      columns: area.column + area.columns - right,
    },
  ].filter(({ rows, columns }) => rows > 0 && columns > 0);
}

interface Bounds {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

function grown(bounds: Bounds, row: number, column: number): Bounds {
  bounds.top = Math.min(bounds.top, row);
  bounds.bottom = Math.max(bounds.bottom, row);
  bounds.left = Math.min(bounds.left, column);
  bounds.right = Math.max(bounds.right, column);
  return bounds;
}

/** One workbook as it stands on the host's side: sheets, cells, formats, names, tables, settings. */
export class HostBook {
  sheets: HostSheet[] = [];
  readonly settings = new Map<string, unknown>();
  /** Names of the whole workbook for cells. */
  readonly names = new Map<string, HostArea>();
  structureLocked = false;
  /** The value of a formula; the host itself does not calculate. */
  calculate: (formula: string) => HostValue = () => 0;
  /** Told of every formula that a range is given, after its cell has its value: fills further cells, if it spills. */
  onFormula: ((sheet: HostSheet, row: number, column: number, formula: string) => void) | undefined;
  private ids = 0;

  nextId(kind: string): string {
    this.ids += 1;
    return `{${kind}-${this.ids}}`;
  }

  addSheet(name: string): HostSheet {
    if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase()))
      throw new HostFault("ItemAlreadyExists", `A resource with the name ${name} exists.`);
    const sheet = new HostSheet(this.nextId("sheet"), name);
    this.sheets.push(sheet);
    return sheet;
  }

  sheet(nameOrId: string): HostSheet {
    const found = this.findSheet(nameOrId);
    if (!found) throw new HostFault("ItemNotFound", "The requested resource doesn't exist.");
    return found;
  }

  findSheet(nameOrId: string): HostSheet | undefined {
    return this.sheets.find(
      (sheet) => sheet.id === nameOrId || sheet.name.toLowerCase() === nameOrId.toLowerCase(),
    );
  }

  deleteSheet(sheet: HostSheet): void {
    sheet.gone = true;
    this.sheets = this.sheets.filter((other) => other !== sheet);
  }

  /** What typing this into a cell makes of it, as Excel does for range.values. */
  typed(input: HostValue, numberFormat = "General"): HostCell {
    if (typeof input === "number") return { value: input, type: "Double" };
    if (typeof input === "boolean") return { value: input, type: "Boolean" };
    if (input === "") return { value: "", type: "Empty" };
    if (input.startsWith("'")) return { value: input.slice(1), type: "String", quoted: true };
    if (numberFormat === "@") return { value: input, type: "String" };
    if (/^[=@]/.test(input) || /^[+-](?![\d.])/.test(input)) {
      const formula = input.startsWith("=") ? input : `=${input}`;
      return { ...valueCell(this.calculate(formula)), formula };
    }
    return valueCell(input);
  }

  /** Keeps everything as it is now; the function that this gives puts it back, as often as it is called. */
  keep(): () => void {
    const sheets = [...this.sheets];
    const kept = sheets.map((sheet) => copyOf({ ...sheet }));
    const { structureLocked } = this;
    const settings = [...this.settings];
    return () => {
      for (const sheet of this.sheets) if (!sheets.includes(sheet)) sheet.gone = true;
      this.sheets = [...sheets];
      sheets.forEach((sheet, index) => Object.assign(sheet, copyOf(kept[index])));
      this.structureLocked = structureLocked;
      this.settings.clear();
      for (const [key, value] of settings) this.settings.set(key, value);
    };
  }

  /** Everything in the workbook as plain data, for a comparison of before and after. */
  snapshot(): unknown {
    return this.sheets.map((sheet) => ({
      name: sheet.name,
      visibility: sheet.visibility,
      cells: [...sheet.cells].sort(([a], [b]) => a - b),
      formats: [...sheet.formats].sort(([a], [b]) => a - b),
      remarks: sheet.remarks
        .map(({ id: _id, ...remark }) => remark)
        .sort((one, other) => one.row - other.row || one.column - other.column),
      names: sheet.names,
      merged: sheet.merged.map(plainArea),
      tables: sheet.tables.map((table) => ({
        name: table.name,
        area: plainArea(table.area),
      })),
      conditionalFormats: sheet.conditionalFormats.map((format) => ({
        ...format,
        areas: format.areas.map(plainArea),
      })),
      charts: sheet.charts.map(({ from, to, series, ...chart }) => ({
        ...chart,
        from: from && plainArea(from),
        to: to && plainArea(to),
        series: series.map(({ values, categories, ...rest }) => ({
          ...rest,
          values: plainArea(values),
          categories: categories && plainArea(categories),
        })),
      })),
      pivots: sheet.pivots.map(({ name, rows, columns, filters, data, refreshed }) => ({
        name,
        refreshed,
        rows,
        columns,
        filters,
        data,
      })),
    }));
  }
}

/** A copy of whatever a sheet holds; sheets that it points to stay the same. */
function copyOf<T>(held: T): T {
  if (typeof held !== "object" || held === null || held instanceof HostSheet) return held;
  if (held instanceof Map) return new Map([...held].map(([key, value]) => [key, copyOf(value)])) as T;
  if (held instanceof Set) return new Set(held) as T;
  if (Array.isArray(held)) return held.map(copyOf) as T;
  return Object.fromEntries(Object.entries(held).map(([key, value]) => [key, copyOf(value)])) as T;
}

export function plainArea({ sheet, ...area }: HostArea): unknown {
  return { sheet: sheet.name, ...area };
}

/** A value that a person or a formula gives a cell, read as Excel reads typed text. */
function valueCell(value: HostValue): HostCell {
  if (typeof value === "number") return { value, type: "Double" };
  if (typeof value === "boolean") return { value, type: "Boolean" };
  if (/^#(N\/A|NAME\?|VALUE!|REF!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|BUSY!|CONNECT!)$/.test(value))
    return { value, type: "Error" };
  if (/^(true|false)$/i.test(value)) return { value: value.toLowerCase() === "true", type: "Boolean" };
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(value)) return { value: Number(value), type: "Double" };
  if (/^[+-]?\d+(\.\d+)?%$/.test(value)) return { value: Number(value.slice(0, -1)) / 100, type: "Double" };
  if (/^\d{1,2}[/-]\d{1,2}([/-]\d{2,4})?$/.test(value)) return { value: 45000, type: "Double" };
  return { value, type: value === "" ? "Empty" : "String" };
}
