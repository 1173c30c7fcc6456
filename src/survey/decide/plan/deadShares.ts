import type { Season } from "../../season/season";
import { NO_WORD } from "../../sheets/words";

/** Primary buds that were cut open in a block, and how many of them were dead. */
export interface BudsCut {
  readonly cut: number;
  readonly dead: number;
}

/**
 * Buds of each block, pooled over its bud cuts; a block without cuts is not in it. Rows whose two counts do not fit are
 * passed over.
 */
export function budsCut(season: Season): ReadonlyMap<string, BudsCut> {
  const blockBuds = new Map<string, BudsCut>();
  for (const table of season.tables("budCuts")) {
    const blocks = table.column("block")?.codes;
    const nodes = table.column("nodesCut")?.usable;
    const alive = table.column("primariesAlive")?.usable;
    if (!blocks || !nodes || !alive) continue;
    for (let index = 0; index < table.rowCount; index++) {
      if (blocks[index] === NO_WORD || !(nodes[index] > 0) || !(alive[index] >= 0)) continue;
      const name = season.words.wordOf(blocks[index]);
      blockBuds.set(
        name,
        pooled(blockBuds.get(name), { cut: nodes[index], dead: nodes[index] - alive[index] }),
      );
    }
  }
  return blockBuds;
}

/** Two samples of buds as one. */
export function pooled(one: BudsCut | undefined, other: BudsCut): BudsCut {
  return { cut: (one?.cut ?? 0) + other.cut, dead: (one?.dead ?? 0) + other.dead };
}

/** Share of primary buds that the winter killed in each block that has bud cuts. */
export function deadShares(season: Season): ReadonlyMap<string, number> {
  return new Map([...budsCut(season)].map(([block, { cut, dead }]) => [block, dead / cut]));
}
