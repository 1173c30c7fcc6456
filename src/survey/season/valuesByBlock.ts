import { stretch } from "./stretch";
import type { SurveyTable } from "./season";
import { NO_WORD } from "../sheets/words";

/**
 * Values of a table's rows block by block, with the number of the block's name; within a block in the order of the rows.
 * Blocks without any value are left out.
 *
 * @param valueOf the value of a row; NaN leaves it out
 * @returns the values of one block at a time, in a list that holds those of the next block afterwards
 */
export function* valuesByBlock(
  table: SurveyTable,
  valueOf: (index: number) => number,
): Generator<readonly [block: number, values: Float64Array], void, void> {
  const blocks = table.column("block")?.codes ?? [];
  const rowsOf = new Map<number, { starts: number[]; count: number }>();
  let most = 0;
  for (let start = 0, rows = 0; start < blocks.length; start += rows) {
    rows = stretch(blocks, start);
    let own = rowsOf.get(blocks[start]);
    if (!own) rowsOf.set(blocks[start], (own = { starts: [], count: 0 }));
    own.starts.push(start);
    own.count += rows;
    most = Math.max(most, own.count);
  }
  const list = new Float64Array(most);
  for (const [block, { starts }] of rowsOf) {
    if (block === NO_WORD) continue;
    let count = 0;
    for (const start of starts)
      for (let i = start; i < blocks.length && blocks[i] === block; i++) {
        const value = valueOf(i);
        if (!Number.isNaN(value)) list[count++] = value;
      }
    if (count > 0) yield [block, list.subarray(0, count)];
  }
}
