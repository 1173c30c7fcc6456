import type { UnitSystem } from "../../domain/units";
import { columnUnit, unitNamed } from "../sheets/unit";
import type { FoundTable } from "./findTable";
import type { OpenAccount } from "./readingAccount";
import type { SheetArea } from "./sheetArea";

/** Metres from a spur to the next: no cordon has its spurs closer or farther apart on average; common practice. */
const LEAST_STEP = 0.05;
const MOST_STEP = 0.35;
/** Metres that the middle one of a sheet's cordons can be long; common practice. */
const LEAST_LENGTH = 0.25;
const MOST_LENGTH = 4.5;
const LENGTHS = ["ft", "in", "m", "cm", "mm"];
/** Fewer values tell nothing of a column. */
const LEAST_VALUES = 8;

/**
 * Lengths of cordons under a head without a unit, held against the wire: where the workbook's unit would make cordons
 * that no vine has, the column is left unread and its unit asked, the one that fits first.
 */
export function unitsDeniedByWire(
  area: SheetArea,
  place: FoundTable,
  system: UnitSystem,
  account: OpenAccount,
): FoundTable {
  if (place.shape.id !== "cordons") return place;
  const found = [...place.columns].find(([{ id }]) => id === "length");
  if (!found || place.units?.has(found[0])) return place;
  const [column, at] = found;
  const header = String(area.values[place.headerIndex][at] ?? "").trim();
  const unit = columnUnit(column.kind, header, system)!;
  const positions = [...place.columns].find(([{ id }]) => id === "positions")?.[1];
  const lengths: number[] = [];
  const steps: number[] = [];
  const step = Math.max(1, Math.floor(area.values.length / 2000));
  for (let row = place.headerIndex + 1; row < area.values.length; row += step) {
    const length = area.values[row][at];
    const places = positions === undefined ? undefined : area.values[row][positions];
    if (typeof length !== "number" || length <= 0) continue;
    lengths.push(length);
    if (typeof places === "number" && places > 1) steps.push(length / places);
  }
  if (lengths.length < LEAST_VALUES) return place;
  const fits = (perUnit: number) => {
    const length = middle(lengths) * perUnit;
    const apart = steps.length < LEAST_VALUES ? LEAST_STEP : middle(steps) * perUnit;
    return length >= LEAST_LENGTH && length <= MOST_LENGTH && apart >= LEAST_STEP && apart <= MOST_STEP;
  };
  if (fits(unit.perUnit)) return place;
  const likely = LENGTHS.filter((id) => id !== unit.id && fits(unitNamed(id)!.perUnit));
  if (likely.length === 0) return place;
  const rest = LENGTHS.filter((id) => !likely.includes(id));
  account.questions.push({
    code: "unit",
    sheet: area.sheet,
    facts: {
      head: header,
      word: "",
      column: column.id,
      middle: middle(lengths),
      unit: unit.id,
      likely: likely[0],
    },
    proposals: [...likely, ...rest].map((id) => ({
      units: [{ sheet: area.sheet, column: column.id, unit: id }],
    })),
  });
  return { ...place, columns: new Map([...place.columns].filter(([other]) => other !== column)) };
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
