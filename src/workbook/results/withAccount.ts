import type { OwnSheet } from "../surveyWorkbook";

/**
 * A sheet of results with the account of what they were worked out from below its title.
 *
 * @param account the lines of `accountLines`
 */
export function withAccount(sheet: OwnSheet, account: readonly string[]): OwnSheet {
  return { ...sheet, title: [...(sheet.title ?? []), ...account] };
}
