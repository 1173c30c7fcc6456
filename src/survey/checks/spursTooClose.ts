import type { Check, FindingKind } from "./check";
import { METRES_PER_FOOT } from "../../domain/units";

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
    const leastInches = context.setting("Least distance between spurs");
    const least = (leastInches * METRES_PER_FOOT) / 12;
    return (from, to, report) => {
      for (let i = from; i < to; i++)
        if (places[i] - 1 > lengths[i] / least + ROUNDING)
          report(spursTooClose, i, placesColumn, {
            places: places[i],
            length: lengthColumn.raw.at(i) as number,
            unit: lengthColumn.unit?.id ?? "",
            fit: Math.floor(Math.max(0, lengths[i]) / least + ROUNDING) + 1,
            distance: inUnit(
              leastInches,
              lengthColumn.unit?.dimension === "length" && isMetric(lengthColumn.unit.id),
            ),
          });
    };
  },
};

/** A length of exactly so many distances has room for them, whatever its last binary digit is. */
const ROUNDING = 1e-9;

function isMetric(unit: string): boolean {
  return unit === "m" || unit === "cm" || unit === "mm";
}

function inUnit(inches: number, metric: boolean): string {
  return metric ? `${Math.round(inches * 2.54 * 10) / 10} cm` : `${inches} in`;
}
