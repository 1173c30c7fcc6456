import { isReadSheet } from "../survey/reading/isReadSheet";
import type { SheetArea } from "../survey/reading/sheetArea";
import { WorkbookProblem, type CellChange, type SurveyWorkbook } from "../workbook/surveyWorkbook";
import { areaHasFormulas, patchArea, sameArea } from "./patchArea";
import { readAreas, type ReadingOptions } from "./readAreas";

/** What the sheets of a workbook hold at one moment. */
export interface HeldValues {
  /** Raised by every change of what the sheets hold. */
  readonly version: number;
  readonly areas: readonly SheetArea[];
}

/** Rows of one change that are read alone; after a larger one the sheet is read again. */
const ROWS_PATCHED = 200;
const TRIES = 3;

/**
 * The values of a workbook's sheets, held and kept up to date: of a change only the changed rows are read, and a change
 * that leaves every value as it was raises no version.
 */
export class HeldSheets {
  version = 0;
  private values: HeldValues | undefined;
  private names = "";
  private pending: CellChange[] = [];
  private queue: Promise<unknown> = Promise.resolve();
  private watch: Promise<() => Promise<void>> | undefined;

  /**
   * @param onVersion told when the version was raised
   * @param onColleagues told which sheets colleagues changed while they were read
   */
  constructor(
    private readonly workbook: SurveyWorkbook,
    private readonly onVersion: () => void,
    private readonly onColleagues: (changes: readonly CellChange[]) => void = () => {},
  ) {}

  /** Reads what has changed since the last reading, everything at first; one reading at a time. */
  read(options: ReadingOptions = {}): Promise<HeldValues> {
    const next = this.queue.then(() => this.bringUpToDate(options));
    this.queue = next.catch(() => {});
    return next;
  }

  /** As `read`, and says nothing where nothing was ever read. */
  async look(): Promise<void> {
    if (this.values !== undefined) await this.read();
  }

  /** Ends the watch over the workbook. */
  async stop(): Promise<void> {
    const watch = this.watch;
    this.watch = undefined;
    await (
      await watch
    )?.();
  }

  private async startWatch(): Promise<() => Promise<void>> {
    const stops = [
      await this.workbook.watchCells((change) => {
        this.pending.push(change);
        this.lookSoon();
      }),
      await this.workbook.watchSheets?.(() => this.lookSoon()),
    ];
    return async () => {
      for (const stop of stops) await stop?.();
    };
  }

  private lookSoon(): void {
    if (this.values !== undefined) setTimeout(() => void this.look().catch(() => this.forget()), 0);
  }

  /** After a failed look nobody knows what the sheets hold: whatever is shown is older than that. */
  private forget(): void {
    if (this.values === undefined) return;
    this.values = undefined;
    this.version += 1;
    this.onVersion();
  }

  private async bringUpToDate(options: ReadingOptions): Promise<HeldValues> {
    this.watch ??= this.startWatch();
    await this.watch;
    const met: CellChange[] = [];
    for (let attempt = 1; ; attempt += 1) {
      const changes = this.pending.splice(0);
      const before = this.values;
      try {
        const areas = await this.areasAfter(changes, options);
        if (before === undefined || !sameAreas(before.areas, areas)) {
          this.version += 1;
          this.values = { version: this.version, areas };
        }
      } catch (failure) {
        this.pending.unshift(...changes);
        throw failure;
      }
      if (this.values !== before) this.onVersion();
      const disturbing = this.pending.filter(
        ({ by, sheet }) => by === "colleague" && this.values!.areas.some((area) => area.sheet === sheet),
      );
      if (before === undefined) met.push(...disturbing);
      if (this.pending.length === 0 || (attempt >= TRIES && disturbing.length === 0)) break;
      if (attempt >= TRIES) throw new WorkbookProblem("sheetKeepsChanging", { sheet: disturbing[0].sheet });
    }
    if (met.length > 0) this.onColleagues(met);
    return this.values!;
  }

  private async areasAfter(
    changes: readonly CellChange[],
    options: ReadingOptions,
  ): Promise<readonly SheetArea[]> {
    const [there, hidden] = [await this.workbook.sheetNames(), await this.workbook.hiddenSheets?.()];
    const names = JSON.stringify([there, hidden]);
    if (this.values === undefined || names !== this.names) {
      const areas = await readAreas(this.workbook, options);
      this.names = names;
      return areas;
    }
    if (changes.length === 0) return this.values.areas;
    const areas: SheetArea[] = [];
    for (const area of this.values.areas) areas.push(await this.areaAfter(area, changes));
    const known = new Set(areas.map(({ sheet }) => sheet));
    if (changes.some(({ sheet }) => isReadSheet(sheet) && !known.has(sheet)))
      return readAreas(this.workbook, options);
    return areas;
  }

  private async areaAfter(area: SheetArea, changes: readonly CellChange[]): Promise<SheetArea> {
    const own = changes.filter(({ sheet }) => sheet.toLowerCase() === area.sheet.toLowerCase());
    if (areaHasFormulas(area)) return this.workbook.readSheet(area.sheet);
    if (own.length === 0) return area;
    if (own.some(({ shifts, rowCount }) => shifts === true || rowCount > ROWS_PATCHED))
      return this.workbook.readSheet(area.sheet);
    let patched: SheetArea | undefined = area;
    for (const { firstRow: first, rowCount: count } of own) {
      const rows = { first, count };
      patched = patchArea(patched, await this.workbook.readSheet(area.sheet, { rows }), rows);
      if (patched === undefined) return this.workbook.readSheet(area.sheet);
    }
    return patched;
  }
}

function sameAreas(before: readonly SheetArea[], areas: readonly SheetArea[]): boolean {
  return before.length === areas.length && before.every((area, index) => sameArea(area, areas[index]));
}
