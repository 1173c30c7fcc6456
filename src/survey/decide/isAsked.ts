import type { DecidedVine } from "./decideSeason";

/** True for a vine that a person must look at. */
export function isAsked({ decision }: DecidedVine): boolean {
  return decision.cordons.some(({ verdict }) => verdict === "ask");
}
