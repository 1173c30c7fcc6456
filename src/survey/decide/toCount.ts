import type { DecidedVine } from "./decideSeason";

/** What is to be counted on a vine before it is decided, for the first time or again; undefined where counts are enough. */
export function toCount({ recount, decision }: DecidedVine): "recount" | "toCount" | undefined {
  if (recount.length > 0) return recount.every(({ reason }) => reason === "toCount") ? "toCount" : "recount";
  return decision.notes.some(({ code }) => code === "uncounted") ? "toCount" : undefined;
}
