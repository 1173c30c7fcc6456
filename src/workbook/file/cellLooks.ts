import { BUILT_IN_FORMATS } from "./builtInFormats";
import { areasOfAddress } from "../address";
import { xmlSpans, type XmlSpan } from "./xmlSpans";

/** How a cell style looks, as far as a person sees it. */
export interface StyleLook {
  /** Number format; "General" for none. */
  readonly format: string;
  /** Letters, fill, lines and sideways alignment in one text; "" for those of a plain cell. */
  readonly dress: string;
}

/** The cell styles of a style sheet by their numbers. */
export function styleLooks(xml: string): readonly StyleLook[] {
  const { spans } = xmlSpans(xml, (path) => path.length <= 2 || path[path.length - 1] === "alignment");
  const childrenOf = (list: string) => {
    const outer = spans.find(({ name }) => name === list);
    return outer ? directly(spans, outer) : [];
  };
  const formats = new Map(
    childrenOf("numFmts").map(({ attributes }) => [attributes.numFmtId, attributes.formatCode]),
  );
  const textsOf = (list: string) =>
    childrenOf(list).map(({ openEnd, closeStart }) => xml.slice(openEnd, closeStart).replace(/\s+/g, " "));
  const [fonts, fills, borders] = [textsOf("fonts"), textsOf("fills"), textsOf("borders")];
  const dressOf = (style: XmlSpan): string => {
    const { fontId = "0", fillId = "0", borderId = "0" } = style.attributes;
    const alignment = spans.find(
      ({ name, start }) => name === "alignment" && start >= style.openEnd && start < style.closeStart,
    );
    const { horizontal = "general", textRotation = "0", indent = "0" } = alignment?.attributes ?? {};
    return JSON.stringify([
      fonts[Number(fontId)],
      fills[Number(fillId)],
      borders[Number(borderId)],
      [horizontal, textRotation, indent],
    ]);
  };
  const styles = childrenOf("cellXfs");
  const plain = styles.length > 0 ? dressOf(styles[0]) : "";
  return styles.map((style) => {
    const format = style.attributes.numFmtId ?? "0";
    const dress = dressOf(style);
    return {
      format: formats.get(format) ?? BUILT_IN_FORMATS[Number(format)] ?? "General",
      dress: dress === plain ? "" : dress,
    };
  });
}

/** The numbers of the cell styles of a sheet, by row and column from 1. */
export function cellStyleNumbers(xml: string): ReadonlyMap<number, ReadonlyMap<number, number>> {
  const styles = new Map<number, Map<number, number>>();
  const { spans } = xmlSpans(
    xml,
    (path) => path[0] === "sheetData" && (path.length === 2 || path[path.length - 1] === "c"),
  );
  let [row, column] = [0, 0];
  for (const { name, attributes } of spans) {
    if (name === "row") {
      row = attributes.r === undefined ? row + 1 : Number(attributes.r);
      column = 0;
    } else {
      column = areasOfAddress(attributes.r ?? "")[0]?.firstColumn ?? column + 1;
      if (attributes.s === undefined) continue;
      styles.set(row, (styles.get(row) ?? new Map<number, number>()).set(column, Number(attributes.s)));
    }
  }
  return styles;
}

function directly(spans: readonly XmlSpan[], outer: XmlSpan): XmlSpan[] {
  let end = outer.openEnd;
  return spans.filter((span) => {
    if (span.start < end || span.end > outer.closeStart) return false;
    end = span.end;
    return true;
  });
}
