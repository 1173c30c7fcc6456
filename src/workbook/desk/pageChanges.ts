import {
  ICommandService,
  IResourceManagerService,
  UniverInstanceType,
  type Injector,
  type IStyleData,
} from "@univerjs/core";
import type { FWorkbook } from "./fWorkbook";
import { holdsCell, type CellArea } from "../address";
import { insertedAreas, movedArea, movedFormula, movedRow, type RowStep } from "../file/movedReferences";
import type { LoadedWorkbook } from "./loadWorkbook";
import type { LoadedSheet } from "./readContent";
import { cellArea, styleAt, type Area } from "./sheetLook";

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

const ROW_STEPS: Readonly<Record<string, RowStep["kind"]>> = {
  "sheet.mutation.insert-row": "inserted",
  "sheet.mutation.remove-rows": "deleted",
};

/** Something that the engine ran, and where. */
interface Step {
  readonly id: string;
  readonly range: Area;
}

const NAMES = "SHEET_DEFINED_NAME_PLUGIN";

/** Where the engine keeps what stands beside the cells; what a plugin says of itself is told apart by sheet. */
const RESOURCES: Readonly<Record<string, PageChange>> = {
  SHEET_NOTE_PLUGIN: "notes",
  [NAMES]: "names",
  SHEET_FILTER_PLUGIN: "filters",
  SHEET_TABLE_PLUGIN: "filters",
  SHEET_RANGE_PROTECTION_PLUGIN: "protection",
  SHEET_WORKSHEET_PROTECTION_PLUGIN: "protection",
};

interface SheetState {
  readonly id: string;
  readonly name: string;
  readonly merged: readonly CellArea[];
  /** Height and hiding by row from 1, for rows that have them. */
  readonly rows: readonly (readonly [row: number, size: string])[];
  readonly frozenRows: number;
  /** Columns, and what goes for the whole sheet. */
  readonly others: string;
  readonly tables: readonly (readonly [name: string, head: CellArea])[];
}

