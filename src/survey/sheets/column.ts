import { LANGUAGES, type Text, type Language } from "../../texts/language";
import type { TextForms } from "./nodeRules";

/** What a column holds, and with that how a cell of it is read. */
export type ColumnKind =
  /** any text or number, kept as written: block names, "007", counter's initials */
  | "text"
  /** whole number, zero or more */
  | "count"
  /** any number */
  | "number"
  /** a number with a unit: the header's unit in parentheses decides, else the workbook's unit system */
  | "length"
  | "shortLength"
  | "mass"
  /** between 0 and 1; 85 % and 0.85 are the same cell value */
  | "share"
  /** spreadsheet date */
  | "date"
  | "year"
  /** one of a fixed list */
  | "choice";

/** One accepted word of a choice column. */
export interface Choice {
  /** The word inside the program. */
  readonly id: string;
  /** The word written into new sheets, per language. */
  readonly word: Text;
  /** Other accepted spellings, lower case. */
  readonly also?: readonly string[];
}

/** One column of a survey sheet: the row of the table that drives reading, checks, help and empty sheets. */
export interface Column {
  readonly id: string;
  readonly kind: ColumnKind;
  /** Header without unit, per language; the English one is written into new sheets by default. */
  readonly header: Text;
  /** Other accepted headers, lower case, any language. */
  readonly also?: readonly string[];
  /** A row without it cannot be used. */
  readonly required: boolean;
  /** Limits that no true value passes, in the unit given beside them; counts and numbers have no unit. */
  readonly least?: number;
  readonly most?: number;
  readonly choices?: readonly Choice[];
  /** A text that must read like one of these. */
  readonly forms?: TextForms;
  /** One sentence for whoever fills in the sheet. */
  readonly help: Text;
  /** Width in characters on a new sheet. */
  readonly width: number;
}

/** One kind of sheet: its name and columns. */
export interface SheetShape {
  readonly id: SheetId;
  /** Default name of the sheet and of its table. */
  readonly name: Text;
  readonly columns: readonly Column[];
  /** What one row is, for messages: "a candidate cordon". */
  readonly rowIs: Text;
}

export type SheetId = "blocks" | "cordons" | "vines" | "budCuts" | "harvest" | "settings";

/** All headers under which a column is recognised, lower case and without a unit. */
export function acceptedHeaders(column: Column): string[] {
  const words = (Object.keys(column.header) as Language[]).map((language) => column.header[language]);
  return [...words, ...(column.also ?? [])].map(plainHeader);
}

/**
 * A header reduced to what is compared: lower case, no unit in parentheses, no accents, single spaces.
 *
 * @example
 * plainHeader("  Longest  Gap (positions)") // "longest gap"
 */
export function plainHeader(header: string): string {
  return header
    .replace(/\([^)]*\)/g, " ")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[_\s]+/g, " ")
    .trim();
}

/** True for a sheet that carries the name of one of ours, in any language. */
export function isNamedAs({ name }: SheetShape, sheet: string): boolean {
  return LANGUAGES.some((language) => plainHeader(name[language]) === plainHeader(sheet));
}
