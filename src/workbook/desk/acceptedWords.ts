import { findTable, HEADER_SEARCH_ROWS } from "../../survey/reading/findTable";
import { plainHeader } from "../../survey/sheets/column";
import { LANGUAGES, type Language } from "../../texts/language";
import { cellValueOf } from "./cellData";
import type { FWorksheet } from "./fWorkbook";

/** The words that a cell of the survey may hold, and what its column is for. */
export interface AcceptedWords {
  readonly words: readonly string[];
  readonly help: string;
}

/**
 * What may be typed into a cell below the head of a column with words of its own; undefined for any other cell. The words
 * are in the language of the head.
 */
export function acceptedWords(
  sheet: FWorksheet,
  row: number,
  column: number,
  language: Language,
): AcceptedWords | undefined {
  const cells = sheet.getSheet().getCellMatrix();
  const last = Math.min(HEADER_SEARCH_ROWS, row);
  const width = cells.getRange().endColumn + 1;
  const values = Array.from({ length: last }, (_, at) =>
    Array.from({ length: width }, (_cell, index) => cellValueOf(cells.getValue(at, index))),
  );
  const area = { sheet: sheet.getSheetName(), firstRow: 1, firstColumn: 1, values, formulaAt: () => null };
  const found = findTable(area);
  const [known] = [...(found?.columns ?? [])].find(([, position]) => position === column) ?? [];
  if (!found || !known?.choices) return undefined;
  const head = plainHeader(String(values[found.headerIndex][column]));
  const spoken = LANGUAGES.find((each) => plainHeader(known.header[each]) === head) ?? language;
  return { words: known.choices.map(({ word }) => word[spoken]), help: known.help[language] };
}
