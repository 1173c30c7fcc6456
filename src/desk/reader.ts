import { Pace } from "../workbook/desk/pace";
import { readContent, type FileRows } from "../workbook/desk/readContent";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import type { FileSource, ReaderAnswer, ReaderTask } from "./readerMessages";

/** Bytes of the largest file that is taken into memory. */
const MOST_BYTES = 256 * 1024 ** 2;
/** Milliseconds between two tellings of how far it has come. */
const TELLS_EVERY = 100;

const scope = globalThis as unknown as {
  onmessage: (event: MessageEvent<ReaderTask>) => void;
  postMessage(answer: ReaderAnswer, moved?: Transferable[]): void;
};

scope.onmessage = ({ data }) => void answer(data);

/** Reads one file, beside the page, which goes on drawing and taking input. */
async function answer({ file, source, rowsFirst }: ReaderTask): Promise<void> {
  try {
    const bytes = await bytesOf(file, source);
    const pace = new Pace(undefined, TELLS_EVERY);
    pace.onProgress = (at) => scope.postMessage({ at });
    const onRows = rowsFirst ? (rows: FileRows) => scope.postMessage({ rows }) : undefined;
    const content = await readContent(file, bytes, pace, onRows);
    scope.postMessage({ read: { bytes, content } }, [bytes.buffer]);
  } catch (problem) {
    if (problem instanceof WorkbookProblem)
      return scope.postMessage({ code: problem.code, facts: problem.facts });
    scope.postMessage({ unforeseen: problem instanceof Error ? problem.message : String(problem) });
  }
}

async function bytesOf(file: string, source: FileSource): Promise<Uint8Array> {
  if ("bytes" in source) return source.bytes;
  if ("chosen" in source) {
    if (source.chosen.size > MOST_BYTES) throw new WorkbookProblem("tooLargeToHold", { file });
    return new Uint8Array(await source.chosen.arrayBuffer());
  }
  const response = await fetch(source.sample);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
}
