import { mustLieBetween } from "./refusal";

/** Time that a crew needs for its vines. */
export interface PruningHours {
  /** Hours of one person. */
  readonly hours: number;
  /** Days of the whole crew. */
  readonly crewDays: number;
}

/**
 * Hours of work and days of the crew for pruning a number of vines. One minute a vine is 13.45 hours for the 807 vines
 * of an acre at 6 x 9 ft (Martinson, Vanden Heuvel and Preszler, Cornell, "Canopy and crop management"). Not rounded.
 *
 * `vines`: vines to prune. `minutes`: minutes one person needs for a vine, 0 to 240. `crew`: people, 1 to 500, default
 * one. `hoursADay`: hours each works in a day, 0.5 to 16, default 8.
 *
 * @example
 * pruningHours(807, 1).hours // 13.45
 * pruningHours(600, 4, 4, 5) // { hours: 40, crewDays: 2 }
 */
export function pruningHours(vines: number, minutes: number, crew = 1, hoursADay = 8): PruningHours {
  mustLieBetween("vines", vines, 0, 1e7);
  mustLieBetween("minutes", minutes, 0, 240, "min");
  mustLieBetween("crew", crew, 1, 500);
  mustLieBetween("hours_a_day", hoursADay, 0.5, 16, "h");
  const hours = (vines * minutes) / 60;
  return { hours, crewDays: hours / (crew * hoursADay) };
}
