import { renewalRules } from "./renewalRules";
import type { Condition, VineToDecide } from "../../../domain/choice/candidateCordon";
import { trunksOf } from "../../../domain/choice/trunksOf";
import { trunkRenewal, URGENCIES, type TrunkRenewal } from "../../../domain/renewal/trunkRenewal";
import type { Season } from "../../season/season";
import { NO_PLACE, placeOf } from "../../season/vinePlaces";
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
}

/**
 * The trunks to renew this winter over the whole survey: live trunks from the Vines sheets, their condition from the
 * Cordons sheets. Vines that are missing are passed over.
 *
 * @param counted the vines that have cordons, where they were read already
 */
export function trunksToRenew(
  season: Season,
  counted: readonly SurveyVine[] = vinesToDecide(season),
): TrunksToRenew {
  const wanted = renewalRules(season.settings).trunksWanted;
  const places = season.places;
  const noted = notedTrunks(counted);
  const vines: VineToRenew[] = [];
  const byLiveTrunks: number[] = [];
  let notCounted = 0;
  for (const [key, { table, index }] of places.register()) {
    if (key === NO_PLACE || places.statusOf(key) === "missing") continue;
    const liveTrunks = table.column("liveTrunks")?.usable[index] ?? NaN;
    if (Number.isNaN(liveTrunks)) {
      notCounted++;
      continue;
    }
    while (byLiveTrunks.length <= liveTrunks) byLiveTrunks.push(0);
    byLiveTrunks[liveTrunks]++;
    const { block, row, vine } = placeOf(key);
    const name = season.words.wordOf(block);
    const renewal = trunkRenewal({ liveTrunks, noted: noted.get(placeName(name, row, vine)) ?? [] }, wanted);
    if (callsForWork(renewal)) vines.push({ block: name, row, vine, liveTrunks, renewal });
  }
  const order = ({ renewal }: VineToRenew) => URGENCIES.indexOf(renewal.urgency);
  return { vines: vines.sort((first, second) => order(first) - order(second)), notCounted, byLiveTrunks };
}

/** True for a vine that has a trunk to bring up, to replace or to take out. */
export function hasTrunkToRenew({ status, ...vine }: VineToDecide, wanted: number): boolean {
  const { liveTrunks } = vine;
  if (status === "missing" || liveTrunks === undefined) return false;
  return callsForWork(trunkRenewal({ liveTrunks, noted: notedOn(vine) }, wanted));
}

function callsForWork({ urgency, takeOut }: TrunkRenewal): boolean {
  return urgency !== "none" || takeOut.length > 0;
}

function notedOn(vine: Pick<VineToDecide, "candidates">): { number: number; condition: Condition }[] {
  return trunksOf(vine).flatMap(({ number, condition }) => (condition ? [{ number, condition }] : []));
}

function placeName(block: string, row: number, vine: number): string {
  return `${row} ${vine} ${block}`;
}

function notedTrunks(vines: readonly SurveyVine[]): Map<string, { number: number; condition: Condition }[]> {
  return new Map(
    vines.map(({ block, row, vine, toDecide }) => [placeName(block, row, vine), notedOn(toDecide)]),
  );
}
