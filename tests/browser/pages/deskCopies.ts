import "@univerjs/preset-sheets-core/lib/index.css";
import type { FUniver } from "@univerjs/core/facade";
import { FUNCTIONS } from "../../../src/functions/registry";
import { rewriteOwnSheet, type RewrittenSheet } from "../../../src/workbook/actions/rewriteOwnSheet";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import type { DeskWorkbook } from "../../../src/workbook/desk/deskWorkbook";
import { OpenDesk } from "../../../src/workbook/desk/openDesk";
import { Pace } from "../../../src/workbook/desk/pace";
import { readContent } from "../../../src/workbook/desk/readContent";
import { startEngine } from "../../../src/workbook/desk/startEngine";
import words from "../../../src/desk/engine/words-en";

/** What the tests of saved copies do on a page with the engine alone. */
export interface CopiesPage {
  readonly engine: FUniver;
  desk(): DeskWorkbook;
  openFile(file: string, bytes: readonly number[]): Promise<void>;
  rewrite(content: OwnSheet): Promise<RewrittenSheet>;
  saveCopy(): Promise<{ bytes: number[]; notKept: [string, readonly string[]][] }>;
}

const container = document.createElement("div");
container.style.cssText = "width: 900px; height: 600px";
document.body.append(container);
const engine = startEngine(container, "en", words);
const desk = new OpenDesk(engine, FUNCTIONS, "en", () => undefined);
let opened: DeskWorkbook;

const page: CopiesPage = {
  engine,
  desk: () => opened,
  openFile: async (file, bytes) => {
    const pace = new Pace(undefined);
    const read = new Uint8Array(bytes);
    opened = await desk.open(read, await readContent(file, read, pace), pace);
    await new Promise((resolve) => setTimeout(resolve, 300));
    await opened.calculated();
  },
  rewrite: (content) => rewriteOwnSheet(opened, content),
  saveCopy: async () => {
    await new Promise((resolve) => setTimeout(resolve, 100));
    const { bytes, notKept } = await desk.saveCopy();
    return { bytes: [...bytes], notKept: [...notKept] };
  },
};
Object.assign(window, page);
