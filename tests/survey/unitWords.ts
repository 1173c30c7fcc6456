import type { UnitSystem } from "../../src/domain/units";
import { METRES_PER_FOOT, KILOGRAMS_PER_POUND } from "../../src/domain/units";

/** Words and signs of a system's units in English, Spanish and French. */
const WORDS: Readonly<Record<UnitSystem, RegExp>> = {
  US: /(?<![\p{L}\d])(lbs?|pounds?|ft|feet|foot|inch(es)?|acres?|tons?|libras?|pies|por pie|pulgadas?|pulg|livres?|pieds?|pouces?)(?!\p{L})|(t|toneladas|tonnes) (cortas|courtes)|\d[\s\u00a0](in|po)(?=[,.;:)]|$| \(| (a|à|and|to|against|of|long|thick|apart|de|contra|contre)(?!\p{L}))/iu,
  metric:
    /(?<![\p{L}\d])(kg|cm|mm|t\/ha|kilos?|kilogram\w*|met(re|er)s?|metros?|mètres?|hectares?|hectáreas?|(tonnes?|toneladas?)(?! (cortas|courtes)))(?!\p{L})|\d[\s\u00a0](m|g|t)(?= |[,.;:)]|$)(?! (cortas|courtes))/iu,
};

/** The name of a figure of Settings, which stands for itself. */
const NAMES = /Below one pound|Menos de una libra(?! \()|Moins d'une livre(?! \()/g;

/**
 * Lines that name a unit of the other system and none of the workbook's own; a line with both says both on purpose.
 *
 * @param system that of the workbook
 */
export function foreignUnits(text: string, system: UnitSystem): string[] {
  const other = system === "US" ? "metric" : "US";
  return text
    .split(/\n/)
    .map((line) => line.replace(NAMES, ""))
    .filter((line) => WORDS[other].test(line) && !WORDS[system].test(line));
}

/** Units of heads and of the Settings sheet, what stands for them in metric, and how many of it. */
const IN_METRIC: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  ft: ["m", METRES_PER_FOOT],
  in: ["mm", (1000 * METRES_PER_FOOT) / 12],
  lb: ["kg", KILOGRAMS_PER_POUND],
  // 2000 lb an acre of 4046.8564224 square metres
  "tons/acre": ["t/ha", (2000 * KILOGRAMS_PER_POUND * 10) / 4046.8564224],
  "nodes/ft": ["nodes/m", 1 / METRES_PER_FOOT],
  "shoots/ft": ["shoots/m", 1 / METRES_PER_FOOT],
};

/** The sheets of a workbook in US units as somebody would have typed them in metric, to four digits. */
export function inMetric<Cell>(sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>) {
  const times = (cell: Cell, factor: number) =>
    typeof cell === "number" ? (Number((cell * factor).toPrecision(4)) as Cell) : cell;
  return Object.fromEntries(
    Object.entries(sheets).map(([name, [heads = [], ...rows]]) => {
      const units = heads.map((head) => IN_METRIC[/\(([^)]*)\)/.exec(String(head))?.[1] ?? ""]);
      const [value, unit] = ["Value", "Unit"].map((head) => heads.indexOf(head as Cell));
      const converted = rows.map((row) => {
        const own = value >= 0 && unit >= 0 ? IN_METRIC[String(row[unit])] : undefined;
        return row.map((cell, at) => {
          if (own !== undefined)
            return at === unit ? (own[0] as Cell) : at === value ? times(cell, own[1]) : cell;
          return units[at] === undefined ? cell : times(cell, units[at][1]);
        });
      });
      const named = heads.map((head, at) =>
        units[at] === undefined ? head : (String(head).replace(/\([^)]*\)/, `(${units[at][0]})`) as Cell),
      );
      return [name, [named, ...converted]];
    }),
  );
}
