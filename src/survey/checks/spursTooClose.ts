import type { Check, FindingKind } from "./check";
import { inchesFromMetres, type Metres } from "../../domain/units";

const spursTooClose: FindingKind = { code: "spursTooClose", severity: "wrong", action: "lookAtVine" };

/** More positions, or more live spurs, than can stand on a cordon of that length. */
export const SPURS_TOO_CLOSE: Check = {
  id: "spursTooClose",
  kinds: [spursTooClose],
  sheets: ["cordons"],
  scope: "row",
  prepare(table, context) {
    const lengthColumn = table.column("length");
    const placesColumn = table.column("positions") ?? table.column("liveSpurs");
    if (!lengthColumn || !placesColumn) return undefined;
    const lengths = lengthColumn.numbers;
    const places = placesColumn.numbers;
    const least = context.season.settings.leastDistanceBetweenSpurs;
    return (from, to, report) => {
      for (let i = from; i < to; i++)
        if (places[i] - 1 > lengths[i] / least + ROUNDING)
          report(spursTooClose, i, placesColumn, {
            places: places[i],
            length: lengthColumn.raw.at(i) as number,
            unit: lengthColumn.unit?.id ?? "",
            fit: Math.floor(Math.max(0, lengths[i]) / least + ROUNDING) + 1,
            distance: inUnit(least, METRIC.has(lengthColumn.unit?.id)),
          });
    };
  },
};

/** A length of exactly so many distances has room for them, whatever its last binary digit is. */
const ROUNDING = 1e-9;

const METRIC: ReadonlySet<string | undefined> = new Set(["m", "cm", "mm"]);

function inUnit(distance: Metres, metric: boolean): string {
  return metric
    ? `${Math.round(distance * 1000) / 10} cm`
    : `${Number(inchesFromMetres(distance).toPrecision(12))} in`;
}
