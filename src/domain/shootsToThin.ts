import { mustLieBetween } from "./refusal";
import type { Metres, PerMetre } from "./units";

/** Shoots to leave on a vine and to rub off it. */
export interface ShootsToThin {
  /** Most whole shoots on the vine's length of wire; all that were counted when they are fewer. */
  readonly keep: number;
  /** Shoots to take off; 0 when all may stay. */
  readonly remove: number;
}

/**
 * Shoots to thin a vine to after budbreak, by its length of wire: 15 viable shoots a metre of row (Sabbatini, Michigan State
 * University), 6 a foot in the trial of cold-hardy cultivars at Verona, Wisconsin, thinned at 5 inches of growth (Atucha
 * and Wimmer 2015). The sources differ; neither is averaged.
 *
 * `counted`: shoots on the vine, 0 to 1000; a mean of vines may be given. `spacing`: metres of wire to the vine, 0.3 to 10.
 * `density`: shoots a metre, 1 to 60. Kept shoots are rounded down, so that the density is not passed.
 *
 * @example
 * shootsToThin(50, metresFromFeet(6), perMetreFromPerFoot(6)) // { keep: 36, remove: 14 }
 * shootsToThin(24, metres(2), perMetre(15)) // { keep: 24, remove: 0 }
 */
export function shootsToThin(counted: number, spacing: Metres, density: PerMetre): ShootsToThin {
  mustLieBetween("shoots", counted, 0, 1000);
  mustLieBetween("spacing", spacing, 0.3, 10);
  mustLieBetween("density", density, 1, 60);
  const keep = Math.min(counted, Math.floor(spacing * density + 1e-9));
  return { keep, remove: counted - keep };
}
