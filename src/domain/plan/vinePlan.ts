import { isYoung, type CandidateCordon, type VineToDecide } from "../choice/candidateCordon";
import { trunksOf, type Trunk } from "../choice/trunksOf";
import { graver } from "../choice/trunkWorth";
import type { CaneOrigin, VineDecision } from "../choice/vineDecision";
import {
  cordonExtension,
  cordonRenewal,
  type CordonRenewal,
  type RenewalTriggers,
} from "../renewal/cordonRenewal";
import { youngVine, type YoungVine } from "./youngVine";
import { dueTrunks, type DueTrunk } from "../renewal/dueTrunks";

/** A cordon that stays, or that would stay if the person who looks agrees. */
export interface PlannedKeep {
  readonly side: string;
  readonly cordon: string;
  readonly trunk?: number;
  readonly ask: boolean;
  /** Cordons of the same side that the person weighs it against. */
  readonly against: readonly string[];
  readonly renewal: CordonRenewal;
  /** Where a cane would come from, should the person who looks prefer one. */
  readonly orCane?: Pick<PlannedCane, "from" | "source" | "later">;
}

/** The living cordon on which a cane is found near the head. */
export interface CaneSource {
  readonly side: string;
  readonly cordon: string;
}

/** A side on which a cane is laid. */
export interface PlannedCane {
  readonly side: string;
  readonly from: CaneOrigin;
  /** Left out where the cane grows from a trunk or from the ground and no living cordon bears it. */
  readonly source?: CaneSource;
  /** No cane that could be laid stands there this winter: the renewal spur grows one for the next. */
  readonly later?: true;
  readonly ask: boolean;
}

/** How far a cordon comes off. */
export type CutBackTo =
  /** where it leaves the trunk */
  | "head"
  /** a dead trunk comes out with it */
  | "trunk"
  /** a renewal spur is left at the head */
  | "spur"
  /** the first good cane from the outer end, which is laid or renews a cordon */
  | "cane";

/** One cut, in the order of the work. */
export interface PlannedCut {
  readonly side: string;
  readonly cordon: string;
  readonly trunk?: number;
  readonly backTo: CutBackTo;
  /** Cordons that stay and that the cane of this one renews in a later winter. */
  readonly renews: readonly string[];
}

/** What is done on one vine this winter: everything that shows a vine's work shows this. */
export interface VinePlan {
  readonly keeps: readonly PlannedKeep[];
  readonly canes: readonly PlannedCane[];
  readonly cuts: readonly PlannedCut[];
  /** Trunks due by their age, oldest first: for each without a renewal a shoot or sucker is kept. Left out where there is none. */
  readonly dueTrunks?: readonly DueTrunk[];
  /** What publications say of a vine that is still being built up; left out for an older one. */
  readonly young?: YoungVine;
}

const ORDER: Readonly<Record<CutBackTo, number>> = { head: 0, trunk: 0, spur: 1, cane: 2 };

/**
 * The plan of a vine, from wood that is there. A cane to lay is found on a living cordon of the trunk that it is taken
 * from, and that cordon is cut only as far as the cane; a cordon that goes is preferred to one that stays, and one of
 * the bare side to one across. Where a person is asked whether a cordon stays or a cane is laid, the wood of that cane is
 * kept all the same. Dead wood is never searched. Where a cordon that stays is to be renewed, a living cordon
 * that goes beside it, or else across it on the same trunk, is cut only as far as its first good cane. A trunk that is
 * neither dead nor diseased and loses all its cordons keeps a renewal spur at the head (Skinkis, Oregon State, How to
 * renew a grapevine cordon). A dead trunk comes out with the last of its cordons, unless a person has fixed one to stay.
 *
 * On a vine that is still being built up no cordon is renewed: it grows on as far as the wire of its side goes.
 *
 * For a trunk that is due by its age a shoot low on it or a sucker is kept, which takes its place.
 *
 * Each cordon is taken off from its outer end towards the trunk, so that a cane nearer the head can still be laid where
 * a stretch turns out dead (common practice); cordons that are searched for a cane come last. Where canes near the head
 * were counted and none stands there, the cane is laid in a later winter and its source keeps a renewal spur.
 *
 * @param vine the vine as it was decided
 * @param decision the answer for that vine, its cordons in the same order
 * @example
 * vinePlan(
 *   { candidates: [{ side: "left", cordon: "A", trunk: 1 }, { side: "right", cordon: "B", trunk: 2 }] },
 *   {
 *     cordons: [{ side: "left", cordon: "A", verdict: "stays" }, { side: "right", cordon: "B", verdict: "goes" }],
 *     sides: [{ side: "left", cordon: "A", ask: false }, { side: "right", ask: false, layCaneFrom: 2 }],
 *   },
 *   { emptyShare: 0.33, badlyPlacedShare: 0.5, spurSpacing: 0.1, spurHeight: 0.1 },
 * ).cuts // [{"side": "right", "cordon": "B", "trunk": 2, "backTo": "cane", "renews": []}]
 */
