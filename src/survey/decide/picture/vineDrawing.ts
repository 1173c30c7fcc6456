import type { CandidateCordon } from "../../../domain/choice/candidateCordon";
import { liveSpursOf } from "../../../domain/choice/liveSpurs";
import type { Verdict } from "../../../domain/choice/vineDecision";
import type { DecidedVine } from "../decideSeason";

/** Where a spur stands on a cordon, and where it points. */
export interface DrawnSpur {
  /** Metres from the head. */
  readonly at: number;
  readonly points: "down" | "level" | "up" | "unknown";
}

/** One cordon to scale. */
export interface DrawnCordon {
  readonly cordon: string;
  readonly side: string;
  /** -1 to the left of the head, 1 to the right. */
  readonly towards: -1 | 1;
  readonly trunk?: number;
  readonly verdict: Verdict;
  /** Metres; the side's wire or one metre where it was not counted, and then `guessed`. */
  readonly length: number;
  readonly guessed: boolean;
  readonly spurs: readonly DrawnSpur[];
  /** Metres from the head of the places without a spur outside the longest gap. */
  readonly bare: readonly number[];
  /** The longest stretch without a spur, in metres from the head; where on the cordon it lies was not counted. */
  readonly gap?: { readonly from: number; readonly to: number };
}

/** A vine to scale. */
export interface VineDrawing {
  readonly cordons: readonly DrawnCordon[];
  readonly trunks: readonly number[];
  /** Wire on one side, in metres. */
  readonly sideLength?: number;
  /** Longest reach from the head, in metres. */
  readonly reach: number;
}

const FIRST_SIDES = ["left", "north", "east"];

/**
 * What the counts of a vine look like, to scale: cordons with their length, live spurs spread over the counted places
 * with the longest gap left bare, the spurs that hang first. Where the gap lies along the cordon is not on the sheet, so
 * it is drawn in the middle.
 */
export function vineDrawing({ toDecide, decision }: Pick<DecidedVine, "toDecide" | "decision">): VineDrawing {
  const { sideLength } = toDecide;
  const cordons = toDecide.candidates.map((candidate, index) =>
    drawnCordon(candidate, decision.cordons[index].verdict, sideLength),
  );
  const trunks = [
    ...new Set(toDecide.candidates.flatMap(({ trunk }) => (trunk === undefined ? [] : [trunk]))),
  ];
  return {
    cordons,
    trunks: trunks.sort((first, second) => first - second),
    ...(sideLength === undefined ? {} : { sideLength }),
    reach: Math.max(sideLength ?? 0, ...cordons.map(({ length }) => length), 0.1),
  };
}

function drawnCordon(
  candidate: CandidateCordon,
  verdict: Verdict,
  sideLength: number | undefined,
): DrawnCordon {
  const length = candidate.length ?? sideLength ?? 1;
  const live = liveSpursOf(candidate) ?? 0;
  const gap = candidate.longestGap ?? 0;
  const places = Math.max(candidate.positions ?? live + gap, live + gap, 1);
  const step = length / places;
  const gapFrom = Math.min(candidate.gapFrom ?? Math.floor((places - gap) / 2), places - gap);
  const free = Array.from({ length: places }, (_, place) => place).filter(
    (place) => place < gapFrom || place >= gapFrom + gap,
  );
  const taken = Array.from({ length: live }, (_, spur) => free[Math.floor((spur * free.length) / live)]);
  const ways = directions(candidate, live);
  return {
    cordon: candidate.cordon,
    side: candidate.side,
    towards: FIRST_SIDES.includes(candidate.side) ? -1 : 1,
    ...(candidate.trunk === undefined ? {} : { trunk: candidate.trunk }),
    verdict,
    length,
    guessed: candidate.length === undefined,
    bare: free.filter((place) => !taken.includes(place)).map((place) => (place + 0.5) * step),
    spurs: taken.map((place, spur) => ({ at: (place + 0.5) * step, points: ways[spur] })),
    ...(gap > 0 ? { gap: { from: gapFrom * step, to: (gapFrom + gap) * step } } : {}),
  };
}

function directions(
  { spursDown, spursLevel, spursUp }: CandidateCordon,
  live: number,
): DrawnSpur["points"][] {
  const ways = [
    ...Array.from({ length: spursDown ?? 0 }, () => "down" as const),
    ...Array.from({ length: spursLevel ?? 0 }, () => "level" as const),
    ...Array.from({ length: spursUp ?? 0 }, () => "up" as const),
  ];
  return Array.from({ length: live }, (_, spur) => ways[spur] ?? "unknown");
}
