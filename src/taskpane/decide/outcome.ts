import type { DecidedVine } from "../../survey/decide/decideSeason";

/** What a person decides at a vine; a place is that of a cordon among the vine's candidates. */
export type Outcome =
  | { readonly kind: "stays" | "cane"; readonly place: number }
  /** No cordon of the side stays; where a cane comes from is left to the tool. */
  | { readonly kind: "none"; readonly side: string }
  /** The whole vine is counted again. */
  | { readonly kind: "recount" }
  /** What was fixed before no longer is. */
  | { readonly kind: "free" };

/** The id of a fixed choice in the Cordons sheet; undefined for a blank cell. */
export type Fixed = "stays" | "goes" | "cane" | "recount" | undefined;

/** What stands in the column for fixed choices of a vine, by the places of its cordons. */
export function fixedNow({ toDecide, rows, recount }: DecidedVine): Fixed[] {
  return toDecide.candidates.map(({ fixedChoice }, place) => {
    const { table, index } = rows[place];
    const isMarked = recount.some(
      ({ reason, sheet, sheetRow }) =>
        reason === "marked" && sheet === table.sheet && sheetRow === table.sheetRow(index),
    );
    return isMarked ? "recount" : fixedChoice;
  });
}

/** What an outcome puts into the column for fixed choices, by place; a place that is not in it stays as it is. */
export function fixedBy(outcome: Outcome, vine: DecidedVine): ReadonlyMap<number, Fixed> {
  const { cordons } = vine.decision;
  const now = fixedNow(vine);
  const taken = now.flatMap((fixed, place) => (fixed === undefined ? [] : [place]));
  if (outcome.kind === "free") return new Map(taken.map((place) => [place, undefined]));
  if (outcome.kind === "recount") {
    const blank = now.indexOf(undefined);
    return new Map([[Math.max(0, blank), "recount" as const]]);
  }
  const side = outcome.kind === "none" ? outcome.side : cordons[outcome.place].side;
  const fixed = new Map<number, Fixed>();
  for (const place of taken) if (now[place] === "recount") fixed.set(place, undefined);
  cordons.forEach((cordon, place) => {
    if (cordon.side !== side) return;
    fixed.set(place, outcome.kind !== "none" && place === outcome.place ? outcome.kind : "goes");
  });
  return fixed;
}

/** True where an outcome goes against an answer that was given without a question and that no person has fixed. */
export function overrules(outcome: Outcome, { decision, toDecide }: DecidedVine): boolean {
  if (outcome.kind === "recount" || outcome.kind === "free") return false;
  const side = outcome.kind === "none" ? outcome.side : decision.cordons[outcome.place].side;
  const answer = decision.sides.find((one) => one.side === side);
  if (answer === undefined || answer.ask) return false;
  const members = decision.cordons.flatMap((cordon, place) => (cordon.side === side ? [place] : []));
  if (members.some((place) => toDecide.candidates[place].fixedChoice !== undefined)) return false;
  if (members.some((place) => decision.cordons[place].verdict === "ask")) return false;
  if (outcome.kind === "stays") return decision.cordons[outcome.place].verdict !== "stays";
  return answer.layCaneFrom === undefined;
}
