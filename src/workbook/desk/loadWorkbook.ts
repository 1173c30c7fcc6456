import type { IStyleData } from "@univerjs/core";
import { bytesPackage } from "../file/bytesPackage";
import { cellStyles } from "./cellStyles";
import { PAGE_LIMITS, readContent, type FileContent } from "./readContent";

/** A file, ready to be put into the grid. */
export interface LoadedWorkbook extends Omit<FileContent, "stylesPart"> {
  readonly styles: readonly IStyleData[];
}

/**
 * A file's content with its cell styles in the engine's words.
 *
 * @param bytes the whole file
 * @throws WorkbookProblem when the styles cannot be read
 */
export async function withStyles(
  { stylesPart, ...content }: FileContent,
  bytes: Uint8Array,
): Promise<LoadedWorkbook> {
  if (stylesPart === undefined) return { ...content, styles: [] };
  const source = bytesPackage(content.file, bytes, PAGE_LIMITS);
  return { ...content, styles: await cellStyles(source, stylesPart, PAGE_LIMITS) };
}

/**
 * Reads a workbook or csv file with what its sheets look like.
 *
 * @throws WorkbookProblem with one of the codes of src/texts/fileProblems.ts when the file cannot be read
 */
export async function loadWorkbook(file: string, bytes: Uint8Array): Promise<LoadedWorkbook> {
  return withStyles(await readContent(file, bytes), bytes);
}
