import { Pace } from "../workbook/desk/pace";
import type { FileRows } from "../workbook/desk/readContent";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import type { FileSource, ReaderAnswer, ReaderTask, ReadFile } from "./readerMessages";
import { sampleFile } from "./sampleFile";

/** A file on its way to the page. */
export interface Reading {
  readonly file: string;
  /** Stops it. */
  readonly control: AbortController;
  /** Follows its opening. */
  readonly pace: Pace;
  readonly read: Promise<ReadFile>;
  /** What stands in the cells, where it was asked for first; never, where it cannot be read. */
  readonly rows: Promise<FileRows>;
}

/**
 * Begins to read a file in a thread of its own. Reading rejects with a WorkbookProblem with one of the codes of
 * src/texts/fileProblems.ts where the file cannot be read, with the reason of `control` where it was stopped, and with an
 * Error where its bytes did not arrive.
 */
export function readFile(file: string, source: FileSource, rowsFirst = false): Reading {
  const control = new AbortController();
  const pace = new Pace(control.signal);
  const reader = new Worker("reader.js");
  let tellRows: (rows: FileRows) => void;
  const rows = new Promise<FileRows>((resolve) => (tellRows = resolve));
  const read = new Promise<ReadFile>((resolve, reject) => {
    control.signal.addEventListener("abort", () => reject(control.signal.reason));
    reader.onerror = ({ message }) => reject(new Error(message));
    reader.onmessage = ({ data }: MessageEvent<ReaderAnswer>) => {
      if ("at" in data) pace.tell(data.at);
      else if ("rows" in data) tellRows(data.rows);
      else if ("read" in data) resolve(data.read);
      else reject("code" in data ? new WorkbookProblem(data.code, data.facts) : new Error(data.unforeseen));
    };
  });
  const task: ReaderTask = { file, source, rowsFirst };
  reader.postMessage(task);
  // Whoever opens it is told of a failure; until then nobody listens.
  read.catch(() => {}).finally(() => reader.terminate());
  return { file, control, pace, read, rows };
}

/**
 * Begins to read a sample.
 *
 * @param id its name in the page's address
 */
export function readSample(id: string, rowsFirst = false): Reading {
  const file = sampleFile(id);
  return readFile(file, { sample: new URL(`sample-workbooks/${file}`, document.baseURI).href }, rowsFirst);
}
