import { areasOfAddress, type CellArea } from "./address";

/** What a reference in a formula names. */
export type Reference =
  | {
      readonly is: "area";
      readonly sheet: string | undefined;
      readonly area: CellArea;
      readonly spills: boolean;
    }
  | { readonly is: "name"; readonly name: string }
  | { readonly is: "table"; readonly part: TablePart };

/** A part of a table, as a structured reference says it. */
export interface TablePart {
  /** Undefined for the table in which the formula stands. */
  readonly table: string | undefined;
  readonly rows: "all" | "headers" | "data" | "totals" | "thisRow" | "headersAndData" | "dataAndTotals";
  /** The first and the last column by their heads; all of them where left out. */
  readonly columns?: readonly [first: string, last: string];
}

const ADDRESS = /^\$?(?:[A-Z]{1,3}\$?\d+|[A-Z]{1,3}(?=:))(?::\$?[A-Z]{1,3}(?:\$?\d+)?)?$/i;
const SHEET = /^(?:'((?:[^']|'')*)'|([^!'[\]]+))!/;

/**
 * What a reference names: cells by their address, a structured reference into a table
 * (https://support.microsoft.com/office/using-structured-references-with-excel-tables-f5ed2452-2337-4f71-bed3-c8ae6d2b276e),
 * or a name of the workbook.
 *
 * @example
 * readReference("Vines[[#All],[Prunings (lb)]]") // { is: "table", part: { table: "Vines", rows: "all", columns: ["Prunings (lb)", "Prunings (lb)"] } }
 */
export function readReference(text: string): Reference {
  const brackets = /^([^[\]!]*)\[(.*)\]$/s.exec(text);
  if (brackets) return { is: "table", part: tablePart(brackets[1] || undefined, brackets[2].trim()) };
  const sheet = SHEET.exec(text);
  const named = sheet?.[1]?.replaceAll("''", "'") ?? sheet?.[2];
  const place = text.slice(sheet?.[0].length ?? 0).replace(/#$/, "");
  if (!ADDRESS.test(place)) return { is: "name", name: text };
  return { is: "area", sheet: named, area: areasOfAddress(place)[0], spills: text.endsWith("#") };
}

const ROWS: Readonly<Record<string, TablePart["rows"]>> = {
  "#all": "all",
  "#headers": "headers",
  "#data": "data",
  "#totals": "totals",
  "#this row": "thisRow",
};

function tablePart(table: string | undefined, inside: string): TablePart {
  const here = inside.startsWith("@");
  const rest = here ? inside.slice(1).trim() : inside;
  const groups = [...rest.matchAll(/\[((?:[^[\]]|'[[\]])*)\]/g)].map(([, one]) => one);
  const parts = (groups.length > 0 ? groups : [rest]).map((one) => one.trim()).filter((one) => one !== "");
  const items = parts.flatMap((one) => ROWS[one.toLowerCase()] ?? []);
  const columns = parts
    .filter((one) => !(one.toLowerCase() in ROWS))
    .map((one) => one.replace(/'(.)/g, "$1"));
  return {
    table,
    rows: here ? "thisRow" : rowsOf(items),
    ...(columns.length === 0 ? {} : { columns: [columns[0], columns[columns.length - 1]] as const }),
  };
}

function rowsOf(items: readonly TablePart["rows"][]): TablePart["rows"] {
  if (items.length < 2) return items[0] ?? "data";
  return items.includes("headers") ? "headersAndData" : "dataAndTotals";
}
