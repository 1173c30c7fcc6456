import type { CandidateCordon } from "../choice/candidateCordon";
import { liveSpursOf } from "../choice/liveSpurs";
import { canBeLaidOver } from "../choice/worthWithDeadStretch";
import { placesOn } from "../choice/placesOn";
import { SPURS_POINTING, trainingSystem, type Training } from "../choice/trainingSystems";
import type { YoungClusters } from "../plan/youngVine";
import type { Metres } from "../units";

/** From which figures on a cordon is to be renewed; all are a farm's own, no source gives one. */
export interface RenewalTriggers {
  readonly emptyShare: number;
  readonly badlyPlacedShare: number;
  /** Distance from spur to spur, which tells how much wire a missing spur leaves bare. */
  readonly spurSpacing: Metres;
  /** Height above the cordon from which spurs are brought down again. */
  readonly spurHeight: Metres;
  /** Age from which on a trunk is renewed by plan, in years; left out, none is. */
  readonly trunkAge?: number;
  /** Trunks that a vine should have; left out, two. */
  readonly trunksWanted?: number;
  /** Most clusters that the farm leaves on a young vine. */
  readonly youngClusters?: YoungClusters;
}

/** What asks for a new cordon, in the words of Skinkis (Oregon State): dead areas, poor spur locations, too few spurs. */
export type RenewalTrigger = "tooFewSpurs" | "deadArea" | "poorSpurs";

/** Counts that would tell how a cordon is renewed. */
export type RenewalCount = "gapFrom" | "canesNearHead";

/** What a cordon that stays needs. */
export interface CordonRenewal {
  /**
   * replace: lay a new one, from near the head. replaceLater: the same, but no cane stands there this winter. layOver:
   * lay a cane from the spur before the gap over it. extend: sound, but the wire of its side is longer. keep: nothing.
   */
  readonly action: "replace" | "replaceLater" | "layOver" | "extend" | "keep";
  readonly triggers: readonly RenewalTrigger[];
  /** Share of the places along the cordon without a live spur; undefined when it was not counted. */
  readonly emptyShare?: number;
  /** Wire beyond the end of the cordon that it should fill. */
  readonly toExtend?: Metres;
  /** Where the gap lies over which a cane is laid, or across which the spurs on both sides of it are left longer. */
  readonly gap?: { readonly from: number; readonly places: number };
  /** How high spurs stand that are to be brought down to the cordon. */
  readonly spurHeight?: Metres;
  /** What was not counted and would tell how it is renewed. */
  readonly wanted: readonly RenewalCount[];
}

/**
 * What a cordon that stays needs. It is replaced when too many of its places are empty, when one dead stretch alone is
 * that long, or when too many of its spurs point the wrong way, from a cane near the head where one stands. Where the
 * dead stretch alone is to blame and living wood lies between it and the head, a cane from the last spur before it is
 * laid over it instead. A stretch of two or three places between two spurs is filled by leaving these a node longer.
 * It is extended when two spurs or more would fit on the wire beyond its end. How a gap is filled is common practice.
 *
 * @param sideLength wire that the cordon should fill, in metres
 * @example
 * cordonRenewal({ positions: 10, liveSpurs: 6 }, undefined, { emptyShare: 0.33, badlyPlacedShare: 0.5, spurSpacing: 0.1, spurHeight: 0.1 }).triggers // ["tooFewSpurs"]
 * @example
 * cordonRenewal({ positions: 10, liveSpurs: 6, longestGap: 4, gapFrom: 3 }, undefined, { emptyShare: 0.33, badlyPlacedShare: 0.5, spurSpacing: 0.1, spurHeight: 0.1 }).action // "layOver"
 */