export function vinePlan(
  vine: VineToDecide,
  decision: Pick<VineDecision, "cordons" | "sides">,
  triggers: RenewalTriggers,
): VinePlan {
  const trunks = trunksOf(vine);
  const wood = vine.candidates.map((candidate, index) => woodOf(candidate, index, decision, trunks));
  const searched = new Map<Wood, string[]>();
  const spurred = new Set<Wood>();
  const caneFrom = (from: CaneOrigin, side: string): Pick<PlannedCane, "from" | "source" | "later"> => {
    const source = sourceOf(from, side, wood);
    if (!source) return { from };
    const later = source.candidate.canesNearHead === 0 && !isCaneOf(source.candidate, side);
    if (later) spurred.add(source);
    else searched.set(source, []);
    const { side: sourceSide, cordon } = source.candidate;
    return { from, source: { side: sourceSide, cordon }, ...(later ? { later } : {}) };
  };
  const canes = decision.sides.flatMap(({ side, layCaneFrom, ask }): PlannedCane[] =>
    layCaneFrom === undefined ? [] : [{ side, ...caneFrom(layCaneFrom, side), ask }],
  );
  const orLay = new Map(
    decision.sides.flatMap(({ side, cordon, orLayFrom }) =>
      orLayFrom === undefined ? [] : [[`${side} ${cordon}`, caneFrom(orLayFrom, side)] as const],
    ),
  );
  const keeps = wood
    .flatMap((one) => keepOf(one, wood, vine, triggers))
    .map((keep): PlannedKeep => {
      const orCane = orLay.get(`${keep.side} ${keep.cordon}`);
      return orCane ? { ...keep, orCane } : keep;
    });
  for (const keep of keeps) {
    if (!keep.renewal.action.startsWith("replace") || keep.ask) continue;
    const hasOwnCane = keep.renewal.action === "replace" && !keep.renewal.wanted.includes("canesNearHead");
    if (hasOwnCane) continue;
    const renewing = woodThatRenews(keep, wood);
    if (renewing) searched.set(renewing, [...(searched.get(renewing) ?? []), keep.cordon]);
  }
  const { due } = dueTrunks(vine, triggers.trunkAge ?? Infinity, triggers.trunksWanted ?? 2);
  return {
    keeps,
    canes,
    cuts: cutsOf(wood, searched, spurred),
    ...(due.length > 0 ? { dueTrunks: due } : {}),
    ...(vine.yearOfGrowth
      ? { young: youngVine(vine.yearOfGrowth, vine.training, triggers.youngClusters) }
      : {}),
  };
}

/** A candidate with what the decision and its trunk make of it. */
interface Wood {
  readonly candidate: CandidateCordon;
  readonly trunk: Trunk | undefined;
  /** Neither it nor its trunk is written down as dead. */
  readonly living: boolean;
  readonly verdict: "stays" | "goes" | "ask";
  /** It stays, or would stay if the person who looks agrees. */
  readonly kept: boolean;
}

function woodOf(
  candidate: CandidateCordon,
  index: number,
  { cordons, sides }: Pick<VineDecision, "cordons" | "sides">,
  trunks: readonly Trunk[],
): Wood {
  const trunk = trunks.find(({ number }) => number === candidate.trunk);
  const trunkCondition = graver(trunk?.condition, candidate.trunkCondition);
  const { verdict } = cordons[index];
  const proposed = sides.some(({ side, cordon }) => side === candidate.side && cordon === candidate.cordon);
  return {
    candidate,
    trunk,
    living: candidate.condition !== "dead" && trunkCondition !== "dead",
    verdict,
    kept: verdict === "stays" || (verdict === "ask" && proposed),
  };
}

