import { grouped } from "../../domain/grouped";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { areasOfAddress, cellName, isSameArea, type CellArea } from "../address";
import { layOutOwnSheet, OWN_SHEET_NAME } from "../ownSheet";
import {
  WorkbookProblem,
  type CellChange,
  type CellExtras,
  type CellMark,
  type OwnSheet,
  type OwnSheetWritten,
  type ReadOptions,
  type SurveyWorkbook,
} from "../surveyWorkbook";
import { bytesPackage } from "./bytesPackage";
import { cellStyleNumbers, styleLooks } from "./cellLooks";
import { notesOf, putNotes } from "./cellNotes";
import { withCells, type CellStorage, type FileCellWrite } from "./cellSplices";
import { showsDay, styleKinds } from "./styleKinds";
import { dynamicArrayMark } from "./dynamicArray";
import {
  addContentType,
  addOwnSheet,
  addRelation,
  dropCalculationChain,
  freePart,
  mayEdit,
  PART_TYPES,
  relationsOf,
  removeOwnSheet,
  removeSheetParts,
  type WorkbookNamespaces,
} from "./editWorkbook";
import { freeNumber } from "./freeNumber";
import { flagsXml } from "./flagsXml";
import { flagsOf, keptFlags } from "./keptFlags";
import { hasMarks, isProtectedSheet, markStyle, withMarks } from "./markXml";
import type { RowStep } from "./movedReferences";
import { moveRows } from "./moveRows";
import { openPackage, type OpenWorkbook } from "./openWorkbook";
import { drawingOf, putOwnCharts, removeDrawing } from "./ownCharts";
import { ownSheetXml, ownTableXml } from "./ownSheetXml";
import { PackageEditor } from "./packageEditor";
import { READ_LIMITS, type ReadLimits } from "./readLimits";
import { StyleEditor, type CellLook } from "./styleEditor";
import { worstMarks } from "../worstMarks";
import { MalformedPart } from "./xmlSpans";
import { grownSheetXml, placedTableXml, renamedHeads } from "./tableChanges";
import { sheetTables, type OutlineSheet, type OutlineTable, type WorkbookOutline } from "./workbookOutline";

/** Numbers that tables may have: unsigned ones of 32 bits. */
const MOST_TABLE_IDS = 2 ** 32 - 1;

/**
 * A workbook file held in memory. Every change adds parts or splices into the parts that it concerns; all other parts
 * stay byte for byte what they were. `bytes()` is the file as it stands.
 */
export class FileWorkbook implements SurveyWorkbook {
  readonly host = "file";
  private selection: { sheet: string; row: number; column: number } | undefined;
  private readonly watchers = new Set<(change: CellChange) => void>();

  private constructor(
    readonly file: string,
    private current: Uint8Array,
    private book: OpenWorkbook,
    private readonly limits: ReadLimits,
  ) {}

  /** Opens the bytes of an .xlsx or .xlsm file. */
  static async open(
    file: string,
    bytes: Uint8Array,
    limits: ReadLimits = READ_LIMITS,
  ): Promise<FileWorkbook> {
    return new FileWorkbook(
      file,
      bytes,
      await openPackage(bytesPackage(file, bytes, limits), limits),
      limits,
    );
  }

  /** The file with all changes made so far. */
  bytes(): Uint8Array {
    return this.current;
  }

  async sheetNames(): Promise<string[]> {
    return [...this.book.sheetNames];
  }

  readSheet(sheet: string, options?: ReadOptions): Promise<SheetArea> {
    return this.book.readSheet(sheet, options);
  }

