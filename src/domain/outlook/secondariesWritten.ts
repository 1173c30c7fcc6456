/** Live buds of one cane as written on a sheet. */
export interface CaneAsWritten {
  readonly nodes: number;
  readonly primaries: number;
  readonly secondaries: number;
}

/** Which nodes a count of live secondaries is of. */
export type SecondariesWritten = "ofAllNodes" | "underDeadPrimaries";

/** `told`: the canes fit one way only; otherwise `written` is taken and somebody must say. */
export interface ReadingOfSecondaries {
  readonly written: SecondariesWritten;
  readonly told: boolean;
}

/**
 * Which nodes the live secondaries of a sheet are of, told from the counts. A secondary stands more cold than its primary,
 * so of all nodes there are at least as many as live primaries; under dead primaries only there are at most as many as
 * dead primaries. A cane of 8 nodes with 5 primaries and 3 secondaries is written the second way, one with 5 and 7 the
 * first. Where canes fit both ways or contradict each other the way with fewer contradictions is taken, then the sheet's
 * own, of all nodes, and it is not told.
 *
 * @example
 * secondariesWritten([{ nodes: 8, primaries: 5, secondaries: 3 }]) // { written: "underDeadPrimaries", told: true }
 * secondariesWritten([{ nodes: 8, primaries: 5, secondaries: 7 }]) // { written: "ofAllNodes", told: true }
 * secondariesWritten([{ nodes: 8, primaries: 4, secondaries: 4 }]) // { written: "ofAllNodes", told: false }
 */
export function secondariesWritten(canes: readonly CaneAsWritten[]): ReadingOfSecondaries {
  const fewerThanPrimaries = canes.filter(({ primaries, secondaries }) => secondaries < primaries).length;
  const moreThanDead = canes.filter(
    ({ nodes, primaries, secondaries }) => secondaries > nodes - primaries,
  ).length;
  const isSame = canes.every(
    (cane) => secondariesOnly(cane, "ofAllNodes") === secondariesOnly(cane, "underDeadPrimaries"),
  );
  return {
    written: fewerThanPrimaries > moreThanDead ? "underDeadPrimaries" : "ofAllNodes",
    told: isSame || (fewerThanPrimaries === 0) !== (moreThanDead === 0),
  };
}

/**
 * Nodes of a cane whose primary is dead and whose secondary lives.
 *
 * @example
 * secondariesOnly({ nodes: 8, primaries: 5, secondaries: 3 }, "underDeadPrimaries") // 3
 * secondariesOnly({ nodes: 8, primaries: 5, secondaries: 7 }, "ofAllNodes") // 2
 */
export function secondariesOnly(cane: CaneAsWritten, written: SecondariesWritten): number {
  const { nodes, primaries, secondaries } = cane;
  const beyond = written === "ofAllNodes" ? secondaries - primaries : secondaries;
  return Math.min(Math.max(0, beyond), nodes - primaries);
}
