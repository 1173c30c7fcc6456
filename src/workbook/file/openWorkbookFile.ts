import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { WorkbookProblem } from "../surveyWorkbook";
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
  const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    const code = error.code === "ENOENT" ? "noFile" : "unreadableFile";
    throw new WorkbookProblem(code, { file, reason: error.code ?? error.message }, { cause: error });
  });
  return openCsv(file, bytes, limits);
}
