import type { DecidedVine } from "../../survey/decide/decideSeason";
import { isAsked } from "../../survey/decide/isAsked";
import { isCounted } from "../../survey/decide/plan/seasonStands";
import type { Season } from "../../survey/season/season";
import type { CountingRisk } from "../../domain/choice/countingRisk";
import type { Turn } from "../../domain/choice/whatWouldTurn";
import type { Progress } from "../progress";
import type { AcceptedBlock } from "./acceptedBlock";
import type { FixedLast } from "./fixedLast";

/** Which vines are listed. */
export type VinesShown = "ask" | "lay" | "trunks" | "all";

/** The question before a block is accepted, as answered so far. */
export interface AcceptQuestion {
  readonly block: string;
  /** Name or initials, as far as typed; "" accepts without a name. */
  readonly by: string;
}

declare module "../pageStates" {
  interface PageStates {
    readonly decide: DecideState;
  }
}

/** The page on which cordons are decided, as data. */
export interface DecideState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly result?: { readonly season: Season; readonly vines: readonly DecidedVine[] };
  readonly shown: VinesShown;
  /** "" for every block. */
  readonly block: string;
  /** The vine that is shown, by name; the first to show where it is left out. */
  readonly at?: string;
  /** What is searched for: block, row and vine. */
  readonly search: string;
  /** Why a person overrules an answer, as typed so far. */
  readonly reason: string;
  /** The decisions written that can be taken back, in their order. */
  readonly past: readonly FixedLast[];
  /** The question whether the decided vines of a block are to be accepted, while it is open. */
  readonly accepting?: AcceptQuestion;
  /** The last block that was accepted, while that can be taken back. */
  readonly lastBlock?: AcceptedBlock;
  /** How much the decisions of the chosen block hang on counting, once somebody has asked. */
  readonly risk?: { readonly block: string; readonly found: CountingRisk; readonly of: number };
  /** What would turn the decision, by vine, where somebody has asked. */
  readonly turns: ReadonlyMap<string, readonly Turn[]>;
}

export const FIRST_DECIDE_STATE: DecideState = {
  shown: "ask",
  block: "",
  search: "",
  reason: "",
  past: [],
  turns: new Map(),
};

/** True for a vine with a side where a cane is to be laid. */
function laysCane({ decision }: DecidedVine): boolean {
  return decision.sides.some(({ layCaneFrom }) => layCaneFrom !== undefined);
}

const SHOWN: Readonly<Record<VinesShown, (vine: DecidedVine) => boolean>> = {
  ask: (vine) => isCounted(vine) && isAsked(vine),
  lay: laysCane,
  trunks: ({ renewsTrunk }) => renewsTrunk,
  all: () => true,
};

/** The vines to list. */
export function vinesToShow(
  vines: readonly DecidedVine[],
  shown: VinesShown,
  block: string,
): readonly DecidedVine[] {
  return vines.filter((vine) => (block === "" || vine.block === block) && SHOWN[shown](vine));
}

/** How many vines there are of each sort. */
export function countVines(vines: readonly DecidedVine[]): Record<VinesShown, number> {
  const count = (shown: VinesShown) => vines.filter(SHOWN[shown]).length;
  return { ask: count("ask"), lay: count("lay"), trunks: count("trunks"), all: vines.length };
}

/** Names a vine within a survey. */
export function vineKey({ block, row, vine }: DecidedVine): string {
  return `${block}|${row}|${vine}`;
}

/** Vines that are decided without a question, or by a person, in each block. */
export function progressByBlock(vines: readonly DecidedVine[]): readonly {
  readonly block: string;
  readonly decided: number;
  readonly vines: number;
}[] {
  const blocks = new Map<string, { decided: number; vines: number }>();
  for (const vine of vines) {
    const count = blocks.get(vine.block) ?? { decided: 0, vines: 0 };
    count.vines++;
    if (!isAsked(vine)) count.decided++;
    blocks.set(vine.block, count);
  }
  return [...blocks].map(([block, count]) => ({ block, ...count }));
}
