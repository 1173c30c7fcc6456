import type { Season } from "../../season/season";
import { NO_WORD } from "../../sheets/words";

/**
 * Share of primary buds that the winter killed in each block, pooled over its bud cuts; a block without cuts is not in
 * it. Rows whose two counts do not fit are passed over.
 */
export function deadShares(season: Season): ReadonlyMap<string, number> {
  const cut = new Map<string, { nodes: number; alive: number }>();
  for (const table of season.tables("budCuts")) {
    const blocks = table.column("block")?.codes;
    const nodes = table.column("nodesCut")?.usable;
    const alive = table.column("primariesAlive")?.usable;
    if (!blocks || !nodes || !alive) continue;
    for (let index = 0; index < table.rowCount; index++) {
      if (blocks[index] === NO_WORD || !(nodes[index] > 0) || !(alive[index] >= 0)) continue;
      const name = season.words.wordOf(blocks[index]);
      const sum = cut.get(name) ?? { nodes: 0, alive: 0 };
      cut.set(name, { nodes: sum.nodes + nodes[index], alive: sum.alive + alive[index] });
    }
  }
  return new Map([...cut].map(([block, { nodes, alive }]) => [block, 1 - alive / nodes]));
}