  async writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    const layout = layOutOwnSheet(content);
    const there = this.find(content.sheet);
    if (there && !this.isOwn(there)) throw new WorkbookProblem("notOurs", { sheet: there.name });
    const { name, charts } = await this.change((editor, namespaces) =>
      this.putOwnSheet(editor, namespaces, content, there),
    );
    this.tell({
      sheet: name,
      firstRow: 1,
      firstColumn: 1,
      rowCount: layout.values.length,
      columnCount: layout.columnCount,
      by: "own",
    });
    return { charts };
  }

  private async putOwnSheet(
    editor: PackageEditor,
    namespaces: WorkbookNamespaces,
    content: OwnSheet,
    there: OutlineSheet | undefined,
  ): Promise<{ name: string; charts: number }> {
    if (there && isProtectedSheet(await editor.text(there.part)))
      throw new WorkbookProblem("protectedSheet", { sheet: there.name });
    const sheet = there ?? { name: content.sheet, part: freePart(editor, "xl/worksheets/cordonbook{n}.xml") };
    const table = await this.tableFor(there, content.sheet);
    const former = there ? await relationsOf(editor, there.part) : [];
    const carriedCells = (there && content.carriedCells) ?? [];
    const withNotes = new Map(
      carriedCells
        .filter(({ note }) => note)
        .map(({ from, to }) => [cellName(from.row, from.column), to] as const),
    );
    const formerStyles =
      carriedCells.length > 0 ? cellStyleNumbers(await editor.text(sheet.part)) : undefined;
    const looks = new Map(
      carriedCells.flatMap(({ from, to, look }) => {
        const style = look ? formerStyles?.get(from.row)?.get(from.column) : undefined;
        return style === undefined ? [] : [[cellName(to.row, to.column), { ...to, value: null, style }]];
      }),
    );
    if (there) await removeSheetParts(editor, there.part);
    const { drawing, charts } = await putOwnCharts(
      editor,
      namespaces,
      former.find(({ kind }) => kind === "drawing")?.part,
      content,
      sheet.name,
    );
    const tablePart = freePart(editor, "xl/tables/cordonbook{n}.xml");
    const relations = {
      table: await addRelation(editor, sheet.part, `${namespaces.relations}/table`, tablePart),
      drawing: drawing && (await addRelation(editor, sheet.part, `${namespaces.relations}/drawing`, drawing)),
      frames: await putNotes(editor, namespaces, sheet.part, former, (row, column) =>
        withNotes.get(cellName(row, column)),
      ),
    };
    const xml = await this.styles(editor, (styles) =>
      ownSheetXml(
        content,
        namespaces,
        (wanted: CellLook) => styles.look(wanted),
        (inner) => styles.conditional(inner),
        relations,
        (row, column) => looks.get(cellName(row, column))?.style,
      ),
    );
    const { values, columnCount } = layOutOwnSheet(content);
    const outside = [...looks.values()].filter(
      ({ row, column }) => row > values.length || column > columnCount,
    );
    editor.put(sheet.part, outside.length > 0 ? withCells(xml, outside) : xml);
    editor.put(tablePart, ownTableXml(content, namespaces, table));
    await addContentType(editor, tablePart, PART_TYPES.table);
    if (there) await addContentType(editor, sheet.part, PART_TYPES.worksheet);
    else await addOwnSheet(editor, this.outline, namespaces, sheet);
    return { name: sheet.name, charts };
  }

  async isOwnSheet(sheet: string): Promise<boolean> {
    const there = this.find(sheet);
    return there !== undefined && this.isOwn(there);
  }

  async cellExtras(name: string): Promise<readonly CellExtras[]> {
    const { part } = this.mustFind(name);
    const { stylesPart, workbookPart } = this.outline;
    return this.change(async (editor) => {
      const styles = stylesPart ? styleLooks(await editor.text(stylesPart)) : [];
      const notes = await notesOf(editor.source, workbookPart, part, this.limits);
      const extras = new Map<string, CellExtras>();
      for (const [row, columns] of cellStyleNumbers(await editor.text(part)))
        for (const [column, style] of columns) {
          const { format = "General", dress = "" } = styles[style] ?? {};
          if (format !== "General" || dress !== "")
            extras.set(cellName(row, column), { row, column, note: "", format, dress });
        }
      for (const [place, note] of notes) {
        const [{ firstRow: row, firstColumn: column } = { firstRow: 0, firstColumn: 0 }] =
          areasOfAddress(place);
        extras.set(place, { format: "General", dress: "", ...extras.get(place), row, column, note });
      }
      return [...extras.values()];
    });
  }

  async deleteOwnSheet(sheet: string): Promise<void> {
    const there = this.mustFind(sheet);
    if (!this.isOwn(there)) throw new WorkbookProblem("notOurs", { sheet: there.name });
    await this.change(async (editor) => {
      const drawing = await drawingOf(editor, there.part);
      if (drawing) await removeDrawing(editor, drawing);
      await removeOwnSheet(editor, this.outline, there.name);
    });
  }

  async writeCells(name: string, cells: readonly FileCellWrite[]): Promise<void> {
    const sheet = this.mustFind(name);
    await this.change(async (editor, namespaces) => {
      const xml = await editor.text(sheet.part);
      if (isProtectedSheet(xml)) throw new WorkbookProblem("protectedSheet", { sheet: sheet.name });
      let now = cells;
      for (const { part } of await this.tablesOf(sheet)) {
        const before = await editor.text(part);
        const renamed = renamedHeads(before, now);
        now = renamed.cells;
        if (renamed.xml !== before) editor.put(part, renamed.xml);
      }
      editor.put(sheet.part, await this.withCells(editor, namespaces, xml, now));
      await dropCalculationChain(editor, this.outline);
    });
    for (const { row, column } of cells)
      this.tell({
        sheet: sheet.name,
        firstRow: row,
        firstColumn: column,
        rowCount: 1,
        columnCount: 1,
        by: "own",
      });
  }

  private async withCells(
    editor: PackageEditor,
    namespaces: WorkbookNamespaces,
    xml: string,
    cells: readonly FileCellWrite[],
  ): Promise<string> {
    const { workbookPart, stylesPart, startsIn1904 } = this.outline;
    const days =
      startsIn1904 && stylesPart ? (await styleKinds(editor.source, stylesPart, this.limits)).days : [];
    const isFormatted = new Map<number, boolean>();
    const storage = (styles: StyleEditor | undefined, dynamicArray: number | undefined): CellStorage => ({
      dynamicArray,
      countsFrom1904: (style) => startsIn1904 && (isFormatted.get(style) ?? days[style] ?? false),
      formatted: (style, format) => {
        const number = styles?.formatted(style, format) ?? style;
        isFormatted.set(number, showsDay(format));
        return number;
      },
    });
    const mark = cells.some(({ fills }) => fills !== undefined)
      ? await dynamicArrayMark(editor, workbookPart, namespaces)
      : undefined;
    return cells.some(({ format }) => format !== undefined) && stylesPart
      ? this.styles(editor, (styles) => withCells(xml, cells, storage(styles, mark)))
      : withCells(xml, cells, storage(undefined, mark));
  }

  /**
   * Puts a table of a sheet where it is now. One that only reaches further down takes the styles, data validations and
   * conditional formats of its last row with it; one with more or fewer columns stays as it was.
   */
  async placeTable(sheetName: string, tableName: string, area: CellArea): Promise<void> {
    const sheet = this.mustFind(sheetName);
    const table = (await this.tablesOf(sheet)).find(({ name }) => name === tableName);
    const [before] = areasOfAddress(table?.ref ?? "");
    const sizes = [before, area].map((each) => each && each.lastColumn - each.firstColumn);
    if (!table || sizes[0] !== sizes[1] || isSameArea(before, area)) return;
    const hasGrown =
      area.firstRow === before.firstRow &&
      area.firstColumn === before.firstColumn &&
      area.lastRow > before.lastRow;
    await this.change(async (editor) => {
      editor.put(table.part, placedTableXml(await editor.text(table.part), area));
      if (!hasGrown) return;
      const grown = { ...before, newLastRow: area.lastRow };
      editor.put(sheet.part, grownSheetXml(await editor.text(sheet.part), grown));
    });
  }

  /** Inserts and deletes rows of a sheet with all that goes with them; false, with nothing changed, where it cannot. */
  moveRows(sheetName: string, steps: readonly RowStep[]): Promise<boolean> {
    const sheet = this.mustFind(sheetName);
    return this.change(async (editor) => {
      if (!(await moveRows(editor, this.outline, sheet, steps))) return false;
      await dropCalculationChain(editor, this.outline);
      return true;
    });
  }

  private tablesOf(sheet: OutlineSheet): Promise<OutlineTable[]> {
    return sheetTables(bytesPackage(this.file, this.current, this.limits), sheet, this.limits);
  }

  async selectCell(sheet: string, row: number, column: number): Promise<void> {
    this.selection = { sheet: this.mustFind(sheet).name, row, column };
  }

  async selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined> {
    return this.selection;
  }

  async markCells(marks: readonly CellMark[]): Promise<void> {
    for (const { sheet } of marks) this.mustFind(sheet);
    const bySheet = grouped(worstMarks(marks), ({ sheet }) => sheet.toLowerCase());
    await this.change(async (editor) => {
      const sheets: { sheet: OutlineSheet; xml: string; marks: readonly CellMark[] }[] = [];
      for (const sheet of this.worksheets()) {
        const wanted = bySheet.get(sheet.name.toLowerCase()) ?? [];
        const xml = await editor.text(sheet.part);
        if (wanted.length === 0 && !hasMarks(xml)) continue;
        if (isProtectedSheet(xml)) throw new WorkbookProblem("protectedSheet", { sheet: sheet.name });
        sheets.push({ sheet, xml, marks: wanted });
      }
      if (sheets.length === 0) return;
      const texts = await this.styles(editor, (styles) =>
        sheets.map(({ xml, marks: wanted }) =>
          withMarks(xml, wanted, (severity) => styles.conditional(markStyle(severity))),
        ),
      );
      sheets.forEach(({ sheet }, index) => editor.put(sheet.part, texts[index]));
    });
  }

  async readFlag(key: string): Promise<string | undefined> {
    return (await this.book.readFlags()).get(key);
  }

  async readFlags(prefix: string): Promise<ReadonlyMap<string, string>> {
    return new Map([...(await this.book.readFlags())].filter(([key]) => key.startsWith(prefix)));
  }

  async writeFlag(key: string, value: string | undefined): Promise<void> {
    await this.change(async (editor, namespaces) => {
      const kept = await keptFlags(editor.source, this.outline.workbookPart, this.limits);
      if (flagsOf(kept).get(key) === value) return;
      const own = new Map(kept.own);
      if (value !== undefined || kept.ofExcel.has(key)) own.set(key, value);
      else own.delete(key);
      const part = kept.part ?? freePart(editor, "customXml/cordonbook{n}.xml");
      editor.put(part, flagsXml(own));
      if (kept.part !== undefined) return;
      await addRelation(editor, this.outline.workbookPart, `${namespaces.relations}/customXml`, part);
      await addContentType(editor, part, PART_TYPES.customXml);
    });
  }

  async watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>> {
    const watcher = (change: CellChange) => onChange(change);
    this.watchers.add(watcher);
    return async () => {
      this.watchers.delete(watcher);
    };
  }

  private get outline(): WorkbookOutline {
    return this.book.outline!;
  }

  private worksheets(): OutlineSheet[] {
    return this.outline.sheets.filter(({ kind }) => kind === "worksheet");
  }

  private find(name: string): OutlineSheet | undefined {
    return this.outline.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }

  private mustFind(name: string): OutlineSheet {
    const found = this.find(name);
    if (found?.kind !== "worksheet") throw new WorkbookProblem("noSheet", { sheet: name });
    return found;
  }

  private isOwn(sheet: OutlineSheet): boolean {
    return this.outline.names.some((name) => name.name === OWN_SHEET_NAME && name.sheet === sheet.name);
  }

  /** Runs a change of the package and takes it over; a part that is not understood is named. */
  private async change<T>(
    work: (editor: PackageEditor, namespaces: WorkbookNamespaces) => Promise<T>,
  ): Promise<T> {
    const editor = new PackageEditor(this.file, this.current, this.limits);
    try {
      const result = await work(editor, await mayEdit(editor, this.outline));
      if (editor.changedParts.size > 0) await this.take(editor);
      return result;
    } catch (error) {
      if (!(error instanceof MalformedPart)) throw error;
      const facts = { file: this.file, part: editor.lastPart };
      throw new WorkbookProblem("layoutUnknown", facts, { cause: error });
    }
  }

  /** Runs something that needs cell styles and keeps those that it added. */
  private async styles<T>(editor: PackageEditor, use: (styles: StyleEditor) => T): Promise<T> {
    const { stylesPart } = this.outline;
    if (!stylesPart) throw new WorkbookProblem("layoutUnknown", { file: this.file, part: "styles" });
    const before = await editor.text(stylesPart);
    const styles = new StyleEditor(this.file, stylesPart, before);
    const result = use(styles);
    const after = styles.text();
    if (after !== before) editor.put(stylesPart, after);
    return result;
  }

  /** Id and name of a table that no other table of the workbook has. */
  private async tableFor(
    there: OutlineSheet | undefined,
    sheetName: string,
  ): Promise<{ id: number; name: string }> {
    const ids: number[] = [];
    const names = new Set(this.outline.names.map(({ name }) => name.toLowerCase()));
    for (const sheet of this.worksheets())
      for (const table of await this.tablesOf(sheet)) {
        if (sheet === there) return { id: table.id, name: table.name };
        ids.push(table.id);
        names.add(table.name.toLowerCase());
      }
    const plain = `Cordonbook_${sheetName.normalize("NFD").replace(/[^A-Za-z0-9]+/g, "_")}`;
    let name = plain;
    for (let n = 2; names.has(name.toLowerCase()); n++) name = `${plain}_${n}`;
    return { id: freeNumber(ids, MOST_TABLE_IDS), name };
  }

  /** Takes over what an editor made, once it can be read again. */
  private async take(editor: PackageEditor): Promise<void> {
    const bytes = editor.bytes();
    this.book = await openPackage(bytesPackage(this.file, bytes, this.limits), this.limits);
    this.current = bytes;
  }

  private tell(change: CellChange): void {
    for (const watcher of [...this.watchers]) watcher(change);
  }
}
