import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import { WorkbookProblem } from "../surveyWorkbook";
import { bytesSource } from "./csvSource";
import { nodePackage } from "./nodePackage";
import { isCsvName, openCsv, openPackage, type OpenWorkbook } from "./openWorkbook";
import { READ_LIMITS, type ReadLimits } from "./readLimits";

/**
 * Opens a workbook (.xlsx, .xlsm) or csv file on disk for reading.
 *
 * @throws WorkbookProblem with one of the codes of src/texts/fileProblems.ts when the file cannot be read.
 */
export async function openWorkbookFile(
  path: string,
  limits: ReadLimits = READ_LIMITS,
): Promise<OpenWorkbook> {
  if (!isCsvName(path)) return openPackage(await nodePackage(path, limits), limits);
  const file = basename(path);
  const status = await stat(path).catch((error: NodeJS.ErrnoException) => unreadable(file, error));
  if (status.isFile()) return openCsv({ file, chunks: () => fileChunks(path, file) }, limits);
  const onceOnly = await readFile(path).catch((error: NodeJS.ErrnoException) => unreadable(file, error));
  return openCsv(bytesSource(file, onceOnly), limits);
}

async function* fileChunks(path: string, file: string): AsyncGenerator<Uint8Array, void, void> {
  try {
    yield* createReadStream(path) as AsyncIterable<Uint8Array>;
  } catch (error) {
    unreadable(file, error as NodeJS.ErrnoException);
  }
}

function unreadable(file: string, error: NodeJS.ErrnoException): never {
  const code = error.code === "ENOENT" ? "noFile" : "unreadableFile";
  throw new WorkbookProblem(code, { file, reason: error.code ?? error.message }, { cause: error });
}
