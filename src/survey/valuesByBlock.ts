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
  const counts = new Map<number, number>();
  for (let i = 0; i < blocks.length; i++)
    if (blocks[i] !== NO_WORD && !Number.isNaN(valueOf(i)))
      counts.set(blocks[i], (counts.get(blocks[i]) ?? 0) + 1);
  const byBlock = new Map<number, Float64Array>();
  for (const [block, count] of counts) byBlock.set(block, new Float64Array(count));
  const filled = new Map<number, number>();
  for (let i = 0; i < blocks.length; i++) {
    const value = blocks[i] === NO_WORD ? NaN : valueOf(i);
    if (Number.isNaN(value)) continue;
    const at = filled.get(blocks[i]) ?? 0;
    byBlock.get(blocks[i])![at] = value;
    filled.set(blocks[i], at + 1);
  }
  return byBlock;
}