/** What was done to a workbook on the page beside the contents of its cells, found by how it was when it was opened. */
export class PageChanges {
  private readonly steps = new Map<string, Step[]>();
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
      const { unitId, subUnitId, range } = (params ?? {}) as Step & { unitId: string; subUnitId: string };
      if (opposite === undefined || unitId !== workbook.getId()) return;
      const steps = this.steps.get(subUnitId) ?? [];
      this.steps.set(subUnitId, steps);
      const last = steps[steps.length - 1];
      if (last?.id === opposite && JSON.stringify(last.range) === JSON.stringify(range)) steps.pop();
      else steps.push({ id, range });
    });
  }

  /** The sheets that rows were inserted into or deleted from, and nothing else moved. */
  movedRows(): Map<string, RowStep[]> {
    const moved = new Map<string, RowStep[]>();
    for (const { id, name } of this.states()) {
      const steps = this.steps.get(id) ?? [];
      const isKnown = this.sheets.some((sheet) => sheet.id === id && sheet.name === name);
      if (steps.length > 0 && isKnown && steps.every((step) => step.id in ROW_STEPS))
        moved.set(
          name,
          steps.map(({ id: step, range }) => ({
            kind: ROW_STEPS[step],
            first: range.startRow + 1,
            count: range.endRow - range.startRow + 1,
          })),
        );
    }
    return moved;
  }

  /**
   * What was done, with the names of the sheets where; sheets of ours are written anew and do not count.
   *
   * @param followed rows that were inserted and deleted in the file too, by sheet
   */
  list(
    loaded: LoadedWorkbook,
    followed: ReadonlyMap<string, readonly RowStep[]>,
    isOwn: (sheet: string) => boolean,
  ): Map<PageChange, string[]> {
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
      const steps = followed.get(sheet.name);
      const hasMoved = !steps && (this.steps.get(sheet.id) ?? []).length > 0;
      if (hasMoved) note("moved", sheet.name);
      else if (sizes(before, steps) !== sizes(sheet, [], steps)) note("sizes", sheet.name);
      if (!hasMoved && tables(before, steps) !== tables(sheet)) note("tables", sheet.name);
      const source = loaded.sheets.find(({ name }) => name === sheet.name);
      if (source && !hasMoved && this.looksDiffer(sheet.id, source, loaded.styles)) note("looks", sheet.name);
    }
    const stayed = (list: readonly SheetState[], others: readonly SheetState[]) =>
      list.filter(({ id }) => others.some((other) => other.id === id)).map(({ id }) => id);
    if (stayed(this.sheets, now).join() !== stayed(now, this.sheets).join()) note("movedSheets", "");
    for (const [name, data] of this.kept()) {
      const before = this.resources.get(name) ?? "";
      const same =
        name === NAMES && followed.size > 0 ? namesOf(data) === namesOf(before, followed) : data === before;
      if (!same) note(RESOURCES[name], "");
    }
    return found;
  }

  private states(): SheetState[] {
    const { sheetOrder, sheets } = this.workbook.getWorkbook().getSnapshot();
    return sheetOrder.map((id) => {
      const { name = "", mergeData, columnData, rowData, freeze, hidden, showGridlines } = sheets[id];
      const columns = Object.entries(columnData ?? {}).filter(([, column]) => column);
      const subTables = this.workbook.getSheetBySheetId(id)?.getSubTableInfos() ?? [];
      return {
        id,
        name,
        merged: (mergeData ?? []).map(cellArea),
        rows: Object.entries(rowData ?? {}).flatMap(([at, row]) =>
          row && (row.hd || row.ia === 0) ? [[Number(at) + 1, `${row.h} ${row.hd ?? 0}`] as const] : [],
        ),
        frozenRows: freeze?.ySplit ?? 0,
        others: JSON.stringify([
          columns.map(([at, column]) => [at, column?.w, column?.hd ?? 0]),
          freeze?.xSplit,
          [hidden ?? 0, showGridlines ?? 1],
        ]),
        tables: subTables.map(({ name: table, range }) => [
          table,
          cellArea({ ...range, endRow: range.startRow }),
        ]),
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
        const style = styleAt(look, row, column);
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

/** Widths, heights, merged cells and frozen panes, as they are after steps; rows that came with other steps left out. */
function sizes(
  { merged, rows, frozenRows, others }: SheetState,
  steps: readonly RowStep[] = [],
  arrived: readonly RowStep[] = [],
): string {
  const isNew = insertedAreas(arrived);
  const frozen = { firstRow: 1, lastRow: frozenRows, firstColumn: 1, lastColumn: 1 };
  return JSON.stringify([
    merged.map((area) => movedArea(area, steps)),
    rows
      .flatMap(([at, size]) => {
        const row = movedRow(at, steps);
        return row === undefined || isNew.some((area) => holdsCell(area, row, 1)) ? [] : [`${row} ${size}`];
      })
      .sort(),
    frozenRows === 0 ? 0 : movedArea(frozen, steps)?.lastRow,
    others,
  ]);
}

/** Tables by name and the place of their heads, as they are after steps. */
function tables(state: SheetState, steps: readonly RowStep[] = []): string {
  return JSON.stringify(state.tables.map(([name, head]) => [name, movedArea(head, steps)]));
}

/** Defined names with what they stand for, after rows were inserted and deleted. */
function namesOf(data: string, followed: ReadonlyMap<string, readonly RowStep[]> = new Map()): string {
  type Kept = Record<string, { name: string; formulaOrRefString: string }>;
  return Object.values(JSON.parse(data || "{}") as Kept)
    .map(({ name, formulaOrRefString }) => {
      const moved = [...followed].reduce(
        (formula, [sheet, steps]) => movedFormula(formula, { sheet, isOn: false, steps }),
        formulaOrRefString,
      );
      return `${name} ${moved.replace(/[='$]/g, "")}`;
    })
    .sort()
    .join("\n");
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