function keepOf(
  { candidate, verdict, kept }: Wood,
  wood: readonly Wood[],
  vine: VineToDecide,
  triggers: RenewalTriggers,
): PlannedKeep[] {
  if (!kept) return [];
  const { training, sideLength } = vine;
  const { side, cordon, trunk } = candidate;
  const ask = verdict === "ask";
  const against = wood
    .filter(
      (other) => other.candidate.side === side && other.verdict === "ask" && other.candidate !== candidate,
    )
    .map((other) => other.candidate.cordon);
  return [
    {
      side,
      cordon,
      ...(trunk === undefined ? {} : { trunk }),
      ask,
      against: ask ? against : [],
      renewal: isYoung(vine)
        ? { ...cordonExtension(candidate, triggers, sideLength), triggers: [], wanted: [] }
        : cordonRenewal(candidate, training, triggers, sideLength),
    },
  ];
}

/** The living cordon that bears the cane: of that trunk, or of no numbered trunk where none is named. */
function sourceOf(from: CaneOrigin, side: string, wood: readonly Wood[]): Wood | undefined {
  if (from === "ground") return undefined;
  const trunk = typeof from === "number" ? from : undefined;
  const bearing = wood.filter(({ living, candidate }) => living && candidate.trunk === trunk);
  const rank = ({ verdict, candidate }: Wood) =>
    2 * ["goes", "ask", "stays"].indexOf(verdict) +
    Number(candidate.side !== side) +
    20 * Number(candidate.canesNearHead === 0) -
    100 * Number(isCaneOf(candidate, side));
  return first(bearing, rank);
}

/** A person wants a cane laid from here, on its own side: it was seen. */
function isCaneOf({ side, fixedChoice }: CandidateCordon, on: string): boolean {
  return side === on && fixedChoice === "cane";
}

/** A living cordon that goes and whose cane could take the place of one that stays. */
function woodThatRenews(keep: PlannedKeep, wood: readonly Wood[]): Wood | undefined {
  const near = wood.filter(
    ({ living, verdict, candidate: { side, trunk, canesNearHead } }) =>
      living &&
      verdict === "goes" &&
      canesNearHead !== 0 &&
      (side === keep.side || (trunk !== undefined && trunk === keep.trunk)),
  );
  return first(near, (one) => 3 * Number(one.candidate.side !== keep.side) + hurt(one));
}

function hurt({ trunk, candidate }: Wood): number {
  const condition = graver(trunk?.condition, candidate.trunkCondition);
  return condition === "diseased" ? 2 : condition === "injured" ? 1 : 0;
}

function first(wood: readonly Wood[], rank: (one: Wood) => number): Wood | undefined {
  let best: Wood | undefined;
  for (const one of wood) if (!best || rank(one) < rank(best)) best = one;
  return best;
}

function cutsOf(
  wood: readonly Wood[],
  searched: ReadonlyMap<Wood, readonly string[]>,
  spurred: ReadonlySet<Wood>,
): PlannedCut[] {
  const going = wood.filter(({ verdict }) => verdict === "goes");
  const onTrunk = (number: number | undefined) => wood.filter(({ candidate }) => candidate.trunk === number);
  const backTo = (one: Wood): CutBackTo => {
    if (searched.has(one)) return "cane";
    if (spurred.has(one)) return "spur";
    const { trunk } = one;
    if (trunk === undefined) return "head";
    const others = onTrunk(trunk.number);
    const allGo = others.every(({ verdict }) => verdict === "goes");
    if (trunk.condition === "dead") return allGo && one === others.at(-1) ? "trunk" : "head";
    const spare =
      allGo &&
      trunk.condition !== "diseased" &&
      !others.some((other) => searched.has(other) || spurred.has(other));
    return spare && one === others.filter(({ living }) => living).at(-1) ? "spur" : "head";
  };
  return going
    .map((one): PlannedCut => {
      const { side, cordon, trunk } = one.candidate;
      return {
        side,
        cordon,
        ...(trunk === undefined ? {} : { trunk }),
        backTo: backTo(one),
        renews: searched.get(one) ?? [],
      };
    })
    .sort((one, other) => ORDER[one.backTo] - ORDER[other.backTo]);
}
