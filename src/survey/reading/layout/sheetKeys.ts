import { isBlank, type CellValue } from "../../sheets/cell";
import { placeOfLabel } from "../placeLabel";

/** Block, row and vine as far as a line of text, a caption or a sheet's name tells them. */
export interface FoundKeys {
  readonly block?: string;
  readonly row?: number;
}

const ROW_WORD = String.raw`(?:rows?|hileras?|filas?|rangs?|rgs?|h|r)`;
const BLOCK_WORD = String.raw`(?:blocks?|blk|fields?|lots?|cuartel|bloque|parcelle|parcela)`;
/** A letter labels a row only behind a whole word or a gap: RH is a side. */
const ROW_IN = new RegExp(
  String.raw`(?:^|[\s,;:/_()–—-])${ROW_WORD}\s*(?:no\.?|n[º°]|#|:)?\s*[:.]?\s*(\d+(?:\.\d+)?[a-z]?|(?<![hr])[a-z])\s*\)?\s*$`,
  "i",
);
const BLOCK_AT = new RegExp(String.raw`^\s*${BLOCK_WORD}\s*[:.]?\s+|^\s*${BLOCK_WORD}\s*:\s*`, "i");

/**
 * The block and row that a caption or a sheet's name holds.
 *
 * @example
 * keysOfText("East Slope - Row 1") // { block: "East Slope", row: 1 }
 */
export function keysOfText(text: string): FoundKeys {
  const line = text.replace(/\s+/g, " ").trim();
  const found = ROW_IN.exec(line);
  const row = found ? placeOfLabel(found[1]) : undefined;
  const rest = (found ? line.slice(0, found.index) : line).replace(/[\s,;:/_(–—-]+$/, "");
  const hasBlockWord = BLOCK_AT.test(rest);
  const block = rest.replace(BLOCK_AT, "").trim();
  return {
    ...(block !== "" && (found || hasBlockWord) ? { block } : {}),
    ...(row === undefined ? {} : { row }),
  };
}

const ROW_LABEL = new RegExp(String.raw`^${ROW_WORD}\s*(?:no\.?|n[º°]|#)?\s*[:.]?$`, "i");
const BLOCK_LABEL = new RegExp(String.raw`^${BLOCK_WORD}\s*(?:name)?\s*[:.]?$`, "i");

/** The block and row that a line of cells tells: "Block:" beside its name, or one text that holds both. */
export function keysOfLine(cells: readonly CellValue[]): FoundKeys {
  const filled = cells.filter((cell) => !isBlank(cell));
  let block: string | undefined;
  let row: number | undefined;
  filled.forEach((cell, index) => {
    if (typeof cell !== "string") return;
    const next = filled[index + 1];
    const value = typeof next === "string" || typeof next === "number" ? String(next).trim() : undefined;
    const label = cell.replace(/\s+/g, " ").trim();
    if (BLOCK_LABEL.test(label) && value !== undefined) block ??= value;
    else if (ROW_LABEL.test(label) && value !== undefined) row ??= placeOfLabel(value);
    else {
      const both = keysOfText(label);
      block ??= both.block;
      row ??= both.row;
    }
  });
  return { ...(block === undefined ? {} : { block }), ...(row === undefined ? {} : { row }) };
}

/** Names that spreadsheets and people give to sheets whatever stands in them. */
const ANY_SHEET =
  /^(?:sheet|hoja|feuil(?:le)?|tabelle|data|datos|donn[eé]es|counts?|conteos?|comptages?|pruning|poda|taille|cordons?|cordones|vines?|plantas?|ceps?|winter|invierno|hiver|survey|season|field ?sheet)s?\b/i;

/** Block and row that a sheet's name holds; nothing where the name could be any sheet's. */
export function keysOfSheetName(sheet: string): FoundKeys {
  const name = sheet.replace(/^\[[^\]]*\]/, "").trim();
  const keys = keysOfText(name);
  if (keys.row !== undefined || keys.block !== undefined) return keys;
  return ANY_SHEET.test(name) || /^\d+$/.test(name)
    ? {}
    : { block: name.replace(/\s*\b(19|20)\d\d\b\s*$/, "") || name };
}

/**
 * Block and row that a name could mean, for a question: "E2" may be row 2 of a block E, as may "East Slope - 2".
 *
 * @example
 * shortKeys("E2") // { block: "E", row: 2 }
 * @example
 * shortKeys("East Slope - 2") // { block: "East Slope", row: 2 }
 */
export function shortKeys(sheet: string): FoundKeys | undefined {
  const parts =
    /^\s*(\p{L}{1,3})[ ._-]?(\d{1,3})\s*$/u.exec(sheet) ??
    /^\s*(\p{L}.*?)[ ._–—-]+(\d{1,3})\s*$/u.exec(sheet);
  return parts && !ANY_SHEET.test(sheet) ? { block: parts[1], row: Number(parts[2]) } : undefined;
}
