import type { VineNote } from "../../../domain/choice/vineDecision";
import type { PlannedCane, PlannedCut, PlannedKeep, VinePlan } from "../../../domain/plan/vinePlan";
import { youngVine } from "../../../domain/plan/youngVine";
import { sideOfVine } from "../../season/sideOfVine";
import { youngVines } from "../../season/youngVines";
import type { NodePlan } from "../../../domain/plan/nodePlan";
import type { DecidedVine } from "../decideSeason";
import { toCount } from "../toCount";
import { renewalRules } from "../renewal/renewalRules";
import { trunksToRenew, type TrunksToRenew } from "../renewal/trunksToRenew";
import type { Season } from "../../season/season";
import { namedPlace, placeOf } from "../../season/vinePlaces";
import { plannedNodes } from "../plan/plannedNodes";

/** One line of a card: a vine in walk order. */
export interface CardVine {
  readonly vine: number;
  readonly status: "bearing" | "young" | "missing" | "replanted" | undefined;
  readonly keeps: readonly PlannedKeep[];
  readonly cuts: readonly PlannedCut[];
  readonly canes: readonly PlannedCane[];
  /** Nodes over the spurs that stay; left out where there is no budget or no spur count. */
  readonly nodes?: NodePlan;
  /** Left out for a vine that is decided: its counts are to be made again, or were never made. */
  readonly toCount?: "recount" | "toCount";
  readonly dueTrunks?: VinePlan["dueTrunks"];
  readonly young?: VinePlan["young"];
  readonly trunksToBringUp: number;
  readonly deadTrunks: readonly number[];
  readonly notes: readonly VineNote[];
  /** The remarks of the sheets about this vine. */
  readonly remarks: readonly string[];
  /** Day of pruning as written in the Vines sheet. */
  readonly prunedOn?: number;
}

/** The card of one row. */
export interface CrewCard {
  readonly block: string;
  readonly row: number;
  readonly vines: readonly CardVine[];
}

/**
 * One card a row, vines in the order in which they stand, with what the crew needs at the vine. Vines of the register
 * that have no candidates are on the card too, so that the crew never loses count.
 *
 * @param decided the vines of the survey with their answers
 * @param trunks the trunks to renew on them, where they were found already
 */
export function crewCards(
  season: Season,
  decided: Iterable<DecidedVine>,
  trunks?: TrunksToRenew,
): CrewCard[] {
  const places = season.places;
  const nodesOf = plannedNodes(season);
  const yearOf = youngVines(season);
  const { youngClusters } = renewalRules(season.settings).triggers;
  const vines = [...decided];
  const renewals = new Map(
    (trunks ?? trunksToRenew(season, vines)).vines.map(({ block, row, vine, renewal }) => [
      namedPlace(block, row, vine),
      { trunksToBringUp: renewal.bringUp, deadTrunks: renewal.takeOut },
    ]),
  );
  const rows = new Map<string, { block: string; row: number; vines: Map<number, CardVine> }>();
  const rowOf = (block: string, row: number) => {
    const key = `${row} ${block}`;
    let known = rows.get(key);
    if (!known) rows.set(key, (known = { block, row, vines: new Map() }));
    return known;
  };
  const register = new Map<string, { prunedOn: number; note: string }>();
  for (const [key, { table, index }] of places.register()) {
    const { block, row, vine } = placeOf(key);
    const name = season.words.wordOf(block);
    const year = yearOf(key);
    const note = table.column("note")?.raw.at(index);
    const entry = {
      prunedOn: table.column("prunedOn")?.usable[index] ?? NaN,
      note: typeof note === "string" ? note.trim() : "",
    };
    register.set(namedPlace(name, row, vine), entry);
    rowOf(name, row).vines.set(vine, {
      ...EMPTY,
      vine,
      status: places.statusOf(key) as CardVine["status"],
      remarks: entry.note === "" ? [] : [entry.note],
      ...(entry.prunedOn > 0 ? { prunedOn: entry.prunedOn } : {}),
      ...(year
        ? { young: youngVine(year, sideOfVine(places, block, season.settings).training, youngClusters) }
        : {}),
      ...renewals.get(namedPlace(name, row, vine)),
    });
  }

  for (const vine of vines) {
    const { block, row, vine: number, decision, plan } = vine;
    const known = register.get(namedPlace(block, row, number));
    const nodes = nodesOf(vine);
    const counting = toCount(vine);
    const line: CardVine = {
      ...(rowOf(block, row).vines.get(number) ?? { ...EMPTY, vine: number }),
      ...(counting === undefined ? {} : { toCount: counting }),
      ...plan,
      ...(nodes && { nodes }),
      notes: decision.notes,
      remarks: [...new Set([known?.note ?? "", ...remarksOf(vine)])].filter((note) => note !== ""),
    };
    rowOf(block, row).vines.set(number, line);
  }

  const blockOrder = new Map<string, number>();
  for (const { block } of rows.values()) if (!blockOrder.has(block)) blockOrder.set(block, blockOrder.size);
  return [...rows.values()]
    .sort(
      (first, second) =>
        blockOrder.get(first.block)! - blockOrder.get(second.block)! || first.row - second.row,
    )
    .map(({ block, row, vines }) => ({
      block,
      row,
      vines: [...vines.values()].sort((first, second) => first.vine - second.vine),
    }));
}

const EMPTY: Omit<CardVine, "vine"> = {
  status: undefined,
  keeps: [],
  cuts: [],
  canes: [],
  trunksToBringUp: 0,
  deadTrunks: [],
  notes: [],
  remarks: [],
};

function remarksOf({ rows, toDecide }: DecidedVine): string[] {
  return rows.flatMap(({ table, index }, at) => {
    const note = table.column("note")?.raw.at(index);
    return typeof note === "string" && note.trim() !== ""
      ? [`${toDecide.candidates[at].cordon}: ${note.trim()}`]
      : [];
  });
}
