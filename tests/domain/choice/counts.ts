import fc from "fast-check";
import type { CandidateCordon, Condition, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { Training } from "../../../src/domain/choice/trainingSystems";
import { metres } from "../../../src/domain/units";

export const TRAININGS: readonly Training[] = ["highWire", "upright", "divided"];
export const CONDITIONS: readonly Condition[] = ["sound", "injured", "diseased", "dead"];

/** A candidate with every count, its parts adding up. */
export const fullCandidate: fc.Arbitrary<CandidateCordon> = fc
  .record({
    side: fc.constantFrom("left", "right"),
    trunk: fc.integer({ min: 1, max: 4 }),
    length: fc.double({ min: 0.1, max: 2, noNaN: true }).map(metres),
    down: fc.integer({ min: 0, max: 8 }),
    level: fc.integer({ min: 0, max: 8 }),
    up: fc.integer({ min: 0, max: 8 }),
    empty: fc.integer({ min: 0, max: 8 }),
    gapShare: fc.double({ min: 0, max: 1, noNaN: true }),
    diameter: fc.double({ min: 0.004, max: 0.05, noNaN: true }).map(metres),
    condition: fc.constantFrom(...CONDITIONS),
    trunkCondition: fc.option(fc.constantFrom(...CONDITIONS), { nil: undefined }),
    fixedChoice: fc.option(fc.constantFrom("stays" as const, "goes" as const), { nil: undefined, freq: 6 }),
  })
  .map(({ down, level, up, empty, gapShare, ...rest }) => ({
    ...rest,
    cordon: "A",
    positions: down + level + up + empty,
    liveSpurs: down + level + up,
    spursDown: down,
    spursLevel: level,
    spursUp: up,
    longestGap: Math.min(empty, Math.max(empty > 0 ? 1 : 0, Math.round(gapShare * empty))),
  }));

/** A candidate of which any count may be missing. */
export const anyCandidate: fc.Arbitrary<CandidateCordon> = fc
  .tuple(
    fullCandidate,
    fc.uniqueArray(
      fc.constantFrom(
        "trunk",
        "length",
        "positions",
        "liveSpurs",
        "longestGap",
        "spursDown",
        "spursLevel",
        "spursUp",
        "diameter",
        "condition",
        "trunkCondition",
        "fixedChoice",
      ),
    ),
  )
  .map(
    ([candidate, without]) =>
      Object.fromEntries(
        Object.entries(candidate).filter(([key]) => !(without as string[]).includes(key)),
      ) as unknown as CandidateCordon,
  );

/** A vine of one to eight candidates a side, each with a letter of its own. */
export function vineOf(
  candidate: fc.Arbitrary<CandidateCordon>,
  most = 8,
  always: readonly ("training" | "sideLength" | "liveTrunks" | "status")[] = [],
): fc.Arbitrary<VineToDecide> {
  return fc
    .record(
      {
        candidates: fc.array(candidate, { minLength: 1, maxLength: most * 2 }),
        training: fc.constantFrom(...TRAININGS),
        sideLength: fc.double({ min: 0.3, max: 2, noNaN: true }).map(metres),
        liveTrunks: fc.integer({ min: 0, max: 5 }),
        status: fc.constantFrom(
          "bearing" as const,
          "bearing" as const,
          "young" as const,
          "replanted" as const,
        ),
      },
      { requiredKeys: ["candidates", ...always] },
    )
    .map((vine) => ({
      ...vine,
      candidates: vine.candidates.map((one, index) => ({ ...one, cordon: String.fromCharCode(65 + index) })),
    }));
}
