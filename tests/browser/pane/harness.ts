import { HeldSeason } from "../../../src/taskpane/heldSeason";
import { mountPane, type MountedPane, type PaneOptions } from "../../../src/taskpane/mountPane";
import { MemoryWorkbook, type MemoryCell } from "../../workbook/memory/memoryWorkbook";

/** Cells of each sheet by its name, from A1 on. */
export type Sheets = Readonly<Record<string, readonly (readonly MemoryCell[])[]>>;

/** What a test reaches inside the page: a pane over a workbook in memory. */
export interface Harness {
  workbook: MemoryWorkbook;
  pane: MountedPane;
  /** Makes every piece of work that is measured from now on take long, as on a farm of 200,000 cordons. */
  slow(): void;
  mount(sheets: Sheets, options?: PaneOptions): void;
}

declare global {
  interface Window {
    harness: Harness;
    /** Words of the page that was printed last. */
    printed?: string;
    /** Values of the progress bar that were drawn, where a test collects them. */
    steps: Set<string>;
  }
}

window.harness = {
  slow() {
    HeldSeason.prototype.took = () => 60_000;
  },
  mount(sheets: Sheets, options?: PaneOptions) {
    const element = document.getElementById("pane")!;
    this.pane?.unmount();
    this.workbook = new MemoryWorkbook(sheets);
    this.pane = mountPane(element, this.workbook, options);
  },
} as Harness;
