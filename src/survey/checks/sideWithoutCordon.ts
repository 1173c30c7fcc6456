import { grouped } from "../../domain/grouped";
import { rowsByVine } from "../season/vineGroups";
import { choiceId, NO_PLACE, placeOf } from "../season/vinePlaces";

import type { Check, FindingKind } from "./check";

const sideWithoutCordon: FindingKind = { code: "sideWithoutCordon", severity: "ask", action: "lookAtVine" };

/** Share of a block's vines with two cordons or more that must have one on either side. */
const MOSTLY = 0.9;
/** Vines with two cordons or more from which on a block shows how it is trained. */
const LEAST_VINES = 10;

interface Vine {
  readonly block: number;
  readonly first: number;
  readonly rows: number;
  /** The only side that its rows name; undefined where they name both or one is unknown. */
  readonly side: string | undefined;
}

/**
 * Two cordons or more on one side of a vine and not even a dead one on the other, in a block whose vines nearly all have
 * both: mostly a side that was written wrongly. Said at the vine's second row. A vine beside a row that names another block
 * with its numbers, or no place, may go on there and is left alone.
 */
export const SIDE_WITHOUT_CORDON: Check = {
  id: "sideWithoutCordon",
  kinds: [sideWithoutCordon],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const side = table.column("side");
    if (!side) return undefined;
    const vines: Vine[] = [];
    const keys = context.places.keysOf(table);
    const numbers = ["row", "vine"].flatMap((id) => table.column(id)?.numbers ?? []);
    const mayBelong = (i: number, vine: number) =>
      i >= 0 &&
      i < keys.length &&
      (keys[i] === NO_PLACE || numbers.every((column) => column[i] === column[vine]));
    for (const [key, rows] of rowsByVine(table, context)) {
      if (rows.length < 2 || mayBelong(rows[0] - 1, rows[0]) || mayBelong(rows.at(-1)! + 1, rows[0]))
        continue;
      const sides = new Set(rows.map((row) => choiceId(side, row)));
      const [only] = sides.size === 1 ? sides : [];
      vines.push({ block: placeOf(key).block, first: rows[1], rows: rows.length, side: only });
    }
    const blocks = grouped(vines, ({ block }) => block);
    return (from, to, report) => {
      for (const own of blocks.values()) {
        const odd = own.filter((vine) => vine.side !== undefined);
        if (own.length < LEAST_VINES || own.length - odd.length < MOSTLY * own.length) continue;
        for (const vine of odd)
          if (vine.first >= from && vine.first < to)
            report(sideWithoutCordon, vine.first, side, { rows: vine.rows, choice: vine.side! });
      }
    };
  },
};
