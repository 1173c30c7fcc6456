import { yearOfGrowth, type YearOfGrowth } from "../../domain/plan/youngVine";
import type { Season } from "./season";
import { placeOf } from "./vinePlaces";
import { winterOfSeason } from "./winterOfSeason";

/**
 * The year of growth of each vine that is still being built up, by the key of its place: by its own year planted or, where
 * that is not written down and it was not planted later than its block, by that of the block. Undefined for any other vine,
 * and for every vine while no date tells which winter it is.
 */
export function youngVines(season: Season): (key: number) => YearOfGrowth | undefined {
  const { places } = season;
  const winter = winterOfSeason(season);
  return (key) => {
    const entry = places.register().get(key);
    const own = entry?.table.column("planted")?.usable[entry.index] ?? NaN;
    const status = places.statusOf(key);
    if (winter === 0 || status === "missing") return undefined;
    if (own >= 0) return yearOfGrowth(own, winter);
    return status === "young" || status === "replanted"
      ? undefined
      : yearOfGrowth(places.blockNumber(placeOf(key).block, "planted"), winter);
  };
}

/** True for a vine that is too young to bear, by its year of growth and the most clusters that Settings leaves on it. */
export function bearsNothingYet(season: Season): (key: number) => boolean {
  const yearOf = youngVines(season);
  return (key) => {
    const year = yearOf(key);
    return year === 1 || (year === 2 && season.settings.clustersAVineInYear2 === 0);
  };
}
