import { say, type Language } from "../../texts/language";
import { FAULT_WORDS, USED_ROWS } from "../../texts/usedRows";
import { SHEETS } from "../sheets/sheets";
import type { LeftOut, RowsUsed } from "./usedRows";

/**
 * One sentence with the rows a result is worked out from and those left out, the same wherever the result is shown.
 *
 * @example
 * usedSentence({ rows: 40, used: 16, leftOut: [{ column: "positions", reason: "toCount", rows: 24, first: { sheet: "Cordons", sheetRow: 18 } }] }, "en") // "Worked out from 16 of 40 rows of the Cordons sheets. Left out: 24 still to be counted (first in Cordons, row 18)."
 * usedSentence({ rows: 40, used: 37, leftOut: [{ column: "liveSpurs", reason: "outside", rows: 1, first: { sheet: "Cordons", sheetRow: 9 } }, { column: "vine", reason: "sameVine", rows: 2, first: { sheet: "Cordons", sheetRow: 10 } }] }, "en") // "Worked out from 37 of 40 rows of the Cordons sheets. Left out: 1 where Live spurs is outside its limits (first in Cordons, row 9); 2 beside those on the same vines."
 */
export function usedSentence(account: RowsUsed, language: Language): string {
  const { leftOut } = account;
  if (leftOut.length === 0) return usedOfAll(account, language);
  const causes = leftOut.map((cause) => causeWords(cause, language)).join("; ");
  return `${usedOfAll(account, language)} ${say(USED_ROWS.leftOut, language, { leftOut: causes })}`;
}

/** How many of the rows a result is worked out from, without why not the others. */
export function usedOfAll({ rows, used, leftOut }: RowsUsed, language: Language): string {
  return say(leftOut.length === 0 ? USED_ROWS.all : USED_ROWS.some, language, { used, rows });
}

/** Why some rows are left out, and where the first of them stands. */
export function causeWords({ column, reason, rows, first }: LeftOut, language: Language): string {
  if (reason === "sameVine") return say(USED_ROWS.sameVine, language, { rows });
  if (reason === "toCount")
    return say(USED_ROWS.toCount, language, { rows, sheet: first.sheet, row: first.sheetRow });
  const name = SHEETS.cordons.columns.find(({ id }) => id === column)!.header[language];
  return say(USED_ROWS.column, language, {
    rows,
    column: name,
    reason: FAULT_WORDS[reason][language],
    sheet: first.sheet,
    row: first.sheetRow,
  });
}
