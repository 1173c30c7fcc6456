import { unitNamed, type Unit } from "../sheets/unit";
import { textNumber } from "./textNumber";

/**
 * Metres or kilograms of a text that names its unit, or a number in the column's unit with a fraction behind it;
 * undefined for anything else.
 *
 * @param unit the column's unit, for numbers without one
 * @example
 * measureOfText("3'6\"", unitNamed("ft")) // 1.0668
 * @example
 * measureOfText("40 in", unitNamed("ft")) // 1.016
 */
export function measureOfText(text: string, unit: Unit | undefined): number | undefined {
  const bare = text
    .replace(/[’′`´]/g, "'")
    .replace(/[”″“]|''/g, '"')
    .replace(/(?<=\d)\s*(?=[¼-¾⅐-⅞])/g, " ")
    .normalize("NFKC")
    .replace(/⁄/g, "/")
    .replace(/\s+/g, " ")
    .trim();
  const feet =
    /^(\d+(?:[.,]\d+)?) ?(?:'|ft\.?|feet|foot) ?(\d+(?:[.,]\d+)?)? ?("|in\.?|ins|inch(?:es)?)?$/i.exec(bare);
  if (feet && (feet[2] !== undefined || feet[3] === undefined)) {
    if (unit && unit.dimension !== "length") return undefined;
    const inches = Number(feet[1].replace(",", ".")) * 12 + Number((feet[2] ?? "0").replace(",", "."));
    return rounded(inches * unitNamed("in")!.perUnit);
  }
  const mixed = /^(\d+) (\d+)\/(\d+)$/.exec(bare);
  if (mixed && unit && Number(mixed[3]) > 0)
    return rounded((Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3])) * unit.perUnit);
  const named = /^([\d.,]+) ?([^\d\s.,].*)$/.exec(bare);
  if (!named) return undefined;
  const own = unitNamed(named[2]);
  const value = textNumber(named[1]);
  if (!own || value === undefined || own.dimension === "share") return undefined;
  return unit && unit.dimension !== own.dimension ? undefined : rounded(value * own.perUnit);
}

/** Ten micrometres or milligrams tell more than any tape or scale. */
const rounded = (value: number) => Math.round(value * 1e9) / 1e9;
