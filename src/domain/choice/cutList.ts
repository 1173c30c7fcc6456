import type { CandidateCordon } from "./candidateCordon";
import type { Trunk } from "./trunksOf";
import type { Cut } from "./vineDecision";

/**
 * What is cut, in the order of the work. Each cordon is taken off from its outer end towards the trunk, so that a cane
 * nearer the head can still be laid where a stretch turns out dead (common practice). Sides where something stays come
 * first; where a cane is to be laid the cordons come last and the cutting stops at a usable cane.
 *
 * Only a trunk that was noted as dead comes out; one whose cordons are all dead may still live below.
 *
 * @param going cordons that go, in the order of the sheet
 * @param barSides sides on which a cane is to be laid
 * @example
 * cutList([{ side: "left", cordon: "B", trunk: 1 }], new Set(), []) // [{"side": "left", "cordon": "B", "trunk": 1, "backTo": "head", "keepCane": false}]
 */
export function cutList(
  going: readonly CandidateCordon[],
  barSides: ReadonlySet<string>,
  trunks: readonly Trunk[],
): Cut[] {
  return going
    .map((cordon): Cut => {
      const trunk = trunks.find(({ number }) => number === cordon.trunk);
      return {
        side: cordon.side,
        cordon: cordon.cordon,
        ...(cordon.trunk === undefined ? {} : { trunk: cordon.trunk }),
        backTo: trunk?.condition === "dead" ? "trunk" : "head",
        keepCane: barSides.has(cordon.side) && trunk?.live !== false,
      };
    })
    .sort((first, second) => Number(first.keepCane) - Number(second.keepCane));
}
