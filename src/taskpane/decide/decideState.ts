import type { DecidedVine } from "../../survey/decideSurvey";
import type { Survey } from "../../survey/survey";
import type { Progress } from "../progress";

/** Which vines are listed. */
export type VinesShown = "ask" | "lay" | "trunks" | "all";

/** The page on which cordons are decided, as data. */
export interface DecideState {
  readonly progress?: Progress;
  readonly result?: { readonly survey: Survey; readonly vines: readonly DecidedVine[] };
  readonly shown: VinesShown;
  /** "" for every block. */
  readonly block: string;
  /** Vines that are opened, by name. */
  readonly open: ReadonlySet<string>;
  /** How many vines are listed. */
  readonly listed: number;
}

/** How many vines are listed at first, and how many more each time. */
export const VINES_LISTED = 25;

export const FIRST_DECIDE_STATE: DecideState = {
  shown: "ask",
  block: "",
  open: new Set(),
  listed: VINES_LISTED,
};

/** True for a vine that a person must look at. */
export function isAsked({ decision }: DecidedVine): boolean {
  return decision.sides.some(({ ask }) => ask) || decision.cordons.some(({ verdict }) => verdict === "ask");
}

/** True for a vine with a side where a cane is to be laid. */
export function laysCane({ decision }: DecidedVine): boolean {
  return decision.sides.some(({ layCaneFrom }) => layCaneFrom !== undefined);
}

const TRUNK_NOTES = ["oneTrunk", "bothOnOneTrunk", "everyTrunkHurt", "noLiveTrunk"];

/** True for a vine whose trunks call for something. */
export function hasTrunkNote({ decision }: DecidedVine): boolean {
  return decision.notes.some(({ code }) => TRUNK_NOTES.includes(code));
}

const SHOWN: Readonly<Record<VinesShown, (vine: DecidedVine) => boolean>> = {
  ask: isAsked,
  lay: laysCane,
  trunks: hasTrunkNote,
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
