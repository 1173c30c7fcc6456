import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import type { WorkbookPackage } from "./workbookPackage";
import { parseXml } from "./xmlParser";

/** The texts that cells share, in order. Runs of rich text are joined; pronunciation guides are left out. */
export async function sharedStrings(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<string[]> {
  const strings: string[] = [];
  let current = "";
  let inText = false;
  let inGuide = false;
  let characters = 0;
  const refuse = (most: number): never => {
    throw new WorkbookProblem("tooMuchText", { file: source.file, part, most });
  };
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name) => {
        if (name === "si") current = "";
        else if (name === "rPh") inGuide = true;
        else if (name === "t") inText = !inGuide;
      },
      text: (text) => {
        if (!inText) return;
        current += text;
        if (current.length > limits.cellCharacters) refuse(limits.cellCharacters);
      },
      close: (name) => {
        if (name === "t") inText = false;
        else if (name === "rPh") inGuide = false;
        else if (name === "si") {
          characters += current.length;
          if (characters > limits.sharedCharacters) refuse(limits.sharedCharacters);
          if (strings.length >= limits.sharedTexts)
            throw new WorkbookProblem("tooManyOf", { file: source.file, part, most: limits.sharedTexts });
          strings.push(unescapeText(current));
        }
      },
    },
    limits,
  );
  return strings;
}

/**
 * Text as a person typed it: a workbook writes characters that XML cannot hold as _xHHHH_.
 *
 * @example
 * unescapeText("a_x000D_b") // "a\rb"
 */
export function unescapeText(text: string): string {
  return text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_whole, code: string) => String.fromCharCode(parseInt(code, 16)))
    : text;
}
