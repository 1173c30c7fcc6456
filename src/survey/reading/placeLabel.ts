import { PARTS_OF_A_WAY } from "../../texts/placeName";
import { columnNumber } from "../sheets/cellName";

/**
 * Where a row's or a vine's label stands among the others: 12 at 12, 12.5 and 12a between 12 and 13, R7, 007 and "row 7"
 * at 7, a letter among letters. Places with letters are those of placeName. Undefined for a label without an order.
 *
 * @example
 * placeOfLabel("V12") // 12
 * @example
 * placeOfLabel("12a") // 12.015625
 * @example
 * placeOfLabel("C") // 3.984375
 */
export function placeOfLabel(label: string): number | undefined {
  const bare = label
    .normalize("NFKC")
    .trim()
    .replace(
      /^(?:rows?|vines?|hileras?|filas?|plantas?|cepas?|rangs?|ceps?|no|n[º°o]?)[ .:#-]*(?=\d|[a-z]$)/i,
      "",
    )
    .replace(/^[#№] ?/, "");
  const numbered = /^(?:[RVHFPC] ?-?)?0*(\d+)(?:[.,](\d+)|[ -]?([a-z]))?$/i.exec(bare);
  if (numbered) {
    const whole = Number(numbered[1]);
    if (numbered[2] !== undefined) return Number(`${numbered[1]}.${numbered[2]}`);
    return numbered[3] === undefined ? whole : whole + (2 * columnNumber(numbered[3]) - 1) / PARTS_OF_A_WAY;
  }
  return /^[a-z]{1,2}$/i.test(bare) ? columnNumber(bare) + (PARTS_OF_A_WAY - 1) / PARTS_OF_A_WAY : undefined;
}

/** Block, row and vine as labels of the parts of one label. */
export interface LabelParts {
  readonly block?: string;
  readonly row: number | string;
  readonly vine: number | string;
}

const ROW_AND_VINE =
  /^\s*(?:R(?:ow|ang)?|H(?:ilera)?)?\s*0*(\d+)\s*(?:[-–/:.]|,?\s*(?:V(?:ine)?|P(?:lanta)?|C(?:ep)?))\s*V?0*(\d+)\s*$/i;

/**
 * Row and vine of a label that holds both.
 *
 * @example
 * rowAndVine("1-12") // { row: 1, vine: 12 }
 * @example
 * rowAndVine("R2 V14") // { row: 2, vine: 14 }
 */
export function rowAndVine(label: string): LabelParts | undefined {
  const parts = ROW_AND_VINE.exec(label);
  return parts ? { row: Number(parts[1]), vine: Number(parts[2]) } : undefined;
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
