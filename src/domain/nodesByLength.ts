import { mustLieBetween } from "./refusal";
import type { Metres, PerMetre } from "./units";

/**
 * Nodes to leave on a stretch of cordon or row by a fixed density. Used where prunings are not weighed.
 *
 * `length`: metres of cordon, or of row that the vine fills, 0 to 100. `density`: nodes on each metre, 0 to 60.
 * Published densities: 4 to 6 buds a foot of vine spacing (Smith, Ohio State University 2023); 15 shoots a metre of
 * row (Sabbatini, Michigan State University); 6 to 8 buds a foot for Marquette and 5 to 8 for Brianna (Thull and Luby,
 * University of Minnesota). Not rounded.
 *
 * @example
 * nodesByLength(metresFromFeet(8), perMetreFromPerFoot(6)) // 48
 * nodesByLength(metresFromFeet(5), perMetreFromPerFoot(4)) // 20
 * nodesByLength(metres(2), perMetre(15)) // 30
 */
export function nodesByLength(length: Metres, density: PerMetre): number {
  mustLieBetween("length", length, 0, 100, "m");
  mustLieBetween("density", density, 0, 60, "1/m");
  return length * density;
}
