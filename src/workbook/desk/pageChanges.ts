import {
  ICommandService,
  IResourceManagerService,
  UniverInstanceType,
  type Injector,
  type IStyleData,
} from "@univerjs/core";
import type { FWorkbook } from "./fWorkbook";
import type { LoadedSheet, LoadedWorkbook } from "./loadWorkbook";

/** What can be done on the page beside the contents of cells, and no file takes over. */
export type PageChange =
  | "addedSheets"
  | "deletedSheets"
  | "movedSheets"
  | "moved"
  | "looks"
  | "sizes"
  | "notes"
  | "tables"
  | "names"
  | "filters"
  | "protection";

/** What the engine runs when rows or columns move, and what takes it back. */
const OPPOSITES: Readonly<Record<string, string>> = {
  "sheet.mutation.insert-row": "sheet.mutation.remove-rows",
  "sheet.mutation.remove-rows": "sheet.mutation.insert-row",
  "sheet.mutation.insert-col": "sheet.mutation.remove-col",
  "sheet.mutation.remove-col": "sheet.mutation.insert-col",
  "sheet.mutation.move-rows": "sheet.mutation.move-rows",
  "sheet.mutation.move-columns": "sheet.mutation.move-columns",
};

/** Where the engine keeps what stands beside the cells; what a plugin says of itself is told apart by sheet. */
const RESOURCES: Readonly<Record<string, PageChange>> = {
  SHEET_NOTE_PLUGIN: "notes",
  SHEET_DEFINED_NAME_PLUGIN: "names",
  SHEET_FILTER_PLUGIN: "filters",
  SHEET_TABLE_PLUGIN: "filters",
  SHEET_RANGE_PROTECTION_PLUGIN: "protection",
  SHEET_WORKSHEET_PROTECTION_PLUGIN: "protection",
};

interface SheetState {
  readonly id: string;
  readonly name: string;
  readonly sizes: string;
  readonly tables: string;
}

/** What was done to a workbook on the page beside the contents of its cells, found by how it was when it was opened. */
export class PageChanges {
  private readonly steps = new Map<string, string[]>();
  private readonly sheets: readonly SheetState[];
  private readonly resources: ReadonlyMap<string, string>;

