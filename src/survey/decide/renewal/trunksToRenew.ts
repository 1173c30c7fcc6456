import { renewalRules, type RenewalRules } from "./renewalRules";
import { isYoung, type Condition, type VineToDecide } from "../../../domain/choice/candidateCordon";
import { trunksOf } from "../../../domain/choice/trunksOf";
import { dueTrunks } from "../../../domain/renewal/dueTrunks";
import {
  trunkRenewal,
  URGENCIES,
  type TrunkRenewal,
  type VineTrunks,
} from "../../../domain/renewal/trunkRenewal";
import type { Season } from "../../season/season";
import { youngVines } from "../../season/youngVines";
import { namedPlace, placeOf } from "../../season/vinePlaces";
import { vinesToDecide, type SurveyVine } from "../vinesToDecide";

/** A vine with what is to be done about its trunks. */
export interface VineToRenew {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly liveTrunks: number;
  readonly renewal: TrunkRenewal;
}

/** All vines that need a new trunk, and those about which nothing can be said. */
export interface TrunksToRenew {
  /** Most urgent first, then in walk order. */
  readonly vines: readonly VineToRenew[];
  /** Vines of the register whose live trunks were not counted. */
  readonly notCounted: number;
  /** Vines of the register whose live trunks were counted, by that number; missing vines are not among them. */
  readonly byLiveTrunks: readonly number[];
  /** Trunks by their age over all vines that have cordons; undefined where no trunk's year is written. */
  readonly byAge: TrunksDue | undefined;
}

/** How many trunks are renewed by plan. */
export interface TrunksDue {
  readonly now: number;
  readonly nextWinter: number;
  /** Live and unhurt trunks whose year was not written down. */
  readonly withoutYear: number;
}

/**
 * The trunks to renew this winter over the whole survey: live trunks from the Vines sheets, their condition and the year
 * in which they were laid up from the Cordons sheets. Vines that are missing are passed over, and a young one needs no
 * second trunk yet.
 *
 * @param counted the vines that have cordons, where they were read already
 */
export function trunksToRenew(
  season: Season,
  counted: readonly SurveyVine[] = vinesToDecide(season),
): TrunksToRenew {
  const { trunksWanted: wanted, triggers } = renewalRules(season.settings);
  const places = season.places;
  const yearOf = youngVines(season);
  const known = new Map(
    counted.map(({ block, row, vine, toDecide }) => [namedPlace(block, row, vine), toDecide]),
  );
  const vines: VineToRenew[] = [];
  const byLiveTrunks: number[] = [];
  let notCounted = 0;
  for (const [key, { table, index }] of places.register()) {
    if (places.statusOf(key) === "missing") continue;
    const liveTrunks = table.column("liveTrunks")?.usable[index] ?? NaN;
    if (Number.isNaN(liveTrunks)) {
      notCounted++;
      continue;
    }
    while (byLiveTrunks.length <= liveTrunks) byLiveTrunks.push(0);
    byLiveTrunks[liveTrunks]++;
    const { block, row, vine } = placeOf(key);
    const name = season.words.wordOf(block);
    const onVine = trunksOn(
      { candidates: [], ...known.get(namedPlace(name, row, vine)), liveTrunks },
      triggers,
    );
    const status = places.statusOf(key) as VineToDecide["status"];
    const renewal = trunkRenewal(
      { liveTrunks, ...onVine },
      trunksWantedOn({ status, yearOfGrowth: yearOf(key) }, wanted),
    );
    if (callsForWork(renewal)) vines.push({ block: name, row, vine, liveTrunks, renewal });
  }
  const order = ({ renewal }: VineToRenew) => URGENCIES.indexOf(renewal.urgency);
  return {
    vines: vines.sort((first, second) => order(first) - order(second)),
    notCounted,
    byLiveTrunks,
    byAge: trunksDue([...known.values()], triggers),
  };
}

function trunksDue(
  vines: readonly VineToDecide[],
  { trunkAge, trunksWanted }: RenewalRules["triggers"],
): TrunksDue | undefined {
  const standing = vines.filter(({ status }) => status !== "missing");
  if (!standing.some(({ candidates }) => candidates.some(({ trunkAge }) => trunkAge !== undefined)))
    return undefined;
  let [now, nextWinter, withoutYear] = [0, 0, 0];
  for (const vine of standing) {
    const aged = dueTrunks(vine, trunkAge, trunksWanted);
    now += aged.due.length;
    nextWinter += aged.next.length;
    withoutYear += aged.withoutYear;
  }
  return { now, nextWinter, withoutYear };
}

/** True for a vine that has a trunk to bring up, to replace or to take out. */
export function hasTrunkToRenew(vine: VineToDecide, { trunksWanted, triggers }: RenewalRules): boolean {
  const { status, liveTrunks } = vine;
  if (status === "missing" || liveTrunks === undefined) return false;
  return callsForWork(
    trunkRenewal({ liveTrunks, ...trunksOn(vine, triggers) }, trunksWantedOn(vine, trunksWanted)),
  );
}

/** One trunk is enough while a vine is built up: its second comes with its training and is no renewal (common practice). */
function trunksWantedOn(vine: Pick<VineToDecide, "status" | "yearOfGrowth">, wanted: number): number {
  return isYoung(vine) ? Math.min(1, wanted) : wanted;
}

function callsForWork({ urgency, takeOut }: TrunkRenewal): boolean {
  return urgency !== "none" || takeOut.length > 0;
}

function trunksOn(
  vine: Pick<VineToDecide, "candidates" | "liveTrunks">,
  { trunkAge, trunksWanted }: RenewalRules["triggers"],
): Pick<VineTrunks, "noted" | "due"> {
  return {
    noted: trunksOf(vine).flatMap(({ number, condition }): { number: number; condition: Condition }[] =>
      condition ? [{ number, condition }] : [],
    ),
    due: dueTrunks(vine, trunkAge, trunksWanted).due,
  };
}
