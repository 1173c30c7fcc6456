import { AT_LETTER, AT_LETTER_AND_NUMBER, NUMBERS_A_LETTER, PARTS_OF_A_WAY } from "../../texts/placeName";
import { columnNumber } from "../sheets/cellName";

/** First letters of the words for a row, a vine and a number in three languages, which say nothing about which. */
const NAMING = "RVHFPCN";

/**
 * Where a row's or a vine's label stands among the others: 12 at 12, 12.5 and 12a between 12 and 13, R7, 007 and "row 7"
 * at 7, a letter among letters, A121 behind A120 and before B1. Places with letters are those of placeName. Undefined for
 * a label without an order.
 *
 * @param naming letters that say nothing before a number
 * @example
 * placeOfLabel("V12") // 12
 * @example
 * placeOfLabel("12a") // 12.015625
 * @example
 * placeOfLabel("C") // 3.984375
 * @example
 * placeOfLabel("A121") // 121.953125
 */
export function placeOfLabel(label: string, naming = NAMING): number | undefined {
  const bare = label
    .normalize("NFKC")
    .trim()
    .replace(
      /^(?:rows?|vines?|hileras?|filas?|plantas?|cepas?|rangs?|ceps?|no|n[º°o])[ .:#-]*(?=\d|[a-z]$)/i,
      "",
    )
    .replace(/^[#№] ?/, "");
  const [, first = "", digits, decimals, last] =
    /^(?:([a-z]) ?[.:#-]? ?)?0*(\d+)(?:[.,](\d+)|[ -]?([a-z]))?$/i.exec(bare) ?? [];
  if (digits !== undefined && (first === "" || naming.includes(first.toUpperCase()))) {
    const whole = Number(digits);
    if (decimals !== undefined) return Number(`${digits}.${decimals}`);
    return last === undefined ? whole : whole + (2 * columnNumber(last) - 1) / PARTS_OF_A_WAY;
  }
  if (digits !== undefined) {
    const number = Number(digits);
    if (decimals !== undefined || last !== undefined || number < 1 || number > NUMBERS_A_LETTER)
      return undefined;
    return (columnNumber(first) - 1) * NUMBERS_A_LETTER + number + AT_LETTER_AND_NUMBER / PARTS_OF_A_WAY;
  }
  return /^[a-z]{1,2}$/i.test(bare) ? columnNumber(bare) + AT_LETTER / PARTS_OF_A_WAY : undefined;
}

/**
 * The letters that say nothing before the numbers of a column: the one that stands before all of them. Where several do
 * they part the rows, and none is left out.
 */
export function namingLetters(labels: Iterable<unknown>): string {
  let only = "";
  for (const label of labels) {
    const first = typeof label === "string" ? /^\s*([a-z]) ?[.:#-]? ?\d+\s*$/i.exec(label)?.[1] : undefined;
    if (first === undefined || first.toUpperCase() === only) continue;
    if (only !== "") return "";
    only = first.toUpperCase();
  }
  return NAMING.includes(only) ? only : "";
}

/** Block, row and vine as labels of the parts of one label. */
export interface LabelParts {
  readonly block?: string;
  readonly row: number | string;
  readonly vine: number | string;
}

const ROW_AND_VINE =
  /^\s*(?:R(?:ow|ang)?|H(?:ilera)?)?\s*([A-Z]?\d+)\s*(?:[-–/:.]|,?\s*(?:V(?:ine)?|P(?:lanta)?|C(?:ep)?))\s*V?0*(\d+)\s*$/i;

/**
 * Row and vine of a label that holds both.
 *
 * @example
 * rowAndVine("1-12") // { row: 1, vine: 12 }
 * @example
 * rowAndVine("R2 V14") // { row: 2, vine: 14 }
 * @example
 * rowAndVine("A121-7") // { row: "A121", vine: 7 }
 */
export function rowAndVine(label: string): LabelParts | undefined {
  const parts = ROW_AND_VINE.exec(label);
  const [, row, vine] = parts ?? [];
  return row === undefined ? undefined : { row: /^\d/.test(row) ? Number(row) : row, vine: Number(vine) };
}

const BLOCK_ROW_AND_VINE =
  /^\s*(\p{L}.*?)[\s\-–/_.,]+(?:R(?:ow|ang)?|H(?:ilera)?)?\.?\s*0*(\d+[a-z]?)[\s\-–/_.,]+(?:V(?:ine)?|P(?:lanta)?|C(?:ep)?)?\.?\s*0*(\d+[a-z]?)\s*$/iu;

/**
 * Block, row and vine of a label that holds all three.
 *
 * @example
 * blockRowAndVine("NB-3-12") // { block: "NB", row: 3, vine: 12 }
 * @example
 * blockRowAndVine("North Bench R3 V12a") // { block: "North Bench", row: 3, vine: "12a" }
 */
export function blockRowAndVine(label: string): LabelParts | undefined {
  const [, block, row, vine] = BLOCK_ROW_AND_VINE.exec(label) ?? [];
  const part = (text: string) => (/^\d+$/.test(text) ? Number(text) : text);
  return block === undefined ? undefined : { block, row: part(row), vine: part(vine) };
}
