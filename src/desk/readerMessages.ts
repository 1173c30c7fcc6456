import type { Opened } from "../workbook/desk/pace";
import type { FileContent, FileRows } from "../workbook/desk/readContent";

/** Where a file comes from: a sample from the page's host, a file that a person chose, or bytes that are here. */
export type FileSource =
  { readonly sample: string } | { readonly chosen: File } | { readonly bytes: Uint8Array };

/** What the reader is asked for. */
export interface ReaderTask {
  readonly file: string;
  readonly source: FileSource;
  /** Whether it tells of what stands in the cells before the rest is read. */
  readonly rowsFirst: boolean;
}

/** A file with what was read from it. */
export interface ReadFile {
  readonly bytes: Uint8Array;
  readonly content: FileContent;
}

/** What the reader tells: how far it has come, what stands in the cells, at last the file, or why it cannot be read. */
export type ReaderAnswer =
  | { readonly at: Opened }
  | { readonly rows: FileRows }
  | { readonly read: ReadFile }
  | { readonly code: string; readonly facts: Readonly<Record<string, string | number>> }
  | { readonly unforeseen: string };
