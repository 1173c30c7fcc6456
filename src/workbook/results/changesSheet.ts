import type { CellMend } from "../../survey/checks/mendOf";
import { cellName } from "../../survey/sheets/cellName";
import { isCellError, type CellValue } from "../../survey/sheets/cell";
import { say, type Language } from "../../texts/language";
import { TEXTS } from "../../texts/texts";
import type { OwnSheet } from "../surveyWorkbook";

/** The sheet that lists every cell that a repaired copy holds otherwise than its original. */
export function changesSheet(
  mends: readonly CellMend[],
  { language, file }: { readonly language: Language; readonly file: string },
): OwnSheet {
  const { changes } = TEXTS;
  return {
    sheet: say(changes.sheet, language),
    title: [say(changes.title, language, { file })],
    headers: [changes.where, changes.cell, changes.before, changes.after, changes.sure].map((text) =>
      say(text, language),
    ),
    about: { thing: [say(changes.where, language), say(changes.cell, language)] },
    columns: [{ width: 16 }, { width: 8 }, { width: 20 }, { width: 20 }, { width: 12 }],
    rows: mends.map(({ sheet, row, column, from, to, isCertain }) => [
      sheet,
      cellName(row, column),
      shown(from),
      to,
      say(isCertain ? changes.certain : changes.likely, language),
    ]),
  };
}

function shown(value: CellValue): string | number | boolean | null {
  return isCellError(value) ? value.error : value;
}
