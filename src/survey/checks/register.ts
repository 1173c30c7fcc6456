import { isLettered } from "../../texts/placeName";
import { COUNT_SHEETS, type Check, type CheckContext, type FindingKind } from "./check";
import { nearestWord } from "./nearestWord";
import { NO_PLACE } from "../season/vinePlaces";
import { stretch } from "../season/stretch";
import { NO_WORD } from "../sheets/words";

const unknownBlock: FindingKind = { code: "unknownBlock", severity: "wrong", action: "correct" };
const unknownVine: FindingKind = { code: "unknownVine", severity: "wrong", action: "correct" };
const unknownRow: FindingKind = { code: "unknownRow", severity: "wrong", action: "correct" };
const cordonOnMissingVine: FindingKind = {
  code: "cordonOnMissingVine",
  severity: "wrong",
  action: "lookAtVine",
};

/** Blocks, rows and vines that the Blocks and Vines sheets do not have, and cordons on a vine that they call missing. */
export const REGISTER: Check = {
  id: "register",
  kinds: [unknownBlock, unknownRow, unknownVine, cordonOnMissingVine],
  sheets: [...COUNT_SHEETS, "harvest"],
  scope: "row",
  prepare(table, context) {
    const blockColumn = table.column("block");
    if (!blockColumn) return undefined;
    const { places, season } = context;
    const blocks = places.blockRows();
    const blockKnown = blocks.size > 0 ? (code: number) => blocks.has(code) : () => true;
    const rowColumn = table.column("row");
    const vineColumn = table.column("vine");
    const isRegister = table.shape.id === "vines";
    const keys = places.keysOf(table);
    const register = places.register();
    const lastRow = rowsOfBlocks(context);
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const block = blockColumn.codes[i];
        if (block === NO_WORD) continue;
        if (!blockKnown(block)) {
          if (i > 0 && blockColumn.codes[i - 1] === block) continue;
          const value = season.words.wordOf(block);
          const names = [...blocks.keys()].map((code) => season.words.wordOf(code));
          report(unknownBlock, i, blockColumn, {
            value,
            rows: stretch(blockColumn.codes, i),
            nearest: nearestWord(value, names) ?? null,
          });
          continue;
        }
        if (
          rowColumn &&
          !isLettered(rowColumn.numbers[i]) &&
          Math.floor(rowColumn.numbers[i]) > (lastRow.get(block) ?? Infinity)
        ) {
          if (!sameVineBefore(keys, i))
            report(unknownRow, i, rowColumn, { last: lastRow.get(block)!, rows: stretch(keys, i) });
          continue;
        }
        if (isRegister || !vineColumn || keys[i] === NO_PLACE || !places.hasRegisterOf(block)) continue;
        if (sameVineBefore(keys, i)) continue;
        if (!register.has(keys[i])) report(unknownVine, i, vineColumn, { rows: stretch(keys, i) });
        else if (table.shape.id === "cordons" && places.statusOf(keys[i]) === "missing")
          report(cordonOnMissingVine, i, vineColumn, { rows: stretch(keys, i) });
      }
    };
  },
};

/** Rows in each block as the Blocks sheet says. */
function rowsOfBlocks(context: CheckContext): Map<number, number> {
  const rows = new Map<number, number>();
  for (const code of context.places.blockRows().keys()) {
    const count = context.places.blockNumber(code, "rows");
    if (count >= 1) rows.set(code, count);
  }
  return rows;
}

function sameVineBefore(keys: Float64Array, index: number): boolean {
  return index > 0 && keys[index] !== NO_PLACE && keys[index - 1] === keys[index];
}
