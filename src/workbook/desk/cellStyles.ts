import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import { BUILT_IN_FORMATS } from "../file/builtInFormats";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "../file/readLimits";
import { isYes } from "../file/sheetRows";
import type { WorkbookPackage } from "../file/workbookPackage";
import { parseXml, type XmlListener } from "../file/xmlParser";

/** The engine's own true and false. */
export const flag = (is: boolean) => (is ? BooleanNumber.TRUE : BooleanNumber.FALSE);

type Attributes = Readonly<Record<string, string>>;

const HORIZONTAL: Readonly<Record<string, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
};
const VERTICAL: Readonly<Record<string, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};
const SIDES = { left: "l", right: "r", top: "t", bottom: "b" } as const;

/**
 * The cell styles of a file by their numbers, as far as reading a count sheet needs them: number format, weight and
 * size of the letters, plain fills, thin lines, alignment and wrapping. Colours from a theme are left to the grid.
 */
export async function cellStyles(
  source: WorkbookPackage,
  part: string,
  limits: ReadLimits,
): Promise<IStyleData[]> {
  const collector = new StyleCollector(source.file, part, limits);
  await parseXml(source.file, part, source.chunks(part), collector, limits);
  return collector.styles;
}

class StyleCollector implements XmlListener {
  readonly styles: IStyleData[] = [];
  private readonly formats = new Map<number, string>();
  private readonly fonts: IStyleData[] = [];
  private readonly fills: IStyleData[] = [];
  private readonly borders: IBorderData[] = [];
  private readonly within: string[] = [];
  /** Entries of each list. */
  private readonly entries = new Map<string, number>();

  constructor(
    private readonly file: string,
    private readonly part: string,
    private readonly limits: ReadLimits,
  ) {}

  open(name: string, attributes: Attributes): void {
    const list = this.within[1];
    if (this.within.length === 2) this.countEntry(list);
    if (name === "numFmt" && list === "numFmts")
      this.formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "");
    else if (list === "fonts") this.font(name, attributes);
    else if (list === "fills") this.fill(name, attributes);
    else if (list === "borders") this.border(name, attributes);
    else if (list === "cellXfs") this.cellStyle(name, attributes);
    this.within.push(name);
  }

  text(): void {}

  close(): void {
    this.within.pop();
  }

  private countEntry(list: string): void {
    const count = (this.entries.get(list) ?? 0) + 1;
    const most = this.limits.formats;
    if (count > most) throw new WorkbookProblem("tooManyOf", { file: this.file, part: this.part, most });
    this.entries.set(list, count);
  }

  private font(name: string, attributes: Attributes): void {
    if (this.within.length === 2) this.fonts.push({});
    const font = this.fonts[this.fonts.length - 1];
    if (name === "b") font.bl = flag(attributes.val !== "0");
    else if (name === "i") font.it = flag(attributes.val !== "0");
    else if (name === "strike") font.st = { s: flag(attributes.val === undefined || isYes(attributes.val)) };
    else if (name === "sz") font.fs = Number(attributes.val);
    else if (name === "color") font.cl = colour(attributes);
  }

  private fill(name: string, attributes: Attributes): void {
    if (this.within.length === 2) this.fills.push({});
    if (name === "patternFill" && attributes.patternType === "solid")
      this.fills[this.fills.length - 1].bg = {};
    const fill = this.fills[this.fills.length - 1];
    if (name === "fgColor" && fill.bg) fill.bg = colour(attributes);
  }

  private border(name: string, attributes: Attributes): void {
    if (this.within.length === 2) this.borders.push({});
    if (!(name in SIDES) || !attributes.style || attributes.style === "none") return;
    const line = attributes.style === "medium" || attributes.style === "thick" ? "MEDIUM" : "THIN";
    this.borders[this.borders.length - 1][SIDES[name as keyof typeof SIDES]] = {
      s: BorderStyleTypes[line],
      cl: { rgb: "#9aa0a6" },
    };
  }

  private cellStyle(name: string, attributes: Attributes): void {
    if (this.within.length === 2) {
      const format = Number(attributes.numFmtId ?? 0);
      const pattern = this.formats.get(format) ?? BUILT_IN_FORMATS[format];
      const border = this.borders[Number(attributes.borderId ?? 0)];
      this.styles.push({
        ...this.fonts[Number(attributes.fontId ?? 0)],
        ...this.fills[Number(attributes.fillId ?? 0)],
        ...(border && Object.keys(border).length > 0 ? { bd: border } : {}),
        ...(pattern ? { n: { pattern } } : {}),
      });
    }
    if (name !== "alignment") return;
    const style = this.styles[this.styles.length - 1];
    if (attributes.horizontal in HORIZONTAL) style.ht = HORIZONTAL[attributes.horizontal];
    if (attributes.vertical in VERTICAL) style.vt = VERTICAL[attributes.vertical];
    if (attributes.wrapText === "1" || attributes.wrapText === "true") style.tb = WrapStrategy.WRAP;
  }
}

function colour({ rgb }: Attributes): { rgb: string } | undefined {
  return rgb ? { rgb: `#${rgb.slice(-6)}` } : undefined;
}