export function cordonRenewal(
  cordon: CandidateCordon,
  training: Training | undefined,
  triggers: RenewalTriggers,
  sideLength?: Metres,
): CordonRenewal {
  const live = liveSpursOf(cordon);
  const places = placesOn(cordon, triggers.spurSpacing);
  const empty = live === undefined || places === undefined ? undefined : Math.max(0, places - live);
  const emptyShare = empty === undefined || !places ? undefined : empty / places;
  const gapShare =
    places && cordon.longestGap !== undefined ? Math.min(1, cordon.longestGap / places) : undefined;
  const found: RenewalTrigger[] = [];
  if (emptyShare !== undefined && emptyShare >= triggers.emptyShare) found.push("tooFewSpurs");
  if (gapShare !== undefined && gapShare >= triggers.emptyShare) found.push("deadArea");
  const badly = badlyPlacedShare(cordon, live, training);
  if (badly !== undefined && badly >= triggers.badlyPlacedShare) found.push("poorSpurs");
  const extension = cordonExtension(cordon, triggers, sideLength);
  const gapAlone = (from: number | undefined) =>
    found.includes("deadArea") &&
    !found.includes("poorSpurs") &&
    canBeLaidOver({ ...cordon, gapFrom: from }, places!, empty, triggers.emptyShare);
  const way: Pick<CordonRenewal, "action" | "gap" | "wanted"> =
    found.length > 0
      ? wayToRenew(cordon, gapAlone)
      : { ...extension, wanted: [], ...gapToBridge(cordon, places) };
  const { spurHeight } = cordon;
  const isHigh = spurHeight !== undefined && spurHeight >= triggers.spurHeight - 1e-9;
  return {
    ...way,
    triggers: found,
    ...(emptyShare === undefined ? {} : { emptyShare }),
    ...(extension.toExtend === undefined ? {} : { toExtend: extension.toExtend }),
    ...(isHigh && !way.action.startsWith("replace") ? { spurHeight } : {}),
  };
}

/**
 * How far a cordon grows on: over the wire beyond its end, where two spurs or more would fit on that.
 *
 * @example
 * cordonExtension({ length: 0.5 }, { spurSpacing: 0.1 }, 1) // {"action": "extend", "toExtend": 0.5}
 */
export function cordonExtension(
  { length }: Pick<CandidateCordon, "length">,
  { spurSpacing }: Pick<RenewalTriggers, "spurSpacing">,
  sideLength: Metres | undefined,
): { readonly action: "extend" | "keep"; readonly toExtend?: Metres } {
  const bare = sideLength === undefined || length === undefined ? 0 : sideLength - length;
  return bare >= 2 * spurSpacing - 1e-9 ? { action: "extend", toExtend: bare as Metres } : { action: "keep" };
}

/** One piece of work on a cordon that stays. */
export type RenewalWork = Exclude<CordonRenewal["action"], "keep"> | "longerSpurs" | "lowerSpurs";

/**
 * What is done on a cordon that stays, piece by piece.
 *
 * @example
 * renewalWork({ action: "extend", triggers: [], wanted: [], gap: { from: 3, places: 2 } }) // ["extend", "longerSpurs"]
 */
export function renewalWork({
  action,
  gap,
  spurHeight,
}: Pick<CordonRenewal, "action" | "gap" | "spurHeight">): RenewalWork[] {
  return [
    ...(action === "keep" ? [] : [action]),
    ...(gap && action !== "layOver" ? (["longerSpurs"] as const) : []),
    ...(spurHeight === undefined ? [] : (["lowerSpurs"] as const)),
  ];
}

function wayToRenew(
  { gapFrom, longestGap, canesNearHead }: CandidateCordon,
  gapAlone: (from: number | undefined) => boolean,
): Pick<CordonRenewal, "action" | "gap" | "wanted"> {
  if (gapAlone(gapFrom))
    return { action: "layOver", gap: { from: gapFrom!, places: longestGap! }, wanted: [] };
  const wanted: RenewalCount[] = gapFrom === undefined && gapAlone(1) ? ["gapFrom"] : [];
  if (canesNearHead === undefined) wanted.push("canesNearHead");
  return { action: canesNearHead === 0 ? "replaceLater" : "replace", wanted };
}

/** A gap of two or three places with a spur on both sides of it, each of which reaches over the place beside it. */
function gapToBridge(
  { gapFrom, longestGap }: CandidateCordon,
  places: number | undefined,
): Pick<CordonRenewal, "gap"> {
  if (gapFrom === undefined || longestGap === undefined || places === undefined) return {};
  const isBetweenSpurs = gapFrom > 0 && gapFrom + longestGap < places;
  return isBetweenSpurs && (longestGap === 2 || longestGap === 3)
    ? { gap: { from: gapFrom, places: longestGap } }
    : {};
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
