import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";

/** Numbers of built-in formats that show a day (ECMA-376 part 1, 18.8.30). */
const DAY_FORMATS = new Set([14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 55, 56, 57, 58]);

/** For each cell style, whether it shows a number as a day. */
export async function dateStyles(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<boolean[]> {
  const own = new Map<number, boolean>();
  const styles: boolean[] = [];
  let inCellStyles = false;
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name, attributes) => {
        if (name === "numFmt") own.set(Number(attributes.numFmtId), showsDay(attributes.formatCode ?? ""));
        else if (name === "cellXfs") inCellStyles = true;
        else if (name === "xf" && inCellStyles) {
          if (styles.length >= limits.formats)
            throw new WorkbookProblem("tooManyOf", { file: source.file, part, most: limits.formats });
          const format = Number(attributes.numFmtId ?? 0);
          styles.push(own.get(format) ?? DAY_FORMATS.has(format));
        }
      },
      text: () => undefined,
      close: (name) => {
        if (name === "cellXfs") inCellStyles = false;
      },
    },
    limits,
  );
  return styles;
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
