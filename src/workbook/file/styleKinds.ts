import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";

/** Numbers of built-in formats that show a day (ECMA-376 part 1, 18.8.30). */
const DAY_FORMATS = new Set([14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 55, 56, 57, 58]);

/** For each cell style, whether it shows a number as a day, and whether it strikes it out. */
export interface StyleKinds {
  readonly days: readonly boolean[];
  /** Numbers of the styles, as cells name them, that strike out what they show. */
  readonly struck: ReadonlySet<string>;
}

/** What the cell styles of a workbook tell about its values. */
export async function styleKinds(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<StyleKinds> {
  const own = new Map<number, boolean>();
  const days: boolean[] = [];
  const struck = new Set<string>();
  const struckFonts = new Set<number>();
  let fonts = 0;
  const within: string[] = [];
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name, attributes) => {
        const list = within[1];
        if (name === "numFmt") own.set(Number(attributes.numFmtId), showsDay(attributes.formatCode ?? ""));
        else if (name === "font" && list === "fonts") fonts++;
        else if (name === "strike" && list === "fonts" && !/^(?:0|false|off)$/.test(attributes.val ?? "1"))
          struckFonts.add(fonts - 1);
        else if (name === "xf" && list === "cellXfs") {
          if (days.length >= limits.formats)
            throw new WorkbookProblem("tooManyOf", { file: source.file, part, most: limits.formats });
          const format = Number(attributes.numFmtId ?? 0);
          if (struckFonts.has(Number(attributes.fontId ?? 0))) struck.add(String(days.length));
          days.push(own.get(format) ?? DAY_FORMATS.has(format));
        }
        within.push(name);
      },
      text: () => undefined,
      close: () => {
        within.pop();
      },
    },
    limits,
  );
  return { days, struck };
}

/**
 * True for a number format that shows a day: a year or a day of the month outside quotes, brackets and escapes.
 *
 * @example
 * showsDay("[Red]0.0\" days\"") // false
 */
export function showsDay(format: string): boolean {
  return /[yd]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\.|_.|\*./g, ""));
}
