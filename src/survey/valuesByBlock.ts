import { stretch } from "./stretch";
import type { SurveyTable } from "./survey";
import { NO_WORD } from "./words";

/**
 * Values of a table's rows by number of the block's name, in the order of the rows.
 *
 * @param valueOf the value of a row; NaN leaves it out
 */
export function valuesByBlock(
  table: SurveyTable,
  valueOf: (index: number) => number,
): Map<number, Float64Array> {
  const blocks = table.column("block")?.codes ?? [];
  const rows = new Map<number, number>();
  for (let first = 0, length = 0; first < blocks.length; first += length) {
    length = stretch(blocks, first);
    rows.set(blocks[first], (rows.get(blocks[first]) ?? 0) + length);
  }
  const byBlock = new Map<number, Float64Array>();
  const filled = new Map<number, number>();
  for (let first = 0, end = 0; first < blocks.length; first = end) {
    end = first + stretch(blocks, first);
    const block = blocks[first];
    if (block === NO_WORD) continue;
    let values = byBlock.get(block);
    if (!values) byBlock.set(block, (values = new Float64Array(rows.get(block)!)));
    let at = filled.get(block) ?? 0;
    for (let i = first; i < end; i++) {
      const value = valueOf(i);
      if (!Number.isNaN(value)) values[at++] = value;
    }
    filled.set(block, at);
  }
  for (const [block, count] of filled)
    if (count === 0) byBlock.delete(block);
    else byBlock.set(block, byBlock.get(block)!.subarray(0, count));
  return byBlock;
}