  constructor(
    private readonly workbook: FWorkbook,
    private readonly injector: Injector,
  ) {
    this.sheets = this.states();
    this.resources = this.kept();
    injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      const opposite = OPPOSITES[id];
      const { unitId, subUnitId, range } = (params ?? {}) as Record<string, string>;
      if (opposite === undefined || unitId !== workbook.getId()) return;
      const steps = this.steps.get(subUnitId) ?? [];
      this.steps.set(subUnitId, steps);
      const place = JSON.stringify(range);
      if (steps[steps.length - 1] === `${opposite} ${place}`) steps.pop();
      else steps.push(`${id} ${place}`);
    });
  }

  /** What was done, with the names of the sheets where; sheets of ours are written anew and do not count. */
  list(loaded: LoadedWorkbook, isOwn: (sheet: string) => boolean): Map<PageChange, string[]> {
    const found = new Map<PageChange, string[]>();
    const note = (what: PageChange, sheet: string) => {
      const sheets = found.get(what) ?? [];
      if (!sheets.includes(sheet)) found.set(what, [...sheets, sheet]);
    };
    const now = this.states();
    for (const { id, name } of this.sheets)
      if (!now.some((sheet) => sheet.id === id) && !isOwn(name)) note("deletedSheets", name);
    for (const sheet of now) {
      if (isOwn(sheet.name)) continue;
      const before = this.sheets.find(({ id }) => id === sheet.id);
      if (before?.name !== sheet.name) {
        note("addedSheets", sheet.name);
        continue;
      }
      const hasMoved = (this.steps.get(sheet.id) ?? []).length > 0;
      if (hasMoved) note("moved", sheet.name);
      else if (before.sizes !== sheet.sizes) note("sizes", sheet.name);
      if (!hasMoved && before.tables !== sheet.tables) note("tables", sheet.name);
      const source = loaded.sheets.find(({ name }) => name === sheet.name);
      if (source && !hasMoved && this.looksDiffer(sheet.id, source, loaded.styles)) note("looks", sheet.name);
    }
    const stayed = (list: readonly SheetState[], others: readonly SheetState[]) =>
      list.filter(({ id }) => others.some((other) => other.id === id)).map(({ id }) => id);
    if (stayed(this.sheets, now).join() !== stayed(now, this.sheets).join()) note("movedSheets", "");
    for (const [name, data] of this.kept())
      if (data !== (this.resources.get(name) ?? "")) note(RESOURCES[name], "");
    return found;
  }

  private states(): SheetState[] {
    const { sheetOrder, sheets } = this.workbook.getWorkbook().getSnapshot();
    return sheetOrder.map((id) => {
      const { name = "", mergeData, columnData, rowData, freeze, hidden, showGridlines } = sheets[id];
      const rows = Object.entries(rowData ?? {}).filter(([, row]) => row && (row.hd || row.ia === 0));
      const columns = Object.entries(columnData ?? {}).filter(([, column]) => column);
      const tables = this.workbook.getSheetBySheetId(id)?.getSubTableInfos() ?? [];
      return {
        id,
        name,
        sizes: JSON.stringify([
          mergeData,
          columns.map(([at, column]) => [at, column?.w, column?.hd ?? 0]),
          rows.map(([at, row]) => [at, row?.h, row?.hd ?? 0]),
          [freeze?.xSplit, freeze?.ySplit],
          [hidden ?? 0, showGridlines ?? 1],
        ]),
        tables: JSON.stringify(
          tables.map(({ name: table, range }) => [table, range.startRow, range.startColumn, range.endColumn]),
        ),
      };
    });
  }

  private kept(): Map<string, string> {
    const resources = this.injector
      .get(IResourceManagerService)
      .getResources(this.workbook.getId(), UniverInstanceType.UNIVER_SHEET);
    return new Map(
      resources
        .filter(({ name }) => name in RESOURCES)
        .map(({ name, data }) => [
          name,
          name === "SHEET_TABLE_PLUGIN" ? filtersOf(data) : data.replace(/^(?:\{\}|\[\])$/, ""),
        ]),
    );
  }

  /** True where a cell looks otherwise than in the file, number formats apart; rows that a table took in look as it does. */
  private looksDiffer(
    id: string,
    { rows, look, tables }: LoadedSheet,
    styles: readonly IStyleData[],
  ): boolean {
    const sheet = this.workbook.getSheetBySheetId(id)!;
    const known = this.workbook.getWorkbook().getStyles();
    const grown = sheet.getSubTableInfos().filter(({ name }) => tables.some((table) => table.name === name));
    const filled = new Set(rows.map(({ number }) => number - 1));
    let differs = false;
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        const style = look?.styleAt(row, column) ?? 0;
        if (!cell?.s || cell.s === `style-${style}`) return;
        const seen = plainLook(known.getStyleByCell(cell) ?? {});
        if (seen === "{}" || seen === plainLook(styles[style] ?? {}) || seen === plainLook(styles[0] ?? {}))
          return;
        const {
          endRow = -1,
          startColumn = 0,
          endColumn = -1,
        } = grown.find(({ range }) => row <= range.endRow)?.range ?? {};
        if (!filled.has(row) && row <= endRow && column >= startColumn && column <= endColumn) return;
        differs = true;
        return false;
      });
    return differs;
  }
}

/** The filters among what the engine keeps of tables. */
function filtersOf(data: string): string {
  type Kept = Record<string, { tables: { filters: { tableColumnFilterList: unknown[] } }[] }>;
  const filters = Object.values(JSON.parse(data || "{}") as Kept).flatMap(({ tables }) =>
    tables.flatMap((table) => table.filters.tableColumnFilterList.filter(Boolean)),
  );
  return filters.length === 0 ? "" : JSON.stringify(filters);
}

/** A style without its number format, in one spelling. */
function plainLook({ n: _format, ...style }: IStyleData): string {
  return JSON.stringify(
    Object.entries(style)
      .filter(([, value]) => value !== null && value !== undefined)
      .sort(([one], [other]) => one.localeCompare(other)),
  ).replace(/^\[\]$/, "{}");
}
