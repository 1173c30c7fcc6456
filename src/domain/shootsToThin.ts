import { pruningHours } from "./pruningHours";
import { mustLieBetween } from "./refusal";
import type { Metres, PerMetre } from "./units";

/** Shoots to leave on a vine and to rub off it, and the work that it is. */
export interface ShootsToThin {
  /** Most whole shoots on the vine's length of wire; all that were counted when they are fewer. */
  readonly keep: number;
  /** Shoots to take off; 0 when all may stay. */
  readonly remove: number;
  /** Hours of one person for the vines; 0 when all shoots may stay. */
  readonly hours: number;
}

/**
 * Shoots to thin a vine to after budbreak, by its length of wire: 15 viable shoots a metre of row (Sabbatini, Michigan State
 * University), 6 a foot in the trial of cold-hardy cultivars at Verona, Wisconsin, thinned at 5 inches of growth (Atucha
 * and Wimmer 2015). The sources differ; neither is averaged.
 *
 * `shoots`: counted on the vine, 0 to 1000; a mean of vines may be given. `length`: metres of wire to the vine, 0.3 to 10.
 * `density`: shoots a metre, 1 to 60. `vines`: how many are thinned like it, default one. `minutes`: that one person needs
 * for a vine, 0 to 240, default none. Kept shoots are rounded down, so that the density is not passed.
 *
 * @example
 * shootsToThin(50, metresFromFeet(6), perMetreFromPerFoot(6), 600, 2) // { keep: 36, remove: 14, hours: 20 }
 * shootsToThin(24, metres(2), perMetre(15)) // { keep: 24, remove: 0, hours: 0 }
 */
export function shootsToThin(
  shoots: number,
  length: Metres,
  density: PerMetre,
  vines = 1,
  minutes = 0,
): ShootsToThin {
  mustLieBetween("shoots", shoots, 0, 1000);
  mustLieBetween("length", length, 0.3, 10, "m");
  mustLieBetween("density", density, 1, 60, "1/m");
  const { hours } = pruningHours(vines, minutes);
  const keep = Math.min(shoots, Math.floor(length * density + 1e-9));
  const remove = shoots - keep;
  return { keep, remove, hours: remove > 0 ? hours : 0 };
}
