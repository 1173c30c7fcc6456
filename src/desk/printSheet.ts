import { printHtml } from "../taskpane/printHtml";
import type { ShownSheet } from "../workbook/desk/openDesk";

/** So many columns go onto paper upright. */
const UPRIGHT_COLUMNS = 8;
/** Points of the letters, and of the least that can be read. */
const [LETTERS, LEAST_LETTERS] = [9, 6];

const style = (columns: number) => `
  @page { margin: 12mm; size: ${columns > UPRIGHT_COLUMNS ? "landscape" : "portrait"}; }
  body { font: ${Math.max(LEAST_LETTERS, LETTERS - Math.max(0, columns - UPRIGHT_COLUMNS) / 4)}pt/1.3 system-ui, sans-serif; margin: 0; }
  h1 { font-size: 12pt; margin: 0 0 4pt; }
  table { border-collapse: collapse; inline-size: 100%; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  th, td { border: 0.5pt solid #888; padding: 1.5pt 3pt; text-align: start; vertical-align: top; overflow-wrap: anywhere; }
  .number { text-align: end; white-space: nowrap; }
`;

/** A number as it is shown, with whatever sign its decimals have. */
const NUMBER = /^-?[\d.,\u202f ]*\d ?%?$/;

/** Prints what a sheet shows, its head again on every page. */
export function printSheet({ name, headRows, rows }: ShownSheet, language: string): Promise<void> {
  const page = document.implementation.createHTMLDocument(name);
  page.documentElement.lang = language;
  page.head.append(element("style", style(rows[0]?.length ?? 0)));
  const table = page.createElement("table");
  const [head, body] = [table.createTHead(), table.createTBody()];
  rows.forEach((cells, at) => {
    const row = (at < headRows ? head : body).insertRow();
    for (const text of cells) {
      const cell = element(at < headRows ? "th" : "td", text);
      if (at >= headRows && NUMBER.test(text)) cell.className = "number";
      row.append(cell);
    }
  });
  page.body.append(element("h1", name), table);
  return printHtml(`<!doctype html>${page.documentElement.outerHTML}`);
}

function element(name: string, text: string): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}
