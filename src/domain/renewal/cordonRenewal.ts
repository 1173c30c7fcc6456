import type { CandidateCordon } from "../choice/candidateCordon";
import { liveSpursOf } from "../choice/liveSpurs";
import { placesOn } from "../choice/placesOn";
import { SPURS_POINTING, trainingSystem, type Training } from "../choice/trainingSystems";
import type { Metres } from "../units";

/** From which share on a cordon is to be renewed; both are a farm's own, no source gives one. */
export interface RenewalTriggers {
  readonly emptyShare: number;
  readonly badlyPlacedShare: number;
  /** Distance from spur to spur, which tells how much wire a missing spur leaves bare. */
  readonly spurSpacing: Metres;
}

/** What asks for a new cordon, in the words of Skinkis (Oregon State): dead areas, poor spur locations, too few spurs. */
export type RenewalTrigger = "tooFewSpurs" | "deadArea" | "poorSpurs";

/** What a cordon that stays needs. */
export interface CordonRenewal {
  /** replace: lay a new one. extend: sound, but the wire of its side is longer. keep: nothing. */
  readonly action: "replace" | "extend" | "keep";
  readonly triggers: readonly RenewalTrigger[];
  /** Share of the places along the cordon without a live spur; undefined when it was not counted. */
  readonly emptyShare?: number;
  /** Wire beyond the end of the cordon that it should fill. */
  readonly toExtend?: Metres;
}

/**
 * Whether a cordon that stays is to be replaced, extended or left. Replaced when too many of its places are empty, when
 * one dead stretch alone is that long, or when too many of its spurs point the wrong way; extended when two spurs or
 * more would fit on the wire beyond its end.
 *
 * @param sideLength wire that the cordon should fill, in metres
 * @example
 * cordonRenewal({ positions: 10, liveSpurs: 6 }, undefined, { emptyShare: 0.33, badlyPlacedShare: 0.5, spurSpacing: 0.1 }).triggers // ["tooFewSpurs"]
 */
export function cordonRenewal(
  cordon: CandidateCordon,
  training: Training | undefined,
  triggers: RenewalTriggers,
  sideLength?: Metres,
): CordonRenewal {
  const live = liveSpursOf(cordon);
  const places = placesOn(cordon, triggers.spurSpacing);
  const emptyShare =
    live === undefined || places === undefined || places === 0 ? undefined : Math.max(0, 1 - live / places);
  const found: RenewalTrigger[] = [];
  if (emptyShare !== undefined && emptyShare >= triggers.emptyShare) found.push("tooFewSpurs");
  if (places && cordon.longestGap !== undefined && cordon.longestGap / places >= triggers.emptyShare)
    found.push("deadArea");
  const badly = badlyPlacedShare(cordon, live, training);
  if (badly !== undefined && badly >= triggers.badlyPlacedShare) found.push("poorSpurs");
  const bare = sideLength === undefined || cordon.length === undefined ? 0 : sideLength - cordon.length;
  const isShort = bare >= 2 * triggers.spurSpacing - 1e-9;
  return {
    action: found.length > 0 ? "replace" : isShort ? "extend" : "keep",
    triggers: found,
    ...(emptyShare === undefined ? {} : { emptyShare }),
    ...(isShort ? { toExtend: bare as Metres } : {}),
  };
}

function badlyPlacedShare(
  cordon: CandidateCordon,
  live: number | undefined,
  training: Training | undefined,
): number | undefined {
  if (!live || training === undefined) return undefined;
  const badly = cordon[SPURS_POINTING[trainingSystem(training).badlyPlaced]];
  return badly === undefined ? undefined : badly / live;
}
