import { decidedVine, type DecidedVine } from "../../survey/decide/decideSeason";
import type { Season } from "../../survey/season/season";

type Candidate = DecidedVine["toDecide"]["candidates"][number];

/**
 * The vine decided anew with fixed choices.
 *
 * @param fixedChoice the fixed choice of each cordon, by its place among the vine's cordons; undefined for none
 */
export function decidedAnew(
  season: Season,
  vine: DecidedVine,
  fixedChoice: (candidate: Candidate, place: number) => Candidate["fixedChoice"],
): DecidedVine {
  const candidates = vine.toDecide.candidates.map((candidate, place) => ({
    ...candidate,
    fixedChoice: fixedChoice(candidate, place),
  }));
  const toDecide = { ...vine.toDecide, candidates };
  return decidedVine({ ...vine, toDecide }, season.settings);
}
