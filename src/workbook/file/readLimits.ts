/** What a file may ask of the machine; a file that asks for more is refused before or while it is read. */
export interface ReadLimits {
  /** Parts in the package. */
  readonly parts: number;
  /** Bytes of all parts together, unpacked. */
  readonly unpackedBytes: number;
  /** Times that the unpacked parts may be larger than the file, once they are larger than `freeBytes`. */
  readonly expansion: number;
  /** Unpacked bytes below which no expansion is refused. */
  readonly freeBytes: number;
  /** Characters of all shared texts together. */
  readonly sharedCharacters: number;
  /** Texts that cells share. */
  readonly sharedTexts: number;
  /** Characters of all formulas of a sheet that are stored once for many cells. */
  readonly sharedFormulaCharacters: number;
  /** Names defined in the workbook. */
  readonly names: number;
  /** Formats of cells; a spreadsheet itself takes 65,490. */
  readonly formats: number;
  /** Characters of one cell. */
  readonly cellCharacters: number;
  readonly rows: number;
  readonly columns: number;
  /** Cells of one sheet, counted as last row times last column wherever a whole sheet is held at once. */
  readonly cells: number;
  /** Elements inside one another in a part. */
  readonly depth: number;
}

/** Limits that every workbook of a farm keeps: rows and columns are the spreadsheet's own. */
export const READ_LIMITS: ReadLimits = {
  parts: 5000,
  unpackedBytes: 8 * 1024 ** 3,
  expansion: 200,
  freeBytes: 40 * 1024 ** 2,
  sharedCharacters: 100_000_000,
  sharedTexts: 3_000_000,
  sharedFormulaCharacters: 100_000_000,
  names: 100_000,
  formats: 100_000,
  cellCharacters: 100_000,
  rows: 1_048_576,
  columns: 16_384,
  cells: 60_000_000,
  depth: 100,
};
