import { winterOf } from "../reading/serialDate";
import type { Season } from "./season";

const winters = new WeakMap<Season, number>();

/** The season of the latest count; without a date the year after the last harvest, or the first year with one begun. */
export function winterOfSeason(season: Season): number {
  const winter = winters.get(season) ?? foundWinter(season);
  winters.set(season, winter);
  return winter;
}

function foundWinter(season: Season): number {
  let latest = 0;
  for (const id of ["cordons", "vines", "budCuts"] as const)
    for (const table of season.tables(id))
      for (const day of table.column("countedOn")?.usable ?? []) if (day > latest) latest = day;
  if (latest > 0) return winterOf(latest);
  let begun = 0;
  let picked = 0;
  for (const table of season.tables("harvest")) {
    const years = table.column("year")?.usable ?? new Float64Array(0);
    const weights = table.column("picked")?.usable;
    years.forEach((year, index) => {
      if (weights && weights[index] >= 0) picked = Math.max(picked, year || 0);
      else begun = Math.max(begun, year || 0);
    });
  }
  return Math.max(begun, picked > 0 ? picked + 1 : 0);
}
